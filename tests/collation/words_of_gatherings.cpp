// SPDX-License-Identifier: MIT
// Words in a parenthesis that say something of whole gatherings or of the alphabet. A cataloguer who writes them knows how many
// leaves they mean: the answer is made with the words, and a reader either gives it or says that it has not read the words. (The
// words are common practice, no source; that J, U and W are stated where they are used: STCV manual, Collation formula; ICCU,
// Guida SBN materiale antico, App. C.)
#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>
#include <tuple>
#include <vector>

using namespace bifolium;

namespace {

/// Words, and how many leaves the book has with them, where a run from A to `last` of so many leaves has `counted`.
struct Said {
  std::string words;
  int leaves;
};
std::vector<Said> words_that_change(int place, int last, int leaves) {
  std::string const alphabet{"ABCDEFGHIKLMNOPQRSTVXYZ"};
  std::string const name{alphabet[static_cast<std::size_t>(place)]};
  std::string const end{alphabet[static_cast<std::size_t>(last)]};
  int const counted = (last + 1) * leaves, half = leaves / 2;
  char const* const numbers[]{"", "one", "two", "three", "four", "five", "six", "seven", "eight"};
  std::vector<Said> all;
  for (std::string const before : {"", "sig. ", "gathering ", "quire ", "signature "})
    for (std::string const after : {" repeated", " twice", " is repeated", " duplicated", " is a duplicate"})
      all.push_back({before + name + after, counted + leaves});
  for (std::string const two : {"with two sigs. ", "two signatures ", "2 gatherings "})
    all.push_back({two + name, counted + leaves});
  for (auto const& of : {" of " + std::to_string(half) + " leaves", " in " + std::string{numbers[half]},
                         " has " + std::to_string(half) + " leaves", " in " + std::string{numbers[half]} + "s",
                         std::string{" is a half-sheet"}, " " + std::to_string(half) + " leaves"})
    all.push_back({name + of, counted - leaves + half});
  all.push_back({"except " + name + std::to_string(half), counted}); // a leaf: it is not said what of it
  for (std::string const gone : {"no ", "without ", "no sig. "}) all.push_back({gone + name, counted - leaves});
  for (std::string const gone : {" omitted", " not used", " not present", " skipped"})
    all.push_back({name + gone, counted - leaves});
  if (place != last) {
    all.push_back({name + " and " + end + " in " + numbers[half] + "s", counted - 2 * (leaves - half)});
    all.push_back({"no " + name + " or " + end, counted - 2 * leaves});
    all.push_back({name + " and " + end + " repeated", counted + 2 * leaves});
  }
  return all;
}
std::vector<Said> words_of_alphabet(int last, int leaves) {
  int const counted = (last + 1) * leaves;
  int const j = last > 8 ? 1 : 0, u = last > 18 ? 1 : 0, w = last > 19 ? 1 : 0;
  std::vector<Said> all;
  for (std::string const used : {" used", " included", " is used", " as a letter"})
    all.push_back({"J" + used, counted + j * leaves});
  for (std::string const with : {"with ", "including ", "also "}) {
    all.push_back({with + "J", counted + j * leaves});
    all.push_back({with + "J, U and W", counted + (j + u + w) * leaves});
    all.push_back({with + "W and J", counted + (j + w) * leaves});
  }
  all.push_back({"J and U both used", counted + (j + u) * leaves});
  if (last == 22)
    for (std::string const letters :
         {"26 letters", "alphabet of 26 letters", "26-letter alphabet", "twenty-six letters"})
      all.push_back({letters, counted + 3 * leaves});
  return all;
}

} // namespace

