// SPDX-License-Identifier: MIT
#include <bifolium/edition.hpp>

#include "true_book.hpp"

#include <doctest/doctest.h>
#include <ostream>

using namespace bifolium;

namespace {

using Wide = std::int64_t; // wide enough for the figures drawn here

Wide up(Wide number, Wide by) { return (number + by - 1) / by; }

/// An edition at random in any scheme: each price, weight and ream there or not.
Edition edition(truth::Draw& draw) {
  static std::vector<Attested> const schemes = [] {
    std::vector<Attested> all;
    for (auto const scheme : Attested::all()) all.push_back(scheme);
    return all;
  }();
  Edition one;
  one.scheme = draw.of(schemes);
  one.pages = draw.from_to(1, 700);
  one.prelim_pages = draw.one_in(2) ? 0 : draw.from_to(1, 40);
  one.end_pages = draw.one_in(2) ? 0 : draw.from_to(1, 40);
  one.cancel_leaves = draw.one_in(2) ? 0 : draw.from_to(1, std::min(9, static_cast<int>(up(one.pages, 2))));
  one.copies = draw.from_to(1, 3000);
  one.overs_percent = Fraction{draw.number(60), 10};
  one.overplus = draw.number(4);
  one.arranging = {draw.of<Sharing>({Sharing::none, Sharing::once, Sharing::freely}),
                   draw.one_in(3) ? PartWork::cut_first : PartWork::turned, draw.one_in(3)};
  if (!draw.one_in(3)) one.ream = draw.of<ReamCount>({reams::from_mill, reams::of_480, reams::of_500, reams::of_516});
  if (one.ream && draw.one_in(2)) one.weight_of_ream = Fraction{draw.from_to(1000, 20000), draw.from_to(1, 3)};
  if (one.ream && draw.one_in(2)) one.price_of_ream = draw.from_to(0, 3000);
  if (draw.one_in(2)) one.price_of_forme = draw.from_to(0, 200);
  if (draw.one_in(2)) one.price_of_token = draw.from_to(0, 50);
  one.press.token = draw.of<PressFigure>({tokens::moxon_24, tokens::moxon_25, tokens::savage});
  one.press.presses = draw.from_to(1, 4);
  one.press.crew = draw.one_in(3) ? Crew::half_press : Crew::full_press;
  return one;
}

/// What the plan's workings come to for so many copies, one by one.
struct Sum {
  Wide sheets{}, impressions{}, perfected{}, formes{}, leaves{};
};
Sum sum_of(Plan const& plan, Wide copies) {
  Sum sum;
  for (auto const& working : plan) {
    auto const sheets = up(copies * working.leaves, plan.leaves_to_sheet);
    bool const one_side = working.kind == Working::Kind::one_side, cut = working.kind == Working::Kind::cut_first;
    auto const to_press = cut || one_side ? copies : sheets;
    sum.sheets += working.times * sheets;
    sum.impressions += working.times * to_press * (one_side ? 1 : 2);
    sum.perfected += one_side ? 0 : working.times * to_press;
    sum.formes += working.times * (one_side || working.kind == Working::Kind::turned ? 1 : 2);
    sum.leaves += working.times * working.leaves;
  }
  return sum;
}
/// The leaves that pages fill. Whole gatherings have the leaves of the scheme; what is left over is folded, so its leaves are
/// even in number, but a broadside is a leaf by itself.
Wide leaves_of(Edition const& one) {
  auto const by = make_up(*fold(one.scheme.scheme()));
  auto const runs_on = one.arranging.end_matter_runs_on;
  Wide sum = 0;
  for (auto const pages : {one.prelim_pages, one.pages + (runs_on ? one.end_pages : 0), runs_on ? 0 : one.end_pages}) {
    auto const leaves = up(pages, 2);
    sum += leaves + (by.leaves_to_press() == 1 ? 0 : leaves % by.leaves() % 2);
  }
  return sum;
}
/// The leaves with a page on them: each matter begins with a leaf of its own.
Wide printed_leaves_of(Edition const& one) {
  auto const runs_on = one.arranging.end_matter_runs_on;
  return up(one.prelim_pages, 2) + up(one.pages + (runs_on ? one.end_pages : 0), 2) +
         up(runs_on ? 0 : one.end_pages, 2);
}

} // namespace

