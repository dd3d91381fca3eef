// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>
#include <bifolium/core/message.hpp>

#include "check.hpp"
#include "data.hpp"

using namespace bifolium;

namespace {

Dialect const short_title = dialects::stc;

bool has(Formula const& formula, Problem problem) {
  for (auto const& warning : formula.warnings())
    if (warning.problem == problem) return true;
  return false;
}
Formula read(std::string_view text, Dialect dialect = dialects::bmc) {
  auto const formula = read_formula(text, dialect);
  auto const counted = count_formula(text, dialect);
  INFO(std::string{text});
  REQUIRE(counted);
  REQUIRE_MESSAGE(formula, (formula ? "" : message(formula.error())));
  CHECK(counted->leaves == leaf_count(*formula));
  CHECK(counted->gatherings == gathering_count(*formula));
  return *formula;
}
/// Writing and reading again change nothing, in any notation.
void check_fixed_point(Formula const& formula, Dialect dialect) {
  for (auto notation : {Notation::unicode, Notation::caret, Notation::flat, Notation::html, Notation::tei}) {
    auto const text = write_formula(formula, notation);
    INFO(text);
    auto const again = read_formula(text, dialect);
    REQUIRE(again);
    CHECK(*again == formula);
    CHECK(write_formula(*again, notation) == text);
  }
}

} // namespace

TEST_CASE("Every clean formula of the incunable catalogue has the leaves the catalogue states") {
  for (auto const& row : data::rows("bmc_formulas.tsv", 4)) {
    INFO(row[0]);
    for (std::size_t column : {1U, 2U}) {
      auto const formula = read(row[column]);
      CHECK(std::to_string(leaf_count(formula)) == row[3]);
      check_fixed_point(formula, dialects::bmc);
    }
    // where the optical reading took a bracket for a J the value comes with a doubt
    if (row[1][0] == 'J') CHECK(has(read(row[1]), Problem::bracket_misread));
  }
}

TEST_CASE("Formulas as optical reading left them are read or refused, never worse") {
  int rows = 0, refused = 0;
  for (auto const& row : data::rows("bmc_formulas_ocr.tsv", 3)) {
    auto const formula = read_formula(row[1], dialects::bmc);
    auto const counted = count_formula(row[1], dialects::bmc);
    REQUIRE(bool{counted} == bool{formula});
    if (counted) CHECK(counted->leaves == leaf_count(*formula));
    ++rows;
    if (!formula) {
      ++refused;
      CHECK(formula.error().column >= 1);
      CHECK(!message(formula.error()).empty());
    } else {
      check_fixed_point(*formula, dialects::bmc);
    }
  }
  CHECK(rows > 2000);
  CHECK(refused < rows);
}

TEST_CASE("Short-title formulas agree with the pages their catalogue states") {
  int consistent = 0, agreeing = 0;
  for (auto const& row : data::rows("tcp_formulas.tsv", 5)) {
    auto const formula = read_formula(row[1], short_title);
    if (formula) check_fixed_point(*formula, short_title);
    if (row[3] != "yes") continue;
    ++consistent;
    INFO(row[0], " ", row[1]);
    bool const agrees = formula && std::to_string(leaf_count(*formula)) == row[4];
    CHECK(agrees);
    agreeing += agrees ? 1 : 0;
  }
  CHECK(consistent == 292);
  CHECK(agreeing == 292);
}

TEST_CASE("Worked examples count as their sources say; what is invalid or doubtful is flagged") {
  int good = 0, right = 0;
  for (auto const& row : data::rows("worked_formulas.tsv", 6)) {
    INFO(row[0], " ", row[2], " (", row[5], ")");
    Dialect const dialect = row[4] == "eight" ? short_title : dialects::bmc;
    auto const formula = read_formula(row[2], dialect);
    if (formula) check_fixed_point(*formula, dialect);
    if (row[1] == "valid" || row[1] == "tricky") {
      ++good;
      right += formula && std::to_string(leaf_count(*formula)) == row[3] ? 1 : 0;
    } else if (row[1] == "inconsistent") {
      // the formula itself may be sound: what contradicts it is the extent
      REQUIRE(formula);
      CHECK(std::to_string(leaf_count(*formula)) == row[3]);
    } else {
      CHECK((!formula || !formula->warnings().empty()));
    }
  }
  CHECK(good == 83);
  CHECK(right == 82); // "A to Z (23 octavo sheets)" says its count in words
}

