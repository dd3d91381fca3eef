// SPDX-License-Identifier: MIT
/// Says how single pieces of evidence speak for a format. A cataloguer who is told only the answer cannot check it; one who is
/// told what the format lets expect, and how strongly each observation agrees, can look again at the one that does not. Evidence
/// is given as a reason only if it counts (a factor of three to one or more).
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/words.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// The weight from which evidence speaks strongly: the natural logarithm of twenty to one.
inline constexpr double strong_weight = 2.995732273553991;

inline void append_list(std::string& text, std::string_view word, std::string_view last) {
  if (!text.empty()) text.append(last);
  text.append(word);
}
inline std::string rounded(millimetres length) { return std::to_string(static_cast<int>(length.count() + 0.5)); }
inline std::string sides(Sheet<millimetres> sheet) {
  return rounded(sheet.short_side()).append(" x ").append(rounded(sheet.long_side())).append(" mm");
}

/// Lists the places of a single mark of the sheet in leaves of this kind.
inline std::string mark_places(LeafShape const& kind) {
  std::string places;
  for (auto const& one : bifolium::words_of<MarkPlace>())
    if (one.value != MarkPlace::absent && one.value != MarkPlace::unknown && kind.mark(one.value) > 0.001)
      append_list(places, one.word, " or ");
  return places;
}
/// Lists the numbers of leaves in the gatherings of schemes of this kind.
inline std::string gatherings_made(LeafShape const& kind) {
  std::string sizes;
  for (unsigned k = 1; k < 32; ++k)
    if ((kind.gatherings >> k & 1U) != 0) append_list(sizes, std::to_string(k), ", ");
  return sizes;
}

} // namespace detail

/// Describes the evidence of one kind that the format of a candidate predicts, in a few words: "horizontal", "gutter,
/// in 50 leaves of a hundred". The function allocates memory.
inline std::string predicted(FormatCandidate const& candidate, EvidenceKind of) {
  auto const& kind = *candidate.kind;
  auto const share = [](double part) { return std::to_string(static_cast<int>(part * 100 + 0.5)); };
  std::string text;
  switch (of) {
  case EvidenceKind::size:
    text.append(detail::rounded(candidate.uncut.height)).append(" x ").append(detail::rounded(candidate.uncut.width));
    return text.append(" mm uncut");
  case EvidenceKind::chain_lines:
    return text.append(to_words(kind.chain_lines));
  case EvidenceKind::watermark:
    text.append(detail::mark_places(kind)).append(", in ").append(share(1 - kind.mark(MarkPlace::absent)));
    return text.append(" leaves of a hundred");
  case EvidenceKind::gathering:
    text.append(detail::gatherings_made(kind));
    return text.append(text == "1" ? " leaf" : " leaves").append(" by its schemes");
  case EvidenceKind::type_page:
    text.append("about ").append(detail::rounded(candidate.uncut.height * real::exp(usual_parameters.type_of_uncut)));
    return text.append(" mm");
  case EvidenceKind::year:
    return text;
  default: // whatever else a leaf shows follows from the fold
    return text.append("as ").append(candidate.scheme.id()).append(" folds");
  }
}

/// Returns the reasons for which there is evidence, for or against, the strongest first. The function allocates memory.
inline std::vector<Reason> reasons_by_strength(FormatCandidate const& candidate) {
  std::vector<Reason> seen;
  for (auto const& reason : candidate.reasons) {
    if (!reason.seen || reason.kind == EvidenceKind::year) continue;
    auto at = seen.end();
    while (at != seen.begin() && real::abs((at - 1)->weight) < real::abs(reason.weight)) --at;
    seen.insert(at, reason);
  }
  return seen;
}
/// Describes a reason by its weight against all other formats: "for it, strongly" from twenty to one, "for it" from three to
/// one, otherwise "of little weight".
constexpr std::string_view to_words(Reason const& reason) {
  auto const strength = real::abs(reason.weight);
  if (strength < weight_that_counts) return "of little weight";
  if (reason.weight > 0) return strength < detail::strong_weight ? "for it" : "for it, strongly";
  return strength < detail::strong_weight ? "against it" : "against it, strongly";
}

namespace detail {

/// Describes a reason. What weighs little against all formats may still decide between the first two, where other evidence
/// has excluded the rest: "for it rather than octavo".
inline std::string reason_words(Reason const& reason, Inference const& inference) {
  std::string text{to_words(reason)};
  if (inference.candidates.size() < 2 || real::abs(reason.weight) >= weight_that_counts) return text;
  auto const& second = inference.candidates[1];
  auto const favour = reason.weight - second.reason(reason.kind).weight;
  if (real::abs(favour) < weight_that_counts) return text;
  std::string const next{second.format.name()};
  return favour > 0 ? "for it rather than " + next : "for " + next + " rather than it";
}

} // namespace detail

} // namespace v0
} // namespace bifolium
