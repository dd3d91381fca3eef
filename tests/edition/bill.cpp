// SPDX-License-Identifier: MIT
#include <bifolium/edition.hpp>

#include "check.hpp"

#include <initializer_list>
#include <random>
#include <string>

using namespace bifolium;

TEST_CASE("paper for the customary runs, in perfect reams") {
  // MacKellar, The American Printer (1893): 258, 516, 774, 1032 sheets for 250, 500, 750, 1000 copies; that is 16 over on 500
  int const runs[][2]{{250, 258}, {500, 516}, {750, 774}, {1000, 1032}};
  for (auto const& [copies, sheets] : runs) {
    auto const bill = *reckon({.scheme = schemes::octavo,
                               .pages = 16,
                               .copies = copies,
                               .overs_percent = Fraction{16, 5},
                               .ream = reams::of_516,
                               .press = {.token = tokens::savage}});
    CHECK(bill.sheets.planned == sheets);
    CHECK(bill.presswork.tokens == Fraction{2 * sheets, 258});
    // ... and half-sheets take half
    auto const half =
        *reckon({.scheme = schemes::octavo, .pages = 8, .copies = copies, .overs_percent = Fraction{16, 5}});
    CHECK(half.sheets.planned == sheets / 2);
    CHECK(half.plan.formes() == 1);
  }
}

TEST_CASE("an octavo of 340 pages, 750 copies") {
  constexpr auto bill = reckon(Edition{.scheme = schemes::octavo, .pages = 340, .copies = 750, .ream = reams::of_500});
  STATIC_CHECK(bill->sheets_a_copy() == Fraction{85, 4});
  STATIC_CHECK(bill->plan.formes() == 43);
  STATIC_CHECK(bill->sheets.planned == 21 * 750 + 188); // four copies of the last two leaves to the sheet: 187 1/2
  STATIC_CHECK(bill->paper == PaperCount{31, 17, 13});
  CHECK(working(*bill).find("21 1/4 sheets a copy") != std::string::npos);
}

TEST_CASE("overplus of Babbage's account") {
  // Babbage, On the Economy of Machinery (1832): 52 over on 3,000
  auto const bill = *reckon({.pages = 16, .copies = 3000, .overs_percent = Fraction{5200, 3000}});
  CHECK(bill.overs == 52);
  CHECK(bill.sheets.planned == 3052);
  CHECK(bill.sheets.low == 3000);
}

TEST_CASE("cost is exact in the smallest unit and never falls as the run grows") {
  std::int64_t before = 0;
  for (int copies = 1; copies < 3000; ++copies) {
    auto const bill = *reckon({.scheme = schemes::duodecimo,
                               .pages = 251,
                               .prelim_pages = 9,
                               .copies = copies,
                               .overs_percent = 3,
                               .ream = reams::of_480,
                               .price_of_ream = 3 * 240 + 55});
    REQUIRE(*bill.cost >= before);
    REQUIRE(*bill.low_cost <= *bill.cost);
    REQUIRE(*bill.cost <= *bill.high_cost);
    REQUIRE(bill.sheets.low <= bill.sheets.planned);
    REQUIRE(bill.sheets.planned <= bill.sheets.high);
    REQUIRE(*sheets_in(*bill.paper, reams::of_480) == bill.sheets.planned);
    REQUIRE(Fraction{*bill.cost} >= Fraction{bill.sheets.planned * (3 * 240 + 55), 480});
    REQUIRE(Fraction{*bill.cost - 1} < Fraction{bill.sheets.planned * (3 * 240 + 55), 480});
    before = *bill.cost;
  }
}

TEST_CASE("work at the press by the sources' figures") {
  // Febvre and Martin, The Coming of the Book: 10 hours at 240 make 2400 impressions, 1200 sheets perfected
  auto const day = *presswork(1200, {.rate = rates::frankfurt, .hours_a_day = 10});
  CHECK(day.impressions == 2400);
  CHECK(day.clock_hours == 10);
  CHECK(day.days == 1);
  CHECK(day.pulls() == 4800); // two pulls an impression on a two-pull press
  // Savage (1841), s.v. Hours: twelve tokens are a day's work of account: 12 x 258 impressions
  CHECK(presswork(1548, {.token = tokens::savage})->tokens == 12);
  // Moxon, in Savage s.v. Hours: two men ten quires, one man five
  CHECK(presswork(125, {.crew = Crew::full_press})->clock_hours == 1);
  CHECK(presswork(125, {.crew = Crew::half_press})->clock_hours == 2);
  CHECK(presswork(1200, {.rate = rates::frankfurt, .presses = 3, .hours_a_day = 10})->days == Fraction{1, 3});
}

