// SPDX-License-Identifier: MIT
/// The regions in which books were printed or papers were used, as finely as the library's data depend on them. Sheets
/// are listed by country. Formats and papers of the fifteenth century are counted in the volumes of one catalogue, so
/// Italy has four parts. Each part has a larger region whose numbers are used if too little is known of the part.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/config.hpp>

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A country, a part of a country, or several countries. `anywhere` means that the place is not known.
enum class Region : std::uint8_t {
  anywhere,
  europe,
  italy,
  rome,
  venice,
  north_italy, ///< Florence, Milan, Bologna, Ferrara and the towns counted with them, such as Naples
  other_italy, ///< the other towns of Italy, such as Padua, Brescia, Genoa and Siena
  britain,
  ireland,
  france,
  germany,
  switzerland,
  netherlands, ///< the Low Countries
  spain,       ///< Spain and Portugal
  usa,         ///< also the British colonies that became the United States
};
/// The number of regions.
inline constexpr int region_count = 15;

namespace detail {
/// Returns the row of a region in tables of regions. A number that a caller made a region of may be none.
constexpr std::size_t row_of(Region region) {
  auto const row = static_cast<std::size_t>(region);
  if (row >= std::size_t{region_count}) broken("a region must be one of those that the type names");
  return row;
}
} // namespace detail

/// Returns the name of the enumerator, for columns and fields that programs read: `north_italy`. A number that is no
/// region gives "unknown".
[[nodiscard]] constexpr std::string_view identifier(Region region) noexcept {
  constexpr char const* names[region_count]{"anywhere",    "europe",      "italy",       "rome",    "venice",
                                            "north_italy", "other_italy", "britain",     "ireland", "france",
                                            "germany",     "switzerland", "netherlands", "spain",   "usa"};
  auto const i = static_cast<std::size_t>(region);
  return i < std::size_t{region_count} ? names[i] : "unknown";
}

/// Returns the region whose numbers are used if `region` has none of its own: Italy for Venice, Britain for Ireland,
/// Europe for a country of Europe, and finally `anywhere`, which returns itself.
[[nodiscard]] constexpr Region whole_of(Region region) noexcept {
  switch (region) {
  case Region::rome:
  case Region::venice:
  case Region::north_italy:
  case Region::other_italy:
    return Region::italy;
  case Region::ireland:
    return Region::britain;
  case Region::italy:
  case Region::britain:
  case Region::france:
  case Region::germany:
  case Region::switzerland:
  case Region::netherlands:
  case Region::spain:
    return Region::europe;
  case Region::anywhere:
  case Region::europe:
  case Region::usa:
    break;
  }
  return Region::anywhere;
}

/// Returns true if `part` is `whole` or lies in it.
[[nodiscard]] constexpr bool is_in(Region part, Region whole) noexcept {
  while (part != whole && part != Region::anywhere) part = whole_of(part);
  return part == whole;
}

} // namespace v0
} // namespace bifolium
