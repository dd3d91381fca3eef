// SPDX-License-Identifier: MIT
/// Computes the probability of the evidence for every kind of leaf on every population of sheets. The common part (the
/// shares of the years and the place, the populations, the evidence of several leaves) is computed first. Then each
/// kind of leaf gives the probability of its size on each population, and of the other evidence on single and on double
/// paper.
#pragma once

#include <bifolium/evidence/detail/evidence_rows.hpp>
#include <bifolium/evidence/detail/size_density.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// How the chain lines are read: as if none were seen, or as vertical or horizontal, by `ChainLines`.
using ByChains = std::array<double, 3>;

/// What speaks for one format, added up over its kinds of leaf.
struct Tally {
  LeafShape const* kind{}; ///< of its kinds the one that explains most
  std::size_t scheme{};    ///< of that kind, the one that fits best
  std::size_t paper{};     ///< the population it explains most with, or `population_count` and the number of a stock
  double prior{}, best{-1};
  std::array<double, evidence_kinds> alone{}; ///< of each kind of evidence by itself, weighted by the prior
  ByChains together{};                        ///< prior times likelihood of all that was seen
  double twofold{};                           ///< part of it on double paper
};
struct Tallies {
  std::array<Tally, 24> of_format{};
  std::size_t count{};
  ByChains none{}; ///< that it is none of these, in the unit of `together`
  JointShares joint{};

  [[nodiscard]] double all(std::size_t chains) const {
    double sum = none[chains];
    for (std::size_t i = 0; i < count; ++i) sum += of_format[i].together[chains];
    return sum;
  }
};

/// Height, width and type page as the densities want them: logarithms of the leaf, without its boards.
class LogMeasures {
  double low_{}, height_{}, width_{}, type_{}, fall_{};
  bool has_height_, has_width_, has_type_, interval_{};

public:
  /// `tail`: of the populations.
  LogMeasures(LeafEvidence const& seen, double tail, EvidenceParameters const& p)
      : has_height_{seen.height.has_value()}, has_width_{seen.width.has_value()}, has_type_{
                                                                                      seen.type_height.has_value()} {
    constexpr double least = 5; // mm; boards leave no less
    auto const boards = p.boards.count() * (seen.of == MeasureOf::leaf ? 0 : seen.of == MeasureOf::binding ? 1 : 0.5);
    auto const step = seen.rounded_up_to.count();
    auto const logarithm = [&](double length) { return real::log(length > least ? length : least); };
    interval_ = step > 0 && has_height_ != has_width_;
    // of two sides stated in steps the middle of the step is taken, of one its two ends
    auto const back = interval_ ? 0 : step / 2;
    if (has_height_) height_ = logarithm(seen.height->count() - boards - back);
    if (has_width_) width_ = logarithm(seen.width->count() - boards - back);
    if (interval_) {
      low_ = logarithm((has_height_ ? *seen.height : *seen.width).count() - boards - step);
      fall_ = real::exp(-tail * ((has_height_ ? height_ : width_) - low_));
    }
    if (has_type_) type_ = real::log(seen.type_height->count());
  }
  [[nodiscard]] bool none() const { return !has_height_ && !has_width_; }
  [[nodiscard]] bool has_type() const { return has_type_; }

