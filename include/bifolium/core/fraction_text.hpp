// SPDX-License-Identifier: MIT
/// Reads fractions from text and writes them with decimals. Tables and forms hold numbers as people write them, `3.2`
/// or `2 1/2`. A floating-point number would change them; a `Fraction` stays exact.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/core/text_cursor.hpp>

#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Returns the number that one character means: ½ ⅓ ⅔ ¼ ¾ ⅕ ⅖ ⅗ ⅘ ⅙ ⅚ ⅛ ⅜ ⅝ ⅞. Returns no value for any other
/// character.
[[nodiscard]] constexpr std::optional<Fraction> vulgar_fraction(char32_t character) {
  struct Row {
    char32_t character;
    int above, below;
  };
  constexpr Row rows[]{{0x00BC, 1, 4}, {0x00BD, 1, 2}, {0x00BE, 3, 4}, {0x2153, 1, 3}, {0x2154, 2, 3},
                       {0x2155, 1, 5}, {0x2156, 2, 5}, {0x2157, 3, 5}, {0x2158, 4, 5}, {0x2159, 1, 6},
                       {0x215A, 5, 6}, {0x215B, 1, 8}, {0x215C, 3, 8}, {0x215D, 5, 8}, {0x215E, 7, 8}};
  for (auto const& row : rows)
    if (row.character == character) return Fraction{row.above, row.below};
  return std::nullopt;
}

namespace detail {

/// Reads a fraction; `problem` and `problem_at` say what is wrong and where.
class FractionReader {
  TextCursor text_;

  static constexpr std::int64_t most = 999'999'999'999'999'999; // 18 digits
  [[nodiscard]] constexpr Error number_expected() {
    return text_.error_here(text_.at_digit() ? Problem::number_too_large : Problem::not_a_fraction);
  }
  /// Returns the digits after a decimal point or comma.
  [[nodiscard]] constexpr Expected<Fraction> decimals(std::int64_t whole) {
    auto const from = text_.at();
    auto const part = text_.take_number(most);
    if (!part) return number_expected();
    std::int64_t below = 1;
    for (auto i = from; i < text_.at(); ++i) {
      auto const next = checked_multiply(below, 10);
      if (!next) return text_.error_from(from, Problem::number_too_large);
      below = *next;
    }
    auto const sum = checked_add(Fraction{whole}, Fraction{*part, below});
    if (!sum) return text_.error_from(from, Problem::number_too_large);
    return *sum;
  }
  /// Returns the number under the line.
  [[nodiscard]] constexpr Expected<Fraction> divided(std::int64_t above) {
    auto const from = text_.at();
    auto const below = text_.take_number(most);
    if (!below) return number_expected();
    if (*below == 0) return text_.error_from(from, Problem::not_positive);
    return Fraction{above, *below};
  }
  /// Returns a fraction after a whole number: `3 1/5`, `3½`.
  [[nodiscard]] constexpr Expected<Fraction> mixed(std::int64_t whole) {
    auto const from = text_.at();
    text_.take_blanks();
    std::optional<Fraction> part = vulgar_fraction(text_.character().value);
    if (part) {
      text_.skip(text_.character().bytes);
    } else if (auto const above = text_.take_number(most); above && text_.take('/')) {
      auto const read = divided(*above);
      if (!read) return read.error();
      part = *read;
    } else {
      text_.go_to(from);
      return Fraction{whole};
    }
    auto const sum = checked_add(Fraction{whole}, *part);
    if (!sum) return text_.error_from(from, Problem::number_too_large);
    return *sum;
  }
  [[nodiscard]] constexpr Expected<Fraction> unsigned_number() {
    if (auto const part = vulgar_fraction(text_.character().value)) return text_.skip(text_.character().bytes), *part;
    auto const from = text_.at();
    auto const whole = text_.take_number(most);
    if (!whole) return number_expected();
    if (text_.take('/')) return divided(*whole);
    bool const comma = text_.take(',');
    if (!comma && !text_.take('.')) return mixed(*whole);
    auto const after = text_.at();
    auto const number = decimals(*whole);
    // 1,250 is 1.25 to one reader and 1250 to another
    if (comma && number && text_.at() - after == 3) return text_.error_from(from, Problem::not_a_fraction);
    return number;
  }

public:
  constexpr explicit FractionReader(std::string_view text) : text_{text} {}

