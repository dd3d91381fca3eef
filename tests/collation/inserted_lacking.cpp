// SPDX-License-Identifier: MIT
// Leaves deleted from an inserted gathering, A⁸(A1+a⁴(−a4)): the notation of an insertion and that of a deletion are
// those of Bowers as the manuals of DCRM(B) and STCV give them; one in the other, and its other spellings, are common
// practice without a source. Leaves are counted by hand.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>
#include <bifolium/explain.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

namespace {

struct Lacking {
  char const* text;
  std::int64_t leaves;
  char const* written;
};

} // namespace

TEST_CASE("an inserted gathering may lack leaves, in every way in which that is written") {
  for (auto const& one :
       std::initializer_list<Lacking>{{"A⁸(A1+a⁴(−a4))", 11, "A⁸(A1+a⁴(−a4))"},
                                      {"A⁸ (A1+a⁴ (−a4))", 11, "A⁸(A1+a⁴(−a4))"},
                                      {"A8(A1+a^4(-a4))", 11, "A⁸(A1+a⁴(−a4))"},
                                      {"A⁸(A1+a⁴(−4))", 11, "A⁸(A1+a⁴(−a4))"},
                                      {"A⁸(A1+a⁴, −a4)", 11, "A⁸(A1+a⁴(−a4))"},
                                      {"A⁸(A1+a⁴; −a4)", 11, "A⁸(A1+a⁴(−a4))"},
                                      {"A⁸(A1+a⁴ −a4)", 11, "A⁸(A1+a⁴(−a4))"},
                                      {"A⁸(A1+a⁴-a4)", 11, "A⁸(A1+a⁴(−a4))"},
                                      {"A⁸(A1+a⁴ - a4)", 11, "A⁸(A1+a⁴(−a4))"},
                                      {"A⁸(A1+a⁴(−a2,3))", 10, "A⁸(A1+a⁴(−a2,3))"},
                                      {"A⁸(A1+a⁴(−a2.3))", 10, "A⁸(A1+a⁴(−a2,3))"},
                                      {"A⁸(A1+a⁴(−a2, a3))", 10, "A⁸(A1+a⁴(−a2,3))"},
                                      {"A⁸(A1+a⁴(−a2-4))", 9, "A⁸(A1+a⁴(−a2,3,4))"},
                                      {"A⁸(A1+a⁴(−a2 to 4))", 9, "A⁸(A1+a⁴(−a2,3,4))"},
                                      {"A⁸(A1+a⁴(−a2 and a4))", 10, "A⁸(A1+a⁴(−a2,4))"},
                                      {"A⁸(A1+a⁴(−a2 & 4))", 10, "A⁸(A1+a⁴(−a2,4))"},
                                      {"A⁸(A1+a⁴ −a3, 4)", 10, "A⁸(A1+a⁴(−a3,4))"},
                                      {"A⁸(A1+a⁴(−a1))", 11, "A⁸(A1+a⁴(−a1))"},
                                      {"A⁸(A1+[a]⁴(−a4))", 11, "A⁸(A1+[a]⁴(−a4))"},
                                      {"A⁸(A1+(a)⁴(−(a)4))", 11, "A⁸(A1+(a)⁴(−(a)4))"},
                                      {"A⁸(A1+²a⁴(−²a4))", 11, "A⁸(A1+²a⁴(−²a4))"},
                                      {"A⁸(A1+*⁴(−*4))", 11, "A⁸(A1+*⁴(−*4))"},
                                      {"A⁸(A1+π⁴(−π4))", 11, "A⁸(A1+π⁴(−π4))"},
                                      {"A⁸(A1+[par.]⁴(−[par.]4))", 11, "A⁸(A1+[par.]⁴(−[par.]4))"},
                                      {"A⁸(A1+5⁴(−5/4))", 11, "A⁸(A1+5⁴(−5/4))"},
                                      {"A⁸(A1+a-b⁴(−b4))", 15, "A⁸(A1+a⁴, A1+b⁴(−b4))"},
                                      {"A⁸(A1+a-b⁴, −a4)", 15, "A⁸(A1+a⁴(−a4), A1+b⁴)"},
                                      {"A⁸(A1+a⁴(−a4), b⁴(−b1), −A8)", 13, "A⁸(A1+a⁴(−a4), A1+b⁴(−b1), −A8)"},
                                      {"A⁸ B⁸(A1+a⁴(−a4), −B2)", 18, "A⁸ B⁸(A1+a⁴(−a4), −B2)"},
                                      {"A⁸(A1+a⁴⁸(−a48))", 55, "A⁸(A1+a⁴⁸(−a48))"}}) {
    std::string const text{one.text};
    CAPTURE(text);
    for (auto const dialect : {dialects::strict, dialects::bmc, dialects::stc}) CHECK(broken_law(text, dialect) == "");
    auto const formula = read_formula(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == one.leaves);
    CHECK(write_formula(*formula) == one.written);
    CHECK(formula->warnings().empty());
  }
  auto const twice = read_formula("A⁸ a⁸(A1+a⁴, −a4)"); // the a of the book lacks the leaf
  REQUIRE(twice);
  CHECK(twice->leaves() == 19);
  CHECK(write_formula(*twice) == "A⁸ a⁸(A1+a⁴, −a4)");
  REQUIRE(twice->warnings().size() == 1);
  CHECK(twice->warnings()[0].problem == Problem::inserted_name_taken);
  auto const square = read_formula("A⁸(A1+a⁴[−a4])");
  REQUIRE(square);
  CHECK(square->leaves() == 11);
  CHECK(write_formula(*square) == "A⁸(A1+a⁴(−a4))");
  REQUIRE(square->warnings().size() == 1);
  CHECK(square->warnings()[0].problem == Problem::change_in_square_brackets);
  CHECK((*read_formula("A⁸(A1+a⁴[=B2]) B⁸")).leaves() == 20); // the other meaning of the brackets
}

