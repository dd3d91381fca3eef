// SPDX-License-Identifier: MIT
/// Computes the probability of the evidence for every kind of leaf on every population of sheets. The common part (the
/// shares of the years and the place, the populations, the evidence of several leaves) is computed first. Then each
/// kind of leaf gives the probability of its size on each population, and of the other evidence on single and on double
/// paper.
#pragma once

#include <bifolium/evidence/detail/kind_shares.hpp>
#include <bifolium/evidence/detail/on_paper.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A value for each reading of the chain lines: as if none were seen, or as vertical or horizontal, indexed by
/// `ChainLines`.
inline constexpr std::size_t chain_readings = 3;
using ByChains = double[chain_readings];
/// A value for each format.
using ByFormat = double[most_leaf_shapes];

/// The sums for one format over its kinds of leaf.
struct Tally {
  LeafShape const* kind{}; ///< the kind that explains the evidence best
  std::size_t scheme{};    ///< the scheme of this kind that fits best
  std::size_t paper{};     ///< the population that explains most, or `population_count` plus the index of a stock
  double prior{}, best{-1};
  ByChains together{}; ///< prior times likelihood of all evidence
  double twofold{};    ///< the part of it on double paper
};
struct Tallies {
  Tally of_format[most_leaf_shapes];
  std::size_t count{};
  ByChains none{};                     ///< that it is none of these, in the unit of `together`
  std::uint8_t seen[evidence_kinds]{}; ///< the kinds of evidence that were seen
  std::size_t seen_count{};
  ByFormat alone[evidence_kinds]{}; ///< for each of them by itself, weighted by the prior

  [[nodiscard]] double all(std::size_t chains) const {
    double sum = none[chains];
    for (std::size_t i = 0; i < count; ++i) sum += of_format[i].together[chains];
    return sum;
  }
};

/// Weighs all kinds of leaf.
class Weigher {
  Counted const& counted_;
  EvidenceParameters const& p_;
  Priors const& priors_;
  bool own_priors_;
  Tallies& tallies_;
  OnPaper paper_;
  /// What was seen, but for size, type page and chain lines; that in which schemes differ last.
  struct Seen {
    EvidenceRow const* row;
    bool by_mould; // it tells single from double paper
  };
  Seen seen_[evidence_kinds];
  std::size_t seen_count_{}, seen_of_kinds_{};
  bool by_mould_{}, schemes_by_mould_{};

