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

/// One letter of a numeral, or a sign made of several characters: CIƆ for M, IƆ for D. `typed`: the turned C is typed
/// as `)`.
struct NumeralSign {
  int worth{};
  std::size_t bytes{};
  bool typed{};
};
constexpr NumeralSign numeral_sign(std::string_view text, std::size_t at, bool typed) noexcept {
  auto const point = [&](std::size_t i) { return i < text.size() ? decode(text, i) : CodePoint{}; };
  auto const first = point(at), second = point(at + first.bytes), third = point(at + first.bytes + second.bytes);
  if (first.bytes == 0) return {};
  auto const stroke = [](CodePoint c) { return c.value == 'I' || c.value == 'i' || c.value == '|'; };
  auto const turned = [&](CodePoint c) { return is_turned_c(c.value) || (typed && c.value == ')'); };
  auto const two = static_cast<std::size_t>(first.bytes) + second.bytes;
  bool const c = first.value == 'C' || first.value == 'c' || (typed && first.value == '(');
  if (c && stroke(second) && turned(third)) return {1000, two + third.bytes, third.value == ')'};
  if (stroke(first) && turned(second)) return {500, two, second.value == ')'};
  if (first.value == 0x2180 || first.value == 0x2181) return {first.value == 0x2180 ? 1000 : 500, first.bytes};
  return {numeral_worth(first.value), first.bytes};
}

/// A part of a numeral without a break: CCCC, IIX, viij.
struct NumeralPart {
  int value{}, first{}, last{}; ///< values of the part, of its first letter and of its last
  std::size_t bytes{};
};
/// Reads one part. A smaller letter before a larger one is subtracted if it is one letter, alone or repeated (XC, XXC,
/// IIX), and added if there are different letters (VIX). Nobody takes units from D or M: `Im M.D.XLIII. Jar` begins with
/// a word.
constexpr NumeralPart numeral_part(std::string_view text, std::size_t at, bool& typed) noexcept {
  struct Step {
    int letter, value;
  };
  Step steps[24]{};
  std::size_t size = 0;
  NumeralPart part;
  while (true) {
    auto const sign = numeral_sign(text, at + part.bytes, typed);
    if (sign.worth == 0) break;
    if (size == 24 || (size > 0 && sign.worth >= 500 && steps[size - 1].letter == 1)) return {};
    int before = 0;
    bool one_letter = true;
    auto const lowest = size > 0 ? steps[size - 1].letter : 0;
    for (; size > 0 && steps[size - 1].letter < sign.worth; --size) {
      before += steps[size - 1].value;
      one_letter = one_letter && steps[size - 1].letter == lowest && steps[size - 1].value == lowest;
    }
    steps[size++] = {sign.worth, one_letter ? sign.worth - before : sign.worth + before};
    if (part.bytes == 0) {
      part.first = sign.worth;
      typed = sign.typed;
    }
    part.last = sign.worth;
    part.bytes += sign.bytes;
  }
  for (std::size_t i = 0; i < size; ++i) part.value += steps[i].value;
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

/// Returns the year at the beginning of `text`: the longest row of parts that do not increase, with `iiii c` and `iiii
/// xx` multiplied. A letter is subtracted from the next part if a full stop alone parts them, as in X.L. for 40; `& IX`
/// adds units at the end of a statement.
constexpr ImprintNumeral imprint_numeral(std::string_view text) noexcept {
  ImprintNumeral year;
  int total = 0, held = 0, last = 1000; // held: a part that the next one may multiply
  bool typed = true; // true if `)` may be a turned C, which only a numeral with such a beginning allows
  bool stop_alone = false, units = false; // what stands before the part: a full stop without blanks; a word for `and`
  for (std::size_t at = 0, parts = 0; at < text.size() && parts < 24; ++parts) {
    auto const part = numeral_part(text, at, typed);
    auto const end = at + part.bytes;
    if (part.bytes == 0 || (end < text.size() && is_word_letter(decode(text, end).value))) break;
    if (units && (part.value > 9 || (total + held) % 10 != 0 || !numeral_ends(text, end))) break;
    bool const subtracts = stop_alone && held == last && (part.first == 5 * held || part.first == 10 * held);
    bool const multiplies = held > 0 && (part.value == 100 || part.value == 20) && held < 10;
    if (multiplies)
      total += held * part.value, held = 0;
    else if (subtracts)
      held = part.value - held;
    else if (part.first <= last)
      total += held, held = part.value;
    else
      break;
    last = part.last;
    if (total + held >= 1400 && total + held < 2100) year = {total + held, end};
    at = end;
    stop_alone = text.substr(at).starts_with('.') && at + 1 < text.size() &&
                 numeral_worth(static_cast<unsigned char>(text[at + 1])) > 0;
    while (at < text.size() &&
           (text[at] == '.' || text[at] == ',' || text[at] == '\'' || is_blank(decode(text, at).value)))
      at += decode(text, at).bytes;
    auto const after = after_numeral_and(text, at);
    units = after > 0;
    if (units) at = after;
  }
  return year;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
