// SPDX-License-Identifier: MIT
/// How common each attested scheme was, compared with the others. Marks and chain lines often leave several schemes, and
/// then it matters that quartos in eights were everyday work in 1490 and a 64° hardly existed. That depends on place and
/// time, which this folder does not know: `folding_weights` in evidence/folding_weights.hpp computes it from the
/// library's counts of books. Without it, simple work counts as the more common.
#pragma once

#include <bifolium/core/config.hpp>
#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/folding_prices.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// How common the schemes of the table are, compared with one another. The weights need not add up to 1.
struct FoldingWeights {
  std::array<double, Attested::count> by_row{}; ///< by the row of the scheme; 0 or more
  /// Returns the weight of one scheme.
  [[nodiscard]] constexpr double of(Attested scheme) const& { return by_row[static_cast<std::size_t>(scheme.row())]; }
  /// Returns the weight of one scheme, to change it.
  constexpr double& of(Attested scheme) & BIFOLIUM_LIFETIMEBOUND {
    return by_row[static_cast<std::size_t>(scheme.row())];
  }
  friend constexpr bool operator==(FoldingWeights const&, FoldingWeights const&) = default;
};

/// Returns weights for a book of unknown place and time: a scheme is half as common for each price of a cut that its work
/// costs more (`FoldingWork::price`). This is a setting: common practice, no source.
inline FoldingWeights weights_by_price() {
  FoldingWeights weights;
  for (auto const scheme : Attested::all()) {
    auto& weight = weights.of(scheme) = 1;
    for (int price = folding_work(scheme.scheme()).price(); price > 0; price -= folding_prices.cut) weight /= 2;
  }
  return weights;
}

} // namespace v0
} // namespace bifolium
