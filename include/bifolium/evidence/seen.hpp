// SPDX-License-Identifier: MIT
/// The evidence of a leaf and its gathering. Every field may be left out; "not looked at" and "not there" are
/// different. Directions are those of the upright leaf. The types accept any value; `observe` (observation.hpp) checks
/// them.
#pragma once

#include <bifolium/core/optional_number.hpp>
#include <bifolium/core/year_range.hpp>
#include <bifolium/fold/shows.hpp>
#include <bifolium/leaf/gathering.hpp>
#include <bifolium/paper/measure.hpp>
#include <bifolium/paper/region.hpp>

namespace bifolium {
inline namespace v0 {

/// The material of the leaf.
enum class Material : std::uint8_t {
  unknown, ///< not looked at, or not known
  laid,    ///< paper that shows wire and chain lines
  wove,    ///< paper from a mould of woven wire, without lines
  vellum   ///< skin
};
/// What binders have left of the leaf: uncut, cut once by the trade, cut again, cut into the margins, or set into other
/// paper.
enum class LeafState : std::uint8_t { unknown, uncut, trimmed, rebound, cropped, inlaid };
/// The place of the watermark in the leaf.
enum class MarkPlace : std::uint8_t {
  unknown,
  centre,
  gutter,
  head_of_gutter,
  fore_edge,
  head_or_tail_edge,
  corner,
  absent ///< somebody looked, and there is no mark
};

/// The object of a height or a width.
enum class MeasureOf : std::uint8_t {
  leaf,
  binding, ///< the cover, which is larger than the leaf
  either   ///< unknown: the mean is assumed
};

/// The kind of an edge that no binder has cut away: a fold that joins unopened leaves (or its torn remains), the rough
/// edge from the mould, or an edge beside a tranchefile, the extra chain line at the end of a sheet.
enum class EdgeSeen : std::uint8_t { unknown, bolt, deckle, tranchefile };
/// The place of the hole of a press point in the leaf.
enum class HolePlace : std::uint8_t { unknown, spine_fold, head, tail, fore_edge, inside };

/// A kind of evidence.
enum class EvidenceKind : std::uint8_t {
  size,        ///< height and width of the leaf
  chain_lines, ///< direction of the chain lines in one leaf
  watermark,   ///< place of the marks in one leaf
  gathering,   ///< number of leaves of a gathering
  type_page,   ///< height of the type page
  edges,       ///< bolts, deckle, tranchefile
  point_hole,  ///< place of a hole of a press point
  leaves,      ///< marks and chain lines of several leaves of one gathering
  year,        ///< year of printing: it says what was usual, and nothing about the leaf
};
inline constexpr std::size_t evidence_kinds = 9; ///< number of kinds of evidence

/// One leaf of a gathering of which several were examined.
struct EvidenceOfLeaf {
  int leaf{};               ///< its number in the gathering, from 1; 0 ends the list
  MarkPlace mark{};         ///< place of the watermark or countermark, whichever the leaf shows
  ChainLines chain_lines{}; ///< direction of the chain lines in this leaf
  friend constexpr bool operator==(EvidenceOfLeaf const&, EvidenceOfLeaf const&) = default;
};
/// Leaves of one gathering, in any order. The leaves that show a mark, and its places, tell more than any single leaf.
using EvidenceOfLeaves = std::array<EvidenceOfLeaf, 24>;

/// The evidence of a leaf, written as `{.height = 201_mm, .chain_lines = ChainLines::horizontal}`.
struct LeafEvidence {
  OptionalLength height{}, width{}; ///< size of the object in `of`
  millimetres
      /// unit to which height and width were rounded up: 10_mm in most catalogues; 0_mm if they are exact
      rounded_up_to{};
  MeasureOf of{};                         ///< the object of height and width
  OptionalLength type_height{};           ///< height of the type page, which no binder cuts
  Material material{};                    ///< material of the leaf
  ChainLines chain_lines{};               ///< `both`: leaves of the book differ
  MarkPlace watermark{};                  ///< place of the watermark in the leaf
  MarkPlace countermark{};                ///< place of the countermark in the same leaf
  OptionalNumber<int> gathering_leaves{}; ///< leaves of most gatherings
  OptionalNumber<int> alternating_with{}; ///< the other of two alternating sizes: 4 in a book with gatherings 8.4.8.4
  EdgeSeen head{}, tail{}, fore_edge{};   ///< edges of the leaf
  HolePlace point_hole{};                 ///< place of a point-hole in the leaf
  EvidenceOfLeaves leaves{};              ///< leaves of one gathering of `gathering_leaves`
  LeafState state{};                      ///< what binders have left of the leaf
  std::optional<YearRange> year{};        ///< years of printing; no value if unknown
  Region place{};                         ///< region of printing
  friend constexpr bool operator==(LeafEvidence const&, LeafEvidence const&) = default;
};

} // namespace v0
} // namespace bifolium
