// SPDX-License-Identifier: MIT
#include <bifolium/core/message.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/explain.hpp>

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
    CHECK(bill.sheets.stated == sheets);
    CHECK(bill.presswork.tokens == Fraction{2 * sheets, 258});
    // ... and half-sheets take half
    auto const half =
        *reckon({.scheme = schemes::octavo, .pages = 8, .copies = copies, .overs_percent = Fraction{16, 5}});
    CHECK(half.sheets.stated == sheets / 2);
    CHECK(half.plan.formes() == 1);
  }
}

TEST_CASE("an octavo of 340 pages, 750 copies") {
  constexpr auto bill = reckon(Edition{.scheme = schemes::octavo, .pages = 340, .copies = 750, .ream = reams::of_500});
  STATIC_CHECK(bill->sheets_a_copy() == Fraction{85, 4});
  STATIC_CHECK(bill->plan.formes() == 43);
  STATIC_CHECK(bill->sheets.stated == 21 * 750 + 188); // four copies of the last two leaves to the sheet: 187 1/2
  STATIC_CHECK(bill->paper == PaperCount{31, 17, 13});
  CHECK(working(*bill).find("21 1/4 sheets a copy") != std::string::npos);
}

TEST_CASE("overplus of Babbage's account") {
  // Babbage, On the Economy of Machinery (1832): 52 over on 3,000
  auto const bill = *reckon({.pages = 16, .copies = 3000, .overs_percent = Fraction{5200, 3000}});
  CHECK(bill.overs == 52);
  CHECK(bill.sheets.stated == 3052);
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
    REQUIRE(bill.paper_cost->stated >= before);
    REQUIRE(bill.paper_cost->low <= bill.paper_cost->stated);
    REQUIRE(bill.paper_cost->stated <= bill.paper_cost->high);
    REQUIRE(bill.sheets.low <= bill.sheets.stated);
    REQUIRE(bill.sheets.stated <= bill.sheets.high);
    REQUIRE(*sheets_in(*bill.paper, reams::of_480) == bill.sheets.stated);
    REQUIRE(Fraction{bill.paper_cost->stated} >= Fraction{bill.sheets.stated * (3 * 240 + 55), 480});
    REQUIRE(Fraction{bill.paper_cost->stated - 1} < Fraction{bill.sheets.stated * (3 * 240 + 55), 480});
    before = bill.paper_cost->stated;
  }
}

TEST_CASE("work at the press by the sources' figures") {
  // Febvre and Martin, The Coming of the Book: 10 hours at 240 make 2400 impressions, 1200 sheets perfected
  auto const day = *presswork(1200, {.rate = rates::frankfurt, .hours_a_day = 10});
  CHECK(day.impressions == 2400);
  CHECK(day.clock_hours == 10);
  CHECK(day.days == 1);
  CHECK(day.perfected == 1200);
  CHECK(day.pulls() == 4800); // two pulls an impression on a two-pull press
  CHECK_FALSE(Presswork{INT64_MAX, 0, {}, {}, {}, {}}.pulls());
  CHECK_FALSE(day.pulls(0));
  // Savage (1841), s.v. Hours: twelve tokens are a day's work of account: 12 x 258 impressions
  CHECK(presswork(1548, {.token = tokens::savage})->tokens == 12);
  CHECK(presswork(1548, {.token = tokens::savage})->impressions == 3096);
  CHECK(presswork(1548, {.token = tokens::savage})->days_of_pay == 1);
  CHECK(presswork(1548, {.token = tokens::savage, .tokens_a_day = 4})->days_of_pay == 3); // fine work
  // Moxon, in Savage s.v. Hours: ten quires, of 24 or of 25; Savage, s.v. Token: half a perfect ream
  CHECK(token_with(reams::of_480) == tokens::moxon_24);
  CHECK(token_with(reams::from_mill) == tokens::moxon_24);
  CHECK(token_with(reams::of_500) == tokens::moxon_25);
  CHECK(2 * token_with(reams::of_516).impressions == reams::of_516.ream);
  for (auto const* ream : detail::ream_counts)
    if (ream->quire == 24 && *ream != reams::of_516) CHECK(token_with(*ream).impressions == 10 * ream->quire);
  CHECK(presswork(1548, {.crew = static_cast<Crew>(200)}).error().problem == Problem::no_such_value);
  // Moxon, in Savage s.v. Hours: two men ten quires, one man five
  CHECK(presswork(125, {.crew = Crew::full_press})->clock_hours == 1);
  CHECK(presswork(125, {.crew = Crew::half_press})->clock_hours == 2);
  CHECK(presswork(1200, {.rate = rates::frankfurt, .presses = 3, .hours_a_day = 10})->days == Fraction{1, 3});
}

