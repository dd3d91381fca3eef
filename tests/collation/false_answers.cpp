// SPDX-License-Identifier: MIT
// Formulas that were once answered wrongly, or not at all, with their leaves counted by hand; constructed after the habits
// of cataloguers, but for those whose record is named.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "data.hpp"

#include <string>

using namespace bifolium;

namespace {

struct Answer {
  char const* text;
  std::int64_t leaves;
  Problem doubt; ///< the doubt that is told; none where nothing is doubted
};
void check(Answer const& answer, Dialect dialect) {
  CAPTURE(answer.text);
  auto const formula = read_formula(answer.text, dialect);
  REQUIRE(formula);
  CHECK(formula->leaves() == answer.leaves);
  bool told = answer.doubt == Problem::none ? formula->warnings().empty() : false;
  for (auto const& warning : formula->warnings()) told = told || warning.problem == answer.doubt;
  CHECK(told);
  CHECK(broken_law(answer.text, dialect) == "");
}

} // namespace

TEST_CASE("Insertions are all counted, and those of one list are at one place") {
  for (auto const& answer : {Answer{"A⁴ (A2 + a⁴, b⁴) B⁸ C⁸", 28, Problem::none},
                             {"A8(A4+χ1,χ2)", 10, Problem::inserted_leaf_or_gathering},
                             {"A8(A3+χ1.2, χ3)", 11, Problem::none},
                             {"A8 (A1+1, 2)", 10, Problem::none},
                             {"A⁸ (A2 + ²A² + χ1) B²", 13, Problem::none},
                             {"a⁸⁺¹ b⁸", 17, Problem::place_not_stated},
                             {"a⁸ c⁸⁻¹", 15, Problem::place_not_stated},
                             {"a–c8 + 4 unsigned leaves", 28, Problem::place_not_stated}})
    check(answer, dialects::strict);
}

TEST_CASE("Empty brackets with a count are a gathering without a signature") {
  for (auto const& answer : {Answer{"[ ]² B–K⁴", 38, Problem::unsigned_leaves_as_gathering},
                             {"[]⁴ A-Z⁸", 188, Problem::unsigned_leaves_as_gathering},
                             {"A⁸ [ ]² B⁸", 18, Problem::unsigned_leaves_as_gathering}})
    check(answer, dialects::strict);
  CHECK(write_formula(*read_formula("[ ]² B–K⁴")) == "π² B-K⁴");
  CHECK(write_formula(*read_formula("A⁸ [ ]² B⁸")) == "A⁸ χ² B⁸");
  CHECK(read_formula("[ ] A⁸").error().problem == Problem::unknown_mark);
}

TEST_CASE("A plus and one or two leaves directly after a count add leaves; the mark + stands apart") {
  for (auto const& answer : {Answer{"A⁴+1 B⁸", 13, Problem::place_not_stated},
                             {"A⁴+2 B⁸", 14, Problem::place_not_stated},
                             {"a-h8+4", 68, Problem::place_not_stated},
                             {"A⁴ +² B⁸", 14, Problem::none},
                             {"A⁴ +2 B⁸", 14, Problem::none}})
    check(answer, dialects::strict);
}

TEST_CASE("A run is not the same leaf as another") {
  CHECK(read_formula("A-K⁸ a-c⁴ (=a-c⁴)").error().problem == Problem::change_not_understood);
  CHECK(read_formula("A-K⁸ (=a-b)").error().problem == Problem::change_not_understood);
  check({"A-K⁸ (K8=A1, -K7)", 79, Problem::identity_in_both_places}, dialects::strict);
}

