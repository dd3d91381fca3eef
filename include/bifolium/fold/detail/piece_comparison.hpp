// SPDX-License-Identifier: MIT
/// Compares a piece of a sheet folded into a packet with the evidence of the leaves that it makes. For each way in
/// which the sheet may have lain, the result is the set of leaves of which each alone, if it is left out, makes the
/// rest agree; it has all leaves if there is no contradiction.
#pragma once

#include <bifolium/fold/detail/makings.hpp>
#include <bifolium/fold/detail/packets.hpp>
#include <bifolium/fold/detail/sheet_part.hpp>
#include <bifolium/fold/folding_prices.hpp>
#include <bifolium/fold/seen_leaf.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// One gathering as it is looked for.
struct Wanted {
  int leaves{}, first_bit{};
  std::vector<SeenLeaf const*> seen{}; ///< by leaf from 0; null where it was not looked at
  PointsLookedFor points{};            ///< in any leaf
};

/// A piece in its place in a gathering, or the same piece of each of the sheets that are set one in another.
struct PieceInPlace {
  SheetPart part{};
  int start{}, gap{};      ///< its first leaf, and the leaves set inside it: of the outermost sheet
  int sheets{1};           ///< one in another
  int front{}, of_sheet{}; ///< leaves of a sheet before those set inside it, and all of them

  /// The leaf of the gathering, from 1, that leaf k of the piece is.
  [[nodiscard]] int leaf(int sheet, int k) const {
    int const n = part.rows * part.columns, first_half = n - n / 2;
    int const before = start + sheet * front, inside = gap - sheet * of_sheet;
    return (k < first_half ? before + k : before + inside + k) + 1;
  }
};

/// Compares all packets of a piece with what was seen.
class PieceComparison {
  Wanted const& wanted_;
  SheetLine const& lay_;
  std::optional<ChainLines> chain_lines_;
  std::size_t lies_;
  bool strict_; // no leaf may be of other paper: a contradiction excludes the piece
  PieceInPlace const& in_;
  struct Looked {
    SeenLeaf const* seen;
    int sheet, k;   // of the piece
    std::size_t at; // among the places of the kinds
  };
  std::vector<Looked> looked_{};
  bool by_cell_{}; // every leaf of the packet must be known, to tell which leaf is in a cell
  std::array<std::uint8_t, 64> leaf_of_{};
  std::vector<Blame> known_{}; // by leaf looked at, cell, heads and gutter
  std::vector<char> is_known_{};

  [[nodiscard]] int cells() const { return in_.part.rows * in_.part.columns; }
  [[nodiscard]] Blame bit(int leaf) const { return Blame{1} << static_cast<unsigned>(wanted_.first_bit + leaf - 1); }
  /// Finds the leaves that were looked at; bit k is leaf k of the packet, all of them where every one must be known.
  std::uint64_t look() {
    std::uint64_t places = 0;
    for (int sheet = 0; sheet < in_.sheets; ++sheet)
      for (int k = 0; k < cells(); ++k) {
        auto const* const seen = wanted_.seen[static_cast<std::size_t>(in_.leaf(sheet, k) - 1)];
        if (seen == nullptr) continue;
        looked_.push_back({seen, sheet, k, 0});
        places |= std::uint64_t{1} << static_cast<unsigned>(k);
        for (auto const& edge : {seen->head, seen->tail, seen->fore_edge}) by_cell_ = by_cell_ || (edge && edge->mate);
        // in a strip of an odd number of leaves one is joined to no other
        by_cell_ = by_cell_ || (cells() % 2 != 0 && cells() > 1 && (seen->conjugate || seen->disjunct));
      }
    return by_cell_ ? ~std::uint64_t{0} >> static_cast<unsigned>(64 - cells()) : places;
  }
  /// What is on the other side of an edge. A fold is told as a bolt, at the gutter too.
  struct Across {
    Edge::Kind kind;
    std::optional<int> mate; ///< if `by_cell_`
  };
  [[nodiscard]] Across across(int sheet, int row, int column) const {
    auto const& part = in_.part;
    if (row < 0 || row >= part.rows || column < 0 || column >= part.columns)
      return {part.edge(lay_, row, column), std::nullopt};
    if (!by_cell_) return {Edge::Kind::bolt, std::nullopt};
    return {Edge::Kind::bolt, in_.leaf(sheet, leaf_of_[static_cast<std::size_t>(row * part.columns + column)])};
  }

