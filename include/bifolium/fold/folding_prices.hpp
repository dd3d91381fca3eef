// SPDX-License-Identifier: MIT
/// What makes one folding simpler than another. The same pages can always be had in several ways - in the last resort by
/// cutting every leaf from every other - so an answer needs an order, and the order needs a measure. Here it is a price:
/// so much for each act, the cheapest folding first.
///
/// The prices are settings, not facts. They were fixed by trying some sets on published and folded grids; with these the
/// folding that is on record comes first for most of them. Their meaning is in their order: to fold in the middle is the
/// least that can be done; a knife costs more than a fold; a crease beside the middle costs more than a cut, since no
/// folder has a mark to fold it by; a leaf that hangs on no other is a thing to sew.
#pragma once

#include <bifolium/fold/layers.hpp>

namespace bifolium {
inline namespace v0 {

/// The price of each act. All are multiples of 5, which the search uses.
struct FoldingPrices {
  int fold{};       ///< a fold
  int uneven{};     ///< more, for a crease that does not halve what lies there
  int under{};      ///< more, for a part turned underneath
  int cut{};        ///< a cut
  int single{};     ///< a leaf that is a piece by itself
  int correction{}; ///< a page of the forme taken to be a misprint
  friend constexpr bool operator==(FoldingPrices, FoldingPrices) = default;
};
/// The prices that the library uses.
inline constexpr FoldingPrices folding_prices{10, 15, 5, 15, 10, 30};

/// What a scheme takes, counted.
struct FoldingWork {
  int pieces{};  ///< that come into the gatherings
  int cuts{};    ///< acts of the knife
  int folds{};   ///< folds of all pieces
  int uneven{};  ///< of them beside the middle
  int under{};   ///< of them turned underneath
  int singles{}; ///< pieces of one leaf

  /// Its price. A sheet of one leaf, as a broadside is, does not count as a single leaf.
  [[nodiscard]] constexpr int price() const noexcept {
    auto const& each = folding_prices;
    return each.fold * folds + each.uneven * uneven + each.under * under + each.cut * cuts + each.single * singles;
  }
  friend constexpr bool operator==(FoldingWork, FoldingWork) = default;
};

/// Counts what a scheme takes. pre: its creases run inside their pieces, as those of every scheme that folds.
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