TEST_CASE("Savage's casting-up table, the cells that were read") {
  // Savage, Dictionary of the Art of Printing (1841): thousands in a sheet of quarto, octavo, twelves, eighteens
  int const table[][6]{
      {15, 12, 1, 3, 4, 6}, {15, 13, 2, 3, 5, 7}, {15, 20, 2, 5, 7, 11}, {16, 14, 2, 4, 5, 8}, {16, 20, 3, 5, 8, 12}};
  int const pages[]{8, 16, 24, 36};
  for (auto const& row : table)
    for (int i = 0; i < 4; ++i) CHECK(*thousands_in_sheet(row[0], row[1], pages[i]) == row[2 + i]);
  // Cowie: 55 lines x 60 ens x 24 pages = 79,200; at 5 1/4d. a thousand 34s. 6 3/4d., printed 34s. 6d. (a misprint)
  CHECK(*thousands_in_sheet(55, 60, 24) == 79);
  CHECK(Fraction{79} * Fraction{21, 4} == Fraction{34 * 12 + 6} + Fraction{3, 4});
}

TEST_CASE("casting off from a sample") {
  // constructed: 90,000 words, nine to the line, thirty lines to the page: 10,000 lines, 333 pages and a third
  auto const result = *cast_off({90'000, 9, 30});
  CHECK(result.lines == 10'000);
  CHECK(result.pages == 334);
  // BMC IA. 52540 and its like: a quarto page of 145 mm in type of 96 mm to twenty lines holds thirty lines (arithmetic;
  // that a quarto page of the time holds about 30 or 31 is common knowledge of the catalogues)
  CHECK(*lines_in_page(1450, 960) == 30);
  CHECK(cast_off({1, 0, 30}).error().problem == Problem::not_positive);
  CHECK(thousands_in_sheet(INT64_MAX, 2, 2).error().problem == Problem::number_too_large);
}

TEST_CASE("what cannot be reckoned is an error value, at the ends of every figure") {
  CHECK(reckon({.pages = -1, .copies = 1}).error().problem == Problem::negative_count);
  CHECK(reckon({.pages = 16, .copies = -1}).error().problem == Problem::negative_count);
  CHECK(reckon({.pages = 16, .copies = 0}).error().problem == Problem::nothing_to_print);
  CHECK(reckon({.pages = 16, .copies = INT64_MAX}).error().problem == Problem::number_too_large);
  CHECK(reckon({.pages = 1'000'000'000'000, .copies = 1'000'000'000'000}).error().problem == Problem::number_too_large);
  CHECK(reckon({.pages = 16, .copies = 1, .overs_percent = -1}).error().problem == Problem::too_many_overs);
  CHECK(reckon({.pages = 16, .copies = 1, .price_of_ream = 10}).error().problem == Problem::ream_needed);
  CHECK(reckon({.pages = 16, .copies = 1, .overs_percent = 101}).error().problem == Problem::too_many_overs);
  CHECK(reckon({.pages = 16, .copies = 1000, .ream = reams::of_500, .price_of_ream = INT64_MAX}).error().problem ==
        Problem::number_too_large);
  CHECK(presswork(INT64_MAX).error().problem == Problem::number_too_large);
  // random figures: an answer that adds up or an error, never anything else
  std::mt19937_64 random{750};
  for (int i = 0; i < 20000; ++i) {
    auto const figure = [&] { return static_cast<std::int64_t>(random() >> (random() % 64)); };
    Edition const edition{.scheme = Attested{static_cast<SchemeRow>(random() % 61)},
                          .pages = figure(),
                          .prelim_pages = figure(),
                          .copies = figure(),
                          .overs_percent = static_cast<std::int64_t>(random() % 101),
                          .ream = reams::of_516};
    auto const bill = reckon(edition);
    if (!bill) continue;
    REQUIRE(bill->sheets.low <= bill->sheets.planned);
    REQUIRE(bill->sheets.planned <= bill->sheets.high);
    REQUIRE(*sheets_in(*bill->paper, reams::of_516) == bill->sheets.planned);
  }
}
