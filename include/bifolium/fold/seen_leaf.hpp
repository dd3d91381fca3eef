// SPDX-License-Identifier: MIT
/// The evidence seen in the leaves of a gathering, leaf by leaf, for finding the foldings that agree with it. "Not
/// looked at" and "not there" are different: a field without a value means "not looked at". Directions are those of the
/// upright leaf.
#pragma once

#include <bifolium/core/optional_number.hpp>
#include <bifolium/fold/shows.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// A watermark or a hole of the press points: whether it was seen, and in what part of the leaf.
struct SeenMark {
  bool there{};                        ///< true if it is there; false if somebody looked and it is not there
  double head_from{0}, head_to{1};     ///< it lies between these fractions of the height, counted from the head
  double gutter_from{0}, gutter_to{1}; ///< it lies between these fractions of the width, counted from the gutter
  friend constexpr bool operator==(SeenMark, SeenMark) = default;
};

/// The places of a mark in a leaf, by name. A place at an edge covers a fifth of the leaf there.
namespace seen_marks {
inline constexpr SeenMark absent{};                             ///< somebody looked, and there is no mark
inline constexpr SeenMark somewhere{true};                      ///< there is a mark; its place was not noted
inline constexpr SeenMark centre{true, 0.2, 0.8, 0.2, 0.8};     ///< in the middle of the leaf
inline constexpr SeenMark gutter{true, 0.2, 0.8, 0, 0.2};       ///< divided by the gutter
inline constexpr SeenMark head_of_gutter{true, 0, 0.2, 0, 0.2}; ///< in the upper inner corner
inline constexpr SeenMark fore_edge{true, 0, 1, 0.8, 1};        ///< at the fore-edge, including its corners
inline constexpr SeenMark head_edge{true, 0, 0.2, 0.2, 0.8};    ///< divided by the head
inline constexpr SeenMark tail_edge{true, 0.8, 1, 0.2, 0.8};    ///< divided by the tail
/// divided by the head or the tail, between gutter and fore-edge
inline constexpr SeenMark head_or_tail_edge{true, 0, 1, 0.2, 0.8};
inline constexpr SeenMark near_head{true, 0, 0.2, 0, 1};   ///< at the head, including its corners
inline constexpr SeenMark near_tail{true, 0.8, 1, 0, 1};   ///< at the tail, including its corners
inline constexpr SeenMark near_gutter{true, 0, 1, 0, 0.2}; ///< at the gutter, including its corners
} // namespace seen_marks

/// Returns the part of the leaf that two places share: near the tail and near the fore-edge is the lower outer corner.
constexpr SeenMark both(SeenMark const& one, SeenMark const& other) {
  auto const later = [](double a, double b) { return a > b ? a : b; };
  auto const sooner = [](double a, double b) { return a < b ? a : b; };
  return {one.there && other.there, later(one.head_from, other.head_from), sooner(one.head_to, other.head_to),
          later(one.gutter_from, other.gutter_from), sooner(one.gutter_to, other.gutter_to)};
}

/// An edge that no binder cut. For the gutter see `SeenLeaf::conjugate`.
struct SeenEdge {
  Edge::Kind kind{};          ///< deckle, cut or bolt
  OptionalNumber<int> mate{}; ///< the leaf on the other side of a bolt, if it is known
  friend constexpr bool operator==(SeenEdge const&, SeenEdge const&) = default;
};

/// The evidence of one leaf.
struct SeenLeaf {
  int leaf{};                                          ///< its number in the gathering, from 1
  std::optional<ChainLines> chain_lines{};             ///< vertical or horizontal
  std::optional<SeenMark> watermark{}, point_hole{};   ///< no value if nobody looked
  std::optional<SeenEdge> head{}, tail{}, fore_edge{}; ///< edges as they were after folding
  OptionalNumber<int> conjugate{};                     ///< the leaf to which it is joined at the gutter
  bool disjunct{};                                     ///< true for a single leaf, which is joined to no other
  friend constexpr bool operator==(SeenLeaf const&, SeenLeaf const&) = default;
};

/// One gathering and the evidence of its leaves.
struct SeenGathering {
  int leaves{};                 ///< number of leaves of the gathering
  std::vector<SeenLeaf> seen{}; ///< the leaves that were looked at, each once, in any order
  friend constexpr bool operator==(SeenGathering const&, SeenGathering const&) = default;
};

/// Returns true if a leaf that shows a mark at `shown`, for one way of laying the sheet, agrees with the mark that was
/// seen.
constexpr bool agrees(SeenMark const& seen, std::optional<PointOfLeaf> const& shown) {
  if (!seen.there || !shown) return seen.there == shown.has_value();
  return shown->from_head >= seen.head_from && shown->from_head <= seen.head_to &&
         shown->from_gutter >= seen.gutter_from && shown->from_gutter <= seen.gutter_to;
}
/// Returns true if an edge of that kind, with that leaf on its other side, agrees with the edge that was seen.
constexpr bool agrees(SeenEdge const& seen, Edge::Kind kind, std::optional<int> mate) {
  if (kind == Edge::Kind::deckle_or_cut) return seen.kind == Edge::Kind::deckle || seen.kind == Edge::Kind::cut;
  return seen.kind == kind && (!seen.mate || seen.mate == mate);
}

} // namespace v0
} // namespace bifolium
