// SPDX-License-Identifier: MIT
/// Lists all ways of cutting a sheet into pieces, the cheapest first. A cut goes from edge to edge, so a partition is a
/// rectangle that is a piece, or two parts on either side of a cut, each divided in the same way. The least price of
/// every rectangle is found first, from small to large. The partitions of the sheet at each price are then combined
/// from those of its parts, and partitions above the allowed price are never looked at. Different cuts can give the
/// same partition, which counts once.
#pragma once

#include <bifolium/fold/detail/number_set.hpp>
#include <bifolium/fold/detail/piece_finder.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The partitions of one sheet.
class Partitions {
  /// A rectangle that is a piece (then `first` is none), or a cut and its two parts.
  struct Node {
    std::uint32_t rect{}, first{}, second{};
    std::uint64_t fingerprint{}; ///< of the set of rectangles
    std::uint16_t parts{1};
  };
  static constexpr std::uint32_t none = 0xFFFFFFFFU;
  static constexpr int unit = 5; ///< all prices are multiples of it

  SheetGrid const& grid_;
  std::uint8_t sheet_;
  PieceFinder finder_;
  int row_spans_, column_spans_;
  std::vector<Piece> pieces_{};
  std::vector<int> least_{};
  std::vector<int> fewest_{}; // fewest parts of each rectangle
  std::vector<int> most_{};   // a price that no partition of each rectangle exceeds
  std::vector<Node> nodes_{};
  struct AtPrice { // the partitions of one rectangle at one price
    int above_least{};
    std::uint32_t next{}; ///< another price of the same rectangle
    std::vector<std::uint32_t> nodes{};
  };
  std::vector<AtPrice> known_{};
  std::vector<std::uint32_t> known_of_{}; // for each rectangle, the first of its prices in known_
  std::size_t most_nodes_;
  int most_parts_;
  bool capped_{};
  std::int64_t steps_{};

  static constexpr int span(int from, int to) { return from + to * (to - 1) / 2; }
  [[nodiscard]] constexpr std::uint32_t number(GridRect const& r) const {
    return static_cast<std::uint32_t>(span(r.top, r.bottom) * column_spans_ + span(r.left, r.right));
  }
  [[nodiscard]] constexpr GridRect rect(std::uint32_t number) const {
    auto const open = [](int at) {
      int to = 1;
      while (at >= to) at -= to++;
      return std::array<int, 2>{at, to};
    };
    auto const rows = open(static_cast<int>(number) / column_spans_),
               columns = open(static_cast<int>(number) % column_spans_);
    auto const byte = [](int n) { return static_cast<std::uint8_t>(n); };
    return {sheet_, byte(rows[0]), byte(rows[1]), byte(columns[0]), byte(columns[1])};
  }
  static constexpr std::uint64_t mixed(std::uint64_t x) {
    x = (x + 1) * 0x9E3779B97F4A7C15U;
    return (x ^ (x >> 29U)) * 0xBF58476D1CE4E5B9U;
  }

