// SPDX-License-Identifier: MIT
// Words in a parenthesis that say something of whole gatherings or of the alphabet. A cataloguer who writes them knows how many
// leaves they mean: the answer is made with the words, and a reader either gives it or says that it has not read the words. (The
// words are common practice, no source; that J, U and W are stated where they are used: STCV manual, Collation formula; ICCU,
// Guida SBN materiale antico, App. C.)
#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>
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
