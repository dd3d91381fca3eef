// SPDX-License-Identifier: MIT
/// How what the leaves of one scheme show is kept in leaf_rows.hpp. A leaf is twelve characters: its sheet (a, b, ...);
/// its chain lines; the watermark as the sheet is given and end for end, the countermark in the same way, and a mark in
/// the exact centre of the sheet (digits of `MarkPlace`); head, tail and fore-edge (1 a bolt, 2 a deckle, 3 a deckle or
/// cut, and 4 more at an end of the long side); the point-hole in the two ways of laying the sheet (digits of
/// `HolePlace`). A blank stands between gatherings.
#pragma once

#include <bifolium/fold/scheme.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {
namespace leaf_rows {

/// Characters of a leaf.
inline constexpr std::size_t characters = 12;

/// One scheme.
struct SchemeLeaves {
  std::uint8_t leaves;        ///< to the sheet
  Shape shape;                ///< of the format
  std::uint8_t rows, columns; ///< of its sheet
  Axis long_side;
  PaperPart part;
  bool one_forme;
  Axis turned_about;
  std::uint8_t sheets;
  char const* text; ///< its leaves
};

} // namespace leaf_rows
} // namespace detail
} // namespace v0
} // namespace bifolium
