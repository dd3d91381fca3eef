// SPDX-License-Identifier: MIT
// Words that say that a number is not exact, in each statement that can have one. DCRMR 5.23 and 6.21 have
// `approximately`, the rules before them `ca.`; the other words are common practice, no source.
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/core/read_date.hpp>
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_size.hpp>

#include "check.hpp"

#include <algorithm>
#include <string>

using namespace bifolium;

TEST_CASE("a word for about means the same before a year, a number of pages and a height") {
  for (std::string const word :
       {"approximately", "approx.",  "about",   "around",   "ca.",     "ca",      "c.",      "circa",
        "Circa",         "Ca.",      "environ", "env.",     "vers",    "um",      "etwa",    "ungefähr",
        "verso il",      "circa il", "hacia",   "cerca de", "±",       "roughly", "some",    "nearly",
        "almost",        "presque",  "rund",    "cirka",    "omkring", "omtrent", "ongeveer"}) {
    INFO(word);
    auto const date = read_date(word + " 1623");
    REQUIRE(date);
    CHECK(date->approximate);
    CHECK(date->years == YearRange{1618, 1628});
    auto const extent = read_extent(word + " 300 p.");
    REQUIRE(extent);
    CHECK(extent->pagination.approximate);
    REQUIRE(extent->warnings().size() == 1);
    CHECK(extent->warnings()[0].problem == Problem::pages_approximate);
    CHECK(extent->warnings()[0].found_text() == "300");
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
  CHECK_FALSE((*read_extent("120 c.")).pagination.approximate);
  CHECK_FALSE((*read_extent("8 c., 205 p.")).pagination.approximate);
}

TEST_CASE("an approximate number of pages contradicts no formula") { // common practice, no source
  auto const book = *read_formula("8°: A-M8");                       // 192 pages
  for (std::string const text :
       {"ca. 200 p.", "c200 p.", "±200 p.", "pp. about 200", "[8], ca. 200, [3] p.", "xii, about 200 p.",
        "200 p. approx.", "200 p. (approx.)", "200 p. [ca.]", "200 (approx.) p.", "200? p.", "200 p.?", "200 p. (?)",
        "about 100 leaves", "100 leaves (about)", "ca. 20 p.", "ca. 2000 p."}) {
    INFO(text);
    auto const extent = read_extent(text);
    REQUIRE(extent);
    CHECK(extent->pagination.approximate);
    CHECK(extent->pagination.total().low == 0);
    CHECK(extent->pagination.total().high == Pagination::no_limit);
    CHECK(extent->pagination.pages_missing(192) == 0);
    auto const compared = compare_extent(book, *extent);
    REQUIRE(compared);
    CHECK(compared->verdict == ExtentAgrees::agrees);
    CHECK(compared->words.ends_with("the number of pages is approximate, so that nothing contradicts it"));
    auto const doubts = extent->warnings();
    CHECK(std::any_of(doubts.begin(), doubts.end(),
                      [](Error const& one) { return one.problem == Problem::pages_approximate; }));
  }
  CHECK((*compare_extent(book, *read_extent("200 p."))).verdict == ExtentAgrees::contradicts);
  auto const lines = (*read_extent("[8],\nca. 200 p.")).warnings();
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].place->line == 2);
  CHECK(lines[0].place->column == 5);
}
