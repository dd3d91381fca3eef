// SPDX-License-Identifier: MIT
/// Codes of countries, as records of MARC 21 have them beside the imprint (field 008, positions 15 to 17). A record
/// says the country twice, so that one statement can be compared with the other.
#pragma once

#include <bifolium/core/config.hpp>

#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A code of the MARC Code List for Countries, and where it is. The code may be of a country or of a part of one.
struct CountryCode {
  std::string_view code{}; ///< two or three letters: `gw`, `enk`
  std::string_view
      country{}; ///< a name that `read_place` reads: of the country, of the country of a state, or of a part
  /// true if code and name are together in a published source; others are from memory, and no record is doubted by them
  bool has_source{};
  friend constexpr bool operator==(CountryCode const&, CountryCode const&) = default;
};

namespace detail {
/// A row of the table, of bare pointers, so that nothing is computed before a code is looked up.
struct CountryRow {
  char const* code;
  char const* country;
  bool has_source;
};
/// gw to stk: the Latin Place Names file of the Bibliographic Standards Committee (RBMS), whose rows have a code and a
/// country each. The others are from memory. Five of them do not have the name of what the code means: xr is the Czech
/// Republic, of which Bohemia is a part; mau, pau, nyu and ctu are Massachusetts, Pennsylvania, New York and
/// Connecticut, which are parts of the United States.
inline constexpr CountryRow country_rows[]{
    {"gw", "Germany", true},         {"fr", "France", true},          {"ne", "Netherlands", true},
    {"sz", "Switzerland", true},     {"it", "Italy", true},           {"be", "Belgium", true},
    {"ru", "Russia", true},          {"enk", "England", true},        {"stk", "Scotland", true},
    {"ie", "Ireland", false},        {"wlk", "Wales", false},         {"sp", "Spain", false},
    {"po", "Portugal", false},       {"au", "Austria", false},        {"pl", "Poland", false},
    {"hu", "Hungary", false},        {"dk", "Denmark", false},        {"sw", "Sweden", false},
    {"no", "Norway", false},         {"fi", "Finland", false},        {"xr", "Bohemia", false},
    {"mau", "United States", false}, {"pau", "United States", false}, {"nyu", "United States", false},
    {"ctu", "United States", false}};
} // namespace detail

/// Returns the row of a code, or no value if the code is not known. Blanks at its end are not part of it.
/// Example: `country_of_code("enk")->country == "England"`
[[nodiscard]] constexpr std::optional<CountryCode> country_of_code(std::string_view code) noexcept {
  while (!code.empty() && code.back() == ' ') code.remove_suffix(1);
  for (auto const& row : detail::country_rows)
    if (row.code == code) return CountryCode{row.code, row.country, row.has_source};
  return std::nullopt;
}

} // namespace v0
} // namespace bifolium
