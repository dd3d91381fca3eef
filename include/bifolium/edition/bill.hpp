// SPDX-License-Identifier: MIT
/// The paper of an edition: what a copy takes, what the run takes with its overs, and what that is in reams - each as a
/// range where an assumption moves it. All is integer or exact rational; a bill adds up.
///
/// Overs are what is given out above the number wanted, for spoilage at press and surplus copies: 16 on 500 in a perfect
/// ream (Savage), 52 on 3,000 in Babbage's account. They are copies of every sheet.
#pragma once

#include <bifolium/edition/arrangement.hpp>
#include <bifolium/edition/presswork.hpp>
#include <bifolium/fold/static_fold.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

/// An edition to be reckoned. There is no default ream: without one the answer stays in sheets.
struct Edition {
  Attested scheme{SchemeRow::octavo};
  std::int64_t pages{};         ///< of text
  std::int64_t prelim_pages{};  ///< of preliminaries, gathered apart
  std::int64_t copies{};        ///< wanted
  Fraction overs_percent{};     ///< of every sheet above the copies, 0 to 100
  bool may_share_a_sheet{true}; ///< preliminaries and last gathering may be worked together
  std::optional<ReamCount> ream{};
  std::optional<std::int64_t> price_of_ream{}; ///< in the currency's smallest unit
  PressTerms press{};
};

/// Sheets of the run under three assumptions.
struct SheetRange {
  std::int64_t low{};     ///< no overs: every sheet given out is in a book
  std::int64_t planned{}; ///< part-sheets worked as the plan says, with the overs
  std::int64_t high{};    ///< part-sheets printed on whole sheets, the rest left white, with the overs
  friend constexpr bool operator==(SheetRange, SheetRange) = default;
};

/// What an edition takes.
struct Bill {
  Edition edition{};
  Plan plan{};
  std::int64_t overs{}; ///< copies of every sheet above those wanted
  SheetRange sheets{};
  std::optional<PaperCount> paper{}; ///< of the planned sheets, in the ream named
  std::optional<std::int64_t> low_cost{}, cost{},
      high_cost{}; ///< where a price was named, rounded up to the smallest unit
  Presswork presswork{};

  [[nodiscard]] constexpr Fraction sheets_a_copy() const { return plan.sheets_a_copy(); }
};

namespace detail {
constexpr std::optional<std::int64_t> cost_of(std::int64_t sheets, Edition const& edition) {
  if (!edition.ream || !edition.price_of_ream) return std::nullopt;
  auto const all = checked_multiply(*edition.price_of_ream, sheets);
  return all ? std::optional{Fraction{*all, edition.ream->ream}.ceil()} : std::nullopt;
}
} // namespace detail

/// Reckons an edition whose arrangement is known. error: negative_count, nothing_to_print, too_many_overs, not_positive,
/// number_too_large.
constexpr Expected<Bill> reckon(Edition const& edition, Plan const& plan) {
  if (edition.copies < 0) return error_at(Problem::negative_count, 1, 1, "-", 1);
  if (edition.copies == 0) return error_at(Problem::nothing_to_print, 1, 1);
  if (edition.overs_percent < Fraction{} || edition.overs_percent > Fraction{100})
    return error_at(Problem::too_many_overs, 1, 1);
  if (edition.ream && (edition.ream->ream <= 0 || edition.ream->quire <= 0))
    return error_at(Problem::not_positive, 1, 1);
  if (edition.price_of_ream && !edition.ream) return error_at(Problem::ream_needed, 1, 1);
  auto const too_large = error_at(Problem::number_too_large, 1, 1);

  bool fits = true; // one flag for all: what does not fit makes the whole bill an error
  auto const take = [&](std::optional<std::int64_t> number) {
    fits = fits && number.has_value();
    return number.value_or(0);
  };
  auto const over = checked_multiply(Fraction{edition.copies}, edition.overs_percent / Fraction{100});
  auto const overs = over.value_or(Fraction{}).ceil();
  auto const given_out = take(checked_add(edition.copies, overs));
  SheetRange const sheets{take(plan.sheets_for(edition.copies)), take(plan.sheets_for(given_out)),
                          take(checked_multiply(given_out, take(checked_add(plan.whole_sheets, plan.part_count))))};
  if (!over || !fits) return too_large;

  Bill bill{edition, plan, overs, sheets, {}, {}, {}, {}, {}};
  if (edition.ream) bill.paper = counted(sheets.planned, *edition.ream);
  if (edition.ream && edition.price_of_ream) {
    if (*edition.price_of_ream < 0) return error_at(Problem::negative_count, 1, 1, "-", 1);
    bill.low_cost = take(detail::cost_of(sheets.low, edition));
    bill.cost = take(detail::cost_of(sheets.planned, edition));
    bill.high_cost = take(detail::cost_of(sheets.high, edition));
    if (!fits) return too_large;
  }
  auto const work = presswork(sheets.planned, edition.press);
  if (!work) return work.error();
  bill.presswork = *work;
  return bill;
}

