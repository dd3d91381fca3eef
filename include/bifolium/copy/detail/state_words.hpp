// SPDX-License-Identifier: MIT
/// The words for the state of a leaf in a copy (common practice, no source). A leaf that is torn, or lacks a corner, is
/// there; a facsimile is not the leaf, and what was written by hand or typed does not even show what the leaf looked like.
/// So each of these has a table of its own.
#pragma once

#include <bifolium/copy/detail/words_before_leaves.hpp>
#include <bifolium/copy/leaf_in_copy.hpp>
#include <bifolium/leaf/leaf_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Words that say that a leaf is not whole, or that its paper was mended.
inline constexpr char const* damage_words[]{"damaged", "torn",   "mutilated", "repaired", "cropped", "stained",
                                            "shaved",  "wormed", "holed",     "soiled",   "trimmed", "remargined"};
/// Words for a picture of a leaf, which shows what it looked like.
inline constexpr char const* facsimile_words[]{
    "facsimile",       "facsimiles",    "facs",      "photographic", "photostatic", "photostat",  "photocopy",
    "xerox",           "Faksimile",     "Fotokopie", "Kopie",        "fac-simile",  "fac-similé", "facsimilé",
    "photocopie",      "fotocopia",     "facsímil",  "facsímile",    "facsimil",    "fotokopie",  "fac-simile\u0301",
    "facsimile\u0301", "facsi\u0301mil"};
/// Words for a text that was written by hand, in the place of a leaf.
inline constexpr char const* manuscript_words[]{
    "manuscript", "ms",        "mss",        "handwritten", "Handschrift", "handschriftlich", "handschr",
    "hschr",      "manuscrit", "manuscrite", "manoscritto", "manoscritta", "manuscrito",      "manuscrita"};
/// Words for a text that was typed.
inline constexpr char const* typescript_words[]{"typescript", "typewritten", "maschinenschriftlich"};
/// Parts of a leaf that can be wanting.
inline constexpr char const* leaf_part_words[]{"corner",    "corners",   "margin",   "margins",   "edge",   "edges",
                                               "fore-edge", "text",      "headline", "headlines", "strip",  "Ecke",
                                               "Rand",      "catchword", "coin",     "angolo",    "margine"};

/// Returns what stands in the place of a leaf as a word says: A1 supplied in manuscript, f. A1 en fac-similé.
[[nodiscard]] inline std::optional<LeafInCopy> substitute_of(std::string_view word) noexcept {
  if (is_row(word, facsimile_words)) return LeafInCopy::facsimile;
  if (is_row(word, manuscript_words)) return LeafInCopy::manuscript;
  if (is_row(word, typescript_words)) return LeafInCopy::typescript;
  return std::nullopt;
}
/// Reads a word for the leaves before it, with or without parentheses: facsimile, (facsimile).
[[nodiscard]] inline std::optional<LeafInCopy> state_of(std::string_view word) {
  if (word.starts_with('(')) word.remove_prefix(1);
  while (word.ends_with(')') || word.ends_with('.') || word.ends_with('?')) word.remove_suffix(1);
  if (auto const substitute = substitute_of(word)) return substitute;
  if (is_blank_word(word)) return LeafInCopy::blank;
  for (auto const state : {LeafInCopy::mounted, LeafInCopy::supplied})
    if (equal_in_any_case(word, to_words(state))) return state;
  if (is_row(word, damage_words)) return LeafInCopy::damaged;
  return std::nullopt;
}
/// Takes words that say that a part of a leaf is wanting: A1 lacks lower corner. The leaf is there.
[[nodiscard]] inline bool take_damage_phrase(TextCursor& cursor) noexcept {
  auto c = cursor;
  if (!absence_word(c.take_until(is_between_items)).before) return false;
  bool part = false;
  for (int words = 0; words < 6; ++words) {
    auto next = c;
    if (!next.take_blanks() || next.at_end()) break;
    auto word = next.take_until(is_between_items);
    bool const closes = word.ends_with(')');
    while (word.ends_with('.') || word.ends_with(')')) word.remove_suffix(1);
    if (word.empty() || word.find_first_of("0123456789(") != word.npos) return false;
    part = is_row(word, leaf_part_words);
    c = next;
    if (closes) c.go_to(c.at() - 1);
    if (closes || c.at_end() || c.peek() == ',' || c.peek() == ';') break;
  }
  if (!part) return false;
  cursor = c;
  return true;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
