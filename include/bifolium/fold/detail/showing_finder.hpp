// SPDX-License-Identifier: MIT
/// The method of `foldings_showing`. It tries every sheet within the limits, and on the sheet every block that can make
/// the gathering. A first pass allows no contradiction. Only if the foldings that fit are complicated does a second pass
/// look for a leaf that may be of other paper. That leaf is in one gathering, so all other gatherings must agree entirely.
#pragma once

#include <bifolium/fold/detail/attested_fits.hpp>
#include <bifolium/fold/detail/block_makings.hpp>
#include <bifolium/fold/detail/sheet_shared.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Finds all foldings that agree with the evidence, and those that contradict the evidence of one leaf only.
class ShowingFinder {
  static constexpr int most_leaves = 32;
  std::span<SeenGathering const> given_;
  SheetsAllowed allowed_;
  int lies_;
  std::vector<Wanted> wanted_{};
  int bits_{};
  PacketTable packets_{};
  std::vector<BlockMaker> strict_{}, blaming_{}; // by gathering
  std::vector<FoldingGroup> groups_{};
  std::array<int, 64> blamed_price_{}; // by bit
  bool too_many_{};

  /// Adds the evidence of one gathering to `wanted_`.
  std::optional<Error> take(SeenGathering const& gathering) {
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
      wanted.points.add(seen.watermark, wanted.points.marks);
      wanted.points.add(seen.point_hole, wanted.points.holes);
    }
    wanted_.push_back(static_cast<Wanted&&>(wanted));
    return std::nullopt;
  }

  /// Calls `look(block, its makings)` for each block of the sheet that can make the gathering.
  template <class Look>
  void each_block(std::size_t gathering, SheetLine const& lay, int sheets, bool blaming, Look look) {
    auto const& wanted = wanted_[gathering];
    auto& maker = (blaming ? blaming_ : strict_)[gathering];
    auto const sheet = SheetPart::whole(lay, allowed_.mould, lies_, wanted.points);
    auto const leaves = wanted.leaves / sheets;
    auto const byte = [](int n) { return static_cast<std::uint8_t>(n); };
    for (int rows = 1; rows <= lay.rows; ++rows) {
      if (leaves % rows != 0 || leaves / rows > lay.columns) continue;
      int const columns = leaves / rows;
      for (int top = 0; top + rows <= lay.rows; ++top)
        for (int left = 0; left + columns <= lay.columns; ++left) {
          GridRect const block{0, byte(top), byte(top + rows), byte(left), byte(left + columns)};
          look(block, maker.makings(sheet.part(block), lay, sheets));
        }
    }
  }
  [[nodiscard]] FoldingGroup group(SheetLine const& lay, int sheets, bool cut) const {
    int const to_paper = lay.part == PaperPart::half ? 2 : 1;
    FoldingGroup group;
    group.format = Format::of(lay.rows * lay.columns * to_paper);
    group.sheets = sheets, group.part = lay.part, group.cut = cut, group.sheet = lay;
    group.price = folding_prices.cut * (sheets - 1 + to_paper - 1);
    return group;
  }
  /// The counts for one sheet. All its foldings belong to one group.
  struct Settled {
    FoldingGroup group;
    double ways{};
    int price{PieceFolds::none};
  };
  /// Counts a folding that agrees. For one that does not, stores each leaf that alone explains the contradiction.
  void settle(Settled& settled, Blame const* by_lie, int sheets, Makings::Row row) {
    Blame blame = nobody;
    bool fits = true;
    for (int sheet = 0; sheet < sheets; ++sheet) {
      Blame any = 0;
      bool one_fits = false;
      for (int lie = 0; lie < lies_; ++lie, ++by_lie) any |= *by_lie, one_fits = one_fits || *by_lie == nobody;
      blame &= any;
      fits = fits && one_fits;
    }
    auto const price = settled.group.price + row.price;
    if (fits) {
      settled.ways += row.ways;
      settled.price = price < settled.price ? price : settled.price;
      return;
    }
    for (int bit = 0; bit < bits_; ++bit)
      if ((blame >> static_cast<unsigned>(bit) & 1U) != 0 && price < blamed_price_[static_cast<std::size_t>(bit)])
        blamed_price_[static_cast<std::size_t>(bit)] = price;
  }
  void settle_all(Settled& settled, Makings const& makings, int sheets) {
    for (std::size_t i = 0; i < makings.size(); ++i) settle(settled, makings.blame(i), sheets, makings[i]);
  }
  void keep(Settled const& settled) {
    constexpr double lies_on_type = 4; // as it is; turned end for end; turned side for side; both
    if (!(settled.ways > 0)) return;
    auto const foldings = settled.ways / lies_on_type;
    for (auto& other : groups_)
      if (other.is_like(settled.group)) {
        other.foldings += foldings;
        if (settled.price < other.price) other.price = settled.price, other.sheet = settled.group.sheet;
        return;
      }
    groups_.push_back(settled.group);
    groups_.back().foldings = foldings;
    groups_.back().price = settled.price;
  }

  /// Tries one gathering, made of one sheet or of several sheets set one inside another.
  void try_alone(SheetLine const& lay, int sheets, bool blaming) {
    Settled uncut{group(lay, sheets, false)}, cut{group(lay, sheets, true)};
    each_block(0, lay, sheets, blaming, [&](GridRect const&, BlockMakings const& made) {
      settle_all(uncut, made.uncut, sheets);
      settle_all(cut, made.cut, sheets);
    });
    if (blaming) return; // foldings that agree were counted before
    keep(uncut);
    keep(cut);
  }
  /// Tries several gatherings of one sheet. Only the gathering `blamed` may have a leaf that does not agree.
  void try_together(SheetLine const& lay, std::optional<std::size_t> blamed) {
    SheetShared shared{lies_};
    auto const last = blamed.value_or(wanted_.size() - 1);
    auto const options = [&](std::size_t gathering) {
      std::vector<SheetShared::Option> all;
      each_block(gathering, lay, 1, blamed == gathering, [&](GridRect const& block, BlockMakings const&) {
        all.push_back({SheetShared::cells_of(block, lay.columns), nullptr});
      });
      std::size_t i = 0; // again: references are valid only after the vector has stopped growing
      each_block(gathering, lay, 1, blamed == gathering,
                 [&](GridRect const&, BlockMakings const& made) { all[i++].makings = &made.cut; });
      return all;
    };
    for (std::size_t g = 0; g < wanted_.size(); ++g)
      if (g != last) shared.lay(options(g));
    too_many_ = too_many_ || shared.too_many();
    if (too_many_) return;
    Settled cut{group(lay, 1, true)};
    shared.finish(options(last), [&](Blame const* blame, Makings::Row row) { settle(cut, blame, 1, row); });
    if (!blamed) keep(cut);
  }
  /// Chain lines alone exclude most sheets. If they contradict more than one leaf, the sheet is excluded, because only one leaf
  /// may be of other paper.
  [[nodiscard]] bool chain_lines_possible(SheetLine const& lay, bool blaming) const {
    auto const run = chain_lines_of(lay, allowed_.mould);
    int against = 0;
    for (auto const& wanted : wanted_)
      for (auto const* seen : wanted.seen)
        against += seen != nullptr && run && seen->chain_lines && *seen->chain_lines != *run ? 1 : 0;
    return against <= (blaming ? 1 : 0);
  }
  void try_sheet(SheetLine const& lay, int sheets, bool blaming) {
    if (!chain_lines_possible(lay, blaming)) return;
    if (wanted_.size() == 1) return try_alone(lay, sheets, blaming);
    if (!blaming) return try_together(lay, std::nullopt);
    for (std::size_t g = 0; g < wanted_.size(); ++g) try_together(lay, g);
  }
  void try_sheets(bool blaming) {
    int all = 0;
    for (auto const& wanted : wanted_) all += wanted.leaves;
    for (int sheets = 1; sheets <= allowed_.most_sheets; ++sheets) {
      if (sheets > 1 && (wanted_.size() > 1 || wanted_[0].leaves % (2 * sheets) != 0)) continue;
      for (int rows = 1; rows <= allowed_.most_rows; ++rows)
        for (int columns = 1; columns <= allowed_.most_columns; ++columns)
          for (auto long_side : {Axis::far_near, Axis::left_right})
            for (auto part : {PaperPart::whole, PaperPart::half}) {
              int const leaves = rows * columns * (part == PaperPart::half ? 2 : 1);
              if (leaves > allowed_.most_leaves || rows * columns * sheets < all || too_many_) continue;
              if (part == PaperPart::half && !allowed_.half_sheets) continue;
              SheetLine lay{};
              lay.rows = static_cast<std::uint8_t>(rows), lay.columns = static_cast<std::uint8_t>(columns);
              lay.long_side = long_side, lay.part = part;
              try_sheet(lay, sheets, blaming);
            }
    }
  }

  /// Returns true if the simplest folding costs more than a simple one with a leaf left out.
  [[nodiscard]] bool is_far_fetched(int best) const {
    int leaves = 0, folds = 0;
    for (auto const& wanted : wanted_) leaves += wanted.leaves;
    while (1 << folds < leaves) ++folds;
    return best > folding_prices.correction + folding_prices.fold * folds;
  }
  [[nodiscard]] int best_price() const {
    int best = PieceFolds::none;
    for (auto const& group : groups_) best = group.price < best ? group.price : best;
    return best;
  }
  [[nodiscard]] std::vector<BlamedLeaf> blamed() const {
    std::vector<BlamedLeaf> all;
    auto const best = best_price();
    int bit = 0;
    for (std::size_t g = 0; g < wanted_.size(); ++g)
      for (int leaf = 1; leaf <= wanted_[g].leaves; ++leaf, ++bit) {
        auto const price = blamed_price_[static_cast<std::size_t>(bit)];
        if (price >= PieceFolds::none || price + folding_prices.correction >= best) continue;
        all.push_back({static_cast<int>(g), leaf, price + folding_prices.correction});
      }
    insertion_sort(all, [](BlamedLeaf a, BlamedLeaf b) { return a.price < b.price; });
    return all;
  }

  /// Leaves out one leaf after another and checks whether an attested scheme shows the rest. The search does not reach schemes
  /// of unequal sheets or of many pieces; this finds a leaf of other paper in their gatherings, too.
  void blame_against_attested(FoldingWeights const& weights) {
    int bit = 0;
    for (std::size_t g = 0; g < given_.size(); ++g)
      for (int leaf = 1; leaf <= given_[g].leaves; ++leaf, ++bit) {
        std::vector<SeenGathering> rest(given_.begin(), given_.end());
        rest[g].seen.clear();
        bool looked_at = false;
        for (auto seen : given_[g].seen) {
          looked_at = looked_at || seen.leaf == leaf;
          if (seen.leaf == leaf) continue;
          if (seen.conjugate == leaf) seen.conjugate.reset();
          for (auto* const edge : {&seen.head, &seen.tail, &seen.fore_edge})
            if (*edge && (*edge)->mate == leaf) edge->reset();
          rest[g].seen.push_back(seen);
        }
        if (!looked_at) continue;
        auto const price = AttestedFits{rest, allowed_.mould, weights}.simplest();
        if (price) blamed_price_[static_cast<std::size_t>(bit)] = *price;
      }
  }