TEST_CASE("Headings come before or after the format, and leaves are counted in several words") {
  for (auto const& answer : {Answer{"in-12, sig. A-K¹²", 120, Problem::none},
                             {"in-8°, sign. A-K⁸", 80, Problem::none},
                             {"4°. Segn.: A-K⁴", 40, Problem::none},
                             {"Signaturen: A-K⁸", 80, Problem::none},
                             {"Collation by signatures: A-K⁸", 80, Problem::none},
                             {"Lagen: A-K⁸", 80, Problem::none},
                             {"8° (half-sheets): A-2K⁴", 132, Problem::none},
                             {"A, 4 leaves; B-K, 8 leaves each", 76, Problem::none},
                             {"A (4 leaves), B-D (8 leaves each)", 28, Problem::none},
                             {"A-K8 : 80 ll.", 80, Problem::none},
                             {"A-K8 : 79 ll.", 80, Problem::total_contradicts},
                             {"A-K8, 80 f.", 80, Problem::none},
                             {"A-K8, 81 f.", 80, Problem::total_contradicts},
                             {"A-D⁸ [E omitted] F-K⁸", 72, Problem::letters_skipped}})
    check(answer, dialects::strict);
}

TEST_CASE("Leaves that are listed as a count are no alternation for the gatherings before them") {
  check({"* A1,2", 4, Problem::leaves_read_as_count}, dialects::bmc);
  check({"[* A1.2]", 4, Problem::leaves_read_as_count}, dialects::bmc);
  check({"a b8,6", 14, Problem::alternation_over_odd_run}, dialects::bmc);
}

TEST_CASE("Words that would be a change without their markup are refused") {
  for (std::string const text : {"A⁸(<sup>-A1)", "A⁸(<sup>r</sup>+1)", "A⁸(−A1; <sup>r</sup>=A1)",
                                 "A⁸(=7,8<sup>r</sup>+χ1)", "A⁸(lacks <sup>a</sup>7)"}) {
    CAPTURE(text);
    CHECK(broken_law(text, dialects::strict) == "");
    CHECK(read_formula(text).error().problem == Problem::change_not_understood);
  }
}

TEST_CASE("Roman numerals may number gatherings") {
  for (auto const& answer : {Answer{"I–II¹⁰", 20, Problem::roman_numbers},
                             {"i–ii⁴ iii²", 10, Problem::roman_numbers},
                             {"[I–II]⁸", 16, Problem::roman_numbers},
                             {"I–III⁸ IV²", 26, Problem::roman_numbers},
                             {"A-H⁸ I-K⁴", 72, Problem::none}}) // letters
    check(answer, dialects::strict);
}

TEST_CASE("A formula in quotation marks is the formula") {
  check({"\"A–K⁸\"", 80, Problem::none}, dialects::strict);
  check({"‘A–K⁸’", 80, Problem::none}, dialects::strict);
  check({"'gg3.4'", 2, Problem::none}, dialects::strict);
}

TEST_CASE("What is doubtful is told") {
  for (auto const& answer : {Answer{"A–K⁸ (–K8?)", 79, Problem::doubtful_change},
                             {"πA⁴ B-C⁸(-A4)", 19, Problem::name_of_several},
                             {"A–K⁸ (90 leaves)", 80, Problem::total_contradicts},
                             {"A-H4 («G4)", 32, Problem::text_not_read},
                             {"A-I4 (||-E3,4)", 36, Problem::text_not_read},
                             {"A8 D8", 16, Problem::letters_skipped},
                             {"A–C⁸ E⁸", 32, Problem::letters_skipped},
                             {"A–Z, Aa–Zz, Aaa–Zzz⁴", 276, Problem::count_shared}})
    check(answer, dialects::strict);
  check({"1-16⁶ 17². [Library Co]", 98, Problem::text_not_read}, dialects::stc);
  check({"A8(±A4,5)", 8, Problem::none}, dialects::strict); // two single cancels
  check({"A8(±A4.5)", 8, Problem::none}, dialects::strict); // a fold
}

