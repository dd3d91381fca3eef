// SPDX-License-Identifier: MIT
// Codes of countries against tests/data/country_codes.tsv.
#include <bifolium/paper/country_code.hpp>

#include "data.hpp"

#include <doctest/doctest.h>

using namespace bifolium;

TEST_CASE("codes of countries with a source are those of the Latin Place Names file, and no others have one") {
  auto const rows = data::rows("country_codes.tsv", 3);
  for (auto const& row : rows) {
    INFO(row[0]);
    auto const code = country_of_code(row[0]);
    REQUIRE(code);
    CHECK(code->country == row[1]);
    CHECK(code->has_source);
    CHECK(country_of_code(row[0] + " ") == code); // positions 15 to 17 of field 008 are three characters
  }
  std::size_t with_source = 0;
  for (auto const& row : detail::country_rows) with_source += row.has_source ? 1 : 0;
  CHECK(with_source == rows.size());
}

TEST_CASE("of a code that is not known there is no country") {
  for (auto const code : {"", " ", "xx ", "vp ", "|||", "zzz", "e", "enkk", "ENK"}) { // xx and vp: MARC 21, field 008
    INFO(code);
    CHECK(!country_of_code(code));
  }
}