  template <class Act> constexpr void each_cut(GridRect const& whole, Act act) const {
    for (auto along : {Axis::left_right, Axis::far_near})
      for (int line = 1; line < whole.across(along); ++line)
        act(number(whole.before(along, line)), number(whole.beyond(along, line)));
  }
  constexpr void find_least() {
    for (int high = 1; high <= grid_.rows; ++high)
      for (int wide = 1; wide <= grid_.columns; ++wide)
        for (int top = 0; top + high <= grid_.rows; ++top)
          for (int left = 0; left + wide <= grid_.columns; ++left) {
            auto const byte = [](int n) { return static_cast<std::uint8_t>(n); };
            GridRect const here{sheet_, byte(top), byte(top + high), byte(left), byte(left + wide)};
            auto const at = number(here);
            pieces_[at] = finder_.test(here);
            auto best = pieces_[at].possible ? pieces_[at].price : PieceFolds::none;
            auto parts = pieces_[at].possible ? 1 : PieceFolds::none;
            auto dearest = pieces_[at].possible ? pieces_[at].price : 0;
            each_cut(here, [&](std::uint32_t one, std::uint32_t other) {
              auto const price = least_[one] + least_[other] + folding_prices.cut;
              best = price < best ? price : best;
              auto const both = most_[one] + most_[other] + folding_prices.cut;
              dearest = both > dearest ? both : dearest;
              parts = fewest_[one] + fewest_[other] < parts ? fewest_[one] + fewest_[other] : parts;
            });
            least_[at] = best;
            fewest_[at] = parts;
            most_[at] = dearest;
          }
  }
  /// The partitions of one rectangle at one price, each once.
  struct Found {
    std::vector<std::uint32_t> nodes{};
    NumberSet fingerprints{};
  };
  constexpr void add(Found& found, Node node) {
    ++steps_;
    if (nodes_.size() >= most_nodes_) {
      capped_ = true;
      return;
    }
    if (!found.fingerprints.insert(node.fingerprint)) return;
    found.nodes.push_back(static_cast<std::uint32_t>(nodes_.size()));
    nodes_.push_back(node);
  }
  constexpr void join(Found& found, std::uint32_t whole, std::uint32_t one, std::uint32_t other, int above) {
    for (int share = 0; share <= above && !capped_; ++share) {
      auto const firsts = at_price(one, share);
      if (known_[firsts].nodes.empty()) continue;
      auto const seconds = at_price(other, above - share);
      for (auto const b : known_[seconds].nodes)
        for (auto const a : known_[firsts].nodes) {
          auto const parts = nodes_[a].parts + nodes_[b].parts;
          if (capped_) return;
          if (parts > most_parts_) continue;
          add(found, {whole, a, b, nodes_[a].fingerprint + nodes_[b].fingerprint, static_cast<std::uint16_t>(parts)});
        }
    }
  }
  /// Finds the partitions of a rectangle that cost `above` units more than its least price. Returns their index in
  /// known_.
  constexpr std::size_t at_price(std::uint32_t which, int above) {
    for (auto at = known_of_[which]; at != none; at = known_[at].next)
      if (known_[at].above_least == above) return at;
    Found found;
    ++steps_;
    auto const price = least_[which] + above * unit;
    if (pieces_[which].possible && pieces_[which].price == price) add(found, {which, none, none, mixed(which), 1});
    each_cut(rect(which), [&](std::uint32_t one, std::uint32_t other) {
      auto const rest = price - least_[one] - least_[other] - folding_prices.cut;
      if (rest >= 0) join(found, which, one, other, rest / unit);
    });
    known_.push_back({above, known_of_[which], static_cast<std::vector<std::uint32_t>&&>(found.nodes)});
    known_of_[which] = static_cast<std::uint32_t>(known_.size() - 1);
    return known_.size() - 1;
  }
  constexpr void collect(std::uint32_t node, std::vector<GridRect>& parts) const {
    if (nodes_[node].first == none) {
      parts.push_back(rect(nodes_[node].rect));
      return;
    }
    collect(nodes_[node].first, parts);
    collect(nodes_[node].second, parts);
  }
  [[nodiscard]] constexpr std::uint32_t whole() const {
    auto const byte = [](int n) { return static_cast<std::uint8_t>(n); };
    return number({sheet_, 0, byte(grid_.rows), 0, byte(grid_.columns)});
  }

public:
  /// Finds the least prices. Partitions into more than `most_parts` parts are not searched. Precondition: all pages of
  /// the sheet are known.
  constexpr Partitions(SheetGrid const& grid, int sheet, bool under_allowed, int most_parts, std::size_t most_nodes)
      : grid_{grid}, sheet_{static_cast<std::uint8_t>(sheet)}, finder_{grid, under_allowed}, row_spans_{span(
                                                                                                 0, grid.rows + 1)},
        column_spans_{span(0, grid.columns + 1)}, most_nodes_{most_nodes}, most_parts_{most_parts} {
    auto const count = static_cast<std::size_t>(row_spans_ * column_spans_);
    for (std::size_t i = 0; i < count; ++i)
      pieces_.push_back({}), least_.push_back(0), fewest_.push_back(0), most_.push_back(0), known_of_.push_back(none);
    find_least();
  }
  /// Returns the least price of the sheet.
  [[nodiscard]] constexpr int least() const { return least_[whole()]; }
  /// Returns a price that no partition of the sheet exceeds.
  [[nodiscard]] constexpr int most() const { return most_[whole()]; }
  /// Returns the least number of parts into which the sheet can be cut.
  [[nodiscard]] constexpr int fewest() const { return fewest_[whole()]; }
  /// Returns a rectangle as a piece.
  [[nodiscard]] constexpr Piece const& piece(GridRect const& rect) const { return pieces_[number(rect)]; }
  /// Returns the cheapest folds of a piece.
  constexpr PieceFolds folds(GridRect const& rect) { return finder_.folds(rect); }
  /// Returns all partitions at a price, each as a set of rectangles.
  constexpr std::vector<std::vector<GridRect>> at(int price) {
    std::vector<std::vector<GridRect>> all;
    if (price < least()) return all;
    for (auto const node : known_[at_price(whole(), (price - least()) / unit)].nodes) {
      std::vector<GridRect> parts;
      collect(node, parts);
      all.push_back(static_cast<std::vector<GridRect>&&>(parts));
    }
    return all;
  }
  /// Returns the steps of joining partitions that were made so far.
  [[nodiscard]] constexpr std::int64_t steps() const { return steps_; }
  /// Returns true if partitions were left out because there are too many.
  [[nodiscard]] constexpr bool capped() const { return capped_; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
