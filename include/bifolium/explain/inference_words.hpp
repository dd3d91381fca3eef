// SPDX-License-Identifier: MIT
/// The words of the evidence, both ways: as records and tables write them, and as a cataloguer wants the answer - a line
/// fit for the record, then why, then what would change it.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/detail/seen_words.hpp>
#include <bifolium/evidence/infer.hpp>

#include <string>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The kind of evidence, as it stands before a reason.
constexpr char const* to_words(EvidenceKind sign) noexcept {
  switch (sign) {
  case EvidenceKind::size:
    return "size";
  case EvidenceKind::chain_lines:
    return "chain lines";
  case EvidenceKind::watermark:
    return "place of the watermark";
  case EvidenceKind::gathering:
    return "gathering";
  case EvidenceKind::type_page:
    return "type page";
  case EvidenceKind::edges:
    return "edges";
  case EvidenceKind::point_hole:
    return "point-holes";
  case EvidenceKind::leaves:
    return "marks and chain lines over the gathering";
  }
  return "";
}
/// The rung of the ladder from "not determined" to "established".
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

/// Two decimals, never rounded up to certainty: 0.98, 1.00 only from .995. pre: 0 to 1, as near as sums of doubles come.
inline std::string hundredths(double probability) {
  if (!(probability > -1e-9 && probability < 1 + 1e-9)) broken("a probability is from 0 to 1");
  auto const n = static_cast<int>(probability * 100 + 0.5);
  std::string text = n >= 100 ? "1.0" : n < 10 ? "0.0" : "0.";
  return text.append(std::to_string(n >= 100 ? 0 : n));
}

namespace detail {

inline void append_list(std::string& text, std::string_view word, std::string_view last) {
  if (!text.empty()) text.append(last);
  text.append(word);
}
inline std::string rounded(millimetres length) { return std::to_string(static_cast<int>(length.count() + 0.5)); }

/// The places where a single mark of the sheet comes to be in leaves of this kind.
inline std::string mark_places(LeafShape const& kind) {
  std::string places;
  for (auto const& one : mark_words)
    if (one.value != MarkPlace::absent && one.value != MarkPlace::unknown && kind.mark(one.value) > 0.001)
      append_list(places, one.word, " or ");
  return places;
}
/// The number of leaves that schemes of this kind gather.
inline std::string gatherings_made(LeafShape const& kind) {
  std::string sizes;
  for (unsigned k = 1; k < 32; ++k)
    if ((kind.gatherings >> k & 1U) != 0) append_list(sizes, std::to_string(k), ", ");
  return sizes;
}

} // namespace detail

/// What the format of a candidate lets one expect of a sign, in a few words: "horizontal", "gutter, in one leaf of two".
/// Allocates.
inline std::string predicted(FormatCandidate const& candidate, EvidenceKind sign) {
  auto const& kind = *candidate.kind;
  auto const share = [](double part) { return std::to_string(static_cast<int>(part * 100 + 0.5)); };
  std::string text;
  switch (sign) {
  case EvidenceKind::size:
    text.append(detail::rounded(candidate.uncut.height)).append(" x ").append(detail::rounded(candidate.uncut.width));
    return text.append(" mm uncut");
  case EvidenceKind::chain_lines:
    return text.append(to_words(kind.chain_lines));
  case EvidenceKind::watermark:
    text.append(detail::mark_places(kind)).append(", in ").append(share(1 - kind.mark(MarkPlace::absent)));
    return text.append(" leaves of a hundred");
  case EvidenceKind::gathering:
    return text.append(detail::gatherings_made(kind)).append(" leaves by its schemes");
  case EvidenceKind::type_page:
    text.append("about ").append(
        detail::rounded(candidate.uncut.height * detail::real::exp(fitted_parameters.type_of_uncut)));
    return text.append(" mm");
  case EvidenceKind::edges:
  case EvidenceKind::point_hole:
  case EvidenceKind::leaves:
    return text.append("as ").append(candidate.scheme.id()).append(" folds");
  }
  return text;
}

