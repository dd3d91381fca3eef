// SPDX-License-Identifier: MIT
// A run of gatherings inserted at one place, A⁸(A1+a-b⁴): the notation is that of a run and that of an insertion
// (A1+a⁴), both of Bowers as the manuals of DCRM(B) and STCV give them. The numbers of leaves are counted by hand.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

namespace {

struct InsertedRun {
  char const* text;
  std::int64_t leaves, gatherings;
  char const* written;
};
struct RunRefused {
  char const* text;
  Problem problem;
  std::int64_t limit;
};

/// Checks the numbers of a text and how it is written, and returns its doubts.
std::vector<Error> doubts_of_inserted_run(InsertedRun const& one) {
  std::string const text{one.text};
  CAPTURE(text);
  auto const formula = read_lawfully(text);
  REQUIRE(formula);
  CHECK(formula->leaves() == one.leaves);
  CHECK(formula->gatherings() == one.gatherings);
  CHECK(write_formula(*formula) == one.written);
  return formula->warnings();
}

} // namespace

TEST_CASE("a run of gatherings is inserted at one place") {
  for (auto const& one :
       std::initializer_list<InsertedRun>{{"A⁸(A1+a-b⁴)", 16, 3, "A⁸(A1+a-b⁴)"},
                                          {"A8(A1+a-b4)", 16, 3, "A⁸(A1+a-b⁴)"},
                                          {"A⁸(A1+a⁴–b⁴)", 16, 3, "A⁸(A1+a-b⁴)"},
                                          {"A⁸(A1+a⁴, b⁴)", 16, 3, "A⁸(A1+a-b⁴)"},
                                          {"A⁸(A1+[a-b]⁴)", 16, 3, "A⁸(A1+[a-b]⁴)"},
                                          {"A⁸(A1+[a-b⁴])", 16, 3, "A⁸(A1+[a-b]⁴)"},
                                          {"A⁸(A1+[a]-b⁴)", 16, 3, "A⁸(A1+[a]⁴, A1+b⁴)"},
                                          {"A⁸(A1+[a]⁴)", 12, 2, "A⁸(A1+[a]⁴)"},
                                          {"A⁸(A1+(a)-(b)⁴)", 16, 3, "A⁸(A1+(a)-(b)⁴)"},
                                          {"A⁸(A1+[par.]-3[par.]⁴)", 20, 4, "A⁸(A1+[par.]-3[par.]⁴)"},
                                          {"A⁸(A1+*-3*⁴)", 20, 4, "A⁸(A1+*-3*⁴)"},
                                          {"A⁸(A1+π-2π²)", 12, 3, "A⁸(A1+π-2π²)"},
                                          {"A⁸(A1+y-2b⁴)", 24, 5, "A⁸(A1+y-2b⁴)"},
                                          {"A⁸(A1+²a-b⁴)", 16, 3, "A⁸(A1+²a-²b⁴)"},
                                          {"A⁸(A1+α-γ⁴)", 20, 4, "A⁸(A1+α-γ⁴)"},
                                          {"A⁸(A1+a-b⁴⁸)", 104, 3, "A⁸(A1+a-b⁴⁸)"},
                                          {"A⁸(A1+a-d⁴/²)", 20, 5, "A⁸(A1+a-d⁴/²)"},
                                          {"A⁸(A1+a-b⁴, c², d-e⁴, A3+χ1)", 27, 6, "A⁸(A1+a-b⁴, A1+c², A1+d-e⁴, A3+χ1)"},
                                          {"A⁸(−A4 +a-b⁴)", 15, 3, "A⁸(−A4, A4+a-b⁴)"},
                                          {"A⁸ b⁸(A1+a -b4)", 16, 2, "A⁸ b⁸(A1+a, −b4)"}}) {
    CHECK(doubts_of_inserted_run(one).empty());
  }
  auto const twice = doubts_of_inserted_run({"A⁸ b⁸(A1+a-b⁴)", 24, 4, "A⁸ b⁸(A1+a-b⁴)"}); // two gatherings b
  REQUIRE(twice.size() == 1);
  CHECK(twice[0].problem == Problem::inserted_name_taken);
}

TEST_CASE("each gathering of an inserted run is found by its name") {
  auto const formula = read_formula("A⁸(A1+a-c⁴) B⁸");
  REQUIRE(formula);
  IdealCopy const book{*formula};
  CHECK(book.find_inserted(*read_signature("b"))->from == 6); // A1, four leaves of a
  CHECK(book.find_inserted(*read_signature("c"))->to == 13);
  auto const b2 = read_reference(book, "b2r");
  REQUIRE(b2);
  CHECK(book.leaf_number(b2->leaf) == 7);
  CHECK(write_reference(book, *b2) == "b2r");
  auto const b3 = read_reference(book, "b3");
  REQUIRE(b3);
  CHECK(book.conjugate(b2->leaf) == b3->leaf);
  CHECK(book.leaf_number(read_reference(book, "A2")->leaf) == 14);
  CHECK(!read_reference(book, "c5"));
  CHECK(formula->leaves() == 28);
}

