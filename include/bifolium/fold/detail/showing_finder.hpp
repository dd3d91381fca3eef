// SPDX-License-Identifier: MIT
/// The method of `foldings_showing`. A gathering is a block of a sheet, cut into pieces that are set one inside
/// another, on one sheet or on several equal ones. The leaves of a piece have known places in the gathering, so every
/// packet of every piece is compared with the evidence separately; the only connection between pieces is the way in
/// which the sheet lay. The results are intersected, and packets with the same result are counted and not listed. A
/// first pass allows no contradiction. Only if the foldings that fit are complicated does a second pass look for leaves
/// that may be of other paper.
#pragma once

#include <bifolium/fold/detail/attested_fits.hpp>
#include <bifolium/fold/detail/block_nestings.hpp>
#include <bifolium/fold/detail/piece_comparison.hpp>
#include <bifolium/fold/foldings_showing.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A way of making one gathering, or many with the same blame.
struct Making {
  GridRect block{};
  std::vector<BlameByLie> blame{}; ///< by sheet of the gathering
  double foldings{};
  int price{};
};

/// Finds all foldings, and all that one leaf speaks against.
class ShowingFinder {
  struct Nestings {
    int rows, columns;
    std::vector<std::vector<GridRect>> all;
  };
  std::vector<Nestings> nestings_{};
  std::vector<Wanted> wanted_{};
  SheetsAllowed allowed_;
  PacketTable packets_{};
  int lies_;
  std::vector<FoldingGroup> groups_{};
  std::array<int, 64> blamed_price_{}; // by bit
  int bits_{};
  bool blaming_{};

  struct Compared { // a piece in one of its places in the gathering
    GridRect rect;
    int start, gap;
    std::vector<Making> makings;
  };
  /// The makings of one gathering from a block of a sheet laid so, `sheets` of them one in another.
  void makings(Wanted const& wanted, PieceComparison const& comparison, std::vector<GridRect> const& pieces, int sheets,
               Making const& start, std::vector<Compared>& known, std::vector<Making>& found) {
    std::vector<Making> sofar{start};
    sofar[0].blame.clear();
    for (int k = 0; k < sheets; ++k) {
      sofar[0].blame.push_back({});
      sofar[0].blame.back().fill(nobody);
    }
    for (auto const& rect : pieces) { // outermost first; the same piece of each sheet
      std::vector<PieceComparison::Place> places;
      for (int k = 0; k < sheets; ++k) {
        int start_leaf = 0, inside = wanted.leaves;
        for (int j = 0; j <= k; ++j)
          for (auto const& other : pieces) {
            if (j == k && &other == &rect) break;
            start_leaf += other.cells() - other.cells() / 2;
            inside -= other.cells();
          }
        places.push_back({rect, start_leaf, inside - rect.cells()});
      }
      sofar = joined(sofar, compared(comparison, rect, places, known));
      if (sofar.empty()) return;
    }
    for (auto& one : sofar) found.push_back(static_cast<Making&&>(one));
  }
  /// Returns all packets of a piece, those with the same blame together. `known`: what was compared for this block
  /// before.
  std::vector<Making> compared(PieceComparison const& comparison, GridRect const& rect,
                               std::vector<PieceComparison::Place> const& places, std::vector<Compared>& known) {
    for (auto const& one : known)
      if (one.rect == rect && one.start == places[0].start && one.gap == places[0].gap) return one.makings;
    std::vector<Making> found;
    std::vector<BlameByLie> blame;
    for (auto const& packet : packets_.of(rect.rows(), rect.columns()))
      for (bool const from_end : {false, true})
        for (bool const heads_far : {false, true}) {
          blame.resize(places.size());
          bool possible = true;
          for (std::size_t k = 0; k < places.size() && possible; ++k) {
            blame[k].fill(nobody);
            possible = comparison.compare(places[k], {packet, from_end, heads_far}, blame[k]);
          }
          auto const price = folding_prices.fold * packet.folds * static_cast<int>(places.size()) +
                             (rect.cells() == 1 ? folding_prices.single : 0);
          if (possible) add(found, {{}, blame, 1, price});
        }
    known.push_back({rect, places[0].start, places[0].gap, found});
    return found;
  }
  static void add(std::vector<Making>& makings, Making making) {
    for (auto& other : makings)
      if (other.blame == making.blame) {
        other.foldings += making.foldings;
        other.price = making.price < other.price ? making.price : other.price;
        return;
      }
    makings.push_back(static_cast<Making&&>(making));
  }
  static std::vector<Making> joined(std::vector<Making> const& one, std::vector<Making> const& other) {
    std::vector<Making> both;
    for (auto const& a : one)
      for (auto const& b : other) {
        Making making{a.block, a.blame, a.foldings * b.foldings, a.price + b.price};
        bool possible = true;
        for (std::size_t k = 0; k < making.blame.size() && possible; ++k) {
          Blame any = 0;
          for (std::size_t lie = 0; lie < 4; ++lie) any |= making.blame[k][lie] &= b.blame[k][lie];
          possible = any != 0;
        }
        if (possible) add(both, static_cast<Making&&>(making));
      }
    return both;
  }

