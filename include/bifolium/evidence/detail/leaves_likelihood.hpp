// SPDX-License-Identifier: MIT
/// The probability of the marks and chain lines of several leaves of one gathering, if a scheme folded them. Each sheet
/// can lie in either direction, can be of double paper, and has one mark or two; either all sheets of the paper are
/// marked or none.
///
/// The direction in which a sheet lies moves its marks and not its chain lines; double paper turns the chain lines. So
/// each sheet is a product of two sums instead of a sum over four cases.
#pragma once

#include <bifolium/evidence/detail/gathering_pattern.hpp>
#include <bifolium/evidence/detail/marks_likelihood.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns true if chain lines are told. A single leaf cannot have both: that tells nothing of it.
constexpr bool run_one_way(ChainLines chains) {
  return chains == ChainLines::vertical || chains == ChainLines::horizontal;
}

/// The leaves with evidence, asked of one pattern of a gathering after the other.
class LeavesAsked {
  static constexpr std::size_t most = std::tuple_size_v<EvidenceOfLeaves>;
  /// A leaf with evidence. What it shows has a probability for each direction of the chain lines that the fold gives, on
  /// single and on double paper, and for each place where it may put the mark; without such evidence they are all 1.
  struct Shown {
    int leaf;
    double chains[3][2];       // indexed by `ChainLines`
    double marks[8];           // indexed by `MarkPlace`
    std::size_t within, quire; // index in the gathering of the current scheme; of it among several, from 0
  };
  /// The evidence of the leaves of one sheet so far: chain lines as in the fold or turned, marks for each way in which
  /// the sheet lies.
  struct SheetShown {
    std::size_t number;
    double chains[2], one[2], two[2];
  };
  Shown shown_[most];
  std::size_t count_{};
  int leaves_, unit_{}; // of the gathering, and of the gathering of the current scheme
  double marked_, second_, twofold_, by_chance_{1};
  double unmarked_{1}; // what paper without marks makes of the marks seen

  /// Finds the places of the leaves in the gathering of a scheme that has `unit` leaves, or in several such gatherings
  /// one inside another. Most schemes have equal gatherings, so the result is stored for the next.
  void find_places(int unit) {
    if (unit == unit_) return;
    unit_ = unit;
    for (std::size_t i = 0; i < count_; ++i) {
      auto const k = shown_[i].leaf;
      shown_[i].within = static_cast<std::size_t>(k - 1);
      if (unit == leaves_) continue;
      // the bifolium, counted from outside, shows the gathering
      int const from_outside = k <= leaves_ / 2 ? k : leaves_ + 1 - k;
      int const quire = (from_outside - 1) / (unit / 2), bifolium = from_outside - quire * (unit / 2);
      shown_[i].quire = static_cast<std::size_t>(quire);
      shown_[i].within = static_cast<std::size_t>((k <= leaves_ / 2 ? bifolium : unit + 1 - bifolium) - 1);
    }
  }

public:
  LeavesAsked(EvidenceOfLeaves const& seen, int leaves, PaperAge const& age, EvidenceParameters const& p)
      : leaves_{leaves}, marked_{p.paper_is_marked}, twofold_{age.twofold} {
    MarkTrust const trust{age, p};
    auto const slip = p.leaf_slip;
    second_ = trust.second;
    for (auto const& one : seen) {
      if (one.leaf == 0) break;
      bool const chains = run_one_way(one.chain_lines), mark = one.mark != MarkPlace::unknown;
      if (!chains && !mark) continue;
      auto& shown = shown_[count_++];
      shown.leaf = one.leaf;
      for (std::size_t way = 0; way < 3; ++way)
        for (std::size_t turned = 0; turned < 2; ++turned) {
          bool const so = (static_cast<ChainLines>(way) == one.chain_lines) != (turned == 1);
          shown.chains[way][turned] = !chains || way == 0 ? 1 : so ? 1 - slip : slip;
        }
      if (chains) by_chance_ *= p.chance.chain_lines;
      for (std::size_t at = 0; at < 8; ++at) {
        auto const there = static_cast<MarkPlace>(at);
        bool const in_leaf = there != MarkPlace::absent && one.mark != MarkPlace::absent;
        shown.marks[at] = !mark || at == 0 ? 1
                          : in_leaf        ? mark_taken_for(there, one.mark, trust)
                                           : (there == one.mark ? 1 - slip : slip);
      }
      if (mark) by_chance_ *= p.chance.mark(one.mark != MarkPlace::absent);
      unmarked_ *= shown.marks[static_cast<std::size_t>(MarkPlace::absent)];
    }
  }
  [[nodiscard]] double by_chance() const { return by_chance_; }
  /// Returns the probability of all leaves in a gathering of this pattern, or in several.
  [[nodiscard]] double of(GatheringPattern const& pattern) {
    SheetShown sheets[most];
    std::size_t met = 0;
    find_places(pattern.size);
    for (std::size_t i = 0; i < count_; ++i) {
      auto const& shown = shown_[i];
      auto const& leaf = pattern.leaves[shown.within];
      auto const number = pattern.size == leaves_ ? leaf.sheet : shown.quire;
      std::size_t at = 0;
      while (at < met && sheets[at].number != number) ++at;
      if (at == met) sheets[met++] = {number, {1, 1}, {1, 1}, {1, 1}};
      auto& sheet = sheets[at];
      for (std::size_t way = 0; way < 2; ++way) {
        sheet.chains[way] *= shown.chains[leaf.chain_lines][way];
        sheet.one[way] *= shown.marks[leaf.one[way]], sheet.two[way] *= shown.marks[leaf.two[way]];
      }
    }
    double one = 1, two = 1, chains = 1;
    for (std::size_t s = 0; s < met; ++s) {
      one *= 0.5 * (sheets[s].one[0] + sheets[s].one[1]);
      two *= 0.5 * (sheets[s].two[0] + sheets[s].two[1]);
      chains *= (1 - twofold_) * sheets[s].chains[0] + twofold_ * sheets[s].chains[1];
    }
    return chains * (marked_ * ((1 - second_) * one + second_ * two) + (1 - marked_) * unmarked_);
  }
};

