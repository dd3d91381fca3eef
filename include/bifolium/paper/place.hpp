// SPDX-License-Identifier: MIT
/// A place of printing, and the region with which it shared paper and habits. Borders moved, so a town has two facts:
/// the country in which it lies today, so that people find it, and a region for reasoning. Strasbourg lies in France,
/// but its early printers worked as those of Germany did. paper/read_place.hpp reads names of places.
#pragma once

#include <bifolium/paper/region.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A town, or a country if no town is named.
struct Place {
  std::string_view name{};    ///< the English name if there is one, else the local name
  std::string_view country{}; ///< the country in which the place lies today
  Region region{};            ///< the region in the time of the hand press
  friend constexpr bool operator==(Place const&, Place const&) = default;
};

/// Returns the smallest region that includes both: Italy for Venice and Rome, Europe for France and Germany, otherwise
/// anywhere.
[[nodiscard]] constexpr Region common_region(Region a, Region b) noexcept {
  while (!is_in(b, a)) a = whole_of(a);
  return a;
}

} // namespace v0
} // namespace bifolium
