// SPDX-License-Identifier: MIT
/// Words that divide a list into leaves that are there and leaves that are wanting, in the languages of catalogues (common
/// practice, no source). Those that formulas use, too, are in leaf/leaf_words.hpp.
#pragma once

#include <bifolium/copy/detail/sides_of_leaves.hpp>
#include <bifolium/copy/detail/words_before_leaves.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words after which leaves are taken out of those before them.
inline constexpr char const* exception_words[]{"except",  "excepting", "save",  "but",     "außer",   "ausser", "sauf",
                                               "eccetto", "tranne",    "salvo", "excepto", "behalve", "praeter"};
/// Words before leaves that a copy lacks which formulas do not use: ohne, falto de.
inline constexpr char const* without_words[]{
    "ohne",   "sans",    "senza",    "sin",       "zonder",      "sine",         "falto",  "falta", "faltos",
    "priva",  "privo",   "caret",    "carens",    "desideratur", "desiderantur", "carece", "privé", "privée",
    "privés", "privées", "dépourvu", "dépourvue", "amputé",      "faltam",       "carecem"};
/// Phrases after which leaves are taken out of those before them.
inline constexpr char const* exception_phrases[]{
    "apart from",          "aside from",         "with the exception of", "with exception of", "mit Ausnahme von",
    "mit Ausnahme der",    "mit Ausnahme des",   "abgesehen von",         "bis auf",           "à l'exception de",
    "à l'exception des",   "à l'exception du",   "à l’exception de",      "à l’exception des", "à l’exception du",
    "ad eccezione di",     "ad eccezione delle", "ad eccezione della",    "a excepción de",    "con excepción de",
    "met uitzondering van"};
/// Words that a copy is not whole that formulas do not use.
inline constexpr char const* imperfect_words_of_copies[]{"def",         "defekte",     "mútilo",     "mútila",
                                                         "mutilé",      "mutilée",     "lückenhaft", "Bruchstück",
                                                         "Bruchstücke", "incompletas", "incompletos"};
/// Words for "of", after one that the copy is not whole: incomplet des feuillets A1 et A8.
inline constexpr char const* words_for_of[]{"des", "du", "de", "del", "delle", "della", "dei", "di"};
/// Words for "nothing".
inline constexpr char const* nothing_words[]{"nothing", "none"};
/// Words between the names of leaves and the word that says that they are wanting: A1 also lacking.
inline constexpr char const* words_beside_leaf[]{"also", "after", "before"};
/// Words with which leaves are named by their place: the final blank K8, all after B4.
inline constexpr char const* words_of_place[]{"first", "last", "final", "all", "everything"};

/// Returns true for a word after which leaves are taken out of those before it.
[[nodiscard]] inline bool is_exception(std::string_view word) noexcept { return is_row(word, exception_words); }
/// Returns true for a word beside the name of a leaf: the, final, blank, is.
[[nodiscard]] inline bool is_beside_leaf(std::string_view word) noexcept {
  if (word.starts_with('(') && word.ends_with(')')) word = word.substr(1, word.size() - 2);
  while (word.ends_with('.') || word.ends_with('?')) word.remove_suffix(1);
  bool const side = word.size() > 2 && side_word(word) != LeafSide::not_said;
  return side || is_blank_word(word) || (word.size() > 1 && is_linking_word(word)) || is_doubting_word(word) ||
         is_number_word(word) || is_row(word, words_beside_leaf);
}
/// Returns true for a word with which the name of a leaf may begin: the final blank K8.
[[nodiscard]] inline bool begins_name(std::string_view word) noexcept {
  return is_row(word, words_of_place) || begins_leaf(word);
}

} // namespace detail
} // namespace v0
} // namespace bifolium
