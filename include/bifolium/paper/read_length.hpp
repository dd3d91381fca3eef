// SPDX-License-Identifier: MIT
/// Reads lengths as people write them: `187 mm`, `18,7 cm`, `4 3/4 in`, `4¾"`, `36 pouces 6 lignes`. A number without a
/// unit is refused, because only the writer knows whether 17 is in centimetres or inches. The digits are read by the
/// library's own code, because not every standard library reads a floating-point number without a locale or an
/// allocation.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction_text.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/paper/length.hpp>
#include <bifolium/paper/length_words.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// above / below. Both are whole numbers as long as they are less than 2^53, so that one division rounds once.
struct Quotient {
  double above{}, below{1};
};

/// A unit of length: how many millimetres it has.
struct UnitRead {
  double num, den;
  bool pouces, lignes;
};
template <class Unit> constexpr UnitRead unit_read() {
  return {static_cast<double>(Unit::num), static_cast<double>(Unit::den), std::is_same_v<Unit, ParisInch>,
          std::is_same_v<Unit, ParisLine>};
}
constexpr UnitRead unit_read(WrittenUnit unit) {
  switch (unit) {
  case WrittenUnit::cm:
    return unit_read<Centimetre>();
  case WrittenUnit::inch:
    return unit_read<Inch>();
  case WrittenUnit::pouce:
    return unit_read<ParisInch>();
  case WrittenUnit::ligne:
    return unit_read<ParisLine>();
  case WrittenUnit::mm:
    break;
  }
  return unit_read<Millimetre>();
}

/// Reads one text. `problem_` is set at the first error.
class LengthReader {
  TextCursor text_;
  Problem problem_{};
  std::size_t problem_at_{};

  constexpr bool fail(Problem problem, std::size_t where) {
    if (problem_ == Problem::none) problem_ = problem, problem_at_ = where;
    return false;
  }
  /// Reads digits and appends them to `number`; at most 12 digits, so that every later product is exact or nearly
  /// exact.
  constexpr bool digits(double& number, int& count) {
    auto const start = text_.at();
    for (; text_.at_digit(); text_.skip(1), ++count) {
      if (count == 12) return fail(Problem::number_too_large, start);
      number = number * 10 + (text_.peek() - '0');
    }
    return text_.at() != start;
  }

  /// Reads a fraction that is one character: ½.
  constexpr bool vulgar(Quotient& number) {
    auto const part = vulgar_fraction(text_.character().value);
    if (!part) return false;
    text_.skip(text_.character().bytes);
    auto const above = static_cast<double>(part->numerator()), below = static_cast<double>(part->denominator());
    number = {number.above * below + above, below};
    return true;
  }

  /// Reads the n/d that follows a whole number after a blank or a hyphen. If there is none, the cursor does not move.
  constexpr bool fraction(Quotient& number) {
    auto const start = text_.at();
    if (!text_.take('-')) text_.take_blanks();
    if (vulgar(number)) return true;
    Quotient part{0, 0};
    int count = 0, below = 0;
    if (!digits(part.above, count) || !text_.take('/')) return text_.go_to(start), problem_ == Problem::none;
    if (!digits(part.below, below)) return fail(Problem::not_a_number, text_.at());
    if (part.below == 0) return fail(Problem::not_positive, start);
    number = {number.above * part.below + part.above, part.below};
    return true;
  }

public:
  constexpr explicit LengthReader(std::string_view text) : text_{text} {}

  [[nodiscard]] constexpr TextCursor& text() { return text_; }

  constexpr bool number(Quotient& number) {
    auto const start = text_.at();
    if (vulgar(number)) return true;
    if (text_.take('-')) return fail(text_.at_digit() ? Problem::not_positive : Problem::not_a_length, start);
    int count = 0;
    if (!digits(number.above, count)) return fail(Problem::not_a_length, start);
    if (text_.take('/')) {
      number.below = 0;
      int below = 0;
      if (!digits(number.below, below)) return fail(Problem::not_a_number, text_.at());
      return number.below != 0 || fail(Problem::not_positive, start);
    }
    bool const comma = text_.take(',');
    if (!comma && !text_.take('.')) return fraction(number);
    auto const whole = count;
    if (!digits(number.above, count)) return fail(Problem::not_a_number, text_.at());
    // 1,250 mm can mean 1.25 mm or 1250 mm
    if (comma && count - whole == 3) return fail(Problem::not_a_length, start);
    for (int i = whole; i < count; ++i) number.below *= 10;
    return true;
  }

  constexpr bool unit(UnitRead& unit) {
    text_.take_blanks();
    if (text_.at_end()) return fail(Problem::unit_missing, 0);
    auto ahead = text_;
    auto const found = take_length_word(ahead);
    if (!found || !(ahead.at_end() || ahead.at_digit() || is_space(ahead.character().value)))
      return fail(Problem::unknown_unit, text_.at());
    unit = unit_read(*found);
    text_ = ahead;
    return true;
  }

  [[nodiscard]] constexpr Error error() { return text_.error_from(problem_at_, problem_); }
  [[nodiscard]] constexpr Error error(Problem problem, std::size_t where) {
    fail(problem, where);
    return error();
  }
};

constexpr Expected<millimetres> length_of_text(std::string_view text) {
  LengthReader reader{text};
  auto& cursor = reader.text();
  Quotient total{0, 1};
  bool pouces = false;
  cursor.take_blanks();
  auto const start = cursor.at();
  do {
    auto const here = cursor.at();
    Quotient number;
    UnitRead unit{};
    if (pouces && !cursor.at_digit()) return reader.error(Problem::trailing_text, here);
    if (!reader.number(number) || !reader.unit(unit)) return reader.error();
    if (pouces && !unit.lignes) return reader.error(Problem::trailing_text, here);
    Quotient const length{number.above * unit.num, number.below * unit.den};
    if (total.below == length.below)
      total.above += length.above;
    else
      total = {total.above * length.below + length.above * total.below, total.below * length.below};
    cursor.take_blanks();
    if (!cursor.at_end() && (pouces || !unit.pouces)) return reader.error(Problem::trailing_text, cursor.at());
    pouces = true;
  } while (!cursor.at_end());
  if (total.above <= 0) return reader.error(Problem::not_positive, start);
  return millimetres{total.above / total.below};
}

} // namespace detail

/// Reads a length of more than zero, in millimetres. A number is whole, decimal (with a point or a comma), a fraction,
/// or a whole number with a fraction, and has at most 12 digits. The unit is mm, cm, in (inch, inches, `"`), pouces or
/// lignes, abbreviated or in full, in the languages of paper/length_words.hpp. Lignes may follow pouces. Errors: not_a_length, not_a_number, number_too_large,
/// not_positive, unit_missing, unknown_unit, trailing_text.
/// Example: `read_length("187 mm") == 187_mm`.
[[nodiscard]] constexpr Expected<millimetres> read_length(std::string_view text) {
  return read_utf8(text, detail::length_of_text);
}

} // namespace v0
} // namespace bifolium
