// SPDX-License-Identifier: MIT
/// Leaf counts in words, as the trade writes them: in eights, in 8s, in eights and fours alternately, in twenty-fours
/// (common practice, no source). Formulas say it of runs, and statements of format of the whole book; both are read
/// here.
///
///   plurals  = [ "alternate" | "alternating" ] , plural , [ ( "and" | "&" ) , plural , [ "alternately" ] ] ;
///   before counts = "in" | "per" | "par" | "alternately" , [ "in" | "per" ] ;
///   plural   = "fours" | "eights" | number | figure , [ [ "'" ] , "s" ] ;
#pragma once

#include <bifolium/core/number_words.hpp>
#include <bifolium/core/problem.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/leaf/cycle.hpp>

namespace bifolium {
inline namespace v0 {

/// Leaf counts found in a text, or the reason why they cannot be read.
struct CountsRead {
  Cycle leaves{};                 ///< the counts, none if there is no statement
  Problem problem{Problem::none}; ///< zero_leaf_count, leaf_count_too_high or cycle_too_long
  /// Returns the number that belongs to the problem.
  [[nodiscard]] constexpr std::int64_t limit() const noexcept {
    return problem == Problem::cycle_too_long ? std::int64_t{Cycle::most_terms} : most_leaves_in_gathering;
  }
  /// Returns true if there is a statement, even one that cannot be read.
  [[nodiscard]] constexpr bool found() const noexcept { return problem != Problem::none || leaves.size() != 0; }
  /// Adds a count, or sets the problem that it has.
  constexpr void add(std::int64_t count) {
    if (problem != Problem::none) return;
    if (count < 1)
      problem = Problem::zero_leaf_count;
    else if (count > most_leaves_in_gathering)
      problem = Problem::leaf_count_too_high;
    else if (!leaves.push(static_cast<int>(count)))
      problem = Problem::cycle_too_long;
  }
  friend constexpr bool operator==(CountsRead const&, CountsRead const&) = default;
};

/// A number in a text about leaves.
struct NumberInWords {
  std::int64_t value{}; ///< the number; one more than a gathering can have for any higher one
  bool plural{};        ///< true for eights and 8s
  bool figures{};       ///< true if it is written in digits
  friend constexpr bool operator==(NumberInWords, NumberInWords) = default;
};
/// Takes eight, eights, 8, 8s or 8's. If no number is at the cursor, or a letter or degree sign follows its digits,
/// takes nothing and returns no value.
[[nodiscard]] constexpr std::optional<NumberInWords> take_number_in_words(TextCursor& cursor) noexcept {
  auto c = cursor;
  if (auto const number = c.take_capped_number(most_leaves_in_gathering)) {
    auto s = c;
    static_cast<void>(s.take_quotation_mark());
    bool const plural = s.take_word("s");
    if (plural) c = s;
    if (is_latin_letter(c.peek()) || is_degree_sign(c.character().value)) return std::nullopt;
    cursor = c;
    return NumberInWords{*number, plural, true};
  }
  auto const from = c.at();
  auto end = c;
  for (std::optional<NumberInWords> found;; end.skip(1)) { // twenty-fours: the longest that is a number
    end.take_letters();
    auto const word = c.text().substr(from, end.at() - from);
    auto const several = number_of_plural(word);
    auto const number = several ? several : number_of_word(word);
    if (number) found = NumberInWords{*number, several.has_value(), false}, cursor = end;
    if (end.peek() != '-' || !is_latin_letter(end.peek(1)) || word.size() > 12) return found;
  }
}
/// Returns true for a word after which leaf counts come: in eights, per eights, par 8, alternately in eights and fours.
[[nodiscard]] constexpr bool is_word_before_counts(std::string_view word) noexcept {
  return equal_in_any_case(word, "in") || equal_in_any_case(word, "per") || equal_in_any_case(word, "par") ||
         equal_in_any_case(word, "alternately") || equal_in_any_case(word, "alternate") ||
         equal_in_any_case(word, "alternating");
}
/// Returns true if a word before leaf counts may begin with these two letters. Most texts have others, which saves reading
/// the word.
[[nodiscard]] constexpr bool may_begin_counts(char first, char second) noexcept {
  switch (small_letter(first)) {
  case 'i':
    return small_letter(second) == 'n';
  case 'p':
    return small_letter(second) == 'e' || small_letter(second) == 'a';
  case 'a':
    return small_letter(second) == 'l';
  default:
    return false;
  }
}
/// Takes "in", "per" or "alternately in" and the blanks after it. Returns true if it was taken.
constexpr bool take_word_before_counts(TextCursor& cursor) noexcept {
  auto c = cursor;
  auto const word = c.take_letters();
  if (!is_word_before_counts(word) || !c.take_blanks()) return false;
  cursor = c;
  bool const in = word.size() > 3 && is_word_before_counts(c.take_letters()) && c.take_blanks();
  if (in) cursor = c;
  return true;
}
namespace detail {
/// Takes a word, in capitals or small letters, and the blanks after it. Returns true if it was taken.
constexpr bool take_word_of_counts(TextCursor& cursor, std::string_view word) noexcept {
  if (small_letter(cursor.peek()) != word[0]) return false;
  auto next = cursor;
  if (!equal_in_any_case(next.take_letters(), word)) return false;
  next.take_blanks();
  cursor = next;
  return true;
}
} // namespace detail

/// Takes what may follow the first count after "in", the second of two that alternate: eights & fours alternately.
/// `first` was taken directly before the cursor. `alternate`: the words before it say that the counts alternate, so that the
/// second need not be a plural: alternately 8 and 4.
[[nodiscard]] constexpr CountsRead take_second_count(TextCursor& cursor, NumberInWords first,
                                                     bool alternate = false) noexcept {
  CountsRead found;
  found.add(first.value);
  auto c = cursor;
  c.take_blanks();
  bool const sign = c.take("&amp;") || c.take('&');
  if (sign) c.take_blanks();
  if (!sign && !detail::take_word_of_counts(c, "and")) return found;
  auto const second = take_number_in_words(c);
  if (!second || (!second->plural && !alternate)) return found;
  found.add(second->value);
  cursor = c;
  c.take_blanks();
  if (equal_in_any_case(c.take_letters(), "alternately")) cursor = c;
  return found;
}
/// Takes the counts after "in": eights; alternate eights and fours; eights & fours alternately. If there are none,
/// takes nothing and returns an empty count.
[[nodiscard]] constexpr CountsRead take_counts_in_words(TextCursor& cursor) noexcept {
  auto c = cursor;
  static_cast<void>(detail::take_word_of_counts(c, "alternate") || detail::take_word_of_counts(c, "alternating"));
  auto const first = take_number_in_words(c);
  if (!first) return {};
  cursor = c;
  return take_second_count(cursor, *first);
}

} // namespace v0
} // namespace bifolium
