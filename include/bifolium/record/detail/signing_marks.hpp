// SPDX-License-Identifier: MIT
/// Reads what a statement of signing names: the mark of a gathering, a range of them, the number of a leaf in arabic or
/// Roman numerals, and the title leaf, for which catalogues write words. Letters that make no mark and no numeral are
/// not taken: the t of "title" is not the gathering t.
#pragma once

#include <bifolium/core/text_cursor.hpp>
#include <bifolium/leaf/gathering.hpp>
#include <bifolium/leaf/roman.hpp>
#include <bifolium/leaf/signature_reader.hpp>
#include <bifolium/record/detail/signing_words.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

class SigningMarks {
public:
  TextCursor cursor;     ///< where the statement is read
  Letters letters;       ///< the letters used beside the 23
  bool range_too_long{}; ///< true if a range named too many gatherings or leaves
  /// Thicker gatherings were not signed leaf by leaf, and a statement of few characters would name thousands of leaves.
  static constexpr int longest_range = 64;

  SigningMarks(std::string_view statement, Letters added) : cursor{statement}, letters{added} {}

  /// Takes a whole number, if there is one. Returns a number above `most_leaves_in_gathering` if it is too large.
  std::optional<int> figure() {
    auto const number = cursor.take_capped_number(most_leaves_in_gathering);
    return number ? std::optional{static_cast<int>(*number)} : std::nullopt;
  }
  static bool can_be_leaf(std::optional<int> leaf) {
    return !leaf || (*leaf >= 1 && *leaf <= most_leaves_in_gathering);
  }
  [[nodiscard]] std::string_view text() const { return cursor.text(); }
  [[nodiscard]] FoundSignature mark_here() const {
    TokenCursor c{text(), cursor.at()};
    return SignatureReader{text(), letters}.take(c);
  }
  /// Returns true for the mark +, which is a sign in a statement.
  [[nodiscard]] bool is_plus(FoundSignature const& mark) const {
    return mark.key.mark() == Mark::symbol && text()[mark.key.text_from] == '+';
  }
  static bool is_word_or_figure(char c) { return is_latin_letter(c) || is_digit(c); }
  bool take_title() {
    auto const initial = small_letter(cursor.peek());
    for (char const* const word : title_leaf_words)
      if (small_letter(word[0]) == initial && cursor.take_word_in_any_case(word)) return true;
    return false;
  }
  /// Takes the iij of Aiij, as early books are signed: small letters, of which no other follow.
  std::optional<int> roman_figure() {
    auto const here = cursor;
    auto const numeral = cursor.take_letters();
    auto const found = roman_numeral(numeral);
    if (found && found->bytes == numeral.size() && found->value < 50 && is_small(numeral[0]))
      return static_cast<int>(found->value);
    cursor = here;
    return std::nullopt;
  }
  /// Takes a mark, or the marks from one to another, A-D. The list is empty if there is none.
  std::vector<Signature> take_gatherings() {
    std::vector<Signature> all;
    auto const first = mark_here();
    if (!first || is_plus(first)) return all;
    cursor.go_to(first.end);
    if (is_latin_letter(cursor.peek())) return all;
    auto const here = cursor;
    auto const last = cursor.take_dash() ? mark_here() : FoundSignature{};
    Alphabet const alphabet{letters};
    std::int64_t length = 0;
    if (last) length = run_length(first.key, last.key, alphabet, text()).value_or(0);
    if (length > 0)
      cursor.go_to(last.end);
    else
      cursor = here, length = 1;
    range_too_long = length > longest_range;
    if (range_too_long) return all;
    auto const rank = first.key.rank(alphabet);
    for (std::int64_t i = 0; i < length; ++i)
      all.push_back(signature_of(i == 0 ? first.key : first.key.at_rank(rank + i, alphabet), text(), letters));
    return all;
  }
  /// Takes A-D. The list is empty if there is no range, and for 2-4, which are leaves.
  std::vector<Signature> range_of_gatherings() {
    auto const here = cursor;
    auto all = cursor.at_digit() && mark_here().key.is_bare_number() ? std::vector<Signature>{} : take_gatherings();
    if (all.size() < 2 && !range_too_long) cursor = here, all.clear();
    return all;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
