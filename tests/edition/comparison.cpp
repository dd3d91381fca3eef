// SPDX-License-Identifier: MIT
#include <bifolium/core/message.hpp>
#include <bifolium/edition/comparison.hpp>

#include "check.hpp"

#include <algorithm>
#include <random>
#include <vector>

using namespace bifolium;

namespace {

/// Every run in every stretch has that order, the options called equal are equal at every run and no others, and the
/// stretches follow one another and could not be longer.
void check_every_run(std::vector<PrintingOption> const& ways, std::vector<Stretch> const& all, std::int64_t from,
                     std::int64_t to, CompareBy by) {
  auto next = from;
  for (std::size_t i = 0; i < all.size(); ++i) {
    auto const& order = all[i].order;
    REQUIRE(all[i].from == next);
    REQUIRE(all[i].equal.size() == order.size());
    auto named = order;
    std::sort(named.begin(), named.end());
    for (std::size_t k = 0; k < named.size(); ++k) REQUIRE(named[k] == k);
    std::vector<bool> equal(order.size(), true); // to the one before, at every run so far
    std::vector<std::vector<bool>> dearer(order.size(), std::vector<bool>(order.size()));
    std::vector<Fraction> costs(order.size());
    auto const see = [&](std::int64_t copies) {
      for (std::size_t a = 0; a < order.size(); ++a) costs[a] = *cost_of(ways[a], copies, by);
      for (std::size_t a = 0; a < order.size(); ++a)
        for (std::size_t b = 0; b < order.size(); ++b)
          if (costs[a] > costs[b]) dearer[a][b] = true;
    };
    for (; next <= all[i].to; ++next) {
      see(next);
      for (std::size_t k = 1; k < order.size(); ++k) {
        auto const& less = costs[order[k - 1]];
        auto const& more = costs[order[k]];
        REQUIRE(less <= more);
        if (less < more) equal[k] = false;
      }
    }
    for (std::size_t k = 1; k < order.size(); ++k) {
      REQUIRE(all[i].equal[k] == equal[k]);
      if (equal[k]) REQUIRE(order[k - 1] < order[k]);
    }
    if (next > to) break;
    see(next); // one run more, and of some two options each would be dearer somewhere
    bool crossed = false;
    for (std::size_t a = 0; a < order.size(); ++a)
      for (std::size_t b = 0; b < a; ++b) crossed = crossed || (dearer[a][b] && dearer[b][a]);
    REQUIRE(crossed);
  }
  REQUIRE(next == to + 1);
}

} // namespace

