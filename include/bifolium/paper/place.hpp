// SPDX-License-Identifier: MIT
/// A place of printing, and the part of Europe whose paper and habits it shared. Borders moved, so a town has the country
/// it lies in today, for people to find it, and a region of printing, for reasoning: Strasbourg lies in France, and its
/// early printers worked as those of Germany did. Names are read by paper/read_place.hpp.
#pragma once

#include <bifolium/paper/sheet_size.hpp>

#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Where printing had paper and habits in common. Italy is one region and has four inside it, since Venice and Rome bought
/// other paper than Florence and Milan.
enum class PrintingRegion : std::uint8_t {
  britain, ///< England, Scotland and Wales
  ireland,
  france,
  low_countries, ///< the Netherlands and Belgium of today, and the towns of French Flanders
  germany,       ///< with Alsace and Silesia
  switzerland,
  austria,
  bohemia_poland,
  hungary, ///< with Transylvania and the Slovakia of today
  italy,   ///< where no part of it is known
  venice,  ///< Venice and its mainland
  rome,
  italy_north, ///< Florence, Milan and the north, but not the lands of Venice
  italy_south, ///< the rest of Italy
  spain,
  portugal,
  scandinavia,
  baltic, ///< Livonia and Estonia
  russia,
  america
};
/// How many regions there are.
inline constexpr int printing_region_count = 20;

/// The region as a word for tables: low-countries.
[[nodiscard]] constexpr std::string_view to_words(PrintingRegion region) {
  constexpr char const* words[]{"britain",     "ireland",     "france",         "low-countries", "germany",
                                "switzerland", "austria",     "bohemia-poland", "hungary",       "italy",
                                "venice",      "rome",        "italy-north",    "italy-south",   "spain",
                                "portugal",    "scandinavia", "baltic",         "russia",        "america"};
  return words[static_cast<std::size_t>(region)];
}

/// The region this one is a part of: Italy for Venice. A region that is no part of another is its own.
[[nodiscard]] constexpr PrintingRegion larger_region(PrintingRegion region) {
  return region >= PrintingRegion::italy && region <= PrintingRegion::italy_south ? PrintingRegion::italy : region;
}
/// What two regions have in common: the region itself, the larger one, or none.
[[nodiscard]] constexpr std::optional<PrintingRegion> common_region(PrintingRegion a, PrintingRegion b) {
  if (a == b) return a;
  if (larger_region(a) == larger_region(b)) return larger_region(a);
  return std::nullopt;
}

/// A town, or a country where no town is named.
struct Place {
  std::string_view name;    ///< in English where there is an English name
  std::string_view country; ///< the country of today
  PrintingRegion region;    ///< of the time of the hand press

  /// The region in the table of sheet sizes, which is coarser.
  [[nodiscard]] constexpr Region paper_region() const {
    switch (region) {
    case PrintingRegion::britain:
    case PrintingRegion::ireland:
      return Region::britain;
    case PrintingRegion::france:
      return Region::france;
    case PrintingRegion::low_countries:
      return Region::netherlands;
    case PrintingRegion::germany:
    case PrintingRegion::switzerland:
    case PrintingRegion::austria:
      return Region::germany;
    case PrintingRegion::italy:
    case PrintingRegion::venice:
    case PrintingRegion::rome:
    case PrintingRegion::italy_north:
    case PrintingRegion::italy_south:
      return Region::italy;
    case PrintingRegion::america:
      return country == "United States" ? Region::usa : Region::anywhere;
    default:
      return Region::europe;
    }
  }
  friend constexpr bool operator==(Place const&, Place const&) = default;
};

} // namespace v0
} // namespace bifolium
