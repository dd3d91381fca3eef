// SPDX-License-Identifier: MIT
/// Computes the probability of the evidence for every kind of leaf on every population of sheets. The common part (the
/// shares of the years and the place, the populations, the evidence of several leaves) is computed first. Then each
/// kind of leaf gives the probability of its size on each population, and of the other evidence on single and on double
/// paper.
#pragma once

#include <bifolium/evidence/detail/evidence_rows.hpp>
#include <bifolium/evidence/detail/kind_shares.hpp>
#include <bifolium/evidence/detail/size_asked.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A value for each reading of the chain lines: as if none were seen, or as vertical or horizontal, indexed by
/// `ChainLines`.
using ByChains = std::array<double, 3>;

/// The sums for one format over its kinds of leaf.
struct Tally {
  LeafShape const* kind{}; ///< the kind that explains the evidence best
  std::size_t scheme{};    ///< the scheme of this kind that fits best
  std::size_t paper{};     ///< the population that explains most, or `population_count` plus the index of a stock
  double prior{}, best{-1};
  std::array<double, evidence_kinds> alone{}; ///< for each kind of evidence by itself, weighted by the prior
  ByChains together{};                        ///< prior times likelihood of all evidence
  double twofold{};                           ///< the part of it on double paper
};
struct Tallies {
  std::array<Tally, most_leaf_shapes> of_format{};
  std::size_t count{};
  ByChains none{};                                 ///< that it is none of these, in the unit of `together`
  std::array<std::uint8_t, evidence_kinds> seen{}; ///< the kinds of evidence that were seen
  std::size_t seen_count{};

  [[nodiscard]] double all(std::size_t chains) const {
    double sum = none[chains];
    for (std::size_t i = 0; i < count; ++i) sum += of_format[i].together[chains];
    return sum;
  }
};

/// Weighs all kinds of leaf.
class Weigher {
  using Densities = std::array<SheetDensity, population_count>;

  Counted const& counted_;
  EvidenceParameters const& p_;
  Assumptions const& assumed_;
  PaperModel const& model_;
  Priors const& priors_;
  Tallies& tallies_;
  LossOfState const& state_;
  LossLaw loss_;
  LogMeasures measures_;
  std::array<EvidenceRow const*, evidence_kinds> seen_{}; // but for size, type page and chain lines; by scheme last
  std::size_t seen_count_{}, seen_of_kinds_{};
  bool by_mould_{}, schemes_by_mould_{}; // what was seen tells single from double paper
  double of_stocks_{};                   // share of all stocks
  std::optional<Densities> skins_{};
  Densities const& papers_;
  SheetsSideBySide<population_count> side_by_side_;
  std::array<std::array<TypePage, 2>, population_count>
      type_pages_;                     // on the long side and the short; if it was measured
  std::optional<JointShares> joint_{}; // how common formats are on each population, or
  FormatShares formats_;               // how common they are, and on which paper, by groups: of one year
  std::array<std::array<double, population_count>, format_groups> groups_;

