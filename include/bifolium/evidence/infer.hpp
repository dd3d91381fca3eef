// SPDX-License-Identifier: MIT
/// Which format is the leaf, on which paper, how sure, and why? For each kind of leaf on each population of sheets the model
/// asks how likely what was seen would be, if the leaf were that: the sheet by its population, divided by geometry, cut
/// down by a binder, with chain lines, marks and gatherings as the fold gives them and each kind of evidence wrong as often
/// as it is known to be. No evidence is a veto. Bayes's rule makes probabilities of it, some of which goes to none of these.
///
/// Size alone cannot part a royal quarto from a chancery folio, and the answer says so: both are in it, and `look_next`
/// names what would part them.
#pragma once

#include <bifolium/evidence/detail/ranking.hpp>
#include <bifolium/evidence/detail/weighing.hpp>
#include <bifolium/evidence/observation.hpp>

namespace bifolium {
inline namespace v0 {

/// Ranks the formats of all schemes on the paper of the place and the years. It always answers; without evidence the answer
/// is how common formats were. One observation always gives the same answer to the last bit, in whatever order and on whatever
/// thread it is asked. Allocates the candidates of the result and, of the caller's stocks of paper, a number each.
/// pre: shares of stocks are 0 to 1 together, own priors have a format above 0.
inline Inference infer_format(Observation const& observation, Assumptions const& assumed) {
  auto const& seen = observation.seen();
  detail::Counted const counted{seen, *assumed.parameters, PaperAge::of(seen.year, seen.place)};
  Priors const usual;
  detail::Tallies tallies;
  auto const chains = counted.chains();
  std::size_t const reading = chains == ChainLines::vertical ? 1 : chains == ChainLines::horizontal ? 2 : 0;
  detail::Weigher weigher{counted, assumed, assumed.priors ? *assumed.priors : usual, tallies};
  weigher.weigh(reading);
  auto inference = detail::Ranking{tallies, counted, assumed, reading}.inference();
  auto const& model = assumed.model != nullptr ? *assumed.model : fitted_paper_model();
  inference.look_next = detail::look_next(tallies, weigher, model, counted, reading);
  if (chains != ChainLines::both) return inference;
  inference.mixed = detail::mixture(tallies, counted, assumed);
  if (inference.mixed) inference.certainty = certainty_of(inference.mixed->probability, 0, 1);
  return inference;
}
/// Ranks the formats under what is usual of the years and the place seen.
inline Inference infer_format(Observation const& observation) { return infer_format(observation, Assumptions{}); }
/// Ranks the formats if they are so common, whatever the years.
inline Inference infer_format(Observation const& observation, Priors const& priors) {
  return infer_format(observation, Assumptions{.priors = priors});
}

} // namespace v0
} // namespace bifolium