TEST_CASE("an inserted gathering that is changed otherwise is an error that says so") {
  struct Refused {
    char const* text;
    Problem problem;
  };
  for (auto const& one : std::initializer_list<Refused>{{"A⁸(A1+a⁴(±a2))", Problem::change_in_insertion},
                                                        {"A⁸(A1+a⁴(a2+1))", Problem::change_in_insertion},
                                                        {"A⁸(A1+a⁴(−a4?))", Problem::change_in_insertion},
                                                        {"A⁸(A1+a⁴(−a))", Problem::change_in_insertion},
                                                        {"A⁸(A1+a⁴(−a1-4))", Problem::inserted_not_there},
                                                        {"A⁸(A1+a⁴(−a1,2,3,4))", Problem::inserted_not_there},
                                                        {"A⁸(A1+a⁴[−a4)", Problem::parenthesis_not_closed},
                                                        {"A⁸(A1+a⁴(words))", Problem::change_not_understood},
                                                        {"A⁸(A1+a⁶⁵(−a4))", Problem::inserted_too_thick},
                                                        {"A⁸(A1+a-b⁴(−a4,b4))", Problem::change_in_insertion},
                                                        {"A⁸(A1+a⁷⁰(−a4))", Problem::inserted_too_thick},
                                                        {"A⁸(A1+a⁴(−a5))", Problem::no_such_leaf},
                                                        {"A⁸(A1+a⁴(−a2,2))", Problem::leaf_changed_twice},
                                                        {"A⁸(A1+a⁴(−b2))", Problem::no_such_gathering}}) {
    std::string const text{one.text};
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(!formula);
    CHECK(formula.error().problem == one.problem);
  }
}

TEST_CASE("a change of inserted leaves says that it is not read, wherever it is written") {
  for (std::string const text :
       {"A⁸(A1+a⁴, ±a4)", "A⁸(A1+a⁴; ±a4)", "A⁸(A1+a⁴ ±a4)", "A⁸(A1+a⁴, ±a)", "A⁸(A1+a⁴, a4 ±)", "A⁸(A1+a⁴, a2+1)",
        "A⁸(A1+a⁴, a2+χ1)", "A⁸(A1+a⁴)(±a4)", "A⁸(A1+a⁴)(−a4)", "A⁸(A1+a⁴, A3+1, −a4)", "A⁸(A1+a⁴) B⁸(−a4)",
        "A⁸(A1+a-c⁴, ±b2)", "A⁸(A1+[a-c]⁴, ±c2)", "A⁸(A3+χ1, ±χ1)", "A⁸(A3+χ1.2, −χ2)", "A⁸(A1+[par.]⁴, ±[par.]2)",
        "A⁸(A1+²a⁴, ±²a1)", "A⁸(A1+†⁴, ±†1)", "A⁸(A1+5⁴, ±5/4)"}) {
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(!formula);
    CHECK(formula.error().problem == Problem::change_in_insertion);
  }
  for (std::string const text : {"A⁸(A1+a⁴, ±b4)", "A⁸(A1+a⁴)(−b4)", "A⁸(A1+a-c⁴, ±d2)", "A⁸(A3+1, ±χ1)"}) {
    CAPTURE(text);
    CHECK(read_formula(text).error().problem == Problem::no_such_gathering); // nor is it inserted
  }
}