TEST_CASE("an inserted run that cannot be read says why") {
  for (auto const& one : std::initializer_list<RunRefused>{{"A⁸(A1+a-b)", Problem::no_leaf_count, 0},
                                                           {"A⁸(A1+b-a⁴)", Problem::run_goes_backwards, 0},
                                                           {"A⁸(A1+a-K⁴)", Problem::run_crosses_series, 0},
                                                           {"A⁸(A1+*-†⁴)", Problem::order_not_known, 0},
                                                           {"A⁸(A1+a-9z⁴)", Problem::too_many_inserted, 99},
                                                           {"A8(A1+a-b84)", Problem::very_thick_gathering, 84},
                                                           {"A⁸(A1+a-b⁰)", Problem::zero_leaf_count, 4096},
                                                           {"A⁸(A1+a⁰)", Problem::zero_leaf_count, 4096},
                                                           {"A⁸(A1+a-b¹/²/³/⁴/⁵/⁶/⁷/⁸/⁹)", Problem::cycle_too_long, 8},
                                                           {"A⁸(A1+a¹/²/³/⁴/⁵/⁶/⁷/⁸/⁹)", Problem::cycle_too_long, 8}}) {
    std::string const text{one.text};
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(!formula);
    CHECK(formula.error().problem == one.problem);
    CHECK(formula.error().limit == one.limit);
  }
}

TEST_CASE("an insertion that may not be there is doubted, and keeps its question mark") {
  for (auto const* const text : {"A⁸(A3+χ1?)", "A⁸(A1+a-b⁴?)", "A⁸(A3+χ1.2?, −A8?)", "A⁸(A3+1?)"}) {
    CAPTURE(std::string{text});
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->changes()[0].doubtful());
    REQUIRE(!formula->warnings().empty());
    CHECK(formula->warnings()[0].problem == Problem::doubtful_change);
    CHECK(write_formula(*formula) == text);
  }
  CHECK(write_formula(*read_formula("A⁸(−A8 ?)")) == "A⁸(−A8?)");
}

TEST_CASE("a run with one end in parentheses, or over marks without an order") {
  for (auto const& one : std::initializer_list<InsertedRun>{
           {"(A)-K⁸", 80, 10, "[A]-K⁸"}, {"A-(K)8", 80, 10, "A-[K]⁸"}, {"A⁴ (B)–K⁸", 76, 10, "A⁴ [B]-K⁸"}}) {
    auto const doubts = doubts_of_inserted_run(one);
    REQUIRE(doubts.size() == 1);
    CHECK(doubts[0].problem == Problem::parentheses_at_one_end);
  }
  CHECK(write_formula(*read_formula("(A)-(K)⁸")) == "(A)-(K)⁸"); // both are printed so
  for (auto const* const text : {"ã–õ⁸", "ã-ũ⁸", "*-†⁸", "[par.]-[et]⁸"}) {
    CAPTURE(std::string{text});
    auto const formula = read_formula(text);
    REQUIRE(!formula);
    CHECK(formula.error().problem == Problem::order_not_known);
  }
}

TEST_CASE("an inserted gathering or run is doubted for the same reasons as one of the book") {
  struct Doubted {
    char const* run;
    Problem problem;
  };
  for (auto const& one : std::initializer_list<Doubted>{{"a-a⁴", Problem::run_of_one},
                                                        {"j-k⁴", Problem::letter_not_in_alphabet},
                                                        {"h-j⁴", Problem::letter_not_in_alphabet},
                                                        {"u-w⁴", Problem::letter_not_in_alphabet},
                                                        {"w⁴", Problem::letter_not_in_alphabet},
                                                        {"a-b ⁴", Problem::count_apart},
                                                        {"a-d⁸ ⁴", Problem::count_apart},
                                                        {"б-п⁴", Problem::alphabet_not_settled},
                                                        {"a-b³", Problem::odd_gathering},
                                                        {"a³", Problem::odd_gathering},
                                                        {"[a-b]³", Problem::odd_gathering},
                                                        {"a-b⁶⁰", Problem::very_thick_gathering},
                                                        {"a⁶⁰", Problem::very_thick_gathering},
                                                        {"a-c⁸/⁴", Problem::alternation_over_odd_run},
                                                        {"a⁸/⁴", Problem::alternation_over_odd_run},
                                                        {"2a-g⁴", Problem::series_read_flat},
                                                        {"2a-cc⁴", Problem::mixed_notation},
                                                        {"(a)-b⁴", Problem::parentheses_at_one_end}}) {
    std::string const run{one.run}, inserted = "A⁸(A1+" + run + ")", beside = "A⁸ " + run;
    CAPTURE(run);
    CHECK(broken_law(inserted, dialects::strict) == "");
    auto const in = read_formula(inserted), out = read_formula(beside);
    REQUIRE(in);
    REQUIRE(out);
    REQUIRE(in->warnings().size() == 1);
    CHECK(in->warnings()[0].problem == one.problem);
    CHECK(in->warnings()[0].limit == out->warnings()[0].limit);
    REQUIRE(out->warnings().size() == 1);
    CHECK(out->warnings()[0].problem == one.problem);
    CHECK(in->leaves() == out->leaves());
    CHECK(in->gatherings() == out->gatherings());
  }
}