TEST_CASE("words that change how many gatherings or leaves there are are counted, or told") {
  std::string const alphabet{"ABCDEFGHIKLMNOPQRSTVXYZ"};
  int rows = 0;
  for (int last = 2; last < 23; ++last)
    for (int const leaves : {4, 6, 8}) {
      std::string const run = std::string{"8°: A-"} + alphabet[static_cast<std::size_t>(last)] + std::to_string(leaves);
      auto all = words_of_alphabet(last, leaves);
      for (int place = 0; place <= last; ++place)
        for (auto& one : words_that_change(place, last, leaves)) all.push_back(one);
      for (auto const& one : all)
        for (auto const& [open, close] :
             {std::pair{"", ""}, std::pair{"A1 title, ", ""}, std::pair{"", ", A2 misprinted"}}) {
          auto const text = run + " (" + open + one.words + close + ")";
          auto const formula = read_formula(text);
          CAPTURE(text);
          REQUIRE(formula);
          CHECK((formula->leaves() == one.leaves || !formula->warnings().empty()));
          if (++rows % 50 == 0) CHECK(broken_law(text, {}) == "");
        }
    }
  CHECK(rows > 20000);
}

TEST_CASE("words that no leaf depends on are no doubt") {
  for (char const* words : {"C missigned D",
                            "C signed D",
                            "gathering C also signed D",
                            "A title",
                            "C1 missigned D1",
                            "A-K signed in red",
                            "23 letters",
                            "no J, U or W",
                            "no J",

                            "in eights",
                            "K8 blank",
                            "last two leaves blank",
                            "A1 title, K8 blank",
                            "A1 with portrait",
                            "80 leaves",
                            "K unsigned",
                            "signatures in italics",
                            "C and D misprinted",
                            "B printed in red and black",
                            "a title",
                            "alphabet of 23 letters"}) {
    auto const text = std::string{"8°: A-K8 ("} + words + ")";
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == 80);
    CHECK(formula->warnings().empty());
  }
}

TEST_CASE("a leaf that words put beside another is told") { // common practice, no source
  std::vector<std::string> units;
  for (std::string const unit : {"leaf", "bifolium", "half-sheet", "half sheet", "singleton"})
    for (std::string const before :
         {"", "unsigned ", "single ", "a ", "an unsigned ", "one ", "extra ", "title ", "with an unsigned "})
      units.push_back(before + unit);
  for (char const* unit : {"two leaves", "unsigned leaves", "leaf of errata", "half-title", "two bifolia", "leaves"})
    units.push_back(unit);
  int told = 0;
  for (std::string const run : {"8°: A-K8", "4°: A-K8", "12°: A-K6", "8°: a-k8 A-K8"})
    for (std::string const leaf : {"A1", "C3", "K6"}) {
      std::vector<std::string> all;
      for (auto const& unit : units) {
        for (char const* place : {" after ", " before ", " following ", " preceding "})
          all.push_back(unit + place + leaf);
        all.push_back(unit + " between " + leaf + " and D2");
        if (unit == "leaves") continue;
        for (char const* place : {" followed by ", " preceded by "}) all.push_back(leaf + place + unit);
        for (char const* place : {"following ", "after "}) all.push_back(place + leaf + " " + unit);
      }
      for (std::string const strange : {"χ1", "*C3", "C3*", "C3†"})
        for (std::string const place : {" followed by ", " and ", ", "}) all.push_back(leaf + place + strange);
      for (auto const& words : all) {
        auto const text = run + " (" + words + ")";
        CAPTURE(text);
        auto const formula = read_formula(text);
        CHECK((!formula || !formula->warnings().empty()));
        if (++told % 40 == 0) CHECK(broken_law(text, {}) == "");
      }
    }
  CHECK(told > 4000);
  for (char const* words :
       {"leaf C3 missigned", "leaf C3 after D4", "the leaf after C3 is unsigned", "C3 signed *C3", "C3 missigned C3*",
        "text begins after A2", "A2 signed after the catchword", "errata on leaf after K7", "C3 conjugate with C6",
        "C3 on a half-sheet", "portrait facing A1", "plate after C3", "map before A1", "leaves after C3 unsigned",
        "C1 following B8 unsigned", "leaves C3 and C4 missigned", "title on recto of leaf before C3"}) {
    auto const text = std::string{"8°: A-K8 ("} + words + ")";
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->warnings().empty());
  }
}

