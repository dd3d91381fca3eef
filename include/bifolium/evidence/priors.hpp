// SPDX-License-Identifier: MIT
/// How common each format is thought to be before anything is looked at. Left to itself the inference takes the shares of the
/// place and the years (paper_model.hpp). Who knows better - the shares of a genre, of a collection, of pamphlets of one
/// winter - hands in his own, and the answer says so.
#pragma once

#include <bifolium/evidence/paper_model.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// Shares of formats by their leaves to the sheet; they need not add up to 1.
struct Priors {
  /// The share of one format.
  struct Share {
    std::uint8_t leaves{}; ///< to the sheet: 8 for octavo
    double share{};        ///< against the others; 0 or more
  };
  std::array<Share, ranked_leaves.size()> shares{}; ///< in any order; a format that is not named is left out
  /// Of formats with as many leaves, how common each shape is, by `Shape` (proposed; Sweden's bibliography has 13 of a
  /// hundred duodecimos long, the English Short Title Catalogue fewer than one). They need not add up to 1 either.
  std::array<double, 5> shapes{1, 0.003, 0.01, 0.01, 0.02};
  bool
      divisions_alike{}; ///< the ways in which a format divides the sheet are alike too; otherwise as `LeafShape::share`
  double none_of_these{0.005}; ///< that the leaf is of no format and no sheet considered (proposed)

  /// The share of the format of so many leaves to the sheet; 0 where it is not named.
  [[nodiscard]] constexpr double of(int leaves) const {
    for (auto const& one : shares)
      if (one.leaves == leaves) return one.share;
    return 0;
  }
};

/// All formats, shapes and divisions alike: for asking what geometry alone says.
constexpr Priors flat_priors() {
  Priors priors;
  for (std::size_t i = 0; i < ranked_leaves.size(); ++i) priors.shares[i] = {ranked_leaves[i], 1};
  priors.shapes.fill(1);
  priors.divisions_alike = true;
  return priors;
}
/// The shares of one year and place as the model has them.
inline Priors priors_of(int year, Region place = Region::anywhere) {
  auto const shares = fitted_paper_model().shares(place, year);
  Priors priors;
  for (std::size_t i = 0; i < ranked_leaves.size(); ++i) priors.shares[i] = {ranked_leaves[i], shares[i]};
  return priors;
}

} // namespace v0
} // namespace bifolium
