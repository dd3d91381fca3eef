// SPDX-License-Identifier: MIT
/// The formats that are ranked, by their leaves to the sheet: those of which a scheme is known.
#pragma once

#include <bifolium/core/config.hpp>

#include <array>
#include <cstddef>
#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// Formats that share paper: 1° and 2°; 4° and 6°; 8°; 12° and 18°; all others.
inline constexpr std::size_t format_groups = 5;
/// Which group the format of so many leaves belongs to.
[[nodiscard]] constexpr std::size_t format_group(int leaves) noexcept {
  return leaves <= 2 ? 0 : leaves <= 6 ? 1 : leaves == 8 ? 2 : leaves == 12 || leaves == 18 ? 3 : 4;
}
/// The formats that are ranked, by their leaves to the sheet.
inline constexpr std::array<std::uint8_t, 17> ranked_leaves{1,  2,  4,  6,  8,  12, 16, 18, 20,
                                                            24, 32, 36, 48, 64, 72, 96, 128};
/// The place of a format among `ranked_leaves`. pre: it is one of them.
[[nodiscard]] constexpr std::size_t ranked_number(int leaves) noexcept {
  std::size_t i = 0;
  while (i + 1 < ranked_leaves.size() && ranked_leaves[i] != leaves) ++i;
  return i;
}
/// How common each of `ranked_leaves` is; of any unit.
using FormatShares = std::array<double, ranked_leaves.size()>;

} // namespace v0
} // namespace bifolium
