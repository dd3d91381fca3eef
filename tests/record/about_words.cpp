// SPDX-License-Identifier: MIT
// Words that say that a number is not exact, in each statement that can have one. DCRMR 5.23 and 6.21 have
// `approximately`, the rules before them `ca.`; the other words are common practice, no source.
#include <bifolium/core/read_date.hpp>
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_size.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("a word for about means the same before a year, a number of pages and a height") {
  for (std::string const word : {"approximately", "approx.",  "about",    "around",   "ca.",   "ca",       "c.",
                                 "circa",         "Circa",    "Ca.",      "environ",  "env.",  "vers",     "um",
                                 "etwa",          "ungefähr", "verso il", "circa il", "hacia", "cerca de", "±"}) {
    INFO(word);
    auto const date = read_date(word + " 1623");
    REQUIRE(date);
    CHECK(date->approximate);
    CHECK(date->years == YearRange{1618, 1628});
    auto const extent = read_extent(word + " 300 p.");
    REQUIRE(extent);
    CHECK(extent->approximate);
    CHECK(extent->pages() == 300);
    auto const size = read_size(word + " 20 cm");
    REQUIRE(size);
    CHECK(size->approximate);
    CHECK(size->height == SizeRange{180, 210}); // a unit more at each end of (190, 200]
  }
}

TEST_CASE("the letter c alone is a number or a unit") {
  CHECK((*read_extent("c, 205 p.")).pages() == 305);
  CHECK((*read_extent("120 c.")).pages() == 240);
  CHECK_FALSE((*read_extent("120 c.")).approximate);
  CHECK_FALSE((*read_extent("8 c., 205 p.")).approximate);
}
