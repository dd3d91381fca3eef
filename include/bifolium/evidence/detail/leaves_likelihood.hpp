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

class LeavesLikelihood {
  static constexpr std::size_t most = std::tuple_size_v<EvidenceOfLeaves>;
  /// A leaf with evidence. What it shows has a probability for each direction of the chain lines that the fold gives,
  /// and for each place where it may put the mark; without such evidence they are all 1.
  struct Shown {
    int leaf{};
    std::array<double, 3> chains{1, 1, 1}, turned{1, 1, 1}; // indexed by `ChainLines`
    std::array<double, 8> marks{1, 1, 1, 1, 1, 1, 1, 1};    // indexed by `MarkPlace`
    std::size_t within{};                                   // index in the gathering of the current scheme, from 0
    int quire{};                                            // index among several such gatherings
  };
  /// The evidence of the leaves of one sheet so far: chain lines as in the fold or turned, marks for each way in which
  /// the sheet lies.
  struct SheetShown {
    int number;
    double straight, turned;
    std::array<double, 2> one, two;
  };
  std::array<Shown, most> shown_;
  std::size_t count_{};
  int unit_{}; // leaves of the current gathering
  double marked_, slip_, second_, twofold_, by_chance_{1};
  double unmarked_{1};                            // what paper without marks makes of the marks seen
  std::array<double, Attested::count> of_scheme_; // filled by `ask`

  static void look(SheetShown& sheet, LeafFacts const& facts, Shown const& seen) {
    auto const chains = static_cast<std::size_t>(facts.chain_lines);
    sheet.straight *= seen.chains[chains], sheet.turned *= seen.turned[chains];
    for (std::size_t lie = 0; lie < 2; ++lie) {
      sheet.one[lie] *= seen.marks[static_cast<std::size_t>(facts.watermark[lie])];
      sheet.two[lie] *= seen.marks[static_cast<std::size_t>(facts.either(lie))];
    }
  }
  /// Finds the places of the leaves in the gathering of a scheme that has `unit` leaves, or in several such gatherings
  /// one inside another. Most schemes have equal gatherings, so the result is stored for the next.
  void find_places(int unit, int leaves) {
    if (unit == unit_) return;
    unit_ = unit;
    for (std::size_t i = 0; i < count_; ++i) {
      auto const k = shown_[i].leaf;
      shown_[i].within = static_cast<std::size_t>(k - 1);
      if (unit == leaves) continue;
      // the bifolium, counted from outside, shows the gathering
      int const from_outside = k <= leaves / 2 ? k : leaves + 1 - k;
      shown_[i].quire = (from_outside - 1) / (unit / 2);
      int const bifolium = from_outside - shown_[i].quire * (unit / 2);
      shown_[i].within = static_cast<std::size_t>((k <= leaves / 2 ? bifolium : unit + 1 - bifolium) - 1);
    }
  }
  /// Returns the probability of all leaves, in the gathering of a scheme or in several.
  [[nodiscard]] double gathering(std::span<LeafFacts const> folded, int leaves) {
    std::array<SheetShown, most> sheets;
    std::size_t met = 0;
    auto const unit = static_cast<int>(folded.size());
    find_places(unit, leaves);
    for (std::size_t i = 0; i < count_; ++i) {
      auto const& facts = folded[shown_[i].within];
      auto const number = unit == leaves ? facts.sheet : shown_[i].quire;
      std::size_t at = 0;
      while (at < met && sheets[at].number != number) ++at;
      if (at == met) sheets[met++] = {number, 1, 1, {1, 1}, {1, 1}};
      look(sheets[at], facts, shown_[i]);
    }
    double one = 1, two = 1, chains = 1;
    for (std::size_t s = 0; s < met; ++s) {
      one *= (sheets[s].one[0] + sheets[s].one[1]) / 2;
      two *= (sheets[s].two[0] + sheets[s].two[1]) / 2;
      chains *= (1 - twofold_) * sheets[s].straight + twofold_ * sheets[s].turned;
    }
    return chains * (marked_ * ((1 - second_) * one + second_ * two) + (1 - marked_) * unmarked_);
  }

public:
  /// Takes the leaves with evidence, of which there is one. `leaves` is the size of the gathering.
  LeavesLikelihood(EvidenceOfLeaves const& seen, int leaves, PaperAge const& age, EvidenceParameters const& parameters)
      : marked_{parameters.paper_is_marked}, slip_{parameters.leaf_slip}, twofold_{age.twofold} {
    MarkTrust const trust{age, parameters};
    second_ = trust.second;
    for (auto const& one : seen) {
      if (one.leaf == 0) break;
      bool const chains = run_one_way(one.chain_lines);
      if (!chains && one.mark == MarkPlace::unknown) continue;
      auto& shown = shown_[count_++] = {one.leaf};
      for (std::size_t way = 1; chains && way < 3; ++way) {
        bool const as_folded = static_cast<ChainLines>(way) == one.chain_lines;
        shown.chains[way] = as_folded ? 1 - slip_ : slip_, shown.turned[way] = as_folded ? slip_ : 1 - slip_;
      }
      if (chains) by_chance_ *= parameters.chance.chain_lines;
      if (one.mark == MarkPlace::unknown) continue;
      by_chance_ *= parameters.chance.mark(one.mark != MarkPlace::absent);
      for (std::size_t at = 1; at < 8; ++at) {
        auto const there = static_cast<MarkPlace>(at);
        shown.marks[at] = there == MarkPlace::absent || one.mark == MarkPlace::absent
                              ? (there == one.mark ? 1 - slip_ : slip_)
                              : mark_taken_for(there, one.mark, trust.in_place);
      }
      unmarked_ *= shown.marks[static_cast<std::size_t>(MarkPlace::absent)];
    }
    ask(leaves, parameters.pattern_right);
  }

  /// Returns the probability of the leaves by chance; see `ChanceOfEvidence`.
  [[nodiscard]] double by_chance() const { return by_chance_; }
  /// Returns the mean over the gatherings of the scheme that have as many leaves or can be combined to as many, or
  /// `by_chance` if there are none.
  [[nodiscard]] double of(std::size_t scheme) const { return of_scheme_[scheme]; }

private:
  /// Computes the probabilities for all patterns, and for each scheme the mean of those of its gatherings that fit.
  void ask(int leaves, double right) {
    auto const& patterns = gathering_patterns();
    GatheringPatterns::Each<double> of_pattern;
    std::size_t number = 0;
    for (auto const& pattern : patterns.all()) {
      auto const unit = static_cast<int>(pattern.leaves.size());
      bool const fits = unit == leaves || (unit % 2 == 0 && leaves % unit == 0 && pattern.of_one_sheet);
      of_pattern[number++] = fits ? gathering(pattern.leaves, leaves) : -1;
    }
    auto const* pattern = patterns.of_gatherings();
    for (std::size_t scheme = 0; scheme < of_scheme_.size(); ++scheme) {
      double sum = 0;
      int fitting = 0;
      for (int g = 0; g < scheme_facts()[scheme].gatherings; ++g)
        if (auto const here = of_pattern[*pattern++]; here >= 0) sum += here, ++fitting;
      of_scheme_[scheme] = fitting > 0 ? right * sum / fitting + (1 - right) * by_chance_ : by_chance_;
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