TEST_CASE("letters in parentheses that have a symbol or a multiple beside them are read alone and as runs") {
  // (common practice, no source)
  for (auto const& one : std::initializer_list<InsertedRun>{{"A⁸ (H-K)⁴", 20, 4, "A⁸ (H)-(K)⁴"},
                                                            {"A⁸ (H*-K*)⁴", 20, 4, "A⁸ (H*)-(K*)⁴"},
                                                            {"A⁸ (H**-K**)⁴", 20, 4, "A⁸ (H**)-(K**)⁴"},
                                                            {"A⁸ (H†-K†)⁴", 20, 4, "A⁸ (H†)-(K†)⁴"},
                                                            {"A⁸ (H§-K§)⁴", 20, 4, "A⁸ (H§)-(K§)⁴"},
                                                            {"A⁸ (H*)-(K*)⁴", 20, 4, "A⁸ (H*)-(K*)⁴"},
                                                            {"A⁸ (H*)⁴", 12, 2, "A⁸ (H*)⁴"},
                                                            {"A⁸ (2H-2K)⁴", 20, 4, "A⁸ (2H)-(2K)⁴"},
                                                            {"A⁸ (2H*-2K*)⁴", 20, 4, "A⁸ (2H*)-(2K*)⁴"},
                                                            {"A⁸ (HH-KK)⁴", 20, 4, "A⁸ (2H)-(2K)⁴"},
                                                            {"A⁸ (²H-K)⁴", 20, 4, "A⁸ ²(H)-²(K)⁴"},
                                                            {"A⁸ (H*)⁴(−(H*)2)", 11, 2, "A⁸ (H*)⁴(−(H*)2)"},
                                                            {"A⁸(A1+(H*)⁴)", 12, 2, "A⁸(A1+(H*)⁴)"},
                                                            {"A⁸(A1+(H*)-(K*)⁴)", 20, 4, "A⁸(A1+(H*)-(K*)⁴)"}}) {
    CHECK(doubts_of_inserted_run(one).empty());
  }
}

TEST_CASE(
    "a leaf count after a full point is not guessed") { // TEI P5, element formula, whose example has 1-5.8 6.6 7-8.8
  for (auto dialect : {dialects::strict, dialects::bmc, dialects::stc})
    for (auto const* const text : {"1-5.8", "1-5.8 6.6 7-8.8", "1-5.8 6.6 7-8.8 9.10, 11.2 12-14.8 15.8(-7)"}) {
      CAPTURE(std::string{text});
      CHECK(broken_law(text, dialect) == "");
      auto const formula = read_formula(text, dialect);
      CHECK((!formula || !formula->warnings().empty())); // never in silence
      if (dialect == dialects::strict) CHECK(formula.error().problem == Problem::flat_numbers);
    }
}

TEST_CASE("texts that were written so that they read as something else, found by changing formulas at random") {
  for (std::string const text : {"A8(A1+a-c284)", "A⁸(A1+**-3*⁴)", "A-K⁸ (K7+a-c².in fours⁻¹8 blank)", "⁴(A)–(K)⁸",
                                 "Aα-4K⁸", "A⁸ (±A3.6?⁸)", "A–K⁸ [K8 =blank&]", "A–K⁸ [8 blast nk(]",
                                 "A-K⁸ [b+lank: K8]", "A–K+,and K8 blank", "8° A-H⁸ pp.and i–xii 1–128"}) {
    CAPTURE(text);
    for (auto dialect : {dialects::strict, dialects::bmc, dialects::stc}) CHECK(broken_law(text, dialect) == "");
  }
}