TEST_CASE("A leaf that is gone cannot go again, however many are") {
  CHECK(read_formula("A-B99(-A1, B1-64, A1)", dialects::bmc).error().problem != Problem::none);
  CHECK(read_formula("A-B⁹⁹(−A1, B1-64, A1)").error().problem == Problem::leaf_changed_twice);
  std::string many = "A-Z⁸ (−A1";
  for (int k = 2; k <= 8; ++k)
    for (char const* letter : {"B", "C", "D", "E", "F", "G", "H", "I", "K", "L", "M", "N"})
      many += ", " + (letter + std::to_string(k));
  CHECK((*read_formula(many + ")")).leaves() == 23 * 8 - 1 - 84);
  CHECK(read_formula(many + ", A1)").error().problem == Problem::leaf_changed_twice);
}

TEST_CASE("A change may name a gathering however far back it is") {
  std::string text = "Z8";
  for (int k = 0; k < 400; ++k) text += " *" + std::to_string(k % 7 + 2);
  auto const formula = read_formula(text + " (Z1+1)");
  REQUIRE(formula);
  CHECK(formula->changes().back().gathering() == GatheringAt{0, 0});
  CHECK(count_formula(text + " (Z1+1)")->leaves == formula->leaves());
}

TEST_CASE("Volumes are parts with leaves of their own") {
  auto const formula = read_formula("v. 1, [A]2 B-K12 L4; v. 2, [A]2 B-K12 L10.", dialects::stc);
  REQUIRE(formula);
  CHECK(formula->leaves() == 234);
  REQUIRE(formula->parts().size() == 2);
  CHECK(formula->parts()[0].label == "v. 1");
  CHECK(formula->parts()[0].leaves == 114);
  CHECK(formula->parts()[1].leaves == 120);
  for (auto const& answer : {Answer{"vol. 1: [A]⁴ B-K¹² L⁸; vol. 2: [A]⁴ B-K¹².", 232, Problem::none},
                             {"v.1: A-K⁶ (K6 blank) v.2: A-K⁶.", 120, Problem::none},
                             {"A4 B-M12 N6 (v. 1); pi1 B-R12 S8 (v. 2)", 343, Problem::none},
                             {"Vol. I: 8°: A–C⁸; vol. II: A–C⁸", 48, Problem::none},
                             {"A-B⁸(−A8); A-B⁸(−B1.8)", 29, Problem::none}})
    check(answer, dialects::strict);
  auto const changed = *read_formula("A-B⁸; A-B⁸(−B1.8)");
  CHECK(changed.parts()[0].leaves == 16);
  CHECK(changed.parts()[1].leaves == 14);
}

TEST_CASE("Counts may be in words") {
  for (auto const& answer :
       {Answer{"A-H3, in fours", 32, Problem::none},
        {"A-Z, in fours", 92, Problem::none},
        {"A-Qq4, in eights", 312, Problem::none},
        {"A-E4, in twelves", 60, Problem::none},
        {"A, three leaves; a, two leaves; B-N2, in fours.", 53, Problem::odd_gathering},
        {"A, four leaves; [a], two leaves; B-Z, Aa-Zz, and Aaa-Ccc, in fours.", 198, Problem::none},
        {"A–E in 8s", 40, Problem::none},
        {"A–E per 8", 40, Problem::none}})
    for (auto const dialect : {dialects::strict, dialects::stc}) check(answer, dialect);
}

TEST_CASE("A count on the line of more leaves than are folded together lost a point") {
  CHECK(read_formula("L-O810", dialects::bmc).error().problem == Problem::very_thick_gathering);
  CHECK(read_formula("a-n8; o-z & 38 p6", dialects::bmc).error().problem == Problem::very_thick_gathering);
}

TEST_CASE("What follows the gatherings is not read as gatherings") {
  for (char const* after : {"; pp. i–xii 1–128", "; [12], 128 p.", "; 70 leaves, pp. xii, 128", "; xii, 128, [2] p.",
                            ". Pp. [12] 1–128. 12 plates (4 folding)", "; pp. xii 128"}) {
    auto const formula = read_formula(std::string{"8°: A–H⁸ I⁶"} + after);
    CAPTURE(after);
    REQUIRE(formula);
    CHECK(formula->leaves() == 70);
    CHECK(!formula->tail().empty());
  }
  // Early Novels Database, text of the 3xx fields whose raised figures were lost
  CHECK((*read_formula("A-HÛp4Ûs IÛp2Ûs .")).leaves() == 34);
  CHECK((*read_formula("[pi][superscript 2]1-20[superscript 6].", dialects::stc)).leaves() == 122);
}

