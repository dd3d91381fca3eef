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
  ByFormat alone[evidence_kinds]{}; ///< for each of them by itself, weighted by the prior; of others nothing

  [[nodiscard]] double all(std::size_t chains) const {
    double sum = none[chains];
    for (std::size_t i = 0; i < count; ++i) sum += of_format[i].together[chains];
    return sum;
  }
};

/// Weighs all kinds of leaf: first each piece of evidence for all of them, then all evidence for each.
class Weigher {
  /// A value for each kind of leaf.
  using ByKind = double[most_leaf_shapes];

  Counted const& counted_;
  EvidenceParameters const& p_;
  Priors const& priors_;
  bool own_priors_;
  Tallies& tallies_;
  std::span<LeafShape const> kinds_{leaf_shapes(counted_.broader_than_high())};
  SchemeFacts const* schemes_{scheme_facts().data()};
  OnPaper paper_;
  /// What was seen, but for size, type page and chain lines; that in which schemes differ last.
  struct Seen {
    EvidenceRow const* row;
    ByFormat* alone; // its tallies
    bool by_mould;   // it tells single from double paper
  };
  Seen seen_[evidence_kinds];
  std::size_t seen_count_{}, seen_of_kinds_{};
  bool by_mould_{}, schemes_by_mould_{}, both_ways_;

  /// The other evidence on one of the two papers, without the chain lines of the one leaf.
  struct Other {
    ByKind together;
    ByKind alone[evidence_kinds];         // of the rows seen
    std::size_t scheme[most_leaf_shapes]; // that fits best
  };
  Other single_, on_double_;
  ByKind of_schemes_; // the part of `together` in which schemes of a kind differ