TEST_CASE("a number of sheets or gatherings in a parenthesis that is not that of the formula is told") {
  // a sheet makes as many leaves as the format says (DCRMR 6.29), so ten gatherings of eight in octavo are ten sheets
  char const* const words[]{"",     "one", "two",    "three",  "four",     "five",     "six",     "seven",  "eight",
                            "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen"};
  auto const doubts = [](std::string const& text, Problem problem) {
    int found = 0;
    auto const formula = read_formula(text);
    REQUIRE(formula);
    for (auto const& one : formula->warnings()) found += one.problem == problem ? 1 : 0;
    return found;
  };
  std::string const alphabet{"ABCDEFGHIKLMNOPQ"};
  for (int last = 1; last < 16; last += 4) {
    std::string const run = std::string{"8°: A-"} + alphabet[static_cast<std::size_t>(last)] + "8";
    for (int stated = 2; stated <= 16; stated += 2) {
      int const differs = stated != last + 1 ? 1 : 0;
      auto const number = std::to_string(stated), word = std::string{words[stated]};
      for (std::string const before : {"", "printed on ", "A1 title, ", "total: "})
        for (std::string const after : {"", ", in all", "; in red"}) {
          auto const text = [&](std::string const& what) { return run + " (" + before + what + after + ")"; };
          for (auto const& sheets : {number + " sheets", word + " sheets", number + " full sheets",
                                     number + " printed sheets", std::to_string(2 * stated) + " half-sheets"}) {
            CAPTURE(text(sheets));
            CHECK(doubts(text(sheets), Problem::sheets_contradict) == differs);
          }
          for (std::string const unit :
               {" gatherings", " quires", " signatures", " Lagen", " cahiers", " fascicoli", " cuadernos"}) {
            CAPTURE(text(number + unit));
            CHECK(doubts(text(number + unit), Problem::gatherings_contradict) == differs);
          }
        }
    }
    CHECK(doubts(run + " (" + std::to_string(last + 1) + "½ sheets)", Problem::sheets_contradict) == 1);
    CHECK(doubts(run + " Z4 (" + std::to_string(last + 1) + " and a half sheets)", Problem::sheets_contradict) == 0);
    CHECK(doubts(run + " Z4 (" + std::to_string(2 * last + 3) + " half-sheets)", Problem::sheets_contradict) == 0);
  }
  for (char const* remark :
       {"8°: A-K8 (2 sheets unsigned)", "8°: A-K8 (signed in 2 gatherings in red)",
        "8°: A-K8 (each gathering of one sheet)", "4°: A-K8 (2 sheets to a gathering)", "8°: π4 A-K8 (10 sheets)",
        "8°: π4 A-K8 (10 gatherings)", "8°: A-K8 (10 sheets) L4", "8°: A-K8 (text in 2 columns)", "A-K8 (12 sheets)"}) {
    CAPTURE(remark);
    CHECK(doubts(remark, Problem::sheets_contradict) + doubts(remark, Problem::gatherings_contradict) == 0);
  }
}

TEST_CASE("a letter that the alphabet does not have is not thrown out with another") {
  for (std::string const sign : {"-", "−"})
    for (std::string const letter : {"J", "U", "W"})
      for (std::string const more : {"", ", A1", ", K8 blank"}) {
        auto const text = "8°: A-Z8 (" + sign + letter + more + ")";
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 184);
        CHECK(!formula->warnings().empty());
      }
  Dialect with_all;
  with_all.letters = {true, true, true};
  CHECK((*read_formula("8°: A-Z8 (−J)", with_all)).leaves() == 200); // a gathering of such an alphabet
  CHECK((*read_formula("8°: A-Z8 (no J)", with_all)).warnings().size() == 1);
  CHECK((*read_formula("8°: A-Z8 (J used)", with_all)).warnings().empty());
  CHECK((*read_formula("8°: A-Z8 (26 letters)", with_all)).warnings().empty());
  CHECK((*read_formula("8°: A-L8 (−I)")).leaves() == 80);
  CHECK((*read_formula("8°: A-L8 (−J3)")).leaves() == 87); // I and J are one letter
}

