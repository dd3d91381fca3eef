// SPDX-License-Identifier: MIT
/// How likely the signs of the paper and the make-up are, if the leaf were of a given kind. Each kind of evidence has its
/// own function, and each gives a wrong sign the frequency it is known to have: turned chain lines, marks out of place, odd
/// gatherings. No sign is a veto.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/evidence/parameters.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// How far the signs of the paper can be trusted in the years and the place.
struct Trustworthiness {
  double chains{}, mark_in_place{}, second_mark{};
};
inline Trustworthiness trustworthiness(When years, Region place, EvidenceParameters const& p) {
  int const year = (years.from + years.to) / 2;
  bool const anywhere = place == Region::anywhere || place == Region::europe;
  bool const turned_there = anywhere || place == Region::britain || place == Region::netherlands;
  using namespace paper_dates;
  bool const after_act = year >= act_of_1794, machine = year > machine_made_by;
  bool const act = after_act && !machine && (place == Region::britain || place == Region::anywhere);
  bool const turned = turned_there && year >= turned_chains_from && year <= turned_chains_common_to;
  auto const chains = year <= 1500 ? p.chains_incunable
                      : machine    ? p.chains_machine
                      : after_act  ? p.chains_1794
                      : turned     ? p.chains_turned
                                   : p.chains_early;
  return {chains, act ? p.mark_in_place_1794 : p.mark_in_place,
          year <= 1600 ? p.second_mark_early : p.second_mark_late};
}

inline double chains_likelihood(LeafShape const& shape, ChainLines seen, double right) {
  if (seen == ChainLines::unknown || seen == ChainLines::both) return 1;
  return shape.chain_lines == seen ? right : 1 - right;
}

/// How likely a mark that the fold puts in one place is seen in another. One that the leaf has not is not seen in it.
inline double mark_taken_for(MarkPlace there, MarkPlace seen, double in_place) {
  if (there == MarkPlace::absent || seen == MarkPlace::absent) return there == seen ? 1 : 0;
  return there == seen ? in_place : (1 - in_place) / 5;
}
/// The place of the watermark and, where it was looked for in the same leaf, of the countermark.
inline double marks_likelihood(LeafShape const& shape, MarkPlace watermark, MarkPlace countermark,
                               Trustworthiness const& trust, double marked) {
  if (watermark == MarkPlace::unknown && countermark == MarkPlace::unknown) return 1;
  auto const in = trust.mark_in_place, second = trust.second_mark;
  auto const placed = [&](double absent, double here) { return in * here + (1 - in) * (1 - absent - here) / 5; };
  constexpr auto absent = MarkPlace::absent;
  if (countermark == MarkPlace::unknown) {
    auto const one = shape.mark(absent), two = shape.either_mark(absent);
    if (watermark == absent) return 1 - marked + marked * ((1 - second) * one + second * two);
    return marked *
           ((1 - second) * placed(one, shape.mark(watermark)) + second * placed(two, shape.either_mark(watermark)));
  }
  double both = 0;
  for (std::size_t a = 1; a < 8; ++a)
    for (std::size_t b = 1; b < 8; ++b) {
      auto const w = watermark == MarkPlace::unknown ? 1 : mark_taken_for(static_cast<MarkPlace>(a), watermark, in);
      both += shape.marks[a][b] * w * mark_taken_for(static_cast<MarkPlace>(b), countermark, in);
    }
  if (countermark != absent) return marked * second * both;
  auto const single = marks_likelihood(shape, watermark, MarkPlace::unknown, {trust.chains, in, 0}, marked);
  return (1 - second) * single + second * marked * both + (watermark == absent ? second * (1 - marked) : 0);
}

inline double gathering_likelihood(LeafShape const& shape, std::optional<int> seen, std::optional<int> other,
                                   bool early, EvidenceParameters const& p) {
  if (!seen) return 1;
  auto const leaves = shape.format.leaves_to_sheet().value_or(0);
  auto const at_least = [&](double share) { return p.least_gathering + (1 - p.least_gathering) * share; };
  if (other && *other != *seen) return at_least(alternating_share(leaves, *seen, *other));
  auto const share = gathering_share(leaves, *seen, early);
  if (share > 0) return at_least(share);
  bool const made = *seen < 32 && (shape.gatherings >> static_cast<unsigned>(*seen) & 1U) != 0;
  return made ? 0.2 : p.least_gathering;
}

/// How many leaves of the scheme look so, of those of which it can be seen.
template <class Look> double share_of_leaves(SchemeFacts const& facts, Look look) {
  double sum = 0, leaves = 0;
  for (auto const& gathering : facts.gatherings)
    for (auto const& leaf : gathering) sum += look(leaf), leaves += 1;
  return sum / leaves;
}
/// Edges the binder has left, all of one leaf.
inline double edges_likelihood(SchemeFacts const& facts, Seen const& seen, double right) {
  std::array<EdgeSeen, 3> const edges{seen.head, seen.tail, seen.fore_edge};
  auto const share = share_of_leaves(facts, [&](LeafFacts const& leaf) {
    double p = 1;
    for (std::size_t i = 0; i < 3; ++i) {
      auto const& edge = leaf.edges[i];
      auto const there = edges[i] == EdgeSeen::bolt          ? (edge.bolt ? 1.0 : 0.0)
                         : edges[i] == EdgeSeen::deckle      ? edge.deckle
                         : edges[i] == EdgeSeen::tranchefile ? edge.tranchefile
                                                             : 1.0;
      if (edges[i] != EdgeSeen::unknown) p *= right * there + (1 - right) / 3;
    }
    return p;
  });
  return share;
}
/// Where the points pierced a leaf that has a hole. Where no leaf of a scheme has one (the grid does not say how the
/// sheet was pierced), nothing is told.
inline double hole_likelihood(SchemeFacts const& facts, HolePlace seen, double right) {
  auto const pierced = share_of_leaves(facts, [](LeafFacts const& leaf) {
    return leaf.holes[0] != HolePlace::unknown || leaf.holes[1] != HolePlace::unknown ? 1.0 : 0.0;
  });
  if (!(pierced > 0)) return 0.2;
  auto const here = share_of_leaves(
      facts, [&](LeafFacts const& leaf) { return leaf.holes[0] == seen || leaf.holes[1] == seen ? 1.0 : 0.0; });
  return right * here / pierced + (1 - right) / 5;
}