  /// The other evidence for a kind on one of the two papers, without the chain lines of the one leaf.
  struct Other {
    std::size_t scheme;
    double of_kind, of_schemes;
    double alone[evidence_kinds]; // of the rows seen
    [[nodiscard]] double together() const { return of_kind * of_schemes; }
  };
  /// Asks the evidence in which the schemes of one kind agree.
  void ask_kind(Other& other, LeafShape const& shape, bool twofold) const {
    Case const one{counted_, shape, scheme_facts()[other.scheme], twofold};
    other.of_kind = 1;
    for (std::size_t i = 0; i < seen_of_kinds_; ++i) {
      if (!twofold || seen_[i].by_mould) other.alone[i] = seen_[i].row->likelihood(one);
      other.of_kind *= other.alone[i];
    }
  }
  /// Asks the evidence in which they differ, and finds the one that fits best.
  void ask_schemes(Other& other, LeafShape const& shape, bool twofold) const {
    auto const& gathered = counted_.seen.gathering_leaves;
    double best = -1;
    auto const part = 1 / static_cast<double>(shape.schemes.size());
    other.of_schemes = 0;
    for (auto i = seen_of_kinds_; i < seen_count_; ++i) other.alone[i] = 0;
    for (auto const number : shape.schemes) {
      auto const& scheme = scheme_facts()[static_cast<std::size_t>(number)];
      Case const one{counted_, shape, scheme, twofold};
      double fit = 1;
      for (auto i = seen_of_kinds_; i < seen_count_; ++i) {
        auto const here = seen_[i].row->likelihood(one);
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
  /// Asks all of it, on single paper and, if what was seen tells it, on double paper. Returns what holds for double paper.
  Other const& ask(LeafShape const& shape, Other& single, Other& on_double) const {
    auto const& gathered = counted_.seen.gathering_leaves;
    single.scheme = gathered ? shape.gathering_in(*gathered) : static_cast<std::size_t>(shape.schemes[0]);
    single.of_schemes = 1;
    ask_kind(single, shape, false);
    bool const of_schemes = seen_count_ > seen_of_kinds_;
    if (of_schemes) ask_schemes(single, shape, false);
    if (!by_mould_) return single;
    on_double = single;
    ask_kind(on_double, shape, true);
    if (of_schemes && schemes_by_mould_) ask_schemes(on_double, shape, true);
    return on_double;
  }
  /// Adds one kind; `share`: of it among those with as many leaves.
  void add(LeafShape const& shape, std::size_t number, double share, std::size_t reading) {
    Other single, on_double;
    auto const& twofold = ask(shape, single, on_double);
    auto const& sums = paper_.sums();
    auto const among = share * (1 - priors_.none_of_these) * paper_.unit(shape);
    auto const prior = among * sums.prior[number], size_and_type = among * sums.both[number];
    auto const part = counted_.age.twofold;
    auto const format = shape.format_number;
    auto& tally = tallies_.of_format[format];
    if (format >= tallies_.count) tallies_.count = format + 1;
    tally.prior += prior;
    auto const alone = [&](EvidenceKind kind) -> double& {
      return tallies_.alone[static_cast<std::size_t>(kind)][format];
    };
    alone(EvidenceKind::size) += among * sums.size[number];
    alone(EvidenceKind::type_page) += among * sums.type[number];
    for (std::size_t i = 0; i < seen_count_; ++i)
      alone(seen_[i].row->kind) += prior * ((1 - part) * single.alone[i] + part * twofold.alone[i]);
    auto const on_single = size_and_type * (1 - part) * single.together(),
               on_twofold = size_and_type * part * twofold.together();
    auto const read = [&](std::size_t r, bool turned) {
      return r == 0 ? 1 : chains_likelihood(shape.chain_lines, static_cast<ChainLines>(r), turned, p_.chain_slip);
    };
    auto const here = on_single * read(reading, false), here_twofold = on_twofold * read(reading, true);
    if (reading > 0) // if they run both ways, no format alone makes that likelier
      alone(EvidenceKind::chain_lines) += prior * ((1 - part) * read(reading, false) + part * read(reading, true));
    tally.twofold += here_twofold;
    tally.together[reading] += here + here_twofold;
    if (counted_.chains() == ChainLines::both)
      for (std::size_t r = 1; r < chain_readings; ++r)
        tally.together[r] += on_single * read(r, false) + on_twofold * read(r, true);
    if (tally.kind != nullptr && here + here_twofold <= tally.best) return;
    tally.kind = &shape, tally.best = here + here_twofold, tally.paper = sums.paper[number];
    tally.scheme = here_twofold > here ? twofold.scheme : single.scheme;
  }

public:
  Weigher(Counted const& counted, Assumptions const& assumed, PaperModel const& model, Tallies& tallies)
      : counted_{counted}, p_{counted.parameters}, priors_{assumed.priors ? *assumed.priors : usual_priors},
        own_priors_{assumed.priors.has_value()}, tallies_{tallies}, paper_{counted, assumed, model} {
    for (bool const by_scheme : {false, true}) {
      for (auto const& row : evidence_rows) {
        if (row.likelihood == nullptr || row.by_scheme != by_scheme || !row.seen(counted)) continue;
        bool const by_mould = row.by_mould != nullptr && row.by_mould(counted);
        seen_[seen_count_++] = {&row, by_mould};
        if (by_mould) by_mould_ = true, schemes_by_mould_ = by_scheme;
      }
      if (!by_scheme) seen_of_kinds_ = seen_count_;
    }
  }
  [[nodiscard]] OnPaper const& paper() const { return paper_; }
  /// Fills the tallies. `reading`: the reading of the chain lines.
  void weigh(std::size_t reading) {
    double chance = priors_.none_of_these * paper_.measures().by_chance(p_);
    for (auto const& row : evidence_rows) {
      if (!row.seen(counted_)) continue;
      tallies_.seen[tallies_.seen_count++] = static_cast<std::uint8_t>(row.kind);
      chance *= row.by_chance(counted_);
    }
    tallies_.none[0] = chance;
    for (std::size_t r = 1; r < chain_readings; ++r) tallies_.none[r] = chance * p_.chance.chain_lines;
    KindShares own_shares;
    if (own_priors_) own_shares = kind_shares(priors_);
    auto const& shares = own_priors_ ? own_shares : usual_kind_shares();
    std::size_t number = 0;
    for (auto const& shape : leaf_shapes()) {
      add(shape, number, shares[number], reading);
      ++number;
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
