// SPDX-License-Identifier: MIT
/// The evidence that each leaf of each scheme shows, in the terms in which a leaf is described: the places of marks,
/// the edges that are bolts or deckle, the place of a point-hole. No fact is stored by format: every scheme is folded
/// once, at the first inference, and its leaves are examined.
#pragma once

#include <bifolium/evidence/seen.hpp>
#include <bifolium/fold/attested.hpp>

#include <span>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// Returns the name of the place of a point in a leaf.
constexpr MarkPlace place_of(PointOfLeaf at) {
  constexpr double edge = 0.02;
  bool const gutter = at.from_gutter<edge, fore_edge = at.from_gutter> 1 - edge;
  bool const head = at.from_head<edge, tail = at.from_head> 1 - edge;
  if ((head || tail) && gutter) return head ? MarkPlace::head_of_gutter : MarkPlace::corner;
  if ((head || tail) && fore_edge) return MarkPlace::corner;
  if (head || tail) return MarkPlace::head_or_tail_edge;
  return gutter ? MarkPlace::gutter : fore_edge ? MarkPlace::fore_edge : MarkPlace::centre;
}
/// Returns the name of the place of a point-hole. A fold or edge takes precedence over a neighbouring place, since
/// points are near the edges.
constexpr HolePlace hole_place_of(PointOfLeaf at) {
  constexpr double edge = 0.02;
  if (at.from_gutter < edge) return HolePlace::spine_fold;
  if (at.from_head < edge) return HolePlace::head;
  if (at.from_head > 1 - edge) return HolePlace::tail;
  return at.from_gutter > 1 - edge ? HolePlace::fore_edge : HolePlace::inside;
}

/// An edge of a leaf that is neither cut nor opened.
struct EdgeFacts {
  bool bolt{};          ///< true for a fold that joins it to another leaf
  double deckle{};      ///< 1, or a half if the sheet was cut before printing and either half is possible
  double tranchefile{}; ///< the same for an end of the sheet's long side
  friend constexpr bool operator==(EdgeFacts const&, EdgeFacts const&) = default;
};

/// The evidence that a leaf shows on paper with a mark in each half of the sheet. For one mark, only `watermark`
/// applies.
struct LeafFacts {
  int sheet{};                                         ///< the sheet of the scheme, from 0
  ChainLines chain_lines{};                            ///< on paper from an ordinary hand mould
  std::array<MarkPlace, 2> watermark{}, countermark{}; ///< for the two ways of laying the sheet: as given, end for end
  std::array<MarkPlace, 2> either{};                   ///< the watermark or, if there is none, the countermark
  MarkPlace central{};                                 ///< for a mark in the exact centre of the sheet
  std::array<EdgeFacts, 3> edges{};                    ///< head, tail, fore-edge
  std::array<HolePlace, 2> holes{};                    ///< unknown if the leaf has none
};

/// Edges that occur together in one leaf, and the share of the leaves of a scheme that have them.
struct EdgeLook {
  std::array<EdgeFacts, 3> edges{}; ///< head, tail, fore-edge
  double share{};                   ///< share of the leaves, 0 to 1
};

/// The evidence that the leaves of one scheme show, for each gathering and over all. For a leaf that may be any of
/// them, the shares are used. They are counted once in a program, so that a question need not walk through every leaf.
struct SchemeFacts {
  Attested scheme{SchemeRow::broadside}; ///< the scheme
  Format format{};                       ///< fraction of the sheet of paper, with the shape the scheme states
  SheetLine lay{};                       ///< how the sheet is divided, and the direction of its long side
  int sheets{};                          ///< number of sheets, laid one inside another or side by side
  int gatherings{};                      ///< number of gatherings
  std::span<LeafFacts const> leaves{};   ///< all leaves, in the order of the book
  std::span<EdgeLook const> looks{};     ///< every combination of edges once; the shares add up to 1
  std::array<double, 6> holes{};         ///< share of the leaves with a hole at each `HolePlace`
  double pierced{};                      ///< share of the leaves with a hole
  std::array<std::uint8_t, Scheme::most_gatherings> gathered{}; ///< leaves of each gathering

  /// Returns the leaves of one gathering. Precondition: 0 <= g < gatherings.
  [[nodiscard]] std::span<LeafFacts const> gathering(int g) const {
    std::size_t before = 0;
    for (std::size_t i = 0; i < static_cast<std::size_t>(g); ++i) before += gathered[i];
    return {leaves.data() + before, gathered[static_cast<std::size_t>(g)]};
  }
  /// Returns true if one of its gatherings has `number` leaves.
  [[nodiscard]] bool gathers(int number) const {
    for (auto const one : gathered)
      if (one == number) return true;
    return false;
  }
};

