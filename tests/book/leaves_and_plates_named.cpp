// SPDX-License-Identifier: MIT
// Statements that name leaves which are not there, and plates that are stated twice. Invented books: which leaves there are is
// counted by hand; common practice, no source.
#include <bifolium/book/examine.hpp>
#include <bifolium/book/read_description.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {
bool told(FieldTexts const& texts, FindingId id) {
  for (auto const& one : examine(read_description(texts)).findings)
    if (one.id == id) return true;
  return false;
}
bool names_no_leaf(std::string const& formula, std::string const& signing) {
  return told({.formula = formula, .signing = signing}, FindingId::signing_of_no_leaf);
}
} // namespace

TEST_CASE("a statement of signing that names a leaf which is not there is told, and no other") {
  struct Book {
    char const* formula;
    char last;                // the last gathering
    int leaves;               // of the last gathering; the others have eight
    std::string taken_away{}; // a leaf that the formula takes away
  };
  for (auto const& book :
       {Book{"8°: π² A-I⁸ K⁴(−K4)", 'K', 4, "K4"}, Book{"8°: A-I⁸ K⁸", 'K', 8}, Book{"8°: A-I⁸ K²", 'K', 2},
        Book{"8°: A-C⁸(−C2) D⁸", 'D', 8, "C2"}, Book{"8°: A⁸(−A1) B-F⁸", 'F', 8, "A1"}, Book{"8°: A-F⁸(±F3)", 'F', 8},
        Book{"8°: A-E⁸ F⁸(−F8)", 'F', 8, "F8"}})
    for (char letter = 'A'; letter <= 'N'; ++letter) {
      if (letter == 'J') continue;
      for (int leaf = 1; leaf <= 8; ++leaf) {
        auto const name = letter + std::to_string(leaf);
        bool const there =
            (letter < book.last || (letter == book.last && leaf <= book.leaves)) && name != book.taken_away;
        for (auto const& statement :
             {"$2 (−" + name + ") signed", "$2 (+" + name + ") signed", "$2 signed; missigning " + name + " as Q2",
              "$2 (" + name + " signed Q2)", "$2 (missigning " + name + " as Q2) signed"}) {
          INFO(std::string{book.formula} << " with " << statement);
          CHECK(names_no_leaf(book.formula, statement) == !there);
        }
      }
      INFO(std::string{book.formula} << " and all of " << letter);
      CHECK(names_no_leaf(book.formula, std::string{"$2 (−"} + letter + ") signed") == (letter > book.last));
    }
  CHECK_FALSE(names_no_leaf("8°: A-F⁸(C3+χ1)", "$4 (−χ1) signed")); // an inserted leaf is there
}

TEST_CASE("plates stated in two places are compared, wherever they stand") {
  std::string const numbers[]{"3", "4"};
  for (auto const& first : numbers)
    for (auto const& second : numbers) {
      bool const differ = first != second;
      for (auto const& words : {first + " plates", "[" + first + "] plates", first + " leaves of plates"})
        for (std::string const sign : {"; ", ", "}) {
          auto const formula = "8°: A-K⁸" + sign + words;
          INFO(formula << " and " << second);
          CHECK(told({.formula = formula, .plates = second}, FindingId::stated_twice) == differ);
          CHECK(told({.formula = formula, .pagination = "160 p., [" + second + "] leaves of plates"},
                     FindingId::stated_twice) == differ);
          CHECK(told({.formula = formula, .leaves = "80 leaves, " + second + " plates"}, FindingId::stated_twice) ==
                differ);
          auto const alone = read_description({.formula = formula});
          REQUIRE(alone.plates);
          CHECK(std::to_string(alone.plates->value) == first);
          CHECK(alone.plates->in == Field::formula);
        }
      CHECK(told({.pagination = "160 p., [" + first + "] leaves of plates", .plates = second},
                 FindingId::stated_twice) == differ);
    }
  CHECK_FALSE(read_description({.formula = "8°: A-K⁸"}).plates);
  CHECK_FALSE(read_description({.formula = "8°: A-K⁸; 80 leaves; pp. 160"}).plates);
}
