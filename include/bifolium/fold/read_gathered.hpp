// SPDX-License-Identifier: MIT
/// Reads how the sheets of a format are gathered, which stands after the format: 8° in fours, 8°, in 4s, 8° gathered in
/// fours, 8° (4s), 12° (8/4), 2° in half-sheets (common practice, no source). Formulas, records and names of schemes all
/// read it here.
///
///   gathered = [ "," ] , ( gathered in | "(" , ( gathered in | "half-sheets" | plurals | counts in turn ) , ")" ) ;
///   gathered in = [ "gathered" ] , before counts , ( "half-sheets" | plurals ) ;
///   counts in turn = figure , in turn , figure , { in turn , figure } ;
///   in turn  = "/" | "." | "·" | "," ;
///
/// A single figure, 8° (4), is not such a statement, because it can mean anything.
#pragma once

#include <bifolium/core/text_span.hpp>
#include <bifolium/fold/format.hpp>
#include <bifolium/leaf/counts_in_words.hpp>
#include <bifolium/leaf/leaf_words.hpp>

namespace bifolium {
inline namespace v0 {

/// A statement of how a format is gathered.
struct GatheredRead {
  CountsRead counts{}; ///< the leaves of the gatherings, or the reason why they cannot be read
  TextSpan text{};     ///< the bytes of the statement
  bool half_sheets{};  ///< true if it says "in half-sheets"
  friend constexpr bool operator==(GatheredRead const&, GatheredRead const&) = default;
};

namespace detail {
/// Returns true if a statement of gathering may begin with this character. After most formats comes another.
constexpr bool may_begin_gathered(char c, char next) noexcept {
  return c == ',' || c == '(' || may_begin_counts(c, next) || small_letter(c) == 'g';
}
/// Takes two or more figures: 8/4, 8.6.8.
constexpr CountsRead take_terms(TextCursor& cursor) {
  auto c = cursor;
  CountsRead found;
  int terms = 0;
  for (;; ++terms) {
    auto const figure = c.take_capped_number(most_leaves_in_gathering);
    if (!figure) return {};
    found.add(*figure);
    if (!c.take('/') && !c.take("⁄") && !c.take('.') && !c.take(',') && !c.take("·")) break;
  }
  if (terms < 1) return {};
  cursor = c;
  return found;
}
} // namespace detail

/// Takes a statement of how a format is gathered, and the blanks before it. If there is none, takes nothing and returns
/// an empty count.
[[nodiscard]] constexpr GatheredRead take_gathered(TextCursor& cursor, Format format) {
  auto c = cursor;
  c.take_blanks();
  if (!detail::may_begin_gathered(c.peek(), c.peek(1))) return {};
  GatheredRead read;
  if (c.take(',')) c.take_blanks();
  auto const from = c.at();
  bool const round = c.take('(');
  c.take_blanks();
  auto said = c;
  if (equal_in_any_case(said.take_letters(), "gathered") && said.take_blanks()) c = said;
  auto const sheet = format.leaves_to_sheet();
  bool const in = take_word_before_counts(c);
  if (in || round) read.half_sheets = sheet && *sheet >= 2 && take_half_sheet(c);
  if (read.half_sheets) {
    read.counts.add(*sheet / 2);
  } else if (in) {
    read.counts = take_counts_in_words(c);
  } else if (round) {
    auto plurals = c;
    if (auto const first = take_number_in_words(plurals); first && first->plural)
      read.counts = take_counts_in_words(c);
    else
      read.counts = detail::take_terms(c);
  }
  if (!read.counts.found()) return {};
  if (round) {
    c.take_blanks();
    if (!c.take(')')) return {};
  }
  read.text = {from, c.at()};
  cursor = c;
  return read;
}

} // namespace v0
} // namespace bifolium
