// SPDX-License-Identifier: MIT
// Doubts and mistakes of the notation, each with the words in question. The texts are constructed; how many leaves there are
// is counted by hand.
#include <bifolium/collation/read_formula.hpp>

#include "check.hpp"

#include <string>
#include <string_view>

using namespace bifolium;

namespace {

struct Doubted {
  char const* text;
  Problem problem;
  std::string_view found; ///< the words in question
  std::int64_t leaves;
  std::int64_t limit{};
  Dialect dialect{};
};

Doubted const doubted_texts[]{
    {"8°: A⁸ (−A1,8)", Problem::joined_leaves_listed_apart, "8", 6},
    {"8°: A⁸ (−A1.3)", Problem::apart_leaves_listed_joined, "3", 6},
    {"8°: A⁸ (−A2.3) B⁸", Problem::apart_leaves_listed_joined, "3", 14},
    {"8°: A⁸ (−Al)", Problem::letter_read_as_figure, "Al", 7},
    {"8°: A8 B-C", Problem::count_supplied, "B-C", 24, 8, dialects::stc},
    {"8°: A1-8", Problem::leaves_read_as_count, "A1-8", 8, 8},
    {"4°: A1-4 B⁴", Problem::leaves_read_as_count, "A1-4", 8, 4},
    {"broadside: A1", Problem::part_of_sheet_not_stated, "broadside", 1},
    {"s.sh.: A1", Problem::part_of_sheet_not_stated, "s.sh.", 1},
    {"8°: par⁸ A⁸", Problem::name_without_brackets, "par⁸", 16},
    {"8°: A⁸ = B⁶", Problem::second_statement_differs, "B⁶", 8, 6},
    {"8°: A⁸ B⁸ =\n 8°: A⁸ B⁶", Problem::second_statement_differs, "8°: A⁸ B⁶", 16, 14},
    {"8°: A⁸] B⁸", Problem::bracket_not_opened, "]", 16},
    {"A8 [B8)", Problem::bracket_misread, ")", 16},
    {"Ja-d⁸) A-C⁸", Problem::bracket_misread, "Ja", 56}, // as scanned: [a-d⁸]
};

Doubted const refused[]{
    {"8°: A8", Problem::flat_count, "A8", 0, 0, {.flat_counts = false}},
    {"Ja-d8 [A8]", Problem::bracket_not_closed, "Ja-d8 [A8]", 0},
    {"8°: Ja-d8 [A8]", Problem::bracket_not_closed, "Ja-d8 [A8]", 0},
    {"A8 [B8 [C8]", Problem::bracket_not_closed, "[B8 [C8]", 0},
    {"8°: ]A⁸", Problem::bracket_not_opened, "]", 0},
    {"8°: A⁸ \xFF", Problem::not_utf8, "", 0},
    {"8°: (−A3) A⁸", Problem::change_without_gathering, "(−A3)", 0},
    {"8°: (wanting A3) A⁸", Problem::change_without_gathering, "(wanting A3)", 0},
    {"8°: (x) A⁸", Problem::no_signature, "(x)", 0},
    {"8°: .", Problem::no_signature, "", 0},
};

} // namespace

TEST_CASE("each doubt about a formula has the words in question") {
  for (auto const& one : doubted_texts) {
    CAPTURE(std::string{one.text});
    auto const formula = read_formula(one.text, one.dialect);
    REQUIRE(formula);
    REQUIRE(formula->warnings().size() == 1);
    auto const& doubt = formula->warnings()[0];
    CHECK(doubt.problem == one.problem);
    CHECK(doubt.found_text() == one.found);
    CHECK(doubt.limit == one.limit);
    CHECK(formula->leaves() == one.leaves);
  }
}

TEST_CASE("each mistake in a formula has the words in question") {
  for (auto const& one : refused) {
    CAPTURE(std::string{one.text});
    auto const formula = read_formula(one.text, one.dialect);
    REQUIRE_FALSE(formula);
    CHECK(formula.error().problem == one.problem);
    CHECK(formula.error().found_text() == one.found);
  }
}

TEST_CASE("what looks like one of these doubts and is none") {
  for (char const* text : {"8°: A⁸ (−A1.8)", "8°: A⁸ (−A1,3)", "8°: A⁸ (±A1,8)", "8°: A⁸ (−A1)",
                           "8°: A⁸ B⁸ = 8°: A⁸ B⁸", "8°: A8", "8°: A-B8", "1°: A1", "8°: [par]⁸ A⁸", "[A8] B8"}) {
    CAPTURE(std::string{text});
    auto const formula = read_formula(text);
    REQUIRE(formula);
    CHECK(formula->warnings().empty());
  }
}

TEST_CASE("a bracket that is not closed is told after one that was misread") {
  auto const formula = *read_formula("Ja-d8] A8 [B8");
  REQUIRE(formula.warnings().size() == 2);
  CHECK(formula.warnings()[0].problem == Problem::bracket_misread);
  CHECK(formula.warnings()[1].problem == Problem::bracket_not_closed);
  CHECK(formula.warnings()[1].place->column == 11);
  CHECK((*read_formula("Ja-d8")).warnings().size() == 1);          // the one that was misread itself is told once
  CHECK((*read_formula("Ja-d8] A8 [B8)")).warnings().size() == 2); // and so is a round one that closes another
}