/// The marks and chain lines of several leaves of one gathering of a scheme: each sheet may lie either way, may have turned
/// chains, and one or two marks; the paper is marked or not for all alike.
class PatternLikelihood {
  LeavesSeen const& seen_;
  Trustworthiness trust_;
  double marked_;

  static bool shown(LeafSeen const& one) { return one.leaf != 0; }
  /// One leaf, its sheet lying so.
  [[nodiscard]] double leaf(LeafFacts const& facts, LeafSeen const& seen, std::size_t lie, bool turned, bool marked,
                            bool second) const {
    constexpr double slip = 0.005; // of one leaf in a sheet
    double p = 1;
    if (seen.chain_lines == ChainLines::vertical || seen.chain_lines == ChainLines::horizontal)
      p *= (facts.chain_lines == seen.chain_lines) != turned ? 1 - slip : slip;
    if (seen.mark == MarkPlace::unknown) return p;
    auto there = marked ? facts.watermark[lie] : MarkPlace::absent;
    if (marked && second && there == MarkPlace::absent) there = facts.countermark[lie];
    if (there == MarkPlace::absent || seen.mark == MarkPlace::absent) return p * (there == seen.mark ? 1 - slip : slip);
    return p * mark_taken_for(there, seen.mark, trust_.mark_in_place);
  }
  /// All leaves of the `quire`-th of the sheets that make up the gathering. `within` gives the place of a leaf of the
  /// gathering seen in the gathering of the scheme, or 0 if it is of another sheet.
  template <class Within>
  [[nodiscard]] double sheet(std::vector<LeafFacts> const& gathering, Within within, bool marked, bool second) const {
    double all = 0;
    for (bool turned : {false, true})
      for (std::size_t lie = 0; lie < 2; ++lie) {
        double p = (turned ? 1 - trust_.chains : trust_.chains) / 2;
        for (auto const& one : seen_) {
          if (!shown(one)) break;
          if (int const k = within(one.leaf); k > 0)
            p *= leaf(gathering[static_cast<std::size_t>(k - 1)], one, lie, turned, marked, second);
        }
        all += p;
      }
    return all;
  }
  /// The gathering of a scheme, or several of it one inside another.
  [[nodiscard]] double gathering(SchemeFacts const& facts, std::vector<LeafFacts> const& gathering, int leaves,
                                 bool marked, bool second) const {
    auto const unit = static_cast<int>(gathering.size());
    double p = 1;
    if (unit == leaves) {
      for (int s = 0; s < facts.sheets; ++s)
        p *= sheet(
            gathering, [&](int k) { return gathering[static_cast<std::size_t>(k - 1)].sheet == s ? k : 0; }, marked,
            second);
      return p;
    }
    auto const half = unit / 2;
    for (int quire = 0; quire < leaves / unit; ++quire)
      p *= sheet(
          gathering,
          [&](int k) {
            int const from_outside = k <= leaves / 2 ? k : leaves + 1 - k; // the bifolium, counted from outside
            if ((from_outside - 1) / half != quire) return 0;
            int const bifolium = from_outside - quire * half;
            return k <= leaves / 2 ? bifolium : unit + 1 - bifolium;
          },
          marked, second);
    return p;
  }

public:
  PatternLikelihood(LeavesSeen const& seen, Trustworthiness const& trust, double marked)
      : seen_{seen}, trust_{trust}, marked_{marked} {}

  /// A leaf as it comes: half of them without a mark, the marks anywhere, the chains either way.
  [[nodiscard]] double by_chance() const {
    double p = 1;
    for (auto const& one : seen_) {
      if (!shown(one)) break;
      if (one.chain_lines == ChainLines::vertical || one.chain_lines == ChainLines::horizontal) p *= 0.5;
      if (one.mark != MarkPlace::unknown) p *= one.mark == MarkPlace::absent ? 0.6 : 0.4 / 6;
    }
    return p;
  }
  /// Over the gatherings of the scheme that have as many leaves, or can be quired to as many; nothing when none can.
  [[nodiscard]] std::optional<double> of(SchemeFacts const& facts, int leaves) const {
    double sum = 0;
    int fitting = 0;
    for (auto const& one : facts.gatherings) {
      auto const unit = static_cast<int>(one.size());
      if (unit != leaves && (unit % 2 != 0 || leaves % unit != 0 || facts.sheets != 1)) continue;
      ++fitting;
      sum += marked_ * (1 - trust_.second_mark) * gathering(facts, one, leaves, true, false) +
             marked_ * trust_.second_mark * gathering(facts, one, leaves, true, true) +
             (1 - marked_) * gathering(facts, one, leaves, false, false);
    }
    return fitting > 0 ? std::optional{sum / fitting} : std::nullopt;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
