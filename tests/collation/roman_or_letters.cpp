// SPDX-License-Identifier: MIT
// Gatherings numbered in Roman numerals, as catalogues of manuscripts write them (I⁶: Bodleian Library, medieval-mss). A
// single letter is both a numeral and a signature: I-V⁸ may be five gatherings or the twelve from I to V of the 23
// letters. The runs are made from their numbers.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

namespace {

std::string in_roman_numerals(int number, bool small) {
  constexpr struct {
    int worth;
    char const *capitals, *letters;
  } parts[]{{50, "L", "l"}, {40, "XL", "xl"}, {10, "X", "x"}, {9, "IX", "ix"},
            {5, "V", "v"},  {4, "IV", "iv"},  {1, "I", "i"}};
  std::string text;
  for (auto const& part : parts)
    for (; number >= part.worth; number -= part.worth) text += small ? part.letters : part.capitals;
  return text;
}
/// Returns true if all doubts are `problem`, and there are so many of them. That a run begins late in its alphabet is
/// another question.
bool is_doubted(std::string const& text, Problem problem, std::size_t times) {
  auto const formula = read_lawfully(text);
  REQUIRE(formula);
  std::size_t told = 0;
  for (auto const& doubt : formula->warnings()) {
    if (doubt.problem == Problem::alphabet_begins_late) continue;
    if (doubt.problem != problem) return false;
    ++told;
  }
  return told == times;
}

} // namespace

TEST_CASE("a run in Roman numerals is one of numbers, if it can be told from letters, and doubted if it cannot") {
  for (bool const small : {false, true})
    for (int last = 2; last <= 60; ++last) {
      auto const one = in_roman_numerals(1, small), end = in_roman_numerals(last, small),
                 next = in_roman_numerals(last + 1, small);
      auto const run = one + "-" + end + "⁸";
      CAPTURE(run);
      // I to L, V and X are the letters 9 to 11, 20 and 21 of the 23
      auto const letters = last == 5 ? 12 : last == 10 ? 13 : last == 50 ? 3 : 0;
      bool const may_be_letters = end.size() == 1;
      CHECK((letters > 0) == may_be_letters);
      CHECK(count_formula(run)->leaves == 8 * (may_be_letters ? letters : last));
      CHECK(is_doubted(run, may_be_letters ? Problem::letters_or_roman_numbers : Problem::roman_numbers, 1));
      CHECK(
          is_doubted("[" + run + "]", may_be_letters ? Problem::letters_or_roman_numbers : Problem::roman_numbers, 1));
      if (may_be_letters) { // other runs follow, of letters that are no numerals
        CHECK(is_doubted("π² " + run, Problem::letters_or_roman_numbers, 1));
        CHECK(is_doubted((small ? "a-h⁸ " : "A-H⁸ ") + run, Problem::none, 0));
        CHECK(is_doubted(std::string{small ? "2i-2" : "2I-2"} + end + "⁸", Problem::none, 0));
      }
      if (next.size() == 1) continue; // IV V: read as numbers too, since IV is none of the letters
      for (char const* between : {" ", ", "}) {
        auto const both = run + between + next + "⁶";
        CAPTURE(both);
        CHECK(count_formula(both)->leaves == 8 * last + 6);
        CHECK(is_doubted(both, Problem::roman_numbers, 2));
      }
    }
}

TEST_CASE("letters that cannot be numbers are not doubted") {
  for (char const* text : {"I-K⁸", "I-M⁸", "I-Z⁸", "I⁸ K⁸", "i-t⁸", "I-2V⁸", "K-V⁸", "*I-*V⁸", "A-I⁸ K-V⁸"}) {
    CAPTURE(text);
    CHECK(is_doubted(text, Problem::none, 0));
  }
}

TEST_CASE("each of the reference marks is a signature") {
  // * † ‡ § ‖ ¶ in this order: the reference marks of the manuals (MacKellar, The American Printer, 1866; from memory)
  for (char const* mark : {"*", "†", "‡", "§", "‖", "¶", "∥"}) {
    CAPTURE(mark);
    std::string const one{mark};
    for (auto const& text : {one + "⁴ A⁸", "2" + one + "⁴ A⁸", "A⁸ " + one + "⁴(−" + one + "4) B⁸", one + "A⁴ B⁸"}) {
      CAPTURE(text);
      auto const formula = read_lawfully("8°: " + text);
      REQUIRE(formula);
      CHECK(formula->warnings().empty());
      CHECK(write_formula(*formula) == "8°: " + text);
    }
    if (one == "∥") continue; // the sign of parallel lines, which is none of them
    auto const after = read_lawfully("A" + one + "⁴ B⁸");
    REQUIRE(after);
    CHECK(after->leaves() == 12);
  }
  CHECK(count_formula("&#8214;⁴ A⁸")->leaves == count_formula("‖⁴ A⁸")->leaves);
}
