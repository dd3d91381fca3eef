// SPDX-License-Identifier: MIT
/// Words for what a book consists of, beside its leaves. The same word stands before the gatherings, between them, after them
/// and in notes, and must mean the same wherever it stands. All may be in capitals or small letters; leaf/book_nouns.hpp has those
/// that lists of leaves have too. (common practice, no source)
#pragma once

#include <bifolium/leaf/book_nouns.hpp>
#include <bifolium/leaf/leaf_words.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What is printed apart from the gatherings: 4 leaves of plates, with 2 maps.
inline constexpr char const* words_of_plates[]{"plate",     "plates",   "engraving",    "engravings",    "map",
                                               "maps",      "portrait", "illustration", "illustrations", "plan",
                                               "portraits", "print",    "prints",       "plans"};
/// Returns true for a word that says what is on leaves of the text: 1 leaf of errata, (L2 errata).
[[nodiscard]] constexpr bool is_word_of_contents(std::string_view word) noexcept {
  return is_noun(word, content_noun_rows, NounUse::note);
}
/// Returns true for a word for what is printed apart from the gatherings.
[[nodiscard]] constexpr bool is_word_of_plates(std::string_view word) noexcept {
  return is_one_of(word, words_of_plates);
}
/// Returns true for a word for gatherings: 11 gatherings, (quire C missigned D).
[[nodiscard]] constexpr bool is_word_for_gatherings(std::string_view word) noexcept {
  return is_noun(word, gathering_noun_rows, NounUse::note);
}

} // namespace detail
} // namespace v0
} // namespace bifolium
