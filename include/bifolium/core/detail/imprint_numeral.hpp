// SPDX-License-Identifier: MIT
/// Years in Roman numerals as title pages print them. Printers used the numerals freely: CCCC for 400, IIX for 8, VIX
/// for 16, IƆ for 500 and CIƆ for 1000, points, commas and blanks between the parts, a final j for i, 80 as iiii
/// xx, and in French 500 as Vc. A numeral counts only if it is a year from 1400 to 2099: `M.` and `mil` in an imprint are words.
///
/// Rules of the numerals: Spofford, A Book for All Readers (1900), on dates in imprints, and the examples of the rules
/// for rare materials (DCRMR 5.23).
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/detail/numeral_part.hpp>
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

/// Reads hundreds as French printers set them, a number and a c that multiplies it: Vc, vi^c, IIIIᶜ. After a thousand alone
/// nobody takes 5 from 100, and since 1900 nobody dates so. The bytes are 0 if they are not at the position.
constexpr NumeralPart multiplied_hundreds(std::string_view text, std::size_t at) noexcept {
  auto const initial = small_letter(at < text.size() ? text[at] : '\0');
  if (initial != 'i' && initial != 'v') return {};
  auto end = at;
  int number = 0;
  for (std::string_view const digit : {"iiij", "iiii", "iv", "viij", "viii", "vij", "vii", "vj", "vi", "v"})
    if (number == 0 && equal_in_any_case(text.substr(at, digit.size()), digit)) {
      number = digit[0] == 'v' ? 4 + static_cast<int>(digit.size()) : 4;
      end += digit.size();
    }
  bool const raised = end < text.size() && text[end] == '^';
  auto const hundred = end + (raised ? 1 : 0) < text.size() ? decode(text, end + (raised ? 1 : 0)) : CodePoint{};
  bool const c = hundred.value == 'c' || hundred.value == 'C' || (!raised && hundred.value == 0x1D9C); // ᶜ
  if (number == 0 || !c) return {};
  end += (raised ? 1U : 0U) + hundred.bytes;
  char typed = '\0';
  auto const rest = numeral_part(text, end, typed); // MVcXXXIIII
  auto const after = end + rest.bytes;
  bool const goes_on = after < text.size() && is_word_letter(decode(text, after).value);
  if (goes_on || rest.wrong || rest.value >= 100) return {};
  return {number * 100, 500, 99, end - at, false};
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

/// Returns the bytes of a word for a thousand, or of an M that the hundreds touch, at the beginning of `text`, or 0. A word is one
/// only before hundreds: `mil`, as French printers have it, and the Latin mille and millesimo.
constexpr std::size_t thousand_in_words(std::string_view text) noexcept {
  if (text.empty() || numeral_sign(text, 0, '\0', true).worth != 1000) return 0;
  for (std::string_view const word : {"millesimo", "mille", "mill", "mil"}) {
    if (text.size() <= word.size() || !equal_in_any_case(text.substr(0, word.size()), word)) continue;
    auto hundreds = word.size() + (text[word.size()] == '.' ? 1 : 0);
    hundreds = after_blanks(text, hundreds);
    if (hundreds == word.size()) continue;
    char typed = '\0';
    auto const part = numeral_part(text, hundreds, typed);
    bool const of_year = part.value >= 400 && part.value < 1000 && part.bytes > 1;
    return of_year || multiplied_hundreds(text, hundreds).bytes > 0 ? word.size() : 0;
  }
  auto const m = numeral_sign(text, 0, '\0', true);
  return m.worth == 1000 && multiplied_hundreds(text, m.bytes).bytes > 0 ? m.bytes : 0;
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
  bool stops_apart = true;   // the same with a full stop and blanks: M. D. X. L.
  bool multiplied = false;   // the last part is Vc
  auto const thousand = thousand_in_words(text);
  for (std::size_t at = 0, parts = 0; at < text.size() && parts < 24; ++parts) {
    auto const hundreds = parts == 1 && total + held == 1000 && !units ? multiplied_hundreds(text, at) : NumeralPart{};
    auto const part = parts == 0 && thousand > 0 ? NumeralPart{1000, 1000, 1000, thousand, false}
                      : hundreds.bytes > 0       ? hundreds
                                                 : numeral_part(text, at, typed);
    auto const end = at + part.bytes;
    bool const goes_on = end < text.size() && is_word_letter(decode(text, end).value);
    if (part.bytes == 0 || (goes_on && hundreds.bytes == 0 && (parts > 0 || thousand == 0))) break;
    if (part.wrong) return part.first <= last ? ImprintNumeral{} : year;
    int const most_units = multiplied ? 99 : 9; // MVc et xxvii
    if (units && (part.value > most_units || (total + held) % (most_units + 1) != 0 || !numeral_ends(text, end))) break;
    multiplied = hundreds.bytes > 0;
    bool const one_letter =
        part.bytes == 1 || (part.bytes == 3 && letters_of_numeral(decode(text, at).value).size() == 1);
    letters_apart = letters_apart && one_letter;
    stops_apart = stops_apart && one_letter;
    bool const less =
        held == last && (part.first == 5 * held || part.first == 10 * held) && part.value - part.first < held;
    // M. D. X. L., where one of M. D. X. V. may be a day
    bool const in_row = parts > 1 && stops_apart && less && (held > 1 || numeral_ends(text, end));
    bool const subtracts = less && (stop_alone || (letters_apart && blank) || in_row);
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
      year.initial = ((blank && year.before_blank > 0) || (in_row && !stop_alone)) && part.bytes == 1 &&
                     is_capital(text[at]) && name_follows(text, end);
    }
    at = end;
    auto const after_stop = text.substr(at).starts_with('.') && at + 1 < text.size() ? decode(text, at + 1).value : 0U;
    stop_alone = numeral_worth(after_stop) > 0 || !letters_of_numeral(after_stop).empty();
    auto const gap = at;
    while (at < text.size() &&
           (text[at] == '.' || text[at] == ',' || text[at] == '\'' || is_blank(decode(text, at).value)))
      at += decode(text, at).bytes;
    for (auto i = gap; i < at; ++i)
      letters_apart = letters_apart && text[i] != '.' && text[i] != ',' && text[i] != '\'';
    stops_apart = stops_apart && at > gap + 1 && text[gap] == '.' && blank_at(text, gap + 1) != 0;
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
