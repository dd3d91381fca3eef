// SPDX-License-Identifier: MIT
/// The evidence that one leaf of a scheme shows, in the terms in which a leaf is described: the places of marks, the
/// edges that are bolts or deckle, the place of a point-hole. scheme_facts.hpp has it for every leaf of every scheme.
#pragma once

#include <bifolium/evidence/seen.hpp>
#include <bifolium/fold/shows.hpp>

#include <array>

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
  bool bolt{};             ///< true for a fold that joins it to another leaf
  bool end_of_long_side{}; ///< true for a deckle at an end of the sheet's long side
  double deckle{};         ///< 1, or a half if the sheet was cut before printing and either half is possible
  /// Returns the same for an end of the sheet's long side, where a tranchefile is: 0 at its other sides.
  [[nodiscard]] constexpr double tranchefile() const noexcept { return end_of_long_side ? deckle : 0; }
  friend constexpr bool operator==(EdgeFacts const&, EdgeFacts const&) = default;
};

/// The evidence that a leaf shows on paper with a mark in each half of the sheet. For one mark, only `watermark`
/// applies.
struct LeafFacts {
  int sheet{};                                         ///< the sheet of the scheme, from 0
  ChainLines chain_lines{};                            ///< on paper from an ordinary hand mould
  std::array<MarkPlace, 2> watermark{}, countermark{}; ///< for the two ways of laying the sheet: as given, end for end
  MarkPlace central{};                                 ///< for a mark in the exact centre of the sheet
  std::array<EdgeFacts, 3> edges{};                    ///< head, tail, fore-edge
  std::array<HolePlace, 2> holes{};                    ///< unknown if the leaf has none
  /// Returns the place of the watermark or, if the leaf has none, of the countermark. Precondition: `lie` is 0 or 1.
  [[nodiscard]] constexpr MarkPlace either(std::size_t lie) const {
    return watermark[lie] == MarkPlace::absent ? countermark[lie] : watermark[lie];
  }
};

/// Edges that occur together in one leaf, and the share of the leaves of a scheme that have them.
struct EdgeLook {
  std::array<EdgeFacts, 3> edges{}; ///< head, tail, fore-edge
  double share{};                   ///< share of the leaves, 0 to 1
  std::uint8_t number{};            ///< the same edges have the same number in all schemes, from 0
};

} // namespace v0
} // namespace bifolium
