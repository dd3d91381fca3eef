// SPDX-License-Identifier: MIT
/// Which format is the leaf, on which sheet, how sure, and why? For each kind of leaf and each sheet of the place and time
/// the model asks how likely what was seen would be, if the leaf were that: uncut leaf by geometry, cut down by a binder, with
/// chain lines, marks and gatherings as the fold gives them and each kind of evidence wrong as often as it is known to
/// be. No evidence is a veto. Bayes's rule makes probabilities of it, some of which goes to none of these.
///
/// Size alone cannot part a royal quarto from a chancery folio, and the answer says so: both stand in it, and `look_next`
/// names what would part them.
#pragma once

#include <bifolium/evidence/inference.hpp>
#include <bifolium/evidence/look_next.hpp>
#include <bifolium/evidence/scheme_likelihood.hpp>
#include <bifolium/evidence/size_likelihood.hpp>

namespace bifolium {
inline namespace v0 {

/// What is taken for granted. Left empty, the priors and the sheets are those of the years and the place seen.
struct Assumptions {
  std::optional<PriorsByPeriod> priors{};
  std::optional<SheetSizes> sheet_sizes{}; ///< at least one
  EvidenceParameters const* parameters{&fitted_parameters};
};

namespace detail {

class Inferring {
  Seen const& seen_;
  Assumptions const& assumed_;
  EvidenceParameters const& parameters_;
  CountedSigns signs_;
  MeasuresAsked measured_;
  Tallies tallies_{};
  std::size_t count_{};
  double none_{};
  PriorsByPeriod periods_;
  std::array<double, std::tuple_size_v<PriorsByPeriod>> of_period_{}; ///< how much of the answer comes from each

  [[nodiscard]] LossDensity density(TrimModel trim) const {
    if (seen_.material == Material::vellum) { // skins have no sheet sizes
      trim.height_variance *= parameters_.vellum_spread;
      trim.covariance *= parameters_.vellum_spread;
      trim.width_variance *= parameters_.vellum_spread;
    }
    return LossDensity{trim};
  }
  [[nodiscard]] LossMixture mixture() const {
    auto const& by_state = parameters_.trim_by_state;
    return {density(by_state[static_cast<std::size_t>(seen_.state)]),
            density(by_state[static_cast<std::size_t>(LeafState::cropped)]),
            seen_.state == LeafState::unknown ? parameters_.cropped_unsaid : 0};
  }

  void add(LeafShape const& shape, double prior, SizeAnswer const& size, PossibleSheets const& sheets,
           Trustworthiness const& trust, bool early) {
    auto& tally = tallies_[shape.format_number];
    count_ = (std::max)(count_, shape.format_number + 1);
    auto const schemes = ask_schemes(shape, signs_, trust, parameters_);
    auto const marked = parameters_.paper_is_marked;
    std::array<double, sign_count> const alone{
        size.size,
        chains_likelihood(shape, signs_.chains(), trust.chains),
        marks_likelihood(shape, signs_.mark(), signs_.countermark(), trust, marked),
        gathering_likelihood(shape, seen_.gathering_leaves, seen_.alternating_with, early, parameters_),
        size.type,
        schemes.edges,
        schemes.hole,
        schemes.leaves};
    auto const together = prior * size.together * alone[1] * alone[2] * alone[3] * schemes.together;
    tally.prior += prior;
    tally.together += together;
    for (std::size_t i = 0; i < sign_count; ++i) tally.likelihood[i] += prior * alone[i];
    tally.vertical += together * (shape.chain_lines == ChainLines::vertical ? trust.chains : 1 - trust.chains);
    for (std::size_t i = 1; i < 8; ++i)
      tally.marks[i] +=
          together * marks_likelihood(shape, static_cast<MarkPlace>(i), MarkPlace::unknown, trust, marked);
    if (tally.candidate.kind != nullptr && together <= tally.best) return;
    tally.best = together;
    auto& candidate = tally.candidate;
    candidate.format = shape.format;
    candidate.kind = &shape;
    candidate.scheme = schemes.scheme;
    candidate.sheet_name = sheets.name[size.best];
    candidate.sheet = {sheets.short_side[size.best], sheets.long_side[size.best]};
    candidate.uncut = leaf_size(shape.lay, candidate.sheet);
    tally.log_height = shape.lay.long_side == Axis::left_right ? sheets.across[size.best] - shape.log_short
                                                               : sheets.along[size.best] - shape.log_long;
  }

  /// Weighs all kinds of leaf under the priors of one period; `size(shape)` gives what the sheets say, `joint(leaves)` by how
  /// much the years move the format beside the priors.
  template <class Size, class Joint>
  void weigh(std::size_t period, PossibleSheets const& sheets, Size size, Joint joint) {
    auto const& priors = periods_[period].priors;
    auto const trust = trustworthiness(periods_[period].years, seen_.place, parameters_);
    double all = priors.none_of_these;
    for (auto const& one : priors.weights) all += one.weight;
    auto const scale = periods_[period].weight / all;
    auto const before = together() + none_;
    auto const shape_weight = [&](LeafShape const& shape) {
      return priors.shapes[static_cast<std::size_t>(shape.format.shape())];
    };
    for (auto const& shape : leaf_shapes()) {
      auto const leaves = shape.format.leaves_to_sheet().value_or(0);
      double kinds = 0; // formats that share the prior of as many leaves
      for (auto const& other : leaf_shapes())
        if (other.format.leaves_to_sheet() == leaves) kinds += shape_weight(other);
      auto const prior = scale * priors.of(leaves) * shape_weight(shape) / kinds * joint(leaves);
      add(shape, prior, size(shape), sheets, trust, priors.incunables);
    }
    none_ += scale * priors.none_of_these * signs_.by_chance();
    of_period_[period] = together() + none_ - before;
  }

  /// The fifteenth century, on its four sheets; formats and sheets were counted together, so the years move the format too.
  void weigh_incunables(std::size_t period) {
    auto const joint = early_shares_of(periods_[period].years, parameters_);
    PossibleSheets sheets;
    for (auto const& sheet : early_sheets)
      sheets.add(sheet.name, millimetres{sheet.long_side}, millimetres{sheet.short_side}, std::log(sheet.long_side),
                 std::log(sheet.short_side));
    auto const shares_of = [&](int leaves) -> auto const& {
      auto const f = early_format(leaves);
      return leaves == 2 || leaves == 4 || leaves == 8 ? joint.of[f] : parameters_.undated_shares.of[f];
    };
    auto const sum = [](auto const& shares) {
      double all = 0;
      for (auto one : shares) all += one;
      return all;
    };
    bool const fitted = seen_.state == LeafState::unknown || seen_.state == LeafState::trimmed;
    auto const by_state = mixture();
    auto const densities = [&](std::size_t format) {
      auto const& trim = parameters_.early_trim[format];
      return std::array<LossDensity, 2>{density(trim[0]), density(trim[1])};
    };
    std::array const lost{densities(0), densities(1), densities(2)};
    std::array<bool, PossibleSheets::periods> asked{};
    asked[period] = true;
    weigh(
        period, sheets,
        [&](LeafShape const& shape) {
          auto const leaves = shape.format.leaves_to_sheet().value_or(0);
          auto const& shares = shares_of(leaves);
          for (std::size_t i = 0; i < sheets.count; ++i) sheets.weight[period][i] = shares[i] / sum(shares);
          if (!fitted)
            return measured_.ask(
                sheets, shape, asked, [&](std::size_t) -> auto const& { return by_state; },
                parameters_.least_size)[period];
          auto const& here = lost[early_format(leaves)];
          return measured_.ask(
              sheets, shape, asked, [&](std::size_t i) -> auto const& { return here[i + 1 < sheets.count ? 0 : 1]; },
              parameters_.least_size)[period];
        },
        [&](int leaves) { return sum(shares_of(leaves)) / sum(parameters_.undated_shares.of[early_format(leaves)]); });
  }

  /// All other periods together: kinds of leaf that are divided alike, and sheets that several periods know, are asked once.
  void weigh_later(std::array<bool, PossibleSheets::periods> const& asked) {
    PossibleSheets sheets;
    SheetGatherer gatherer{sheets, parameters_};
    for (std::size_t p = 0; p < periods_.size(); ++p) {
      if (!asked[p]) continue;
      if (assumed_.sheet_sizes)
        gatherer.take(p, *assumed_.sheet_sizes);
      else
        gatherer.take(p, periods_[p].years, seen_.place);
    }
    auto const by_state = mixture();
    std::array<SizeAnswers, 32> of_division;
    std::array<bool, 32> known{};
    for (auto const& shape : leaf_shapes()) {
      if (known[shape.division]) continue;
      known[shape.division] = true;
      of_division[shape.division] = measured_.ask(
          sheets, shape, asked, [&](std::size_t) -> auto const& { return by_state; }, parameters_.least_size_late);
    }
    for (std::size_t p = 0; p < periods_.size(); ++p)
      if (asked[p])
        weigh(
            p, sheets, [&](LeafShape const& shape) { return of_division[shape.division][p]; }, [](int) { return 1; });
  }
  [[nodiscard]] double together() const {
    double all = 0;
    for (std::size_t i = 0; i < count_; ++i) all += tallies_[i].together;
    return all;
  }

  void give_reasons(FormatCandidate& candidate, Tally const& tally, std::array<double, sign_count> const& likelihood,
                    double prior_all) const {
    for (std::size_t i = 0; i < sign_count; ++i) {
      auto& reason = candidate.reasons[i];
      reason.sign = static_cast<Sign>(i);
      reason.seen = signs_.has(reason.sign);
      auto const own = tally.likelihood[i] / tally.prior;
      auto const others = (likelihood[i] - tally.likelihood[i]) / (prior_all - tally.prior);
      if (reason.seen && own > 0 && others > 0) reason.weight = std::log(own / others);
      reason.agrees = reason.weight > 0;
    }
  }

public:
  Inferring(Seen const& seen, Assumptions const& assumed)
      : seen_{seen}, assumed_{assumed}, parameters_{*assumed.parameters}, signs_{seen}, measured_{seen,
                                                                                                  *assumed.parameters},
        periods_{assumed.priors ? *assumed.priors : priors_by_period(seen.year, seen.place)} {
    std::array<bool, PossibleSheets::periods> later{};
    bool any = false;
    for (std::size_t i = 0; i < periods_.size(); ++i) {
      if (!(periods_[i].weight > 0)) continue;
      if (periods_[i].priors.incunables && !assumed_.sheet_sizes)
        weigh_incunables(i);
      else
        later[i] = any = true;
    }
    if (any) weigh_later(later);
  }

  [[nodiscard]] Inference result() const {
    Inference inference;
    std::size_t period = 0;
    for (std::size_t i = 0; i < periods_.size(); ++i)
      if (of_period_[i] > of_period_[period]) period = i;
    inference.priors = periods_[period].priors.basis;
    auto const all = none_ + together();
    double prior_all = 0;
    std::array<double, sign_count> likelihood{};
    for (auto const& tally : tallies_) {
      prior_all += tally.prior;
      for (std::size_t i = 0; i < sign_count; ++i) likelihood[i] += tally.likelihood[i];
    }
    // in order of probability; of equals the earlier scheme first
    std::array<std::size_t, 32> order{};
    std::size_t candidates = 0;
    for (std::size_t i = 0; i < count_; ++i) {
      if (!(tallies_[i].prior > 0)) continue;
      auto at = candidates++;
      for (; at > 0 && tallies_[order[at - 1]].together < tallies_[i].together; --at) order[at] = order[at - 1];
      order[at] = i;
    }
    inference.candidates.reserve(candidates);
    for (std::size_t i = 0; i < candidates; ++i) {
      auto const& tally = tallies_[order[i]];
      auto& candidate = inference.candidates.emplace_back(tally.candidate);
      candidate.probability = tally.together / all;
      give_reasons(candidate, tally, likelihood, prior_all);
    }
    inference.none_of_these = none_ / all;
    auto const& first = inference.candidates.front();
    int paper_signs = 0;
    for (auto sign : {Sign::chain_lines, Sign::watermark, Sign::edges, Sign::point_hole})
      paper_signs += first.reason(sign).seen && first.reason(sign).agrees ? 1 : 0;
    if (first.reason(Sign::leaves).agrees)
      paper_signs += (signs_.leaves_show_marks() ? 1 : 0) + (signs_.leaves_show_chains() ? 1 : 0);
    inference.certainty = signs_.of_paper() ? certainty_of(first.probability, paper_signs)
                                            : Certainty::not_determined; // skins are of no sheet
    inference.look_next = look_next(tallies_, count_, signs_, periods_[period].priors.incunables, parameters_);
    return inference;
  }
};

} // namespace detail

/// Ranks the formats of all schemes on the sheets of the place and time, under the priors of the period. It always answers;
/// with nothing seen the answer is the priors. Allocates the result.
inline Inference infer_format(Observation const& observation, Assumptions const& assumed) {
  if (assumed.sheet_sizes && assumed.sheet_sizes->empty()) broken("a format is inferred on at least one sheet");
  auto const& seen = observation.seen();
  auto inference = detail::Inferring{seen, assumed}.result();
  if (seen.chain_lines != ChainLines::both || seen.material == Material::vellum) return inference;
  auto part = seen;
  part.chain_lines = ChainLines::vertical;
  auto const vertical = detail::Inferring{part, assumed}.result().candidates.front();
  part.chain_lines = ChainLines::horizontal;
  auto const horizontal = detail::Inferring{part, assumed}.result().candidates.front();
  if (vertical.format == horizontal.format) return inference;
  inference.mixed = MixedFormats{vertical, horizontal, vertical.probability * horizontal.probability};
  inference.certainty = certainty_of(inference.mixed->probability, 1);
  return inference;
}
inline Inference infer_format(Observation const& observation) { return infer_format(observation, Assumptions{}); }
/// The same under one set of priors, whatever the years.
inline Inference infer_format(Observation const& observation, Priors const& priors) {
  return infer_format(observation, {.priors = one_period(observation.seen().year, priors)});
}
/// The same on sheets of your choosing. pre: at least one.
inline Inference infer_format(Observation const& observation, SheetSizes const& sizes, Priors const& priors) {
  return infer_format(observation, {.priors = one_period(observation.seen().year, priors), .sheet_sizes = sizes});
}

} // namespace v0
} // namespace bifolium
