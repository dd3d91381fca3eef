// SPDX-License-Identifier: MIT
/// The years near which books are counted: between which two of them a year is, and how shares change from one to the
/// other.
#pragma once

#include <bifolium/core/year_range.hpp>
#include <bifolium/evidence/paper_counts.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The place of a year between two of `count_years`.
struct BetweenYears {
  std::size_t before{}; ///< index of the earlier year
  double after{};       ///< fraction of the way to the later year, 0 to 1
};
constexpr BetweenYears between_years(int year) {
  if (year <= count_years.front()) return {0, 0};
  std::size_t i = 0;
  while (i + 2 < count_years.size() && year >= count_years[i + 1]) ++i;
  auto const after = static_cast<double>(year - count_years[i]) / (count_years[i + 1] - count_years[i]);
  return {i, after < 1 ? after : 1};
}
/// Books of 1506 are counted, but are few: 1498 is the last of the early years, and 1550 the first of the late ones.
inline constexpr std::size_t last_early = 4, few_books = 5, first_late = 6;
/// Returns between which years a book is counted. Incunables count for 1498 at the latest, because 1506 comes after a
/// gap in the counts.
constexpr BetweenYears counted_between(int year) {
  if (year > last_incunable_year) return between_years(year);
  return year < count_years[last_early] ? between_years(year) : BetweenYears{last_early - 1, 1};
}

/// The years between which shares change, and the fraction of the way from one to the other. For formats the logarithms
/// of the shares change linearly, so a share that is small in one year and large in the other grows by the same factor
/// every year. Books of 1506 are counted, but are too few for shares of their own: the change goes from 1498 to 1550.
struct ShareChange {
  std::size_t from{}, to{};
  double part{};
};
constexpr ShareChange share_change_at(int year) {
  auto const at = between_years(year);
  if (at.before != last_early && at.before != few_books) return {at.before, at.before + 1, at.after};
  auto const from = count_years[last_early], to = count_years[first_late];
  return {last_early, first_late, static_cast<double>(year - from) / (to - from)};
}

/// Adds to each year a fraction of the counts of its neighbours.
template <class Years, class Get> double with_neighbours(Years const& years, std::size_t i, std::size_t end, Get get) {
  constexpr double neighbour = 0.3; // estimated
  return get(years[i]) + (i > 0 ? neighbour * get(years[i - 1]) : 0) +
         (i + 1 < end ? neighbour * get(years[i + 1]) : 0);
}
template <class Numbers> double sum_of(Numbers const& numbers) {
  double sum = 0;
  for (auto const one : numbers) sum += one;
  return sum;
}
template <class Numbers> void divide(Numbers& numbers, double by) {
  auto const part = 1 / by;
  for (auto& one : numbers) one *= part;
}

} // namespace detail

} // namespace v0
} // namespace bifolium
