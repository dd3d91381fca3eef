// SPDX-License-Identifier: MIT
/// The letters of Roman numerals as printers used them, and one part of a numeral without a break: CCCC, IIX, viij, CIƆ.
/// Letters stand in orders that no grammar has (IIX for 8, VIX for 16, IC for 99), so each is weighed with those before it, and an
/// order that nobody can read gives no value.
///
/// Rules of the numerals: Spofford, A Book for All Readers (1900), on dates in imprints, and the examples of the rules
/// for rare materials (DCRMR 5.23).
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/utf8.hpp>

#include <cstddef>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

inline constexpr std::string_view one_character_numerals[]{"I"sv,   "II"sv,   "III"sv, "IV"sv, "V"sv,  "VI"sv,
                                                           "VII"sv, "VIII"sv, "IX"sv,  "X"sv,  "XI"sv, "XII"sv,
                                                           "L"sv,   "C"sv,    "D"sv,   "M"sv};
/// Returns the letters of a numeral that is one character, U+2160 to U+217F: VIII for Ⅷ. The text is empty for any other.
constexpr std::string_view letters_of_numeral(char32_t c) noexcept {
  return c >= 0x2160 && c <= 0x217F ? one_character_numerals[(c - 0x2160) % 16] : std::string_view{};
}
constexpr int numeral_worth(char32_t letter) noexcept {
  switch (letter) {
  case 'i':
  case 'I':
  case 'j':
  case 'J':
    return 1;
  case 'v':
  case 'V':
    return 5;
  case 'x':
  case 'X':
    return 10;
  case 'l':
  case 'L':
    return 50;
  case 'c':
  case 'C':
    return 100;
  case 'd':
  case 'D':
    return 500;
  case 'm':
  case 'M':
    return 1000;
  default:
    return 0;
  }
}
constexpr bool is_turned_c(char32_t c) noexcept { return c == 0x0186 || c == 0x0254 || c == 0x2183 || c == 0x2184; }
/// Returns true if the character belongs to a word: a letter, with or without an accent.
constexpr bool is_word_letter(char32_t c) noexcept {
  return c < 0x80 ? is_latin_letter(static_cast<char>(c)) : c >= 0xC0 && (c < 0x2000 || c > 0x206F) && c != 0xFFFD;
}

/// One letter of a numeral, or a sign made of several characters: CIƆ for M, IƆ for D. `typed`: the character that is
/// typed for the turned C, `)`, O or C, or 0 for a turned C itself. `more`: the letters that the character Ⅷ has after it.
struct NumeralSign {
  int worth{};
  std::size_t bytes{};
  char typed{};
  std::size_t more{};
};
/// Any character may be typed for the turned C. The first sign of a numeral shows which one it is, so that the C of
/// CIC.IC.CVII is a turned C, and the C of MDIC is none.
inline constexpr char any_turned_c = '*';
/// Reads the sign at the position. `high`: no letter below 500 stands before it in its part. `more`: so many last letters of
/// the character at the position are still to be read.
constexpr NumeralSign numeral_sign(std::string_view text, std::size_t at, char typed, bool high,
                                   std::size_t more = 0) noexcept {
  auto const point = [&](std::size_t i) { return i < text.size() ? decode(text, i) : CodePoint{}; };
  auto const first = point(at), second = point(at + first.bytes), third = point(at + first.bytes + second.bytes);
  if (first.bytes == 0) return {};
  auto const typed_as = [](CodePoint c) {
    return c.value == ')'                     ? ')'
           : c.value == 'O' || c.value == 'o' ? 'O'
           : c.value == 'C' || c.value == 'c' ? 'C'
                                              : '\0';
  };
  auto const stroke = [&](CodePoint c, CodePoint turned) { // a small L only beside a sign that no word has
    return c.value == 'I' || c.value == 'i' || c.value == '|' || c.value == 0x2160 || c.value == 0x2170 ||
           ((c.value == 'l' || c.value == '1') && (is_turned_c(turned.value) || typed_as(turned) == 'O'));
  };
  auto const turned = [&](CodePoint c, bool thousand) {
    auto const as = typed_as(c);
    bool const begins = typed == any_turned_c && (thousand || as == ')');
    return is_turned_c(c.value) || (as != '\0' && (as == ')' || high) && (begins || as == typed));
  };
  auto const two = static_cast<std::size_t>(first.bytes) + second.bytes;
  auto const letters = letters_of_numeral(first.value);
  bool const c = first.value == 'C' || first.value == 'c' || letters == "C" || (typed != '\0' && first.value == '(');
  if (c && turned(third, true) && stroke(second, third)) return {1000, two + third.bytes, typed_as(third)};
  if (turned(second, false) && stroke(first, second)) return {500, two, typed_as(second)};
  if (first.value == 0x2180 || first.value == 0x221E) return {1000, first.bytes};
  if (first.value == 0x2181) return {500, first.bytes};
  if (!letters.empty()) {
    auto const left = (more == 0 ? letters.size() : more) - 1;
    auto const letter = static_cast<unsigned char>(letters[letters.size() - 1 - left]);
    return {numeral_worth(letter), left == 0 ? first.bytes : 0U, '\0', left};
  }
  return {numeral_worth(first.value), first.bytes};
}

