// SPDX-License-Identifier: MIT
/// The numbers of a statement of size: 18.4, 7 3/4, 6 pouces 11 lignes, 20 x 32. A measure is an interval, since whoever
/// measured wrote no more figures than seemed certain: a whole number of centimetres is rounded up by the rules of
/// cataloguing, any other number is rounded to its smallest part.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/fraction_text.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/paper/length_words.hpp>
#include <bifolium/paper/sheet_size.hpp>
#include <bifolium/record/size_statement.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A number as written, with its smallest part: .1 in 18.4, 1/4 in 7 3/4, 1 in a whole number.
struct SizeNumber {
  double value{}, part{1};
  bool whole{true};
};

/// Returns the interval of a number. Whole centimetres are rounded up; millimetres are rounded up if the height is at
/// most 10 cm, for both sides.
[[nodiscard]] inline SizeRange size_range(SizeNumber const& number, SizeNumber const& height, SheetUnit unit,
                                          bool about) {
  double const worth = length_in(unit, 1).count();
  auto const value = number.value * worth;
  bool const counted_up = number.whole && (unit == SheetUnit::cm || (unit == SheetUnit::mm && height.value <= 100));
  bool const inch = unit == SheetUnit::inch || unit == SheetUnit::pouce;
  auto const half = (inch && number.whole ? .25 : number.part / 2) * worth;
  auto range = counted_up ? SizeRange{value - worth, value} : SizeRange{value - half, value + half};
  if (about) range = {range.above - worth, range.to + worth};
  if (range.above < 0) range.above = 0;
  return range;
}

/// Returns the number of a character such as ½.
[[nodiscard]] inline std::optional<SizeNumber> vulgar_number(char32_t c) {
  auto const part = vulgar_fraction(c);
  if (!part) return std::nullopt;
  return SizeNumber{part->as_double(), 1 / static_cast<double>(part->denominator()), false};
}

/// Takes numbers and what joins them.
class SizeNumbers {
  TextCursor& cursor_;

  [[nodiscard]] Error wrong(Problem problem, std::size_t from) { return cursor_.error_from(from, problem); }
  /// Reads 1/2 or ½ after a whole number, if there is one.
  void fraction(SizeNumber& number) {
    auto const here = cursor_.at();
    cursor_.take_blanks();
    if (auto const part = vulgar_number(cursor_.character().value)) {
      cursor_.skip(cursor_.character().bytes);
      number = {number.value + part->value, part->part, false};
      return;
    }
    auto const above = cursor_.take_number(99);
    auto const below = above && cursor_.take('/') ? cursor_.take_number(99) : std::nullopt;
    if (!below || *below == 0 || *above >= *below) return cursor_.go_to(here);
    number = {number.value + static_cast<double>(*above) / static_cast<double>(*below), 1 / static_cast<double>(*below),
              false};
  }

public:
  /// What joins two numbers: x or by, or a dash or to.
  struct Joint {
    bool by{}, to{};
  };

  explicit SizeNumbers(TextCursor& cursor) : cursor_{cursor} {}

  Expected<SizeNumber> number() {
    auto const from = cursor_.at();
    SizeNumber read;
    if (vulgar_number(cursor_.character().value)) return fraction(read), read;
    auto const whole = cursor_.take_number(99'999);
    if (!whole) return wrong(cursor_.at_digit() ? Problem::number_too_large : Problem::not_a_length, from);
    read.value = static_cast<double>(*whole);
    if ((cursor_.peek() == '.' || cursor_.peek() == ',') && is_digit(cursor_.peek(1))) {
      cursor_.skip(1);
      read.whole = false;
      for (int places = 0; cursor_.at_digit(); ++places, cursor_.skip(1)) {
        if (places == 6) return wrong(Problem::number_too_large, from);
        read.part /= 10;
        read.value += read.part * (cursor_.peek() - '0');
      }
    } else
      fraction(read);
    if (read.value <= 0) return wrong(Problem::not_positive, from);
    return read;
  }
  /// Takes what joins two numbers: x, by, a dash.
  Joint joint(bool first) {
    cursor_.take_blanks();
    Joint found;
    found.by = cursor_.take('x') || cursor_.take('X') || cursor_.take("×") || cursor_.take_word("by");
    found.to = !found.by && first && (cursor_.take_dash() || cursor_.take_word("to"));
    cursor_.take_blanks();
    return found;
  }
  /// Adds the lignes after the pouces of a number: 6 pouces 11 lignes.
  void add_lignes(SizeNumber& pouces) {
    auto const here = cursor_.at();
    cursor_.take_blanks();
    auto const lignes = cursor_.take_number(11);
    cursor_.take_blanks();
    bool const named = lignes && take_length_word(cursor_) == WrittenUnit::ligne;
    if (!named || !pouces.whole) return cursor_.go_to(here);
    pouces = {pouces.value + static_cast<double>(*lignes) / 12, 1.0 / 12, false};
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
