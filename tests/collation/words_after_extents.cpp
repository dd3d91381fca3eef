// SPDX-License-Identifier: MIT
// Words about leaves after an extent, 80 leaves, C omitted, and leaves that are said to be wanting a second time. The book is
// made first, so its leaves are known. (common practice, no source)
#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>
#include <tuple>

using namespace bifolium;

namespace {

bool is_told(std::string const& text) {
  auto const formula = read_formula(text);
  return !formula || !formula->warnings().empty();
}

} // namespace

TEST_CASE("words that say something of leaves are told after an extent as they are after gatherings") {
  int number = 0;
  for (std::string const extent : {"80 leaves", "160 pp.", "pp. 1-160", "[80] leaves", "10 gatherings"})
    for (auto const& [open, close] : {std::pair{", ", ""}, {"; ", ""}, {" (", ")"}})
      for (std::string const words : {"A1 lacking",
                                      "A1 gone",
                                      "A1 removed",
                                      "A1 cancelled",
                                      "A1 cut out",
                                      "A1 not present",
                                      "A1 added",
                                      "with A1 omitted",
                                      "with C repeated",
                                      "without C",
                                      "C omitted",
                                      "C in 6",
                                      "C of 6 leaves",
                                      "C has 6 leaves",
                                      "K has 4 leaves only",
                                      "with C in sixes",
                                      "except C in sixes",
                                      "C and D transposed",
                                      "C duplicated",
                                      "C twice",
                                      "lacking C",
                                      "lacking K8",
                                      "wanting the last leaf",
                                      "last leaf wanting",
                                      "final leaf missing",
                                      "without the final blank",
                                      "with a leaf added after C3",
                                      "one leaf after C3",
                                      "unsigned leaf after C3",
                                      "with 2 leaves more",
                                      "with a half-sheet",
                                      "and a leaf",
                                      "with an extra leaf",
                                      "followed by a leaf",
                                      "preceded by 2 leaves",
                                      "then a bifolium",
                                      "and errata leaf",
                                      "plus 2 unsigned leaves",
                                      "with L4",
                                      "82 leaves",
                                      "in all 82 leaves",
                                      "making 82 leaves",
                                      "82 numbered leaves",
                                      "in 11 quires",
                                      "in eleven quires",
                                      "12 sheets",
                                      "twelve sheets"}) {
        auto const text = "8°: A-K⁸; " + extent + open + words + close;
        CAPTURE(text);
        CHECK(is_told(text));
        if (++number % 7 == 0) CHECK(broken_law(text, {}) == "");
      }
  // the same directly after the extent, and after a plus
  for (std::string const words :
       {"+ 1 leaf", "+ errata", "+ half-title", "+ bifolium", "plus 2 leaves", "with two leaves", "and a leaf",
        "followed by a leaf", "with C omitted", "lacking K8"})
    for (std::string const extent : {"80 leaves ", "160 pp. "}) {
      CAPTURE(words);
      CHECK(is_told("8°: A-K⁸, " + extent + words));
    }
  for (std::string const words : {"+ errata", "+ half-title", "+ bifolium", "with 2 half-sheets", "(and a leaf)",
                                  "(followed by a leaf)", "(then a leaf)", "(with a half sheet)", "(with L4)"}) {
    CAPTURE(words);
    CHECK(is_told("8°: A-K⁸ " + words));
  }
  for (std::string const words : {"C omitted", "C repeated", "plus 2 leaves", "followed by a leaf"}) {
    CAPTURE(words);
    CHECK(is_told("8°: A-K⁸; $4 signed, " + words));
  }
}

