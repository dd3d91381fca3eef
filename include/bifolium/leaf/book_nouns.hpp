// SPDX-License-Identifier: MIT
/// Words for what a book consists of: leaves, gatherings, and what is printed on leaves. The same word stands in formulas, in
/// extents and in lists of the leaves of a copy, so that each kind has one table, with the places where the word is known: a
/// letter such as h. counts leaves after a number, but may be the name of a gathering elsewhere. (common practice, no source)
#pragma once

#include <bifolium/core/ascii.hpp>

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Where a word for a thing is known.
enum class NounUse : std::uint8_t {
  extent = 1,  ///< after a number that states how many leaves a book has: 80 ll.
  note = 2,    ///< in the words of a formula: dopo H2 una carta
  in_list = 4, ///< in a list of the leaves of a copy: manca la carta A1
};
/// A word, its language and where it is known.
struct NounRow {
  char const* word;
  char const* language; ///< two letters; several, for an abbreviation of several languages
  std::uint8_t uses;    ///< the bits of NounUse
};
/// Words for leaves. Those of extents are written with the capitals that they have here: bl. is "blank".
inline constexpr NounRow leaf_noun_rows[]{
    {"leaf", "en", 7},     {"leaves", "en", 7},  {"lvs", "en", 1},      {"folio", "en it", 4}, {"folios", "en es", 5},
    {"l", "en", 1},        {"ll", "en", 5},      {"f", "en fr", 5},     {"ff", "en fr", 5},    {"fol", "en de", 5},
    {"fols", "en", 5},     {"Bl", "de", 5},      {"Bll", "de", 5},      {"Blatt", "de", 7},    {"Blätter", "de", 4},
    {"Blättern", "de", 4}, {"feuille", "fr", 6}, {"feuilles", "fr", 6}, {"feuillet", "fr", 6}, {"feuillets", "fr", 7},
    {"c", "it", 4},        {"cc", "it", 5},      {"carta", "it", 6},    {"carte", "it", 7},    {"h", "es", 5},
    {"hh", "es", 4},       {"hoja", "es", 6},    {"hojas", "es", 7},    {"blad", "nl", 6},     {"bladen", "nl", 6},
    {"folium", "la", 6},   {"folia", "la", 6},   {"foliis", "la", 4},   {"folha", "pt", 4},    {"folhas", "pt", 4}};
/// Words for gatherings, and in lists of leaves for pairs of leaves.
inline constexpr NounRow gathering_noun_rows[]{
    {"gathering", "en", 6},    {"gatherings", "en", 6},    {"quire", "en", 6},     {"quires", "en", 6},
    {"signature", "en fr", 6}, {"signatures", "en fr", 6}, {"sig", "en", 6},       {"sigs", "en", 6},
    {"bifolium", "en", 4},     {"bifolia", "en", 4},       {"Lage", "de", 6},      {"Lagen", "de", 6},
    {"Bogen", "de", 4},        {"Doppelblatt", "de", 4},   {"cahier", "fr", 6},    {"cahiers", "fr", 6},
    {"cah", "fr", 4},          {"fascicolo", "it", 6},     {"fascicoli", "it", 6}, {"fasc", "it", 4},
    {"fascc", "it", 4},        {"cuaderno", "es", 6},      {"cuadernos", "es", 6}, {"cuad", "es", 4},
    {"katern", "nl", 4},       {"katernen", "nl", 4},      {"quaternio", "la", 4}, {"quaterniones", "la", 4},
    {"caderno", "pt", 4},      {"cadernos", "pt", 4}};
/// Words for what is printed on leaves of the text.
inline constexpr NounRow content_noun_rows[]{
    {"title", "en", 6},         {"titles", "en", 2},         {"half-title", "en", 4}, {"title-page", "en", 4},
    {"title-leaf", "en", 4},    {"half", "en", 4},           {"t.p", "en", 4},        {"frontispiece", "en fr", 4},
    {"dedication", "en", 6},    {"preface", "en fr", 6},     {"prelims", "en", 2},    {"preliminaries", "en", 2},
    {"privilege", "en", 6},     {"license", "en", 4},        {"licence", "en", 4},    {"imprimatur", "la", 4},
    {"imprint", "en", 4},       {"colophon", "en fr", 4},    {"contents", "en", 6},   {"index", "en la", 6},
    {"register", "en de", 2},   {"table", "en fr", 2},       {"tables", "en fr", 2},  {"errata", "la", 6},
    {"corrigenda", "la", 2},    {"subscribers", "en", 2},    {"verse", "en", 2},      {"verses", "en", 2},
    {"advertisement", "en", 6}, {"advertisements", "en", 6}, {"adverts", "en", 2},    {"ads", "en", 2}};

/// Returns true if a word of the table, in capitals or small letters, is known in this place. Most words begin otherwise.
template <std::size_t N>
[[nodiscard]] constexpr bool is_noun(std::string_view word, NounRow const (&table)[N], NounUse use) noexcept {
  if (word.empty()) return false;
  auto const first = small_letter(word[0]), second = word.size() > 1 ? small_letter(word[1]) : '\0';
  for (auto const& row : table)
    if (small_letter(row.word[0]) == first && small_letter(row.word[1]) == second &&
        (row.uses & static_cast<unsigned>(use)) != 0 && equal_in_any_case(word, row.word))
      return true;
  return false;
}
} // namespace detail

/// Returns true for a word with which catalogues count the leaves of a book, after a number: 80 leaves, 80 ll., 80 Bl.
[[nodiscard]] constexpr bool is_unit_of_leaves(std::string_view word) noexcept {
  if (word.empty()) return false;
  switch (word[0]) { // most words are marks, which begin otherwise
  case 'l':
  case 'f':
  case 'B':
  case 'c':
  case 'h':
    break;
  default:
    return false;
  }
  for (auto const& row : detail::leaf_noun_rows)
    if (row.word[0] == word[0] && (row.uses & static_cast<unsigned>(detail::NounUse::extent)) != 0 && word == row.word)
      return true;
  return false;
}

} // namespace v0
} // namespace bifolium
