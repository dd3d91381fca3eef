// SPDX-License-Identifier: MIT
// How the sheets of a format are gathered, as formulas, records and names of schemes state it (common practice, no source). The three
// must read the same words; the numbers are those that the words say.
#include <bifolium/collation.hpp>
#include <bifolium/fold/read_gathered.hpp>
#include <bifolium/fold/scheme_names.hpp>
#include <bifolium/record/read_format_statement.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

Cycle cycle_of(std::vector<int> const& leaves) {
  Cycle cycle;
  for (int const one : leaves) cycle.push(one);
  return cycle;
}

} // namespace

TEST_CASE("formulas and records read the same statements of gathering") {
  struct Statement {
    char const* text;
    std::vector<int> leaves;
  };
  for (auto const& one : std::initializer_list<Statement>{{"8° in fours", {4}},
                                                          {"8°, in fours", {4}},
                                                          {"8vo in fours", {4}},
                                                          {"8vo, in fours", {4}},
                                                          {"octavo in fours", {4}},
                                                          {"8° in Fours", {4}},
                                                          {"8° gathered in fours", {4}},
                                                          {"8°, gathered in fours", {4}},
                                                          {"8° (fours)", {4}},
                                                          {"8° (in fours)", {4}},
                                                          {"8° (gathered in fours)", {4}},
                                                          {"8° in 4s", {4}},
                                                          {"8° in 4's", {4}},
                                                          {"8° in 4’s", {4}},
                                                          {"8° (4s)", {4}},
                                                          {"8° (in 4s)", {4}},
                                                          {"8° per fours", {4}},
                                                          {"8° in half-sheets", {4}},
                                                          {"8° (in half sheets)", {4}},
                                                          {"8°, in half-sheets", {4}},
                                                          {"2° in half-sheets", {1}},
                                                          {"12° in half-sheets", {6}},
                                                          {"24° in twelves", {12}},
                                                          {"24° in twenty-fours", {24}},
                                                          {"24° (twenty-fours)", {24}},
                                                          {"32° in thirty-twos", {32}},
                                                          {"12° (8/4)", {8, 4}},
                                                          {"12° (8.4)", {8, 4}},
                                                          {"12°, (8/4)", {8, 4}},
                                                          {"12° in eights and fours", {8, 4}},
                                                          {"12° in alternate eights and fours", {8, 4}},
                                                          {"12° in eights & fours alternately", {8, 4}},
                                                          {"12° (eights and fours)", {8, 4}},
                                                          {"12° (8/4/8)", {8, 4, 8}},
                                                          {"8° in 4096s", {4096}}}) {
    std::string const text{one.text};
    CAPTURE(text);
    auto const cycle = cycle_of(one.leaves);
    auto const record = read_format_statement(text);
    REQUIRE(record);
    CHECK(record->gathered == cycle);
    CHECK(record->gatherings_of == (one.leaves.size() == 1 ? std::optional{one.leaves[0]} : std::nullopt));
    CHECK(record->unread.empty());
    auto const formula = read_formula(text + ": A-K⁸ L⁴");
    REQUIRE(formula);
    CHECK(formula->gathered() == cycle);
    CHECK(formula->leaves() == 84);
  }
}

TEST_CASE("what looks like such a statement and is none") {
  for (std::string const text : {"8°", "8° (4)", "8° (", "8° in", "8° (8/4", "8° in blue", "8° fours", "8°, uncut"}) {
    CAPTURE(text);
    auto const record = read_format_statement(text);
    REQUIRE(record);
    CHECK(!record->gathered);
  }
  CHECK(!(*read_formula("8° (*)⁴ A8")).gathered());
  CHECK((*read_formula("2° and 4°: A8")).second_format() == Format::of(4));
}

TEST_CASE("gatherings that there cannot be are told as such, where they are stated") {
  struct Wrong {
    char const* text;
    Problem problem;
    std::int64_t limit;
    std::uint32_t column;
  };
  for (auto const& one : std::initializer_list<Wrong>{{"8° (4097s)", Problem::leaf_count_too_high, 4096, 4},
                                                      {"8° in 4097s", Problem::leaf_count_too_high, 4096, 4},
                                                      {"8° (8/4097)", Problem::leaf_count_too_high, 4096, 4},
                                                      {"8° in eights and 9999s", Problem::leaf_count_too_high, 4096, 4},
                                                      {"8° (0s)", Problem::zero_leaf_count, 4096, 4},
                                                      {"8°, in 0s", Problem::zero_leaf_count, 4096, 5},
                                                      {"8° (8/0)", Problem::zero_leaf_count, 4096, 4},
                                                      {"8° (8/4/8/4/8/4/8/4/8)", Problem::cycle_too_long, 8, 4}}) {
    std::string const text{one.text};
    CAPTURE(text);
    auto const record = read_format_statement(text);
    auto const formula = read_formula(text + ": A8");
    auto const count = count_formula(text + ": A8");
    for (auto const& told : {record.error(), formula.error(), count.error()}) {
      CHECK(told.problem == one.problem);
      CHECK(told.limit == one.limit);
      CHECK(told.place->column == one.column);
    }
  }
  // the counts of a run have the same limits
  CHECK(read_formula("A⁴⁰⁹⁷").error().problem == Problem::leaf_count_too_high);
  CHECK(read_formula("A-K in 4097s").error().problem == Problem::leaf_count_too_high);
  CHECK(read_formula("A-K, in 0s").error().problem == Problem::zero_leaf_count);
  CHECK((*read_formula("A-K, in twenty-fours")).leaves() == 240);
}

TEST_CASE("names of schemes say how they are gathered in the same words") {
  auto const usual = find_scheme("octavo in fours");
  REQUIRE(usual);
  for (std::string const words : {", in fours", " gathered in fours", " (fours)", " (in fours)", " in 4s", " (4s)"}) {
    CAPTURE(words);
    CHECK(find_scheme("8°" + words) == usual);
    CHECK(find_scheme("octavo" + words) == usual);
  }
  auto const turn = find_scheme("12° in eights and fours");
  REQUIRE(turn);
  for (std::string const words :
       {" (8/4)", " in 8s and 4s", ", in eights & fours alternately", " (eights and fours)"}) {
    CAPTURE(words);
    CHECK(find_scheme("12°" + words) == turn);
  }
  CHECK(find_scheme("24° in twenty-fours") == find_scheme("24° in 24s"));
  CHECK(find_scheme("8° (in half-sheets)") == find_scheme("octavo in half-sheets"));
}
