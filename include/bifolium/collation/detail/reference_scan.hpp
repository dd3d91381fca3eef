// SPDX-License-Identifier: MIT
/// Scans the parts of a reference: numbers in figures and in Roman numerals, and the side of the leaf.
#pragma once

#include <bifolium/collation/leaf_of_book.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/leaf/roman.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A cursor in the text of a reference, with the parts of references.
struct ReferenceScan : TextCursor {
  using TextCursor::TextCursor;
  /// The highest number that is read; a higher one counts as this, which no book reaches.
  static constexpr std::int64_t most_figure = 9'999'999'999'999;

  /// Takes a number of leaves, also in lowered digits: A₃. Returns -1 if there is no digit.
  constexpr std::int64_t figures() noexcept {
    if (!subscript_digit(character().value)) return take_capped_number(most_figure).value_or(-1);
    std::int64_t number = 0;
    for (auto next = character(); subscript_digit(next.value); next = character()) {
      number = number > most_figure / 10 ? most_figure : number * 10 + *subscript_digit(next.value);
      skip(next.bytes);
    }
    return number;
  }
  /// Reads ij, iiij or viii. A v alone at the end, or after the numeral, is the verso: iiiv is leaf three, verso.
  constexpr std::int64_t roman() noexcept {
    auto const numeral = roman_numeral(rest());
    if (!numeral || rest() == "v") return 0;
    skip(numeral->bytes);
    return numeral->value;
  }
  constexpr void point() noexcept {
    take('.');
    take_blanks();
  }
  /// Takes the side of a leaf after it: r, ʳ, ^r, <sup>r</sup>, r°, a, recto, (recto), and after a comma; v, b and
  /// verso in the same ways. The column of a page, ra or vb, says nothing of the leaf.
  constexpr LeafSide side() noexcept {
    take_blanks();
    auto after = *this;
    if (after.take(',')) after.take_blanks();
    bool const round = after.take('(');
    bool const tag = !round && after.take("<sup>");
    if (!round && !tag) after.take('^');
    auto const found = after.side_words();
    bool const closed = (!round || after.take(')')) && (!tag || after.take("</sup>"));
    if (found == LeafSide::not_said || !closed) return LeafSide::not_said;
    after.point();
    return *this = after, found;
  }
  /// Takes the words that come before a reference, in capitals or small letters. Returns true if there are any of them.
  template <std::size_t N> constexpr bool take_any(std::string_view const (&words)[N]) noexcept {
    for (auto const word : words) {
      auto after = *this;
      // a word in full ends with a blank
      if (!after.take_in_any_case(word) || (word.back() != '.' && !after.take_blanks())) continue;
      *this = after;
      return true;
    }
    return false;
  }

private:
  constexpr LeafSide side_words() noexcept {
    for (std::string_view word : {"recto", "rect", "r°", "ro", "r", "ʳ", "a", "ᵃ"})
      if (take(word)) return column(word), LeafSide::recto;
    for (std::string_view word : {"verso", "vers", "v°", "vo", "v", "ᵛ", "b", "ᵇ"})
      if (take(word)) return column(word), LeafSide::verso;
    return LeafSide::not_said;
  }
  /// Takes the column of a page after r or v.
  constexpr void column(std::string_view side) noexcept {
    if (side != "r" && side != "v" && side != "ʳ" && side != "ᵛ") return;
    auto after = *this;
    bool found = false;
    for (std::string_view one : {"a", "b", "ᵃ", "ᵇ"}) found = found || after.take(one);
    if (found && !is_latin_letter(after.peek())) *this = after;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
