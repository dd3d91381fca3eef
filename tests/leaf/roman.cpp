// SPDX-License-Identifier: MIT
// Roman numerals, digit by digit: the modern form, and those of old books, which repeat a letter four times and end in j
// (McKerrow, An Introduction to Bibliography; common practice).
#include <bifolium/leaf/roman.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {

constexpr char const* modern[4][10]{
    {"", "i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix"},
    {"", "x", "xx", "xxx", "xl", "l", "lx", "lxx", "lxxx", "xc"},
    {"", "c", "cc", "ccc", "cd", "d", "dc", "dcc", "dccc", "cm"},
    {"", "m", "mm", "mmm", "mmmm", "", "", "", "", ""},
};
constexpr char const* old_fours[4][2]{{"iiii", "viiii"}, {"xxxx", "lxxxx"}, {"cccc", "dcccc"}, {"mmmm", ""}};

/// `old`: which places of the number, as bits, have a letter four times instead of a subtraction.
std::string numeral(int number, int old = 0) {
  std::string text;
  for (int place = 3, worth = 1000; place >= 0; --place, worth /= 10) {
    auto const digit = number / worth % 10;
    bool const fours = (old >> place & 1) != 0 && digit % 5 == 4;
    text += fours ? old_fours[place][digit / 5] : modern[place][digit];
  }
  return text;
}
bool reads(std::string const& text, int number, std::size_t bytes) {
  auto const found = roman_numeral(text);
  return found && found->value == number && found->bytes == bytes;
}

} // namespace

TEST_CASE("every number that has a Roman numeral is written in the modern form and read in all forms") {
  for (int number = 1; number <= 4999; ++number) {
    auto const text = numeral(number);
    CAPTURE(number);
    if (small_roman(number) != text) FAIL_CHECK("written " << std::string{small_roman(number).view()});
    for (int old = 0; old < 16; ++old) {
      auto const printed = numeral(number, old);
      if (old > 0 && printed == text) continue;
      auto capitals = printed;
      for (auto& c : capitals) c = static_cast<char>(c - 'a' + 'A');
      auto const size = printed.size();
      auto last_j = printed;
      if (last_j.back() == 'i') last_j.back() = 'j';
      auto const mixed = capitals.substr(0, size / 2) + printed.substr(size / 2);
      for (auto const& form : {printed, capitals, mixed, last_j}) {
        if (!reads(form, number, size)) FAIL_CHECK(form << " is not read");
        if (!is_roman_numeral(form)) FAIL_CHECK(form << " is no numeral");
        if (!reads(form + "b", number, size) || !reads(form + " x", number, size)) FAIL_CHECK(form << " goes on");
        if (is_roman_numeral(form + "b")) FAIL_CHECK(form << "b is a numeral");
      }
    }
  }
}

TEST_CASE("a numeral ends at the first letter that does not belong to it") { // constructed
  CHECK(reads("iiiv", 3, 3));                                                // the verso of leaf 3
  CHECK(reads("iiiii", 4, 4));
  CHECK(reads("jj", 1, 1));
  CHECK(reads("iiiij", 4, 4));
  CHECK(reads("jx", 1, 1)); // a j ends the numeral
  CHECK(reads("xj", 11, 2));
  for (auto const* none : {"", "a", " x", "1"}) {
    CHECK_FALSE(roman_numeral(none));
    CHECK_FALSE(is_roman_numeral(none));
  }
}
