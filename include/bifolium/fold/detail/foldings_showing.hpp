// SPDX-License-Identifier: MIT
/// foldings_showing, by the search of fold/detail/showing_finder.hpp.
#pragma once

#include <bifolium/fold/detail/showing_finder.hpp>
#include <bifolium/fold/foldings_showing.hpp>

namespace bifolium {
inline namespace v0 {

BIFOLIUM_INLINE Expected<FoldingsLeft> foldings_showing(std::span<SeenGathering const> gatherings,
                                                        SheetsAllowed const& allowed, FoldingWeights const& weights) {
  return detail::ShowingFinder{gatherings, allowed}.find(weights);
}

} // namespace v0
} // namespace bifolium
