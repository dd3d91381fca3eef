// SPDX-License-Identifier: MIT
/// Years of printing, as a range. Most books of the hand press are dated to the year, most others to a decade, a
/// century or "about 1580", so the library uses ranges everywhere.
#pragma once

#include <bifolium/core/checked.hpp>

#include <climits>
#include <cstddef>
#include <cstdint>
#include <optional> // declares std::hash
#include <type_traits>

namespace bifolium {
inline namespace v0 {

/// Incunables are the books printed to the end of this year.
inline constexpr int last_incunable_year = 1500;

/// A range of years, including both ends. The type accepts any two numbers; a function that takes a range says which
/// ranges it refuses.
struct YearRange {
  int from{}; ///< the first year
  int to{};   ///< the last year

  constexpr YearRange() = default;
  /// Makes a range of one year.
  constexpr YearRange(int year) : from{year}, to{year} {}
  /// Refuses what is not a whole number. It is not deleted, since compilers would then reject `observe({.year = 1725.5})`
  /// without this sentence.
  template <class Number>
  requires detail::NoWholeNumber<Number>
  constexpr YearRange(Number) {
    static_assert(sizeof(Number) == 0, "a year is a whole number: write 1725, or YearRange{1720, 1729}");
  }
  /// Refuses a text with a sentence.
  template <detail::TextGiven Text> constexpr YearRange(Text const&) {
    static_assert(detail::never<Text>,
                  "a text is not a year: write 1725 or YearRange{1720, 1729}, or read it with read_date(text)");
  }
  /// Makes a range from the first year to the last, including both.
  constexpr YearRange(int first, int last) : from{first}, to{last} {}
  /// The same of numbers of wider types. Precondition: each fits in an int.
  template <class Number>
  requires(detail::ChangesAs<Number, int> && !detail::NoWholeNumber<Number>) constexpr YearRange(Number year)
      : YearRange{detail::unchanged<int>(year)} {}
  /// The same of two numbers, of which one or both are of wider types; others are refused with a sentence.
  template <class First, class Last>
  requires(detail::ChangesAs<First, int> || detail::ChangesAs<Last, int>) constexpr YearRange(First first, Last last)
      : YearRange{detail::unchanged<int>(first), detail::unchanged<int>(last)} {}

  /// Returns the number of years: 1 for a single year, and at most INT_MAX.
  [[nodiscard]] constexpr int size() const noexcept { return fitting(std::int64_t{to} - from + 1); }
  /// Returns true if the range has one year only.
  [[nodiscard]] constexpr bool is_one_year() const noexcept { return from == to; }
  /// Returns true if the range includes `year`.
  [[nodiscard]] constexpr bool contains(int year) const noexcept { return from <= year && year <= to; }
  /// Returns true if the two ranges have a year in common.
  [[nodiscard]] constexpr bool meets(YearRange other) const noexcept { return from <= other.to && other.from <= to; }
  /// Returns the shortest range that includes both ranges.
  [[nodiscard]] constexpr YearRange joined(YearRange other) const noexcept {
    return {from < other.from ? from : other.from, to > other.to ? to : other.to};
  }
  /// Returns the range with `years` added at each end, as far as an int goes.
  [[nodiscard]] constexpr YearRange widened(int years) const noexcept {
    return {fitting(std::int64_t{from} - years), fitting(std::int64_t{to} + years)};
  }

  friend constexpr bool operator==(YearRange, YearRange) = default;

private:
  static constexpr int fitting(std::int64_t number) noexcept {
    return static_cast<int>(number < INT_MIN ? INT_MIN : number > INT_MAX ? INT_MAX : number);
  }
};

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::YearRange> {
  std::size_t operator()(bifolium::YearRange years) const noexcept {
    return static_cast<std::size_t>(years.from) * 31U + static_cast<std::size_t>(years.to);
  }
};