namespace detail {

inline EdgeFacts edge_facts(Edge const& edge, bool end_of_long_side) {
  double const deckle = edge.kind == Edge::Kind::deckle ? 1 : edge.kind == Edge::Kind::deckle_or_cut ? 0.5 : 0;
  return {edge.kind == Edge::Kind::bolt, deckle, end_of_long_side ? deckle : 0};
}

[[gnu::cold]] inline LeafFacts leaf_facts(Fold<> const& fold, LeafAt leaf) {
  auto const shown = shows(fold, leaf, countermark_mould);
  LeafFacts facts;
  facts.sheet = fold.cell(leaf).sheet;
  facts.chain_lines = *shown.chain_lines;
  auto const place = [](std::optional<PointOfLeaf> at) { return at ? place_of(*at) : MarkPlace::absent; };
  for (std::size_t lie = 0; lie < 2; ++lie) {
    facts.watermark[lie] = place(shown.watermark[lie]);
    facts.countermark[lie] = place(shown.countermark[lie]);
    facts.either[lie] = facts.watermark[lie] == MarkPlace::absent ? facts.countermark[lie] : facts.watermark[lie];
    if (auto const at = shown.point_holes[lie]) facts.holes[lie] = hole_place_of(*at);
  }
  facts.central = place(shows(fold, leaf, central_mark_mould).watermark[0]);
  bool const long_upright = fold.sheet(facts.sheet).long_side == Axis::far_near;
  facts.edges = {edge_facts(shown.head, long_upright), edge_facts(shown.tail, long_upright),
                 edge_facts(shown.fore_edge, !long_upright)};
  return facts;
}

/// The facts of all attested schemes, and the data of their spans.
struct AllSchemeFacts {
  std::vector<LeafFacts> leaves{};
  std::vector<EdgeLook> looks{};
  std::array<SchemeFacts, Attested::count> schemes{};
};

/// Counts the leaves with the same edges. A leaf has at most two holes, depending on how its sheet was laid.
[[gnu::cold]] inline void count_looks(SchemeFacts& facts, std::vector<EdgeLook>& looks) {
  auto const before = looks.size();
  auto const share = 1 / static_cast<double>(facts.leaves.size());
  for (auto const& leaf : facts.leaves) {
    EdgeLook* look = nullptr;
    for (auto i = before; i < looks.size(); ++i)
      if (looks[i].edges == leaf.edges) look = &looks[i];
    if (look == nullptr) {
      looks.push_back({leaf.edges, 0});
      look = &looks.back();
    }
    look->share += share;
    bool pierced = false;
    for (std::size_t place = 1; place < facts.holes.size(); ++place) {
      auto const at = static_cast<HolePlace>(place);
      if (leaf.holes[0] != at && leaf.holes[1] != at) continue;
      facts.holes[place] += share;
      pierced = true;
    }
    if (pierced) facts.pierced += share;
  }
}

[[gnu::cold]] inline AllSchemeFacts find_scheme_facts() {
  AllSchemeFacts all;
  std::array<std::size_t, Attested::count + 1> first_leaf{}, first_look{};
  for (std::size_t row = 0; row < all.schemes.size(); ++row) {
    auto& facts = all.schemes[row];
    facts.scheme = Attested{static_cast<SchemeRow>(row)};
    auto const folded = *fold(facts.scheme.scheme());
    facts.format = format_of(folded, FormatReading::paper_fraction).with(folded.format().shape());
    facts.lay = folded.sheet(0);
    facts.sheets = folded.sheets();
    facts.gatherings = folded.gatherings();
    for (int g = 0; g < folded.gatherings(); ++g) {
      auto const gathering = folded.gathering(g);
      facts.gathered[static_cast<std::size_t>(g)] = static_cast<std::uint8_t>(gathering.leaves());
      for (int k = 1; k <= gathering.leaves(); ++k) all.leaves.push_back(leaf_facts(folded, {g, gathering.leaf(k)}));
    }
    first_leaf[row + 1] = all.leaves.size();
    facts.leaves = {all.leaves.data() + first_leaf[row], first_leaf[row + 1] - first_leaf[row]};
    count_looks(facts, all.looks);
    first_look[row + 1] = all.looks.size();
  }
  for (std::size_t row = 0; row < all.schemes.size(); ++row) { // their places, when all are there
    auto& facts = all.schemes[row];
    facts.leaves = {all.leaves.data() + first_leaf[row], first_leaf[row + 1] - first_leaf[row]};
    facts.looks = {all.looks.data() + first_look[row], first_look[row + 1] - first_look[row]};
  }
  return all;
}

} // namespace detail

/// Returns the facts of all attested schemes, in their order. The schemes are folded once in a program, at the first
/// use.
inline std::array<SchemeFacts, Attested::count> const& scheme_facts() {
  static auto const facts = detail::find_scheme_facts();
  return facts.schemes;
}

} // namespace v0
} // namespace bifolium