TEST_CASE("bills made at random are those of plain arithmetic, with each price there or not") {
  truth::Draw draw{1683};
  int priced = 0, unpriced = 0;
  for (int round = truth::rounds(4000); round > 0; --round) {
    auto const one = edition(draw);
    auto const bill = reckon(one);
    REQUIRE(bill);
    CAPTURE(one.scheme.id());
    CAPTURE(one.pages);
    CAPTURE(one.copies);
    auto const& plan = bill->plan;
    Wide const sheet = plan.leaves_to_sheet;

    // the bill keeps what it was asked
    CHECK(bill->edition.scheme == one.scheme);
    CHECK(bill->edition.copies == one.copies);
    CHECK(bill->edition.pages == one.pages);
    CHECK(bill->edition.overplus == one.overplus);
    CHECK(bill->edition.press.presses == one.press.presses);
    CHECK(bill->edition.price_of_forme == one.price_of_forme);
    CHECK_FALSE(plan.in_whole_sheets);
    CHECK(plan.end_matter_runs_on == one.arranging.end_matter_runs_on);
    auto const by = make_up(*fold(one.scheme.scheme()));
    auto const in_sheets = *arrange_in_whole_sheets(by, pages_of(one), one.arranging);
    CHECK(in_sheets.in_whole_sheets);
    CHECK(in_sheets.end_matter_runs_on == one.arranging.end_matter_runs_on);
    CHECK(in_sheets.is_even_working());
    CHECK(in_sheets.sheets_a_copy().is_whole());
    CHECK(in_sheets.sheets_a_copy() >= bill->sheets_a_copy());
    CHECK(2 * in_sheets.leaves() == one.pages + one.prelim_pages + one.end_pages + in_sheets.blank_pages);

    Wide const overs = up(Wide{one.copies} * (one.overs_percent * Fraction{10}).numerator(), 1000) + one.overplus;
    auto const given_out = one.copies + overs;
    CHECK(bill->overs == overs);
    auto const sum = sum_of(plan, given_out);
    CHECK(bill->sheets.stated == sum.sheets);
    CHECK(plan.formes() == sum.formes);
    CHECK(bill->sheets_a_copy() == Fraction{sum.leaves, sheet});
    CHECK(plan.leaves() == leaves_of(one));
    CHECK(plan.leaves() + one.cancel_leaves <= sum.leaves); // every leaf is printed
    CHECK(2 * plan.leaves() == one.pages + one.prelim_pages + one.end_pages + plan.blank_pages);
    Wide const blank = plan.leaves() - printed_leaves_of(one),
               with_paper = std::max(one.cancel_leaves - blank, Wide{0});
    CHECK(plan.blank_leaves == blank);
    CHECK(bill->sheets.low == up((plan.leaves() + with_paper) * Wide{one.copies}, sheet));
    Wide high = 0;
    for (std::size_t m = 0; m < matters; ++m) high += up(plan.leaves_of[m] * (m == 3 ? 2 : 1), sheet) * given_out;
    CHECK(bill->sheets.high == std::max(high, sum.sheets));

    auto const& work = bill->presswork;
    CHECK(work.impressions == sum.impressions);
    CHECK(work.perfected == sum.perfected);
    auto const impressions = sum.impressions;
    CHECK(work.tokens == Fraction{impressions, one.press.token.impressions});
    CHECK(work.clock_hours == Fraction{impressions * (one.press.crew == Crew::half_press ? 2 : 1), 250});
    CHECK(work.days == work.clock_hours / Fraction{10 * one.press.presses});
    CHECK(work.days_of_pay == work.tokens / Fraction{12});

    CHECK(bill->paper.has_value() == one.ream.has_value());
    if (bill->paper)
      CHECK(bill->paper->reams * one.ream->ream + bill->paper->quires * one.ream->quire + bill->paper->loose ==
            sum.sheets);
    CHECK(bill->reams_to_buy.has_value() == one.ream.has_value());
    if (bill->reams_to_buy) CHECK(*bill->reams_to_buy == Fraction{sum.sheets, one.ream->good});
    CHECK(bill->kilogrammes.has_value() == one.weight_of_ream.has_value());
    if (bill->kilogrammes)
      CHECK(bill->kilogrammes->stated == *one.weight_of_ream * Fraction{sum.sheets, one.ream->ream} / Fraction{1000});
    Wide total = 0;
    CHECK(bill->paper_cost.has_value() == one.price_of_ream.has_value());
    if (bill->paper_cost) {
      CHECK(bill->paper_cost->stated == up(sum.sheets * *one.price_of_ream, one.ream->good));
      CHECK(bill->paper_cost->low == up(Wide{bill->sheets.low} * *one.price_of_ream, one.ream->ream));
      CHECK(bill->paper_cost->high == up(Wide{bill->sheets.high} * *one.price_of_ream, one.ream->good));
      total += bill->paper_cost->stated;
    }
    CHECK(bill->forme_cost.has_value() == one.price_of_forme.has_value());
    if (bill->forme_cost) {
      CHECK(*bill->forme_cost == sum.formes * *one.price_of_forme);
      total += *bill->forme_cost;
    }
    CHECK(bill->press_cost.has_value() == one.price_of_token.has_value());
    if (bill->press_cost) {
      CHECK(*bill->press_cost == up(sum.impressions * *one.price_of_token, one.press.token.impressions));
      total += *bill->press_cost;
    }
    bool const any = one.price_of_ream || one.price_of_forme || one.price_of_token;
    CHECK(bill->total_cost.has_value() == any);
    if (any) {
      auto const paper = bill->paper_cost.value_or(Range<std::int64_t>{});
      CHECK(bill->total_cost ==
            Range<std::int64_t>{total - paper.stated + paper.low, total, total - paper.stated + paper.high});
    }
    (any ? priced : unpriced) += 1;

    // the cost of the plan as an option, before any rounding to a coin
    PrintingOption const option{one, plan};
    CHECK(*cost_of(option, one.copies, CompareBy::sheets) == Fraction{sum.sheets});
    auto cost = Fraction{one.price_of_forme.value_or(0)} * Fraction{sum.formes} +
                Fraction{one.price_of_token.value_or(0)} * work.tokens;
    if (one.price_of_ream) cost += Fraction{*one.price_of_ream} * Fraction{sum.sheets, one.ream->good};
    CHECK(*cost_of(option, one.copies) == cost);
  }
  CHECK(priced > 1000);
  CHECK(unpriced > 200);
}

