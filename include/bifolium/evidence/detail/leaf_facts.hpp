// SPDX-License-Identifier: MIT
/// The evidence that each leaf of each scheme shows, in the terms in which a leaf is described: the places of marks,
/// the edges that are bolts or deckle, the place of a point-hole. Nobody writes down such a fact of a format: the program
/// bench/write_leaf_rows.cpp folds every scheme, examines its leaves and writes leaf_rows.hpp. So a unit that names
/// formats needs neither the reader of schemes nor the folder, and nothing is folded at the first inference.
#pragma once

#include <bifolium/evidence/detail/leaf_rows.hpp>
#include <bifolium/evidence/seen.hpp>
#include <bifolium/fold/attested.hpp>

#include <span>

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
  SheetLine lay{};                     ///< rows and columns of the sheet, its part, and the direction of its long side
  int sheets{};                        ///< number of sheets, laid one inside another or side by side
  int gatherings{};                    ///< number of gatherings
  std::span<LeafFacts const> leaves{}; ///< all leaves, in the order of the book
  std::span<EdgeLook const> looks{};   ///< every combination of edges once; the shares add up to 1
  std::array<double, 6> holes{};       ///< share of the leaves with a hole at each `HolePlace`
  double pierced{};                    ///< share of the leaves with a hole
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

/// Reads one leaf of a row of leaf_rows.hpp.
[[gnu::cold]] inline LeafFacts read_leaf(char const* text) {
  auto const digit = [&](int at) { return static_cast<std::uint8_t>(text[at] - '0'); };
  auto const mark = [&](int at) { return static_cast<MarkPlace>(digit(at)); };
  LeafFacts facts;
  facts.sheet = text[0] - 'a';
  facts.chain_lines = static_cast<ChainLines>(digit(1));
  facts.watermark = {mark(2), mark(3)}, facts.countermark = {mark(4), mark(5)}, facts.central = mark(6);
  for (std::size_t lie = 0; lie < 2; ++lie)
    facts.either[lie] = facts.watermark[lie] == MarkPlace::absent ? facts.countermark[lie] : facts.watermark[lie];
  for (int i = 0; i < 3; ++i) {
    auto const edge = digit(7 + i); // 1: a bolt; 2: a deckle, 3: which may be cut; 4 more: at an end of the long side
    double const deckle = edge % 4 == 2 ? 1 : edge % 4 == 3 ? 0.5 : 0;
    facts.edges[static_cast<std::size_t>(i)] = {edge % 4 == 1, deckle, edge >= 4 ? deckle : 0};
  }
  facts.holes = {static_cast<HolePlace>(digit(10)), static_cast<HolePlace>(digit(11))};
  return facts;
}

/// The facts of all attested schemes, and the data of their spans.
class AllSchemeFacts {
  std::array<LeafFacts, leaf_rows::leaves> leaves_{};
  std::array<EdgeLook, leaf_rows::looks> looks_{};
  std::array<SchemeFacts, Attested::count> schemes_{};

  /// Counts the leaves with the same edges from `looks` on, and returns the number of looks. A leaf has at most two
  /// holes, depending on how its sheet was laid.
  static std::size_t count_looks(SchemeFacts& facts, EdgeLook* looks) {
    std::size_t count = 0;
    auto const share = 1 / static_cast<double>(facts.leaves.size());
    for (auto const& leaf : facts.leaves) {
      std::size_t at = 0;
      while (at < count && looks[at].edges != leaf.edges) ++at;
      if (at == count) looks[count++].edges = leaf.edges;
      looks[at].share += share;
      bool pierced = false;
      for (std::size_t place = 1; place < facts.holes.size(); ++place) {
        auto const hole = static_cast<HolePlace>(place);
        if (leaf.holes[0] != hole && leaf.holes[1] != hole) continue;
        facts.holes[place] += share;
        pierced = true;
      }
      if (pierced) facts.pierced += share;
    }
    return count;
  }

public:
  [[gnu::cold]] AllSchemeFacts() {
    std::size_t leaf = 0, look = 0;
    for (std::size_t row = 0; row < schemes_.size(); ++row) {
      auto& facts = schemes_[row];
      auto const& kept = leaf_rows::schemes[row];
      facts.scheme = Attested{static_cast<SchemeRow>(row)};
      facts.format = Format::of(kept.leaves, kept.shape);
      facts.lay = {kept.rows, kept.columns, kept.long_side, kept.part, false, {}, {}};
      facts.sheets = kept.sheets;
      auto const first = leaf;
      for (auto const* text = kept.text; *text != 0; text += *text == ' ' ? 1 : leaf_rows::characters) {
        if (facts.gatherings == 0 || *text == ' ') ++facts.gatherings;
        if (*text == ' ') continue;
        leaves_[leaf++] = read_leaf(text);
        ++facts.gathered[static_cast<std::size_t>(facts.gatherings - 1)];
      }
      facts.leaves = {leaves_.data() + first, leaf - first};
      auto const count = count_looks(facts, looks_.data() + look);
      facts.looks = {looks_.data() + look, count};
      look += count;
    }
  }
  AllSchemeFacts(AllSchemeFacts const&) = delete; // the spans look at its arrays
  AllSchemeFacts& operator=(AllSchemeFacts const&) = delete;

  [[nodiscard]] std::array<SchemeFacts, Attested::count> const& schemes() const { return schemes_; }
};

} // namespace detail

/// Returns the facts of all attested schemes, in their order. They are read once in a program, at the first use.
inline std::array<SchemeFacts, Attested::count> const& scheme_facts() {
  static detail::AllSchemeFacts const facts;
  return facts.schemes();
}

} // namespace v0
} // namespace bifolium