public:
  ShowingFinder(std::span<SeenGathering const> given, SheetsAllowed const& allowed)
      : given_{given}, allowed_{allowed}, lies_{allowed.mould.watermark && allowed.mould.watermark->across == 0.5 ? 2
                                                                                                                  : 4} {
    if (allowed.most_leaves > 64 || allowed.most_rows > 64 || allowed.most_columns > 64 || allowed.most_sheets > 16)
      broken("SheetsAllowed must have at most 64 leaves, rows and columns, and at most 16 sheets");
    blamed_price_.fill(PieceFolds::none);
  }
  Expected<FoldingsLeft> find(FoldingWeights const& weights) {
    if (given_.empty()) return error_in_field(Problem::gathering_size_needed, "gatherings");
    for (auto const& gathering : given_)
      if (auto const wrong = take(gathering)) return *wrong;
    for (auto const& wanted : wanted_) {
      strict_.emplace_back(wanted, allowed_, packets_, lies_, true);
      blaming_.emplace_back(wanted, allowed_, packets_, lies_, false);
    }
    try_sheets(false);
    if (is_far_fetched(best_price())) try_sheets(true);
    if (too_many_) return error_in_field(Problem::too_many_arrangements, "gatherings", SheetShared::most_states);
    FoldingsLeft left;
    left.blamed = blamed();
    AttestedFits attested{given_, allowed_.mould, weights};
    attested.name(groups_);
    if (groups_.empty() && left.blamed.empty()) {
      blame_against_attested(weights);
      left.blamed = blamed();
    }
    left.look_next = attested.best_look();
    insertion_sort(groups_, [](FoldingGroup const& a, FoldingGroup const& b) {
      auto const likely = [](FoldingGroup const& group) {
        return group.probability >= FoldingGroup::likely_enough ? group.probability : 0;
      };
      return likely(a) != likely(b) ? likely(a) > likely(b) : a.price < b.price;
    });
    left.groups = static_cast<std::vector<FoldingGroup>&&>(groups_);
    return left;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
