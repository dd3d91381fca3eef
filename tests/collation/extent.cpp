// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "data.hpp"

using namespace bifolium;

TEST_CASE("Extents add up") { // extents from EEBO-TCP headers (CC0); the sums are arithmetic
  CHECK(read_extent("[8], 205, [3], 31 p.")->number == 247);
  CHECK(read_extent("[2], 152 leaves.")->in_leaves);
  CHECK(read_extent("[34], 747 [i.e. 759], [6] p.")->sum == "34 + 759 + 6");
  CHECK(read_extent("50 Bl.")->number == 50);
  CHECK(read_extent("[20], CCxxv, [1] p.")->number == 246);
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
    bool const agrees = compare_extent(*formula, *extent).verdict != ExtentAgrees::contradicts;
    CHECK(agrees);
    agreeing += agrees ? 1 : 0;
  }
  CHECK(rows == 292);
  CHECK(agreeing == 292);
}

TEST_CASE("Formulas that contradict their extent are told apart") {
  // EEBO-TCP A00888 (CC0): 175 leaves against [8], 348 p.
  auto const formula = read_formula("A-2V⁴ 2X³");
  REQUIRE(formula);
  CHECK(compare_extent(*formula, *read_extent("[8], 348 p.")).verdict == ExtentAgrees::contradicts);
  // the Macklin Bible (1800), vol. I, as a dealer describes it: 290 leaves against pp. [viii], [554]
  auto const macklin = read_formula("π-2π2 A-7E2 [$1; +D2; -2M]");
  REQUIRE(macklin);
  CHECK(compare_extent(*macklin, *read_extent("[viii], [554] p.")).verdict == ExtentAgrees::contradicts);
}
