// SPDX-License-Identifier: MIT
/// The two formes of a sheet, and the two ways a page lies in one. The outer forme prints the side of the sheet that lay
/// on its type when page 1 was printed, the inner forme the other side; in half-sheet work one forme prints both.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// Which forme; `only` is the one forme of half-sheet work.
enum class Side : std::uint8_t { outer, inner, only };
/// Where the head of a page of type points: away from the compositor or towards him.
enum class Head : std::uint8_t { far_edge, near_edge };

} // namespace v0
} // namespace bifolium
