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
  CHECK(*changes[1].cancel() == Cancel{{1, 0}, 4, true});
  CHECK(*changes[2].cancel() == Cancel{{1, 0}, 5, true});
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

TEST_CASE("a change is of one leaf, of leaves that follow one another, or of every leaf") { // constructed
  STATIC_CHECK(FoldedLeaves{3}.first() == 3 && FoldedLeaves{3}.last(8) == 3 && FoldedLeaves{3}.count(8) == 1);
  STATIC_CHECK(FoldedLeaves{2, 4}.first() == 2 && FoldedLeaves{2, 4}.last(8) == 4 && FoldedLeaves{2, 4}.count(8) == 3);
  constexpr auto every = FoldedLeaves::every();
  STATIC_CHECK(every.are_every() && every.first() == 1 && every.last(8) == 8 && every.count(8) == 8);
  STATIC_CHECK(!FoldedLeaves{1, 8}.are_every() && FoldedLeaves{1, 8} != every && FoldedLeaves{1} == FoldedLeaves{});
  STATIC_CHECK(every.has(1) && every.has(8));
  STATIC_CHECK(!FoldedLeaves{2, 4}.has(1) && FoldedLeaves{2, 4}.has(2) && FoldedLeaves{2, 4}.has(4));
  STATIC_CHECK(!FoldedLeaves{2, 4}.has(5));
  auto const refused = [](FoldedLeaves (*made)(), char const* sentence) {
    CHECK_THROWS_WITH_AS(made(), sentence, BrokenPrecondition);
  };
  refused([] { return FoldedLeaves{3, 2}; }, "the last leaf of a change must not be before its first leaf");
  refused([] { return FoldedLeaves{0}; }, "the leaves of a gathering count from 1");
  STATIC_CHECK(!std::is_constructible_v<FoldedLeaves, double>);

  auto const all_of = [](std::string_view text) {
    auto const formula = formula_of(text);
    REQUIRE(formula.changes().size() == 1);
    auto const& change = formula.changes()[0];
    return change.deletion() != nullptr ? change.deletion()->leaves : change.cancel()->leaves;
  };
  CHECK(all_of("A⁸ B⁸(−B)") == every);
  CHECK(all_of("A⁸ B⁸(±B)") == every);
  CHECK(all_of("A⁸ B⁸(±)") == every);
  CHECK(all_of("A⁸ B⁸(−B1-8)") == FoldedLeaves{1, 8});
  CHECK(all_of("A⁸ B⁸(−B2-4)") == FoldedLeaves{2, 4});
  CHECK(all_of("A⁸ B⁸(±B2)") == FoldedLeaves{2});
  for (char const* text : {"A⁸ B⁸(−B)", "A⁸ B⁸(±B)", "A⁸ B⁸(−B1-8)", "A⁸ B⁸(−B2-4)", "A⁸ B¹(±B)", "A⁸ B¹(±B1)"})
    CHECK(write_formula(formula_of(text)) == text);
  CHECK(formula_of("A⁸ B⁸(−B)").leaves() == 8);
  CHECK(formula_of("A⁸ B⁸(−B1-8)").leaves() == 8);
}

TEST_CASE("a leaf of the book is one as folded, or one that was inserted after it") { // constructed
  IdealCopy const book{formula_of("A⁸(A3+χ1.2) B⁸")};
  STATIC_CHECK(!LeafOfBook{{0, 0}, 3}.inserted && LeafOfBook{{0, 0}, 3} < LeafOfBook{{0, 0}, 3, 1});
  STATIC_CHECK(LeafOfBook{{0, 0}, 3, 2} < LeafOfBook{{0, 0}, 4});
  auto const after = book.leaf_of_number(5);
  REQUIRE(after);
  CHECK(*after == LeafOfBook{{0, 0}, 3, 2});
  CHECK(book.leaf_of_number(3) == LeafOfBook{{0, 0}, 3});
  CHECK(book.leaf_of_number(6) == LeafOfBook{{0, 0}, 4});
  CHECK(book.leaf_number({{0, 0}, 3, 2}) == 5);
  CHECK(!book.leaf_number({{0, 0}, 3, 0})); // inserted leaves count from 1, and this is not A3
  CHECK(!book.leaf_number({{1, 0}, 3, 0})); // nor is it where no leaf is inserted
  CHECK(!book.inserted({{0, 0}, 3, 0}));
  CHECK(!book.conjugate({{0, 0}, 3, 0}));
  CHECK(!book.is_deleted({{0, 0}, 3, 0}));
}
