// SPDX-License-Identifier: MIT
// What the changes of a formula mean, and that they are written as they were read; constructed.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/read_lawfully.hpp"

using namespace bifolium;

namespace {
Formula formula_of(std::string_view text) {
  auto const formula = read_formula(text, dialects::bmc);
  REQUIRE(formula);
  return *formula;
}
} // namespace

TEST_CASE("Each change is one of five, with what it needs and nothing else") {
  auto const formula = formula_of("A⁸(−A8?) B⁸(±B4.5)(B1=A8) C⁸(C3+χ1.2[=A1], C5+a⁴) D⁸(D8 blank; +8*)");
  auto const& changes = formula.changes();
  REQUIRE(changes.size() == 9);
  CHECK(*changes[0].deletion() == Deletion{{0, 0}, 8});
  CHECK(changes[0].doubtful());
  CHECK(*changes[1].cancel() == Cancel{{1, 0}, 4, 4, true});
  CHECK(*changes[2].cancel() == Cancel{{1, 0}, 5, 5, true});
  REQUIRE(changes[3].identity());
  CHECK(changes[3].identity()->leaf == 1);
  CHECK(changes[3].identity()->other_leaf == 8);
  REQUIRE(changes[4].insertion());
  CHECK(changes[4].insertion()->after == 3);
  CHECK(changes[4].insertion()->leaves == 2);
  CHECK(changes[4].insertion()->joined == Joined::conjugate);
  REQUIRE(changes[5].identity());
  CHECK(changes[5].identity()->insertion == 4);
  CHECK(changes[6].insertion()->joined == Joined::gathering);
  CHECK(formula.notes()[changes[7].note()->words] == "D8 blank");
  CHECK(changes[8].insertion()->named_by_place);
  CHECK(changes[8].deletion() == nullptr);
  CHECK(write_formula(formula) == "A⁸(−A8?) B⁸(±B4.5)(B1=A8) C⁸(C3+χ1.2[=A1], C5+a⁴) D⁸(D8 blank, D8+8*)");
}

TEST_CASE("A doubt is kept through writing") {
  for (char const* text : {"A-K⁸(−K8?)", "A⁸(±A3?)", "A⁸(−A1,4?)", "A⁸(−A1?,4)", "A⁸ B⁴[=A8?]"})
    CHECK(write_formula(formula_of(text)) == text);
  CHECK(formula_of("A⁸(−A1?)") != formula_of("A⁸(−A1)"));
}

TEST_CASE("Many leaves inserted together are written as a range") {
  CHECK(write_formula(formula_of("A⁸(A3+χ1-4096)")) == "A⁸(A3+χ1-4096)");
  CHECK(write_formula(formula_of("A⁸(A3+χ1,2,3)")) == "A⁸(A3+χ1,2,3)");
  CHECK(write_formula(formula_of("A⁸(A3+χ1.2.3.4.5.6)")) == "A⁸(A3+χ1.2.3.4.5.6)");
}

TEST_CASE("What square brackets say of leaves is read as in parentheses, in which it is written") {
  for (auto const& [square, leaves] :
       {std::pair{"A-K⁸ [K8 wanting]", 79}, std::pair{"A-K⁸ [K7,8 wanting and blank]", 78},
        std::pair{"A-K⁸ [lacks K8]", 79}, std::pair{"A-K⁸ [A1 blank, −K8]", 79}, std::pair{"A-K⁸ [K8 blank]", 80},
        std::pair{"A-K⁸ [no leaf after 8]", 80}}) {
    CAPTURE(square);
    std::string round{square};
    round[round.find('[')] = '(', round.back() = ')';
    auto const formula = read_lawfully(square), other = read_lawfully(round);
    REQUIRE(formula);
    REQUIRE(other);
    CHECK(*formula == *other);
    CHECK(formula->leaves() == leaves);
    CHECK(!formula->warnings().empty()); // brackets of this form usually contain gatherings
  }
  CHECK(read_lawfully("A-K⁸ [lacks L8]").error().problem == Problem::no_such_gathering);
}
TEST_CASE("A mark that names its leaves has a count where it would be read as words without one") {
  CHECK(write_formula(formula_of("A⁸ 'gg3.4'")) == "A⁸ \"gg3.4\"");
  CHECK(write_formula(formula_of("A⁸ ['fol1'¹]")) == "A⁸ [\"fol1\"¹]");
  CHECK(write_formula(formula_of("'fol. 1'¹")) == "\"fol. 1\"¹");
  for (auto const text : {"A⁸ ['fol1'¹]", "'fol. 1'¹", "'fol-1'¹", "A⁸ ['gg3.4'²]"}) CHECK(read_lawfully(text));
}
TEST_CASE("A class of paper belongs to a format, and is none itself") {
  CHECK(!formula_of("ff-8vo⁴").paper_class()); // the gatherings 2f to 8v and o
  CHECK(!read_lawfully("fol-8vo: A⁸"));
  CHECK(!read_lawfully("royal fol4°A⁸"));
  CHECK(formula_of("Royal 4°: A⁸").paper_class() == "Royal");
}

TEST_CASE("leaves of a change that end before they begin are refused") {
  auto const refused = [](Change (*made)()) {
    CHECK_THROWS_WITH_AS(made(), "the last leaf of a change must not be before its first leaf", BrokenPrecondition);
  };
  refused([] {
    Deletion late; // `last` was filled when the deletion was made
    late.leaf = 3;
    return Change{late};
  });
  refused([] { return Change{Cancel{.leaf = 3, .last = 2}}; });
  CHECK(Change{Deletion{.leaf = 3}}.deletion()->last == 3);
}
