// SPDX-License-Identifier: MIT
/// How likely the marks and chain lines of several leaves of one gathering are, if a scheme folded them. Each sheet may lie
/// either way, may have its chains turned, and has one mark or two; the paper is marked or not for all alike.
///
/// Which way a sheet lies moves its marks and leaves its chains alone, and turning does the reverse, so each sheet is a
/// product of two sums instead of a sum over four cases; and how far a period trusts its chain lines comes in at the very
/// end. So every leaf is looked at once, whatever the number of periods and sheets.
#pragma once

#include <bifolium/evidence/detail/gathering_pattern.hpp>
#include <bifolium/evidence/detail/paper_likelihood.hpp>
#include <bifolium/evidence/priors.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The degrees of trust that periods call for, each once: periods mostly agree with their neighbours.
class Trusts {
  std::array<Trustworthiness, std::tuple_size_v<PriorsByPeriod>> all_{};
  std::array<std::size_t, std::tuple_size_v<PriorsByPeriod>> of_period_{};
  std::size_t size_{};

public:
  void add(std::size_t period, Trustworthiness const& trust) {
    std::size_t i = 0;
    while (i < size_ && !(all_[i] == trust)) ++i;
    if (i == size_) all_[size_++] = trust;
    of_period_[period] = i;
  }
  [[nodiscard]] std::size_t size() const { return size_; }
  [[nodiscard]] Trustworthiness const& operator[](std::size_t i) const { return all_[i]; }
  /// Which of them the period has.
  [[nodiscard]] std::size_t of(std::size_t period) const { return of_period_[period]; }
};
/// An answer for each of the `Trusts`.
using ByTrust = std::array<double, std::tuple_size_v<PriorsByPeriod>>;

class LeavesLikelihood {
  /// A leaf seen, and how likely what it shows is wherever the fold puts the mark.
  struct Shown {
    int leaf{};
    MarkPlace mark{};
    ChainLines chain_lines{};
    std::array<double, 8> marks{};
    std::size_t within{}; // place in the gathering of the scheme last asked, from 0
    int quire{};          // and which of several such gatherings it is
  };
  /// What the leaves of one sheet say so far: chains as the fold has them or turned, marks by how the sheet lies.
  struct SheetShown {
    int number;
    double straight, turned, unmarked;
    std::array<double, 2> one, two;

    void start(int sheet) {
      number = sheet;
      straight = turned = unmarked = 1;
      one = two = {1, 1};
    }
  };
  std::array<Shown, std::tuple_size_v<EvidenceOfLeaves>> shown_{};
  std::size_t count_{};
  int unit_{}; // leaves of the gathering last asked
  double marked_, slip_, by_chance_{1}, in_place_{-1};
  std::array<ByTrust, Attested::count> of_scheme_; // filled by `ask`