TEST_CASE("a bill adds up, cancels, weight and money included") {
  Edition const edition{.scheme = schemes::octavo,
                        .pages = 340,
                        .prelim_pages = 12,
                        .end_pages = 4,
                        .cancel_leaves = 3,
                        .copies = 750,
                        .overs_percent = 2,
                        .overplus = 5,
                        .ream = reams::of_500,
                        .weight_of_ream = Fraction{7'500},
                        .price_of_ream = 1200,
                        .price_of_forme = 60,
                        .price_of_token = 16};
  auto const bill = *reckon(edition);
  CHECK(bill.overs == 20);
  CHECK(bill.sheets_a_copy() == Fraction{170 + 6 + 2 + 3, 8});
  CHECK(bill.total_cost->stated == bill.paper_cost->stated + *bill.forme_cost + *bill.press_cost);
  CHECK(bill.total_cost->low == bill.paper_cost->low + *bill.forme_cost + *bill.press_cost);
  CHECK(bill.total_cost->high == bill.paper_cost->high + *bill.forme_cost + *bill.press_cost);
  CHECK(bill.reams_to_buy == Fraction{bill.sheets.stated, 500});
  CHECK(bill.forme_cost == 60 * bill.plan.formes());
  CHECK(bill.kilogrammes->stated == Fraction{bill.sheets.stated * 15, 1000});
  CHECK(bill.sheets.low == 22 * 750 + 469); // 178 leaves and 3 cancels, no overs: 22 5/8 sheets
  CHECK(bill.sheets.high == (22 + 1 + 1 + 1) * 770);
  auto const text = working(bill);
  CHECK(text.find("3 cancels") != std::string::npos);
  CHECK(text.find("together " + std::to_string(bill.total_cost->stated) + " (" + std::to_string(bill.total_cost->low) +
                  " to " + std::to_string(bill.total_cost->high) + ")\n") != std::string::npos);
  CHECK(*formula_of(bill) == "8°: π⁶ A-X⁸ Y² Z²");
  // the mill's ream has 432 good sheets of 472 (Savage 1841): the others are paid for
  auto mill = edition;
  mill.ream = reams::from_mill;
  auto const dearer = *reckon(mill);
  CHECK(dearer.paper_cost->stated == Fraction{dearer.sheets.stated * 1200, 432}.ceil());
  CHECK(dearer.paper_cost->low == Fraction{dearer.sheets.low * 1200, 472}.ceil());
  CHECK(dearer.reams_to_buy == Fraction{dearer.sheets.stated, 432});
  CHECK(dearer.paper->reams == dearer.sheets.stated / 472);
  mill.ream = {}, mill.weight_of_ream = {}, mill.price_of_ream = {};
  CHECK_FALSE(reckon(mill)->reams_to_buy);
}

TEST_CASE("a part of a ream costs its part of the price") { // 1000 · 1 / 500 = 2
  auto const bill =
      *reckon({.scheme = schemes::octavo, .pages = 16, .copies = 1, .ream = reams::of_500, .price_of_ream = 1000});
  CHECK(bill.sheets.stated == 1);
  CHECK(bill.paper_cost == Range<std::int64_t>{2, 2, 2});
  CHECK(bill.total_cost == Range<std::int64_t>{2, 2, 2});
  CHECK(bill.reams_to_buy == Fraction{1, 500});
}

TEST_CASE("the least paper has cancels on the blank leaves of the book, and on no others") { // by hand, an octavo
  auto const sheets = [](std::int64_t pages, std::int64_t cancels) {
    return reckon({.scheme = schemes::octavo, .pages = pages, .cancel_leaves = cancels, .copies = 1000})->sheets;
  };
  CHECK(sheets(160, 0) == Range<std::int64_t>{10'000, 10'000, 10'000});
  CHECK(sheets(160, 2) == Range<std::int64_t>{10'250, 10'250, 11'000}); // 82 leaves, and none is blank
  CHECK(sheets(159, 2).low == 10'250);                                  // a blank page is no blank leaf
  CHECK(sheets(158, 2) == Range<std::int64_t>{10'125, 10'250, 11'000}); // one of two on the blank leaf
  CHECK(sheets(158, 1) == Range<std::int64_t>{10'000, 10'125, 11'000});
  CHECK(sheets(157, 1).low == 10'000);
  CHECK(sheets(16, 8) == Range<std::int64_t>{2'000, 2'000, 3'000}); // every leaf anew
  auto const lines = [](std::int64_t pages, std::int64_t cancels) {
    return working(*reckon({.scheme = schemes::octavo, .pages = pages, .cancel_leaves = cancels, .copies = 1000}));
  };
  CHECK(lines(160, 2).find("2 cancels counted as paper of its own, several to the sheet\n") != std::string::npos);
  CHECK(lines(158, 2).find("several to the sheet; only 1 where blank leaves are used\n") != std::string::npos);
  CHECK(lines(158, 1).find("several to the sheet; none where blank leaves are used\n") != std::string::npos);
  // more than there are leaves, where the pages are given and where the plan is
  auto const error = reckon({.pages = 16, .cancel_leaves = 100, .copies = 1000}).error();
  CHECK(error.problem == Problem::too_many_cancels);
  CHECK(error.limit == 8);
  CHECK(sentence_of(error).find("'cancel_leaves' must be at most 8, the leaves of the book") != std::string::npos);
  Plan plan = reckon({.pages = 16, .copies = 1})->plan;
  plan.leaves_of[3] = 8;
  CHECK(reckon({.copies = 1}, plan));
  plan.leaves_of[3] = 9;
  CHECK(reckon({.copies = 1}, plan).error().problem == Problem::too_many_cancels);
  plan.leaves_of[3] = 0;
  plan.blank_leaves = -1;
  CHECK(reckon({.copies = 1}, plan).error().problem == Problem::negative_count);
}

TEST_CASE("a ream is named by its sheets where it has no name") { // 1000 = 2 · 500
  auto const line = [](ReamCount const& ream) {
    auto const text = working(*reckon({.pages = 16, .copies = 1000, .ream = ream}));
    auto const from = text.find("  2 reams");
    return text.substr(from, text.find('\n', from) - from);
  };
  CHECK(line(ReamCount{500, 25}) == "  2 reams, 0 quires, 0 sheets, by the ream: 500 in quires of 25");
  CHECK(line(reams::of_500) == "  2 reams, 0 quires, 0 sheets, by the ream of 500: 500 in quires of 25");
  CHECK(line(reams::rame) == "  2 reams, 0 quires, 0 sheets, by the rame: 500 in quires of 25");
  auto nameless = reams::of_500;
  nameless.name = nullptr;
  CHECK(line(nameless) == line(ReamCount{500, 25}));
}

TEST_CASE("a ream that cannot be is refused wherever sheets are counted by it") {
  auto const plan = reckon({.pages = 16, .copies = 1})->plan;
  PaperOfAccount const account{.reams = 1};
  struct {
    ReamCount ream;
    Problem problem;
  } const rows[]{{{}, Problem::not_positive},
                 {{0, 25, 500}, Problem::not_positive},
                 {{500, 0}, Problem::not_positive},
                 {{500, -25}, Problem::not_positive},
                 {{500, 25, 0}, Problem::not_positive},
                 {{10, 25}, Problem::quire_above_ream}, // the numbers in the wrong order
                 {{24, 25}, Problem::quire_above_ream},
                 {{INT32_MAX - 1, INT32_MAX}, Problem::quire_above_ream},
                 {{500, 25, 501}, Problem::too_many_good_sheets}};
  for (auto const& [ream, problem] : rows) {
    CAPTURE(ream.ream);
    CAPTURE(ream.quire);
    for (auto const& error :
         {reckon({.pages = 16, .copies = 1, .ream = ream}).error(), reckon({.copies = 1, .ream = ream}, plan).error(),
          reckon({.pages = 16}, {{.copies = 1, .ream = ream}}).error(), sheets_in({1, 0, 0}, ream).error(),
          sheets_stated(account, ream).error(), copies_of_account({}, plan, account, {{ream}}).error(),
          copies_within({.ream = ream}, plan, 1).error()}) {
      CHECK(error.problem == problem);
      CHECK(error.found_text() == "ream");
      if (problem != Problem::not_positive) CHECK(error.limit == ream.ream);
    }
    CHECK_THROWS_AS(static_cast<void>(counted(1, ream)), BrokenPrecondition);
    CHECK_THROWS_AS(static_cast<void>(reams_to_buy(1, ream)), BrokenPrecondition);
  }
  for (auto const& ream : {ReamCount{1, 1}, ReamCount{25, 25}, ReamCount{472, 24, 432}, ReamCount{26, 25, 1}})
    CHECK(reckon({.pages = 16, .copies = 1, .ream = ream}));
}

TEST_CASE("paper cut before printing takes a pull for every copy") {
  // Tanselle, Studies in Bibliography 53, note 65: "a very different matter" from half-sheet work
  Edition edition{.scheme = schemes::octavo, .pages = 8, .copies = 501};
  auto const turned = *reckon(edition);
  edition.arranging.parts = PartWork::cut_first;
  auto const cut = *reckon(edition);
  CHECK(turned.sheets.stated == 251);
  CHECK(cut.sheets.stated == 251);
  CHECK(turned.presswork.impressions == 502);
  CHECK(cut.presswork.impressions == 1002);
}

TEST_CASE("an error about the pages of an edition names the field of the edition") {
  auto const field = [](Edition const& edition) { return found_in(reckon(edition).error()); };
  CHECK(field({.copies = 1}) == "pages");
  for (std::int64_t const wrong : {std::int64_t{-1}, INT64_MAX}) { // too small, too large
    CHECK(field({.pages = wrong, .copies = 1}) == "pages");
    CHECK(field({.prelim_pages = wrong, .copies = 1}) == "prelim_pages");
    CHECK(field({.end_pages = wrong, .copies = 1}) == "end_pages");
    CHECK(field({.cancel_leaves = wrong, .copies = 1}) == "cancel_leaves");
  }
}

TEST_CASE("what cannot be reckoned is an error value, at the ends of every figure") {
  CHECK(reckon({.pages = -1, .copies = 1}).error().problem == Problem::negative_count);
  CHECK(reckon({.pages = 16, .copies = -1}).error().problem == Problem::negative_count);
  CHECK(reckon({.pages = 16, .copies = 0}).error().problem == Problem::nothing_to_print);
  CHECK(reckon({.pages = 16, .copies = INT64_MAX}).error().problem == Problem::result_too_large);
  CHECK(reckon({.pages = 1'000'000'000'000, .copies = 1'000'000'000'000}).error().problem == Problem::result_too_large);
  CHECK(reckon({.pages = 16, .copies = 1, .overs_percent = -1}).error().problem == Problem::too_many_overs);
  CHECK(reckon({.pages = 16, .copies = 1, .price_of_ream = 10}).error().problem == Problem::ream_needed);
  CHECK(reckon({.pages = 16, .copies = 1, .overs_percent = 101}).error().problem == Problem::too_many_overs);
  CHECK(reckon({.pages = 16, .copies = 1000, .ream = reams::of_500, .price_of_ream = INT64_MAX}).error().problem ==
        Problem::result_too_large);
  // every figure in turn: too large, and less than zero
  using Set = void (*)(Edition&, std::int64_t);
  Set const figures[]{
      [](Edition& e, std::int64_t n) { e.pages = n; },         [](Edition& e, std::int64_t n) { e.prelim_pages = n; },
      [](Edition& e, std::int64_t n) { e.end_pages = n; },     [](Edition& e, std::int64_t n) { e.cancel_leaves = n; },
      [](Edition& e, std::int64_t n) { e.copies = n; },        [](Edition& e, std::int64_t n) { e.overplus = n; },
      [](Edition& e, std::int64_t n) { e.price_of_ream = n; }, [](Edition& e, std::int64_t n) { e.price_of_forme = n; },
      [](Edition& e, std::int64_t n) { e.price_of_token = n; }};
  for (auto set : figures) {
    Edition edition{.pages = 160, .copies = 1000, .ream = reams::of_500};
    set(edition, INT64_MAX);
    auto const error = reckon(edition).error();
    // too many pages are refused as they are given, the other figures in what is computed from them
    bool const is_of_pages = error.problem == Problem::number_too_large && !error.found_text().empty();
    CHECK((error.problem == Problem::result_too_large || is_of_pages));
    for (auto below : {std::int64_t{-1}, INT64_MIN}) {
      set(edition, below);
      CHECK(reckon(edition).error().problem == Problem::negative_count);
    }
  }
  for (auto const& [edition, name] : {std::pair{Edition{.pages = 16, .copies = -1}, "copies"},
                                      {Edition{.pages = 16, .copies = 1, .overplus = -1}, "overplus"},
                                      {Edition{.pages = 16, .copies = 1, .price_of_ream = -1}, "price_of_ream"},
                                      {Edition{.pages = 16, .copies = 1, .price_of_forme = -1}, "price_of_forme"},
                                      {Edition{.pages = 16, .copies = 1, .price_of_token = -1}, "price_of_token"}})
    CHECK(found_in(reckon(edition).error()) == name);
  Edition heavy{.pages = 160, .copies = 1000000, .ream = reams::of_500, .weight_of_ream = Fraction{INT64_MAX}};
  CHECK(reckon(heavy).error().problem == Problem::result_too_large);
  heavy.weight_of_ream = Fraction{};
  CHECK(reckon(heavy).error().problem == Problem::not_positive);
  heavy.weight_of_ream = 1;
  // overs of less than a copy are a copy, however little less than one they are
  heavy.overs_percent = Fraction{1, 1'000'000};
  auto const of_one_copy = *reckon(heavy);
  heavy.overs_percent = Fraction{1, INT64_MAX};
  CHECK((*reckon(heavy)).sheets.stated == of_one_copy.sheets.stated);
  heavy.overs_percent = 0;
  CHECK((*reckon(heavy)).sheets.stated < of_one_copy.sheets.stated);
  // each count of a ream, and no more good sheets in it than sheets
  auto const of_ream = [](ReamCount const& ream) { return reckon({.pages = 16, .copies = 1000, .ream = ream}); };
  for (auto const wrong : {0, -1})
    for (auto const& ream : {ReamCount{wrong, 25, 500}, ReamCount{500, wrong}, ReamCount{500, 25, wrong}}) {
      CHECK(of_ream(ream).error().problem == Problem::not_positive);
      CHECK(found_in(of_ream(ream).error()) == "ream");
    }
  CHECK(of_ream({1, 1})->paper == PaperCount{1000, 0, 0});
  CHECK(of_ream({500, 25, 500}));
  CHECK(of_ream({500, 25, 501}).error().problem == Problem::too_many_good_sheets);
  CHECK(of_ream({500, 25, 501}).error().limit == 500);
  CHECK(reckon({.pages = 16, .copies = 1000, .overs_percent = 100})->overs == 1000);
  PressTerms const wrong_terms[]{
      {.token = {0, ""}}, {.rate = {-1, ""}}, {.presses = 0}, {.hours_a_day = -1}, {.tokens_a_day = 0}};
  for (auto const& terms : wrong_terms)
    CHECK(reckon({.pages = 16, .copies = 1, .press = terms}).error().problem == Problem::not_positive);
  CHECK(presswork(-1).error().problem == Problem::negative_count);
  CHECK(presswork(INT64_MAX).error().problem == Problem::result_too_large);
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
    REQUIRE(bill->sheets.low <= bill->sheets.stated);
    REQUIRE(bill->sheets.stated <= bill->sheets.high);
    REQUIRE(*sheets_in(*bill->paper, reams::of_516) == bill->sheets.stated);
  }
}
