// SPDX-License-Identifier: MIT
/// The evidence that a leaf shows of its sheet: which edges are edges of the sheet (deckle), were cut, or are folds -
/// the gutter, and the bolts that join unopened leaves -, how the chain lines run, and where a watermark and the holes
/// of the press points are. Everything is computed from the fold; the library stores no such fact about any format.
///
/// A sheet can be laid on the type in four ways (turned end for end, turned over side for side), so a mark has up to
/// four possible places in the book. One sheet shows one of them.
#pragma once

#include <bifolium/fold/fold.hpp>
#include <bifolium/paper/mould.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// The direction of the chain lines in the upright leaf.
enum class ChainLines : std::uint8_t { unknown, vertical, horizontal, both };

/// A point in a leaf, as fractions of the height from the head and of the width from the gutter. 0 and 1 are edges,
/// where a mark is divided between leaves.
struct PointOfLeaf {
  double from_head{}, from_gutter{}; ///< fractions of the height from the head and of the width from the gutter, 0 to 1
  friend constexpr bool operator==(PointOfLeaf, PointOfLeaf) = default;
};

/// An edge of a leaf when the sheet is folded but neither opened nor trimmed.
struct Edge {
  /// What the edge of the leaf was in the sheet.
  enum class Kind : std::uint8_t {
    deckle,        ///< an edge of the sheet as it came from the mould
    cut,           ///< made by a cut before folding
    deckle_or_cut, ///< an edge of paper cut before printing; which half of the sheet it was is unknown
    bolt,          ///< a fold at head, tail or fore-edge
    gutter,        ///< the fold at the spine
  };
  Kind kind{};                  ///< the kind of edge
  std::optional<LeafAt> mate{}; ///< the leaf on the other side of a fold
  friend constexpr bool operator==(Edge const&, Edge const&) = default;
};

/// A way of laying a sheet on the press.
enum class Lie : std::uint8_t { as_given, end_for_end, side_for_side, both_ways };

/// The evidence that a leaf shows.
struct LeafShows {
  Edge head{}, tail{}, gutter{}, fore_edge{}; ///< the four edges of the leaf as it is read
  std::optional<ChainLines> chain_lines{};    ///< no value if the mould has none or the sheet does not tell
  /// The place of the mark for each `Lie`. With the ordinary mould, as_given and end_for_end are the two halves of the
  /// sheet, and the other two repeat them.
  std::array<std::optional<PointOfLeaf>, 4> watermark{}, countermark{};
  /// the holes that the press points made, if the leaf has any
  std::array<std::optional<PointOfLeaf>, 2> point_holes{};

  /// Returns the place of the watermark if the sheet lay in this way, or no value if the mark is in another leaf.
  [[nodiscard]] constexpr std::optional<PointOfLeaf> watermark_lying(Lie lie) const {
    return watermark[static_cast<std::size_t>(lie)];
  }
};

/// The place of the press points, which pierce the sheet and hold it: on the line that halves the longer side of the
/// sheet in the press, at this fraction of the other side from each edge. Points on the short cross of the frame, near
/// the edges, reproduce the published places of the holes in 2°, 4° and 8° (Roberts & Etherington s.v. pinholes); the
/// distance is an assumption.
inline constexpr double points_from_edge = 1.0 / 24;

