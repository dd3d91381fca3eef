// SPDX-License-Identifier: MIT
// Leaves, pages, plates and signing that are stated between two parts of a formula, and leaves described in words. The book is
// made first, so its leaves are known; a reader gives them or says that something was not read. (The forms are common practice,
// no source; that unsigned leaves between signed gatherings are χ: Bowers, as the STCV manual reports him.)
#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>
#include <tuple>
#include <vector>

using namespace bifolium;

namespace {

struct Part {
  char const* text;
  int leaves;
};
bool told(Formula const& formula, Problem problem) {
  for (auto const& one : formula.warnings())
    if (one.problem == problem) return true;
  return false;
}

} // namespace

TEST_CASE("no gathering is lost after what is stated between two parts of a formula") {
  Part const before[]{{"A⁴", 4}, {"A-K⁸", 80}, {"π² A-K⁸", 82}, {"A-K8", 80}, {"A-D⁸ E⁸(−E8)", 39}};
  Part const after[]{{"L-M⁸", 16},  {"L⁴", 4},       {"a-b⁸", 16},         {"2A-2C⁴ 2D²", 14},
                     {"χ²", 2},     {"L-M8 N4", 20}, {"L-M, in fours", 8}, {"*⁴", 4},
                     {"²A-B⁸", 16}, {"L-M^8", 16},   {"[L]⁴ M⁸", 12}};
  char const* const texts[]{"4 plates",
                            "+ 2 plates",
                            "+ map",
                            "with 2 plates",
                            "4 leaves of plates",
                            "1 folding table",
                            "pp. 160",
                            "pp. 1-160",
                            "pp. i-viii",
                            "[8], 152 p.",
                            "p. 24 misnumbered",
                            "$4 signed",
                            "$2 signed (−A2)",
                            "96 ff.",
                            "4 leaves",
                            "[80] leaves",
                            "2 leaves of music",
                            "pp. 1-160 (misprinting 65 as 56)",
                            "and 2 maps",
                            "plus errata",
                            "2 engr. plates",
                            "xii, 148 p.",
                            "errata",
                            "10 gatherings",
                            "another issue",
                            "plates at A1, B2",
                            "80 ll."};
  char const* const joins[]{", ", "; ", ". ", " "};
  int rows = 0, right = 0;
  for (auto const& one : before)
    for (auto const* const text : texts)
      for (auto const& other : after)
        for (std::string const first : joins)
          for (std::string const second : joins) {
            auto const all = std::string{"8°: "} + one.text + first + text + second + other.text;
            auto const formula = read_formula(all);
            if (!formula) continue;
            CAPTURE(all);
            bool const same = formula->leaves() == one.leaves + other.leaves;
            CHECK((same || !formula->warnings().empty()));
            right += same ? 1 : 0;
            if (++rows % 10 == 0) CHECK(broken_law(all, {}) == "");
          }
  CHECK(rows > 10000);
  CHECK(right * 10 > rows * 6);
}

TEST_CASE("what is stated of each part of a formula is read, and the gatherings after it") {
  for (auto const& one : {Part{"8°: A⁴, 4 leaves, B-K⁸, 72 leaves", 76},
                          {"8°: A⁴ [4 leaves] B-K⁸", 76},
                          {"8°: A-K⁸, 80 ff.; a-b⁸, 16 ff.", 96},
                          {"8°: A-K⁸; 80 leaves. A-B⁸; 16 leaves", 96},
                          {"8°: A-K⁸ pp. 1-160; a-b⁸ pp. 1-32", 96},
                          {"8°: A-K⁸, pp. 160, L-M⁸", 96},
                          {"8°: A-K⁸; 4 plates; a-b⁸", 96},
                          {"8°: A-K⁸; p. 24 misnumbered; a-b⁸", 96},
                          {"8°: A⁴ pp. i-viii, B-K⁸ pp. 1-144", 76},
                          {"8°: A⁴ $2 signed, B-K⁸ $4 signed", 76},
                          {"8°: A⁴ $2 signed B-K⁸ $4 signed", 76},
                          {"8°: A-K⁸, 4 plates, L-M⁸", 96},
                          {"8°: A-K⁸, + 2 plates, L-M⁸", 96},
                          {"8°: A-K⁸, + map, L-M⁸", 96},
                          {"8°: A-K⁸, with 2 plates, L-M⁸", 96},
                          {"8°: A-K⁸, 4 leaves of plates, L-M⁸", 96},
                          {"8°: A-K⁸, 1 folding table, L-M⁸", 96},
                          {"8°: A-K8, 80 leaves, L4", 84},
                          {"8°: A-K⁸; $4 signed, except A3, B4", 80},
                          {"8°: A-K⁸; 80 leaves; pp. 1-160", 80}}) {
    CAPTURE(one.text);
    auto const formula = read_lawfully(one.text);
    REQUIRE(formula);
    CHECK(formula->leaves() == one.leaves);
    CHECK(formula->warnings().empty());
  }
  CHECK(told(*read_lawfully("8°: A⁴, 5 leaves, B-K⁸"), Problem::total_contradicts));
  CHECK(told(*read_lawfully("8°: A⁴, 4 leaves, B-K⁸, 71 leaves"), Problem::total_contradicts));
  CHECK(told(*read_lawfully("8°: A-K⁸; 80 leaves; variant: a-b⁸"), Problem::text_not_read));
  CHECK(told(*read_lawfully("8°: A-K⁸; 3 plates at K1, L2, M4."), Problem::text_not_read));
  CHECK((*read_lawfully("8°: A⁴ pp. i-viii, B-K⁸ pp. 1-144")).tail() == "pp. i-viii; pp. 1-144");
}