TEST_CASE("words about pages, plates, type and signing after an extent are no doubt") {
  int number = 0;
  for (std::string const book : {"A-K⁸", "a-k⁸", "a-z⁸ A-C⁸", "π² A-H⁸"}) {
    auto const leaves = (*read_formula("8°: " + book)).leaves();
    auto const extent = std::to_string(leaves) + " leaves";
    for (std::string const words : {", ill.",
                                    "; 2 maps",
                                    ", 4 leaves of plates",
                                    "; p. 65 misnumbered 56",
                                    "; pp. 65-66 repeated, 70 omitted",
                                    "; pages 24 and 25 omitted",
                                    "; f. 24 missing in numbering",
                                    ". 2 columns. 40 lines. Type 2:100G",
                                    ", the last blank",
                                    ", last two blank",
                                    ". Printed by A. Manutius",
                                    ", with index",
                                    ", with woodcuts",
                                    " (with errata on A8)",
                                    ", foliated 1-80",
                                    ", numbered I-LXXX",
                                    ", A1 title",
                                    "; A1r title, A1v blank, A2r text",
                                    "; p. i misprinted",
                                    "; $4 signed (−A2)",
                                    "; pp. [i-viii] 1-128",
                                    ", printed on 10 sheets"}) {
      if (words == ", printed on 10 sheets" && leaves != 80) continue;
      auto const text = "8°: " + book + ", " + extent + words;
      CAPTURE(text);
      auto const formula = read_formula(text);
      REQUIRE(formula);
      CHECK(formula->leaves() == leaves);
      CHECK(formula->warnings().empty());
      if (++number % 5 == 0) CHECK(broken_law(text, {}) == "");
    }
  }
  for (std::string const text :
       {"8°: A-K⁸; $4 signed (−A2, +B5), missigning C2 as D2", "8°: A-K⁸, $3 signed, except D3",
        "8°: A-K⁸, [2], 78 leaves", "8°: A-K⁸ [$4 signed, A1 unsigned]", "8°: A-K⁸ (with half-title)",
        "8°: A-K⁸ (with errata)", "8°: A-K⁸, + 4 plates", "8°: A-K⁸ (with the colophon on K8)",
        "8°: A-K⁸ (with 2 blank leaves)", "8°: A-K⁸, 160 pages, 80 leaves"}) {
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == 80);
    CHECK(formula->warnings().empty());
  }
}

TEST_CASE("a loss that words name again, alone or with other leaves, is one loss") {
  // the leaves that are deleted, and the leaves that words name after them
  std::string const leaves[]{"A1", "A8", "B2", "K7", "K8"};
  int number = 0;
  for (unsigned deleted = 1; deleted < 32; ++deleted)
    for (unsigned said = 1; said < 32; ++said) {
      std::string list, words, conjoined;
      int lost = 0;
      for (unsigned k = 0; k < 5; ++k) {
        auto const add = [&](std::string& to, char const* join) { to += (to.empty() ? "" : join) + leaves[k]; };
        if (((deleted >> k) & 1U) != 0) add(list, ", −");
        if (((said >> k) & 1U) != 0) add(words, ", "), add(conjoined, said >> (k + 1) == 0 ? ", and " : ", ");
        lost += (((deleted | said) >> k) & 1U) != 0 ? 1 : 0;
      }
      for (auto const& text : {" lacking " + words, ", wanting " + conjoined, "; " + words + " wanting",
                               " (wants " + words + ")", " [lacking " + words + "]", " lacking leaves " + words}) {
        auto const all = "8°: A-K⁸(−" + list + ")" + text;
        CAPTURE(all);
        auto const formula = read_formula(all);
        REQUIRE(formula);
        CHECK(formula->leaves() == 80 - lost);
        CHECK(!formula->warnings().empty());
        if (++number % 97 == 0) CHECK(broken_law(all, {}) == "");
      }
    }
  // what the sign deletes a second time is a slip
  CHECK(read_formula("8°: A-K⁸(−A1), −A1, B2").error().problem == Problem::leaf_changed_twice);
}

TEST_CASE("leaves that a word of loss lists are lost whatever joins them") {
  for (std::string const word : {"lacking", "lacks", "wanting", "wants", "without", "less", "minus"})
    for (auto const& [list, lost] : {std::pair{"A1 B2", 2},
                                     {"A1, B2, and C3", 3},
                                     {"A1 B2 and C3", 3},
                                     {"A1, B2 C3", 3},
                                     {"A1-2, and C3", 3},
                                     {"leaf A1", 1},
                                     {"leaves A1, B2", 2},
                                     {"K8 blank", 1},
                                     {"the leaves A1 and B2", 2}}) {
      for (std::string const after : {"", " L⁴", ", L⁴", "; 160 pp."}) {
        auto const text = "8°: A-K⁸ " + word + " " + list + after;
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 80 - lost + (after.find('L') == std::string::npos ? 0 : 4));
        CHECK(!formula->warnings().empty());
      }
    }
  // words of loss that are not read are told, and are no signature
  for (std::string const words : {"missing A1, B2", "fehlt A1", "lacking π1", "lacking A9", "lacking A", "manca A1"}) {
    CAPTURE(words);
    auto const formula = read_lawfully("8°: A-K⁸ " + words);
    REQUIRE(formula);
    CHECK(formula->warnings().front().problem == Problem::text_not_read);
  }
}