TEST_CASE("issues made at random add up to one edition, each price there or not") {
  truth::Draw draw{1741};
  for (int round = truth::rounds(300); round > 0; --round) {
    auto const one = edition(draw);
    std::vector<Issue> issues;
    for (auto times = draw.from_to(1, 4); times > 0; --times) {
      auto const other = edition(draw);
      issues.push_back(
          {other.copies, other.overs_percent, other.overplus, other.ream, other.weight_of_ream, other.price_of_ream});
    }
    auto const bill = reckon(one, issues);
    REQUIRE(bill);
    REQUIRE(bill->issues.size() == issues.size());
    Wide sheets = 0, impressions = 0, perfected = 0, cost = 0, least = 0, most = 0;
    bool priced = one.price_of_forme || one.price_of_token;
    for (auto const& issue : bill->issues) {
      sheets += issue.sheets.stated;
      impressions += issue.presswork.impressions;
      perfected += issue.presswork.perfected;
      CHECK_FALSE(issue.forme_cost); // once for all, and not for each
      CHECK_FALSE(issue.press_cost);
      cost += issue.paper_cost ? issue.paper_cost->stated : 0;
      least += issue.paper_cost ? issue.paper_cost->low : 0;
      most += issue.paper_cost ? issue.paper_cost->high : 0;
      priced = priced || issue.paper_cost.has_value();
    }
    CHECK(bill->sheets.stated == sheets);
    CHECK(bill->presswork.impressions == impressions);
    CHECK(bill->presswork.perfected == perfected);
    CHECK(bill->forme_cost.has_value() == one.price_of_forme.has_value());
    CHECK(bill->press_cost.has_value() == one.price_of_token.has_value());
    if (one.price_of_forme) CHECK(*bill->forme_cost == Wide{*one.price_of_forme} * bill->formes);
    if (one.price_of_token)
      CHECK(*bill->press_cost == up(impressions * *one.price_of_token, one.press.token.impressions));
    CHECK(bill->total_cost.has_value() == priced);
    auto const others = bill->forme_cost.value_or(0) + bill->press_cost.value_or(0);
    if (priced) CHECK(bill->total_cost == Range<std::int64_t>{least + others, cost + others, most + others});
  }
}
