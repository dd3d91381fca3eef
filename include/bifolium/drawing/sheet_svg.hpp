// SPDX-License-Identifier: MIT
/// Draws the sheet as paper, without print. Above is the sheet as the mould made it, to scale. Below is the same paper
/// in each leaf after folding, as it appears against the light in the order of the book.
///
/// Long thin lines are chain lines. The close lines, drawn in one corner only so that the sheet stays light, are wire
/// lines. A ring is the watermark, and a ring with a slanting cross the countermark; the cross slants so that the
/// quarter of it that a fold leaves in a corner still differs from a quarter of a ring. The uneven edge is the deckle.
/// In a leaf the heavy side is the gutter, and an edge that is neither deckle nor fold was cut.
///
/// Paper that was cut before printing is drawn whole, with the part that went to press in its far left corner and a
/// heavy line for the cut. Which part of a sheet a leaf comes from is unknown; the picture shows one of the two or four
/// cases.
#pragma once

#include <bifolium/drawing/detail/paper_drawing.hpp>

namespace bifolium {
inline namespace v0 {

/// Draws one sheet of a scheme as paper, and its leaves. `lie` says which way the sheet was laid on the press. Sheets
/// count from 0. Errors: those of `fold`. Precondition: the scheme has the sheet.
inline Expected<std::string> sheet_svg(Scheme const& scheme, Sheet<millimetres> const& paper,
                                       Mould const& mould = hand_mould, int sheet = 0, Lie lie = Lie::as_given) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  return detail::paper_svg({scheme, *folded, paper, mould, sheet, lie}, {});
}
/// Draws one sheet of a scheme on a named sheet of paper, and its leaves; the drawing gives the names of the paper.
/// Sheets count from 0. Errors: those of `fold`. Precondition: the scheme has the sheet.
inline Expected<std::string> sheet_svg(Scheme const& scheme, SheetSize const& paper, Mould const& mould = hand_mould,
                                       int sheet = 0, Lie lie = Lie::as_given) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  return detail::paper_svg({scheme, *folded, paper.sheet(), mould, sheet, lie}, paper.name);
}

} // namespace v0
} // namespace bifolium
