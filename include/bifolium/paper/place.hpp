// SPDX-License-Identifier: MIT
/// A place of printing, and the region whose paper and habits it shared. Borders moved, so a town has the country it lies in
/// today, for people to find it, and a region, for reasoning: Strasbourg lies in France, and its early printers worked as
/// those of Germany did. Names are read by paper/read_place.hpp.
#pragma once

#include <bifolium/paper/region.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A town, or a country where no town is named.
struct Place {
  std::string_view name{};    ///< in English where there is an English name
  std::string_view country{}; ///< the country of today
  Region region{};            ///< of the time of the hand press
  friend constexpr bool operator==(Place const&, Place const&) = default;
};

/// The smallest region that holds both: Italy for Venice and Rome, Europe for France and Germany, else anywhere.
[[nodiscard]] constexpr Region common_region(Region a, Region b) noexcept {
  while (!is_in(b, a)) a = whole_of(a);
  return a;
}

} // namespace v0
} // namespace bifolium