  [[nodiscard]] constexpr Expected<Fraction> read() {
    text_.take_blanks();
    bool const negative = text_.take('-') || text_.take("\xE2\x88\x92"); // U+2212, the minus sign
    auto const number = unsigned_number();
    if (!number) return number;
    text_.take_blanks();
    if (!text_.at_end()) return text_.error_here(Problem::trailing_text);
    return negative ? -*number : *number;
  }
};

} // namespace detail

/// Reads a number as people write it, exactly: a whole number (`12`), a decimal with a point or a comma (`3.2`), a
/// fraction (`16/5`, `½`), or a whole number with a fraction (`3 1/5`, `3½`). A minus may come first. The number has at
/// most 18 digits. Three digits after a comma are refused, because `1,250` may be 1250. Errors: not_a_fraction,
/// number_too_large, not_positive (the denominator is zero), trailing_text.
/// Example: `read_fraction("10 3/4") == Fraction{43, 4}`.
[[nodiscard]] constexpr Expected<Fraction> read_fraction(std::string_view text) {
  return read_utf8(text, [](std::string_view given) { return detail::FractionReader{given}.read(); });
}

/// Writes a fraction with a number of decimals, rounded to nearest, and a half away from zero: `16/5` with two decimals
/// is `3.20`. Precondition: 0 to 18 decimals.
[[nodiscard]] constexpr ShortText<64> to_decimal(Fraction number, int decimals) {
  if (decimals < 0 || decimals > 18) broken("a number can have 0 to 18 decimals");
  auto const above = detail::magnitude(number.numerator()), below = detail::magnitude(number.denominator());
  // long division, digit by digit: no number on the way is larger than ten times the denominator
  char digits[40]{};
  std::size_t size = 0;
  auto whole = above / below, rest = above % below;
  char reversed[19]{}; // digits of 2 to the power of 63, the largest
  std::size_t count = 0;
  do reversed[count++] = static_cast<char>('0' + whole % 10);
  while ((whole /= 10) != 0);
  while (count > 0) digits[size++] = reversed[--count];
  for (int i = 0; i < decimals; ++i) {
    auto const next = detail::Wide::product(rest, 10).by(below);
    digits[size++] = static_cast<char>('0' + next.quotient.low);
    rest = next.rest;
  }
  bool carried = false;
  if (rest >= below - rest) { // half or more: one more in the last place
    auto at = size;
    while (at > 0 && digits[at - 1] == '9') digits[--at] = '0';
    carried = at == 0;
    if (!carried) ++digits[at - 1];
  }
  bool zero = !carried;
  for (std::size_t i = 0; i < size; ++i) zero = zero && digits[i] == '0';
  ShortText<64> text;
  if (number.numerator() < 0 && !zero) text.append("-");
  if (carried) text.append("1");
  auto const before = size - static_cast<std::size_t>(decimals);
  text.append(digits, before);
  if (decimals > 0) text.append("."), text.append(digits + before, size - before);
  return text;
}

inline namespace literals {
/// Makes a percentage from a literal, exactly: `3.2_percent` is 16/5. Fields that count hundredths, such as
/// `Edition::overs_percent`, take it.
consteval Fraction operator""_percent(char const* digits) {
  auto const number = read_fraction(digits);
  if (!number) broken("write a percentage with digits and a point: 3.2_percent");
  return *number;
}
} // namespace literals

} // namespace v0
} // namespace bifolium