  /// How likely the size is if a leaf of that kind came of the population; `uncut` is what the leaf would be larger.
  [[nodiscard]] double size(SheetDensity const& sheets, LeafShape const& shape, double uncut) const {
    if (none()) return 1;
    bool const upright = shape.lay.long_side == Axis::left_right; // then the height is of the short side
    auto const to_height = (upright ? shape.log_short : shape.log_long) + uncut;
    auto const to_width = (upright ? shape.log_long : shape.log_short) + uncut;
    if (has_height_ && has_width_)
      return upright ? sheets.of_both(width_ + to_width, height_ + to_height)
                     : sheets.of_both(height_ + to_height, width_ + to_width);
    std::size_t const side = upright == has_height_ ? 1 : 0;
    auto const to = has_height_ ? to_height : to_width, one = has_height_ ? height_ : width_;
    if (!interval_) return sheets.of_side(side, one + to);
    return sheets.side_between(side, low_ + to, one + to, fall_);
  }
  /// How likely the height of the type page is, against one that is as usual.
  [[nodiscard]] double type(SheetDensity const& sheets, LeafShape const& shape, EvidenceParameters const& p) const {
    if (!has_type_) return 1;
    constexpr double least = 2e-4, usual = 0.0064;
    std::size_t const side = shape.lay.long_side == Axis::left_right ? 1 : 0;
    auto const parts = side == 1 ? shape.log_short : shape.log_long;
    auto const variance = p.type_variance + sheets.variance(side);
    auto const x = type_ - (sheets.mean(side) + SheetPopulation::base_loss - parts + p.type_of_uncut);
    auto const base = 1 + x * x / (variance * (type_tails - 2));
    return real::sqrt(usual / variance) / (base * base * (base * base)) + least;
  }
  [[nodiscard]] double by_chance(EvidenceParameters const& p) const {
    if (none()) return 1;
    if (has_height_ && has_width_) return p.chance.both_sides;
    return interval_ ? p.chance.one_side * ((has_height_ ? height_ : width_) - low_) : p.chance.one_side;
  }
};

/// Weighs all kinds of leaf.
class Weigher {
  Counted const& counted_;
  EvidenceParameters const& p_;
  Assumptions const& assumed_;
  PaperModel const& model_;
  LogMeasures measures_;
  std::array<EvidenceRow const*, evidence_kinds>
      seen_{};                                 // rows that were seen, but for size, type page and chain lines
  std::size_t seen_count_{}, seen_of_kinds_{}; // those by scheme last
  std::array<SheetDensity, population_count> populations_{};
  std::vector<SheetDensity> stocks_{};
  double own_paper_{}; // share of all stocks
  Priors const& priors_;
  Tallies& tallies_;

  [[nodiscard]] SheetDensity density(SheetPopulation const& sheets, double tail) const {
    auto const& loss = p_.loss_of_state[static_cast<std::size_t>(counted_.seen.state)];
    auto const spread = counted_.of_paper ? 1 : p_.vellum_variance;
    SheetDensity density{sheets.log_long + loss.larger, sheets.log_short + loss.larger, spread * sheets.long_variance,
                         spread * sheets.covariance,    spread * sheets.short_variance, loss.tail * tail};
    if (counted_.seen.state == LeafState::unknown)
      density.crop(p_.cropped_unsaid, p_.loss_of_state[static_cast<std::size_t>(LeafState::cropped)].tail);
    return density;
  }
  /// By how much a leaf of that kind is smaller than a folio would make it.
  [[nodiscard]] double uncut(LeafShape const& shape) const {
    if (counted_.seen.state == LeafState::uncut) return 0;
    return p_.loss_of_halving * ((shape.log_long + shape.log_short) * 1.4426950408889634 - 1);
  }
  /// How common a kind is among those of as many leaves.
  [[nodiscard]] double share(LeafShape const& shape) const {
    double all = 0;
    for (std::size_t s = 0; s < shape.sharers.size(); ++s) all += shape.sharers[s] * priors_.shapes[s];
    return (priors_.divisions_alike ? 1 : shape.share) *
           priors_.shapes[static_cast<std::size_t>(shape.format.shape())] / all;
  }
  /// Size and type page of a kind: each alone and both, summed over its paper; all hold the prior.
  struct OnPaper {
    double prior{}, size{}, type{}, both{}, best{-1};
    std::size_t paper{};

