// SPDX-License-Identifier: MIT
/// How common each kind of leaf is among those with the same number of leaves to the sheet. With the usual priors this
/// depends on no evidence, so it is computed once in a program.
#pragma once

#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/priors.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The shares, in the order of `leaf_shapes()`.
using KindShares = std::array<double, most_leaf_shapes>;

[[gnu::cold, gnu::noinline]] inline KindShares kind_shares(Priors const& priors) {
  KindShares shares{};
  std::size_t i = 0;
  for (auto const& kind : leaf_shapes()) {
    double all = 0;
    for (std::size_t s = 0; s < kind.sharers.size(); ++s) all += kind.sharers[s] * priors.shapes[s];
    auto const own =
        (priors.divisions_alike ? 1 : kind.share) * priors.shapes[static_cast<std::size_t>(kind.format.shape())];
    shares[i++] = all > 0 ? own / all : 0; // 0: the caller says that no format of these leaves has such a shape
  }
  return shares;
}
[[gnu::noinline]] inline KindShares const& usual_kind_shares() {
  static auto const shares = kind_shares(usual_priors);
  return shares;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
