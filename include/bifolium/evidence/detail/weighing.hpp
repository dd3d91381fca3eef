// SPDX-License-Identifier: MIT
/// Every kind of leaf on every sheet of every period, weighed against what was seen. The order of the loops is what makes
/// it quick: what a kind of leaf says of a size, of marks, gatherings and edges is asked once, in the outer loop, and a period
/// only weighs it, by its priors, its sheets and its trust in paper. Nothing is left out on the way. A leaf of which neither
/// date nor place is known is asked about in six periods and takes little longer than one with a date.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/assumptions.hpp>
#include <bifolium/evidence/detail/scheme_likelihood.hpp>
#include <bifolium/evidence/detail/size_likelihood.hpp>
#include <bifolium/evidence/detail/tally.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class Weighing {
  static constexpr std::size_t count = PossibleSheets::periods;
  LeafEvidence const& seen_;
  EvidenceParameters const& parameters_;
  CountedSigns const& signs_;
  PriorsByPeriod const& periods_;
  LossDensity usual_, cropped_;
  std::array<EarlyLoss, 3> early_losses_;
  Trusts trusts_{};
  std::array<bool, count> early_{}, later_{}; // on the four sheets of the first printers, on those of the table
  bool any_early_{}, any_later_{}, any_incunables_{}, any_others_{};
  std::array<double, count> scale_{};       // of the priors, so that all periods together add up to their weights
  std::array<EarlyShares, count> shares_{}; // of early periods
  PossibleSheets early_sheets_, later_sheets_;
  SheetsAsked early_asked_, later_asked_;

  [[nodiscard]] LossDensity density(TrimModel trim) const {
    if (seen_.material == Material::vellum) { // skins have no sheet sizes
      trim.height_variance *= parameters_.vellum_spread;
      trim.covariance *= parameters_.vellum_spread;
      trim.width_variance *= parameters_.vellum_spread;
    }
    return LossDensity{trim};
  }
  [[nodiscard]] LossDensity density(LeafState state) const {
    return density(parameters_.trim_by_state[static_cast<std::size_t>(state)]);
  }
  [[nodiscard]] EarlyLoss early_loss(std::size_t format) const {
    auto const& trim = parameters_.early_trim[format];
    return {{density(trim[0])}, {density(trim[1])}};
  }
  void ask_of_state(SheetsAsked& asked, PossibleSheets const& sheets, LeafShape const& shape, double floor) const {
    auto const share = parameters_.cropped_unsaid;
    if (seen_.state == LeafState::unknown && share > 0)
      asked.ask(sheets, shape, MixedLoss{usual_, cropped_, share}, floor);
    else
      asked.ask(sheets, shape, OneLoss{usual_}, floor);
  }
  void ask_size(LeafShape const& shape) {
    if (any_later_) ask_of_state(later_asked_, later_sheets_, shape, parameters_.least_size_late);
    if (!any_early_) return;
    bool const fitted = seen_.state == LeafState::unknown || seen_.state == LeafState::trimmed;
    if (fitted)
      early_asked_.ask(early_sheets_, shape, early_losses_[early_format(shape.leaves)], parameters_.least_size);
    else
      ask_of_state(early_asked_, early_sheets_, shape, parameters_.least_size);
  }
  /// Weighs the early sheets for a kind of leaf, and gives by how much the years move its format: formats and sheets of
  /// the fifteenth century were counted together.
  double weigh_early_sheets(std::size_t period, int leaves) {
    auto const f = early_format(leaves);
    auto const& undated = parameters_.undated_shares.of[f];
    auto const& shares = leaves == 2 || leaves == 4 || leaves == 8 ? shares_[period].of[f] : undated;
    double all = 0, usual = 0;
    for (auto const one : shares) all += one;
    for (auto const one : undated) usual += one;
    auto& weighed = early_sheets_.of_period[period];
    weighed.all = all;
    for (std::size_t i = 0; i < early_sheets.size(); ++i) weighed.weight[i] = weighed.single[i] = shares[i];
    return all / usual;
  }
  [[nodiscard]] ByTrust ask_marks(LeafShape const& shape) const {
    ByTrust marks;
    for (std::size_t t = 0; t < trusts_.size(); ++t) {
      auto const& trust = trusts_[t];
      bool const same = t > 0 && trust.mark_in_place == trusts_[t - 1].mark_in_place &&
                        trust.second_mark == trusts_[t - 1].second_mark;
      marks[t] = same
                     ? marks[t - 1]
                     : marks_likelihood(shape, signs_.mark(), signs_.countermark(), trust, parameters_.paper_is_marked);
    }
    return marks;
  }
  /// How common the kind is in the period; kinds of as many leaves share the prior out by their shapes.
  [[nodiscard]] double prior(std::size_t period, LeafShape const& shape) const {
    auto const& priors = periods_[period].priors;
    double kinds = 0;
    for (std::size_t s = 0; s < shape.sharers.size(); ++s) kinds += shape.sharers[s] * priors.shapes[s];
    auto const own = priors.shapes[static_cast<std::size_t>(shape.format.shape())];
    return scale_[period] * priors.of(shape.leaves) * own / kinds;
  }

  /// What is the same however the chain lines are read, of one kind of leaf in one period.
  struct Weighed {
    double prior{}, together{}; // the latter but for chain lines
    std::array<double, sign_count> alone{};
  };
  [[nodiscard]] Weighed weigh(std::size_t p, LeafShape const& shape, double marks, double gathering,
                              SchemesSay const& schemes) {
    auto const joint = early_[p] ? weigh_early_sheets(p, shape.leaves) : 1;
    auto const size =
        early_[p] ? early_asked_.answer(early_sheets_.of_period[p]) : later_asked_.answer(later_sheets_.of_period[p]);
    auto const prior = this->prior(p, shape) * joint;
    return {prior,
            prior * size.together * marks * gathering * schemes.together,
            {size.size, 1, marks, gathering, size.type, schemes.edges, schemes.hole, schemes.leaves}};
  }
  /// The same over all periods, but for chain lines.
  struct WeighedInAll {
    double prior{};
    std::array<double, sign_count> likelihood{}; ///< of each sign by itself, weighted by the prior

    void add(Weighed const& period) {
      prior += period.prior;
      for (std::size_t i = 0; i < sign_count; ++i) likelihood[i] += period.prior * period.alone[i];
    }
  };
  /// Names the sheet that explains the kind best in the period. `found` keeps it for the other readings; 0: not yet found.
  void name_sheet(Tally& tally, std::size_t p, std::array<std::size_t, count>& found) const {
    auto const& sheets = early_[p] ? early_sheets_ : later_sheets_;
    if (found[p] == 0) found[p] = 1 + (early_[p] ? early_asked_ : later_asked_).best(sheets.of_period[p]);
    auto const best = found[p] - 1;
    auto const& lay = tally.kind->lay;
    tally.sheet_name = sheets.of_period[p].name[best];
    tally.long_side = sheets.long_side[best], tally.short_side = sheets.short_side[best];
    tally.log_height = lay.long_side == Axis::left_right ? sheets.across[best] - tally.kind->log_short
                                                         : sheets.along[best] - tally.kind->log_long;
  }
  /// Adds a kind of leaf, as weighed in each period, to one reading.
  void add(Reading& reading, LeafShape const& shape, std::array<Weighed, count> const& weighed,
           WeighedInAll const& in_all, std::array<SchemesSay, count> const& schemes, SchemesAsked const& asked,
           std::array<std::size_t, count>& sheets_found) const {
    auto& tally = reading.tallies[shape.format_number];
    reading.formats = (std::max)(reading.formats, shape.format_number + 1);
    tally.prior += in_all.prior;
    for (std::size_t i = 0; i < sign_count; ++i) tally.likelihood[i] += in_all.likelihood[i];
    MarkTrust mark_trust;
    double most = -1;
    std::size_t best = 0;
    for (std::size_t p = 0; p < count; ++p) {
      if (!early_[p] && !later_[p]) continue;
      auto const& trust = trusts_[trusts_.of(p)];
      auto const& here = weighed[p];
      auto const chains = chains_likelihood(shape, reading.chain_lines, trust.chains);
      auto const together = here.together * chains;
      tally.together += together;
      tally.likelihood[static_cast<std::size_t>(EvidenceKind::chain_lines)] += here.prior * (chains - 1);
      tally.vertical += together * (shape.chain_lines == ChainLines::vertical ? trust.chains : 1 - trust.chains);
      mark_trust.add(trust, together);
      reading.of_period[p] += together;
      if (together > most) most = together, best = p;
    }
    for (std::size_t i = 1; i < tally.marks.size() && signs_.mark_open(); ++i)
      tally.marks[i] += mark_likelihood(shape, static_cast<MarkPlace>(i), mark_trust, parameters_.paper_is_marked);
    // of equals the earlier kind is named
    if (tally.kind != nullptr && (most < tally.best || (most == tally.best && tally.kind < &shape))) return;
    tally.kind = &shape;
    tally.best = most;
    tally.scheme = schemes[asked.answer_for(best)].scheme;
    name_sheet(tally, best, sheets_found);
  }