/// Arranges an edition in its scheme and reckons it. error: as above, and those of `arrange`.
constexpr Expected<Bill> reckon(Edition const& edition) {
  auto const folded = fold(edition.scheme.scheme());
  if (!folded) return folded.error();
  auto const plan = arrange(make_up(*folded), {edition.pages, edition.prelim_pages}, edition.may_share_a_sheet);
  if (!plan) return plan.error();
  return reckon(edition, *plan);
}

/// The working of a bill, line by line, in words. Allocates.
inline std::string working(Bill const& bill) {
  std::string text;
  auto const put = [&](auto const&... parts) { ((text += parts), ...); };
  auto const number = [](std::int64_t n) { return std::to_string(n); };
  auto const& plan = bill.plan;
  put(number(plan.leaves()), " leaves (", number(plan.blank_pages), " pages blank) in ", number(plan.gatherings),
      " gatherings, ", number(plan.leaves_to_sheet), " leaves to the sheet: ", to_text(plan.sheets_a_copy()).view(),
      " sheets a copy\n");
  if (plan.shares_a_sheet())
    put("  ", number(plan.shared_preliminaries), " leaves of preliminaries and ", number(plan.shared_text),
        " of text are worked on one sheet: inferred, not observed\n");
  for (std::size_t i = 0; i < plan.part_count; ++i)
    put("  a part-sheet of ", number(plan.parts[i]), " leaves from one forme, ",
        number(plan.leaves_to_sheet / plan.parts[i]), " copies to the sheet\n");
  put(number(plan.formes()), " formes\n");
  put(number(bill.edition.copies), " copies and ", number(bill.overs), " over: ", number(bill.sheets.planned),
      " sheets (", number(bill.sheets.low), " without overs; ", number(bill.sheets.high),
      " if part-sheets were printed on whole ones)\n");
  if (bill.paper)
    put("  ", number(bill.paper->reams), " reams, ", number(bill.paper->quires), " quires, ", number(bill.paper->loose),
        " sheets, by the ", bill.edition.ream->name, " of ", number(bill.edition.ream->ream), " in quires of ",
        number(bill.edition.ream->quire), "\n");
  if (bill.cost)
    put("  paper costs ", number(*bill.cost), " (", number(*bill.low_cost), " to ", number(*bill.high_cost),
        ") in the smallest unit\n");
  put(number(bill.presswork.impressions),
      " impressions, one side of one sheet each: ", to_text(bill.presswork.tokens).view(), " tokens of ",
      number(bill.edition.press.token.impressions), "; ", to_text(bill.presswork.clock_hours).view(),
      " hours by the clock at ", number(bill.edition.press.rate.impressions_an_hour), "\n");
  return text;
}

} // namespace v0
} // namespace bifolium