    void add(std::size_t number, double share, double of_size, double of_type) {
      prior += share, size += share * of_size, type += share * of_type;
      auto const here = share * of_size * of_type;
      both += here;
      if (here > best) best = here, paper = number;
    }
  };
  [[nodiscard]] OnPaper on_paper(LeafShape const& shape) const {
    OnPaper sum;
    auto const among = share(shape);
    auto const& shares = tallies_.joint[shape.ranked];
    auto const larger = uncut(shape);
    for (std::size_t k = 0; k < population_count; ++k)
      sum.add(k, (1 - own_paper_) * among * shares[k], measures_.size(populations_[k], shape, larger),
              measures_.type(populations_[k], shape, p_));
    auto const format = stocks_.empty() ? 0 : sum_of(shares);
    for (std::size_t s = 0; s < stocks_.size(); ++s)
      sum.add(population_count + s, assumed_.stocks[s].share * among * format,
              measures_.size(stocks_[s], shape, larger), measures_.type(stocks_[s], shape, p_));
    return sum;
  }
  /// What the other evidence says of a kind on one of the two papers, without the chain lines of the one leaf.
  struct Other {
    double together{1}, best{-1};
    std::size_t scheme{};
    std::array<double, evidence_kinds> alone{};
  };
  [[nodiscard]] Other other(LeafShape const& shape, bool twofold) const {
    Other sum;
    auto const& schemes = scheme_facts();
    sum.scheme = static_cast<std::size_t>(shape.schemes[0]);
    for (std::size_t i = 0; i < seen_of_kinds_; ++i) {
      auto const here = seen_[i]->likelihood({counted_, shape, schemes[sum.scheme], twofold});
      sum.together *= here, sum.alone[static_cast<std::size_t>(seen_[i]->kind)] = here;
    }
    auto const& gathered = counted_.seen.gathering_leaves;
    if (seen_count_ == seen_of_kinds_ && !gathered) return sum;
    double by_scheme = 0;
    auto const part = 1 / static_cast<double>(shape.schemes.size());
    for (auto const number : shape.schemes) {
      auto const& scheme = schemes[static_cast<std::size_t>(number)];
      double fit = 1;
      for (auto i = seen_of_kinds_; i < seen_count_; ++i) {
        auto const here = seen_[i]->likelihood({counted_, shape, scheme, twofold});
        fit *= here, sum.alone[static_cast<std::size_t>(seen_[i]->kind)] += part * here;
      }
      by_scheme += part * fit;
      // of schemes that fit alike the first is named that gathers as was seen: a hair, which parts only equals
      if (gathered && scheme.gathers(*gathered)) fit *= 1.001;
      if (fit > sum.best * (1 + 1e-9)) sum.best = fit, sum.scheme = static_cast<std::size_t>(number);
    }
    sum.together *= by_scheme;
    return sum;
  }
  void add(LeafShape const& shape, std::size_t reading) {
    auto const paper = on_paper(shape);
    std::array<Other, 2> others{other(shape, false), {}};
    others[1] = seen_count_ > 0 ? other(shape, true) : others[0];
    std::array<double, 2> const share{1 - counted_.age.twofold, counted_.age.twofold};
    auto& tally = tallies_.of_format[shape.format_number];
    tallies_.count = (std::max)(tallies_.count, shape.format_number + 1);
    tally.prior += paper.prior;
    tally.alone[static_cast<std::size_t>(EvidenceKind::size)] += paper.size;
    tally.alone[static_cast<std::size_t>(EvidenceKind::type_page)] += paper.type;
    ByChains together{};
    double twofold = 0, chains_alone = 0;
    for (std::size_t m = 0; m < 2; ++m) {
      for (std::size_t i = 0; i < evidence_kinds; ++i) tally.alone[i] += paper.prior * share[m] * others[m].alone[i];
      auto const here = paper.both * share[m] * others[m].together;
      for (std::size_t r = 0; r < together.size(); ++r) {
        auto const chains =
            r == 0 ? 1 : chains_likelihood(shape.chain_lines, static_cast<ChainLines>(r), m == 1, p_.chain_slip);
        together[r] += here * chains;
        if (r == reading) chains_alone += share[m] * chains, twofold += m == 1 ? here * chains : 0;
      }
    }
    tally.alone[static_cast<std::size_t>(EvidenceKind::chain_lines)] += paper.prior * chains_alone;
    tally.twofold += twofold;
    for (std::size_t r = 0; r < together.size(); ++r) tally.together[r] += together[r];
    if (tally.kind != nullptr && together[reading] <= tally.best) return;
    tally.kind = &shape, tally.best = together[reading], tally.paper = paper.paper;
    tally.scheme = others[twofold > together[reading] / 2 ? 1 : 0].scheme;
  }

public:
  Weigher(Counted const& counted, Assumptions const& assumed, Priors const& priors, Tallies& tallies)
      : counted_{counted}, p_{counted.parameters}, assumed_{assumed}, model_{assumed.model != nullptr
                                                                                 ? *assumed.model
                                                                                 : fitted_paper_model()},
        measures_{counted.seen, model_.tail() * p_.loss_of_state[static_cast<std::size_t>(counted.seen.state)].tail,
                  p_},
        priors_{priors}, tallies_{tallies} {
    for (bool const by_scheme : {false, true}) {
      for (auto const& row : evidence_rows)
        if (row.likelihood != nullptr && row.kind != EvidenceKind::chain_lines && row.by_scheme == by_scheme &&
            row.seen(counted))
          seen_[seen_count_++] = &row;
      if (!by_scheme) seen_of_kinds_ = seen_count_;
    }
    for (std::size_t k = 0; k < population_count; ++k)
      populations_[k] = density(model_.populations()[k], model_.tail());
    for (auto const& stock : assumed.stocks) {
      constexpr double variance = 0.0015, covariance = 0.0005; // sheets of one stock, and slips of rulers (proposed)
      stocks_.push_back(density({real::log(stock.sheet.long_side().count()) - SheetPopulation::base_loss,
                                 real::log(stock.sheet.short_side().count()) - SheetPopulation::base_loss, variance,
                                 covariance, variance},
                                model_.tail()));
      own_paper_ += stock.share;
    }
    std::optional<FormatShares> own;
    if (assumed.priors) {
      own.emplace();
      for (std::size_t f = 0; f < ranked_leaves.size(); ++f) (*own)[f] = priors.of(ranked_leaves[f]);
      divide(*own, sum_of(*own));
    }
    tallies.joint = model_.joint(counted.seen.place, counted.seen.year, own ? &*own : nullptr);
    for (auto& format : tallies.joint)
      for (auto& one : format) one *= 1 - priors.none_of_these;
  }
  /// Returns the logarithm of the height of a leaf on the paper that explains a format best, before any binder.
  [[nodiscard]] double log_height(Tally const& tally) const {
    bool const upright = tally.kind->lay.long_side == Axis::left_right;
    auto const& sheets =
        tally.paper < population_count ? populations_[tally.paper] : stocks_[tally.paper - population_count];
    return sheets.mean(upright ? 1 : 0) + SheetPopulation::base_loss -
           (upright ? tally.kind->log_short : tally.kind->log_long);
  }
  /// How likely the size is on each population alone.
  [[nodiscard]] std::array<double, population_count> sizes(LeafShape const& shape) const {
    std::array<double, population_count> sizes;
    for (std::size_t k = 0; k < population_count; ++k) sizes[k] = measures_.size(populations_[k], shape, uncut(shape));
    return sizes;
  }
  /// Fills the tallies. `reading`: how the chain lines are read.
  void weigh(std::size_t reading) {
    double chance = priors_.none_of_these * measures_.by_chance(p_);
    for (auto const& row : evidence_rows)
      if (row.kind != EvidenceKind::chain_lines && row.seen(counted_)) chance *= row.by_chance(counted_);
    tallies_.none = {chance, chance * p_.chance.chain_lines, chance * p_.chance.chain_lines};
    for (auto const& shape : leaf_shapes()) add(shape, reading);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