TEST_CASE("leaves without a signature are counted wherever they stand, and told") {
  for (int n = 1; n <= 8; ++n)
    for (std::string const adjective : {"unsigned ", "unnumbered ", "preliminary ", "blank ", ""})
      for (std::string const unit : {"leaves", "leaf", "ll.", "ff."})
        for (std::string const contents : {"", " unsigned", ", unsigned", " (blank)", " of errata", " of index",
                                           " of advertisements", " of contents", " of the table"}) {
          if (adjective.empty() == contents.empty()) continue;
          auto const words = std::to_string(n) + " " + adjective + unit + contents;
          using Row = std::tuple<char const*, char const*, int>;
          for (auto const& [before, after, leaves] : {Row{"8°: A-K⁸, ", "", 80},
                                                      {"8°: A-K⁸, ", ", L-M⁸", 96},
                                                      {"8°: A-K8; ", "; L4", 84},
                                                      {"8°: π², ", ", A-K⁸", 82}}) {
            auto const text = before + words + after;
            CAPTURE(text);
            auto const formula = read_lawfully(text);
            REQUIRE(formula);
            CHECK(formula->leaves() == leaves + n);
            CHECK(told(*formula, Problem::unsigned_leaves_as_gathering));
          }
        }
  CHECK((*read_lawfully("8°: A-K⁸, [2] unsigned leaves")).leaves() == 82);
}

TEST_CASE("a total in words is not a gathering, and few leaves are not a total") {
  for (std::string const total : {"80 leaves", "80 unnumbered leaves", "80 unsigned leaves", "[80] leaves", "80 ff."}) {
    auto const formula = read_lawfully("8°: A-K⁸, " + total);
    REQUIRE(formula);
    CHECK(formula->leaves() == 80);
    CHECK(formula->warnings().empty());
  }
  for (std::string const total : {"81 leaves", "79 unnumbered leaves", "88 ff.", "[78] leaves"}) {
    auto const formula = read_lawfully("8°: A-K⁸, " + total);
    REQUIRE(formula);
    CHECK(formula->leaves() == 80);
    CHECK(told(*formula, Problem::total_contradicts));
  }
  for (std::string const text : {"1 leaf", "[1] leaf", "2 ff. table", "2 leaves of music"}) {
    auto const formula = read_lawfully("8°: A-K⁸, " + text);
    REQUIRE(formula);
    CHECK(told(*formula, Problem::text_not_read));
    CHECK(!told(*formula, Problem::total_contradicts));
  }
}

TEST_CASE("a count in words after a count in figures changes no gathering") {
  char const* const words[]{"", "", "twos", "", "fours", "", "sixes", "", "eights", "", "tens", "", "twelves"};
  for (int most = 2; most <= 12; most += 2)
    for (int first = 2; first <= 12; first += 2)
      for (int last = 2; last <= 12; last += 2)
        for (std::string const in : {" in ", ", in ", ", per "})
          for (auto const& said : {std::string{words[most]}, std::to_string(most) + "s", std::to_string(most) + "'s"})
            for (std::string const raise : {"^", ""}) {
              auto const count = [&](int n) { return raise + std::to_string(n); };
              auto const text = "8°: A" + count(first) + ", B-I" + count(most) + ", K" + count(last) + in + said;
              CAPTURE(text);
              auto const formula = read_formula(text);
              REQUIRE(formula);
              CHECK(formula->leaves() == first + 8 * most + last);
              CHECK(formula->warnings().empty());
            }
  for (auto const& one : {Part{"12°: A–Q¹² R⁶, in 12s", 198},
                          {"8°: A⁴ B-I⁸ K², in eights", 70},
                          {"8°: A-K⁸, L⁴, in 8's", 84},
                          {"8°: A-C, D⁴, in eights", 28},
                          {"8°: A-C, D-E⁴, in 8s", 32},
                          {"8°: A-C, D-E⁸/⁴, in eights", 36},
                          {"12°: A–Q¹²/⁶ R⁶ in 12s", 150},
                          {"12°: A–Q¹² R⁶ per twelve", 198},
                          {"8°: A-Z, Aa3, in fours", 96},
                          {"8°: A-H3, in fours", 32}}) {
    CAPTURE(one.text);
    auto const formula = read_lawfully(one.text);
    REQUIRE(formula);
    CHECK(formula->leaves() == one.leaves);
    CHECK(formula->warnings().empty());
  }
  CHECK(told(*read_lawfully("8°: A-K⁸, in sixes"), Problem::gathered_otherwise));
  CHECK(told(*read_lawfully("8°: A-K⁸, in eights and fours"), Problem::gathered_otherwise));
}

