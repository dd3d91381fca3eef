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

#include <bifolium/core/year_range.hpp>
#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/paper_counts.hpp>

#include <array>
#include <cstdint>
#include <optional>
#include <span>

namespace bifolium {
inline namespace v0 {

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

  [[nodiscard]] ByYear<ByGroup> expected_papers() const;
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