TEST_CASE("what follows the gatherings is handed over by its place") {
  std::string_view const text = "8°: A–H⁸ I⁶ [$4 signed]; 70 leaves; pp. xii 128; 2 plates; Portrait";
  auto const formula = *read_formula(text);
  using Kind = Passage::Kind;
  std::pair<Kind, char const*> const expected[]{{Kind::signing, "[$4 signed]"},
                                                {Kind::leaves, "70 leaves"},
                                                {Kind::pagination, "pp. xii 128"},
                                                {Kind::plates, "2 plates"},
                                                {Kind::prose, "Portrait"}};
  REQUIRE(formula.passages().size() == std::size(expected));
  for (std::size_t i = 0; i < std::size(expected); ++i) {
    CHECK(formula.passages()[i].kind == expected[i].first);
    CHECK(formula.passages()[i].text.of(text) == expected[i].second);
  }
  CHECK((*read_formula("8°: A–H⁸ I⁶; pp. i–xii 1–128")).passages()[0].kind == Kind::pagination);
  CHECK((*read_formula("A–K⁸ + 2 leaves of plates")).passages()[0].kind == Kind::plates);
}

TEST_CASE("formulas as cataloguers write them are right, refused or doubted, and none is wrong in silence") {
  int rows = 0, right = 0;
  for (auto const& row : data::rows("formulas_as_written.tsv", 2)) {
    CAPTURE(row[1]);
    auto const formula = read_formula(row[1]);
    ++rows;
    CHECK(broken_law(row[1], dialects::strict) == "");
    if (!formula) continue;
    bool const same = std::to_string(formula->leaves()) == row[0];
    CHECK((same || !formula->warnings().empty()));
    right += same ? 1 : 0;
  }
  CHECK(rows == 221);
  CHECK(right == rows);
}

TEST_CASE("formulas of books after 1500 agree with the pages their catalogues count") {
  // tests/data/later_formulas.tsv: Early Novels Database, headers of plays (EEBO-TCP), H. W. Kent
  int rows = 0, right = 0;
  for (auto const& row : data::rows("later_formulas.tsv", 3)) {
    CAPTURE(row[1]);
    auto const count = count_formula(row[1], dialects::stc);
    ++rows;
    right += count && std::to_string(count->leaves) == row[2] ? 1 : 0;
    CHECK(broken_law(row[1], dialects::stc) == "");
  }
  CHECK(rows == 195);
  CHECK(right == 195);
}

TEST_CASE("of leaves deleted together and called blank, all are deleted") { // common practice, no source
  for (std::string const joint : {"7,8", "7, 8", "7.8", "7 & 8", "7 and 8", "7-8", "7 and E8", "7 & E8"})
    for (std::string const blank : {" blank", " bl.", ", blank", " blanks", ", both blank"})
      for (std::string const sign : {"-E", "−E", "wants E", "lacking E", "minus E"}) {
        auto const text = "A-E⁸ (" + sign + joint + blank + ")";
        INFO(text);
        auto const formula = read_formula(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 38);
        CHECK(broken_law(text, dialects::strict) == "");
      }
  check({"A-E⁸ (-E7, E8 blank)", 39, Problem::text_not_read}, dialects::strict); // is E8 deleted too?
  check({"A-E⁸ (-E7; E8 blank)", 39, Problem::none}, dialects::strict);
  check({"A-E⁸ (±E7, E8 blank)", 40, Problem::none}, dialects::strict);
}