public:
  /// All are looked at, not copied.
  Weighing(LeafEvidence const& seen, CountedSigns const& signs, PriorsByPeriod const& periods,
           Assumptions const& assumed)
      : seen_{seen}, parameters_{*assumed.parameters}, signs_{signs}, periods_{periods}, usual_{density(seen.state)},
        cropped_{density(LeafState::cropped)}, early_losses_{early_loss(0), early_loss(1), early_loss(2)},
        early_asked_{seen, parameters_}, later_asked_{seen, parameters_} {
    SheetGatherer gatherer{later_sheets_, parameters_};
    for (std::size_t p = 0; p < count; ++p) {
      auto const& [years, weight, priors] = periods_[p];
      if (!(weight > 0)) continue;
      trusts_.add(p, trustworthiness(years, seen.place, parameters_));
      double all = priors.none_of_these;
      for (auto const& one : priors.weights) all += one.weight;
      scale_[p] = weight / all;
      early_[p] = priors.incunables && !assumed.sheet_sizes;
      later_[p] = !early_[p];
      (priors.incunables ? any_incunables_ : any_others_) = true;
      any_early_ = any_early_ || early_[p];
      any_later_ = any_later_ || later_[p];
      if (early_[p])
        shares_[p] = early_shares_of(years, parameters_);
      else if (assumed.sheet_sizes)
        gatherer.take(p, *assumed.sheet_sizes);
      else
        gatherer.take(p, years, seen.place);
    }
    later_sheets_.fill_up();
    if (!any_early_) return;
    for (auto const& sheet : early_sheets) {
      auto const i = early_sheets_.add(millimetres{sheet.long_side}, millimetres{sheet.short_side},
                                       real::log(sheet.long_side), real::log(sheet.short_side));
      for (auto& shares : early_sheets_.of_period) shares.end = i + 1, shares.name[i] = sheet.name;
    }
    early_sheets_.fill_up();
  }

  /// Fills the readings, which say how the chain lines are to be read and are otherwise empty.
  void weigh(View<Reading> readings) {
    for (auto& reading : readings) {
      auto const chance = signs_.by_chance(reading.chain_lines, parameters_);
      for (std::size_t p = 0; p < count; ++p) {
        reading.of_period[p] = scale_[p] * periods_[p].priors.none_of_these * chance;
        reading.none += reading.of_period[p];
      }
    }
    SchemesAsked const schemes_asked{signs_, trusts_, parameters_};
    auto const gathered = [&](LeafShape const& shape, bool early) {
      return gathering_likelihood(shape, seen_.gathering_leaves, seen_.alternating_with, early, parameters_);
    };
    // kinds that are asked the same follow each other
    auto const kinds = leaf_shapes();
    for (auto const kind : seen_.height || !seen_.width ? shapes_by_height() : shapes_by_width()) {
      auto const& shape = kinds[static_cast<std::size_t>(kind)];
      ask_size(shape);
      auto const marks = ask_marks(shape);
      auto const schemes = schemes_asked.ask(shape);
      auto const early = any_incunables_ ? gathered(shape, true) : 0, late = any_others_ ? gathered(shape, false) : 0;
      std::array<Weighed, count> weighed;
      WeighedInAll in_all;
      for (std::size_t p = 0; p < count; ++p) {
        if (!early_[p] && !later_[p]) continue;
        weighed[p] = weigh(p, shape, marks[trusts_.of(p)], periods_[p].priors.incunables ? early : late,
                           schemes[schemes_asked.answer_for(p)]);
        in_all.add(weighed[p]);
      }
      std::array<std::size_t, count> sheets_found{};
      for (auto& reading : readings) add(reading, shape, weighed, in_all, schemes, schemes_asked, sheets_found);
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
