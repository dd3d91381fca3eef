// SPDX-License-Identifier: MIT
/// How common each format was, before anything is looked at. This is what a reader may most want to argue with, so it is a
/// value that can be seen, named for what it is - counts of a sample, or an assumption - and replaced.
#pragma once

#include <bifolium/evidence/observation.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// Weights of formats by their leaves to the sheet; they need not add up to 1.
struct Priors {
  struct Weight {
    std::uint8_t leaves{};
    double weight{};
  };
  std::array<Weight, 17> weights{};
  double none_of_these{0.01}; ///< that the leaf comes of no scheme and sheet considered
  bool by_sample{};           ///< counted in a sample; otherwise assumed
  bool incunables{};          ///< 15th century: sheets and formats are weighed together, as fitted
  char const* basis{""};

  [[nodiscard]] constexpr double of(int leaves) const {
    for (auto const& one : weights)
      if (one.leaves == leaves) return one.weight;
    return 0;
  }
};

namespace detail {
constexpr Priors priors(std::array<double, 17> weights, bool sample, char const* basis) {
  constexpr std::uint8_t leaves[17]{1, 2, 4, 6, 8, 12, 16, 18, 20, 24, 32, 36, 48, 64, 72, 96, 128};
  Priors result;
  for (std::size_t i = 0; i < 17; ++i) result.weights[i] = {leaves[i], weights[i]};
  result.by_sample = sample;
  result.basis = basis;
  return result;
}
} // namespace detail

/// All formats alike: for asking what geometry alone says.
constexpr Priors flat_priors() {
  std::array<double, 17> all{};
  all.fill(1);
  return detail::priors(all, false, "all formats alike");
}
/// For the years about the middle of `when`; without a date, all formats of the hand press as in the eighteenth century.
constexpr Priors priors_for(std::optional<When> when) {
  int const year = when ? (when->from + when->to) / 2 : 1700;
  if (year <= 1500) {
    auto result = detail::priors(
        {.002, .374, .557, .0005, .068, .0005, .001, .0001, .0001, .0002, .0001, 1e-5, 1e-5, 1e-5, 1e-5, 1e-5, 1e-5},
        true, "copies in the British Museum's catalogue of incunables, one library's sample");
    result.incunables = true;
    return result;
  }
  if (year <= 1600)
    return detail::priors(
        {.01, .18, .26, .002, .38, .05, .08, .004, .001, .015, .006, .001, .001, .0005, .0002, .0002, .0002}, false,
        "assumed for the sixteenth century");
  if (year <= 1700)
    return detail::priors(
        {.01, .12, .26, .002, .33, .23, .015, .005, .001, .02, .006, .001, .001, .0005, .0002, .0002, .0002}, false,
        "assumed for the seventeenth century");
  if (year <= 1800)
    return detail::priors(
        {.01, .041, .176, .002, .53, .21, .006, .012, .001, .005, .004, .001, .001, .0005, .0002, .0002, .0002}, true,
        "2,387 books in ECCO-TCP, England 1700-1800, a selected corpus, with small shares added for rare formats");
  return detail::priors(
      {.01, .03, .06, .002, .48, .24, .05, .07, .002, .02, .03, .003, .003, .001, .0005, .0005, .0005}, false,
      "assumed for the nineteenth century");
}

} // namespace v0
} // namespace bifolium
