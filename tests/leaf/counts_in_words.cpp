// SPDX-License-Identifier: MIT
// Counts of leaves as the trade says them (common practice, no source).
#include <bifolium/leaf/counts_in_words.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {

/// What was taken, as `8 plural`, and what is left.
std::string taken(std::string const& text) {
  TextCursor cursor{text};
  auto const number = take_number_in_words(cursor);
  if (!number) return cursor.at() == 0 ? "none" : "moved";
  return std::to_string(number->value) + (number->plural ? " plural" : "") + (number->figures ? " figures" : "") + "|" +
         std::string{cursor.rest()};
}

} // namespace

TEST_CASE("a count of leaves is taken as a number or as its plural, in words and in figures") {
  struct {
    int number;
    char const *word, *plural;
  } const counts[]{{1, "one", "ones"},
                   {2, "two", "twos"},
                   {3, "three", "threes"},
                   {4, "four", "fours"},
                   {5, "five", "fives"},
                   {6, "six", "sixes"},
                   {7, "seven", "sevens"},
                   {8, "eight", "eights"},
                   {9, "nine", "nines"},
                   {10, "ten", "tens"},
                   {12, "twelve", "twelves"},
                   {14, "fourteen", "fourteens"},
                   {16, "sixteen", "sixteens"},
                   {18, "eighteen", "eighteens"},
                   {20, "twenty", "twenties"},
                   {24, "twenty-four", "twenty-fours"},
                   {32, "thirty-two", "thirty-twos"},
                   {36, "thirty-six", "thirty-sixes"}};
  for (auto const& one : counts)
    for (std::string const after : {"", " and fours", ", A-K", "-and", "-8", "-", "."}) {
      std::string const number = std::to_string(one.number), word = one.word, plural = one.plural;
      CAPTURE(word);
      CAPTURE(after);
      CHECK(taken(word + after) == number + "|" + after);
      CHECK(taken(plural + after) == number + " plural|" + after);
      CHECK(taken(number + after) == number + " figures|" + after);
      CHECK(taken(number + "s" + after) == number + " plural figures|" + after);
      CHECK(taken(number + "'s" + after) == number + " plural figures|" + after);
    }
  for (std::string const none :
       {"", " eight", "eighty-leaf", "eightsome", "in eights", "8vo", "8a", "8\u00B0", "-8", "twenty-foursome"}) {
    CAPTURE(none);
    CHECK((taken(none) == "none" || taken(none) == "80|-leaf" || taken(none) == "20|-foursome"));
  }
}
