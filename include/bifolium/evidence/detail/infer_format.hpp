// SPDX-License-Identifier: MIT
/// infer_format: weighs each kind of leaf, ranks the formats, asks what to look at next.
#pragma once

#include <bifolium/evidence/detail/ranking.hpp>
#include <bifolium/evidence/detail/weighing.hpp>
#include <bifolium/evidence/infer.hpp>

namespace bifolium {
inline namespace v0 {

BIFOLIUM_INLINE Inference infer_format(Observation const& observation, Assumptions const& assumed) {
  auto const& seen = observation.seen();
  detail::Counted const counted{seen, *assumed.parameters, PaperAge::of(seen.year, seen.place)};
  auto const& model = assumed.model != nullptr ? *assumed.model : fitted_paper_model();
  detail::Tallies tallies;
  auto const chains = counted.chains();
  std::size_t const reading = chains == ChainLines::vertical ? 1 : chains == ChainLines::horizontal ? 2 : 0;
  detail::Weigher weigher{counted, assumed, model, assumed.priors ? *assumed.priors : usual_priors, tallies};
  weigher.weigh(reading);
  auto inference = detail::Ranking{tallies, counted, assumed, reading}.inference();
  inference.look_next = detail::look_next(tallies, weigher, model, counted, reading);
  if (chains != ChainLines::both) return inference;
  inference.mixed = detail::mixture(tallies, counted, assumed);
  if (inference.mixed) inference.certainty = certainty_of(inference.mixed->probability, 0, 1);
  return inference;
}

} // namespace v0
} // namespace bifolium
