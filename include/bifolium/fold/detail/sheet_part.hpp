// SPDX-License-Identifier: MIT
/// What the leaves of a rectangle of a sheet can show depends on few things: which of its sides are edges of the sheet, and
/// where in it marks and point-holes are, as far as the evidence separates places. Rectangles in different places, even of
/// different sheets, are often equal in this, and a result for one of them holds for all.
#pragma once

#include <bifolium/fold/detail/piece_finder.hpp>
#include <bifolium/fold/seen_leaf.hpp>

#include <bit>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The borders between places in a leaf that the evidence of marks and holes separates, along one side of the leaf; each
/// counted from both ends, since a leaf may lie either way.
class PlacesTold {
  std::vector<double> places_{0, 1};

public:
  void add(double from, double to) {
    for (auto const place : {from, 1 - from, to, 1 - to}) places_.push_back(place);
  }
  /// Returns a place along the sheet, in leaves, that agrees with the same evidence as the given one: the middle between
  /// two borders.
  [[nodiscard]] double alike(double along) const {
    constexpr double same = 1e-9;
    auto const leaf = static_cast<int>(along);
    auto const within = along - leaf;
    double below = 0, above = 1;
    for (auto const place : places_) {
      auto const apart = place - within;
      if (apart < same && apart > -same) return along;
      if (apart < 0 && place > below) below = place;
      if (apart > 0 && place < above) above = place;
    }
    return leaf + (below + above) / 2;
  }
};
/// The evidence of marks and holes in a gathering.
struct PointsLookedFor {
  bool marks{}, holes{};        ///< true if somebody looked for them in any leaf
  PlacesTold rows{}, columns{}; ///< the heights and the widths at which they were seen
  void add(std::optional<SeenMark> const& seen, bool& looked_for) {
    if (!seen) return;
    looked_for = true;
    rows.add(seen->head_from, seen->head_to);
    columns.add(seen->gutter_from, seen->gutter_to);
  }
};

/// A rectangle of a sheet, or the whole sheet.
struct SheetPart {
  std::uint8_t rows{}, columns{};
  bool far_edge{true}, near_edge{true}, left_edge{true}, right_edge{true}; ///< sides that are edges of the sheet
  /// Watermarks by the way the sheet lies, then the two point-holes, from the far left corner; no value if outside.
  std::array<std::optional<PointOfGrid>, 6> points{};

  [[nodiscard]] static SheetPart whole(SheetLine const& lay, Mould const& mould, int lies,
                                       PointsLookedFor const& seen) {
    SheetPart sheet{lay.rows, lay.columns};
    for (std::size_t lie = 0; lie < static_cast<std::size_t>(lies) && seen.marks && mould.watermark; ++lie)
      sheet.points[lie] = in_grid(lay, *mould.watermark, static_cast<Lie>(lie));
    for (std::size_t hole = 0; hole < 2 && seen.holes; ++hole) sheet.points[4 + hole] = point_hole(lay, hole);
    for (auto& point : sheet.points)
      if (point) point = PointOfGrid{seen.rows.alike(point->row), seen.columns.alike(point->column)};
    return sheet;
  }
  [[nodiscard]] SheetPart part(GridRect const& rect) const {
    SheetPart part{static_cast<std::uint8_t>(rect.rows()), static_cast<std::uint8_t>(rect.columns())};
    part.far_edge = far_edge && rect.top == 0;
    part.near_edge = near_edge && rect.bottom == rows;
    part.left_edge = left_edge && rect.left == 0;
    part.right_edge = right_edge && rect.right == columns;
    for (std::size_t i = 0; i < points.size(); ++i) {
      if (!points[i]) continue;
      PointOfGrid const there{points[i]->row - rect.top, points[i]->column - rect.left};
      if (there.row >= 0 && there.row <= part.rows && there.column >= 0 && there.column <= part.columns)
        part.points[i] = there;
    }
    return part;
  }
  /// Returns the number of sides that were cut.
  [[nodiscard]] int sides_cut() const { return !far_edge + !near_edge + !left_edge + !right_edge; }
  /// Returns the kind of the edge between the part and a cell outside it: an edge of the sheet, or a cut.
  [[nodiscard]] Edge::Kind edge(SheetLine const& lay, int row, int column) const {
    bool const own = row < 0 ? far_edge : row >= rows ? near_edge : column < 0 ? left_edge : right_edge;
    return own ? edge_of_sheet(lay, row >= 0 && row < rows) : Edge::Kind::cut;
  }

  using Key = std::array<std::uint64_t, 13>;
  /// Returns a key that is the same for parts that are equal in all this.
  [[nodiscard]] Key key() const {
    constexpr std::uint64_t outside = ~std::uint64_t{0}; // no number that a point has
    Key key{};
    key[0] = static_cast<std::uint64_t>(rows) << 16U | static_cast<std::uint64_t>(columns) << 8U |
             static_cast<std::uint64_t>(far_edge << 3 | near_edge << 2 | left_edge << 1 | right_edge << 0);
    for (std::size_t i = 0; i < points.size(); ++i) {
      key[1 + 2 * i] = points[i] ? std::bit_cast<std::uint64_t>(points[i]->row) : outside;
      key[2 + 2 * i] = points[i] ? std::bit_cast<std::uint64_t>(points[i]->column) : outside;
    }
    return key;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