  static bool overlap(GridRect const& a, GridRect const& b) {
    return a.top < b.bottom && b.top < a.bottom && a.left < b.right && b.left < a.right;
  }
  /// One making of each gathering, all from one sheet, none over another.
  void combine(std::vector<std::vector<Making>> const& options, std::size_t gathering, Making const& sofar,
               std::vector<GridRect>& blocks, FoldingGroup const& group) {
    if (gathering == options.size()) return settle(sofar, group);
    for (auto const& option : options[gathering]) {
      bool free = true;
      for (auto const& block : blocks) free = free && !overlap(block, option.block);
      if (!free) continue;
      for (auto const& both : joined({sofar}, {option})) {
        blocks.push_back(option.block);
        combine(options, gathering + 1, both, blocks, group);
        blocks.pop_back();
      }
    }
  }
  /// Counts what fits, remembers who is to blame where one leaf is.
  void settle(Making const& making, FoldingGroup group) {
    Blame blame = nobody;
    bool fits = true;
    for (auto const& sheet : making.blame) {
      Blame any = 0;
      bool one_fits = false;
      for (std::size_t lie = 0; lie < static_cast<std::size_t>(lies_); ++lie)
        any |= sheet[lie], one_fits = one_fits || sheet[lie] == nobody;
      blame &= any;
      fits = fits && one_fits;
    }
    auto const price = group.price + making.price;
    if (!fits) {
      for (int bit = 0; bit < bits_; ++bit)
        if ((blame >> static_cast<unsigned>(bit) & 1U) != 0 && price < blamed_price_[static_cast<std::size_t>(bit)])
          blamed_price_[static_cast<std::size_t>(bit)] = price;
      return;
    }
    if (blaming_) return;              // counted before
    constexpr double lies_on_type = 4; // end for end, side for side, both
    for (auto& other : groups_)
      if (other.is_like(group)) {
        other.foldings += making.foldings / lies_on_type;
        if (price < other.price) other.price = price, other.sheet = group.sheet;
        return;
      }
    group.foldings = making.foldings / lies_on_type;
    group.price = price;
    groups_.push_back(group);
  }

  std::vector<std::vector<GridRect>> const& nestings_of(int rows, int columns) {
    for (auto const& known : nestings_)
      if (known.rows == rows && known.columns == columns) return known.all;
    auto const byte = [](int n) { return static_cast<std::uint8_t>(n); };
    nestings_.push_back({rows, columns, nestings({0, 0, byte(rows), 0, byte(columns)}, allowed_.most_pieces)});
    return nestings_.back().all;
  }

  void try_sheet(SheetLine const& lay, int sheets) {
    int const to_paper = lay.part == PaperPart::half ? 2 : 1;
    std::vector<std::vector<Making>> uncut, cut;
    for (auto const& wanted : wanted_) {
      uncut.emplace_back(), cut.emplace_back();
      PieceComparison const comparison{wanted, lay, allowed_.mould, lies_, !blaming_};
      auto const per_sheet = wanted.leaves / sheets;
      for (int rows = 1; rows <= lay.rows; ++rows) {
        if (per_sheet % rows != 0 || per_sheet / rows > lay.columns) continue;
        int const columns = per_sheet / rows;
        for (int top = 0; top + rows <= lay.rows; ++top)
          for (int left = 0; left + columns <= lay.columns; ++left) {
            auto const byte = [](int n) { return static_cast<std::uint8_t>(n); };
            GridRect const block{0, byte(top), byte(top + rows), byte(left), byte(left + columns)};
            int const sides = (top > 0) + (top + rows < lay.rows) + (left > 0) + (left + columns < lay.columns);
            std::vector<Compared> known;
            for (auto pieces : nestings_of(rows, columns)) {
              for (auto& rect : pieces) {
                rect.top = byte(rect.top + top), rect.bottom = byte(rect.bottom + top);
                rect.left = byte(rect.left + left), rect.right = byte(rect.right + left);
              }
              int const cuts = sides + static_cast<int>(pieces.size()) - 1;
              Making start{block, {}, 1, folding_prices.cut * cuts * sheets};
              makings(wanted, comparison, pieces, sheets, start, known, cuts == 0 ? uncut.back() : cut.back());
            }
          }
      }
    }
    FoldingGroup group{Format::of(lay.rows * lay.columns * to_paper),    sheets, lay.part, false, 0,
                       folding_prices.cut * (sheets - 1 + to_paper - 1), lay,    {}};
    Making none{{}, {}, 1, 0};
    for (int k = 0; k < sheets; ++k) none.blame.emplace_back().fill(nobody);
    std::vector<GridRect> blocks;
    combine(uncut, 0, none, blocks, group);
    group.cut = true;
    combine(cut, 0, none, blocks, group);
  }
  /// Chain lines alone rule most sheets out: more than one leaf against them is more than one leaf to blame.
  [[nodiscard]] bool chain_lines_possible(SheetLine const& lay) const {
    auto const run = chain_lines_of(lay, allowed_.mould);
    int against = 0;
    for (auto const& wanted : wanted_)
      for (auto const* seen : wanted.seen)
        against += seen != nullptr && run && seen->chain_lines && *seen->chain_lines != *run ? 1 : 0;
    return against <= (blaming_ ? 1 : 0);
  }
  void try_sheets() {
    int all = 0;
    for (auto const& wanted : wanted_) all += wanted.leaves;
    for (int sheets = 1; sheets <= allowed_.most_sheets; ++sheets) {
      if (sheets > 1 && (wanted_.size() > 1 || wanted_[0].leaves % (2 * sheets) != 0)) continue;
      for (int rows = 1; rows <= allowed_.most_rows; ++rows)
        for (int columns = 1; columns <= allowed_.most_columns; ++columns)
          for (auto long_side : {Axis::far_near, Axis::left_right})
            for (auto part : {PaperPart::whole, PaperPart::half}) {
              int const leaves = rows * columns * (part == PaperPart::half ? 2 : 1);
              if (leaves > allowed_.most_leaves || rows * columns * sheets < all) continue;
              if (part == PaperPart::half && !allowed_.half_sheets) continue;
              SheetLine lay{};
              lay.rows = static_cast<std::uint8_t>(rows), lay.columns = static_cast<std::uint8_t>(columns);
              lay.long_side = long_side, lay.part = part;
              if (chain_lines_possible(lay)) try_sheet(lay, sheets);
            }
    }
  }

