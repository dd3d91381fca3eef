// SPDX-License-Identifier: MIT
/// The data of the paper model in the form that the fitting program writes: populations of sheets, counts of books,
/// shares of formats and of gatherings. paper_model.hpp has the results computed from them.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/evidence/ranked_formats.hpp>
#include <bifolium/paper/region.hpp>
#include <bifolium/paper/sheet.hpp>

#include <array>
#include <cstdint>
#include <span>

namespace bifolium {
inline namespace v0 {

/// Sheets of about one size, as found in books. Sides are natural logarithms in mm, reduced by the loss that every copy
/// has (`base_loss`), with their variances.
struct SheetPopulation {
  double log_long{}, log_short{};                         ///< means
  double long_variance{}, covariance{}, short_variance{}; ///< of the logarithms
  /// The least loss of every copy, as a logarithm: the real sheet is larger by this amount.
  static constexpr double base_loss = 0.04;

  /// Returns the mean whole sheet.
  [[nodiscard]] Sheet<millimetres> sheet() const {
    using real::exp;
    return Sheet<millimetres>{millimetres{exp(log_short + base_loss)}, millimetres{exp(log_long + base_loss)}};
  }
};

/// The years of the counts. Between two of them the square roots of the shares of papers change linearly, and of
/// formats the logarithms.
inline constexpr std::array<int, 13> count_years{1458, 1468, 1478, 1488, 1498, 1506, 1550,
                                                 1600, 1650, 1700, 1750, 1800, 1850};
inline constexpr std::size_t population_count = 9; ///< number of populations of sheets; the first is unusual paper

/// A number of books of one group of formats on paper of one population, near one of `count_years`.
struct SheetCount {
  Region region{}; ///< region of printing, as finely as it is known
  /// indices of `count_years`, of the groups (`format_group`) and of the populations
  std::uint8_t year_number{}, group{}, population{};
  /// expected number: a book whose paper is doubtful counts in parts
  float books{};
};
/// How common formats were near one of `count_years`, in a region that has data of its own.
struct YearShares {
  /// The value of `year_number` for books of the fifteenth century without a date.
  static constexpr std::uint8_t undated = count_years.size();
  Region region{};                                 ///< region of printing
  std::uint8_t year_number{};                      ///< index of `count_years`
  std::array<float, ranked_leaves.size()> share{}; ///< by index of `ranked_leaves`; they need not add up to 1
};
/// Frequency of gatherings with a number of leaves in a format, or with two alternating numbers.
struct GatheringShare {
  bool late{};            ///< true for the practice from 1535 on, false for that before 1485
  std::uint8_t leaves{};  ///< leaves to the sheet of the format
  std::uint8_t larger{};  ///< leaves of a gathering; of the larger ones if two sizes alternate
  std::uint8_t smaller{}; ///< leaves of the smaller gatherings; 0 if all have one size
  float share{};          ///< share of books in the format, 0 to 1
};
/// How common each of `ranked_leaves` was on paper of each population, in any unit.
using JointShares = std::array<std::array<double, population_count>, ranked_leaves.size()>;
/// All data, as the fitting program writes them. The spans are views.
struct PaperCounts {
  std::array<SheetPopulation, population_count> populations{}; ///< unusual paper first
  /// the density of further loss falls by a factor e for each 1/tail of the logarithm
  double tail{};
  std::span<SheetCount const> sheets{}; ///< each book once
  /// all years except those with few books, for each region that has any
  std::span<YearShares const> formats{};
  /// probability that an undated early book is of one year near each of `count_years`
  std::array<float, count_years.size()> books{};
};

} // namespace v0
} // namespace bifolium
