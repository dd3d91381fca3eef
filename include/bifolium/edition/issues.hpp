// SPDX-License-Identifier: MIT
/// Issues of one edition: some copies on common paper and some on fine paper, from the same formes. The formes are made
/// ready once. Each paper has its own ream, price and overs, and its own odd half-sheet, since two papers cannot share
/// a sheet.
#pragma once

#include <bifolium/core/optional_number.hpp>
#include <bifolium/edition/bill.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// The properties in which issues differ.
struct Issue {
  std::int64_t copies{};                        ///< copies wanted of this issue
  Fraction overs_percent{};                     ///< overs of every sheet, in per cent of the copies, 0 to 100
  std::int64_t overplus{};                      ///< further copies of every sheet, added to the percentage
  std::optional<ReamCount> ream{};              ///< the count of the ream; without it the answer is in sheets
  std::optional<Fraction> weight_of_ream{};     ///< weight of a ream, in grammes
  OptionalNumber<std::int64_t> price_of_ream{}; ///< price of a ream, in the smallest unit of the currency
  friend constexpr bool operator==(Issue const&, Issue const&) = default;
};

/// The paper and presswork of the issues, one by one and together.
struct IssuesBill {
  std::vector<Bill> issues{};                      ///< paper and presswork of each issue, without the cost of formes
  std::int64_t formes{};                           ///< formes, which are set and imposed once for all issues
  Range<std::int64_t> sheets{};                    ///< sheets of all papers
  Presswork presswork{};                           ///< presswork of all issues together
  std::optional<std::int64_t> forme_cost{};        ///< cost of the formes, if a price was given
  std::optional<std::int64_t> press_cost{};        ///< cost of all presswork, rounded up, if a price was given
  std::optional<Range<std::int64_t>> total_cost{}; ///< the sum of all costs, as in a bill
  friend bool operator==(IssuesBill const&, IssuesBill const&) = default;
};

/// Returns the bill of the issues of an edition. The copies, overs, ream and price of paper in `edition` are ignored.
/// The function allocates memory. Errors: those of `reckon`; list_empty if there is no issue.
inline Expected<IssuesBill> reckon(Edition edition, std::vector<Issue> const& issues) {
  if (issues.empty()) return error_in_field(Problem::list_empty, "issues");
  auto const price_of_forme = edition.price_of_forme, price_of_token = edition.price_of_token;
  edition.price_of_forme = {};
  edition.price_of_token = {};
  IssuesBill all{.issues = std::vector<Bill>(issues.size())};
  detail::Fits fits;
  std::int64_t impressions = 0, perfected = 0, others = 0;
  Range<std::int64_t> paper{};
  bool priced = price_of_forme.has_value() || price_of_token.has_value();
  for (std::size_t i = 0; i < issues.size(); ++i) {
    auto const& issue = issues[i];
    edition.copies = issue.copies;
    edition.overs_percent = issue.overs_percent;
    edition.overplus = issue.overplus;
    edition.ream = issue.ream;
    edition.weight_of_ream = issue.weight_of_ream;
    edition.price_of_ream = issue.price_of_ream;
    auto const bill = reckon(edition);
    if (!bill) return bill.error();
    all.issues[i] = *bill;
    all.formes = bill->plan.formes();
    all.sheets = detail::sum_of(all.sheets, bill->sheets, fits);
    impressions = fits(checked_add(impressions, bill->presswork.impressions));
    perfected = fits(checked_add(perfected, bill->presswork.perfected));
    if (bill->paper_cost) {
      paper = detail::sum_of(paper, *bill->paper_cost, fits);
      priced = true;
    }
  }
  auto const work = presswork_of(impressions, edition.press);
  if (!work) return work.error();
  all.presswork = *work;
  all.presswork.perfected = perfected;
  if (price_of_forme) {
    if (*price_of_forme < 0) return error_in_field(Problem::negative_count, "price_of_forme", *price_of_forme);
    all.forme_cost = fits(checked_multiply(*price_of_forme, all.formes));
    others = fits(checked_add(others, *all.forme_cost));
  }
  if (price_of_token) {
    if (*price_of_token < 0) return error_in_field(Problem::negative_count, "price_of_token", *price_of_token);
    all.press_cost = fits(detail::ceil_of_product(Fraction{*price_of_token}, work->tokens));
    others = fits(checked_add(others, *all.press_cost));
  }
  if (priced) all.total_cost = detail::sum_of(paper, {others, others, others}, fits);
  if (!fits.all()) return error_in_field(Problem::result_too_large, "");
  return all;
}

} // namespace v0
} // namespace bifolium
