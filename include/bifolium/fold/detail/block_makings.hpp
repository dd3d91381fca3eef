// SPDX-License-Identifier: MIT
/// Finds all ways of making a gathering from a block of a sheet: the block is cut into pieces, the pieces are set one
/// inside another, and so are the sheets, if there are several. The leaves of a piece have known places in the gathering,
/// so every piece is compared with the evidence separately, and the results are intersected. Blocks and pieces that can
/// show the same are compared once: on a sheet of 64 leaves most blocks hold no mark and touch no edge, and all those are
/// equal.
#pragma once

#include <bifolium/fold/detail/block_nestings.hpp>
#include <bifolium/fold/detail/piece_comparison.hpp>
#include <bifolium/fold/foldings_left.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The ways of making a gathering from a block.
struct BlockMakings {
  Makings uncut; ///< the block is the whole sheet, and one piece
  Makings cut;
};

/// Finds the ways for one gathering and stores them.
class BlockMaker {
  Wanted const& wanted_;
  Mould const& mould_;
  PacketTable& packets_;
  int most_pieces_, lies_;
  bool strict_;

  using Key = std::array<std::uint64_t, std::tuple_size_v<SheetPart::Key> + 1>;
  static Key key_of(SheetPart const& part, std::uint64_t rest) {
    Key key{};
    auto const of_part = part.key();
    for (std::size_t i = 0; i < of_part.size(); ++i) key[i] = of_part[i];
    key.back() = rest;
    return key;
  }
  KeyTable<Key> block_keys_{}, piece_keys_{};
  std::vector<BlockMakings> blocks_{}; // by number of key
  std::vector<Makings> pieces_{};      // by number of key
  struct Nestings {
    int rows, columns;
    std::vector<std::vector<GridRect>> all;
  };
  std::vector<Nestings> nestings_{};

  std::vector<std::vector<GridRect>> const& nestings_of(int rows, int columns) {
    for (auto const& known : nestings_)
      if (known.rows == rows && known.columns == columns) return known.all;
    auto const byte = [](int n) { return static_cast<std::uint8_t>(n); };
    nestings_.push_back({rows, columns, nestings({0, 0, byte(rows), 0, byte(columns)}, most_pieces_)});
    return nestings_.back().all;
  }
  static std::uint64_t lay_bits(SheetLine const& lay) {
    return static_cast<std::uint64_t>(lay.long_side == Axis::far_near ? 1 : 0) |
           static_cast<std::uint64_t>(lay.part == PaperPart::half ? 2 : 0);
  }
  Makings const& piece(PieceInPlace const& in, SheetLine const& lay) {
    auto const n = [](int number) { return static_cast<std::uint64_t>(number); };
    auto const place = n(in.start) | n(in.gap) << 8U | n(in.sheets) << 16U | n(in.front) << 24U |
                       n(in.of_sheet) << 32U | lay_bits(lay) << 40U;
    auto const before = piece_keys_.size(), number = piece_keys_.number(key_of(in.part, place));
    if (number == before)
      pieces_.push_back(PieceComparison{wanted_, lay, mould_, lies_, strict_, in}.makings(packets_));
    return pieces_[number];
  }
  /// Combines the pieces from the outermost inwards, the same pieces of each sheet.
  Makings nested(SheetPart const& block, SheetLine const& lay, int sheets, std::vector<GridRect> const& pieces) {
    PieceInPlace in{{}, 0, wanted_.leaves, sheets, 0, block.rows * block.columns};
    for (auto const& rect : pieces) in.front += rect.cells() - rect.cells() / 2;
    std::optional<Makings> sofar;
    for (auto const& rect : pieces) {
      in.part = block.part(rect);
      in.gap -= rect.cells();
      auto const& here = piece(in, lay);
      sofar = sofar ? sofar->joined(here) : here;
      if (sofar->size() == 0) break;
      in.start += rect.cells() - rect.cells() / 2;
    }
    return *sofar;
  }

public:
  BlockMaker(Wanted const& wanted, SheetsAllowed const& allowed, PacketTable& packets, int lies, bool strict)
      : wanted_{wanted}, mould_{allowed.mould}, packets_{packets},
        most_pieces_{allowed.most_pieces}, lies_{lies}, strict_{strict} {}

  /// Returns the ways for a block. The reference is valid until the next call.
  BlockMakings const& makings(SheetPart const& block, SheetLine const& lay, int sheets) {
    auto const rest = static_cast<std::uint64_t>(sheets) | lay_bits(lay) << 8U;
    auto const before = block_keys_.size(), number = block_keys_.number(key_of(block, rest));
    if (number < before) return blocks_[number];
    BlockMakings found{{sheets, lies_, strict_}, {sheets, lies_, strict_}};
    for (auto const& pieces : nestings_of(block.rows, block.columns)) {
      int const cuts = block.sides_cut() + static_cast<int>(pieces.size()) - 1;
      auto const all = nested(block, lay, sheets, pieces);
      for (std::size_t i = 0; i < all.size(); ++i)
        (cuts == 0 ? found.uncut : found.cut)
            .add(all.blame(i), {all[i].ways, all[i].price + folding_prices.cut * cuts * sheets});
    }
    blocks_.push_back(static_cast<BlockMakings&&>(found));
    return blocks_.back();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
