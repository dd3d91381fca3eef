// SPDX-License-Identifier: MIT
/// Codes of countries, as records of MARC 21 have them beside the imprint (field 008, positions 15 to 17). A record says
/// the country twice, so that one statement can be compared with the other.
#pragma once

#include <bifolium/core/config.hpp>

#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A code of the MARC Code List for Countries and the country, or the part of one, that it means.
struct CountryCode {
  std::string_view code{};    ///< two or three letters: `gw`, `enk`
  std::string_view country{}; ///< its name in English, as `read_place` reads it
  /// true if the meaning was read in a published source; one from memory is never held against a record
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
/// country each. The others are from memory; so are the names that stand for a part of what a code means today: Bohemia
/// for the Czech Republic (xr), the United States for Massachusetts, Pennsylvania, New York and Connecticut (mau, pau,
/// nyu, ctu). They are names that `read_place` knows.
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
