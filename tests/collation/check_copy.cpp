// SPDX-License-Identifier: MIT
// Constructed copies: regression, but for the arithmetic of conjugate leaves.
#include <bifolium/collation.hpp>

#include "check.hpp"

using namespace bifolium;

namespace {
Formula formula_of(char const* text) {
  auto const formula = read_formula(text, dialects::bmc);
  REQUIRE(formula);
  return *formula;
}
CopyChecked check(Formula const& formula, char const* present) {
  auto const leaves = read_leaves_present(formula, present);
  REQUIRE(leaves);
  return check_copy(formula, *leaves);
}
} // namespace

TEST_CASE("A leaf lost with its conjugate is a lost bifolium") {
  auto const book = formula_of("8°: A-C⁸");
  auto const copy = check(book, "A1-8, B1-2 B4-5 B7-C8");
  CHECK(wants(book, copy) == "wants B3.6");
  REQUIRE(copy.missing.size() == 2);
  CHECK(copy.missing[0].conjugate_missing);
  CHECK(wants(book, check(book, "A B C1-7")) == "wants C8");
  CHECK(wants(book, check(book, "A-C")).empty());
  CHECK(check(book, "A-C").complete());
}

TEST_CASE("The ideal copy does not want what the formula deletes") {
  auto const book = formula_of("A⁸ B⁸(−B8)");
  CHECK(check(book, "A1-B7").complete());
  auto const uncorrected = check(book, "A1-B7 B5");
  CHECK(uncorrected.repeated.size() == 1);
}

TEST_CASE("Gatherings bound out of order, and books collated from the back") {
  auto const book = formula_of("A-C⁴");
  auto const copy = check(book, "A C B");
  CHECK(copy.complete());
  CHECK(copy.misplaced.size() == 4);
  std::vector<LeafOfBook> backwards;
  for (int n = 12; n > 0; --n) backwards.push_back(*leaf_of_number(book, n));
  CHECK(check_copy(book, backwards).backwards);
}

TEST_CASE("Joints agree with the formula or speak against it") {
  auto const book = formula_of("A⁴ B⁴(±B2)");
  auto const judged = check_copy(book, {},
                                 {{{{0, 0}, 1, 0}, {{0, 0}, 4, 0}, Joint::conjugate},
                                  {{{1, 0}, 2, 0}, {}, Joint::stub},
                                  {{{0, 0}, 2, 0}, {}, Joint::stub},
                                  {{{0, 0}, 2, 0}, {}, Joint::sewing},
                                  {{{0, 0}, 1, 0}, {{0, 0}, 3, 0}, Joint::chain_lines_run_on}})
                          .joints;
  REQUIRE(judged.size() == 5);
  CHECK(judged[0].words == "A1.4 conjugate: agrees");
  CHECK(judged[1].words == "B2 on a stub: agrees");
  CHECK(judged[2].words == "A2 on a stub: a cancel?");
  CHECK(judged[3].agrees);
  CHECK(!judged[4].agrees);
}

TEST_CASE("Leaves that cannot be read say where") {
  auto const book = formula_of("A-C⁴");
  CHECK(read_leaves_present(book, "A1-4, D1").error().column == 7);
  CHECK(read_leaves_present(book, "A1-9").error().limit == 4);
  CHECK(!read_leaves_present(book, "C-A"));
}
