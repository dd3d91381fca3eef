// SPDX-License-Identifier: MIT
/// Compares a piece of a sheet folded into a packet with the evidence of the leaves that it makes. For each way in
/// which the sheet may have lain, the result is the set of leaves of which each alone, if it is left out, makes the
/// rest agree; it has all leaves if there is no contradiction.
#pragma once

#include <bifolium/fold/detail/folding_counter.hpp>
#include <bifolium/fold/detail/piece_finder.hpp>
#include <bifolium/fold/seen_leaf.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The leaves any one of which explains what disagrees: bit k is leaf k of the gatherings in turn; all bits, if there
/// is no contradiction.
using Blame = std::uint64_t;
inline constexpr Blame nobody = ~Blame{0};

/// For each way the sheet may have lain.
using BlameByLie = std::array<Blame, 4>;

/// One gathering as it is looked for.
struct Wanted {
  int leaves{}, first_bit{};
  std::vector<SeenLeaf const*> seen{}; ///< by leaf from 0; null if it was not looked at
};

/// Compares all packets of a piece with what was seen.
class PieceComparison {
  Wanted const& wanted_;
  SheetLine const& lay_;
  int lies_;
  bool strict_;                    // nobody is to blame: what disagrees is out
  std::vector<LeafShows> marks_{}; // by cell of the sheet, head far, gutter right

  [[nodiscard]] static std::size_t index(SheetLine const& lay, int row, int column, bool head_far, bool gutter_right) {
    return static_cast<std::size_t>(((row * lay.columns + column) * 2 + (head_far ? 1 : 0)) * 2 +
                                    (gutter_right ? 1 : 0));
  }
  [[nodiscard]] Blame bit(int leaf) const { return Blame{1} << static_cast<unsigned>(wanted_.first_bit + leaf - 1); }

public:
  /// A piece in its place, and the leaf of the gathering that each of its leaves is.
  struct Place {
    GridRect rect{};
    int start{}, gap{}; ///< its first leaf, and the leaves set inside it
    [[nodiscard]] int leaf(int k) const {
      auto const n = rect.cells(), front = n - n / 2;
      return (k < front ? start + k : start + gap + k) + 1;
    }
  };
  PieceComparison(Wanted const& wanted, SheetLine const& lay, Mould const& mould, int lies, bool strict)
      : wanted_{wanted}, lay_{lay}, lies_{lies}, strict_{strict} {
    for (int row = 0; row < lay.rows; ++row)
      for (int column = 0; column < lay.columns; ++column)
        for (bool const head_far : {false, true})
          for (bool const gutter_right : {false, true}) {
            Cell cell{};
            cell.row = static_cast<std::uint8_t>(row), cell.column = static_cast<std::uint8_t>(column);
            cell.head_far = head_far;
            marks_.push_back(marks_in_leaf(lay, cell, gutter_right, mould));
          }
  }

  /// One packet read from one of its ends, its far row with the heads far or near.
  struct Reading {
    Packet const& packet;
    bool from_end{}, heads_far{};
    [[nodiscard]] int cell(int k) const {
      auto const n = static_cast<int>(packet.cells.size());
      return packet.cells[static_cast<std::size_t>(from_end ? n - 1 - k : k)];
    }
  };
  /// Adds to the blame what disagrees in a piece so read. False if no single leaf explains it, however the sheet lay.
  [[nodiscard]] bool compare(Place const& place, Reading const& reading, BlameByLie& blame) const {
    int const columns = place.rect.columns(), n = place.rect.cells();
    std::array<std::uint8_t, 64> leaf_of{};
    for (int k = 0; k < n; ++k) leaf_of[static_cast<std::size_t>(reading.cell(k))] = static_cast<std::uint8_t>(k);
    int const one = reading.cell(0), other = reading.cell(n - 1), left = one < other ? one : other;
    for (int k = 0; k < n && possible(blame); ++k) {
      auto const* const seen = wanted_.seen[static_cast<std::size_t>(place.leaf(k) - 1)];
      if (seen == nullptr) continue;
      int const cell = reading.cell(k), row = cell / columns, column = cell % columns;
      bool const head_far = reading.heads_far == (row % 2 == 0);
      bool const gutter_right = n == 1 ? reading.from_end : column % 2 == left % columns % 2;
      auto const here = bit(place.leaf(k));
      auto const edge = [&](std::optional<SeenEdge> const& looked_for, int down, int right) {
        if (!looked_for) return;
        auto const [kind, mate] = edge_at(place, leaf_of, row + down, column + right, right != 0);
        if (!agrees(*looked_for, kind, mate)) add(blame, here | (looked_for->mate ? bit(*looked_for->mate) : 0));
      };
      int const to_head = head_far ? -1 : 1, to_gutter = gutter_right ? 1 : -1;
      edge(seen->head, to_head, 0);
      edge(seen->tail, -to_head, 0);
      edge(seen->fore_edge, 0, -to_gutter);
      if (seen->conjugate || seen->disjunct) {
        auto const [kind, mate] = edge_at(place, leaf_of, row, column + to_gutter, true);
        bool const joined = kind == Edge::Kind::bolt && n > 1;
        if (joined ? seen->disjunct || mate != seen->conjugate : !seen->disjunct)
          add(blame, here | (seen->conjugate ? bit(*seen->conjugate) : 0));
      }
      marks(blame, *seen, marks_[index(lay_, place.rect.top + row, place.rect.left + column, head_far, gutter_right)],
            here);
    }
    return possible(blame);
  }

private:
  [[nodiscard]] bool possible(BlameByLie const& blame) const {
    for (int lie = 0; lie < lies_; ++lie)
      if (blame[static_cast<std::size_t>(lie)] != 0) return true;
    return false;
  }
  void add(BlameByLie& blame, Blame involved) const {
    for (auto& one : blame) one &= strict_ ? 0 : involved;
  }
  void marks(BlameByLie& blame, SeenLeaf const& seen, LeafShows const& shown, Blame here) const {
    if (seen.chain_lines && shown.chain_lines && seen.chain_lines != shown.chain_lines) add(blame, here);
    if (seen.point_hole && !agrees(*seen.point_hole, shown.point_holes[0]) &&
        !agrees(*seen.point_hole, shown.point_holes[1]))
      add(blame, here);
    if (!seen.watermark) return;
    for (std::size_t lie = 0; lie < static_cast<std::size_t>(lies_); ++lie)
      if (!agrees(*seen.watermark, shown.watermark[lie])) blame[lie] &= strict_ ? 0 : here;
  }
  /// Returns the edge towards a cell of the piece, which may be outside it; a fold is told as a bolt, at the gutter
  /// too.
  [[nodiscard]] std::pair<Edge::Kind, std::optional<int>>
  edge_at(Place const& place, std::array<std::uint8_t, 64> const& leaf_of, int row, int column, bool at_side) const {
    auto const& rect = place.rect;
    if (row >= 0 && row < rect.rows() && column >= 0 && column < rect.columns())
      return {Edge::Kind::bolt, place.leaf(leaf_of[static_cast<std::size_t>(row * rect.columns() + column)])};
    row += rect.top, column += rect.left;
    bool const on_sheet = row >= 0 && row < lay_.rows && column >= 0 && column < lay_.columns;
    return {on_sheet ? Edge::Kind::cut : edge_of_sheet(lay_, at_side), std::nullopt};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
