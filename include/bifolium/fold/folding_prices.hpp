// SPDX-License-Identifier: MIT
/// Prices that make one folding simpler than another. The same pages can always be made in several ways - in the worst
/// case by cutting every leaf from every other - so the answers need an order. The order is a price: each act has its
/// price, and the cheapest folding comes first.
///
/// The prices are settings, not facts. They were fixed by trying several sets on published and folded grids; with
/// these, the recorded folding comes first for most grids. Their order has a meaning. A fold in the middle is the
/// simplest act. A cut costs more than a fold. A crease beside the middle costs more than a cut, since a folder has no
/// mark for it. A leaf that is joined to no other costs extra, since it must be sewn or pasted in.
#pragma once

#include <bifolium/fold/layers.hpp>

namespace bifolium {
inline namespace v0 {

/// The price of each act. All prices are multiples of 5; the search relies on it.
struct FoldingPrices {
  int fold{};       ///< a fold
  int uneven{};     ///< added for a crease that does not halve the part that lies there
  int under{};      ///< added for a part that is turned underneath
  int cut{};        ///< a cut
  int single{};     ///< a leaf that is a piece by itself
  int correction{}; ///< a page of the forme that is taken as a misprint
  friend constexpr bool operator==(FoldingPrices, FoldingPrices) = default;
};
/// The prices that the library uses.
inline constexpr FoldingPrices folding_prices{10, 15, 5, 15, 10, 30};

/// The acts and pieces of a scheme, counted.
struct FoldingWork {
  int pieces{};  ///< pieces that are in gatherings
  int cuts{};    ///< cuts
  int folds{};   ///< folds of all pieces
  int uneven{};  ///< folds beside the middle
  int under{};   ///< folds that turn a part underneath
  int singles{}; ///< pieces that are one leaf each

  /// Returns the price. The leaf of a sheet with only one leaf, such as a broadside, does not count as a single leaf.
  [[nodiscard]] constexpr int price() const noexcept {
    auto const& each = folding_prices;
    return each.fold * folds + each.uneven * uneven + each.under * under + each.cut * cuts + each.single * singles;
  }
  friend constexpr bool operator==(FoldingWork, FoldingWork) = default;
};

/// Counts the acts and pieces of a scheme. Precondition: every crease runs inside its piece, as in every scheme that
/// folds.
constexpr FoldingWork folding_work(Scheme const& scheme) {
  FoldingWork work;
  Layers paper{scheme};
  for (auto const& step : scheme) {
    if (step.kind == Step::Kind::cut) {
      ++work.cuts;
    } else {
      int before = 0, beyond = 0;
      for (auto const& layer : paper.pile(step.piece)) {
        auto const at = layer.across(step.along);
        before = step.line - at > before ? step.line - at : before;
        beyond = at + 1 - step.line > beyond ? at + 1 - step.line : beyond;
      }
      ++work.folds;
      work.uneven += before != beyond ? 1 : 0;
      work.under += step.under ? 1 : 0;
    }
    if (!paper.take(step)) broken("a crease does not run inside its piece");
  }
  for (int g = 0; g < scheme.gatherings(); ++g)
    for (int k = 0; k < scheme.gathering(g).count; ++k) {
      auto const piece = scheme.placed(scheme.gathering(g).first + k).piece;
      ++work.pieces;
      work.singles += paper.count(piece) == 1 && piece >= scheme.sheets() ? 1 : 0;
    }
  return work;
}

} // namespace v0
} // namespace bifolium