  void trust_places(double in_place) {
    if (in_place == in_place_) return;
    in_place_ = in_place;
    for (std::size_t i = 0; i < count_; ++i)
      for (std::size_t at = 1; at < 8 && shown_[i].mark != MarkPlace::unknown; ++at) {
        auto const there = static_cast<MarkPlace>(at), seen = shown_[i].mark;
        shown_[i].marks[at] = there == MarkPlace::absent || seen == MarkPlace::absent
                                  ? (there == seen ? 1 - slip_ : slip_)
                                  : mark_taken_for(there, seen, in_place);
      }
  }
  void look(SheetShown& sheet, LeafFacts const& facts, Shown const& seen) const {
    if (seen.chain_lines != ChainLines::unknown) {
      bool const as_folded = facts.chain_lines == seen.chain_lines;
      sheet.straight *= as_folded ? 1 - slip_ : slip_;
      sheet.turned *= as_folded ? slip_ : 1 - slip_;
    }
    if (seen.mark == MarkPlace::unknown) return;
    sheet.unmarked *= seen.marks[static_cast<std::size_t>(MarkPlace::absent)];
    for (std::size_t lie = 0; lie < 2; ++lie) {
      sheet.one[lie] *= seen.marks[static_cast<std::size_t>(facts.watermark[lie])];
      sheet.two[lie] *= seen.marks[static_cast<std::size_t>(facts.either[lie])];
    }
  }
  /// Finds where the leaves seen are in the gathering of a scheme that has `unit` leaves, or in several of it one inside
  /// another. Most schemes gather alike, so it is kept for the next.
  void find_places(int unit, int leaves) {
    if (unit == unit_) return;
    unit_ = unit;
    for (std::size_t i = 0; i < count_; ++i) {
      auto const k = shown_[i].leaf;
      shown_[i].within = static_cast<std::size_t>(k - 1);
      if (unit == leaves) continue;
      // the bifolium, counted from outside, tells which quire it is of
      int const from_outside = k <= leaves / 2 ? k : leaves + 1 - k;
      shown_[i].quire = (from_outside - 1) / (unit / 2);
      int const bifolium = from_outside - shown_[i].quire * (unit / 2);
      shown_[i].within = static_cast<std::size_t>((k <= leaves / 2 ? bifolium : unit + 1 - bifolium) - 1);
    }
  }
  /// All leaves, in the gathering of a scheme or in several of it: how likely they are, for those degrees of trust that
  /// trust the places of marks as `trust` does.
  [[nodiscard]] ByTrust gathering(View<LeafFacts const> folded, int leaves, Trusts const& trusts, std::size_t trust) {
    std::array<SheetShown, std::tuple_size_v<EvidenceOfLeaves>> sheets; // filled as far as it is read
    std::size_t met = 0;
    auto const unit = static_cast<int>(folded.size());
    find_places(unit, leaves);
    for (std::size_t i = 0; i < count_; ++i) {
      auto const& facts = folded[shown_[i].within];
      auto const number = unit == leaves ? facts.sheet : shown_[i].quire;
      std::size_t at = 0;
      while (at < met && sheets[at].number != number) ++at;
      if (at == met) sheets[met++].start(number);
      look(sheets[at], facts, shown_[i]);
    }
    double unmarked = 1, one = 1, two = 1;
    for (std::size_t s = 0; s < met; ++s) {
      unmarked *= sheets[s].unmarked;
      one *= (sheets[s].one[0] + sheets[s].one[1]) / 2;
      two *= (sheets[s].two[0] + sheets[s].two[1]) / 2;
    }
    ByTrust likelihood{};
    for (auto t = trust; t < trusts.size(); ++t) {
      if (trusts[t].mark_in_place != trusts[trust].mark_in_place) continue;
      auto const chains = trusts[t].chains, second = trusts[t].second_mark;
      auto all = marked_ * ((1 - second) * one + second * two) + (1 - marked_) * unmarked;
      for (std::size_t s = 0; s < met; ++s) all *= chains * sheets[s].straight + (1 - chains) * sheets[s].turned;
      likelihood[t] = all;
    }
    return likelihood;
  }

public:
  /// Keeps what it needs of the two.
  LeavesLikelihood(EvidenceOfLeaves const& seen, EvidenceParameters const& parameters)
      : marked_{parameters.paper_is_marked}, slip_{parameters.leaf_slip} {
    for (auto const& one : seen) {
      if (one.leaf == 0) break;
      bool const chains = one.chain_lines == ChainLines::vertical || one.chain_lines == ChainLines::horizontal;
      if (!chains && one.mark == MarkPlace::unknown) continue;
      shown_[count_++] = {one.leaf, one.mark, chains ? one.chain_lines : ChainLines::unknown};
      if (chains) by_chance_ *= parameters.chance.chain_lines;
      if (one.mark != MarkPlace::unknown) by_chance_ *= parameters.chance.mark(one.mark != MarkPlace::absent);
    }
  }

  /// Each leaf as it comes; see `ChanceOfSigns`.
  [[nodiscard]] double by_chance() const { return by_chance_; }
  /// Asks all patterns. pre: `leaves` of the gathering seen.
  void ask(int leaves, Trusts const& trusts) {
    std::array<int, Attested::count> fitting{};
    of_scheme_ = {};
    for (std::size_t t = 0; t < trusts.size(); ++t) {
      bool done = false;
      for (std::size_t u = 0; u < t; ++u) done = done || trusts[u].mark_in_place == trusts[t].mark_in_place;
      if (done) continue;
      trust_places(trusts[t].mark_in_place);
      for (auto const& pattern : gathering_patterns()) {
        auto const unit = static_cast<int>(pattern.leaves.size());
        if (unit != leaves && (unit % 2 != 0 || leaves % unit != 0 || !pattern.of_one_sheet)) continue;
        auto const likelihood = gathering(pattern.leaves, leaves, trusts, t);
        for (auto const number : pattern.schemes) {
          auto const scheme = static_cast<std::size_t>(number);
          if (t == 0) ++fitting[scheme];
          for (std::size_t u = t; u < trusts.size(); ++u) of_scheme_[scheme][u] += likelihood[u];
        }
      }
    }
    for (std::size_t scheme = 0; scheme < fitting.size(); ++scheme)
      for (std::size_t t = 0; t < trusts.size(); ++t)
        of_scheme_[scheme][t] = fitting[scheme] > 0 ? of_scheme_[scheme][t] / fitting[scheme] : by_chance_;
  }
  /// The mean over the gatherings of the scheme that have as many leaves, or can be quired to as many; `by_chance` when
  /// none can. pre: asked.
  [[nodiscard]] ByTrust const& of(std::size_t scheme) const { return of_scheme_[scheme]; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
