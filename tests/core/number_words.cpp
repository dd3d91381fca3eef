// SPDX-License-Identifier: MIT
// Numbers as English words: the numbers are those of any dictionary.
#include <bifolium/core/letters_apart.hpp>
#include <bifolium/core/number_words.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("a number is read as a word and as a plural, and no other word is a number") {
  char const* const words[]{"one",     "two",     "three",     "four",     "five",     "six",      "seven",
                            "eight",   "nine",    "ten",       "eleven",   "twelve",   "thirteen", "fourteen",
                            "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"};
  for (int n = 1; n <= 20; ++n) {
    std::string const word = words[n - 1];
    INFO(word);
    CHECK(number_of_word(word) == n);
    CHECK(!number_of_plural(word));
    auto const plural = n == 6 ? word + "es" : n == 20 ? std::string{"twenties"} : word + "s";
    CHECK(number_of_plural(plural) == n);
    CHECK(!number_of_word(plural));
  }
  for (auto const& [word, number] : {std::pair{"twenty-four", 24},
                                     {"thirty-two", 32},
                                     {"thirty-six", 36},
                                     {"forty-eight", 48},
                                     {"sixty-four", 64},
                                     {"seventy-two", 72},
                                     {"ninety-six", 96},
                                     {"Twelve", 12},
                                     {"EIGHT", 8}})
    CHECK(number_of_word(word) == number);
  CHECK(number_of_plural("thirty-sixes") == 36);
  for (auto const& row : detail::number_words) CHECK(number_of_word(row.word) == row.number); // none is passed over
  for (auto const* word : {"", "s", "on", "ones ", "tenth", "eightss", "none"}) {
    CHECK(!number_of_word(word));
    CHECK(!number_of_plural(word));
  }
  STATIC_CHECK(number_of_plural("twelves") == 12);
}

TEST_CASE(
    "names differ by letters changed, added, removed or exchanged") { // the distance of Damerau (1964), of adjacent letters
  STATIC_CHECK(letters_apart("heigth", "Height") == 1);
  CHECK(letters_apart("", "abc") == 3);
  CHECK(letters_apart("octvo", "octavo") == 1);
  CHECK(letters_apart("quarto", "quart") == 1);
  CHECK(letters_apart("folio", "fooli") == 2);
  CHECK(letters_apart("a_b", "A-B") == 0);
}
