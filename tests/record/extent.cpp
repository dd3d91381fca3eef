// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>
#include <bifolium/record.hpp>
#include <bifolium/record/compare_extent.hpp>

#include "check.hpp"
#include "data.hpp"

using namespace bifolium;

TEST_CASE("Extents add up") { // extents from EEBO-TCP headers (CC0); the sums are arithmetic
  CHECK((*read_extent("[8], 205, [3], 31 p.")).pages() == 247);
  CHECK((*read_extent("[2], 152 leaves.")).pagination.by_leaf());
  CHECK((*read_extent("[34], 747 [i.e. 759], [6] p.")).pages() == 34 + 759 + 6);
  CHECK((*read_extent("50 Bl.")).pages() == 100);
  CHECK((*read_extent("[20], CCxxv, [1] p.")).pages() == 246);
  CHECK(!read_extent("a handsome copy"));
  CHECK(!read_extent("[8], 205"));
}

TEST_CASE("The catalogue's extents agree with its formulas where it says they do") {
  int rows = 0, agreeing = 0;
  for (auto const& row : data::rows("tcp_extents.tsv", 3)) {
    auto const extent = read_extent(row[2]);
    auto const formula = read_formula(row[1], dialects::stc);
    if (!extent || !formula) continue; // plates and the like between the figures
    ++rows;
    INFO(row[1], " ", row[2]);
    bool const agrees = (*compare_extent(*formula, *extent)).verdict != ExtentAgrees::contradicts;
    CHECK(agrees);
    agreeing += agrees ? 1 : 0;
  }
  CHECK(rows == 292);
  CHECK(agreeing == 292);
}

TEST_CASE("A corrected number is counted on from the pages before") {
  // EEBO-TCP A03319 (CC0), a formula of 450 leaves, and A00602, whose pages the header's own total makes 558
  auto const leaves = read_extent("[20], CCxxv, [1], CCxxxi-CCCCxxviij [i.e. 430] leaves");
  REQUIRE(leaves);
  CHECK(leaves->pages() == 900);
  auto const formula = read_formula("a-b C⁴; 1-28 chi² 29-48 49⁴ 50 52-55", dialects::stc);
  REQUIRE(formula);
  CHECK((*compare_extent(*formula, *leaves)).verdict == ExtentAgrees::agrees);
  CHECK((*read_extent("[24], 46, [106], 176; [12], 50, 49-191 [i.e. 190], [2] p.")).pages() == 558);
  CHECK((*read_extent("[2], 799-804 [i.e. 8] p.")).pages() == 10); // A74375: four leaves and a half
}

TEST_CASE("Formulas that contradict their extent are told apart") {
  struct Described {
    char const *formula, *extent;
    std::int64_t leaves;
  };
  for (auto const& book : {
           Described{"A-2V⁴ 2X³", "[8], 348 p.", 175}, // EEBO-TCP A00888 (CC0)
           // Pryor-Johnson Rare Books, catalogue II: the Macklin Bible (1800), volumes I and IV, as described
           Described{"π-2π2 A-7E2 [$1; +D2; -2M]", "pp. [viii], [554]", 290},
           Described{"π-2π2 †8F-†13G2", "pp. [vi], [594]", 238},
       }) {
    INFO(book.formula);
    auto const formula = read_formula(book.formula);
    REQUIRE(formula);
    CHECK(formula->leaves() == book.leaves);
    CHECK((*compare_extent(*formula, *read_extent(book.extent))).verdict == ExtentAgrees::contradicts);
    // the same where the pages follow the formula: reported, and the formula is left as it is
    if (!std::string_view{book.extent}.starts_with("pp.")) continue;
    auto const whole = read_formula(std::string{book.formula} + "; " + book.extent);
    REQUIRE(whole);
    CHECK(whole->leaves() == book.leaves);
    auto const compared = compare_stated_pages(*whole);
    REQUIRE(compared);
    CHECK(compared->verdict == ExtentAgrees::contradicts);
  }
  auto const macklin = read_formula("π-2π2 A-7E2 [$1; +D2; -2M]; pp. [viii], [554]");
  CHECK((*compare_stated_pages(*macklin)).words ==
        "8 + 554 = 562 pages; the formula has 290 leaves, 580 pages: contradicts");
  CHECK(compare_stated_pages(*read_formula("A-B⁸")).error().problem == Problem::not_stated);
}

TEST_CASE("What follows the pages is left alone, and a blank not counted is told") {
  auto const formula = read_formula("A-C⁴ (last leaf blank)"); // EEBO-TCP A08137 (CC0)
  REQUIRE(formula);
  CHECK((*compare_extent(*formula, *read_extent("20 [i.e. 22] p."))).verdict == ExtentAgrees::last_not_counted);
  CHECK((*read_extent("[14], 939 [i.e. 943], [29] p. : ill., coats of arms.")).pages() == 986); // A13053
  CHECK((*read_extent("[48+] p.")).pages() == 48);
}

TEST_CASE("A bracket of misprinted pages that is never closed ends with the text") { // regression: found by fuzzing
  auto const extent = read_extent("f.644(with ");
  REQUIRE(extent);
  CHECK(extent->pages() == 2 * 644);
  CHECK(extent->pagination.by_leaf());
}
