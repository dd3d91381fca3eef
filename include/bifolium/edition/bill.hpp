// SPDX-License-Identifier: MIT
/// The paper and presswork of an edition: what a copy takes, what the run takes with its overs, and what that is in reams,
/// weight and money - each as a range where an assumption changes it. All figures are integers or exact fractions, and a
/// bill adds up.
///
/// Overs are copies of every sheet above the number wanted, for spoilage at press and surplus copies: 16 on 500 in a perfect
/// ream (Savage), 52 on 3,000 in Babbage's account. They are given by the hundred or as a plain number.
#pragma once

#include <bifolium/core/range.hpp>
#include <bifolium/edition/arrange.hpp>
#include <bifolium/edition/presswork.hpp>
#include <bifolium/fold/static_fold.hpp>
#include <bifolium/paper/count.hpp>

#include <optional>
#include <utility>

namespace bifolium {
inline namespace v0 {

/// An edition whose paper and presswork are asked for. There is no default ream: without one the answer is in sheets.
struct Edition {
  Attested scheme{SchemeRow::octavo};           ///< how a sheet is folded and gathered
  std::int64_t pages{};                         ///< of text
  std::int64_t prelim_pages{};                  ///< of preliminaries, gathered apart
  std::int64_t end_pages{};                     ///< of end matter
  std::int64_t cancel_leaves{};                 ///< leaves printed anew in every copy
  std::int64_t copies{};                        ///< wanted
  Fraction overs_percent{};                     ///< of every sheet above the copies, 0 to 100
  std::int64_t overplus{};                      ///< and so many copies more
  Arranging arranging{};                        ///< what the printer decides of part-sheets and shared ones
  std::optional<ReamCount> ream{};              ///< how paper is counted; without it the answer is in sheets
  std::optional<Fraction> weight_of_ream{};     ///< in grammes
  std::optional<std::int64_t> price_of_ream{};  ///< these in the currency's smallest unit
  std::optional<std::int64_t> price_of_forme{}; ///< to impose and make ready one forme, or to compose it too
  std::optional<std::int64_t> price_of_token{}; ///< of presswork, for as many impressions as make a token
  PressTerms press{};                           ///< tokens, rate, crew and number of presses
};

/// What an edition takes.
struct Bill {
  Edition edition{};    ///< as it was asked for
  Plan plan{};          ///< the first plan of its pages: the least paper, then the fewest formes
  std::int64_t overs{}; ///< copies of every sheet above those wanted
  /// Sheets for the whole run. stated: part-sheets printed as the plan says, with the overs. low: no overs, no half-sheet
  /// wasted on an odd copy, cancels in paper otherwise left white. high: what is left over of each matter on whole sheets,
  /// each cancel a fold of two leaves, with the overs. Weight and cost follow the same three assumptions.
  Range<std::int64_t> sheets{};
  std::optional<PaperCount> paper{};            ///< of the stated sheets, in the ream named
  std::optional<Range<Fraction>> kilogrammes{}; ///< where a weight was named
  /// Where a price was named, rounded up to the smallest unit. A ream is paid whole: low, its outside quires serve as well.
  std::optional<Range<std::int64_t>> paper_cost{};
  std::optional<std::int64_t> forme_cost{}; ///< of all formes, where a price was named
  std::optional<std::int64_t> press_cost{}; ///< of the tokens, where a price was named, rounded up
  std::optional<std::int64_t> total_cost{}; ///< the sum of what was priced, as stated
  Presswork presswork{};                    ///< of the stated sheets

  /// Exactly: twelve and a half sheets are 25/2.
  [[nodiscard]] constexpr Fraction sheets_a_copy() const { return plan.sheets_a_copy(); }
};

namespace detail {

/// One flag for many steps: what does not fit in 64 bits makes the whole bill an error.
class Fits {
  bool all_{true};

public:
  constexpr std::int64_t operator()(std::optional<std::int64_t> number) {
    all_ = all_ && number.has_value();
    return number.value_or(0);
  }
  constexpr Fraction operator()(std::optional<Fraction> number) {
    all_ = all_ && number.has_value();
    return number.value_or(Fraction{});
  }
  [[nodiscard]] constexpr bool all() const noexcept { return all_; }
};

constexpr std::optional<Error> what_is_wrong(Edition const& edition) {
  for (auto const& [field, number] : {std::pair{"copies", edition.copies},
                                      {"overplus", edition.overplus},
                                      {"price_of_ream", edition.price_of_ream.value_or(0)},
                                      {"price_of_forme", edition.price_of_forme.value_or(0)},
                                      {"price_of_token", edition.price_of_token.value_or(0)}})
    if (number < 0) return error_in_field(Problem::negative_count, field, number);
  if (edition.copies == 0) return error_in_field(Problem::nothing_to_print, "copies");
  if (edition.overs_percent < Fraction{} || edition.overs_percent > Fraction{100})
    return error_in_field(Problem::too_many_overs, "overs_percent");
  if (edition.ream && (edition.ream->ream <= 0 || edition.ream->quire <= 0 || edition.ream->printable() <= 0))
    return error_in_field(Problem::not_positive, "ream");
  if (edition.weight_of_ream && *edition.weight_of_ream <= Fraction{})
    return error_in_field(Problem::not_positive, "weight_of_ream");
  if ((edition.price_of_ream || edition.weight_of_ream) && !edition.ream)
    return error_in_field(Problem::ream_needed, "ream");
  return {};
}

/// Sheets where each matter's oddments go on sheets of their own and each cancel is a fold of two leaves.
constexpr std::int64_t high_sheets(Plan const& plan, std::int64_t copies, Fits& fits) {
  std::int64_t of_copy = 0;
  for (std::size_t m = 0; m < matters; ++m) {
    auto const leaves =
        fits(checked_multiply(plan.leaves_of[m], m == static_cast<std::size_t>(Matter::cancels) ? 2 : 1));
    auto const sheets = leaves / plan.leaves_to_sheet + (leaves % plan.leaves_to_sheet != 0 ? 1 : 0);
    of_copy = fits(checked_add(of_copy, sheets));
  }
  return fits(checked_multiply(of_copy, copies));
}
/// Sheets that hold the leaves of the books and no more; cancels in what would be left white.
constexpr std::int64_t low_sheets(Plan const& plan, std::int64_t copies, Fits& fits) {
  std::int64_t leaves = 0;
  for (std::size_t m = 0; m + 1 < matters; ++m) leaves = fits(checked_add(leaves, plan.leaves_of[m]));
  auto const whole = fits(checked_multiply(leaves / plan.leaves_to_sheet, copies));
  auto const rest = fits(checked_multiply(leaves % plan.leaves_to_sheet, copies));
  return fits(checked_add(whole, rest / plan.leaves_to_sheet + (rest % plan.leaves_to_sheet != 0 ? 1 : 0)));
}

/// What so many sheets cost where a ream of the price gives `sheets_of_ream`.
constexpr std::int64_t cost_of(std::int64_t sheets, Edition const& edition, std::int32_t sheets_of_ream, Fits& fits) {
  return Fraction{fits(checked_multiply(*edition.price_of_ream, sheets)), sheets_of_ream}.ceil();
}
constexpr Fraction weight_of(std::int64_t sheets, Edition const& edition, Fits& fits) {
  auto const one = fits(checked_divide(*edition.weight_of_ream, Fraction{std::int64_t{edition.ream->ream} * 1000}));
  return fits(checked_multiply(one, Fraction{sheets}));
}

} // namespace detail

/// Copies of every sheet above those wanted: the hundredths rounded up, and the overplus. None when it does not fit.
constexpr std::optional<std::int64_t> overs_of(std::int64_t copies, Fraction percent, std::int64_t overplus) {
  auto const share = checked_divide(percent, Fraction{100});
  auto const over = share ? checked_multiply(Fraction{copies}, *share) : std::nullopt;
  return over ? checked_add(over->ceil(), overplus) : std::nullopt;
}

/// The bill of an edition whose plan is known; its scheme and pages are not looked at. error: negative_count, nothing_to_print, too_many_overs, not_positive,
/// ream_needed, result_too_large.
constexpr Expected<Bill> reckon(Edition const& edition, Plan const& plan) {
  if (auto const error = detail::what_is_wrong(edition)) return *error;
  if (plan.leaves_to_sheet <= 0) return error_in_field(Problem::nothing_to_print, "leaves_to_sheet");
  for (auto const leaves : plan.leaves_of)
    if (leaves < 0) return error_in_field(Problem::negative_count, "leaves_of", leaves);
  auto const too_large = error_in_field(Problem::result_too_large, "");
  if (!plan.fits()) return too_large;
  detail::Fits fits;
  auto const overs = fits(overs_of(edition.copies, edition.overs_percent, edition.overplus));
  auto const given_out = fits(checked_add(edition.copies, overs));
  auto const stated = fits(plan.sheets_for(given_out));
  auto const high = detail::high_sheets(plan, given_out, fits);
  Range<std::int64_t> const sheets{detail::low_sheets(plan, edition.copies, fits), stated,
                                   high < stated ? stated : high};
  auto const impressions = fits(plan.impressions_for(given_out)), perfected = fits(plan.perfected_for(given_out));
  if (!fits.all()) return too_large;
  auto const work = presswork_of(impressions, edition.press);
  if (!work) return work.error();

  Bill bill;
  bill.edition = edition;
  bill.plan = plan;
  bill.overs = overs;
  bill.sheets = sheets;
  bill.presswork = *work;
  bill.presswork.perfected = perfected; // a side left blank is printed by one impression
  if (edition.ream) bill.paper = counted(sheets.stated, *edition.ream);
  if (edition.weight_of_ream)
    bill.kilogrammes =
        Range<Fraction>{detail::weight_of(sheets.low, edition, fits), detail::weight_of(sheets.stated, edition, fits),
                        detail::weight_of(sheets.high, edition, fits)};
  if (edition.price_of_ream) { // a ream is paid whole; its outside quires may serve, or be wasted
    auto const all = edition.ream->ream, good = edition.ream->printable();
    bill.paper_cost = Range<std::int64_t>{detail::cost_of(sheets.low, edition, all, fits),
                                          detail::cost_of(sheets.stated, edition, good, fits),
                                          detail::cost_of(sheets.high, edition, good, fits)};
  }
  if (edition.price_of_forme) bill.forme_cost = fits(checked_multiply(*edition.price_of_forme, plan.formes()));
  if (edition.price_of_token)
    bill.press_cost = fits(checked_multiply(Fraction{*edition.price_of_token}, work->tokens)).ceil();
  if (bill.paper_cost || bill.forme_cost || bill.press_cost)
    bill.total_cost =
        fits(checked_add(fits(checked_add(bill.paper_cost ? bill.paper_cost->stated : 0, bill.forme_cost.value_or(0))),
                         bill.press_cost.value_or(0)));
  if (!fits.all()) return too_large;
  return bill;
}

/// The pages that an edition asks to be arranged.
constexpr Pages pages_of(Edition const& edition) {
  return {edition.pages, edition.prelim_pages, edition.end_pages, edition.cancel_leaves};
}

/// Arranges an edition in its scheme and gives its bill. error: as above, and those of `arrange`.
constexpr Expected<Bill> reckon(Edition const& edition) {
  auto const folded = fold(edition.scheme.scheme());
  if (!folded) return folded.error();
  auto const plan = arrange(make_up(*folded), pages_of(edition), edition.arranging);
  if (!plan) return plan.error();
  return reckon(edition, *plan);
}

} // namespace v0
} // namespace bifolium
