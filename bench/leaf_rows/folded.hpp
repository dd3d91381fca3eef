// SPDX-License-Identifier: MIT
/// What the leaves of a scheme show, from its fold: what leaf_rows.hpp keeps of all attested schemes.
#pragma once

#include <bifolium/evidence/leaf_facts.hpp>
#include <bifolium/fold/attested.hpp>

#include <vector>

namespace leaf_rows_of_folds {

using namespace bifolium;

inline EdgeFacts edge_facts(Edge const& edge, bool end_of_long_side) {
  double const deckle = edge.kind == Edge::Kind::deckle ? 1 : edge.kind == Edge::Kind::deckle_or_cut ? 0.5 : 0;
  return {edge.kind == Edge::Kind::bolt, end_of_long_side && deckle > 0, deckle};
}
inline LeafFacts leaf_facts(Fold<> const& fold, LeafAt leaf) {
  auto const shown = shows(fold, leaf, countermark_mould);
  LeafFacts facts;
  facts.sheet = fold.cell(leaf).sheet;
  facts.chain_lines = *shown.chain_lines;
  auto const place = [](std::optional<PointOfLeaf> at) { return at ? place_of(*at) : MarkPlace::absent; };
  for (std::size_t lie = 0; lie < 2; ++lie) {
    facts.watermark[lie] = place(shown.watermark[lie]);
    facts.countermark[lie] = place(shown.countermark[lie]);
    if (auto const at = shown.point_holes[lie]) facts.holes[lie] = hole_place_of(*at);
  }
  facts.central = place(shows(fold, leaf, central_mark_mould).watermark[0]);
  bool const long_upright = fold.sheet(facts.sheet).long_side == Axis::far_near;
  facts.edges = {edge_facts(shown.head, long_upright), edge_facts(shown.tail, long_upright),
                 edge_facts(shown.fore_edge, !long_upright)};
  return facts;
}

/// A scheme with the leaves of each gathering.
struct Folded {
  Format format;
  SheetLine lay;
  int sheets;
  std::vector<std::vector<LeafFacts>> gatherings;
};
inline Folded folded(Attested scheme) {
  auto const fold = *bifolium::fold(scheme.scheme());
  Folded all{
      format_of(fold, FormatReading::paper_fraction).with(fold.format().shape()), fold.sheet(0), fold.sheets(), {}};
  for (int g = 0; g < fold.gatherings(); ++g) {
    auto const gathering = fold.gathering(g);
    auto& leaves = all.gatherings.emplace_back();
    for (int k = 1; k <= gathering.leaves(); ++k) leaves.push_back(leaf_facts(fold, {g, gathering.leaf(k)}));
  }
  return all;
}

} // namespace leaf_rows_of_folds