TEST_CASE("plates after a plus are not leaves of a gathering") { // common practice, no source
  for (std::string const number : {"", "2 ", "a ", "two ", "12 "})
    for (std::string const how : {"", "folding ", "engraved ", "unsigned ", "leaves of ", "large folding "})
      for (std::string const plates : {"plate", "plates", "map", "maps", "portrait", "engravings", "table",
                                       "frontispiece", "plate by an unknown hand"})
        for (std::string const place : {"E4", "", "E8"})
          for (std::string const plus : {"+ ", " + "}) {
            for (auto const& [before, after, leaves] :
                 {std::tuple{"", "", 40}, std::tuple{"-E1, ", "", 39}, std::tuple{"", ", E5+1", 41}}) {
              auto const text = "8°: A-E⁸ (" + (before + (place + plus) + number + how + plates) + after + ")";
              CAPTURE(text);
              auto const formula = read_formula(text);
              REQUIRE(formula);
              CHECK(formula->leaves() == leaves);
              CHECK(!formula->warnings().empty());
              if (number.empty() && how.empty()) CHECK(broken_law(text, {}) == "");
            }
          }
  char const* const numbers[]{"one", "two", "three", "four"};
  for (int n = 0; n < 4; ++n)
    for (std::string const unit : {"", " leaves", " unsigned leaves"}) {
      auto const text = "8°: A-E⁸ (E4 + " + (numbers[n] + unit) + ")";
      CAPTURE(text);
      auto const formula = read_lawfully(text);
      REQUIRE(formula);
      CHECK(formula->leaves() == 41 + n);
    }
}

TEST_CASE(
    "a letter after a plus that the alphabet does not have is not a leaf") { // STCV: letters beyond the 23 are stated
  for (std::string const run : {"8°: A-Z8", "4°: B-Y4", "8°: a-z8"})
    for (std::string const letter : {"J", "U", "W", "j", "u", "w"})
      for (std::string const more : {"", ", A1 title", "; in red"}) {
        auto const text = run + " (+" + letter + more + ")";
        CAPTURE(text);
        auto const formula = read_lawfully(text), plain = read_formula(run);
        REQUIRE(formula);
        CHECK(formula->leaves() == plain->leaves());
        CHECK(!formula->warnings().empty());
      }
}

TEST_CASE("a single gathering before a minus lacks the leaf of its own count") { // common practice, no source
  for (int leaves = 2; leaves <= 12; leaves += 2) {
    auto const count = std::to_string(leaves);
    for (std::string const before : {"", "A-K8 "})
      for (std::string const name : {"L", "2L", "π", "*", "Ll"})
        for (std::string const& raised : {name + "<sup>" + count + "</sup>", name + count})
          for (std::string const sign : {"-", "−"})
            for (std::string const after : {"", " (blank)", " M8", "; 8 leaves"}) {
              auto const text = before + raised + " " + sign + name + count + after;
              CAPTURE(text);
              auto const formula = read_formula(text);
              REQUIRE(formula);
              CHECK(formula->leaves() == leaves - 1 + (before.empty() ? 0 : 80) + (after == " M8" ? 8 : 0));
              CHECK(broken_law(text, {}) == "");
            }
  }
  CHECK((*read_formula("A<sup>8</sup> -E8")).leaves() == 40); // another name is the end of a run
  CHECK((*read_formula("A8 - E8")).leaves() == 40);
}

TEST_CASE(
    "X follows a W that is written out") { // ICCU, Guida SBN materiale antico, App. C: W, where it is used, is a run
  auto const starts_again = [](char const* text) {
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    for (auto const& one : formula->warnings())
      if (one.problem == Problem::series_starts_again) return true;
    return false;
  };
  CHECK(!starts_again("8°: A-V⁸ W⁸ X-Z⁸"));
  CHECK(!starts_again("8°: B-U⁴ W⁴ X²"));
  CHECK(starts_again("8°: A-X⁸ W⁸"));
  CHECK(starts_again("8°: A-V⁸ W⁸ V⁸"));
  CHECK((*read_formula("8°: A-V⁸ W⁸ X-Z⁸")).leaves() == 192);
}