/// A part of a numeral without a break: CCCC, IIX, viij.
struct NumeralPart {
  int value{}, first{}, last{}; ///< values of the part, of its first letter and of its last
  std::size_t bytes{};
  bool wrong{}; ///< true for letters of numerals in an order that nobody can read; the value is then 0
};
/// A letter of a part with those before it that it takes away, adds or multiplies.
struct NumeralStep {
  int letter, value;
  int taken; ///< the letter that is taken away, or 0; less than it is worth can follow
};
/// Returns what a sign is worth with the smaller letters before it, or a value of 0 if nobody can read them. One or two
/// of a letter are subtracted (XC, XXC, IIX), and after V they are added, as the Latin words have it (VIX is sedecim), but
/// taken from C as V alone is: VIC is 94.
/// Four are never subtracted: French printers multiply them with a score or a hundred, IIIIXX for quatre-vingts.
/// `score`: a second X follows.
constexpr NumeralStep numeral_step(int sign, NumeralStep const* before, std::size_t size, bool score) noexcept {
  if (size == 0) return {sign, sign, 0};
  auto const lowest = before[size - 1].letter;
  int sum = 0;
  bool one_letter = true;
  for (std::size_t i = 0; i < size; ++i) {
    sum += before[i].value;
    one_letter = one_letter && before[i].letter == lowest && before[i].value == lowest;
  }
  bool const fours = one_letter && lowest == 1 && size == 4;
  if (fours && ((sign == 10 && score) || sign == 100)) return {sign, sign == 10 ? 80 : 400, 0};
  bool const five = lowest == 5 || lowest == 50 || lowest == 500;
  if (one_letter && (five ? size == 1 && 2 * lowest != sign : size <= 2)) return {sign, sign - sum, lowest};
  bool five_and_ones = size > 1 && size < 5 && before[0].value == 5;
  for (std::size_t i = 1; i < size; ++i) five_and_ones = five_and_ones && before[i].value == 1;
  if (five_and_ones && sign == 100) return {sign, sign - sum, 1};
  bool const latin = five_and_ones && sign == 10;
  return {sign, latin ? sign + sum : 0, latin ? 1 : 0};
}
/// Returns true if the steps stand in an order that can be read: what follows a letter of five is less than it, and what
/// follows a subtraction less than the letter taken away. IXX is 19.
constexpr bool numeral_in_order(NumeralStep const* steps, std::size_t size) noexcept {
  int after = 0;
  for (auto i = size; i-- > 0;) {
    auto const& [letter, value, taken] = steps[i];
    bool const five = letter == 5 || letter == 50 || letter == 500;
    bool const ixx = taken == 1 && value < 10 && letter == 10 && after == 10;
    if (value == 0 || (five && taken == 0 && after >= letter) || (taken > 0 && after >= taken && !ixx)) return false;
    after += value;
  }
  return true;
}
/// Reads one part. Units are taken from a capital D after M alone, as in MID: `Im M.D.XLIII. Jar` begins with a word.
constexpr NumeralPart numeral_part(std::string_view text, std::size_t at, char& typed) noexcept {
  NumeralStep steps[24]{};
  std::size_t size = 0, more = 0;
  NumeralPart part;
  while (true) {
    bool const high = size == 0 || steps[size - 1].letter >= 500;
    auto const sign = numeral_sign(text, at + part.bytes, typed, high, more);
    if (sign.worth == 0) break;
    bool const mid = sign.worth == 500 && steps[0].letter == 1000 && text[at + part.bytes] != 'd';
    if (size == 24 || (size > 0 && sign.worth >= 500 && steps[size - 1].letter == 1 && !mid)) return {};
    auto end = size;
    while (size > 0 && steps[size - 1].letter < sign.worth) --size;
    more = sign.more;
    auto const next = numeral_sign(text, at + part.bytes + sign.bytes, typed, false, more);
    bool const score = end - size == 4 && sign.worth == 10 && next.worth == 10;
    steps[size] = numeral_step(sign.worth, steps + size, end - size, score);
    if (score) part.bytes += next.bytes; // the second X of the score
    ++size;
    if (part.first == 0) {
      part.first = sign.worth;
      typed = sign.typed;
    }
    part.last = sign.worth;
    part.bytes += sign.bytes;
  }
  part.wrong = !numeral_in_order(steps, size);
  if (part.wrong) return part;
  for (std::size_t i = 0; i < size; ++i) part.value += steps[i].value;
  if (size > 0) part.first = steps[0].value;
  if (size > 0 && steps[size - 1].taken > 0) part.last = steps[size - 1].taken - 1; // no X follows XC
  return part;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
