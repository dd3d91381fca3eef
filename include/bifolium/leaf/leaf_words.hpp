// SPDX-License-Identifier: MIT
/// Words that catalogues write about leaves (common practice, no source): that they are blank, wanting or cancels, which
/// of them are meant, that a half-sheet was printed by itself. Formulas, lists of the leaves of a copy, statements of format
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
/// Returns true for a word between the name of a leaf and what is said of it: K8 is blank, A1 a cancel.
[[nodiscard]] constexpr bool is_linking_word(std::string_view word) noexcept {
  using namespace std::string_view_literals;
  for (auto const one : {"is"sv, "are"sv, "both"sv, "all"sv, "a"sv, "was"sv, "were"sv, "being"sv})
    if (equal_in_any_case(word, one)) return true;
  return false;
}
/// Returns true for a word that makes what is said of a leaf doubtful: K8 is probably blank.
[[nodiscard]] constexpr bool is_doubting_word(std::string_view word) noexcept {
  using namespace std::string_view_literals;
  for (auto const one :
       {"probably"sv, "prob"sv, "perhaps"sv, "presumably"sv, "presumed"sv, "possibly"sv, "apparently"sv, "likely"sv})
    if (equal_in_any_case(word, one)) return true;
  return false;
}
/// What a word about a cancel says.
enum class CancelWord : std::uint8_t {
  none,      ///< it is no such word
  cancel,    ///< the leaf was put in the place of another: a cancel, cancellans
  cancels,   ///< the same of several leaves: cancels, cancellantia
  cancelled, ///< the leaf was cut out; whether another was put in its place is not said
};
/// Returns what a word says about a cancel, in capitals or small letters.
[[nodiscard]] constexpr CancelWord cancel_word(std::string_view word) noexcept {
  struct Row {
    std::string_view word;
    CancelWord meaning;
  };
  if (word.size() < 6 || small_letter(word[0]) != 'c') return CancelWord::none;
  for (auto const& row : {Row{"cancel", CancelWord::cancel}, Row{"cancellans", CancelWord::cancel},
                          Row{"cancels", CancelWord::cancels}, Row{"cancellantia", CancelWord::cancels},
                          Row{"cancelled", CancelWord::cancelled}, Row{"canceled", CancelWord::cancelled}})
    if (equal_in_any_case(word, row.word)) return row.meaning;
  return CancelWord::none;
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
