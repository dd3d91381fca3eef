// SPDX-License-Identifier: MIT
/// The method of `count_foldings`: fold by fold, every arrangement of the sheet that can still become a gathering is
/// stored once. The number stays small because arrangements that cannot join all conjugates are recognised early:
/// leaves whose conjugates lie in the same pile are the core of that pile and lie in mirrored order, no second pile has
/// such a core, and leaves that lie together need their conjugates together.
#pragma once

#include <bifolium/fold/count_foldings.hpp>
#include <bifolium/fold/detail/key_table.hpp>

#include <utility>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Ways of folding a sheet: the leaves of each packet from one of its ends, a leaf by its cell along the rows.
struct PacketList {
  int leaves{};                      ///< of a packet
  std::vector<std::uint8_t> cells{}; ///< packet after packet
  std::vector<int> folds{};          ///< by packet: the fewest that give it
  [[nodiscard]] std::size_t size() const { return folds.size(); }
  [[nodiscard]] std::uint8_t const* of(std::size_t packet) const {
    return cells.data() + packet * static_cast<std::size_t>(leaves);
  }
};

/// Counts the foldings of one sheet.
class FoldingCounter {
  int rows_, columns_;
  std::size_t leaves_;

  /// An arrangement as text: rows and columns of piles, then for each pile its height and its leaves, bottom to top.
  /// Leaves are numbered along the rows, so that in an even number of columns conjugates are 2k and 2k+1 or,
  /// where the sheet is folded the other way about, one to the right of that.
  struct Piles {
    int rows{}, columns{};
    std::vector<std::string_view> pile{};

    explicit Piles(std::string_view text) : rows{text[0]}, columns{text[1]} {
      for (std::size_t at = 2; at < text.size(); at += 1 + pile.back().size())
        pile.push_back(text.substr(at + 1, static_cast<unsigned char>(text[at])));
    }
    [[nodiscard]] std::string_view at(int row, int column) const {
      return pile[static_cast<std::size_t>(row * columns + column)];
    }
  };
  static char byte(std::size_t n) { return static_cast<char>(static_cast<unsigned char>(n)); }
  static std::size_t leaf(char c) { return static_cast<unsigned char>(c); }

  [[nodiscard]] std::string flat() const {
    std::string text{byte(static_cast<std::size_t>(rows_)), byte(static_cast<std::size_t>(columns_))};
    for (std::size_t i = 0; i < leaves_; ++i) text.append({byte(1), byte(i)});
    return text;
  }
  /// Folds along a line, the lesser part over the greater or under it.
  static std::string folded(Piles const& from, bool by_column, int line, bool under) {
    int const across = by_column ? from.columns : from.rows;
    bool const first_stays = line >= across - line;
    int const wide = first_stays ? line : across - line, start = first_stays ? 0 : line;
    int const rows = by_column ? from.rows : wide, columns = by_column ? wide : from.columns;
    std::string text{byte(static_cast<std::size_t>(rows)), byte(static_cast<std::size_t>(columns))};
    for (int r = 0; r < rows; ++r)
      for (int c = 0; c < columns; ++c) {
        int const place = start + (by_column ? c : r), mate = 2 * line - 1 - place;
        auto const pile = [&](int at) { return by_column ? from.at(r, at) : from.at(at, c); };
        auto const kept = pile(place);
        auto const moved = mate >= 0 && mate < across ? pile(mate) : std::string_view{};
        text += byte(kept.size() + moved.size());
        if (!under) text.append(kept);
        text.append(moved.rbegin(), moved.rend());
        if (under) text.append(kept);
      }
    return text;
  }