TEST_CASE("words may lack leaves before or after they are named, in parentheses or not") { // common practice, no source
  for (std::string const word : {"lacks", "lacking", "wants", "wanting", "less", "minus", "without"}) {
    for (std::string const leaf :
         {"E8", "the last leaf", "last leaf", "final leaf", "final blank", "final leaf, blank"}) {
      auto const text = "A-E⁸ (" + word + " " + leaf + ")";
      INFO(text);
      check({text.c_str(), 39, Problem::wanting_read_as_deletion}, dialects::strict);
    }
    check({("A-E⁸ (" + word + " last two leaves)").c_str(), 38, Problem::wanting_read_as_deletion}, dialects::strict);
    for (std::string const joint : {" ", ", ", ". "}) {
      auto const text = "A-E⁸" + joint + word + " E8";
      INFO(text);
      check({text.c_str(), 39, Problem::change_outside_parentheses}, dialects::strict);
    }
  }
  CHECK((*read_formula("A-E⁸ (lacks final blank)")).blanks().size() == 1);
}

TEST_CASE("leaves named together outside parentheses are blank together") { // common practice, no source
  for (std::string const joint : {", ", ". ", "; ", " "})
    for (std::string const leaves :
         {"A1 and E8 blank", "A1 & E8 blank", "A1 and E8 are blank", "A1 and C2 and E8 blank."}) {
      auto const text = "A-E⁸" + joint + leaves;
      INFO(text);
      check({text.c_str(), 40, Problem::text_not_read}, dialects::strict);
    }
}

TEST_CASE("a single gathering has leaves that are numbered, and alternates with none") { // common practice, no source
  for (auto const& answer : {Answer{"π1,2 A⁸", 10, Problem::leaves_read_as_count},
                             {"π1.2 A⁸", 10, Problem::leaves_read_as_count},
                             {"A⁸ χ1,2,3", 11, Problem::leaves_read_as_count},
                             {"A⁸ χ1-2", 10, Problem::leaves_read_as_count}})
    check(answer, dialects::strict);
  CHECK(read_formula("A-M8:4").error().problem == Problem::unknown_mark); // neither a count nor a mark
  auto const slip = read_formula("A⁸ (A4 + pasted slip)");
  CHECK(slip.error().problem == Problem::change_not_understood);
  CHECK(slip.error().found_text() == "A4 + pasted slip");
}

TEST_CASE("what is said of a deleted leaf is no doubt") { // common practice, no source
  for (auto const* const text : {"A⁸ (-A8, blank)", "A⁸ (-A8, probably blank)", "A⁸ (-A8, presumed blank)",
                                 "A⁸ (-A8 presumably blank)", "A⁸ (-A8, a blank)"}) {
    check({text, 7, Problem::none}, dialects::strict);
    CHECK((*read_formula(text)).blanks().size() == 1);
  }
}

TEST_CASE("a heading and a raised ending of the format are no signatures") { // common practice, no source
  for (std::string const heading : {"Signatures: ",
                                    "Signatures ",
                                    "Signature: ",
                                    "Signed: ",
                                    "Sigs. ",
                                    "Sig.: ",
                                    "sig: ",
                                    "Sign. ",
                                    "Collation: ",
                                    "Collates: ",
                                    "Coll. ",
                                    "Formula: ",
                                    "Register: ",
                                    "Reg. ",
                                    "Kollation: ",
                                    "Segnatura: ",
                                    "Segn.: ",
                                    "Bogensignaturen: ",
                                    "Signaturformel: ",
                                    "SIGNATURES: ",
                                    ""})
    for (std::string const format : {"8vo: ", "8^o: ", "8^{vo}: ", "8<sup>o</sup>: ", "8<sup>vo</sup>. ", "8°: "}) {
      auto const text = heading + format + "A-E⁸";
      INFO(text);
      auto const formula = read_formula(text);
      REQUIRE(formula);
      CHECK(formula->leaves() == 40);
      CHECK(formula->format() == Format::of(8));
      CHECK(formula->warnings().empty());
    }
  CHECK((*read_formula("1^8 2-5^8")).leaves() == 40);
  CHECK(read_formula("Sig A⁸").error().problem == Problem::no_signature); // without its full stop no abbreviation
}