TEST_CASE("many formes are dear for a few copies, much paper for many") {
  // constructed: a text of 320 pages in octavo takes 20 sheets and 40 formes; in twelves, set smaller, 13 sheets 26 formes, on
  // paper at twice the price. 40 x 100 + 20 n  =  26 x 100 + 26 n  at n = 1400 / 6 = 233 1/3
  std::vector<PrintingOption> const ways{*printing_option({.scheme = schemes::octavo,
                                                           .pages = 320,
                                                           .ream = reams::of_500,
                                                           .price_of_ream = 500,
                                                           .price_of_forme = 100}),
                                         *printing_option({.scheme = schemes::duodecimo,
                                                           .pages = 312,
                                                           .ream = reams::of_500,
                                                           .price_of_ream = 1000,
                                                           .price_of_forme = 100})};
  auto const all = *compare(ways, 1, 100'000);
  REQUIRE(all.size() == 2);
  CHECK(all[0] == Stretch{1, 233, {1, 0}, {false, false}});
  CHECK(all[1] == Stretch{234, 100'000, {0, 1}, {false, false}});
  CHECK((*compare(ways, 1, 1000, CompareBy::sheets)).front().least() == 1);
}

TEST_CASE("where the order flips is exact, run by run") {
  std::mt19937_64 random{1248};
  SchemeRow const rows[]{SchemeRow::octavo, SchemeRow::duodecimo, SchemeRow::quarto, SchemeRow::octavo_half_sheet,
                         SchemeRow::folio_in_sixes};
  int flips = 0;
  for (int trial = 0; trial < 40; ++trial) {
    std::vector<PrintingOption> ways;
    for (auto row : rows)
      ways.push_back(*printing_option({.scheme = Attested{row},
                                       .pages = 90 + static_cast<std::int64_t>(random() % 120),
                                       .prelim_pages = static_cast<std::int64_t>(random() % 10),
                                       .overs_percent = Fraction{static_cast<std::int64_t>(random() % 60), 10},
                                       .overplus = static_cast<std::int64_t>(random() % 5),
                                       .arranging = {.parts = random() % 2 ? PartWork::turned : PartWork::cut_first},
                                       .ream = reams::of_500,
                                       .price_of_ream = 300 + static_cast<std::int64_t>(random() % 700),
                                       .price_of_forme = static_cast<std::int64_t>(random() % 200),
                                       .price_of_token = static_cast<std::int64_t>(random() % 30)}));
    ways.push_back(ways[0]); // the same again: never before the first
    for (auto by : {CompareBy::cost, CompareBy::sheets}) {
      auto const all = *compare(ways, 1, 1500, by);
      check_every_run(ways, all, 1, 1500, by);
      flips += static_cast<int>(all.size()) - 1;
    }
  }
  CHECK(flips > 40);
}

TEST_CASE("an option that is dearer at odd runs and the same at even ones is never the cheaper") {
  // one half-sheet twice against one sheet: the same paper at even runs, one sheet more at odd ones
  std::vector<PrintingOption> const ways{*printing_option({.scheme = schemes::octavo_half_sheet, .pages = 16}),
                                         *printing_option({.scheme = schemes::octavo, .pages = 16})};
  auto const all = *compare(ways, 1, 20, CompareBy::sheets);
  CHECK(all == std::vector{Stretch{1, 20, {1, 0}, {false, false}}});
  check_every_run(ways, all, 1, 20, CompareBy::sheets);
  auto const even = *compare(ways, 2, 2, CompareBy::sheets);
  CHECK(even == std::vector{Stretch{2, 2, {0, 1}, {false, true}}});
  // begun at a run where they are the same
  CHECK(*compare(ways, 2, 20, CompareBy::sheets) == std::vector{Stretch{2, 20, {1, 0}, {false, false}}});
  // one way given twice is the same throughout, and stays in the order given
  std::vector<PrintingOption> const twice{ways[0], ways[1], ways[1]};
  CHECK(*compare(twice, 1, 20, CompareBy::sheets) == std::vector{Stretch{1, 20, {1, 2, 0}, {false, true, false}}});
}

TEST_CASE("what cannot be compared is an error value") {
  std::vector<PrintingOption> const ways{*printing_option({.pages = 16})};
  CHECK(compare(ways, 1, 10).error().problem == Problem::price_needed);
  // every pair of sets of prices: compared by cost if they are the same set and not empty
  for (int one = 0; one < 8; ++one)
    for (int other = 0; other < 8; ++other) {
      auto const priced = [](Attested scheme, std::int64_t pages, int set) {
        Edition edition{.scheme = scheme, .pages = pages, .ream = reams::of_500};
        if (set & 1) edition.price_of_ream = 10;
        if (set & 2) edition.price_of_forme = 3;
        if (set & 4) edition.price_of_token = 0;
        return *printing_option(edition);
      };
      std::vector const two{priced(schemes::octavo, 320, one), priced(schemes::duodecimo, 288, other)};
      auto const by_cost = compare(two, 1, 10);
      CHECK(by_cost.has_value() == (one == other && one != 0));
      CHECK(prices_alike(two[0].edition, two[1].edition) == (one == other));
      if (one != 0 && other != 0 && one != other) CHECK(by_cost.error().problem == Problem::prices_differ);
      CHECK(compare(two, 1, 10, CompareBy::sheets));
    }
  CHECK(compare({}, 1, 10).error().problem == Problem::list_empty);
  CHECK(compare(ways, 0, 10, CompareBy::sheets).error().problem == Problem::nothing_to_print);
  auto const backwards = compare(ways, 9, 8, CompareBy::sheets).error();
  CHECK(backwards.problem == Problem::range_goes_backwards);
  CHECK(message(backwards) == "'to' must not be less than 9, with which the range begins");
  CHECK(compare(ways, -1, 8, CompareBy::sheets).error().problem == Problem::negative_count);
  CHECK(compare(ways, 1, INT64_MAX, CompareBy::sheets).error().problem == Problem::number_too_large);
  CHECK(printing_option({.pages = -1}).error().problem == Problem::negative_count);
  std::vector<PrintingOption> const dear{
      *printing_option({.pages = 1600, .price_of_forme = INT64_MAX / 400, .price_of_token = 7})};
  CHECK(cost_of(dear[0], INT64_MAX).error().problem == Problem::result_too_large);
  // 200 formes cost all but 407 of what a sum can hold; 250 a token of 250 is one for each of the 200 impressions of a copy
  auto const most = *printing_option({.pages = 1600, .price_of_forme = INT64_MAX / 200 - 2, .price_of_token = 250});
  auto const cheap = *printing_option({.pages = 1600, .price_of_forme = 1, .price_of_token = 0});
  CHECK(cost_of(most, 2) == Fraction{INT64_MAX - 7});
  CHECK(cost_of(most, 3).error().problem == Problem::result_too_large);
  CHECK((*compare({most}, 2, 2)).size() == 1);
  CHECK(compare({most}, 3, 3).error().problem == Problem::result_too_large);
  CHECK(compare({most, cheap}, 3, 3).error().problem == Problem::result_too_large);
  CHECK(compare({cheap, most}, 1, 1000).error().problem == Problem::result_too_large);
  CHECK((*compare({cheap}, 1, 1000)).size() == 1);
  // a way may be changed after it was arranged
  auto without_ream = ways[0];
  without_ream.edition.price_of_ream = 1000;
  CHECK(cost_of(without_ream, 10).error().problem == Problem::ream_needed);
  CHECK(compare({without_ream}, 1, 10).error().problem == Problem::ream_needed);
  auto no_token = ways[0];
  no_token.edition.price_of_token = 7;
  no_token.edition.press.token.impressions = 0;
  CHECK(cost_of(no_token, 10).error().problem == Problem::not_positive);
  CHECK(reckon({.pages = 16, .copies = 10}, Plan{}).error().problem == Problem::nothing_to_print);
}

namespace {
/// Options of which each two change places: what is dear in formes is cheap in paper. Option i costs 1000 - i a copy and
/// i (i + 1) 100 for its two formes, so it becomes the cheapest where there are 200 i copies.
std::vector<PrintingOption> crossing(std::size_t n) {
  std::vector<PrintingOption> all;
  for (std::size_t i = 0; i < n; ++i) {
    auto const place = static_cast<std::int64_t>(i);
    all.push_back(*printing_option({.pages = 16,
                                    .ream = reams::of_500,
                                    .price_of_ream = 500 * (1000 - place),
                                    .price_of_forme = place * (place + 1) * 50}));
  }
  return all;
}
/// Two options of which one is the cheaper for each even number of copies and the other for each odd one: half a sheet that is
/// turned wastes half a sheet (here 10) on an odd copy, and a whole sheet of paper of half the price takes a forme (5) more.
std::vector<PrintingOption> alternating() {
  return {*printing_option({.pages = 8, .ream = reams::of_500, .price_of_ream = 10'000, .price_of_forme = 5}),
          *printing_option({.pages = 16, .ream = reams::of_500, .price_of_ream = 5'000, .price_of_forme = 5})};
}
} // namespace

TEST_CASE("as many options are compared as the function says, and no more") {
  for (std::size_t const n : {1U, 2U, 12U, 32U}) {
    auto const options = crossing(n);
    auto const all = compare(options, 1, 10'000);
    REQUIRE(all);
    CHECK(all->front().least() == 0);
    CHECK(all->back().least() == n - 1);
    CHECK(all->size() <= n * n);
  }
  for (std::size_t const n : {33U, 61U, 1000U}) {
    auto const all = compare(std::vector(n, crossing(1)[0]), 1, 10'000);
    REQUIRE_FALSE(all);
    CHECK(all.error().problem == Problem::too_many_options);
    CHECK(all.error().limit == 32);
    CHECK(found_in(all.error()) == "options");
  }
}

TEST_CASE("an order that changes more often than is kept is an error, and one that does not is kept whole") {
  auto const two = alternating();
  auto const all = compare(two, 1, 1000);
  REQUIRE(all);
  CHECK(all->size() == 1000);
  check_every_run(two, *all, 1, 1000, CompareBy::cost);
  for (std::size_t const places : {2U, 10U, 100U, 1999U, 2000U, 2001U}) {
    detail::Comparer comparer{two, CompareBy::cost, places};
    comparer.walk(1, 1000);
    auto const kept = comparer.found();
    CAPTURE(places);
    REQUIRE(kept.has_value() == (places >= 2000));
    if (kept) {
      CHECK(*kept == *all);
    } else {
      CHECK(kept.error().problem == Problem::too_many_changes_of_order);
      CHECK(kept.error().limit == static_cast<std::int64_t>(places / 2) - 1);
    }
  }
}
