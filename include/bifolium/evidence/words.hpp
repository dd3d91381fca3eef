// SPDX-License-Identifier: MIT
/// The words of tables and records for evidence, and the names of the kinds of evidence.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/read_utf8.hpp>
#include <bifolium/core/text_place.hpp>
#include <bifolium/evidence/detail/evidence_rows.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A word and its meaning.
template <class T> struct Word {
  std::string_view word; ///< the word
  T value;               ///< the meaning
};

namespace detail {
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
inline constexpr Word<MeasureOf> measure_words[]{
    {"leaf"sv, MeasureOf::leaf}, {"binding"sv, MeasureOf::binding}, {"either"sv, MeasureOf::either}};
constexpr auto const& words_for(MeasureOf) { return measure_words; }
constexpr auto const& words_for(Material) { return material_words; }
constexpr auto const& words_for(ChainLines) { return chain_line_words; }
constexpr auto const& words_for(MarkPlace) { return mark_words; }
constexpr auto const& words_for(LeafState) { return state_words; }
constexpr auto const& words_for(EdgeSeen) { return edge_words; }
constexpr auto const& words_for(HolePlace) { return hole_words; }
/// The problem of a text that is none of the words. Its sentence lists them.
constexpr Problem problem_of(Material) { return Problem::no_such_material; }
constexpr Problem problem_of(ChainLines) { return Problem::no_such_chain_lines; }
constexpr Problem problem_of(MarkPlace) { return Problem::no_such_mark_place; }
constexpr Problem problem_of(LeafState) { return Problem::no_such_leaf_state; }
constexpr Problem problem_of(EdgeSeen) { return Problem::no_such_edge_seen; }
constexpr Problem problem_of(HolePlace) { return Problem::no_such_hole_place; }
constexpr Problem problem_of(MeasureOf) { return Problem::no_such_measure_of; }

/// Returns where a mark is, for a sentence.
constexpr char const* where_words(MarkPlace place) noexcept {
  switch (place) {
  case MarkPlace::centre:
    return "in the middle of the leaf";
  case MarkPlace::gutter:
    return "in the gutter";
  case MarkPlace::head_of_gutter:
    return "at the head of the gutter";
  case MarkPlace::fore_edge:
    return "at the fore-edge";
  case MarkPlace::head_or_tail_edge:
    return "at the head or tail";
  case MarkPlace::corner:
    return "at a corner of the fore-edge";
  case MarkPlace::absent:
  case MarkPlace::unknown:
    break;
  }
  return "in no leaf";
}

} // namespace detail

/// Returns the words for `Material`, `ChainLines`, `MarkPlace`, `LeafState`, `MeasureOf`, `EdgeSeen` or `HolePlace`,
/// one for each value, as an array of `Word<T>`.
template <class T> constexpr auto const& words_of() { return detail::words_for(T{}); }
/// Reads a word for one of these types, in capitals or small letters: read_word<Material>("Laid"). The error
/// lists the words: no_such_material, and so on for each type.
template <class T> constexpr Expected<T> read_word(std::string_view word) {
  for (auto const& one : detail::words_for(T{}))
    if (equal_in_any_case(word, one.word)) return one.value;
  return error_of_text(word, error_in(word, {0, word.size()}, detail::problem_of(T{})));
}
/// Returns the word for a value. Reading it gives the same value.
template <class T>
requires requires(T value) { detail::words_for(value); }
constexpr std::string_view to_words(T value) {
  for (auto const& one : detail::words_for(value))
    if (one.value == value) return one.word;
  return {};
}

/// Returns the identifier of a certainty, for programs: `very_probable`. A number that is not a certainty gives
/// "unknown".
constexpr std::string_view identifier(Certainty certainty) {
  constexpr char const* names[]{"not_determined", "one_of_two", "probable", "very_probable", "established"};
  auto const i = static_cast<std::size_t>(certainty);
  return i < std::size(names) ? names[i] : "unknown";
}
/// Returns the identifier of an origin of paper, for programs: `turned_mould`. A number that is not an origin gives
/// "unknown".
constexpr std::string_view identifier(PaperOrigin origin) {
  constexpr char const* names[]{"whole_sheet", "turned_mould", "cut_half", "machine_web"};
  auto const i = static_cast<std::size_t>(origin);
  return i < std::size(names) ? names[i] : "unknown";
}
/// Returns the name of a kind of evidence for a sentence: "place of the watermark".
constexpr std::string_view to_words(EvidenceKind kind) {
  return static_cast<std::size_t>(kind) < evidence_kinds ? detail::row_of(kind).name : "unknown";
}
/// Returns the identifier of a kind of evidence, for programs: "watermark". A number that is not a kind of evidence
/// gives "unknown".
constexpr std::string_view identifier(EvidenceKind kind) {
  return static_cast<std::size_t>(kind) < evidence_kinds ? detail::row_of(kind).identifier : "unknown";
}

} // namespace v0
} // namespace bifolium
