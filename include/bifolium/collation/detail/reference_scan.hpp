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

  /// Takes a number of leaves. Returns -1 if there is no digit.
  constexpr std::int64_t figures() noexcept { return take_capped_number(most_figure).value_or(-1); }
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
  constexpr LeafSide side() noexcept {
    take_blanks();
    auto found = LeafSide::not_said;
    for (std::string_view word : {"recto", "r", "ʳ", "a", "ᵃ"})
      if (found == LeafSide::not_said && take(word)) found = LeafSide::recto;
    for (std::string_view word : {"verso", "v", "ᵛ", "b", "ᵇ"})
      if (found == LeafSide::not_said && take(word)) found = LeafSide::verso;
    if (found != LeafSide::not_said) point();
    return found;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
