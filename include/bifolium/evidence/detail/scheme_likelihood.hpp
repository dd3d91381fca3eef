// SPDX-License-Identifier: MIT
/// Signs that tell not only the format but the scheme: edges, point-holes, the leaves of a gathering. A kind of leaf is as
/// likely as its schemes are on average, and the scheme that fits best is named.
#pragma once

#include <bifolium/evidence/detail/counted_signs.hpp>
#include <bifolium/evidence/detail/leaves_likelihood.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Edges the binder has left, all of one leaf; `right` says how often an edge is what it was taken for.
inline double edges_likelihood(SchemeFacts const& facts, LeafEvidence const& seen, double right) {
  std::array<EdgeSeen, 3> const edges{seen.head, seen.tail, seen.fore_edge};
  double likelihood = 0;
  for (auto const& look : facts.looks) {
    auto p = look.share;
    for (std::size_t i = 0; i < 3; ++i) {
      auto const& edge = look.edges[i];
      auto const there = edges[i] == EdgeSeen::bolt          ? (edge.bolt ? 1.0 : 0.0)
                         : edges[i] == EdgeSeen::deckle      ? edge.deckle
                         : edges[i] == EdgeSeen::tranchefile ? edge.tranchefile
                                                             : 1.0;
      if (edges[i] != EdgeSeen::unknown) p *= right * there + (1 - right) / 3;
    }
    likelihood += p;
  }
  return likelihood;
}
/// Where the points pierced a leaf that has a hole. Where no leaf of a scheme has one (the grid does not say how the
/// sheet was pierced), nothing is told.
inline double hole_likelihood(SchemeFacts const& facts, HolePlace seen, EvidenceParameters const& parameters) {
  if (!(facts.pierced > 0)) return parameters.chance.point_hole;
  auto const right = parameters.edge_right;
  return right * facts.holes[static_cast<std::size_t>(seen)] / facts.pierced + (1 - right) / 5;
}

/// What edges, point-holes and the leaves of a gathering say; the scheme that they fit best, and how likely they are
/// over all schemes of the kind.
struct SchemesSay {
  double edges{}, hole{}, leaves{}, together{}, best{};
  Attested scheme{SchemeRow::broadside};
};

/// Asks the schemes of one kind of leaf after another. Edges and holes are the same in all periods; leaves of a gathering
/// are asked for all degrees of trust at once.
class SchemesAsked {
  LeafEvidence const& seen_;
  EvidenceParameters const& parameters_;
  Trusts const& trusts_;
  bool edges_, hole_, leaves_;
  LeavesLikelihood pattern_;

public:
  SchemesAsked(CountedSigns const& signs, Trusts const& trusts, EvidenceParameters const& parameters)
      : seen_{signs.seen()}, parameters_{parameters}, trusts_{trusts}, edges_{signs.has(EvidenceKind::edges)},
        hole_{signs.has(EvidenceKind::point_hole)}, leaves_{signs.has(EvidenceKind::leaves)}, pattern_{
                                                                                                  signs.seen().leaves,
                                                                                                  parameters} {
    if (leaves_) pattern_.ask(*seen_.gathering_leaves, trusts);
  }

  /// Which of the answers is for the period: where no leaves of a gathering were seen, all periods share the first.
  [[nodiscard]] std::size_t answer_for(std::size_t period) const { return leaves_ ? trusts_.of(period) : 0; }

  [[nodiscard]] std::array<SchemesSay, std::tuple_size_v<ByTrust>> ask(LeafShape const& shape) const {
    std::array<SchemesSay, std::tuple_size_v<ByTrust>> said{};
    auto const answers = leaves_ ? trusts_.size() : 1;
    auto const share = 1 / static_cast<double>(shape.schemes.size());
    for (auto const row : shape.schemes) {
      auto const& facts = scheme_facts()[static_cast<std::size_t>(row)];
      auto const edges = edges_ ? edges_likelihood(facts, seen_, parameters_.edge_right) : 1;
      auto const hole = hole_ ? hole_likelihood(facts, seen_.point_hole, parameters_) : 1;
      // of schemes that fit alike, the one gathered as was seen: a hair, which only parts equals
      auto const favour = seen_.gathering_leaves && facts.gathers(*seen_.gathering_leaves) ? 1.001 : 1;
      for (std::size_t i = 0; i < answers; ++i) {
        auto const leaves = leaves_ ? parameters_.pattern_right * pattern_.of(static_cast<std::size_t>(row))[i] +
                                          (1 - parameters_.pattern_right) * pattern_.by_chance()
                                    : 1;
        auto& one = said[i];
        one.edges += edges * share, one.hole += hole * share, one.leaves += leaves * share;
        one.together += edges * hole * leaves * share;
        // what differs in the last digits alone fits alike, and the first is named
        auto const fit = edges * hole * leaves * favour;
        if (fit > one.best * (1 + 1e-9)) one.best = fit, one.scheme = facts.scheme;
      }
    }
    return said;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
