// SPDX-License-Identifier: MIT
/// The size of a leaf on a given sheet, and the sheet that a leaf implies. If a sheet is divided evenly, all its leaves
/// have one size; if creases and cuts were measured, each leaf has its own. The sizes are of uncut leaves. Binders cut
/// head, tail and fore-edge, never the gutter; how much they cut is a matter of evidence, not of geometry.
#pragma once

#include <bifolium/fold/fold.hpp>
#include <bifolium/paper/sheet.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {

/// The size of a leaf held upright.
template <class L> struct LeafSize {
  L height{}, width{}; ///< height and width of the leaf as it is read
  friend constexpr bool operator==(LeafSize const&, LeafSize const&) = default;
};

/// The sheet that a leaf implies.
template <class L> struct ImpliedSheet {
  Sheet<L> least; ///< the smallest sheet of which the leaf can be a part
  /// true if the longer side of that sheet lies as the scheme lays the long side of its paper; if false, the leaf has
  /// another shape than the scheme's leaves
  bool lies_as_laid{};
  friend constexpr bool operator==(ImpliedSheet const&, ImpliedSheet const&) = default;
};

namespace detail {
/// Returns `n` times a length, by addition, since length types of other libraries may not have multiplication.
template <class L> constexpr L times(L length, int n) {
  L sum{length};
  for (int i = 1; i < n; ++i) sum = sum + length;
  return sum;
}
/// The numbers of parts into which the long and the short side are divided, including cuts before printing.
struct Divided {
  int long_side, short_side;
};
constexpr Divided divided(SheetLine const& lay) {
  int const halves = lay.part == PaperPart::whole ? 1 : 2, quarters = lay.part == PaperPart::quarter ? 2 : 1;
  return lay.long_side == Axis::left_right ? Divided{lay.columns * halves, lay.rows * quarters}
                                           : Divided{lay.rows * halves, lay.columns * quarters};
}
} // namespace detail

/// Returns the size of the leaves of a sheet that is laid as `lay` says and divided evenly.
template <LengthLike L> constexpr LeafSize<L> leaf_size(SheetLine const& lay, Sheet<L> const& paper) {
  auto const n = detail::divided(lay);
  L const along = LengthTraits<L>::part(paper.long_side(), n.long_side);
  L const across = LengthTraits<L>::part(paper.short_side(), n.short_side);
  return lay.long_side == Axis::left_right ? LeafSize<L>{across, along} : LeafSize<L>{along, across};
}
/// Returns the size of one leaf of a fold whose sheet is divided evenly. Precondition: the leaf belongs to the fold.
template <int N, LengthLike L>
constexpr LeafSize<L> leaf_size(Fold<N> const& fold, LeafAt leaf, Sheet<L> const& paper) {
  return bifolium::leaf_size(fold.sheet(fold.cell(leaf).sheet), paper);
}
/// Returns the size of one leaf if creases and cuts were measured. The lengths are of the sheet that the leaf is part
/// of: the heights of its rows from the far edge and the widths of its columns from the left. Precondition: there is
/// one length for each row and column.
template <int N, LengthLike L>
constexpr LeafSize<L> leaf_size(Fold<N> const& fold, LeafAt leaf, std::span<L const> row_heights,
                                std::span<L const> column_widths) {
  auto const cell = fold.cell(leaf);
  auto const& lay = fold.sheet(cell.sheet);
  if (row_heights.size() != lay.rows || column_widths.size() != lay.columns)
    broken("a length is needed for each row and each column of the sheet");
  return {row_heights[cell.row], column_widths[cell.column]};
}

/// Returns the smallest sheet of paper that gives leaves of this size if it is laid as `lay` says and divided evenly.
/// Precondition: height and width are more than zero.
template <LengthLike L> constexpr ImpliedSheet<L> sheet_implied(SheetLine const& lay, LeafSize<L> leaf) {
  auto const n = detail::divided(lay);
  bool const upright = lay.long_side == Axis::left_right;
  L const along = detail::times(upright ? leaf.width : leaf.height, n.long_side);
  L const across = detail::times(upright ? leaf.height : leaf.width, n.short_side);
  return {Sheet<L>{along, across}, !(along < across)};
}

} // namespace v0
} // namespace bifolium
