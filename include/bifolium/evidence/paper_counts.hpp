// SPDX-License-Identifier: MIT
/// The figures behind the model of paper, in the form in which the fitting program writes them: populations of sheets, counts
/// of books, shares of formats and of gatherings. paper_model.hpp tells what follows from them.
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

/// Sheets of about one size as books show them: natural logarithms of long and short side in mm, less what every copy
/// loses (`base_loss`), with how far they spread.
struct SheetPopulation {
  double log_long{}, log_short{};                         ///< means
  double long_variance{}, covariance{}, short_variance{}; ///< of the logarithms
  /// What every copy has lost at the least, as a logarithm: the sheet itself is larger by so much.
  static constexpr double base_loss = 0.04;

  /// The mean sheet, whole.
  [[nodiscard]] Sheet<millimetres> sheet() const {
    using real::exp;
    return Sheet<millimetres>{millimetres{exp(log_short + base_loss)}, millimetres{exp(log_long + base_loss)}};
  }
};

/// The years for which counts are kept; between two of them shares change evenly in their logarithms.
inline constexpr std::array<int, 13> count_years{1458, 1468, 1478, 1488, 1498, 1506, 1550,
                                                 1600, 1650, 1700, 1750, 1800, 1850};
inline constexpr std::size_t population_count = 9; ///< how many populations of sheets there are; the first is odd paper

/// So many books of a group of formats on paper of one population, about one of `count_years`.
struct SheetCount {
  Region region{};                                   ///< of printing, as finely as it is known
  std::uint8_t year_number{}, group{}, population{}; ///< of `count_years`, of `format_group`, of the populations
  float books{};                                     ///< expected: a book whose paper is doubtful counts in parts
};
/// How common formats were in one of `count_years`, in a region with figures of its own.
struct YearShares {
  /// Stands for the year of the books of the fifteenth century without a date.
  static constexpr std::uint8_t undated = count_years.size();
  Region region{};                                 ///< of printing
  std::uint8_t year_number{};                      ///< of `count_years`
  std::array<float, ranked_leaves.size()> share{}; ///< by `ranked_leaves`; they need not add up to 1
};
/// How often a format is gathered in so many leaves, or in two sizes by turns.
struct GatheringShare {
  bool late{};            ///< as books are made up from 1535 on; before 1485 otherwise
  std::uint8_t leaves{};  ///< of the format, to the sheet
  std::uint8_t larger{};  ///< leaves of a gathering, of the larger ones where two sizes alternate
  std::uint8_t smaller{}; ///< leaves of the smaller gatherings; 0 where all are of one size
  float share{};          ///< of books in the format: 0 to 1
};
/// How common each of `ranked_leaves` was on paper of each population; of any unit.
using JointShares = std::array<std::array<double, population_count>, ranked_leaves.size()>;
/// All of it, as the fitting program writes it. Looked at, not copied.
struct PaperCounts {
  std::array<SheetPopulation, population_count> populations{}; ///< odd paper first
  double tail{};                                 ///< further loss falls off by e for every 1/tail of the logarithm
  std::span<SheetCount const> sheets{};          ///< each book once
  std::span<YearShares const> formats{};         ///< all years but that of few books, for each region that has any
  std::array<float, count_years.size()> books{}; ///< how likely an undated old book is of one year about then
};

} // namespace v0
} // namespace bifolium
