// SPDX-License-Identifier: MIT
/// From what was added up to an answer: formats in order, each with its reasons, how sure one may be, what to look at next.
/// What is shown of a candidate is put together here, once, when it is known which sheet and scheme it is.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/detail/look_next.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A reading of the chain lines, made ready to be ranked.
class Ranking {
  Reading const& reading_;
  CountedSigns const& signs_;
  double all_, prior_{};
  std::array<double, sign_count> likelihood_{};
  std::array<std::size_t, std::tuple_size_v<Tallies>> order_{};
  std::size_t candidates_{};

  [[nodiscard]] std::array<Reason, sign_count> reasons(Tally const& tally) const {
    std::array<Reason, sign_count> reasons{};
    for (std::size_t i = 0; i < sign_count; ++i) {
      auto& reason = reasons[i];
      reason.sign = static_cast<EvidenceKind>(i);
      reason.seen = signs_.has(reason.sign);
      if (!reason.seen) continue;
      auto const own = tally.likelihood[i] / tally.prior;
      auto const others = (likelihood_[i] - tally.likelihood[i]) / (prior_ - tally.prior);
      if (own > 0 && others > 0) reason.weight = real::log(own / others);
      reason.agrees = reason.weight > 1e-9; // less is rounding: the sign tells nothing
    }
    return reasons;
  }

public:
  Ranking(Reading const& reading, CountedSigns const& signs)
      : reading_{reading}, signs_{signs}, all_{reading.none + reading.together()} {
    for (std::size_t i = 0; i < reading.formats; ++i) {
      auto const& tally = reading.tallies[i];
      prior_ += tally.prior;
      for (std::size_t s = 0; s < sign_count; ++s) likelihood_[s] += tally.likelihood[s];
      if (!(tally.prior > 0)) continue;
      // in order of probability; of equals the earlier scheme first
      auto at = candidates_++;
      for (; at > 0 && reading.tallies[order_[at - 1]].together < tally.together; --at) order_[at] = order_[at - 1];
      order_[at] = i;
    }
  }

  /// pre: counting from 0, the likeliest first.
  [[nodiscard]] FormatCandidate candidate(std::size_t i) const {
    auto const& tally = reading_.tallies[order_[i]];
    Sheet<millimetres> const sheet{tally.short_side, tally.long_side};
    return {.format = tally.kind->format,
            .probability = tally.together / all_,
            .scheme = tally.scheme,
            .sheet_name = tally.sheet_name,
            .sheet = sheet,
            .uncut = leaf_size(tally.kind->lay, sheet),
            .kind = tally.kind,
            .reasons = reasons(tally)};
  }
  /// The whole answer. Allocates its candidates.
  [[nodiscard]] Inference inference(PriorsByPeriod const& periods, EvidenceParameters const& parameters) const {
    Inference inference;
    std::size_t period = 0;
    for (std::size_t i = 0; i < periods.size(); ++i)
      if (reading_.of_period[i] > reading_.of_period[period]) period = i;
    inference.priors = periods[period].priors.basis;
    inference.candidates.reserve(candidates_);
    for (std::size_t i = 0; i < candidates_; ++i) inference.candidates.push_back(candidate(i));
    inference.none_of_these = reading_.none / all_;
    auto const& first = inference.candidates.front();
    int paper_signs = 0;
    for (auto sign :
         {EvidenceKind::chain_lines, EvidenceKind::watermark, EvidenceKind::edges, EvidenceKind::point_hole})
      paper_signs += first.reason(sign).seen && first.reason(sign).agrees ? 1 : 0;
    if (first.reason(EvidenceKind::leaves).agrees)
      paper_signs += (signs_.leaves_show_marks() ? 1 : 0) + (signs_.leaves_show_chains() ? 1 : 0);
    inference.certainty = signs_.of_paper() ? certainty_of(first.probability, paper_signs)
                                            : Certainty::not_determined; // skins are of no sheet
    inference.look_next =
        look_next(reading_.tallies, reading_.formats, signs_, periods[period].priors.incunables, parameters);
    return inference;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
