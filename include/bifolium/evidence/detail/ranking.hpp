// SPDX-License-Identifier: MIT
/// Makes the answer from the sums: formats in order, each with its reasons, the certainty, and what to look at next.
#pragma once

#include <bifolium/evidence/detail/look_next.hpp>
#include <bifolium/evidence/signs_against.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The formats under one reading of the chain lines, prepared for ranking.
class Ranking {
  Tallies const& tallies_;
  Counted const& counted_;
  Assumptions const& assumed_;
  PaperModel const& model_;
  OnPaper const& paper_;
  std::size_t reading_;
  bool leaf_tells_sheet_, measured_;
  double all_;
  double web_of_twofold_;                        // the share of a machine's paper in all paper with turned lines
  ByFormat weights_[evidence_kinds];             // of the kinds seen, in their order
  std::array<Reason, evidence_kinds> reasons_{}; // without their weights
  Tally const* order_[most_leaf_shapes];         // as many as there are candidates
  std::size_t candidates_{};

  /// Computes the weights of one kind of evidence for all formats; `rest`: what is left of the priors. Each loop is so
  /// simple that a compiler takes two formats at once.
  static void weigh(ByFormat const& alone, ByFormat const& prior, ByFormat const& rest, ByFormat& weights) {
    double all = 0;
    for (auto const one : alone) all += one;
    constexpr double least = 1e-300; // so that nothing is divided by 0
    ByFormat own, others, logarithm;
    for (std::size_t f = 0; f < most_leaf_shapes; ++f) {
      auto const other = (all - alone[f]) * prior[f];
      own[f] = alone[f] * rest[f], others[f] = other > 0 ? other : 0;
    }
    for (std::size_t f = 0; f < most_leaf_shapes; ++f)
      logarithm[f] = real::quick_log_of_ratio(own[f], others[f] + least);
    for (std::size_t f = 0; f < most_leaf_shapes; ++f) {
      // a size that is 0 for us is as unlikely as that, and not silent
      auto const weight = own[f] > 0 ? logarithm[f] : SheetDensity::hardly_ever;
      weights[f] = others[f] > 0 ? weight : 0;
    }
  }
  /// Returns the probability that the format was printed on cut sheets, from its gatherings.
  [[nodiscard]] double cut_half(Tally const& tally) const {
    auto const cut = counted_.parameters.cut_halves;
    if (!counted_.seen.gathering_leaves) return cut;
    return cut * counted_.gathering.cut(*tally.kind) / counted_.gathering.all(*tally.kind);
  }

  /// How likely its gatherings are half a sheet: where the gathering was seen it tells, and otherwise how books are made
  /// up.
  [[nodiscard]] double of_half_a_sheet(LeafShape const& kind, double cut) const {
    if (kind.leaves < 4 || kind.leaves > 2 * most_gathered) return 0;
    auto const& seen = counted_.seen;
    if (seen.gathering_leaves) return 2 * *seen.gathering_leaves == kind.leaves && !seen.alternating_with ? 1 - cut : 0;
    auto const& half = all_gathering_shares()[static_cast<std::size_t>(kind.leaves / 2 - 1)];
    auto const early = half.early[kind.ranked], late = half.late[kind.ranked];
    return (1 - cut) * (early + counted_.age.late_make_up * (late - early));
  }

  /// Publishers' covers cost a leaf so little that it tells its sheet better than the population does, which holds
  /// several sizes of the trade. False for other books, and for leaves that later binders may have cut.
  [[nodiscard]] static bool leaf_tells_sheet(Counted const& counted) {
    auto const& seen = counted.seen;
    bool const covers = seen.year && seen.year->from >= paper_dates::publishers_covers_from && counted.of_paper;
    bool const cut_again = seen.state > LeafState::trimmed || seen.of != MeasureOf::leaf;
    return covers && !cut_again && seen.height && seen.width;
  }
  /// Returns the sheet that the leaf tells for a kind, if its long side lies as the kind has it; else that of the
  /// population.
  [[nodiscard, gnu::cold, gnu::noinline]] Sheet<millimetres> sheet_of_leaf(LeafShape const& kind,
                                                                           Sheet<millimetres> const& usual) const {
    auto const& seen = counted_.seen;
    auto const implied = sheet_implied(kind.lay, LeafSize<millimetres>{*seen.height, *seen.width});
    if (!implied.lies_as_laid) return usual;
    // an eighth of an inch off head, tail and fore-edge is up to 4 % of an octavo; half of it is taken (proposed)
    constexpr double trimmed = 1.02;
    auto const larger = seen.state == LeafState::uncut ? 1 : trimmed;
    return Sheet<millimetres>{implied.least.short_side() * larger, implied.least.long_side() * larger};
  }

