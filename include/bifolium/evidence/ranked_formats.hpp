// SPDX-License-Identifier: MIT
/// The formats that an inference ranks, by their leaves to the sheet: those for which there is a scheme.
#pragma once

#include <bifolium/core/config.hpp>

#include <array>
#include <cstddef>
#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// The number of groups of formats that share paper: 1° and 2°; 4° and 6°; 8°; 12° and 18°; all others.
inline constexpr std::size_t format_groups = 5;
/// Returns the group of the format with `leaves` leaves to the sheet, from 0.
[[nodiscard]] constexpr std::size_t format_group(int leaves) noexcept {
  return leaves <= 2 ? 0 : leaves <= 6 ? 1 : leaves == 8 ? 2 : leaves == 12 || leaves == 18 ? 3 : 4;
}
/// The ranked formats, by their leaves to the sheet.
inline constexpr std::array<std::uint8_t, 17> ranked_leaves{1,  2,  4,  6,  8,  12, 16, 18, 20,
                                                            24, 32, 36, 48, 64, 72, 96, 128};
/// Returns the index of a format in `ranked_leaves`. Precondition: it has the format.
[[nodiscard]] constexpr std::size_t ranked_number(int leaves) noexcept {
  std::size_t i = 0;
  while (i + 1 < ranked_leaves.size() && ranked_leaves[i] != leaves) ++i;
  return i;
}
/// How common each of `ranked_leaves` is, in any unit.
using FormatShares = std::array<double, ranked_leaves.size()>;

} // namespace v0
} // namespace bifolium
