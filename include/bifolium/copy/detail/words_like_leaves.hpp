// SPDX-License-Identifier: MIT
/// Words that are also the name of a leaf with its number in Roman numerals: Ej. is ejemplar and leaf E1, di is "of" and leaf d1,
/// six is a number and leaf s9 (common practice, no source). Old catalogues number leaves so, but then all of a list.
#pragma once

#include <bifolium/collation/reference.hpp>
#include <bifolium/copy/detail/words_before_leaves.hpp>
#include <bifolium/leaf/roman.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What such a word is if it is not a leaf.
enum class WordLikeLeaf : std::uint8_t {
  copy,   ///< it says that a copy is described: Ej., Ex.
  of,     ///< it stands before the leaves that are wanting: mancante di a1
  number, ///< it counts leaves, or numbers one: six, iv
  other   ///< it stands in a sentence: ci manca a1
};
/// Returns what a word is that may also be a leaf, without the full point after it; no value for any other word.
[[nodiscard]] inline std::optional<WordLikeLeaf> word_like_leaf(std::string_view word) noexcept {
  auto const bare = without_point(word);
  if (bare.size() < 2 || bare.size() > 8 || !is_latin_letter(bare[0])) return std::nullopt;
  for (std::string_view const one : {"ej", "ex"})
    if (equal_in_any_case(bare, one)) return WordLikeLeaf::copy;
  if (equal_in_any_case(bare, "di")) return WordLikeLeaf::of;
  for (std::string_view const one : {"six", "dix"})
    if (equal_in_any_case(bare, one)) return WordLikeLeaf::number;
  for (std::string_view const one : {"ai", "ci", "fi", "hi", "li", "mi", "ni", "si", "ti", "bij", "hij", "jij", "mij",
                                     "wij", "zij", "fix", "mix", "nix"})
    if (equal_in_any_case(bare, one)) return WordLikeLeaf::other;
  auto const numeral = roman_numeral(bare);
  bool const number = numeral && numeral->bytes == bare.size() && numeral->value < 40; // iv, but cij is leaf c2
  if (number && std::string_view{"ivxIVX"}.find(bare[0]) != bare.npos) return WordLikeLeaf::number;
  return std::nullopt;
}
/// Returns true for a leaf of the book with its number in Roman numerals, Aiij, that is no such word.
[[nodiscard]] inline bool names_roman_leaf(IdealCopy const& book, std::string_view word) {
  auto const bare = without_point(word);
  if (bare.size() < 2 || bare.size() > 12 || word_like_leaf(word)) return false;
  if (TextCursor{bare}.take_letters().size() != bare.size()) return false;
  return !names_gathering(book, bare) && find_reference(book, bare);
}

} // namespace detail
} // namespace v0
} // namespace bifolium