  /// Finds the sheet of a candidate. The population that explains the leaf best tells it, if it has such sheets.
  /// `told`: it is one of the first, which are told in words. Of others that are improbable no other population is asked.
  void find_sheet(FormatCandidate& candidate, std::size_t population, bool told) const {
    constexpr double probable = 0.001;
    if (population > 0 || !measured_) {
      candidate.sheet = model_.sheets()[population];
      candidate.uncut = leaf_size(candidate.kind->lay, candidate.sheet);
      if (candidate.fits(candidate.uncut)) return;
    }
    if (!told && candidate.probability < probable) return paper_.imply_sheet(candidate);
    paper_.find_fitting_sheet(candidate, model_);
  }

public:
  Ranking(Tallies const& tallies, Counted const& counted, Assumptions const& assumed, PaperModel const& model,
          OnPaper const& paper, std::size_t reading)
      : tallies_{tallies}, counted_{counted}, assumed_{assumed}, model_{model}, paper_{paper}, reading_{reading},
        leaf_tells_sheet_{leaf_tells_sheet(counted)}, measured_{counted.seen.height || counted.seen.width},
        all_{tallies.all(reading)}, web_of_twofold_{counted.age.twofold > 0 ? counted.age.by_web / counted.age.twofold
                                                                            : 0} {
    ByFormat priors{}, rest, sorted;
    double prior = 0;
    for (std::size_t i = 0; i < tallies.count; ++i) {
      auto const& tally = tallies.of_format[i];
      prior += priors[i] = tally.prior;
      if (!(tally.prior > 0)) continue;
      // in the order of probability; of equal ones the earlier scheme first
      auto at = candidates_++;
      auto const here = tally.together[reading];
      for (; at > 0 && sorted[at - 1] < here; --at) sorted[at] = sorted[at - 1], order_[at] = order_[at - 1];
      sorted[at] = here, order_[at] = &tally;
    }
    if (candidates_ == 0)
      broken("priors must leave a share for a format that the schemes have: start from flat_priors()");
    for (std::size_t i = 0; i < most_leaf_shapes; ++i) rest[i] = prior - priors[i];
    for (std::size_t k = 0; k < evidence_kinds; ++k) reasons_[k].kind = static_cast<EvidenceKind>(k);
    for (std::size_t k = 0; k < tallies.seen_count; ++k) {
      reasons_[tallies.seen[k]].seen = true;
      weigh(tallies.alone[tallies.seen[k]], priors, rest, weights_[k]);
    }
  }

