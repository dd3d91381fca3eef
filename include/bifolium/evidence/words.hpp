// SPDX-License-Identifier: MIT
/// The words of the evidence, both ways: as records and tables write them, and as a cataloguer wants the answer - a line
/// fit for the record, then why, then what would change it.
#pragma once

#include <bifolium/evidence/infer.hpp>

#include <string>
#include <string_view>

namespace bifolium {
inline namespace v0 {

constexpr char const* to_words(Sign sign) noexcept {
  switch (sign) {
  case Sign::size:
    return "size";
  case Sign::chain_lines:
    return "chain lines";
  case Sign::watermark:
    return "place of the watermark";
  case Sign::gathering:
    return "gathering";
  case Sign::type_page:
    return "type page";
  }
  return "";
}
constexpr char const* to_words(Certainty certainty) noexcept {
  switch (certainty) {
  case Certainty::not_determined:
    return "not determined";
  case Certainty::probable:
    return "probable";
  case Certainty::very_probable:
    return "very probable";
  case Certainty::established:
    return "established";
  }
  return "";
}

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

/// The words of tables and records; nothing when it is none of them.
constexpr std::optional<Material> material_from(std::string_view word) {
  return detail::find_word(detail::material_words, word);
}
constexpr std::optional<ChainLines> chain_lines_from(std::string_view word) {
  return detail::find_word(detail::chain_line_words, word);
}
constexpr std::optional<MarkPlace> mark_place_from(std::string_view word) {
  return detail::find_word(detail::mark_words, word);
}
constexpr std::optional<LeafState> leaf_state_from(std::string_view word) {
  return detail::find_word(detail::state_words, word);
}

/// Two decimals, never rounded up to certainty: 0.98, 1.00 only from .995.
inline std::string hundredths(double probability) {
  auto const n = static_cast<int>(probability * 100 + 0.5);
  std::string text = n >= 100 ? "1.0" : n < 10 ? "0.0" : "0.";
  return text.append(std::to_string(n >= 100 ? 0 : n));
}

/// Why: each sign seen, for or against the first candidate and how strongly, in the order of strength. Allocates.
inline std::string why(Inference const& inference) {
  auto const& first = inference.candidates.front();
  auto order = first.reasons;
  for (std::size_t i = 1; i < order.size(); ++i)
    for (auto k = i; k > 0 && std::abs(order[k].weight) > std::abs(order[k - 1].weight); --k) {
      auto const moved = order[k];
      order[k] = order[k - 1];
      order[k - 1] = moved;
    }
  std::string text;
  for (auto const& reason : order) {
    if (!reason.seen) continue;
    auto const strength = std::abs(reason.weight);
    text.append(text.empty() ? "" : "; ").append(to_words(reason.sign));
    text.append(strength < 0.2 ? " tells nothing" : reason.agrees ? " for it" : " against it");
    if (strength >= 0.2) text.append(strength < 1.1 ? ", weakly" : strength < 3 ? "" : ", strongly");
  }
  return text.empty() ? "nothing was seen: only how common each format was" : text;
}

/// The answer as a cataloguer wants it, a few lines. Allocates.
inline std::string cataloguer_words(Inference const& inference) {
  auto const& first = inference.candidates.front();
  auto const& second = inference.candidates[1];
  std::string text;
  if (inference.certainty == Certainty::not_determined) {
    text.append("Format not determined: ")
        .append(first.format.name())
        .append(" (")
        .append(hundredths(first.probability));
    text.append(") or ").append(second.format.name()).append(" (").append(hundredths(second.probability)).append(")");
  } else {
    text.append(first.format.name()).append(", ").append(to_words(inference.certainty)).append(" (");
    text.append(hundredths(first.probability)).append("); next ").append(second.format.name()).append(" (");
    text.append(hundredths(second.probability)).append(")");
  }
  text.append(".\nSeen: ").append(why(inference)).append(".\nInferred: a sheet of ").append(first.sheet_name);
  auto const mm = [](millimetres length) { return std::to_string(static_cast<int>(length.count() + 0.5)); };
  text.append(", ").append(mm(first.sheet.short_side())).append(" x ").append(mm(first.sheet.long_side()));
  text.append(" mm; uncut the leaf was ").append(mm(first.uncut.height)).append(" x ").append(mm(first.uncut.width));
  text.append(" mm.\nAssumed: ").append(inference.priors).append(".\n");
  if (inference.look_next) text.append("Look next at: ").append(to_words(*inference.look_next)).append(".\n");
  return text;
}

} // namespace v0
} // namespace bifolium