  [[nodiscard]] static LossLaw loss_of(Counted const& counted, PaperModel const& model) {
    auto const& p = counted.parameters;
    auto const tail = model.tail() * p.loss_of_state[static_cast<std::size_t>(counted.seen.state)].tail;
    if (counted.seen.state != LeafState::unknown) return {tail, 0, tail};
    return {tail, p.cropped_unsaid, tail * p.loss_of_state[static_cast<std::size_t>(LeafState::cropped)].tail};
  }
  /// Skins are of no sheet: of all sizes, about those of the populations.
  [[gnu::cold, gnu::noinline]] static Densities skins(PaperModel const& model, EvidenceParameters const& p) {
    Densities skins;
    for (std::size_t k = 0; k < population_count; ++k) {
      auto const& one = model.populations()[k];
      auto const spread = p.vellum_variance;
      skins[k] = {one.log_long, one.log_short, spread * one.long_variance, spread * one.covariance,
                  spread * one.short_variance};
    }
    return skins;
  }
  [[nodiscard, gnu::cold, gnu::noinline]] SheetDensity of_stock(PaperStock const& stock) const {
    auto const spread = counted_.of_paper ? 1 : p_.vellum_variance;
    // sheets of one stock, and errors of rulers (proposed)
    auto const variance = spread * 0.0015, covariance = spread * 0.0005;
    return {real::log(stock.sheet.long_side().count()) - SheetPopulation::base_loss,
            real::log(stock.sheet.short_side().count()) - SheetPopulation::base_loss, variance, covariance, variance};
  }
  /// By how much the leaf would be larger if it were cut as a folio of the usual state is.
  [[nodiscard]] double uncut(LeafShape const& shape) const {
    if (counted_.seen.state == LeafState::uncut) return -state_.larger;
    return p_.loss_of_halving * ((shape.log_long + shape.log_short) * 1.4426950408889634 - 1) - state_.larger;
  }
  /// Size and type page of a kind, each alone and both, summed over its papers; all include the prior.
  struct OnPaper {
    double prior{}, size{}, type{}, both{};
    std::size_t paper{}; ///< that explains both best
    double best{};       ///< how well, without the prior

