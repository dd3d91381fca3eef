// SPDX-License-Identifier: MIT
/// infer_format: weighs each kind of leaf, ranks the formats, asks what to look at next.
#pragma once

#include <bifolium/evidence/detail/ranking.hpp>
#include <bifolium/evidence/detail/weighing.hpp>
#include <bifolium/evidence/infer.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Stops at assumptions with which the results would not be probabilities.
[[gnu::cold, gnu::noinline]] inline void must_be_sound(Assumptions const& assumed) {
  if (assumed.parameters == nullptr)
    broken("an inference needs parameters: leave them out, and the usual ones are taken");
  auto const is_share = [](double share) { return share >= 0 && share <= 1e300; }; // false for NaN
  double of_stocks = 0;
  for (auto const& stock : assumed.stocks) {
    if (!is_share(stock.share)) broken("the share of a stock of paper must be from 0 to 1");
    of_stocks += stock.share;
  }
  if (of_stocks > 1 + 1e-9) broken("the shares of all stocks of paper together must be at most 1");
  if (!assumed.priors) return;
  bool any = false, shaped = false;
  auto const& shares = assumed.priors->shares;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    auto const& one = shares[i];
    if (!is_share(one.share)) broken("the share of a format must be 0 or more");
    for (std::size_t before = 0; before < i; ++before) // the later share would be ignored
      if (one.leaves != 0 && one.leaves == shares[before].leaves) broken("priors must name each format once");
    for (auto const leaves : ranked_leaves) any = any || (one.share > 0 && one.leaves == leaves);
  }
  for (auto const share : assumed.priors->shapes) {
    if (!is_share(share)) broken("the share of a shape must be 0 or more");
    shaped = shaped || share > 0;
  }
  if (!any || !shaped)
    broken("priors must have a format that is ranked and a shape with a share above 0: start from flat_priors()");
  if (!(is_share(assumed.priors->none_of_these) && assumed.priors->none_of_these < 1))
    broken("the probability of no format must be from 0 to less than 1");
}

} // namespace detail

BIFOLIUM_INLINE Inference infer_format(Observation const& observation, Assumptions const& assumed) {
  detail::must_be_sound(assumed);
  auto const& seen = observation.seen();
  detail::Counted const counted{seen, *assumed.parameters, PaperAge::of(seen.year, seen.place)};
  auto const& model = assumed.model != nullptr ? *assumed.model : fitted_paper_model();
  detail::Tallies tallies;
  auto const chains = counted.chains();
  std::size_t const reading = chains == ChainLines::vertical ? 1 : chains == ChainLines::horizontal ? 2 : 0;
  detail::Weigher weigher{counted, assumed, model, tallies};
  weigher.weigh(reading);
  auto inference = detail::Ranking{tallies, counted, assumed, model, weigher.paper(), reading}.inference();
  inference.look_next = detail::look_next(tallies, weigher.paper(), model, counted, reading);
  if (chains != ChainLines::both) return inference;
  inference.mixed = detail::mixture(tallies, counted, assumed, model, weigher.paper());
  if (inference.mixed) inference.certainty = certainty_of(inference.mixed->probability, 0, 1);
  return inference;
}

} // namespace v0
} // namespace bifolium
