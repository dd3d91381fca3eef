// SPDX-License-Identifier: MIT
/// Arranges a text in gatherings. Its pages fill sheets. The leaves that are left over fill a part of a sheet - a
/// half-sheet printed from one forme with two copies, a quarter-sheet, the third of a sheet of twelves - or share a
/// sheet with leaves left over from the preliminaries or the end matter, or with cancels. A printer could save paper by
/// such sharing, and often did (Bowers, Studies in Bibliography 1). That it was done in one particular book is an
/// inference, and a plan says so.
#pragma once

#include <bifolium/core/insertion_sort.hpp>
#include <bifolium/edition/detail/arranger.hpp>

#include <compare>
#include <optional>
#include <utility>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the pages with the end matter counted as text if it is in the gatherings of the text.
constexpr Pages run_on(Pages pages, bool runs_on) {
  if (runs_on) pages.text += pages.end_matter, pages.end_matter = 0;
  return pages;
}
/// Returns the leaves that have a page of the matters; each matter begins with a leaf of its own.
constexpr std::int64_t printed_leaves(Pages const& pages) {
  return pages.text / 2 + pages.text % 2 + pages.preliminaries / 2 + pages.preliminaries % 2 + pages.end_matter / 2 +
         pages.end_matter % 2;
}
/// Returns a plan with leaves, gatherings and blank pages, but without workings.
constexpr Plan plan_of(SheetMakeUp const& by, Pages pages, bool runs_on) {
  pages = run_on(pages, runs_on);
  Plan plan;
  plan.end_matter_runs_on = runs_on;
  plan.leaves_to_sheet = by.leaves_to_sheet;
  plan.leaves_of = {even_leaves(pages.preliminaries, by), even_leaves(pages.text, by),
                    even_leaves(pages.end_matter, by), pages.cancel_leaves};
  for (std::size_t m = 0; m + 1 < matters; ++m) plan.gatherings += gatherings_of(plan.leaves_of[m], by);
  plan.blank_pages = 2 * plan.leaves() - pages.text - pages.preliminaries - pages.end_matter;
  plan.blank_leaves = plan.leaves() - printed_leaves(pages);
  return plan;
}

/// Returns the number of leaves of a broadside with a blank verso: the last leaf of each matter that has an odd number
/// of pages.
constexpr int one_sided_leaves(SheetMakeUp const& by, Pages pages, bool runs_on) {
  if (by.leaves_to_press() != 1) return 0;
  pages = run_on(pages, runs_on);
  return static_cast<int>(pages.preliminaries % 2 + pages.text % 2 + pages.end_matter % 2);
}

constexpr std::optional<Error> what_is_wrong(Pages const& pages, bool runs_on) {
  constexpr std::int64_t most = 1'000'000'000'000'000;
  std::int64_t sum = 0;
  for (auto const& [field, number] : {std::pair{"text", pages.text},
                                      {"preliminaries", pages.preliminaries},
                                      {"end_matter", pages.end_matter},
                                      {"cancel_leaves", pages.cancel_leaves}}) {
    if (number < 0) return error_in_field(Problem::negative_count, field, number);
    if (number > most) return error_in_field(Problem::number_too_large, field, most);
    sum += number;
  }
  if (sum == pages.cancel_leaves) return error_in_field(Problem::nothing_to_print, "text");
  if (auto const leaves = printed_leaves(run_on(pages, runs_on)); pages.cancel_leaves > leaves)
    return error_in_field(Problem::too_many_cancels, "cancel_leaves", leaves);
  return {};
}

constexpr Expected<Plan> arranged(SheetMakeUp const& by, Pages const& pages, Arranging how) {
  must_make_leaves(by);
  if (auto const error = what_is_wrong(how)) return *error;
  if (auto const error = what_is_wrong(pages, how.end_matter_runs_on)) return *error;
  auto plan = plan_of(by, pages, how.end_matter_runs_on);
  Arranger{by, how}.arrange(plan, one_sided_leaves(by, pages, how.end_matter_runs_on));
  return plan;
}

constexpr Expected<Plan> arranged_in_whole_sheets(SheetMakeUp const& by, Pages const& pages, Arranging how) {
  must_make_leaves(by);
  if (auto const error = what_is_wrong(how)) return *error;
  if (auto const error = what_is_wrong(pages, how.end_matter_runs_on)) return *error;
  auto plan = plan_of(by, pages, how.end_matter_runs_on);
  auto const pages_used = 2 * plan.leaves() - plan.blank_pages;
  auto const sheet = by.leaves_to_sheet;
  std::int64_t sheets = 0;
  plan.gatherings = 0;
  for (std::size_t m = 0; m < matters; ++m) {
    sheets += plan.leaves_of[m] / sheet + (plan.leaves_of[m] % sheet != 0 ? 1 : 0);
    if (m == static_cast<std::size_t>(Matter::cancels)) continue;
    plan.leaves_of[m] = (plan.leaves_of[m] + sheet - 1) / sheet * sheet;
    plan.gatherings += gatherings_of(plan.leaves_of[m], by);
  }
  plan.blank_pages = 2 * plan.leaves() - pages_used;
  plan.blank_leaves = plan.leaves() - printed_leaves(run_on(pages, how.end_matter_runs_on));
  plan.in_whole_sheets = true;
  auto const one_side = sheet == 1 ? one_sided_leaves(by, pages, how.end_matter_runs_on) : 0;
  plan.add({sheets - one_side, static_cast<std::uint8_t>(sheet), Working::Kind::sheet, {}});
  plan.add({one_side, static_cast<std::uint8_t>(sheet), Working::Kind::one_side, {}});
  return plan;
}