class LeavesLikelihood {
  double by_chance_;
  double of_scheme_[Attested::count];

public:
  LeavesLikelihood() {} // nothing was seen, and so nothing is asked
  /// Takes the leaves with evidence, of which there is one, and computes the probabilities for all patterns, and for
  /// each scheme the mean of those of its gatherings that fit. `leaves` is the size of the gathering.
  LeavesLikelihood(EvidenceOfLeaves const& seen, int leaves, PaperAge const& age, EvidenceParameters const& p) {
    LeavesAsked asked{seen, leaves, age, p};
    by_chance_ = asked.by_chance();
    auto const& patterns = gathering_patterns();
    GatheringPatterns::Each of_pattern;
    auto* of = of_pattern;
    int unit = 0;
    bool several = false; // gatherings of such a unit one inside another make this one
    for (auto const& pattern : patterns) {
      if (pattern.size != unit) unit = pattern.size, several = unit % 2 == 0 && leaves % unit == 0;
      *of++ = unit == leaves || (several && pattern.of_one_sheet) ? asked.of(pattern) : -1;
    }
    auto const* pattern = patterns.of_gatherings();
    auto* of_scheme = of_scheme_;
    for (auto const& scheme : scheme_facts()) {
      double sum = 0;
      int fitting = 0;
      for (int g = 0; g < scheme.gatherings; ++g)
        if (auto const here = of_pattern[*pattern++]; here >= 0) sum += here, ++fitting;
      auto const right = p.pattern_right;
      *of_scheme++ = fitting > 0 ? right * sum / fitting + (1 - right) * by_chance_ : by_chance_;
    }
  }

  /// Returns the probability of the leaves by chance; see `ChanceOfEvidence`.
  [[nodiscard]] double by_chance() const { return by_chance_; }
  /// Returns the mean over the gatherings of the scheme that have as many leaves or can be combined to as many, or
  /// `by_chance` if there are none.
  [[nodiscard]] double of(std::size_t scheme) const { return of_scheme_[scheme]; }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
