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

/// The kinds of formats that divide the sheet in different ways.
struct DividedKinds {
  std::size_t number[most_leaf_shapes], count{};

  [[gnu::cold]] DividedKinds() {
    for (std::size_t i = 0; i < leaf_shapes().size(); ++i)
      if (leaf_shapes()[i].of_several) number[count++] = i;
  }
};
/// Changes the shares of such kinds if gatherings of so many leaves were seen, or of two sizes by turns: two twelves make
/// a 24° in twelves, and eights come of another division.
[[gnu::noinline]] inline void share_by_gathering(KindShares& shares, int leaves, int other) {
  constexpr double as_schemes = 0.9; // of books are gathered as a scheme of their division is (proposed)
  static DividedKinds const divided;
  if (leaves >= 32 || other >= 32) return;
  auto const sizes = std::uint32_t{1} << leaves | std::uint32_t{1} << other;
  auto const kinds = leaf_shapes();
  auto const makes = [&](LeafShape const& kind) { return (kind.gatherings & sizes) == sizes; };
  for (std::size_t i = 0; i < divided.count; ++i) {
    auto const& here = kinds[divided.number[i]];
    double making = 0, not_making = 0;
    for (std::size_t k = 0; k < divided.count; ++k)
      if (auto const& kind = kinds[divided.number[k]]; kind.format_number == here.format_number)
        (makes(kind) ? making : not_making) += kind.share;
    if (making > 0 && not_making > 0)
      shares[divided.number[i]] *= makes(here) ? as_schemes / making : (1 - as_schemes) / not_making;
  }
}

} // namespace detail
} // namespace v0
} // namespace bifolium