TEST_CASE("a total that stands before the last gatherings is that of the whole formula or of those before it") {
  for (int before = 2; before <= 12; before += 2)
    for (int gatherings = 1; gatherings <= 10; ++gatherings)
      for (int const slip : {0, 1, 2, 10})
        for (std::string const text : {", ", "; "}) {
          std::string const alphabet{"ABCDEFGHIKLMNOPQRSTVXYZ"};
          auto const run =
              std::string{"A-"} + alphabet[static_cast<std::size_t>(gatherings)] + "⁸"; // one more than the number
          auto const leaves = before + 8 * (gatherings + 1);
          auto const all = "8°: π" + std::to_string(before) + text + std::to_string(leaves + slip) + " leaves, " + run;
          CAPTURE(all);
          auto const formula = read_formula(all);
          REQUIRE(formula);
          CHECK(formula->leaves() == leaves);
          bool told = false;
          for (auto const& one : formula->warnings()) told = told || one.problem == Problem::total_contradicts;
          CHECK(told == (slip != 0));
          if (before == 4 && slip < 2) CHECK(broken_law(all, {}) == "");
        }
}

TEST_CASE("a number after an equals sign in a parenthesis is a statement about the book") {
  std::string const alphabet{"ABCDEFGHIKLMNOPQRSTVXYZ"};
  for (std::size_t last = 1; last < 23; ++last)
    for (auto const slip : {0, 1})
      for (auto const& [unit, each] : {std::pair{"leaves", 8},
                                       {"ff.", 8},
                                       {"ll.", 8},
                                       {"Bl.", 8},
                                       {"sheets", 1},
                                       {"gatherings", 1},
                                       {"quires", 1}}) {
        auto const stated = static_cast<int>(last + 1) * each + slip;
        auto const text = std::string{"8°: A-"} + alphabet[last] + "⁸ (= " + std::to_string(stated) + " " + unit + ")";
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 8 * static_cast<int>(last + 1));
        CHECK(formula->warnings().empty() == (slip == 0));
      }
  CHECK((*read_lawfully("8°: A-K⁸ (= 160 pp.)")).warnings().empty());
  CHECK(!(*read_lawfully("8°: π1(=K8) A-K⁸(−K8)")).changes().empty());
}

TEST_CASE("a plus in parentheses with a leaf count is a mark, as a star is") {
  for (std::string const mark : {"(+)", "(++)", "(*)", "(†)"})
    for (std::string const count : {"⁴", "^4", "<sup>4</sup>", "4"})
      for (auto const& [before, after, leaves] :
           {std::tuple{"8°: ", " A-K⁸", 84}, {"8°: A-K⁸ ", "", 84}, {"8°: A-K⁸ ", " L⁴", 88}}) {
        auto const text = before + mark + count + after;
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == leaves);
        CHECK(formula->changes().empty());
      }
  CHECK((*read_formula("8°: A-K⁸(+1)")).leaves() == 81);
  CHECK(read_formula("8°: A-K⁸(+)").error().problem == Problem::change_not_understood);
}

TEST_CASE("a word for one leaf or for a fold after a plus is what it says") {
  for (auto const& [word, leaves] :
       {std::pair{"leaf", 1}, {"singleton", 1}, {"bifolium", 2}, {"two leaves", 2}, {"2 leaves", 2}})
    for (std::string const plus : {"+", " + "}) {
      auto const formula = read_lawfully("8°: B⁴ (B2" + plus + word + ")");
      REQUIRE(formula);
      CHECK(formula->leaves() == 4 + leaves);
    }
}
