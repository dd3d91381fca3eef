// SPDX-License-Identifier: MIT
/// What is known about paper and formats before a leaf is examined: which sheets there were, and which formats were
/// printed on them, when and where. Sheets are not taken from lists of names, because a list says what a law or a trade
/// wanted and not how common a size was. Instead, nine populations of sheets were learned from measured books of known
/// format, starting from the sizes of the trade with a weight of one tenth. Binders cut every leaf, so the model learns
/// the sheet less the loss that all copies have, and a one-sided tail of further loss: no leaf is larger than its
/// sheet.
///
/// The frequency of a population is stored as counts of books, by region, year and group of formats, and not as shares.
/// If there are few books, the shares rely on those of the whole (Italy for Venice, all places for Italy, neighbouring
/// years, all formats). A caller who has books can add them to the counts.
///
/// bench/fit_paper_model.cpp writes the counts, and also measures how well they predict books that were left out.
#pragma once

#include <bifolium/core/year_range.hpp>
#include <bifolium/evidence/detail/size_density.hpp>
#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/paper_counts.hpp>

#include <array>
#include <cstdint>
#include <optional>
#include <span>

namespace bifolium {
inline namespace v0 {

/// A book of known format with a measured leaf, for `PaperModel::learn`.
struct KnownBook {
  int leaves{};                  ///< leaves to the sheet
  millimetres height{}, width{}; ///< size of the leaf; both are needed
  int year{};                    ///< year of printing
  Region region{};               ///< region of printing
};

/// What was printed in one year.
struct PaperOfYear {
  double books{};         ///< probability of an undated old book to be of this year, in any unit
  FormatShares formats{}; ///< shares of the formats; they add up to 1
  /// for each group of formats, the shares of its books on paper of each population; the shares of a group add up to 1
  std::array<std::array<double, population_count>, format_groups> papers{};
};

/// How common formats, sizes of paper and years were, computed from counts of books. The value takes about 250 kB; make
/// it once.
class PaperModel {
  /// Books, or shares of them, by year, group of formats and population.
  struct Years {
    double of[count_years.size()][format_groups][population_count];
  };
  /// The same by region. Plain arrays: each type of array of the library costs a unit that uses it some milliseconds.
  struct Regions {
    Years of[region_count];
  };
  /// Logarithms of the shares of formats, by year.
  struct LogShares {
    double of[count_years.size()][ranked_leaves.size()];
  };

  std::array<SheetPopulation, population_count> populations_;
  std::array<Sheet<millimetres>, population_count> sheets_;
  std::array<detail::SheetDensity, population_count> densities_;
  double tail_;
  double books_[count_years.size()]{}; // frequency of a year, for ranges
  Regions counts_{}, roots_{};         // of a region, including everything in it
  LogShares log_shares_[region_count]{};
  JointShares undated_[region_count]{}, undated_incunables_[region_count]{};
  std::array<PaperOfYear, 6> sampled_[region_count]{}; // evenly over all years
  int own_books_{};

  void expect_papers(Years& expected) const;
  void weigh();
  void sum_undated(PaperCounts const& counts);

public:
  /// Computes the shares.
  explicit PaperModel(PaperCounts const& counts);

  /// Returns the populations, unusual paper first.
  [[nodiscard]] std::array<SheetPopulation, population_count> const& populations() const& { return populations_; }
  std::array<SheetPopulation, population_count> const& populations() const&& = delete; // it would look at what goes
  /// Returns the mean sheet of each population.
  [[nodiscard]] std::array<Sheet<millimetres>, population_count> const& sheets() const& { return sheets_; }
  std::array<Sheet<millimetres>, population_count> const& sheets() const&& = delete; // it would look at what goes
  /// Returns the populations, prepared for computing densities.
  [[nodiscard]] std::array<detail::SheetDensity, population_count> const& densities() const& { return densities_; }
  std::array<detail::SheetDensity, population_count> const& densities() const&& = delete; // it would look at what goes
  /// Returns the rate of the tail: the density of further loss falls by a factor e for each 1/tail of the logarithm.
  [[nodiscard]] double tail() const { return tail_; }
  /// Returns the probability that an undated early book is of that year, relative to other years.
  [[nodiscard]] double books_of(int year) const;
  /// Returns how common formats were. The shares add up to 1.
  [[nodiscard]] FormatShares shares(Region region, int year) const;
  /// Returns, for each group of formats, the shares of its books on paper of each population. The shares of a group add
  /// up to 1.
  [[nodiscard]] std::array<std::array<double, population_count>, format_groups> papers(Region region, int year) const;
  /// Six years, evenly over the range, or over all that are known.
  [[nodiscard]] std::array<PaperOfYear, 6> sampled(Region region, std::optional<YearRange> years) const;

  /// Returns how common formats were and on which paper, for books of any of these years; all shares add up to 1. For a
  /// range, it is the mean over its years, weighted by their books; without years, over all known years. A range of
  /// more than forty years that ends by 1510 means that the book has no date. Undated incunables are then counted,
  /// which are quartos more often than dated ones. `own` gives shares of formats to use for every year.
  [[nodiscard]] JointShares joint(Region region, std::optional<YearRange> years,
                                  FormatShares const* own = nullptr) const;

  /// Adds books of the caller to the counts of their regions and years. The model learns from them on which paper each
  /// format was printed, but not how common the formats were, because a collection is not a random sample.
  /// Precondition: heights and widths can be measurements, and the formats are ranked.
  void learn(std::span<KnownBook const> books);
  /// Returns the number of added books.
  [[nodiscard]] int own_books() const { return own_books_; }
};

/// Returns the fitted model. It is computed once in a program, at the first use.
PaperModel const& fitted_paper_model();

/// Returns the region whose shares are used if `region` has few books of its own. For sheets, books of the American
/// colonies rely on Britain, and Swiss books, which the catalogue of incunables counts with Germany, on Germany.
[[nodiscard]] constexpr Region leans_on(Region region) noexcept {
  if (region == Region::usa) return Region::britain;
  if (region == Region::switzerland) return Region::germany;
  auto const whole = whole_of(region);
  return whole == Region::europe ? Region::anywhere : whole;
}

} // namespace v0
} // namespace bifolium

#include <bifolium/evidence/detail/paper_model.hpp>
