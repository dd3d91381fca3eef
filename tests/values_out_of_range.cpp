// SPDX-License-Identifier: MIT
// Choices and limits made of numbers from outside - a form, a settings file - which no enumerator names, or which are too
// large to be added to. None may be taken in silence. Evidence of leaves is asked the same in evidence/infer.cpp.
#include <bifolium/book.hpp>
#include <bifolium/collation.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/fold/find_foldings.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/read_formes.hpp>

#include "check.hpp"

#include <climits>

using namespace bifolium;

TEST_CASE("choices of the printer that no enumerator names are errors") {
  auto const by = make_up(Attested{schemes::octavo});
  auto const formula = *read_formula("8°: A-K⁸ L⁴");
  for (int const number : {3, 4, 127, 255})
    for (bool const of_sharing : {true, false}) {
      Arranging how;
      if (of_sharing)
        how.sharing = static_cast<Sharing>(number);
      else
        how.parts = static_cast<PartWork>(number);
      auto const is_told = [&](auto const& answer) {
        return !answer && answer.error().problem == Problem::no_such_value;
      };
      CHECK(is_told(arrange(by, {.text = 160}, how)));
      CHECK(is_told(arrange_in_whole_sheets(by, {.text = 160}, how)));
      CHECK(is_told(plan_of(formula, how)));
      CHECK(is_told(plan_of(formula, Attested{schemes::octavo}, how)));
      CHECK_THROWS_AS((void)plan_of(formula, 8, how), BrokenPrecondition);
      CHECK(is_told(reckon({.scheme = schemes::octavo, .pages = 160, .copies = 500, .arranging = how})));
      if (!of_sharing) CHECK(is_told(plans(by, {.text = 160}, how.parts)));
    }
  for (int const number : {2, 3, 127, 255}) {
    auto const option = *printing_option({.scheme = schemes::octavo, .pages = 320, .price_of_forme = 240});
    auto const by_what = static_cast<CompareBy>(number);
    CHECK(cost_of(option, 100, by_what).error().problem == Problem::no_such_value);
    CHECK(compare({option}, 1, 100, by_what).error().problem == Problem::no_such_value);
  }
}

TEST_CASE("a formula is not written in a notation that is none") {
  auto const formula = *read_formula("8°: π² A-K⁸ (-A1)");
  for (int const number : {5, 6, 127, 255}) {
    auto const notation = static_cast<Notation>(number);
    CHECK_THROWS_AS((void)write_formula(formula, notation), BrokenPrecondition);
    CHECK_THROWS_AS((void)write_signatures(formula, notation), BrokenPrecondition);
  }
}

TEST_CASE("the limits of a search for foldings hold at the ends, and what is below them is refused") {
  auto const formes = *read_formes("outer\n4 1\n");
  std::size_t before = 0;
  for (int const dearer : {0, 15, 1000, 100'000, 1 << 28, INT_MAX - 10, INT_MAX - 1, INT_MAX}) {
    FindRules rules;
    rules.dearer = dearer;
    CAPTURE(dearer);
    auto const found = find_foldings(formes, rules);
    REQUIRE(found);
    CHECK(found->size() >= before); // a greater limit lets more through
    before = found->size();
    CHECK(find_misprints(formes, rules));
  }
  for (int const number : {-1, -15, INT_MIN}) {
    FindRules rules;
    rules.dearer = number;
    CHECK_THROWS_AS((void)find_foldings(formes, rules), BrokenPrecondition);
    CHECK_THROWS_AS((void)find_misprints(formes, rules), BrokenPrecondition);
  }
  for (int const number : {2, 3, 127, 255}) {
    FindRules reads, side;
    reads.reads = static_cast<Reads>(number), side.long_side = static_cast<Axis>(number);
    CHECK_THROWS_AS((void)find_foldings(formes, reads), BrokenPrecondition);
    CHECK_THROWS_AS((void)find_foldings(formes, side), BrokenPrecondition);
    CHECK_THROWS_AS((void)find_misprints(formes, reads), BrokenPrecondition);
    CHECK_THROWS_AS((void)find_misprints(formes, side), BrokenPrecondition);
  }
}
