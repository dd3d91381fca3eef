// SPDX-License-Identifier: MIT
/// Words that catalogues write about leaves (common practice, no source): that they are blank or wanting, which of them
/// are meant, that a half-sheet was printed by itself. Formulas, lists of the leaves of a copy, statements of format
/// and names of schemes are read with the same words.
#pragma once

#include <bifolium/core/number_words.hpp>
#include <bifolium/core/text_cursor.hpp>

namespace bifolium {
inline namespace v0 {

/// Returns true for a word that means blank, in capitals or small letters: blank, blanks, bl (of bl.).
[[nodiscard]] constexpr bool is_blank_word(std::string_view word) noexcept {
  using namespace std::string_view_literals;
  if (word.size() < 2 || small_letter(word[0]) != 'b') return false;
  for (auto const one : {"bl"sv, "blank"sv, "blanks"sv})
    if (equal_in_any_case(word, one)) return true;
  return false;
}
/// Returns true for a word that means that leaves are not there: wants, lacking. "Missing" is not among them: it is
/// said of a copy, and not of the ideal copy.
[[nodiscard]] constexpr bool is_wanting_word(std::string_view word) noexcept {
  using namespace std::string_view_literals;
  for (auto const one : {"want"sv, "wants"sv, "wanting"sv, "lack"sv, "lacks"sv, "lacking"sv})
    if (equal_in_any_case(word, one)) return true;
  return false;
}

/// Leaves that are counted from one end of a gathering or of a book.
struct CountedLeaves {
  int leaves{1};      ///< how many they are
  bool first{};       ///< true if they are counted from the beginning, false if from the end
  bool says_leaves{}; ///< true if the word leaf or leaves follows
  friend constexpr bool operator==(CountedLeaves const&, CountedLeaves const&) = default;
};
/// Takes "the last leaf", "first two leaves", "final" and the blanks after it. If there is none, takes nothing and
/// returns no value.
[[nodiscard]] constexpr std::optional<CountedLeaves> take_counted_leaves(TextCursor& cursor) noexcept {
  auto c = cursor;
  auto const take = [&](std::string_view word) {
    auto next = c;
    if (!equal_in_any_case(next.take_letters(), word)) return false;
    next.take_blanks();
    c = next;
    return true;
  };
  static_cast<void>(take("the"));
  CountedLeaves counted;
  counted.first = take("first");
  if (!counted.first && !take("last") && !take("final")) return std::nullopt;
  auto number = c;
  if (auto const leaves = number_of_word(number.take_letters())) {
    counted.leaves = *leaves;
    number.take_blanks();
    c = number;
  }
  counted.says_leaves = take("leaf") || take("leaves");
  cursor = c;
  return counted;
}

/// Takes "half-sheet", "half sheets" or the like. Returns true if it was taken.
[[nodiscard]] constexpr bool take_half_sheet(TextCursor& cursor) noexcept {
  auto c = cursor;
  if (!c.take_in_any_case("half") || !(c.take('-') || c.take(' ') || c.take('_')) || !c.take_in_any_case("sheet"))
    return false;
  static_cast<void>(c.take('s') || c.take('S'));
  cursor = c;
  return true;
}

} // namespace v0
} // namespace bifolium
