// SPDX-License-Identifier: MIT
/// How common each format is assumed to be before a leaf is examined. By default the inference uses the shares of the
/// place and the years (paper_model.hpp). A caller who knows better shares - of a genre, of a collection, of pamphlets
/// of one winter - passes them, and the answer says so.
#pragma once

#include <bifolium/evidence/paper_model.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// Shares of formats by their leaves to the sheet. They need not add up to 1.
struct Priors {
  /// The share of one format.
  struct Share {
    std::uint8_t leaves{}; ///< leaves to the sheet: 8 for octavo
    double share{};        ///< share in relation to the others; 0 or more
  };
  std::array<Share, ranked_leaves.size()> shares{}; ///< in any order; formats that are not named are left out
  /// How common each `Shape` is among formats with the same number of leaves (proposed; in Sweden's bibliography 13 of
  /// a hundred duodecimos are long, in the English Short Title Catalogue fewer than one). They need not add up to 1.
  std::array<double, 5> shapes{1, 0.003, 0.01, 0.01, 0.02};
  bool
      /// true if all divisions of the sheet in one format are equally common; otherwise `LeafShape::share` is used
      divisions_alike{};
  double none_of_these{0.005}; ///< probability that the leaf is of no known format and sheet (proposed)

  /// Returns the share of the format with `leaves` leaves to the sheet, or 0 if it is not named.
  [[nodiscard]] constexpr double of(int leaves) const {
    for (auto const& one : shares)
      if (one.leaves == leaves) return one.share;
    return 0;
  }
};

/// Priors that name no format: how common each shape is, and the probability that the leaf is of no known format. They
/// are used if the caller gives none.
inline constexpr Priors usual_priors{};

/// Returns equal shares for all formats, shapes and divisions, to find out what geometry alone says.
constexpr Priors flat_priors() {
  Priors priors;
  for (std::size_t i = 0; i < ranked_leaves.size(); ++i) priors.shares[i] = {ranked_leaves[i], 1};
  priors.shapes.fill(1);
  priors.divisions_alike = true;
  return priors;
}
/// Returns the shares that the model has for one year and place. Precondition: the place is one of the regions that its type
/// names.
inline Priors priors_of(int year, Region place = Region::anywhere) {
  auto const shares = fitted_paper_model().shares(place, year);
  Priors priors;
  for (std::size_t i = 0; i < ranked_leaves.size(); ++i) priors.shares[i] = {ranked_leaves[i], shares[i]};
  return priors;
}

} // namespace v0
} // namespace bifolium