namespace compiled {
Expected<Plan> arrange(SheetMakeUp const& by, Pages const& pages, Arranging how);
Expected<Plan> arrange_in_whole_sheets(SheetMakeUp const& by, Pages const& pages, Arranging how);
} // namespace compiled
} // namespace detail

/// Returns the plan that takes the least paper. Among these it has the fewest formes, with the sharing that `how`
/// allows; if two plans are equal, it is the one that shares no sheet. Precondition: `make_up` made `by` from a fold.
/// Errors: no_such_value, negative_count, nothing_to_print, number_too_large (more than 10^15 pages), too_many_cancels.
constexpr Expected<Plan> arrange(SheetMakeUp const& by, Pages const& pages, Arranging how = {}) {
  BIFOLIUM_WHEN_RUN(detail::compiled::arrange(by, pages, how));
  return detail::arranged(by, pages, how);
}

/// Returns the plan that uses whole sheets only; blank leaves fill up every matter. Precondition: `make_up` made `by`
/// from a fold. Errors: those of `arrange`.
constexpr Expected<Plan> arrange_in_whole_sheets(SheetMakeUp const& by, Pages const& pages, Arranging how = {}) {
  BIFOLIUM_WHEN_RUN(detail::compiled::arrange_in_whole_sheets(by, pages, how));
  return detail::arranged_in_whole_sheets(by, pages, how);
}

/// Returns all plans that are worth comparing, ordered by paper, then by formes, then by blank pages: each way of
/// sharing, with the end matter in its own gatherings or in those of the text, and with whole sheets only. The function
/// allocates memory. Precondition: `make_up` made `by` from a fold. Errors: those of `arrange`.
inline Expected<std::vector<Plan>> plans(SheetMakeUp const& by, Pages const& pages, PartWork parts = PartWork::turned) {
  std::vector<Plan> all;
  auto const keep = [&](Plan const& plan) {
    for (auto const& other : all)
      if (other == plan) return;
    auto const is_less = [](Plan const& a, Plan const& b) {
      if (auto const paper = a.sheets_a_copy() <=> b.sheets_a_copy(); std::is_neq(paper)) return std::is_lt(paper);
      return std::pair{a.formes(), a.blank_pages} < std::pair{b.formes(), b.blank_pages};
    };
    all.push_back(plan);
    insertion_sort(all, is_less);
  };
  for (bool runs_on : {false, true}) {
    if (runs_on && pages.end_matter == 0) break;
    for (auto sharing : {Sharing::none, Sharing::once, Sharing::freely}) {
      auto const plan = arrange(by, pages, {sharing, parts, runs_on});
      if (!plan) return plan.error();
      keep(*plan);
    }
    keep(*arrange_in_whole_sheets(by, pages, {Sharing::none, parts, runs_on}));
  }
  return all;
}

/// Returns the parts of a sheet that hold `leaves` leaves in the fewest formes, the largest first: 6 leaves of an octavo
/// are a half-sheet of 4 and a quarter-sheet of 2. The size of a part divides the sheet, so that no paper is left. It is
/// even, because the part is folded, unless the leaves are `single`, as cancels are. Returns no value if no parts are
/// possible: 2 leaves of a sheet of 9. The function allocates memory. Precondition: leaves from 0 to less than the
/// sheet makes, and a sheet of at most Scheme::most_cells leaves.
inline std::optional<std::vector<int>> parts_of_sheet(int leaves, int leaves_to_sheet, bool single = false,
                                                      PartWork work = PartWork::turned) {
  if (leaves < 0 || leaves >= leaves_to_sheet || leaves_to_sheet > Scheme::most_cells)
    broken("parts of a sheet must have fewer leaves than the sheet, which has at most Scheme::most_cells");
  return detail::PartSheets{leaves_to_sheet, leaves_to_sheet, single, work}.parts_of(leaves);
}

/// The distance of a text from an even working, in which no leaf is left over for a part of a sheet and no page is
/// blank.
struct EvenWorking {
  std::int64_t pages_fewer{}; ///< number of pages to save so that the last whole sheet is full
  std::int64_t pages_more{};  ///< number of pages to add without another sheet
  friend constexpr bool operator==(EvenWorking, EvenWorking) = default;
};
/// Returns the distance from an even working for one matter of `pages` pages. Precondition: `make_up` made `by` from a
/// fold. Error: negative_count.
constexpr Expected<EvenWorking> even_working(SheetMakeUp const& by, std::int64_t pages) {
  if (pages < 0) return error_in_field(Problem::negative_count, "pages", pages);
  detail::must_make_leaves(by);
  auto const sheet = std::int64_t{2} * by.leaves_to_sheet;
  auto const over = pages % sheet;
  return EvenWorking{over, over == 0 ? 0 : sheet - over};
}

} // namespace v0
} // namespace bifolium
