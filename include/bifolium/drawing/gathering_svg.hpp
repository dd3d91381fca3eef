// SPDX-License-Identifier: MIT
/// Draws a gathering that stands on its spine, seen from the tail. The leaves rise from the gutter and fan out, with
/// the first leaf on the left and the outermost pair outside; each has its name at its tip. In a book read from right
/// to left the first leaf is on the right, since the drawing shows the real view from the tail.
#pragma once

#include <bifolium/drawing/detail/gathering_picture.hpp>
#include <bifolium/drawing/drawn_gathering.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

/// Draws the gathering standing on its spine, seen from the tail. Up to 24 leaves fit on A4 in landscape; more leaves
/// make the drawing wider, so that names stay legible. Precondition: each `conjugate` is mutual, and joined pairs are
/// nested.
inline std::string gathering_svg(DrawnGathering const& gathering) {
  auto const text = gathering_text(gathering); // stops where the precondition does not hold
  return detail::GatheringPicture{gathering}.draw(text);
}

} // namespace v0
} // namespace bifolium