    void add(std::size_t k, double share, double of_size, double of_type) {
      auto const here = share * of_size * of_type;
      size += share * of_size, type += share * of_type, both += here;
      if (here > best) best = here, paper = k;
    }
  };
  [[gnu::cold, gnu::noinline]] OnPaper with_stocks(OnPaper sum, LeafShape const& shape, SizeAsked const& sheet,
                                                   double of_format) const {
    auto k = population_count; // the caller's stocks come after the populations
    for (auto const& stock : assumed_.stocks) {
      auto const paper = of_stock(stock);
      sum.add(k++, of_format * stock.share, sheet.on(paper, loss_),
              measures_.has_type() ? measures_.type(TypePage{paper, side_of_type(shape), p_}, shape) : 1);
    }
    return sum;
  }
  /// Returns the side of the sheet of which the type page is a part.
  static std::size_t side_of_type(LeafShape const& shape) { return shape.lay.long_side == Axis::left_right ? 1 : 0; }
  /// `share`: of this kind among those with as many leaves.
  [[nodiscard, gnu::always_inline]] OnPaper on_paper(LeafShape const& shape, double share) const {
    auto const among = share * (1 - priors_.none_of_these) * (joint_ ? 1 : formats_[shape.ranked]);
    auto const& shares = joint_ ? (*joint_)[shape.ranked] : groups_[shape.group];
    auto const of_format = joint_ ? sum_of(shares) : 1;
    auto const sheet = measures_.implied(shape, uncut(shape));
    auto const sizes = sheet.on_each(papers_.data(), side_by_side_, loss_);
    OnPaper sum{among * of_format};
    auto const of_model = 1 - of_stocks_;
    if (measures_.has_type())
      for (std::size_t k = 0; k < population_count; ++k)
        sum.add(k, of_model * shares[k], sizes[k], measures_.type(type_pages_[k][side_of_type(shape)], shape));
    else
      for (std::size_t k = 0; k < population_count; ++k) sum.add(k, of_model * shares[k], sizes[k], 1);
    if (!assumed_.stocks.empty()) sum = with_stocks(sum, shape, sheet, of_format);
    sum.size *= among, sum.type *= among, sum.both *= among;
    return sum;
  }
  /// The other evidence for a kind on one of the two papers, without the chain lines of the one leaf.
  struct Other {
    std::size_t scheme;
    double of_kind, of_schemes;
    std::array<double, evidence_kinds> alone; // of the rows seen
    [[nodiscard]] double together() const { return of_kind * of_schemes; }
  };
  /// Asks the evidence in which the schemes of one kind agree.
  void ask_kind(Other& other, LeafShape const& shape, bool twofold) const {
    auto const& scheme = scheme_facts()[other.scheme];
    other.of_kind = 1;
    for (std::size_t i = 0; i < seen_of_kinds_; ++i)
      other.of_kind *= other.alone[i] = seen_[i]->likelihood({counted_, shape, scheme, twofold});
  }
  /// Asks the evidence in which they differ, and finds the one that fits best.
  void ask_schemes(Other& other, LeafShape const& shape, bool twofold) const {
    if (seen_count_ == seen_of_kinds_) return;
    auto const& gathered = counted_.seen.gathering_leaves;
    double best = -1;
    auto const part = 1 / static_cast<double>(shape.schemes.size());
    other.of_schemes = 0;
    for (auto i = seen_of_kinds_; i < seen_count_; ++i) other.alone[i] = 0;
    for (auto const number : shape.schemes) {
      auto const& scheme = scheme_facts()[static_cast<std::size_t>(number)];
      double fit = 1;
      for (auto i = seen_of_kinds_; i < seen_count_; ++i) {
        auto const here = seen_[i]->likelihood({counted_, shape, scheme, twofold});
        fit *= here, other.alone[i] += part * here;
      }
      other.of_schemes += part * fit;
      // of schemes that fit equally, one with gatherings of the given size is named first: a small factor that only
      // separates equal ones
      constexpr double first = 1.001;
      auto const least = best * (1 + 1e-9);
      if (gathered && fit * first > least && scheme.gathers(*gathered)) fit *= first;
      if (fit > least) best = fit, other.scheme = static_cast<std::size_t>(number);
    }
  }
  [[gnu::always_inline]] void add(LeafShape const& shape, double share, std::size_t reading) {
    auto const paper = on_paper(shape, share);
    auto const& gathered = counted_.seen.gathering_leaves;
    Other single, on_double;
    single.scheme = gathered ? shape.gathering_in(*gathered) : static_cast<std::size_t>(shape.schemes[0]);
    single.of_schemes = 1;
    ask_kind(single, shape, false);
    ask_schemes(single, shape, false);
    if (by_mould_) {
      on_double = single;
      ask_kind(on_double, shape, true);
      if (schemes_by_mould_) ask_schemes(on_double, shape, true);
    }
    auto const& twofold = by_mould_ ? on_double : single;
    auto const part = counted_.age.twofold;
    auto& tally = tallies_.of_format[shape.format_number];
    tallies_.count = (std::max)(tallies_.count, shape.format_number + 1);
    tally.prior += paper.prior;
    tally.alone[static_cast<std::size_t>(EvidenceKind::size)] += paper.size;
    tally.alone[static_cast<std::size_t>(EvidenceKind::type_page)] += paper.type;
    for (std::size_t i = 0; i < seen_count_; ++i)
      tally.alone[static_cast<std::size_t>(seen_[i]->kind)] +=
          paper.prior * ((1 - part) * single.alone[i] + part * twofold.alone[i]);
    auto const on_single = paper.both * (1 - part) * single.together(),
               on_twofold = paper.both * part * twofold.together();
    auto const read = [&](std::size_t r, bool turned) {
      return r == 0 ? 1 : chains_likelihood(shape.chain_lines, static_cast<ChainLines>(r), turned, p_.chain_slip);
    };
    auto const here = on_single * read(reading, false), here_twofold = on_twofold * read(reading, true);
    if (reading > 0) // if they run both ways, no format alone makes that likelier
      tally.alone[static_cast<std::size_t>(EvidenceKind::chain_lines)] +=
          paper.prior * ((1 - part) * read(reading, false) + part * read(reading, true));
    tally.twofold += here_twofold;
    tally.together[reading] += here + here_twofold;
    if (counted_.chains() == ChainLines::both)
      for (std::size_t r = 1; r < tally.together.size(); ++r)
        tally.together[r] += on_single * read(r, false) + on_twofold * read(r, true);
    if (tally.kind != nullptr && here + here_twofold <= tally.best) return;
    tally.kind = &shape, tally.best = here + here_twofold, tally.paper = paper.paper;
    tally.scheme = here_twofold > here ? twofold.scheme : single.scheme;
  }
  void find_shares() {
    auto const& seen = counted_.seen;
    if (assumed_.priors) {
      for (std::size_t f = 0; f < ranked_leaves.size(); ++f) formats_[f] = priors_.of(ranked_leaves[f]);
      divide(formats_, sum_of(formats_));
    }
    if (!seen.year || !seen.year->is_one_year()) {
      joint_ = model_.joint(seen.place, seen.year, assumed_.priors ? &formats_ : nullptr);
      return;
    }
    if (!assumed_.priors) formats_ = model_.shares(seen.place, seen.year->from);
    groups_ = model_.papers(seen.place, seen.year->from);
  }

public:
  Weigher(Counted const& counted, Assumptions const& assumed, PaperModel const& model, Priors const& priors,
          Tallies& tallies)
      : counted_{counted}, p_{counted.parameters}, assumed_{assumed}, model_{model}, priors_{priors}, tallies_{tallies},
        state_{p_.loss_of_state[static_cast<std::size_t>(counted.seen.state)]}, loss_{loss_of(counted, model)},
        measures_{counted.seen, loss_.tail, p_}, papers_{counted.of_paper ? model.densities()
                                                                          : skins_.emplace(skins(model, p_))},
        side_by_side_{papers_.data(), loss_} {
    for (auto const& stock : assumed.stocks) of_stocks_ += stock.share;
    find_shares();
    for (bool const by_scheme : {false, true}) {
      for (auto const& row : evidence_rows) {
        if (row.likelihood == nullptr || row.by_scheme != by_scheme || !row.seen(counted)) continue;
        seen_[seen_count_++] = &row;
        if (row.by_mould == nullptr || !row.by_mould(counted)) continue;
        by_mould_ = true, schemes_by_mould_ = by_scheme;
      }
      if (!by_scheme) seen_of_kinds_ = seen_count_;
    }
    if (!measures_.has_type()) return;
    for (std::size_t k = 0; k < population_count; ++k)
      type_pages_[k] = {TypePage{papers_[k], 0, p_}, TypePage{papers_[k], 1, p_}};
  }
  /// Returns the logarithm of the height of a leaf on the paper that explains a format best, before any binding.
  [[nodiscard]] double log_height(Tally const& tally) const {
    bool const upright = tally.kind->lay.long_side == Axis::left_right;
    bool const own = tally.paper >= population_count;
    auto const paper = own ? of_stock(assumed_.stocks[tally.paper - population_count]) : papers_[tally.paper];
    return paper.mean(upright ? 1 : 0) + SheetPopulation::base_loss -
           (upright ? tally.kind->log_short : tally.kind->log_long);
  }
  /// Returns the probability of the size on each population alone.
  [[nodiscard]] std::array<double, population_count> sizes(LeafShape const& shape) const {
    return measures_.implied(shape, uncut(shape)).on_each(papers_.data(), side_by_side_, loss_);
  }
  /// Fills the tallies. `reading`: the reading of the chain lines.
  void weigh(std::size_t reading) {
    double chance = priors_.none_of_these * measures_.by_chance(p_);
    for (auto const& row : evidence_rows) {
      if (!row.seen(counted_)) continue;
      tallies_.seen[tallies_.seen_count++] = static_cast<std::uint8_t>(row.kind);
      chance *= row.by_chance(counted_);
    }
    tallies_.none = {chance, chance * p_.chance.chain_lines, chance * p_.chance.chain_lines};
    auto const kinds = leaf_shapes();
    KindShares own_shares;
    if (assumed_.priors) own_shares = kind_shares(priors_);
    auto const& shares = assumed_.priors ? own_shares : usual_kind_shares();
    for (std::size_t i = 0; i < kinds.size(); ++i) add(kinds[i], shares[i], reading);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
