// SPDX-License-Identifier: MIT
/// The common part of the readers of pages and of mistakes of numbering: numbers, arabic, Roman and raised, with or
/// without quotation marks, and letters in place of numbers.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/limits.hpp>
#include <bifolium/core/printed_numeral.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/leaf/alphabet.hpp>
#include <bifolium/leaf/roman.hpp>
#include <bifolium/record/extent.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A run of lettered pages, a-d, A-K or [A]-H. The letters are numbers in the alphabet of 26; `bytes` is 0 if there is none.
struct LetterRun {
  int first{}, last{};
  std::size_t first_at{}, last_at{}; ///< the places of the two letters, from the beginning of the run
  bool first_open{}, last_open{}; ///< the letter stands in a bracket of its own, since it is not printed: [A]-H, A-[H]
  bool all_open{};                ///< both stand in one: [A-H]
  std::size_t bytes{};
};
/// Returns the run of lettered pages at the cursor. i-x is not such a run, but Roman numerals.
inline LetterRun letter_run(TextCursor look) {
  auto const from = look.at();
  LetterRun run;
  bool const open = look.take('[');
  auto const first = look.peek();
  run.first_at = look.at() - from;
  // u and v are one letter of the alphabet, and v is a numeral
  if (!is_latin_letter(first) || small_letter(first) == 'u' || roman_numeral(look.rest().substr(0, 1))) return {};
  look.skip(1);
  run.first_open = open && look.take(']');
  run.all_open = open && !run.first_open;
  if (!look.take_dash()) return {};
  run.last_open = !run.all_open && look.take('[');
  auto const last = look.peek();
  run.last_at = look.at() - from;
  bool const one_case = (first >= 'a') == (last >= 'a');
  if (!is_latin_letter(last) || is_latin_letter(look.peek(1)) || !one_case || last < first) return {};
  look.skip(1);
  if ((run.all_open || run.last_open) && !look.take(']')) return {};
  if ((run.first_open || run.last_open) && last == first) return {};
  run.first = small_letter(first) - 'a' + 1, run.last = small_letter(last) - 'a' + 1, run.bytes = look.at() - from;
  return run;
}

/// Returns the Roman numeral at the beginning of a text, in the usual form or in one of old printers: XIIX, XXC, IC.
inline std::optional<RomanNumeral> page_numeral(std::string_view text) {
  text = text.substr(0, 40);
  auto const usual = roman_numeral(text);
  auto const letter_at = [&](std::size_t i) { return i < text.size() && is_latin_letter(text[i]); };
  if (!usual || !letter_at(usual->bytes)) return usual;
  auto const old = printed_numeral(text);
  if (old.value == 0 || letter_at(old.bytes)) return usual;
  for (char const c : text.substr(0, old.bytes)) // il. and mil are words
    if (is_small(c) && std::string_view{"ijvx"}.find(c) == std::string_view::npos) return usual;
  return RomanNumeral{old.value, old.bytes};
}

/// Returns true for a sign with which a part of a statement ends.
[[nodiscard]] constexpr bool ends_statement(char c) noexcept { return c == ',' || c == ';' || c == ':' || c == ')'; }

class PageScanner {
protected:
  TextCursor cursor_;
  Extent read_{};

  static constexpr std::int64_t most = 9'999'999; ///< the highest number of a page
  struct Figure {
    std::int64_t value{-1}; // -1 if there is none; above `most` if it is too large
    Numerals numerals{};
    TextSpan at{};
  };

  explicit PageScanner(std::string_view text) : cursor_{text} {}

  Figure figure() {
    auto const from = cursor_.at();
    if (cursor_.at_digit()) {
      auto const number = cursor_.take_number(most);
      while (!number && cursor_.at_digit()) cursor_.skip(1);
      return {number.value_or(most + 1), Numerals::arabic, {from, cursor_.at()}};
    }
    auto const roman = page_numeral(cursor_.rest());
    if (!roman || is_latin_letter(cursor_.peek(roman->bytes))) return {};
    cursor_.skip(roman->bytes);
    return {roman->value, Numerals::roman, {from, cursor_.at()}};
  }
  [[nodiscard]] LetterRun letter_run() const { return detail::letter_run(cursor_); }
  /// Returns the number of a sequence, as in ²1-44; 0 if there is none.
  std::uint8_t series() {
    auto const number = cursor_.take_raised_number();
    return static_cast<std::uint8_t>(!number ? 0 : *number > 99 ? 99 : *number);
  }
  /// Takes the mark of a number that is repeated: 321*, 321a, 161bis. A letter alone can also be a unit.
  bool take_mark_of_repetition() {
    if (cursor_.take('*')) return true;
    auto look = cursor_;
    auto const letters = look.take_letters();
    if (letters != "a" && letters != "b" && letters != "bis" && letters != "ter") return false;
    if (look.peek() == '.') return false;
    cursor_ = look;
    return true;
  }
  /// Takes the letters of several pages with one number, after that number: the `a-24d` of 24a-24d, or the `a-d` of 24a-d.
  /// Returns how many pages these are, or 0 if no such letters follow.
  int take_letters_of_number(Figure const& number) {
    auto const here = cursor_.at();
    auto const letter = [&] {
      char const c = cursor_.peek();
      if (!is_small(c) || is_latin_letter(cursor_.peek(1))) return '\0';
      cursor_.skip(1);
      return c;
    };
    char const first = letter();
    bool const range = (first == 'a' || first == 'b') && cursor_.take_dash();
    bool const same = range && (!cursor_.at_digit() || figure().value == number.value);
    char const last = same ? letter() : '\0';
    if (last > first) return last - first + 1;
    return cursor_.go_to(here), 0;
  }
  void warn(Problem problem, std::size_t from) { read_.pagination.warn(cursor_.error(problem, {from, cursor_.at()})); }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