  /// Returns true if the conjugates 2k and 2k+1 can still come to lie as those of a gathering do. Precondition: an even
  /// number of columns. A fold carries the columns 2k and 2k+1 of the flat sheet to two such columns, or lays one on
  /// the other; so the conjugates of a pile's leaves are in this pile, or all in one other.
  [[nodiscard]] bool may_become_gathering(Piles const& piles, std::vector<std::size_t>& pile_of,
                                          std::vector<std::size_t>& height) const {
    for (std::size_t p = 0; p < piles.pile.size(); ++p)
      for (std::size_t k = 0; k < piles.pile[p].size(); ++k)
        pile_of[leaf(piles.pile[p][k])] = p, height[leaf(piles.pile[p][k])] = k;
    auto const conjugate = [](char c) { return leaf(c) ^ 1U; };
    bool core = false;
    for (std::size_t p = 0; p < piles.pile.size(); ++p) {
      auto const pile = piles.pile[p];
      std::size_t low = pile.size(), high = 0;
      for (std::size_t k = 0; k < pile.size(); ++k)
        if (pile_of[conjugate(pile[k])] == p) low = k < low ? k : low, high = k;
      if (low < pile.size()) {
        if (core) return false;
        core = true;
        for (auto k = low; k <= high; ++k)
          if (conjugate(pile[k]) != leaf(pile[low + high - k])) return false;
      }
      for (std::size_t k = 0; k + 1 < pile.size(); ++k) {
        auto const one = conjugate(pile[k]), other = conjugate(pile[k + 1]);
        if (pile_of[one] == p || pile_of[other] == p) continue;
        auto const apart = height[one] > height[other] ? height[one] - height[other] : height[other] - height[one];
        if (apart != 1) return false;
      }
    }
    return true;
  }
  /// Each leaf of the first half and the one as far from the end are neighbours in a row, all on the same side.
  [[nodiscard]] bool is_gathering(std::string_view packet) const {
    auto const columns = static_cast<std::size_t>(columns_);
    for (std::size_t k = 0; k < leaves_ / 2; ++k) {
      auto const one = leaf(packet[k]), other = leaf(packet[leaves_ - 1 - k]);
      auto const left = one < other ? one : other;
      if (one / columns != other / columns || one + other != 2 * left + 1) return false;
      auto const first = leaf(packet[0]) < leaf(packet[leaves_ - 1]) ? packet[0] : packet[leaves_ - 1];
      if (left % columns % 2 != leaf(first) % columns % 2) return false;
    }
    return true;
  }

public:
  FoldingCounter(int rows, int columns)
      : rows_{rows}, columns_{columns}, leaves_{static_cast<std::size_t>(rows * columns)} {}

  /// `list`: where to put the packets, if they are wanted.
  Expected<FoldingCount> count(std::int64_t most_arrangements, PacketList* list = nullptr) const {
    if (list != nullptr) list->leaves = static_cast<int>(leaves_);
    if (leaves_ == 1) {
      if (list != nullptr) list->cells.push_back(0), list->folds.push_back(0);
      return FoldingCount{{1}};
    }
    FoldingCount result;
    if (columns_ == 1 || (columns_ % 2 != 0 && rows_ > 1))
      return result; // no two leaves, or not all, are joined sideways
    KeyTable<std::string> seen, packets;
    std::vector<std::size_t> pile_of(leaves_), height(leaves_);
    std::size_t next = 0;
    seen.number(flat());
    for (auto level_end = seen.size(); next < level_end; level_end = seen.size()) {
      result.by_folds.push_back(0);
      for (; next < level_end; ++next) {
        auto const text = seen[next]; // a copy: the table grows
        Piles const here{text};
        if (here.pile.size() == 1) {
          std::string packet{here.pile[0]}, turned{packet.rbegin(), packet.rend()};
          auto const before = packets.size();
          if (!is_gathering(packet) || packets.number(packet < turned ? packet : turned) != before) continue;
          ++result.by_folds.back();
          if (list != nullptr) {
            list->folds.push_back(static_cast<int>(result.by_folds.size()) - 1);
            for (char c : packet) list->cells.push_back(static_cast<std::uint8_t>(leaf(c)));
          }
          continue;
        }
        for (bool const by_column : {false, true})
          for (int line = 1; line < (by_column ? here.columns : here.rows); ++line)
            for (bool const under : {false, true}) {
              auto after = folded(here, by_column, line, under);
              if (columns_ % 2 == 0 && !may_become_gathering(Piles{after}, pile_of, height)) continue;
              seen.number(after);
            }
        if (static_cast<std::int64_t>(seen.size()) > most_arrangements)
          return error_in_field(Problem::too_many_arrangements, "most_arrangements", most_arrangements);
      }
    }
    while (!result.by_folds.empty() && result.by_folds.back() == 0) result.by_folds.pop_back();
    return result;
  }
};

} // namespace detail

inline Expected<FoldingCount> count_foldings(int rows, int columns, std::int64_t most_arrangements) {
  if (rows < 1 || columns < 1) broken("a sheet must have at least one row and one column");
  constexpr int most_leaves = 64;
  if (rows > most_leaves || columns > most_leaves || rows * columns > most_leaves)
    return error_in_field(Problem::too_many_cells, "rows", most_leaves);
  return detail::FoldingCounter{rows, columns}.count(most_arrangements);
}

} // namespace v0
} // namespace bifolium
