// SPDX-License-Identifier: MIT
/// How common each format was, before anything is looked at. This is what a reader may most want to argue with, so it is a
/// value that can be seen, named for what it is - counts of a sample, or an assumption - and replaced.
///
/// A leaf that may be of several centuries is asked about in each of them, with the sheets and formats of each: nothing
/// is averaged before it has been weighed.
#pragma once

#include <bifolium/evidence/observation.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// Weights of formats by their leaves to the sheet; they need not add up to 1.
struct Priors {
  /// The weight of one format.
  struct Weight {
    std::uint8_t leaves{}; ///< to the sheet: 8 for octavo
    double weight{};       ///< against the others; 0 or more
  };
  std::array<Weight, 17> weights{}; ///< in any order; a format that is not named weighs nothing
  /// Of formats with as many leaves, how common each shape is, by `Shape`: the usual is meant unless something speaks for
  /// another (proposed). They need not add up to 1 either.
  std::array<double, 5> shapes{1, 0.02, 0.01, 0.01, 0.05};
  double none_of_these{0.01}; ///< that the leaf comes of no scheme and sheet considered
  bool by_sample{};           ///< counted in a sample; otherwise assumed
  bool incunables{};          ///< 15th century: sheets and formats are weighed together, as fitted
  char const* basis{""};      ///< what the weights rest on, in words

  /// The weight of the format of so many leaves to the sheet; 0 where it is not named.
  [[nodiscard]] constexpr double of(int leaves) const {
    for (auto const& one : weights)
      if (one.leaves == leaves) return one.weight;
    return 0;
  }
};

/// Priors that hold for some years, and how likely the leaf is of those years.
struct PriorsOfYears {
  When years;      ///< both included
  double weight{}; ///< against the other periods; 0 or more
  Priors priors{}; ///< of books of these years
};
/// The periods a leaf may belong to; those it cannot have weight 0.
using PriorsByPeriod = std::array<PriorsOfYears, 6>;

namespace detail {
constexpr Priors priors(std::array<double, 17> weights, bool sample, char const* basis) {
  constexpr std::uint8_t leaves[17]{1, 2, 4, 6, 8, 12, 16, 18, 20, 24, 32, 36, 48, 64, 72, 96, 128};
  Priors result;
  for (std::size_t i = 0; i < 17; ++i) result.weights[i] = {leaves[i], weights[i]};
  result.by_sample = sample;
  result.basis = basis;
  return result;
}
constexpr PriorsByPeriod no_periods() { return {{{{0}}, {{0}}, {{0}}, {{0}}, {{0}}, {{0}}}}; }
constexpr Priors incunable_priors() {
  auto result = priors(
      {.002, .374, .557, .0005, .068, .0005, .001, .0001, .0001, .0002, .0001, 1e-5, 1e-5, 1e-5, 1e-5, 1e-5, 1e-5},
      true, "copies in the British Museum's catalogue of incunables, one library's sample");
  result.incunables = true;
  return result;
}
} // namespace detail

/// All formats and shapes alike: for asking what geometry alone says.
constexpr Priors flat_priors() {
  std::array<double, 17> all{};
  all.fill(1);
  auto result = detail::priors(all, false, "all formats alike");
  result.shapes.fill(1);
  return result;
}

/// Every period with its priors for a place. The weights say how many of the old books put before a cataloguer come from
/// each: an assumption, used only where nothing is known of the date.
constexpr PriorsByPeriod all_periods(Region place = Region::anywhere) {
  using detail::priors;
  auto const to_1570 =
      priors({.01, .20, .28, .002, .38, .012, .08, .003, .001, .01, .006, .0005, .0005, .0005, .0002, .0002, .0002},
             false, "assumed for the sixteenth century, with few twelves before 1570");
  auto const to_1600 =
      priors({.01, .18, .27, .002, .36, .08, .06, .004, .001, .02, .006, .001, .001, .0005, .0002, .0002, .0002}, false,
             "assumed for the end of the sixteenth century");
  auto const to_1700 =
      priors({.01, .12, .26, .002, .33, .23, .015, .005, .001, .02, .006, .001, .001, .0005, .0002, .0002, .0002},
             false, "assumed for the seventeenth century");
  auto const to_1800_britain = priors(
      {.01, .041, .176, .002, .53, .21, .006, .012, .001, .005, .004, .001, .001, .0005, .0002, .0002, .0002}, true,
      "2,387 books in ECCO-TCP, England 1700-1800, a selected corpus, with small shares added for rare formats");
  auto const to_1800 =
      priors({.01, .04, .14, .002, .42, .34, .012, .02, .001, .01, .006, .001, .001, .0005, .0002, .0002, .0002}, false,
             "assumed for the eighteenth century: more twelves than in English samples");
  auto const to_1900 =
      priors({.01, .03, .06, .002, .48, .24, .05, .07, .002, .02, .03, .003, .003, .001, .0005, .0005, .0005}, false,
             "assumed for the nineteenth century");
  bool const english = place == Region::britain || place == Region::usa;
  return {{{{1450, 1500}, 0.10, detail::incunable_priors()},
           {{1501, 1570}, 0.12, to_1570},
           {{1571, 1600}, 0.08, to_1600},
           {{1601, 1700}, 0.25, to_1700},
           {{1701, 1800}, 0.30, english ? to_1800_britain : to_1800},
           {{1801, 1900}, 0.15, to_1900}}};
}

/// The periods that `when` meets, each with the years it has in common with it and weighed by their number; without a
/// date, all of them. A date before or after all periods is of the nearest.
constexpr PriorsByPeriod priors_by_period(std::optional<When> when, Region place = Region::anywhere) {
  auto periods = all_periods(place);
  if (!when) return periods;
  if (when->to < periods.front().years.from || when->from > periods.back().years.to) {
    auto const& nearest = when->to < periods.front().years.from ? periods.front() : periods.back();
    auto one = detail::no_periods();
    one.front() = {*when, 1, nearest.priors};
    return one;
  }
  for (auto& period : periods) {
    When const common{(std::max)(period.years.from, when->from), (std::min)(period.years.to, when->to)};
    period.weight = common.from > common.to ? 0 : common.to - common.from + 1;
    if (period.weight > 0) period.years = common;
  }
  return periods;
}
/// One set of priors, whatever the years.
constexpr PriorsByPeriod one_period(std::optional<When> when, Priors const& priors) {
  auto one = detail::no_periods();
  one.front() = {when.value_or(priors.incunables ? When{1450, 1500} : When{1500, 1850}), 1, priors};
  return one;
}
/// The priors of the period in which the middle of `when` lies; without a date those of the likeliest period.
constexpr Priors priors_for(std::optional<When> when, Region place = Region::anywhere) {
  auto const middle = when ? When{(when->from + when->to) / 2} : When{1750};
  auto const periods = priors_by_period(middle, place);
  for (auto const& period : periods)
    if (period.weight > 0) return period.priors;
  return periods.front().priors;
}

} // namespace v0
} // namespace bifolium