TEST_CASE("the leaves of an inserted gathering keep their numbers where others are lacking") {
  auto const formula = read_formula("A⁸(A1+a⁶(−a2,6)) B⁸");
  REQUIRE(formula);
  IdealCopy const book{*formula};
  CHECK(book.leaves() == 20);
  struct Place {
    char const* name;
    std::int64_t number;
    char const* conjugate;
  };
  // a6 is gone, so a1 is single, and a5 lost its other half a2; a3 and a4 are one piece
  for (auto const& one : std::initializer_list<Place>{
           {"A1", 1, "A8"}, {"a1", 2, ""}, {"a3", 3, "a4"}, {"a4", 4, "a3"}, {"a5", 5, ""}, {"A2", 6, "A7"}}) {
    CAPTURE(std::string{one.name});
    auto const leaf = read_reference(book, one.name);
    REQUIRE(leaf);
    CHECK(book.leaf_number(leaf->leaf) == one.number);
    CHECK(write_reference(book, *leaf) == one.name);
    auto const other = book.conjugate(leaf->leaf);
    CHECK((other ? write_reference(book, Reference{*other}) : "") == one.conjugate);
  }
  for (auto const* const gone : {"a2", "a6"})
    CHECK(read_reference(book, gone).error().problem == Problem::reference_not_in_book);
  CHECK(read_reference(book, "a7").error().problem == Problem::no_such_leaf);
  CHECK(read_reference(book, "a7").error().limit == 6);
  auto const all = book.find_inserted(*read_signature("a"));
  REQUIRE(all);
  CHECK(all->from == 2);
  CHECK(all->to == 5);
  // the paper of the leaves that are lacking was printed, as that of a deleted leaf
  CHECK(paper(*formula, Format::of(2)).sheets.stated == Fraction{22, 2});
  CHECK(explain_count(*formula).find("4 more, since it lacks 2 of 6") != std::string::npos);
}

TEST_CASE("a copy lists the leaves of such a gathering by their names") {
  IdealCopy const book{*read_formula("A⁸(A1+a⁶(−a2,6)) B⁸")};
  auto const whole = read_leaves_present(book, "A1 a A2-8 B");
  REQUIRE(whole);
  CHECK(check_copy(book, whole->spans).wanting.empty());
  auto const some = read_leaves_present(book, "A1 a1 a3-5 A2-8 B");
  REQUIRE(some);
  CHECK(check_copy(book, some->spans).wanting.empty());
  CHECK(!read_leaves_present(book, "A1 a1-2 A2-8 B"));
  auto const wanting = read_leaves_present(book, "A1 a1 a5 A2-8 B");
  REQUIRE(wanting);
  CHECK(check_copy(book, wanting->spans).wanting.size() == 1);
}

TEST_CASE("a gathering of up to 64 leaves may lack any but one, and is found by its name alone") { // constructed
  CHECK((*read_formula("A⁸(A1+a⁶³(−a2-63))")).leaves() == 9);
  CHECK((*read_formula("A⁸(A1+a⁶⁴(−a2-64))")).leaves() == 9);
  CHECK((*read_formula("A⁸(A1+a⁶⁴(−a1-63))")).leaves() == 9);
  auto const found = [](char const* text, char const* name) {
    return IdealCopy{*read_formula(text)}.find_inserted(*read_signature(name));
  };
  CHECK(found("A⁸(A1+a⁶⁴(−a1-63))", "a") == NumbersOfLeaves{2, 2});
  CHECK(found("A⁸(A1+a⁴(−a1))", "a") == NumbersOfLeaves{2, 4});
  // two insertions of one name are not told apart, whatever they lack; nor does another insertion change the answer
  CHECK(!found("A⁸(A1+a⁴(−a1)) B⁸(B1+a⁴(−a2))", "a"));
  CHECK(!found("A⁸(A1+χ3)", "χ"));
  CHECK(!found("A⁸(A1+χ3, A2+a⁴(−a4))", "χ"));
  CHECK(found("A⁸(A1+χ3, A2+a⁴(−a4))", "a") == NumbersOfLeaves{4, 6});
}