  template <class T> static void copy(T const (&from)[most_leaf_shapes], T (&to)[most_leaf_shapes]) {
    for (std::size_t i = 0; i < most_leaf_shapes; ++i) to[i] = from[i];
  }
  /// Asks one piece of evidence in which the schemes of each kind agree.
  void ask_kinds(EvidenceRow const& row, bool twofold, ByKind& likelihoods) const {
    for (std::size_t i = 0; i < kinds_.size(); ++i)
      likelihoods[i] = row.likelihood({counted_, kinds_[i], schemes_[0], twofold});
  }
  /// The same on double paper, after single paper was asked.
  void ask_kinds_on_double(std::size_t r, ByKind& likelihoods) const {
    auto const& row = *seen_[r].row;
    if (row.on_double == nullptr) return ask_kinds(row, true, likelihoods);
    for (std::size_t i = 0; i < kinds_.size(); ++i)
      likelihoods[i] = row.on_double({counted_, kinds_[i], schemes_[0], true}, single_.alone[r][i]);
  }
  /// Asks the evidence in which the schemes of one kind differ, and finds the one that fits best.
  void ask_schemes(Other& other, std::size_t kind, bool twofold) {
    auto const& shape = kinds_[kind];
    auto const& gathered = counted_.seen.gathering_leaves;
    double best = -1, of_schemes = 0;
    auto const part = 1 / static_cast<double>(shape.schemes.size());
    for (auto i = seen_of_kinds_; i < seen_count_; ++i) other.alone[i][kind] = 0;
    for (auto const number : shape.schemes) {
      auto const& scheme = schemes_[number];
      Case const one{counted_, shape, scheme, twofold};
      double fit = 1;
      for (auto i = seen_of_kinds_; i < seen_count_; ++i) {
        auto const here = seen_[i].row->likelihood(one);
        fit *= here, other.alone[i][kind] += part * here;
      }
      of_schemes += part * fit;
      // of schemes that fit equally, one with gatherings of the given size is named first: a small factor that only
      // separates equal ones
      constexpr double first = 1.001;
      auto const least = best * (1 + 1e-9);
      if (gathered && fit * first > least && scheme.gathers(*gathered)) fit *= first;
      if (fit > least) best = fit, other.scheme[kind] = static_cast<std::size_t>(number);
    }
    of_schemes_[kind] = of_schemes;
  }
  /// Asks all of it on one of the two papers; of double paper only what tells it, after single paper was asked.
  [[gnu::noinline]] void ask(Other& other, bool twofold) {
    for (auto& one : other.together) one = 1;
    for (std::size_t r = 0; r < seen_of_kinds_; ++r) {
      if (!twofold)
        ask_kinds(*seen_[r].row, false, other.alone[r]);
      else if (seen_[r].by_mould)
        ask_kinds_on_double(r, other.alone[r]);
      for (std::size_t i = 0; i < most_leaf_shapes; ++i) other.together[i] *= other.alone[r][i];
    }
    if (seen_count_ > seen_of_kinds_ && (!twofold || schemes_by_mould_))
      for (std::size_t i = 0; i < kinds_.size(); ++i) ask_schemes(other, i, twofold);
    for (std::size_t i = 0; i < most_leaf_shapes; ++i) other.together[i] *= of_schemes_[i];
  }
  /// Asks it on both papers. Returns what was found on double paper.
  Other const& ask() {
    auto const gathered = counted_.seen.gathering_leaves.value_or(0);
    for (std::size_t i = 0; i < kinds_.size(); ++i) single_.scheme[i] = kinds_[i].gathering_in(gathered);
    for (auto& one : of_schemes_) one = 1;
    ask(single_, false);
    if (!by_mould_) return single_;
    for (std::size_t r = 0; r < seen_count_; ++r) // what is not asked again; a copy of all of it would be slower
      if (!seen_[r].by_mould || r >= seen_of_kinds_) copy(single_.alone[r], on_double_.alone[r]);
    copy(single_.scheme, on_double_.scheme);
    ask(on_double_, true);
    return on_double_;
  }
  /// Returns how likely the chain lines are read so in a leaf of the kind.
  [[nodiscard]] double read(LeafShape const& kind, std::size_t reading, bool turned) const {
    if (reading == 0) return 1;
    return chains_likelihood(kind.chain_lines, static_cast<ChainLines>(reading), turned, p_.chain_slip);
  }
  /// Adds one kind; `share`: of it among those with as many leaves.
  void add(std::size_t i, double share, Other const& twofold, std::size_t reading) {
    auto const& kind = kinds_[i];
    auto const& sums = paper_.sums();
    auto const among = share * paper_.unit(kind), prior = among * sums.prior[i];
    auto const double_part = counted_.age.twofold, single_part = 1 - double_part;
    auto const format = kind.format_number;
    auto& tally = tallies_.of_format[format];
    if (format >= tallies_.count) tallies_.count = format + 1;
    tally.prior += prior;
    auto const alone = [&](EvidenceKind of) -> double& { return tallies_.alone[static_cast<std::size_t>(of)][format]; };
    alone(EvidenceKind::size) += among * sums.size[i];
    alone(EvidenceKind::type_page) += among * sums.type[i];
    for (std::size_t r = 0; r < seen_count_; ++r)
      (*seen_[r].alone)[format] += prior * (single_part * single_.alone[r][i] + double_part * twofold.alone[r][i]);
    auto const on_single = among * sums.both[i] * single_part * single_.together[i];
    auto const on_double = among * sums.both[i] * double_part * twofold.together[i];
    auto const straight = read(kind, reading, false), turned = read(kind, reading, true);
    if (reading > 0) // if they run both ways, no format alone makes that likelier
      alone(EvidenceKind::chain_lines) += prior * (single_part * straight + double_part * turned);
    auto const here = on_single * straight, here_twofold = on_double * turned;
    tally.twofold += here_twofold;
    tally.together[reading] += here + here_twofold;
    if (both_ways_)
      for (std::size_t r = 1; r < chain_readings; ++r)
        tally.together[r] += on_single * read(kind, r, false) + on_double * read(kind, r, true);
    if (tally.kind != nullptr && here + here_twofold <= tally.best) return;
    tally.kind = &kind, tally.best = here + here_twofold, tally.paper = sums.paper[i];
    tally.scheme = here_twofold > here ? twofold.scheme[i] : single_.scheme[i];
  }

public:
  Weigher(Counted const& counted, Assumptions const& assumed, PaperModel const& model, Tallies& tallies)
      : counted_{counted}, p_{counted.parameters}, priors_{assumed.priors ? *assumed.priors : usual_priors},
        own_priors_{assumed.priors.has_value()}, tallies_{tallies}, paper_{counted, assumed, model},
        both_ways_{counted.chains() == ChainLines::both} {
    for (bool const by_scheme : {false, true}) {
      for (auto const& row : evidence_rows) {
        if (row.likelihood == nullptr || row.by_scheme != by_scheme || !row.seen(counted)) continue;
        bool const by_mould = row.by_mould != nullptr && row.by_mould(counted);
        seen_[seen_count_++] = {&row, &tallies.alone[static_cast<std::size_t>(row.kind)], by_mould};
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
      bool const seen = row.seen(counted_);
      if (!seen) continue;
      tallies_.seen[tallies_.seen_count++] = static_cast<std::uint8_t>(row.kind);
      chance *= row.by_chance(counted_);
    }
    tallies_.none[0] = chance;
    for (std::size_t r = 1; r < chain_readings; ++r) tallies_.none[r] = chance * p_.chance.chain_lines;
    auto shares = own_priors_ ? kind_shares(priors_) : usual_kind_shares();
    if (auto const& leaves = counted_.seen.gathering_leaves)
      share_by_gathering(shares, *leaves, counted_.seen.alternating_with.value_or(*leaves));
    if (counted_.broader_than_high() && !priors_.divisions_alike) // a broadside is seldom so
      for (std::size_t i = 0; i < kinds_.size() && kinds_[i].leaves == 1; ++i) shares[i] *= kinds_[i].share;
    auto const& twofold = ask();
    auto const some = 1 - priors_.none_of_these;
    for (std::size_t i = 0; i < kinds_.size(); ++i) add(i, some * shares[i], twofold, reading);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
