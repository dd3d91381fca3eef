// SPDX-License-Identifier: MIT
/// Compares the extent with the formula. Both count the same leaves, so they must agree. Catalogues often leave out a
/// blank at the end, so two pages or one leaf fewer than the formula has is reported separately from a contradiction.
/// The result contains the arithmetic for the person who looks at the book.
#pragma once

#include <bifolium/core/number_of.hpp>
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_pagination.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

/// The result of comparing an extent with a formula.
enum class ExtentAgrees : std::uint8_t {
  agrees,           ///< equal, or equal if the blank verso at the end was not counted
  last_not_counted, ///< equal if a blank leaf at the end was not counted
  contradicts
};
/// Returns the identifier of a result, for tables.
[[nodiscard]] constexpr std::string_view to_words(ExtentAgrees verdict) {
  return verdict == ExtentAgrees::agrees             ? "agrees"
         : verdict == ExtentAgrees::last_not_counted ? "last_not_counted"
                                                     : "contradicts";
}
/// An extent compared with a formula.
struct ExtentCompared {
  ExtentAgrees verdict{}; ///< the result
  std::string words{};    ///< the arithmetic in words
  friend bool operator==(ExtentCompared const&, ExtentCompared const&) = default;
};

namespace detail {

/// Writes the sum: 8 + 205 + 3 = 216 pages. If units are mixed, it is a sum of pages.
inline std::string sum_in_words(Pagination const& pagination) {
  bool mixed = false;
  for (auto const& run : pagination.runs) mixed = mixed || run.unit != pagination.runs.front().unit;
  auto const unit = mixed || pagination.runs.empty() ? PageUnit::pages : pagination.runs.front().unit;
  std::string sum;
  std::int64_t total = 0;
  for (auto const& run : pagination.runs) {
    auto const count = mixed ? run.pages() : run.count;
    total += count;
    sum += (sum.empty() ? "" : " + ") + std::to_string(count);
  }
  std::string plates;
  if (pagination.plate_pages > 0)
    plates = ", of which up to " + number_of(pagination.plate_pages, "can be a plate", "can be plates");
  return sum + " = " +
         (unit == PageUnit::leaves    ? number_of(total, "leaf", "leaves")
          : unit == PageUnit::columns ? number_of(total, "column", "columns")
                                      : number_of(total, "page", "pages")) +
         plates;
}

} // namespace detail

/// Compares the formula with a pagination or with the pages of an extent. The result is "agrees" if preliminary leaves
/// (`p. l.`) are counted again by the numbers after them, if the pages include plates, if an incomplete copy lacks
/// pages, or if the number of pages is approximate. Error: not_stated if the pagination does not say how many pages there are.
[[nodiscard]] inline Expected<ExtentCompared> compare_extent(Formula const& formula, Pagination const& pagination) {
  if (pagination.runs.empty()) return error_in_field(Problem::not_stated, "pagination");
  auto const leaves = formula.leaves();
  auto const missing = pagination.pages_missing(2 * leaves);
  ExtentCompared result{missing < 0 || missing > Pagination::blank_leaf ? ExtentAgrees::contradicts
                        : missing > Pagination::blank_verso             ? ExtentAgrees::last_not_counted
                                                                        : ExtentAgrees::agrees,
                        {}};
  result.words = detail::sum_in_words(pagination) + "; the formula has " + number_of(leaves, "leaf, ", "leaves, ") +
                 number_of(2 * leaves, "page", "pages") + ": ";
  result.words += pagination.approximate ? "the number of pages is approximate, so that nothing contradicts it"
                  : result.verdict == ExtentAgrees::agrees ? "agrees"
                  : result.verdict == ExtentAgrees::last_not_counted
                      ? "agrees if a blank leaf at the end was not counted"
                      : "contradicts";
  return result;
}
/// Compares the formula with the pages of an extent. Plates are not part of the gatherings and do not count, unless the
/// pages include them. Error: not_stated if the extent does not say how many pages there are ("3 volumes").
[[nodiscard]] inline Expected<ExtentCompared> compare_extent(Formula const& formula, Extent const& extent) {
  return compare_extent(formula, extent.pagination);
}

/// Compares the formula with the pages stated after it ("..., pp. [viii], [554]"). A total of leaves after it is
/// compared when the formula is read (Problem::total_contradicts). Errors: those of `pagination_of`; not_stated, also
/// for "unpaged".
[[nodiscard]] inline Expected<ExtentCompared> compare_stated_pages(Formula const& formula) {
  auto const pages = pagination_of(formula);
  if (!pages) return pages.error();
  return compare_extent(formula, *pages);
}

} // namespace v0
} // namespace bifolium
