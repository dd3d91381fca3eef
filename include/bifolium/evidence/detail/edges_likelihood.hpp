// SPDX-License-Identifier: MIT
/// The probability of the edges that the binder has left, all of one leaf. The leaves of all schemes have only some
/// thirty combinations of edges, so each is asked once, and a scheme is a sum over those of its leaves. Single and
/// double paper differ in them only if a tranchefile was seen.
#pragma once

#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/scheme_facts.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class EdgesLikelihood {
  EdgeSeen seen_[3];
  bool any_{}, tell_mould_{};
  double on_single_[most_edge_looks], on_double_[most_edge_looks]; // by the numbers of looks, as far as they are asked

  /// Returns the probability of one edge.
  static double of_edge(EdgeFacts const& edge, EdgeSeen seen, bool twofold, EvidenceParameters const& p) {
    auto const wrong = 1 - p.edge_right;
    // tranchefiles are at the ends of the long side of a single sheet, and of the short side of a double one
    auto const tranchefile = twofold ? edge.deckle - edge.tranchefile() : edge.tranchefile();
    switch (seen) {
    case EdgeSeen::bolt:
      return p.edge_right * (edge.bolt ? 1 : 0) + wrong / 3;
    case EdgeSeen::deckle:
      return p.edge_right * edge.deckle + wrong / 3;
    case EdgeSeen::tranchefile:
      return p.edge_right * tranchefile * p.tranchefile_visible[twofold ? 1 : 0] + wrong / 10;
    case EdgeSeen::unknown:
      break;
    }
    return 1;
  }
  [[nodiscard]] double of_look(EdgeLook const& look, bool twofold, EvidenceParameters const& p) const {
    double all = 1;
    for (std::size_t i = 0; i < std::size(seen_); ++i) all *= of_edge(look.edges[i], seen_[i], twofold, p);
    return all;
  }
  [[gnu::noinline]] void ask(EvidenceParameters const& p) {
    std::size_t number = 0;
    for (auto const* look : all_scheme_facts().looks()) {
      on_single_[number] = of_look(*look, false, p);
      if (tell_mould_) on_double_[number] = of_look(*look, true, p);
      ++number;
    }
  }

public:
  EdgesLikelihood(LeafEvidence const& evidence, EvidenceParameters const& p)
      : seen_{evidence.head, evidence.tail, evidence.fore_edge} {
    for (auto const edge : seen_) {
      any_ = any_ || edge != EdgeSeen::unknown;
      tell_mould_ = tell_mould_ || edge == EdgeSeen::tranchefile;
    }
    if (any_) ask(p);
  }
  /// Returns true if an edge was seen.
  [[nodiscard]] bool any() const { return any_; }
  /// Returns true if single and double paper differ in what was seen.
  [[nodiscard]] bool tell_mould() const { return tell_mould_; }
  /// Returns the probability of the edges on the leaves of a scheme. Precondition: an edge was seen.
  [[nodiscard]] double of(SchemeFacts const& scheme, bool twofold) const {
    auto const* of_looks = twofold && tell_mould_ ? on_double_ : on_single_;
    double likelihood = 0;
    for (auto const& look : scheme.looks) likelihood += look.share * of_looks[look.number];
    return likelihood;
  }
  [[nodiscard]] double by_chance(ChanceOfEvidence const& chance) const {
    double likelihood = 1;
    for (auto const edge : seen_)
      if (edge != EdgeSeen::unknown) likelihood *= edge == EdgeSeen::tranchefile ? chance.tranchefile : chance.edge;
    return likelihood;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
