// SPDX-License-Identifier: MIT
/// The two formes of a sheet, and the two ways in which a page lies in one. A forme is the type of all pages that print
/// one side of a sheet. The outer forme prints the side with page 1, the inner forme the other side. In half-sheet work
/// one forme prints both sides.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// The forme of a sheet; `only` is the one forme of half-sheet work.
enum class Side : std::uint8_t { outer, inner, only };
/// The direction in which the head of a page of type points: to the far edge, away from the compositor, or to the near
/// edge.
enum class Head : std::uint8_t { far_edge, near_edge };

} // namespace v0
} // namespace bifolium
