// SPDX-License-Identifier: MIT
/// What can be seen of a leaf, and of the gathering it belongs to. Every field may be left out; "not looked at" and "not
/// there" are different answers. Directions are those of the upright leaf. Nothing is checked here: see observation.hpp.
#pragma once

#include <bifolium/core/year_range.hpp>
#include <bifolium/fold/shows.hpp>
#include <bifolium/leaf/gathering.hpp>
#include <bifolium/paper/length.hpp>
#include <bifolium/paper/region.hpp>

namespace bifolium {
inline namespace v0 {

/// What the leaf is made of.
enum class Material : std::uint8_t {
  unknown, ///< not looked at, or not told
  laid,    ///< paper that shows wire and chain lines
  wove,    ///< paper from a mould of woven wire, without lines
  vellum   ///< skin
};
/// What the binder left: uncut, cut once by the trade, cut again, cut into the margins, or set into other paper.
enum class LeafState : std::uint8_t { unknown, uncut, trimmed, rebound, cropped, inlaid };
/// Where in the leaf the watermark is.
enum class MarkPlace : std::uint8_t {
  unknown,
  centre,
  gutter,
  head_of_gutter,
  fore_edge,
  head_or_tail_edge,
  corner,
  absent ///< looked for and not there
};

/// What a height or a width was measured of.
enum class MeasureOf : std::uint8_t {
  leaf,
  binding, ///< its cover, whose boards are larger than the leaf
  either   ///< it is not told: the middle is taken
};

/// What an edge of the leaf is, where no binder has cut it away: a fold that joins leaves still unopened (or its torn
/// remains), the rough edge from the mould, or an edge beside a tranchefile, the extra chain line at the end of a sheet.
enum class EdgeSeen : std::uint8_t { unknown, bolt, deckle, tranchefile };
/// Where the hole of a press point pierces the leaf.
enum class HolePlace : std::uint8_t { unknown, spine_fold, head, tail, fore_edge, inside };

/// One leaf of a gathering of which several were looked at.
struct EvidenceOfLeaf {
  int leaf{};               ///< its number in the gathering, from 1; 0 ends the list
  MarkPlace mark{};         ///< of watermark or countermark, whichever it shows
  ChainLines chain_lines{}; ///< which way they run in this leaf
  friend constexpr bool operator==(EvidenceOfLeaf const&, EvidenceOfLeaf const&) = default;
};
/// Leaves of one gathering, in any order. Which of them show a mark, and where, tells more than any single leaf.
using EvidenceOfLeaves = std::array<EvidenceOfLeaf, 24>;

/// What was seen, to be written as `{.height = 201_mm, .chain_lines = ChainLines::horizontal}`.
struct LeafEvidence {
  std::optional<millimetres> height{}, width{}; ///< of what `of` says
  millimetres
      rounded_up_to{}; ///< whole steps that height and width were rounded up to: 10_mm in most catalogues; 0_mm as measured
  MeasureOf of{};      ///< what height and width are of
  std::optional<millimetres> type_height{}; ///< of the type page, which no binder cuts
  Material material{};                      ///< of the leaf
  ChainLines chain_lines{};                 ///< `both`: leaves of the book differ
  MarkPlace watermark{};                    ///< where in the leaf
  MarkPlace countermark{};                  ///< in the same leaf
  std::optional<int> gathering_leaves{};    ///< of most gatherings
  std::optional<int> alternating_with{};    ///< the other of two sizes by turns: 4 in a book gathered 8.4.8.4
  EdgeSeen head{}, tail{}, fore_edge{};     ///< of the leaf
  HolePlace point_hole{};                   ///< in the leaf
  EvidenceOfLeaves leaves{};                ///< of one gathering of `gathering_leaves`
  LeafState state{};                        ///< what binders left of it
  std::optional<YearRange> year{};          ///< of printing; missing where it is not known
  Region place{};                           ///< of printing; anywhere unless named
};

} // namespace v0
} // namespace bifolium
