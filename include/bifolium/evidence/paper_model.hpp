// SPDX-License-Identifier: MIT
/// What is known of paper and formats before a leaf is looked at: which sheets there were, which formats were printed on them,
/// when and where. Sheets are not taken from lists of names. A list tells what a law or a trade wanted, and not how common
/// a size was; so nine populations of sheets were learnt from measured books of known format, and a tenth of the
/// learning is the start at a size of the trade. Binders cut every leaf, so what is learnt is the sheet less what all
/// copies lose, and a tail of further loss in one direction: no leaf is larger than its sheet.
///
/// How common a population was is kept as counts of books, by region, year and group of formats, and not as shares. Where books
/// are few the shares lean on those of the whole (Italy for Venice, all places for Italy, neighbouring years, all formats),
/// so a caller who has books of his own adds them to the counts.
///
/// The counts are written by bench/fit_paper_model.cpp, which also tells how well they predict books held out.
#pragma once

#include <bifolium/core/real.hpp>
#include <bifolium/core/year_range.hpp>
#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/paper/region.hpp>

#include <array>
#include <cstdint>
#include <optional>
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
    using detail::real::exp;
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
/// So many books of a format, about one of the first five `count_years`.
struct FormatCount {
  static constexpr std::uint8_t undated = 5; ///< stands for the year of a book of the fifteenth century without a date
  Region region{};                           ///< of printing
  std::uint8_t year_number{}, leaves{};      ///< of `count_years`; to the sheet: 2, 4 or 8
  float books{};                             ///< how many
};
/// How common formats were from 1506 on, where nothing was counted: assumed.
struct AssumedShares {
  Region region{};                                 ///< `britain` with its daughters, or `anywhere`
  std::uint8_t year_number{};                      ///< of `count_years`
  float books{};                                   ///< how likely an undated book is of one year about then
  std::array<float, ranked_leaves.size()> share{}; ///< by `ranked_leaves`
};
/// How often a format is gathered in so many leaves, or in two sizes by turns.
struct GatheringShare {
  bool late{}; ///< as books are made up from 1535 on; before 1485 otherwise
  std::uint8_t leaves{}, larger{},
      smaller{}; ///< of the format, to the sheet; of the gatherings; 0: all are of one size
  float share{}; ///< of books in the format: 0 to 1
};
/// How common each of `ranked_leaves` was on paper of each population; of any unit.
using JointShares = std::array<std::array<double, population_count>, ranked_leaves.size()>;
/// All of it, as the fitting program writes it. Looked at, not copied.
struct PaperCounts {
  std::array<SheetPopulation, population_count> populations{}; ///< odd paper first
  double tail{};                            ///< further loss falls off by e for every 1/tail of the logarithm
  std::span<SheetCount const> sheets{};     ///< each book once
  std::span<FormatCount const> formats{};   ///< each book once
  std::span<AssumedShares const> assumed{}; ///< by year, all regions
};

/// A book of known format and measured leaf, for `PaperModel::learn`.
struct KnownBook {
  int leaves{};                  ///< to the sheet
  millimetres height{}, width{}; ///< of the leaf; both are needed
  int year{};                    ///< of printing
  Region region{};               ///< of printing
};

/// The shares that follow from the counts. A value of some 160 kB; make it once.
class PaperModel {
  template <class T> using ByYear = std::array<T, count_years.size()>;
  using Populations = std::array<double, population_count>;
  using ByGroup = std::array<Populations, format_groups>;
  template <class T> using ByRegion = std::array<T, region_count>;

  std::array<SheetPopulation, population_count> populations_;
  std::array<Sheet<millimetres>, population_count> sheets_;
  double tail_;
  ByYear<double> books_{};                             // of a year, for ranges
  ByRegion<ByYear<ByGroup>> counts_{}, log_weights_{}; // of a region and all that lies in it
  ByRegion<ByYear<FormatShares>> log_shares_{};
  ByRegion<JointShares> undated_{}, undated_incunables_{};
  int own_books_{};

  void count_formats(PaperCounts const& counts);
  void weigh();
  void sum_undated(PaperCounts const& counts);

public:
  /// Works out the shares.
  explicit PaperModel(PaperCounts const& counts);

  /// The populations, odd paper first.
  [[nodiscard]] std::array<SheetPopulation, population_count> const& populations() const { return populations_; }
  /// The mean sheet of each of them.
  [[nodiscard]] std::array<Sheet<millimetres>, population_count> const& sheets() const { return sheets_; }
  /// Further loss falls off by e for every 1/tail of the logarithm.
  [[nodiscard]] double tail() const { return tail_; }
  /// How likely an undated old book is of that year, against other years.
  [[nodiscard]] double books_of(int year) const;
  /// How common formats were; they add up to 1.
  [[nodiscard]] FormatShares shares(Region region, int year) const;
  /// Of books in the formats of each group, how many are on paper of each population; the shares of a group add up to 1.
  [[nodiscard]] std::array<std::array<double, population_count>, format_groups> papers(Region region, int year) const;

  /// Of books that may be of any of these years, how common formats were and on which paper; all add up to 1. A range is the
  /// mean over its years, each by its books. Without years, over all that are known. A range of more than forty years that
  /// ends by 1510 means that the book has no date, and undated incunables are counted: they are quartos more often than
  /// dated ones. `own`: shares of formats to go by, whatever the year.
  [[nodiscard]] JointShares joint(Region region, std::optional<YearRange> years,
                                  FormatShares const* own = nullptr) const;

  /// Adds books of the caller to the counts of their regions and years. What it learns is which paper each format was
  /// printed on, not how common the formats were: no owner's shelf is a sample. pre: measures, and formats that are ranked.
  void learn(std::span<KnownBook const> books);
  /// How many books were added.
  [[nodiscard]] int own_books() const { return own_books_; }
};

/// The model as fitted. Worked out once a program, on first use.
PaperModel const& fitted_paper_model();

/// The region that speaks for one with few books of its own. Where sheets are concerned, books of the American colonies lean on
/// Britain, and Swiss ones, which the catalogue of incunables counts with Germany, on Germany.
[[nodiscard]] constexpr Region leans_on(Region region) noexcept {
  if (region == Region::usa) return Region::britain;
  if (region == Region::switzerland) return Region::germany;
  auto const whole = whole_of(region);
  return whole == Region::europe ? Region::anywhere : whole;
}

} // namespace v0
} // namespace bifolium

#include <bifolium/evidence/detail/paper_model.hpp>