TEST_CASE("The same book written in two orders counts alike") { // STCV manual; DCRM-L, 13 and 16 September 2019
  CHECK(leaf_count(read("A-F⁸/⁴")) == 36);
  CHECK(leaf_count(read("A⁸ B⁴ C⁸ D⁴ E⁸ F⁴")) == 36);
  CHECK(leaf_count(read("A4 B-E8/4 F8")) == 36);
}

TEST_CASE("Every notation of a count is one formula") {
  auto const formula = read("8°: π² A–K⁸ L⁴ (−L4)");
  for (auto text :
       {"8vo: pi^2 A-K^8 L^4 (-L4)", "8° π2 A-K8 L4(−L4)", "octavo: π<sup>2</sup> A–K<sup>8</sup> L<sup>4</sup> (-L4)"})
    CHECK(read(text) == formula);
  CHECK(leaf_count(formula) == 85);
  CHECK(page_count(formula) == 170);
  CHECK(gathering_count(formula) == 12);
  CHECK(write_formula(formula) == "8°: π² A-K⁸ L⁴(−L4)");
  CHECK(write_formula(formula, Notation::flat) == "8°: pi2 A-K8 L4(-L4)");
}

TEST_CASE("Paper is a range with its assumptions") {
  auto const stated = paper(read("8°: π² A–K⁸ L⁴ (−L4)"));
  CHECK(stated.low == Fraction{85, 8});
  CHECK(stated.as_stated == Fraction{43, 4});
  CHECK(stated.high == Fraction{11});
  // F. Bowers, Studies in Bibliography 1: 14 sheets; prelims and last gathering make one
  auto const sandys = paper(read("12°: π4 A-N12 O8"));
  CHECK(sandys.as_stated == Fraction{14});
  REQUIRE(sandys.shared.size() == 1);
  CHECK(!sandys.shared[0].observed);
  // F. Bowers, Studies in Bibliography 1 (Wild Gallant 1684): with the identity exactly 8 sheets
  auto const gallant = paper(read("4°: A4(-A4) B-G4 H4(H4+1[=A4?])"));
  CHECK(gallant.low == Fraction{8});
  CHECK(gallant.as_stated == Fraction{8});
  CHECK(gallant.high == Fraction{8});
  // R. Noble, DCRM-L, 19 November 2012: two and a half sheets of a quarto
  CHECK(paper(read("4°: pi1[=B2] A^8 [B]^2(-B2)")).as_stated == Fraction{5, 2});
  // Macklin Bible (1800), vol. V: 183 sheets printed
  CHECK(paper(read("2°: π2 ‡A-‡8S2 ‡8T2(-‡8T2) a-b2")).as_stated == Fraction{183});
}

TEST_CASE("Numbers too large for any book are errors") {
  CHECK(!read_formula("A–9999999999Z⁹⁹⁹⁹"));
  CHECK(!count_formula("A–9999999999Z⁹⁹⁹⁹"));
  CHECK(read_formula("9999999999Z⁸").error().problem == Problem::multiple_too_high);
  CHECK(read_formula("A⁹⁹⁹⁹").error().problem == Problem::number_too_large);
}

TEST_CASE("Errors give the column in characters and what was found") {
  auto const error = read_formula("π² A–K⁸ (−M1)").error();
  CHECK(error.problem == Problem::no_such_gathering);
  CHECK(error.column == 11);
  CHECK(read_formula("A8(-A9)").error().limit == 8);
}
