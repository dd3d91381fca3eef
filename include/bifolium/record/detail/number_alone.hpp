// SPDX-License-Identifier: MIT
/// In a column of millimetres a number alone has a unit that is not written. A word after it may be a unit that nobody here
/// knows, and a number after it may have the unit of both: 8 Zoll, 84 lines, 19 or 20 cm, 18, 19 cm, 19 (cm). Of such a
/// number nobody knows what it counts, so it must not be taken.
#pragma once

#include <bifolium/core/problem.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/record/detail/size_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Why a number is not alone: unknown_unit with the word, or unit_missing; none if it is alone.
struct NotAlone {
  Problem problem{};
  TextSpan word{};
};

/// Returns true if a unit follows, or a number with its unit. `in` without a number is no unit, but a word: in 1890.
constexpr bool names_unit(TextCursor look) {
  bool const number =
      look.take_while([](char32_t c) { return (c >= '0' && c <= '9') || c == '.' || c == ',' || c == '/'; });
  auto const unit = take_size_unit(look);
  return unit && (number || *unit != SheetUnit::inch);
}
/// Looks at what follows a number without a unit. A remark may: after a comma, in brackets, or as a format or a label.
constexpr NotAlone why_not_alone(TextCursor look) {
  look.take_blanks();
  bool const comma = look.take(',') || look.take(';'), bracket = !comma && (look.take('(') || look.take('['));
  look.take_blanks();
  auto label = look;
  char const first = look.peek();
  if (look.at_end() || first == ')' || first == '.' || first == '?' || take_size_label(label) ||
      format_at_start(look.rest()))
    return {};
  auto const ends_word = [](char32_t c) {
    return is_space(c) || c == ',' || c == ';' || c == '.' || c == '(' || c == ')' || (c >= '0' && c <= '9');
  };
  bool unit = names_unit(look);
  auto const from = look.at();
  look.take_until(ends_word);
  TextSpan const word{from, look.at()};
  look.take_blanks();
  unit = unit || names_unit(look);
  if ((comma && is_digit(first)) || unit) return {Problem::unit_missing, {}};
  if (comma || bracket) return {};
  if (word.empty() || look.at_digit()) return {Problem::unit_missing, {}};
  return {Problem::unknown_unit, word};
}

} // namespace detail
} // namespace v0
} // namespace bifolium
