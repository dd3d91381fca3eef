// SPDX-License-Identifier: MIT
/// Infers the format of a leaf and its paper, with a probability and reasons. For each kind of leaf on each population
/// of sheets, the model computes the probability of the evidence: a sheet of this population, divided by geometry,
/// trimmed by a binder, with the chain lines, marks and gatherings that the fold gives, and with the known rate of
/// mistakes for each kind of evidence. So no evidence excludes a format. Bayes's rule turns the results into
/// probabilities, including one for none of these formats.
///
/// Size alone cannot separate a royal quarto from a chancery folio. The answer then has both, and `look_next` names the
/// evidence that would separate them.
#pragma once

#include <bifolium/evidence/assumptions.hpp>
#include <bifolium/evidence/inference.hpp>
#include <bifolium/evidence/observation.hpp>

namespace bifolium {
inline namespace v0 {

/// Ranks the formats of all schemes on the paper of the place and the years. There is always an answer; without
/// evidence it says how common the formats were. The same observation gives the same answer to the last bit, on any
/// thread. The function allocates memory for the candidates.
/// Precondition: no share is below 0, the shares of stocks add up to at most 1, and the caller's own priors name each
/// format once, have a format that the schemes have and a shape above 0, and less than 1 for no format.
/// Example: `infer_format(*observe({.height = 160_mm, .width = 100_mm, .year = 1650})).front().format ==
/// Format::of(8)`.
BIFOLIUM_INLINE Inference infer_format(Observation const& observation, Assumptions const& assumed);
// Compilers show the line of a deleted function, so the sentence is on it.
// clang-format off
Inference infer_format(Expected<Observation> const&, auto const&...) = delete; // it may be an error: look first, or write infer_format(*observe(...))
Inference infer_format(LeafEvidence const&, auto const&...) = delete; // nobody checked it: write infer_format(*observe(evidence))
// clang-format on
/// Ranks the formats with the usual assumptions for the year and the place.
inline Inference infer_format(Observation const& observation) { return infer_format(observation, Assumptions{}); }
/// Ranks the formats with these shares of formats, whatever the year.
inline Inference infer_format(Observation const& observation, Priors const& priors) {
  return infer_format(observation, Assumptions{.priors = priors});
}

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/evidence/detail/infer_format.hpp>
#endif
