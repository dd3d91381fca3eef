// SPDX-License-Identifier: MIT
/// Signs that tell not only the format but the scheme: edges, point-holes, the leaves of a gathering. A kind of leaf is as
/// likely as its schemes are on average, and the scheme that fits best is named.
#pragma once

#include <bifolium/evidence/counted_signs.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What edges, point-holes and the leaves of a gathering say; the scheme that they fit best, and how likely they are
/// over all schemes of the kind.
struct SchemesSay {
  double edges{}, hole{}, leaves{}, together{}, best{};
  Attested scheme{SchemeRow::broadside};
};
inline SchemesSay ask_schemes(LeafShape const& shape, CountedSigns const& signs, Trustworthiness const& trust,
                              EvidenceParameters const& parameters) {
  auto const& seen = signs.seen();
  SchemesSay said;
  PatternLikelihood const pattern{seen.leaves, trust, parameters.paper_is_marked};
  bool const edges = signs.has(Sign::edges), hole = signs.has(Sign::point_hole), leaves = signs.has(Sign::leaves);
  auto const by_chance = leaves ? pattern.by_chance() : 1;
  auto const n = static_cast<double>(shape.schemes.size());
  for (auto const row : shape.schemes) {
    auto const& facts = scheme_facts()[static_cast<std::size_t>(row)];
    auto const of_edges = edges ? edges_likelihood(facts, seen, parameters.edge_right) : 1;
    auto const of_hole = hole ? hole_likelihood(facts, seen.point_hole, parameters.edge_right) : 1;
    double of_leaves = 1;
    if (leaves)
      of_leaves = parameters.pattern_right * pattern.of(facts, *seen.gathering_leaves).value_or(by_chance) +
                  (1 - parameters.pattern_right) * by_chance;
    said.edges += of_edges / n, said.hole += of_hole / n, said.leaves += of_leaves / n;
    said.together += of_edges * of_hole * of_leaves / n;
    auto fit = of_edges * of_hole * of_leaves;
    if (seen.gathering_leaves) // of schemes that fit alike, the one gathered as was seen
      for (auto const& one : facts.gatherings)
        if (static_cast<int>(one.size()) == *seen.gathering_leaves) {
          fit *= 1.001;
          break;
        }
    if (fit > said.best) said.best = fit, said.scheme = facts.scheme;
  }
  return said;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