  /// Fills a candidate that has its kinds of reasons.
  void fill(FormatCandidate& candidate, Tally const& tally, bool told) const {
    bool const own = tally.paper >= population_count;
    auto const* const stock = own ? &assumed_.stocks[tally.paper - population_count] : nullptr;
    auto const here = tally.together[reading_];
    candidate.format = tally.kind->format;
    candidate.probability = here / all_;
    candidate.scheme = Attested{static_cast<SchemeRow>(tally.scheme)};
    candidate.kind = tally.kind;
    if (own)
      candidate.stock = stock->name, candidate.sheet = stock->sheet;
    else
      find_sheet(candidate, tally.paper, told);
    if (leaf_tells_sheet_ && !own) candidate.sheet = sheet_of_leaf(*tally.kind, candidate.sheet);
    if (leaf_tells_sheet_ || own) candidate.uncut = leaf_size(tally.kind->lay, candidate.sheet);
    // the evidence does not tell a machine's turned lines from those of a double mould: the date does
    auto const turned = here > 0 ? tally.twofold / here : 0;
    candidate.by_web = turned * web_of_twofold_;
    candidate.twofold = turned - candidate.by_web;
    candidate.cut_half = cut_half(tally);
    auto const half = of_half_a_sheet(*tally.kind, candidate.cut_half);
    candidate.half_sheets = tally.kind->two_to_sheet ? half / 2 : half;
    auto const number = static_cast<std::size_t>(&tally - tallies_.of_format);
    for (std::size_t k = 0; k < tallies_.seen_count; ++k)
      candidate.reasons[tallies_.seen[k]].weight = weights_[k][number];
  }
  [[nodiscard, gnu::noinline]] bool shows_against(Format format) const {
    return !SignsAgainst{counted_.seen, format, counted_.age, counted_.parameters}.find().empty();
  }
  [[nodiscard]] FormatCandidate candidate(Tally const& tally) const {
    FormatCandidate candidate;
    candidate.reasons = reasons_, candidate.leaf = paper_.least_leaf();
    fill(candidate, tally, true);
    return candidate;
  }
  /// Returns the whole answer except a mixture. The function allocates memory for the candidates.
  [[nodiscard]] Inference inference() const {
    FormatCandidate pattern; // all have the same kinds of reasons
    pattern.reasons = reasons_, pattern.leaf = paper_.least_leaf();
    Inference inference{.candidates = std::vector<FormatCandidate>(candidates_, pattern)};
    for (std::size_t i = 0; i < candidates_; ++i) fill(inference.candidates[i], *order_[i], i < 2);
    inference.none_of_these = tallies_.none[reading_] / all_;
    inference.own_priors = assumed_.priors.has_value();
    inference.own_books = assumed_.model != nullptr && assumed_.model->own_books() > 0;
    auto const& years = counted_.seen.year;
    inference.of_sample = !inference.own_priors && years && years->to <= last_incunable_year;
    auto const& first = inference.candidates.front();
    auto const second = candidates_ > 1 ? inference.candidates[1].probability : 0;
    int paper = 0;
    for (auto const& row : evidence_rows)
      if (row.of_paper && first.reason(row.kind).agrees())
        paper += row.kind != EvidenceKind::leaves
                     ? 1
                     : (counted_.leaves_show_marks ? 1 : 0) + (counted_.leaves_show_chains ? 1 : 0);
    inference.certainty = certainty_of(first.probability, second, paper);
    // what no leaf of the format shows can speak for it against others, and establishes nothing
    if (inference.certainty == Certainty::established && shows_against(first.format))
      inference.certainty = Certainty::very_probable;
    if (!counted_.of_paper) inference.certainty = Certainty::not_determined; // skins are not of any sheet
    if (first.kind->leaves > 12 && paper == 0 && !first.reason(EvidenceKind::gathering).agrees()) {
      inference.small_by_size_alone = true;
      inference.certainty = Certainty::not_determined;
    }
    return inference;
  }
};

/// Returns the best pair of formats if chain lines run both ways, compared with all other pairs and with one format on
/// two papers.
[[gnu::cold]] inline std::optional<MixedFormats> mixture(Tallies const& tallies, Counted const& counted,
                                                         Assumptions const& assumed, PaperModel const& model,
                                                         OnPaper const& paper) {
  auto const mixed = counted.parameters.mixed_formats;
  // fifteenth-century paper with turned chain lines is cut paper, and so a mixture
  auto const twofold = counted.age.twofold - PaperAge::of(1450, counted.seen.place).twofold;
  constexpr double of_cut_paper = 0.9, least_share = 0.5; // proposed: mixtures of whole and cut sheets; a pair is named
  double all = 0, most = 0;
  Tally const *vertical = nullptr, *horizontal = nullptr;
  for (std::size_t v = 0; v < tallies.count; ++v)
    for (std::size_t h = 0; h < tallies.count; ++h) {
      auto const &a = tallies.of_format[v], &b = tallies.of_format[h];
      if (!(a.prior > 0) || !(b.prior > 0)) continue;
      if (v == h) {
        all += (1 - mixed) * (twofold > 0 ? twofold : 0) * a.together[0] * a.together[0] / a.prior;
        continue;
      }
      // one imposition on whole and on cut sheets makes two formats, one with twice the leaves of the other
      bool const cut = a.kind->leaves == 2 * b.kind->leaves || b.kind->leaves == 2 * a.kind->leaves;
      auto const given = mixed * (cut ? of_cut_paper : (1 - of_cut_paper) * b.prior);
      auto here = a.together[1] * given * b.together[2] / b.prior;
      if (cut && counted.seen.gathering_leaves) { // the part on cut sheets is gathered as the rest is
        auto const& half = a.kind->leaves > b.kind->leaves ? *a.kind : *b.kind;
        here *= counted.gathering.cut(half) / counted.gathering.all(half);
      }
      all += here;
      if (here > most) most = here, vertical = &a, horizontal = &b;
    }
  if (!(most > 0) || most < least_share * all) return std::nullopt;
  return MixedFormats{Ranking{tallies, counted, assumed, model, paper, 1}.candidate(*vertical),
                      Ranking{tallies, counted, assumed, model, paper, 2}.candidate(*horizontal), most / all};
}

} // namespace detail
} // namespace v0
} // namespace bifolium
