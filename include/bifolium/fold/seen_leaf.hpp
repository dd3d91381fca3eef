// SPDX-License-Identifier: MIT
/// What was seen of leaves in a gathering, leaf by leaf, for asking which foldings show just that. "Not looked at" and
/// "not there" are different answers: a field that is not given means "not looked at". Directions are those of the upright leaf.
#pragma once

#include <bifolium/fold/shows.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// A watermark, or a hole of the press points: whether it was seen, and within what part of the leaf.
struct SeenMark {
  bool there{};                        ///< false: looked for, and not there
  double head_from{0}, head_to{1};     ///< parts of the height from the head between which it is
  double gutter_from{0}, gutter_to{1}; ///< parts of the width from the gutter between which it is
  friend constexpr bool operator==(SeenMark, SeenMark) = default;
};

/// Where in a leaf a mark was seen, in the words for it. Each takes in a fifth of the leaf at the edges it names.
namespace seen_marks {
inline constexpr SeenMark absent{};                                ///< looked for, and not there
inline constexpr SeenMark somewhere{true};                         ///< seen; the place was not noted
inline constexpr SeenMark centre{true, 0.2, 0.8, 0.2, 0.8};        ///< in the middle of the leaf
inline constexpr SeenMark gutter{true, 0.2, 0.8, 0, 0.2};          ///< divided by the gutter
inline constexpr SeenMark head_of_gutter{true, 0, 0.2, 0, 0.2};    ///< in the upper inner corner
inline constexpr SeenMark fore_edge{true, 0, 1, 0.8, 1};           ///< at the fore-edge, its corners included
inline constexpr SeenMark head_edge{true, 0, 0.2, 0.2, 0.8};       ///< divided by the head
inline constexpr SeenMark tail_edge{true, 0.8, 1, 0.2, 0.8};       ///< divided by the tail
inline constexpr SeenMark head_or_tail_edge{true, 0, 1, 0.2, 0.8}; ///< between gutter and fore-edge, at whatever height
} // namespace seen_marks

/// An edge that no binder cut. `gutter` is not an edge to be seen here: see `SeenLeaf::conjugate`.
struct SeenEdge {
  Edge::Kind kind{};         ///< deckle, cut, or bolt
  std::optional<int> mate{}; ///< the leaf on the other side of a bolt, if that is known
  friend constexpr bool operator==(SeenEdge const&, SeenEdge const&) = default;
};

/// What was seen of one leaf.
struct SeenLeaf {
  int leaf{};                                          ///< its number in the gathering, from 1
  std::optional<ChainLines> chain_lines{};             ///< vertical or horizontal
  std::optional<SeenMark> watermark{}, point_hole{};   ///< looked for, and found or not
  std::optional<SeenEdge> head{}, tail{}, fore_edge{}; ///< edges as they came from the folder
  std::optional<int> conjugate{};                      ///< the leaf that it is joined to at the gutter
  bool disjunct{};                                     ///< it is joined to no leaf: a single leaf
  friend constexpr bool operator==(SeenLeaf const&, SeenLeaf const&) = default;
};

/// One gathering, and what was seen of its leaves.
struct SeenGathering {
  int leaves{};                 ///< how many it has
  std::vector<SeenLeaf> seen{}; ///< those looked at, in any order, each once
  friend constexpr bool operator==(SeenGathering const&, SeenGathering const&) = default;
};

/// Whether a leaf that shows `shown`, the sheet lying so in the press, agrees with what was seen of it.
constexpr bool agrees(SeenMark const& seen, std::optional<PointOfLeaf> const& shown) {
  if (!seen.there || !shown) return seen.there == shown.has_value();
  return shown->from_head >= seen.head_from && shown->from_head <= seen.head_to &&
         shown->from_gutter >= seen.gutter_from && shown->from_gutter <= seen.gutter_to;
}
/// Whether an edge of that kind, with that leaf on its other side, agrees with the one seen.
constexpr bool agrees(SeenEdge const& seen, Edge::Kind kind, std::optional<int> mate) {
  if (kind == Edge::Kind::deckle_or_cut) return seen.kind == Edge::Kind::deckle || seen.kind == Edge::Kind::cut;
  return seen.kind == kind && (!seen.mate || seen.mate == mate);
}

} // namespace v0
} // namespace bifolium
