// SPDX-License-Identifier: MIT
/// The paper and presswork of an edition: the sheets of one copy and of the whole run with its overs, and their number
/// of reams, weight and cost. If an assumption changes a number, it is given as a range. All numbers are integers or
/// exact fractions, so a bill adds up.
///
/// Overs are copies of every sheet printed above the number wanted, to replace spoiled sheets and for surplus copies:
/// 16 on 500 in a perfect ream (Savage), 52 on 3,000 in Babbage's account. They are given as a percentage or as a
/// number.
#pragma once

#include <bifolium/core/optional_number.hpp>
#include <bifolium/core/range.hpp>
#include <bifolium/edition/arrange.hpp>
#include <bifolium/edition/attested_make_up.hpp>
#include <bifolium/edition/presswork.hpp>
#include <bifolium/fold/static_fold.hpp>
#include <bifolium/paper/count.hpp>

#include <optional>
#include <utility>

namespace bifolium {
inline namespace v0 {

/// The edition whose paper and presswork are asked for. There is no default ream; without a ream the answer is in
/// sheets.
struct Edition {
  Attested scheme{SchemeRow::octavo};       ///< the scheme by which a sheet is folded and gathered
  std::int64_t pages{};                     ///< pages of text
  std::int64_t prelim_pages{};              ///< pages of preliminaries, in gatherings of their own
  std::int64_t end_pages{};                 ///< pages of end matter
  std::int64_t cancel_leaves{};             ///< leaves that are printed anew in every copy
  std::int64_t copies{};                    ///< copies wanted
  Fraction overs_percent{};                 ///< overs of every sheet, in per cent of the copies, 0 to 100
  std::int64_t overplus{};                  ///< further copies of every sheet, added to the percentage
  Arranging arranging{};                    ///< the printer's choices about shared sheets and parts of sheets
  std::optional<ReamCount> ream{};          ///< the count of the ream; without it the answer is in sheets
  std::optional<Fraction> weight_of_ream{}; ///< weight of a ream, in grammes
  /// price of a ream, as all prices in the smallest unit of the currency: 12 shillings are 144 pence
  OptionalNumber<std::int64_t> price_of_ream{};
  OptionalNumber<std::int64_t> price_of_forme{}; ///< price to impose and make ready one forme; may include composition
  OptionalNumber<std::int64_t> price_of_token{}; ///< price of the presswork of one token
  PressTerms press{};                            ///< tokens, rate, crew and number of presses
  friend constexpr bool operator==(Edition const&, Edition const&) = default;
};

/// The paper and presswork of an edition.
struct Bill {
  Edition edition{};    ///< the edition as it was asked for
  Plan plan{};          ///< the first plan of its pages: the one with the least paper, then the fewest formes
  std::int64_t overs{}; ///< copies of every sheet above those wanted
  /// Sheets for the whole run. `stated`: parts of sheets are printed as the plan says, with overs. `low`: no overs, no
  /// half-sheet wasted on an odd copy, and cancels printed on the blank leaves of the book, as far as there are any.
  /// `high`: with overs, the leaves left over of each matter on whole sheets, and each cancel a fold of two leaves.
  /// Weight and cost of the paper follow the same three assumptions.
  Range<std::int64_t> sheets{};
  std::optional<PaperCount> paper{}; ///< the stated sheets in the given ream
  /// The reams that are bought and paid for the stated sheets, exactly, if a ream is given. They are more than those of
  /// `paper` if the outside quires of a ream cannot be printed on: 21 reams and a bit of good sheets are 23 from the mill.
  std::optional<Fraction> reams_to_buy{};
  std::optional<Range<Fraction>> kilogrammes{}; ///< weight of the paper, if a weight was given
  /// Cost of the paper, rounded up to the smallest unit, if a price was given. A part of a ream costs its part of the
  /// price. The good sheets bear the price of the whole ream, `reams_to_buy`; in `low`, its outside quires are used as
  /// well.
  std::optional<Range<std::int64_t>> paper_cost{};
  std::optional<std::int64_t> forme_cost{}; ///< cost of all formes, if a price was given
  std::optional<std::int64_t> press_cost{}; ///< cost of the tokens, rounded up, if a price was given
  /// The sum of all costs, with the cost of the paper as low, as stated and as high. Formes and presswork are those of
  /// the plan in all three.
  std::optional<Range<std::int64_t>> total_cost{};
  Presswork presswork{}; ///< the presswork of the stated sheets

  /// Returns the sheets of one copy, exactly: twelve and a half sheets are 25/2.
  [[nodiscard]] constexpr Fraction sheets_a_copy() const { return plan.sheets_a_copy(); }
  friend constexpr bool operator==(Bill const&, Bill const&) = default;
};

namespace detail {

/// Collects the results of many steps in one flag: if one of them does not fit in 64 bits, the bill is an error.
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
  if (edition.ream)
    if (auto const error = what_is_wrong(*edition.ream)) return error;
  if (edition.weight_of_ream && *edition.weight_of_ream <= Fraction{})
    return error_in_field(Problem::not_positive, "weight_of_ream");
  if ((edition.price_of_ream || edition.weight_of_ream) && !edition.ream)
    return error_in_field(Problem::ream_needed, "ream");
  return {};
}

/// Returns the sheets if the leaves left over of each matter are printed on sheets of their own and each cancel is a
/// fold of two leaves.
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
/// Returns the sheets that just hold the leaves of the books, with cancels on blank leaves as far as there are any.
constexpr std::int64_t low_sheets(Plan const& plan, std::int64_t copies, Fits& fits) {
  auto const cancels = plan.leaves_of[static_cast<std::size_t>(Matter::cancels)];
  auto leaves = cancels < plan.blank_leaves ? 0 : cancels - plan.blank_leaves; // first those with paper of their own
  for (std::size_t m = 0; m + 1 < matters; ++m) leaves = fits(checked_add(leaves, plan.leaves_of[m]));
  return fits(ceil_of_product(Fraction{leaves, plan.leaves_to_sheet}, Fraction{copies}));
}

/// Returns the cost of `sheets` sheets if `sheets_of_ream` of the sheets in a paid ream are used.
constexpr std::int64_t cost_of(std::int64_t sheets, Edition const& edition, std::int32_t sheets_of_ream, Fits& fits) {
  return fits(ceil_of_product(Fraction{*edition.price_of_ream, sheets_of_ream}, Fraction{sheets}));
}
constexpr Range<std::int64_t> sum_of(Range<std::int64_t> const& a, Range<std::int64_t> const& b, Fits& fits) {
  return {fits(checked_add(a.low, b.low)), fits(checked_add(a.stated, b.stated)), fits(checked_add(a.high, b.high))};
}
constexpr Fraction weight_of(std::int64_t sheets, Edition const& edition, Fits& fits) {
  auto const one = fits(checked_divide(*edition.weight_of_ream, Fraction{std::int64_t{edition.ream->ream} * 1000}));
  return fits(checked_multiply(one, Fraction{sheets}));
}

} // namespace detail

/// Returns the copies of every sheet above those wanted: the percentage rounded up, plus `overplus`; no value if the
/// number does not fit in 64 bits.
constexpr std::optional<std::int64_t> overs_of(std::int64_t copies, Fraction percent, std::int64_t overplus) {
  auto const share = detail::ceil_of_product(Fraction{copies}, percent, 100);
  return share ? checked_add(*share, overplus) : std::nullopt;
}

namespace detail {

constexpr Expected<Bill> bill_of(Edition const& edition, Plan const& plan) {
  if (auto const error = what_is_wrong(edition)) return *error;
  if (plan.leaves_to_sheet <= 0) return error_in_field(Problem::nothing_to_print, "leaves_to_sheet");
  for (auto const leaves : plan.leaves_of)
    if (leaves < 0) return error_in_field(Problem::negative_count, "leaves_of", leaves);
  if (plan.blank_leaves < 0) return error_in_field(Problem::negative_count, "blank_leaves", plan.blank_leaves);
  auto const too_large = error_in_field(Problem::result_too_large, "");
  if (!plan.fits()) return too_large;
  if (plan.leaves_of[static_cast<std::size_t>(Matter::cancels)] > plan.leaves())
    return error_in_field(Problem::too_many_cancels, "leaves_of", plan.leaves());
  Fits fits;
  auto const overs = fits(overs_of(edition.copies, edition.overs_percent, edition.overplus));
  auto const given_out = fits(checked_add(edition.copies, overs));
  auto const stated = fits(plan.sheets_for(given_out));
  auto const high = high_sheets(plan, given_out, fits);
  auto const low = low_sheets(plan, edition.copies, fits);
  Range<std::int64_t> const sheets{low < stated ? low : stated, stated, high < stated ? stated : high};
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
  bill.presswork.perfected = perfected; // one impression prints a sheet with a blank side
  if (edition.ream) bill.paper = counted(sheets.stated, *edition.ream);
  if (edition.ream) bill.reams_to_buy = reams_to_buy(sheets.stated, *edition.ream);
  if (edition.weight_of_ream)
    bill.kilogrammes = Range<Fraction>{weight_of(sheets.low, edition, fits), weight_of(sheets.stated, edition, fits),
                                       weight_of(sheets.high, edition, fits)};
  if (edition.price_of_ream) { // outside quires are paid for, be they used or wasted
    auto const all = edition.ream->ream, good = edition.ream->good;
    bill.paper_cost =
        Range<std::int64_t>{cost_of(sheets.low, edition, all, fits), cost_of(sheets.stated, edition, good, fits),
                            cost_of(sheets.high, edition, good, fits)};
  }
  if (edition.price_of_forme) bill.forme_cost = fits(checked_multiply(*edition.price_of_forme, plan.formes()));
  if (edition.price_of_token)
    bill.press_cost = fits(detail::ceil_of_product(Fraction{*edition.price_of_token}, work->tokens));
  if (bill.paper_cost || bill.forme_cost || bill.press_cost) {
    auto const others = fits(checked_add(bill.forme_cost.value_or(0), bill.press_cost.value_or(0)));
    bill.total_cost = sum_of(bill.paper_cost.value_or(Range<std::int64_t>{}), {others, others, others}, fits);
  }
  if (!fits.all()) return too_large;
  return bill;
}

namespace compiled {
Expected<Bill> reckon(Edition const& edition, Plan const& plan);
}
} // namespace detail

/// Returns the bill of an edition whose plan is known. The scheme and the pages in `edition` are ignored. Errors:
/// negative_count, nothing_to_print, too_many_overs, not_positive, quire_above_ream, too_many_good_sheets, ream_needed,
/// result_too_large; too_many_cancels if the plan has more cancels than leaves.
constexpr Expected<Bill> reckon(Edition const& edition, Plan const& plan) {
  BIFOLIUM_WHEN_RUN(detail::compiled::reckon(edition, plan));
  return detail::bill_of(edition, plan);
}

/// Returns the pages of an edition that are to be arranged.
constexpr Pages pages_of(Edition const& edition) {
  return {edition.pages, edition.prelim_pages, edition.end_pages, edition.cancel_leaves};
}

namespace detail {
/// Returns an error about pages with the name that the field has in an edition.
constexpr Error error_of_edition(Error const& error) {
  for (auto const& [in_pages, in_edition] :
       {std::pair{"text", "pages"}, {"preliminaries", "prelim_pages"}, {"end_matter", "end_pages"}})
    if (error.found_text() == in_pages) return error_in_field(error.problem, in_edition, error.limit);
  return error;
}
} // namespace detail

/// Arranges the pages of an edition by its scheme and returns its bill. Errors: those of `arrange` and of the function
/// above.
/// Example: `reckon({.scheme = schemes::octavo, .pages = 320, .copies = 500})->sheets.stated == 10'000`.
constexpr Expected<Bill> reckon(Edition const& edition) {
  auto const plan = arrange(make_up(edition.scheme), pages_of(edition), edition.arranging);
  if (!plan) return detail::error_of_edition(plan.error());
  return reckon(edition, *plan);
}

} // namespace v0
} // namespace bifolium
