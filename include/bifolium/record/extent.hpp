// SPDX-License-Identifier: MIT
/// The extent that a catalogue states - "[8], 205, [3] p.", "[2], 152 leaves", "50 Bl." - against the formula. Brackets
/// hold pages without numbers; "[i.e. 271]" corrects the number before it. Catalogues often leave out a blank at the end,
/// so two pages or a leaf fewer than the formula is told apart from a contradiction. The arithmetic is shown.
#pragma once

#include <bifolium/record/read_pagination.hpp>

namespace bifolium {
inline namespace v0 {

/// An extent: so many pages or leaves.
struct Extent {
  std::int64_t number{}; ///< as stated
  bool in_leaves{};      ///< true for leaves, false for pages
  std::string sum{};     ///< "8 + 205 + 3"
};

/// What a statement of pagination or foliation adds up to.
[[nodiscard]] inline Extent extent_of(Pagination const& pagination) {
  Extent extent{pagination.by_leaf ? page_count(pagination) / 2 : page_count(pagination), pagination.by_leaf, {}};
  for (auto const& run : pagination.runs) {
    if (&run != pagination.runs.data()) extent.sum += " + ";
    extent.sum += std::to_string(run.count);
  }
  return extent;
}
/// Reads an extent, or a statement that begins with its unit (pp. [viii], [554]). Plates and what follows are left alone.
/// error: not_an_extent, number_too_large, text_ends where no unit stands.
[[nodiscard]] inline Expected<Extent> read_extent(std::string_view text) {
  auto const pagination = detail::PaginationReader{text, true}.read();
  if (!pagination) return pagination.error();
  return extent_of(*pagination);
}

/// How an extent stands to a formula.
enum class ExtentAgrees : std::uint8_t {
  agrees,           ///< to the page, or with the blank verso at the end not counted
  last_not_counted, ///< a blank leaf at the end was not counted
  contradicts
};
/// What an extent says beside what the formula says.
struct ExtentCompared {
  ExtentAgrees verdict{}; ///< whether they agree
  std::string words{};    ///< the arithmetic
};

/// Compares the formula with an extent.
[[nodiscard]] inline ExtentCompared compare_extent(Formula const& formula, Extent const& extent) {
  auto const leaves = leaf_count(formula);
  auto const pages = extent.in_leaves ? 2 * extent.number : extent.number;
  auto const short_by = 2 * leaves - pages;
  ExtentCompared result{short_by == 0 || short_by == 1  ? ExtentAgrees::agrees
                        : short_by > 1 && short_by <= 3 ? ExtentAgrees::last_not_counted
                                                        : ExtentAgrees::contradicts,
                        {}};
  result.words = extent.sum + " = " + std::to_string(extent.number) + (extent.in_leaves ? " leaves" : " pages") +
                 "; the formula has " + std::to_string(leaves) + " leaves, " + std::to_string(2 * leaves) + " pages: ";
  result.words += result.verdict == ExtentAgrees::agrees ? "agrees"
                  : result.verdict == ExtentAgrees::last_not_counted
                      ? "agrees if a blank leaf at the end was not counted"
                      : "contradicts";
  return result;
}

/// Compares the formula with the pages stated behind it ("..., pp. [viii], [554]"). A total of leaves there is compared in
/// reading the formula (Problem::total_contradicts). error: as `pagination_of`; not_stated, too, for "unpaged".
[[nodiscard]] inline Expected<ExtentCompared> compare_stated_pages(Formula const& formula) {
  auto const pages = pagination_of(formula);
  if (!pages) return pages.error();
  if (pages->unpaged) return error_at(Problem::not_stated, 1, 1);
  return compare_extent(formula, extent_of(*pages));
}

} // namespace v0
} // namespace bifolium
