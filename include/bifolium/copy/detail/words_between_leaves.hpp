// SPDX-License-Identifier: MIT
/// Words that stand between the leaves of a list and say nothing of them: A1 and A8, this copy has A1, wants the bifolium
/// A1.8 (common practice, no source). They are known one by one, since a word that is not known may say what changes the
/// leaves before it.
#pragma once

#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// English, German and Dutch, French, each in capitals too; joins_leaves has them all in small letters.
inline constexpr char const* joining_words_of_lists[]{"and", "und", "et"};
/// Words between a leaf and its state: A1 which is supplied in manuscript facsimile from another copy.
inline constexpr char const* words_before_state[]{"in",   "is",      "are",       "both", "which", "also", "from",
                                                  "copy", "another", "inclusive", "als",  "im",    "en"};
/// Those of them that say a state of several leaves: lacks A1; C2 and C3 are torn.
inline constexpr char const* words_before_state_of_all[]{"are", "both"};
/// Words before leaves that are wanting: wants the bifolium A1.8.
inline constexpr char const* words_before_wanting[]{
    "the",        "leaf",  "leaves",     "gathering",  "gatherings", "quire", "quires", "sig.",
    "signature",  "sigs.", "signatures", "bifolium",   "bifolia",    "for",   "only",   "cancel",
    "cancellans", "pair",  "conjugate",  "conjugates", "is",         "are",   "both"};
/// Words that only say that a copy is described: this copy, l’exemplaire.
inline constexpr char const* words_for_copy[]{
    "this",         "the",          "our",         "copy",        "exemplar", "dies",   "dieses", "unser",
    "das",          "es",           "le",          "cet",         "notre",    "il",     "lo",     "exemplaire",
    "esemplare",    "el",           "este",        "nuestro",     "ejemplar", "dit",    "ons",    "het",
    "exemplaar",    "ex",           "expl",        "exempl",      "exemp",    "esempl", "ej",     "ejempl",
    "l'exemplaire", "l’exemplaire", "l'esemplare", "l’esemplare", "l'ex",     "l’ex"};
/// Words that say that leaves are there.
inline constexpr char const* words_for_present[]{"present",  "vorhanden", "présent",  "présents",
                                                 "presente", "presenti",  "presentes"};

/// Returns true if the word is in the table, with or without parentheses and a colon, in capitals or small letters.
template <std::size_t N>
[[nodiscard]] bool is_row_in_remark(std::string_view word, char const* const (&table)[N]) noexcept {
  if (word.starts_with('(')) word.remove_prefix(1);
  while (word.ends_with(')') || word.ends_with(':')) word.remove_suffix(1);
  return is_row(word, table);
}
/// Returns true for a word that joins the leaves before it and after it.
[[nodiscard]] inline bool is_joining_word(std::string_view word) noexcept {
  return joins_leaves(word) || is_row_in_remark(word, joining_words_of_lists);
}
/// Returns true for a word that may come between a leaf and its state.
[[nodiscard]] inline bool is_word_before_state(std::string_view word) noexcept {
  return is_row_in_remark(word, words_before_state);
}
/// Returns true for a word after which a state is said of several leaves.
[[nodiscard]] inline bool is_word_before_state_of_all(std::string_view word) noexcept {
  return is_row_in_remark(word, words_before_state_of_all);
}
/// Returns true for a word that may come before the leaves that are wanting.
[[nodiscard]] inline bool is_word_before_leaves(std::string_view word) noexcept {
  return is_row_in_remark(word, words_before_wanting);
}
/// Returns true for a word that only says that a copy is described.
[[nodiscard]] inline bool is_word_for_copy(std::string_view word) noexcept {
  while (word.ends_with(':') || word.ends_with('.')) word.remove_suffix(1);
  return is_row_in_remark(word, words_for_copy);
}

} // namespace detail
} // namespace v0
} // namespace bifolium
