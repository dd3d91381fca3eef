// SPDX-License-Identifier: MIT
/// The words in which tables and records write what was seen.
#pragma once

#include <bifolium/evidence/seen.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

namespace detail {
template <class T> struct Word {
  std::string_view word;
  T value;
};
using namespace std::string_view_literals;
inline constexpr Word<Material> material_words[]{{"laid"sv, Material::laid},
                                                 {"wove"sv, Material::wove},
                                                 {"vellum"sv, Material::vellum},
                                                 {"unknown"sv, Material::unknown}};
inline constexpr Word<ChainLines> chain_line_words[]{{"vertical"sv, ChainLines::vertical},
                                                     {"horizontal"sv, ChainLines::horizontal},
                                                     {"both"sv, ChainLines::both},
                                                     {"unknown"sv, ChainLines::unknown}};
inline constexpr Word<MarkPlace> mark_words[]{{"centre"sv, MarkPlace::centre},
                                              {"gutter"sv, MarkPlace::gutter},
                                              {"head-of-gutter"sv, MarkPlace::head_of_gutter},
                                              {"fore-edge"sv, MarkPlace::fore_edge},
                                              {"head-or-tail-edge"sv, MarkPlace::head_or_tail_edge},
                                              {"corner"sv, MarkPlace::corner},
                                              {"absent"sv, MarkPlace::absent},
                                              {"unknown"sv, MarkPlace::unknown}};
inline constexpr Word<LeafState> state_words[]{{"uncut"sv, LeafState::uncut},     {"trimmed"sv, LeafState::trimmed},
                                               {"rebound"sv, LeafState::rebound}, {"cropped"sv, LeafState::cropped},
                                               {"inlaid"sv, LeafState::inlaid},   {"unknown"sv, LeafState::unknown}};
inline constexpr Word<EdgeSeen> edge_words[]{{"bolt"sv, EdgeSeen::bolt},
                                             {"deckle"sv, EdgeSeen::deckle},
                                             {"tranchefile"sv, EdgeSeen::tranchefile},
                                             {"unknown"sv, EdgeSeen::unknown}};
inline constexpr Word<HolePlace> hole_words[]{
    {"spine-fold"sv, HolePlace::spine_fold}, {"head"sv, HolePlace::head},     {"tail"sv, HolePlace::tail},
    {"fore-edge"sv, HolePlace::fore_edge},   {"inside"sv, HolePlace::inside}, {"unknown"sv, HolePlace::unknown}};
template <class T, std::size_t N>
constexpr std::optional<T> find_word(Word<T> const (&words)[N], std::string_view text) {
  for (auto const& one : words)
    if (one.word == text) return one.value;
  return std::nullopt;
}
template <class T, std::size_t N> constexpr std::string_view word_for(Word<T> const (&words)[N], T value) {
  for (auto const& one : words)
    if (one.value == value) return one.word;
  return {};
}
} // namespace detail

// The words of tables and records; nothing when it is none of them.

/// Reads "laid", "wove", "vellum".
constexpr std::optional<Material> material_from(std::string_view word) {
  return detail::find_word(detail::material_words, word);
}
/// Reads which way the chain lines run.
constexpr std::optional<ChainLines> chain_lines_from(std::string_view word) {
  return detail::find_word(detail::chain_line_words, word);
}
/// Reads where in the leaf a mark is.
constexpr std::optional<MarkPlace> mark_place_from(std::string_view word) {
  return detail::find_word(detail::mark_words, word);
}
/// Reads what the binder left.
constexpr std::optional<LeafState> leaf_state_from(std::string_view word) {
  return detail::find_word(detail::state_words, word);
}
/// Reads what an edge of the leaf is.
constexpr std::optional<EdgeSeen> edge_seen_from(std::string_view word) {
  return detail::find_word(detail::edge_words, word);
}
/// Reads where the hole of a press point is.
constexpr std::optional<HolePlace> hole_place_from(std::string_view word) {
  return detail::find_word(detail::hole_words, word);
}
/// The word that is read back as this.
constexpr std::string_view to_words(ChainLines lines) { return detail::word_for(detail::chain_line_words, lines); }
/// The word that is read back as this.
constexpr std::string_view to_words(MarkPlace place) { return detail::word_for(detail::mark_words, place); }

} // namespace v0
} // namespace bifolium
