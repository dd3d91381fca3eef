// SPDX-License-Identifier: MIT
/// Explains why a format is first in a ranking, in plain English: the evidence for and against it, what its leaf would
/// show, what separates it from the next format, and what to look at. The evidence that leaves of a format show is not
/// stored: the scheme is folded and its leaves are examined.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/words.hpp>
#include <bifolium/explain/explain_scheme.hpp>
#include <bifolium/explain/inference_words.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Returns the most frequent place of the watermark in the leaves that have it, for an ordinary mould.
inline MarkPlace usual_place(Fold<> const& fold) {
  std::array<int, 8> met{};
  for (int g = 0; g < fold.gatherings(); ++g)
    for (int k = 1; k <= fold.gathering(g).leaves(); ++k)
      for (auto lie : {Lie::as_given, Lie::end_for_end})
        if (auto const at = shows(fold, {g, fold.gathering(g).leaf(k)}).watermark_lying(lie))
          ++met[static_cast<std::size_t>(place_of(*at))];
  std::size_t most = 0;
  for (std::size_t i = 1; i < met.size(); ++i) most = met[i] > met[most] ? i : most;
  return static_cast<MarkPlace>(most);
}
inline std::string chains_words(FormatCandidate const& candidate, Fold<> const& fold) {
  bool const unfolded = candidate.kind->leaves == 1; // no fold says which way up a sheet is read
  auto const chains = unfolded ? candidate.kind->chain_lines : shows(fold, {0, fold.gathering(0).leaf(1)}).chain_lines;
  return chains == ChainLines::vertical ? "vertical" : chains == ChainLines::horizontal ? "horizontal" : "not told";
}
/// Describes what a leaf of the format shows of its paper. Other evidence needs numbers and is left out.
inline std::string shown_words(EvidenceKind kind, FormatCandidate const& candidate, Fold<> const& fold) {
  if (kind == EvidenceKind::chain_lines) return "chain lines " + chains_words(candidate, fold);
  if (kind == EvidenceKind::watermark) return std::string{"the mark "} + where_words(usual_place(fold));
  return {};
}
/// Lists the evidence for a candidate, or against it, that counts, the strongest first.
inline std::string evidence_for(FormatCandidate const& candidate, bool speaks_for) {
  std::string text;
  for (auto const& reason : reasons_by_strength(candidate))
    if ((reason.weight > 0) == speaks_for && real::abs(reason.weight) >= weight_that_counts)
      text.append(text.empty() ? "" : ", ")
          .append(to_words(reason.kind))
          .append(real::abs(reason.weight) < strong_weight ? "" : " (strongly)");
  return text;
}

} // namespace detail

/// Explains a ranking, one fact a line. `years` and `place` are used to find the name of the sheet. The function
/// allocates memory. Precondition: the ranking has at least two candidates.
[[nodiscard]] inline std::string explain_ranking(Inference const& inference, std::optional<YearRange> years = {},
                                                 Region place = Region::anywhere) {
  if (inference.candidates.size() < 2) broken("a ranking must have at least two formats to be explained");
  auto const &first = inference.candidates[0], &second = inference.candidates[1];
  auto const name = std::string{first.format.name()}, next = std::string{second.format.name()};
  auto const fold_first = *fold(first.scheme.scheme()), fold_next = *fold(second.scheme.scheme());

  std::string text = "First: " + name + " (" + hundredths(first.probability) + "), " + to_words(inference.certainty) +
                     "; then " + next + " (" + hundredths(second.probability) + "); none of all these (" +
                     hundredths(inference.none_of_these) + ").\n";
  auto const speaks_for = detail::evidence_for(first, true), against = detail::evidence_for(first, false);
  char const* const nothing_for =
      reasons_by_strength(first).empty() ? "only how common it was" : "no evidence that counts by itself";
  text += "For " + name + ": " + (speaks_for.empty() ? nothing_for : speaks_for) + ".\n";
  text += "Against it: " + (against.empty() ? "no evidence that counts" : against) + ".\n";
  text += "A leaf of it, uncut, from " + paper_words(first, years, place) + ": " + detail::rounded(first.uncut.height) +
          " x " + detail::rounded(first.uncut.width) + " mm, chain lines " + detail::chains_words(first, fold_first) +
          ", the mark " + detail::where_words(detail::usual_place(fold_first)) + ".\n";

  // The evidence that favours the first candidate over the second most.
  Reason const* parting = nullptr;
  double most = weight_that_counts;
  for (auto const& reason : first.reasons) {
    auto const favour = reason.weight - second.reason(reason.kind).weight;
    if (reason.seen && favour > most) most = favour, parting = &reason;
  }
  if (parting != nullptr) {
    text += "What separates it from " + next + " most: " + std::string{to_words(parting->kind)};
    auto const there = detail::shown_words(parting->kind, second, fold_next),
               here = detail::shown_words(parting->kind, first, fold_first);
    if (!there.empty() && here != there) text += "; " + next + " would have " + there;
    text += ".\n";
  } else {
    text += "No evidence separates it from " + next + ".\n";
  }
  if (!inference.look_next) return text += "No further evidence would help much.\n";
  auto const here = detail::shown_words(*inference.look_next, first, fold_first),
             there = detail::shown_words(*inference.look_next, second, fold_next);
  text += "Look next at: " + std::string{to_words(*inference.look_next)};
  if (here != there) text += "; " + name + " has " + here + ", " + next + " " + there;
  return text += ".\n";
}

} // namespace v0
} // namespace bifolium