namespace detail {

/// A point in the grid of the flat sheet, in cells: columns from the left, rows from the far edge.
struct PointOfGrid {
  double row, column;
};

/// Converts a point of the whole sheet of paper to the grid of the part that went to press, or returns no value if it
/// is on the part cut away.
constexpr std::optional<PointOfGrid> in_grid(SheetLine const& sheet, PointOfSheet point, Lie lie) {
  auto along = lie == Lie::end_for_end || lie == Lie::both_ways ? 1 - point.along : point.along;
  auto across = lie == Lie::side_for_side || lie == Lie::both_ways ? 1 - point.across : point.across;
  if (sheet.part != PaperPart::whole) along *= 2;
  if (sheet.part == PaperPart::quarter) across *= 2;
  if (along > 1 || across > 1) return {};
  return sheet.long_side == Axis::left_right ? PointOfGrid{across * sheet.rows, along * sheet.columns}
                                             : PointOfGrid{along * sheet.rows, across * sheet.columns};
}

constexpr std::optional<PointOfLeaf> in_leaf(Cell cell, bool gutter_right, std::optional<PointOfGrid> point) {
  if (!point) return std::nullopt;
  auto const from_far = point->row - cell.row, from_left = point->column - cell.column;
  if (from_far < 0 || from_far > 1 || from_left < 0 || from_left > 1) return std::nullopt;
  return PointOfLeaf{cell.head_far ? from_far : 1 - from_far, gutter_right ? 1 - from_left : from_left};
}

/// Returns the kind of an edge of the sheet itself: of the left and right edges if `at_side` is true, else of the far
/// and near edges.
constexpr Edge::Kind edge_of_sheet(SheetLine const& sheet, bool at_side) {
  // Halving cuts across the long side, so the doubtful edges are its ends; quartering cuts both ways.
  bool const at_end_of_long_side = (sheet.long_side == Axis::left_right) == at_side;
  bool const doubtful = sheet.part == PaperPart::quarter || (sheet.part == PaperPart::half && at_end_of_long_side);
  return doubtful ? Edge::Kind::deckle_or_cut : Edge::Kind::deckle;
}

/// Returns the chain lines of a leaf whose head points far or near, or no value if the mould has none or the sheet does
/// not tell.
constexpr std::optional<ChainLines> chain_lines_of(SheetLine const& sheet, Mould const& mould) {
  if (mould.chains != ChainRun::parallel_to_short_side && mould.chains != ChainRun::parallel_to_long_side)
    return std::nullopt;
  // Heads point far or near, so a line that runs far-near on the sheet is vertical in the leaf.
  bool const far_near = (sheet.long_side == Axis::left_right) == (mould.chains == ChainRun::parallel_to_short_side);
  return far_near ? ChainLines::vertical : ChainLines::horizontal;
}

/// Returns one of the two holes that the press points make.
constexpr PointOfGrid point_hole(SheetLine const& sheet, std::size_t which) {
  // The long side of half a sheet runs in the other direction, since half the long side is less than the short side.
  bool const longer_left_right = (sheet.long_side == Axis::left_right) != (sheet.part == PaperPart::half);
  auto const from_edge = which == 0 ? points_from_edge : 1 - points_from_edge;
  return longer_left_right ? PointOfGrid{from_edge * sheet.rows, 0.5 * sheet.columns}
                           : PointOfGrid{0.5 * sheet.rows, from_edge * sheet.columns};
}

/// Returns the marks and holes of a leaf that lay in a cell, without its edges.
constexpr LeafShows marks_in_leaf(SheetLine const& sheet, Cell cell, bool gutter_right, Mould const& mould) {
  LeafShows shown{};
  shown.chain_lines = chain_lines_of(sheet, mould);
  for (std::size_t lie = 0; lie < 4; ++lie) {
    auto const place = [&](PointOfSheet point) {
      return in_leaf(cell, gutter_right, in_grid(sheet, point, static_cast<Lie>(lie)));
    };
    if (mould.watermark) shown.watermark[lie] = place(*mould.watermark);
    if (mould.countermark) shown.countermark[lie] = place(*mould.countermark);
  }
  for (std::size_t i = 0; i < 2; ++i) shown.point_holes[i] = in_leaf(cell, gutter_right, point_hole(sheet, i));
  return shown;
}

template <int N> constexpr Edge edge(Fold<N> const& fold, LeafAt leaf, int down, int right) {
  auto const cell = fold.cell(leaf);
  auto const& sheet = fold.sheet(cell.sheet);
  auto const row = cell.row + down, column = cell.column + right;
  if (row < 0 || row >= sheet.rows || column < 0 || column >= sheet.columns)
    return {edge_of_sheet(sheet, right != 0), {}};
  auto const other = fold.leaf_at(cell.sheet, row, column);
  if (fold.cell(other).piece != cell.piece) return {Edge::Kind::cut, {}};
  bool const at_gutter = right != 0 && (right > 0) == fold.gutter_right(leaf);
  return {at_gutter ? Edge::Kind::gutter : Edge::Kind::bolt, other};
}

} // namespace detail

/// Returns the evidence that a leaf shows on paper from `mould`. Precondition: the leaf belongs to the fold.
template <int N> constexpr LeafShows shows(Fold<N> const& fold, LeafAt leaf, Mould const& mould = hand_mould) {
  auto const cell = fold.cell(leaf);
  bool const gutter_right = fold.gutter_right(leaf);
  int const to_head = cell.head_far ? -1 : 1, to_gutter = gutter_right ? 1 : -1;
  auto shown = detail::marks_in_leaf(fold.sheet(cell.sheet), cell, gutter_right, mould);
  shown.head = detail::edge(fold, leaf, to_head, 0);
  shown.tail = detail::edge(fold, leaf, -to_head, 0);
  shown.gutter = detail::edge(fold, leaf, 0, to_gutter);
  shown.fore_edge = detail::edge(fold, leaf, 0, -to_gutter);
  return shown;
}

} // namespace v0
} // namespace bifolium
