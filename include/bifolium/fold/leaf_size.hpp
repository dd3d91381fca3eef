// SPDX-License-Identifier: MIT
/// The size of a leaf on a given sheet, and the sheet that a leaf implies. Divided evenly a sheet gives all its leaves one
/// size; where creases and cuts were measured, each leaf has its own. Nothing is taken off here: binders cut head, tail
/// and fore-edge, never the gutter, and how much they cut is evidence, not geometry.
#pragma once

#include <bifolium/fold/fold.hpp>
#include <bifolium/paper/sheet.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {

/// A leaf held upright.
template <class L> struct LeafSize {
  L height{}, width{}; ///< of the leaf as it is read
  friend constexpr bool operator==(LeafSize const&, LeafSize const&) = default;
};

/// What a leaf implies: the least sheet, and whether its longer side lies as the scheme lays the long side of its paper.
/// Where it does not, the leaf is of another shape than the scheme's leaves.
template <class L> struct ImpliedSheet {
  Sheet<L> least;      ///< the least sheet the leaf can be a part of
  bool lies_as_laid{}; ///< its longer side lies as the scheme lays the long side of its paper
  friend constexpr bool operator==(ImpliedSheet const&, ImpliedSheet const&) = default;
};

namespace detail {
/// `n` times a length, by adding: foreign lengths need not know how to multiply.
template <class L> constexpr L times(L length, int n) {
  L sum{length};
  for (int i = 1; i < n; ++i) sum = sum + length;
  return sum;
}
/// How many times the long and the short side were divided, paper cut before printing included.
struct Divided {
  int long_side, short_side;
};
constexpr Divided divided(SheetLine const& lay) {
  int const halves = lay.part == PaperPart::whole ? 1 : 2, quarters = lay.part == PaperPart::quarter ? 2 : 1;
  return lay.long_side == Axis::left_right ? Divided{lay.columns * halves, lay.rows * quarters}
                                           : Divided{lay.rows * halves, lay.columns * quarters};
}
} // namespace detail

/// The leaves of a sheet laid so, when it is divided evenly.
template <LengthLike L> constexpr LeafSize<L> leaf_size(SheetLine const& lay, Sheet<L> const& paper) {
  auto const n = detail::divided(lay);
  L const along = LengthTraits<L>::part(paper.long_side(), n.long_side);
  L const across = LengthTraits<L>::part(paper.short_side(), n.short_side);
  return lay.long_side == Axis::left_right ? LeafSize<L>{across, along} : LeafSize<L>{along, across};
}
/// The size of one leaf of a fold, the sheet divided evenly.
template <int N, LengthLike L>
constexpr LeafSize<L> leaf_size(Fold<N> const& fold, LeafAt leaf, Sheet<L> const& paper) {
  return bifolium::leaf_size(fold.sheet(fold.cell(leaf).sheet), paper);
}
/// The size of one leaf where creases and cuts were measured: the heights of the rows from the far edge, the widths of
/// the columns from the left, of the sheet it is part of. pre: one length for each row and column.
template <int N, LengthLike L>
constexpr LeafSize<L> leaf_size(Fold<N> const& fold, LeafAt leaf, std::span<L const> row_heights,
                                std::span<L const> column_widths) {
  auto const cell = fold.cell(leaf);
  auto const& lay = fold.sheet(cell.sheet);
  if (row_heights.size() != lay.rows || column_widths.size() != lay.columns)
    broken("a length is needed for each row and each column of the sheet");
  return {row_heights[cell.row], column_widths[cell.column]};
}

/// The least sheet of paper that, laid so and evenly divided, gives leaves of this size.
/// pre: height and width are more than zero.
template <LengthLike L> constexpr ImpliedSheet<L> sheet_implied(SheetLine const& lay, LeafSize<L> leaf) {
  auto const n = detail::divided(lay);
  bool const upright = lay.long_side == Axis::left_right;
  L const along = detail::times(upright ? leaf.width : leaf.height, n.long_side);
  L const across = detail::times(upright ? leaf.height : leaf.width, n.short_side);
  return {Sheet<L>{along, across}, !(along < across)};
}

} // namespace v0
} // namespace bifolium
