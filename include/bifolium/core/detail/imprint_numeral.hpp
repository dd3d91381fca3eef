// SPDX-License-Identifier: MIT
/// Years in Roman numerals as title pages print them. Printers used the numerals freely: CCCC for 400, IIX for 8, VIX
/// for 16, IƆ for 500 and CIƆ for 1000, points, commas and blanks between the parts, a final j for i, and 80 as iiii
/// xx. A numeral counts only if it is a year from 1400 to 2099: `M.` and `mil` in an imprint are words.
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

/// A year in Roman numerals at the beginning of a text. `bytes` is 0 if there is none.
struct ImprintNumeral {
  int year{};
  std::size_t bytes{};
  int before_blank{};           ///< the year up to the first blank, if that is one; what follows may be a day
  std::size_t to_first_blank{}; ///< its bytes
  bool initial{};               ///< true if the last letter may be an initial: MDC. L. Torrentinus
};

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
/// typed for the turned C, `)`, O or C, or 0 for a turned C itself.
struct NumeralSign {
  int worth{};
  std::size_t bytes{};
  char typed{};
};
/// Any character may be typed for the turned C. The first sign of a numeral shows which one it is, so that the C of
/// CIC.IC.CVII is a turned C, and the C of MDIC is none.
inline constexpr char any_turned_c = '*';
/// Reads the sign at the position. `high`: no letter below 500 stands before it in its part.
constexpr NumeralSign numeral_sign(std::string_view text, std::size_t at, char typed, bool high) noexcept {
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
    return c.value == 'I' || c.value == 'i' || c.value == '|' ||
           ((c.value == 'l' || c.value == '1') && (is_turned_c(turned.value) || typed_as(turned) == 'O'));
  };
  auto const turned = [&](CodePoint c, bool thousand) {
    auto const as = typed_as(c);
    bool const begins = typed == any_turned_c && (thousand || as == ')');
    return is_turned_c(c.value) || (as != '\0' && (as == ')' || high) && (begins || as == typed));
  };
  auto const two = static_cast<std::size_t>(first.bytes) + second.bytes;
  bool const c = first.value == 'C' || first.value == 'c' || (typed != '\0' && first.value == '(');
  if (c && turned(third, true) && stroke(second, third)) return {1000, two + third.bytes, typed_as(third)};
  if (turned(second, false) && stroke(first, second)) return {500, two, typed_as(second)};
  if (first.value == 0x2180 || first.value == 0x221E) return {1000, first.bytes};
  if (first.value == 0x2181) return {500, first.bytes};
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
/// of a letter are subtracted (XC, XXC, IIX), and after V they are added, as the Latin words have it (VIX is sedecim).
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
  bool latin = sign == 10 && size > 1 && size < 5 && before[0].value == 5;
  for (std::size_t i = 1; i < size; ++i) latin = latin && before[i].value == 1;
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
/// Reads one part. Nobody takes units from D or M: `Im M.D.XLIII. Jar` begins with a word.
constexpr NumeralPart numeral_part(std::string_view text, std::size_t at, char& typed) noexcept {
  NumeralStep steps[24]{};
  std::size_t size = 0;
  NumeralPart part;
  while (true) {
    bool const high = size == 0 || steps[size - 1].letter >= 500;
    auto const sign = numeral_sign(text, at + part.bytes, typed, high);
    if (sign.worth == 0) break;
    if (size == 24 || (size > 0 && sign.worth >= 500 && steps[size - 1].letter == 1)) return {};
    auto end = size;
    while (size > 0 && steps[size - 1].letter < sign.worth) --size;
    auto const next = numeral_sign(text, at + part.bytes + sign.bytes, typed, false);
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

/// Returns the position after `&` or `et` and the blanks around it, or 0 if it is not at the position.
constexpr std::size_t after_numeral_and(std::string_view text, std::size_t at) noexcept {
  auto const rest = text.substr(at);
  auto const to = at + (rest.starts_with('&') ? 1 : rest.starts_with("et") && blank_at(rest, 2) != 0 ? 2 : 0);
  return to == at ? 0 : after_blanks(text, to);
}
/// Returns true if a statement ends at the position, or a part of it.
constexpr bool numeral_ends(std::string_view text, std::size_t at) noexcept {
  if (at < text.size() && text[at] == '.') ++at;
  at = after_blanks(text, at);
  return at == text.size() || text[at] == ']' || text[at] == ')' || text[at] == ',' || text[at] == ';';
}

/// Returns true if a full stop and a word with a capital follow: the letter before them can be the initial of a name.
constexpr bool name_follows(std::string_view text, std::size_t at) noexcept {
  if (at >= text.size() || text[at] != '.') return false;
  at = after_blanks(text, at + 1);
  return at + 1 < text.size() && is_capital(text[at]) && is_small(text[at + 1]);
}

/// Returns the year at the beginning of `text`: the longest row of parts that do not increase, with `iiii c` and `iiii
/// xx` multiplied. A letter is subtracted from the next part if a full stop alone parts them, as in X.L. for 40; `& IX`
/// adds units at the end of a statement. A part that nobody can read makes the whole no year.
constexpr ImprintNumeral imprint_numeral(std::string_view text) noexcept {
  ImprintNumeral year;
  int total = 0, held = 0, last = 1000; // held: a part that the next one may multiply
  char typed = any_turned_c;
  bool stop_alone = false, units = false; // what stands before the part: a full stop without blanks; a word for `and`
  bool blank = false;                     // a blank stands between two parts
  bool letters_apart = true; // so far every letter stands alone, with nothing but blanks between: M D C X L
  for (std::size_t at = 0, parts = 0; at < text.size() && parts < 24; ++parts) {
    auto const part = numeral_part(text, at, typed);
    auto const end = at + part.bytes;
    if (part.bytes == 0 || (end < text.size() && is_word_letter(decode(text, end).value))) break;
    if (part.wrong) return part.first <= last ? ImprintNumeral{} : year;
    if (units && (part.value > 9 || (total + held) % 10 != 0 || !numeral_ends(text, end))) break;
    letters_apart = letters_apart && part.bytes == 1;
    bool const subtracts = (stop_alone || (letters_apart && blank)) && held == last &&
                           (part.first == 5 * held || part.first == 10 * held) && part.value - part.first < held;
    bool const score = held == 4 && total % 100 == 0 && part.first == 10 && part.value >= 20;
    bool const hundred = held > 1 && held < 10 && total % 1000 == 0 && part.first == 100 && part.value < 200;
    bool const five_again = part.first == last && (last == 5 || last == 50 || last == 500);
    auto next = part.last;
    if (score || hundred)
      total += held * (score ? 20 : 100), held = part.value - (score ? 20 : 100);
    else if (subtracts)
      next = part.value == part.first ? held - 1 : part.last, held = part.value - held;
    else if (part.first <= last && !five_again)
      total += held, held = part.value;
    else
      break;
    last = next;
    if (total + held >= 1400 && total + held < 2100) {
      year.year = total + held, year.bytes = end;
      year.initial =
          blank && year.before_blank > 0 && part.bytes == 1 && is_capital(text[at]) && name_follows(text, end);
    }
    at = end;
    stop_alone = text.substr(at).starts_with('.') && at + 1 < text.size() &&
                 numeral_worth(static_cast<unsigned char>(text[at + 1])) > 0;
    auto const gap = at;
    while (at < text.size() &&
           (text[at] == '.' || text[at] == ',' || text[at] == '\'' || is_blank(decode(text, at).value)))
      at += decode(text, at).bytes;
    for (auto i = gap; i < at; ++i)
      letters_apart = letters_apart && text[i] != '.' && text[i] != ',' && text[i] != '\'';
    if (!blank && at > gap && blank_before(text, at) != 0) {
      blank = true;
      if (year.bytes == gap) year.before_blank = year.year, year.to_first_blank = gap;
    }
    auto const after = after_numeral_and(text, at);
    units = after > 0;
    if (units) at = after;
  }
  return year;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