  /// A leaf of the piece in one of its cells, with the gutter on one side.
  struct InCell {
    Looked const& looked;
    Cell cell;
    bool gutter_right;
  };
  void disagree(Blame* blame, Blame involved) const {
    for (std::size_t lie = 0; lie < lies_; ++lie) blame[lie] &= strict_ ? 0 : involved;
  }
  void edges(Blame* blame, InCell const& at) const {
    auto const& seen = *at.looked.seen;
    int const to_head = at.cell.head_far ? -1 : 1, to_gutter = at.gutter_right ? 1 : -1;
    auto const edge = [&](std::optional<SeenEdge> const& looked_for, int down, int right) {
      if (!looked_for) return;
      auto const there = across(at.looked.sheet, at.cell.row + down, at.cell.column + right);
      if (!agrees(*looked_for, there.kind, there.mate))
        disagree(blame, bit(seen.leaf) | (looked_for->mate ? bit(*looked_for->mate) : 0));
    };
    edge(seen.head, to_head, 0);
    edge(seen.tail, -to_head, 0);
    edge(seen.fore_edge, 0, -to_gutter);
    if (!seen.conjugate && !seen.disjunct) return;
    // Conjugates are as far from the front of the packet as from its back.
    auto there = across(at.looked.sheet, at.cell.row, at.cell.column + to_gutter);
    if (!by_cell_) there.mate = in_.leaf(at.looked.sheet, cells() - 1 - at.looked.k);
    bool const joined = there.kind == Edge::Kind::bolt && cells() > 1;
    if (joined ? seen.disjunct || there.mate != seen.conjugate : !seen.disjunct)
      disagree(blame, bit(seen.leaf) | (seen.conjugate ? bit(*seen.conjugate) : 0));
  }
  void marks(Blame* blame, InCell const& at) const {
    auto const& seen = *at.looked.seen;
    auto const shown = [&](std::size_t point) { return in_leaf(at.cell, at.gutter_right, in_.part.points[point]); };
    if (seen.chain_lines && chain_lines_ && seen.chain_lines != chain_lines_) disagree(blame, bit(seen.leaf));
    if (seen.point_hole && !agrees(*seen.point_hole, shown(4)) && !agrees(*seen.point_hole, shown(5)))
      disagree(blame, bit(seen.leaf));
    for (std::size_t lie = 0; lie < lies_ && seen.watermark; ++lie)
      if (!agrees(*seen.watermark, shown(lie))) blame[lie] &= strict_ ? 0 : bit(seen.leaf);
  }
  /// Returns the leaves that a leaf in a cell contradicts, for each way in which the sheet may lie. This depends on the rest
  /// of the packet only as `by_cell_` does, so it is computed at the first call.
  Blame const* of_leaf(std::size_t looked, int cell, bool heads_far, bool gutter_right) {
    auto const columns = in_.part.columns;
    auto const at =
        ((looked * static_cast<std::size_t>(cells()) + static_cast<std::size_t>(cell)) * 2 + (heads_far ? 1 : 0)) * 2 +
        (gutter_right ? 1 : 0);
    auto* const blame = known_.data() + at * lies_;
    if (is_known_[at] != 0 && !by_cell_) return blame;
    is_known_[at] = 1;
    for (std::size_t lie = 0; lie < lies_; ++lie) blame[lie] = nobody;
    Cell place{};
    place.row = static_cast<std::uint8_t>(cell / columns), place.column = static_cast<std::uint8_t>(cell % columns);
    place.head_far = heads_far == (place.row % 2 == 0);
    InCell const in{looked_[looked], place, gutter_right};
    edges(blame, in);
    marks(blame, in);
    return blame;
  }
  /// One kind of packet, its far row with the heads far or near. False where no single leaf explains what disagrees.
  bool compare(PacketKinds const& kinds, std::size_t kind, bool heads_far, std::vector<Blame>& blame) {
    auto const* const cells_of = kinds.of(kind);
    if (by_cell_)
      for (std::size_t k = 0; k < kinds.places.size(); ++k) leaf_of_[cells_of[k]] = static_cast<std::uint8_t>(k);
    for (auto& one : blame) one = nobody;
    for (std::size_t i = 0; i < looked_.size(); ++i) {
      int const cell = cells_of[looked_[i].at];
      auto const* const here = of_leaf(i, cell, heads_far, cell % in_.part.columns % 2 == kinds.columns[kind]);
      auto* const of_sheet = blame.data() + static_cast<std::size_t>(looked_[i].sheet) * lies_;
      Blame any = 0;
      for (std::size_t lie = 0; lie < lies_; ++lie) any |= of_sheet[lie] &= here[lie];
      if (any == 0) return false;
    }
    return true;
  }

public:
  PieceComparison(Wanted const& wanted, SheetLine const& lay, Mould const& mould, int lies, bool strict,
                  PieceInPlace const& in)
      : wanted_{wanted}, lay_{lay},
        chain_lines_{chain_lines_of(lay, mould)}, lies_{static_cast<std::size_t>(lies)}, strict_{strict}, in_{in} {}

  /// All packets of the piece.
  Makings makings(PacketTable& packets) {
    Makings found{in_.sheets, static_cast<int>(lies_), strict_};
    auto const& kinds = packets.kinds(in_.part.rows, in_.part.columns, look());
    for (auto& looked : looked_)
      while (kinds.places[looked.at] != looked.k) ++looked.at;
    auto const questions = looked_.size() * static_cast<std::size_t>(cells()) * 4;
    known_.resize(questions * lies_), is_known_.resize(questions);
    std::vector<Blame> blame(found.width());
    for (std::size_t kind = 0; kind < kinds.size(); ++kind)
      for (bool const heads_far : {false, true})
        if (compare(kinds, kind, heads_far, blame))
          found.add(blame.data(), {kinds.packets[kind], folding_prices.fold * kinds.folds[kind] * in_.sheets +
                                                            (cells() == 1 ? folding_prices.single : 0)});
    return found;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