namespace detail {

inline std::array<Reason, sign_count> by_strength(FormatCandidate const& candidate) {
  auto order = candidate.reasons;
  for (std::size_t i = 1; i < order.size(); ++i)
    for (auto k = i; k > 0 && real::abs(order[k].weight) > real::abs(order[k - 1].weight); --k) {
      auto const moved = order[k];
      order[k] = order[k - 1];
      order[k - 1] = moved;
    }
  return order;
}
inline void append_verdict(std::string& text, Reason const& reason) {
  auto const strength = real::abs(reason.weight);
  text.append(to_words(reason.sign));
  text.append(strength < 0.2 ? " tells nothing" : reason.agrees ? " for it" : " against it");
  if (strength >= 0.2) text.append(strength < 1.1 ? ", weakly" : strength < 3 ? "" : ", strongly");
}

} // namespace detail

/// Why: each sign seen, for or against the first candidate and how strongly, in the order of strength; of a mixture,
/// the chain lines of either direction. Allocates.
inline std::string why(Inference const& inference) {
  auto const& first = inference.candidates.front();
  std::string text;
  if (inference.mixed) text.append("chain lines run both ways: no one format makes both on one paper");
  for (auto const& reason : detail::by_strength(first)) {
    if (!reason.seen || (inference.mixed && reason.sign == EvidenceKind::chain_lines)) continue;
    if (!text.empty()) text.append("; ");
    detail::append_verdict(text, reason);
  }
  return text.empty() ? "nothing was seen: only how common each format was" : text;
}

/// The formats of the answer as a record states them: "4°", "2° and 4°". Allocates.
inline std::string format_statement(Inference const& inference) {
  std::string text;
  auto const add = [&](FormatCandidate const& candidate) { text.append(candidate.format.symbol().view()); };
  if (!inference.mixed) return add(inference.candidates.front()), text;
  auto const &vertical = inference.mixed->vertical, &horizontal = inference.mixed->horizontal;
  bool const vertical_first = vertical.format.leaves_to_sheet() < horizontal.format.leaves_to_sheet();
  add(vertical_first ? vertical : horizontal);
  text.append(" and ");
  add(vertical_first ? horizontal : vertical);
  return text;
}

/// The answer as a cataloguer wants it, a few lines. Allocates.
inline std::string cataloguer_words(Inference const& inference) {
  auto const& first = inference.candidates.front();
  auto const& second = inference.candidates[1];
  std::string text;
  auto const in_brackets = [&](double probability) { text.append(" (").append(hundredths(probability)).append(")"); };
  if (inference.mixed) {
    auto const& mixed = *inference.mixed;
    text.append(format_statement(inference)).append(", ");
    text.append(inference.certainty == Certainty::not_determined ? "not determined" : to_words(inference.certainty));
    in_brackets(mixed.probability);
    text.append(": ").append(mixed.vertical.format.name()).append(" where the chain lines are vertical, ");
    text.append(mixed.horizontal.format.name()).append(" where they are horizontal; or all of it ");
    text.append(first.format.name()).append(" in imposition, part of it on sheets cut in two");
  } else if (inference.certainty == Certainty::not_determined) {
    text.append("Format not determined: ").append(first.format.name());
    in_brackets(first.probability);
    text.append(" or ").append(second.format.name());
    in_brackets(second.probability);
  } else {
    text.append(first.format.name()).append(", ").append(to_words(inference.certainty));
    in_brackets(first.probability);
    text.append("; next ").append(second.format.name());
    in_brackets(second.probability);
  }
  text.append(".\nSeen: ").append(why(inference)).append(".\n");
  bool expected = false;
  for (auto const& reason : detail::by_strength(first)) {
    if (!reason.seen || inference.mixed) continue;
    text.append(expected ? "; " : "Expected: ").append(to_words(reason.sign)).append(" ");
    text.append(predicted(first, reason.sign)).append(" (in ").append(second.format.name()).append(" ");
    text.append(predicted(second, reason.sign)).append(")");
    expected = true;
  }
  if (expected) text.append(".\n");
  text.append("Inferred: a sheet of ").append(first.sheet_name).append(", ");
  text.append(detail::rounded(first.sheet.short_side())).append(" x ").append(detail::rounded(first.sheet.long_side()));
  text.append(" mm; uncut the leaf was ").append(detail::rounded(first.uncut.height)).append(" x ");
  text.append(detail::rounded(first.uncut.width)).append(" mm.\nAssumed: ").append(inference.priors).append(".\n");
  if (inference.look_next) text.append("Look next at: ").append(to_words(*inference.look_next)).append(".\n");
  return text;
}

} // namespace v0
} // namespace bifolium