TEST_CASE("a number of gatherings, sheets or leaves that the formula does not have is told wherever it stands") {
  // an octavo of ten whole sheets: any other number is a slip (the sheet of an octavo makes eight leaves: DCRMR 6.29)
  for (int n = 8; n <= 12; ++n) {
    auto const number = std::to_string(n), leaves = std::to_string(8 * n);
    for (std::string const before : {"; ", ", ", "; pp. 1-160; ", ". "}) {
      for (std::string const unit : {"gatherings", "quires", "Lagen", "cahiers"})
        CHECK(told(*read_lawfully("8°: A-K⁸" + before + number + " " + unit), Problem::gatherings_contradict) ==
              (n != 10));
      CHECK(told(*read_lawfully("8°: A-K⁸" + before + number + " sheets"), Problem::sheets_contradict) == (n != 10));
      CHECK(told(*read_lawfully("8°: A-K⁸" + before + "10 sheets, " + leaves + " leaves"),
                 Problem::total_contradicts) == (n != 10));
    }
    for (std::string const half : {"½", " 1/2"})
      CHECK(told(*read_lawfully("8°: A-K⁸ L⁴; " + number + half + " sheets"), Problem::sheets_contradict) == (n != 10));
  }
  CHECK(!told(*read_lawfully("8°: A-K⁸(−K8); 10 sheets"), Problem::sheets_contradict));
  CHECK(!told(*read_lawfully("A-K⁸; 11 sheets"), Problem::sheets_contradict)); // of which format?
  CHECK(!told(*read_lawfully("8°: A-K⁸, 10 quires; L-M⁸, 2 quires"), Problem::gatherings_contradict));
}

TEST_CASE("words and signs that join two runs, and brackets round runs, lose none of them after what is stated") {
  for (std::string const stated : {"80 leaves", "[80] leaves", "80 ff.", "4 plates", "+ 2 plates", "pp. 1-160",
                                   "[8], 152 p.", "$4 signed", "10 gatherings"})
    for (std::string const joint :
         {"", "then ", "followed by ", "dann ", "puis ", "poi ", "and ", "und ", "et ", "& ", "+ "})
      for (Part const after : {Part{"L-M⁸", 16},
                               {"[L-M⁸]", 16},
                               {"[L⁸ M⁴] N²", 14},
                               {"[L]⁸ M⁴", 12},
                               {"a-b⁸", 16},
                               {"χ²", 2},
                               {"[χ]²", 2},
                               {"²A-B⁸", 16}})
        for (std::string const between : {", ", "; ", " "}) {
          auto const text = "8°: A-K⁸, " + stated + between + joint + after.text;
          CAPTURE(text);
          auto const formula = read_lawfully(text);
          REQUIRE(formula);
          CHECK(formula->leaves() == 80 + after.leaves);
        }
}

TEST_CASE("a number of leaves is compared with the run before it, the part before it or the whole") {
  // said of π², of A⁴ or of both; and of none of them
  for (auto const& one : {Part{"8°: π², 2 leaves, A-K⁸", 82},
                          {"8°: π² A⁴, 4 leaves, B-K⁸", 78},
                          {"8°: π² A⁴, 6 leaves, B-K⁸", 78},
                          {"8°: π², 2 leaves; A-K⁸, 80 leaves; a-b⁸, 16 leaves", 98}}) {
    CAPTURE(one.text);
    auto const formula = read_lawfully(one.text);
    REQUIRE(formula);
    CHECK(formula->leaves() == one.leaves);
    CHECK(formula->warnings().empty());
  }
  for (int stated = 1; stated <= 12; ++stated) {
    auto const formula = read_lawfully("8°: π² A⁴, " + std::to_string(stated) + " leaves, B-K⁸");
    REQUIRE(formula);
    CHECK(formula->leaves() == 78);
    CHECK(formula->warnings().empty() == (stated == 4 || stated == 6));
  }
}