  void put_in_order(FoldingsLeft& left) {
    insertion_sort(groups_, [](FoldingGroup const& a, FoldingGroup const& b) {
      return a.price != b.price ? a.price < b.price : !a.attested.empty() && b.attested.empty();
    });
    auto const best = groups_.empty() ? PieceFolds::none : groups_[0].price;
    int bit = 0;
    for (std::size_t g = 0; g < wanted_.size(); ++g)
      for (int leaf = 1; leaf <= wanted_[g].leaves; ++leaf, ++bit) {
        auto const price = blamed_price_[static_cast<std::size_t>(bit)];
        if (price >= PieceFolds::none || price + folding_prices.correction >= best) continue;
        left.blamed.push_back({static_cast<int>(g), leaf, price + folding_prices.correction});
      }
    insertion_sort(left.blamed, [](BlamedLeaf a, BlamedLeaf b) { return a.price < b.price; });
  }

public:
  explicit ShowingFinder(SheetsAllowed const& allowed)
      : allowed_{allowed}, lies_{allowed.mould.watermark && allowed.mould.watermark->across == 0.5 ? 2 : 4} {
    blamed_price_.fill(PieceFolds::none);
  }
  Expected<FoldingsLeft> find(std::span<SeenGathering const> given) {
    constexpr int most_leaves = 32;
    for (auto const& gathering : given) {
      if (gathering.leaves < 1 || gathering.leaves > most_leaves || bits_ + gathering.leaves > 63)
        return error_in_field(Problem::gathering_too_large, "gatherings", most_leaves);
      Wanted wanted{gathering.leaves, bits_,
                    std::vector<SeenLeaf const*>(static_cast<std::size_t>(gathering.leaves), nullptr)};
      bits_ += gathering.leaves;
      for (auto const& seen : gathering.seen) {
        auto const outside = [&](std::optional<int> leaf) { return leaf && (*leaf < 1 || *leaf > gathering.leaves); };
        auto const mate = [](std::optional<SeenEdge> const& edge) { return edge ? edge->mate : std::nullopt; };
        if (outside(seen.leaf) || outside(seen.conjugate) || outside(mate(seen.head)) || outside(mate(seen.tail)) ||
            outside(mate(seen.fore_edge)))
          return error_in_field(Problem::leaf_outside_gathering, "leaf", gathering.leaves);
        auto& place = wanted.seen[static_cast<std::size_t>(seen.leaf - 1)];
        if (place != nullptr) return error_in_field(Problem::leaf_seen_twice, "leaf", seen.leaf);
        place = &seen;
      }
      wanted_.push_back(static_cast<Wanted&&>(wanted));
    }
    if (given.empty()) return error_in_field(Problem::gathering_size_needed, "gatherings");
    try_sheets();
    // To set a leaf aside has a price: where what fits is simple, no leaf is worth it.
    int leaves = 0, folds = 0;
    for (auto const& gathering : given) leaves += gathering.leaves;
    while (1 << folds < leaves) ++folds;
    int best = PieceFolds::none;
    for (auto const& group : groups_) best = group.price < best ? group.price : best;
    if (best > folding_prices.correction + folding_prices.fold * folds) {
      blaming_ = true;
      try_sheets();
    }
    AttestedFits attested{given, allowed_.mould};
    attested.name(groups_);
    FoldingsLeft left;
    left.look_next = attested.best_look();
    put_in_order(left);
    left.groups = static_cast<std::vector<FoldingGroup>&&>(groups_);
    return left;
  }
};

} // namespace detail

inline Expected<FoldingsLeft> foldings_showing(std::span<SeenGathering const> gatherings,
                                               SheetsAllowed const& allowed) {
  return detail::ShowingFinder{allowed}.find(gatherings);
}

} // namespace v0
} // namespace bifolium
