// SPDX-License-Identifier: MIT
/// Years of printing: one year, or the years between which. Most books of the hand press are dated to the year, and most
/// others to a decade, a century or "about 1580", so a date is a range everywhere in the library.
#pragma once

#include <bifolium/core/config.hpp>

namespace bifolium {
inline namespace v0 {

/// A range of years, both ends included. Nothing is checked here: a reader or a function that takes one says which
/// ranges it refuses.
struct YearRange {
  int from{}; ///< the first year
  int to{};   ///< the last year, itself included

  constexpr YearRange() = default;
  /// One year.
  constexpr YearRange(int year) : from{year}, to{year} {}
  /// From one year to another.
  constexpr YearRange(int first, int last) : from{first}, to{last} {}

  /// How many years: 1 for a single year.
  [[nodiscard]] constexpr int size() const noexcept { return to - from + 1; }
  /// Whether it is one year.
  [[nodiscard]] constexpr bool is_one_year() const noexcept { return from == to; }
  /// Whether the year lies in it.
  [[nodiscard]] constexpr bool contains(int year) const noexcept { return from <= year && year <= to; }
  /// Whether the two have a year in common.
  [[nodiscard]] constexpr bool meets(YearRange other) const noexcept { return from <= other.to && other.from <= to; }
  /// The shortest range that holds both.
  [[nodiscard]] constexpr YearRange joined(YearRange other) const noexcept {
    return {from < other.from ? from : other.from, to > other.to ? to : other.to};
  }
  /// So many years more at either end.
  [[nodiscard]] constexpr YearRange widened(int years) const noexcept { return {from - years, to + years}; }

  friend constexpr bool operator==(YearRange, YearRange) = default;
};

} // namespace v0
} // namespace bifolium
