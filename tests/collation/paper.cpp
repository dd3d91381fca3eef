// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>

#include "check.hpp"

using namespace bifolium;

namespace {
Formula read(std::string_view text) {
  auto const formula = read_formula(text, dialects::bmc);
  REQUIRE(formula);
  return *formula;
}
} // namespace

TEST_CASE("Paper is a range with its assumptions") {
  auto const stated = paper(read("8°: π² A–K⁸ L⁴ (−L4)"));
  CHECK(stated.sheets.low == Fraction{85, 8});
  CHECK(stated.sheets.stated == Fraction{43, 4});
  CHECK(stated.sheets.high == Fraction{11});
  // F. Bowers, Studies in Bibliography 1: 14 sheets; prelims and last gathering make one
  auto const sandys = paper(read("12°: π4 A-N12 O8"));
  CHECK(sandys.sheets.stated == Fraction{14});
  REQUIRE(sandys.shared.size() == 1);
  CHECK(!sandys.shared[0].observed);
  // F. Bowers, Studies in Bibliography 1 (Wild Gallant 1684): with the identity exactly 8 sheets
  auto const gallant = paper(read("4°: A4(-A4) B-G4 H4(H4+1[=A4?])"));
  CHECK(gallant.sheets.low == Fraction{8});
  CHECK(gallant.sheets.stated == Fraction{8});
  CHECK(gallant.sheets.high == Fraction{8});
  // R. Noble, DCRM-L, 19 November 2012: two and a half sheets of a quarto
  CHECK(paper(read("4°: pi1[=B2] A^8 [B]^2(-B2)")).sheets.stated == Fraction{5, 2});
  // Macklin Bible (1800), vol. V: 183 sheets printed
  CHECK(paper(read("2°: π2 ‡A-‡8S2 ‡8T2(-‡8T2) a-b2")).sheets.stated == Fraction{183});
}

TEST_CASE("A TEI element and an ampersand read back as they were written") {
  auto const formula = read("a-z⁸ &⁸");
  CHECK(write_formula(formula, Notation::tei) == "<formula>a-z⁸ &amp;⁸</formula>");
  CHECK(read(write_formula(formula, Notation::tei)) == formula);
  CHECK(read(write_formula(formula, Notation::html)) == formula);
  CHECK(!read_formula("<formula</formula>"));
}

TEST_CASE("What fuzzing found reads back as it was written") { // regression
  Dialect const stc = dialects::stc;
  for (auto text : {"oo", "k A]⁴5⁸", "[A%%%%%%%%%%%% D⁶]", "[A]² (-A2) B-M⁴ N¹ (=[A]2)", "A⁸(=A1, words)",
                    "A⁴(-A1, words, =A2)", "+1L", "πpi", "[pi2A]⁴⁸", "2A]²[Bb]B-K8", "&a(2+c1)", "+⁴ A⁸(A3+1)",
                    ":⁸(+H)", ")(⁸(8+1)", "A⁸+(7)", "[2]*⁸", "A⁸(±A +χ1)"}) {
    INFO(text);
    auto const formula = read_formula(text, stc);
    REQUIRE(formula);
    for (auto notation : {Notation::unicode, Notation::caret, Notation::flat}) {
      auto const again = read_formula(write_formula(*formula, notation), stc);
      REQUIRE(again);
      CHECK(*again == *formula);
    }
  }
  CHECK(!read_formula("A² B¹ (=A[A]2)"));   // glued to the leaf
  CHECK(!read_formula("A⁸[-A1, words (]")); // its words would open a parenthesis
  CHECK(read_formula("[1\xFF]⁸").error().problem == Problem::not_utf8);
  CHECK(!read_formula("A-I⁴ (-A1t12.)")); // glued to the leaf: neither a list nor a note
}
