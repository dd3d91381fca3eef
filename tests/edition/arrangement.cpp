// SPDX-License-Identifier: MIT
#include <bifolium/edition.hpp>

#include "check.hpp"
#include "edition/make_up_of.hpp"
#include "edition/press_law.hpp"
#include "true_book.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <utility>
#include <vector>

using namespace bifolium;

namespace {

/// The fewest formes by trying everything, one working after another: parts of one matter, and shared workings as often
/// and as unequal as the rule allows. What was tried once is remembered.
class Trial {
  using Rests = std::array<int, matters>;
  SheetMakeUp by_;
  Sharing sharing_;
  std::map<std::pair<Rests, bool>, int> known_{};

  static void shares_of(int room, Rests const& rests, bool cancels, std::size_t m, Rests& now,
                        std::vector<Rests>& all) {
    if (m == matters) {
      if (room == 0) all.push_back(now);
      return;
    }
    for (int share = 0; share <= std::min(room, rests[m]); ++share) {
      if (m == 3 ? share > 0 && !cancels : share % 2 != 0) continue;
      now[m] = share;
      shares_of(room - share, rests, cancels, m + 1, now, all);
    }
    now[m] = 0;
  }

public:
  Trial(SheetMakeUp const& by, Sharing sharing) : by_{by}, sharing_{sharing} {}

  int formes(Rests const& rests, bool shared = false) {
    if (rests == Rests{}) return 0;
    if (auto const found = known_.find({rests, shared}); found != known_.end()) return found->second;
    int best = 10000;
    for (int part = 1; part <= by_.leaves_to_sheet; ++part) {
      if (by_.leaves_to_sheet % part != 0) continue;
      // one forme prints both sides only if the sheet has an even number of copies; else there are two (by arithmetic)
      auto const cost = by_.leaves_to_sheet / part % 2 == 0 ? 1 : 2;
      for (std::size_t m = 0; m < matters; ++m)
        if (rests[m] >= part && (m == 3 || part % 2 == 0)) {
          auto left = rests;
          left[m] -= part;
          best = std::min(best, cost + formes(left, shared));
        }
      if (sharing_ == Sharing::none || (sharing_ == Sharing::once && shared)) continue;
      std::vector<Rests> all;
      Rests now{};
      shares_of(part, rests, sharing_ == Sharing::once, 0, now, all);
      for (auto const& shares : all) {
        std::vector<int> used;
        for (auto share : shares)
          if (share != 0) used.push_back(share);
        bool const equal = std::all_of(used.begin(), used.end(), [&](int share) { return share == used[0]; });
        if (used.size() < 2 || (equal && sharing_ == Sharing::once)) continue;
        auto left = rests;
        for (std::size_t m = 0; m < matters; ++m) left[m] -= shares[m];
        best = std::min(best, cost + formes(left, true));
      }
    }
    return known_[{rests, shared}] = best;
  }
};

} // namespace

TEST_CASE("the make-up of a scheme is read off its fold") {
  STATIC_CHECK(make_up(fold<schemes::octavo>()).leaves_to_sheet == 8);
  STATIC_CHECK(make_up(fold<schemes::octavo_half_sheet>()).leaves() == 4);
  CHECK(of("12_8_plus_4").gathering_count == 2);
  CHECK(of("2_quired_8s").leaves() == 8);
  CHECK(of("2_quired_8s").leaves_to_sheet == 2);
  CHECK(of("4_quarto_in_6s").leaves() == 6); // the second copy of its half-sheet is not counted
  CHECK(of("18_half_sheet_9_transposed").leaves() == 9);
}

TEST_CASE("the twelves whose preliminaries and last gathering make one sheet") {
  // Bowers, Studies in Bibliography 1 (1948), p. 199: 12°: π⁴ A-N¹² O⁸ is fourteen sheets
  Pages const sandys{.text = 2 * (13 * 12 + 8), .preliminaries = 8};
  auto const plan = *arrange(of("12_common"), sandys);
  CHECK(plan.sheets_a_copy() == 14);
  REQUIRE(plan.shares_a_sheet());
  CHECK(plan.shared()->shares == std::array<std::uint8_t, 4>{4, 8, 0, 0});
  CHECK_FALSE(plan.is_even_working());
  CHECK(plan.formes() == 28);
  CHECK(plan.gatherings == 15);
  CHECK(plan.blank_pages == 0);
  auto const apart = *arrange(of("12_common"), sandys, {.sharing = Sharing::none});
  CHECK(apart.sheets_a_copy() == 14);
  CHECK(apart.formes() == 26 + 2 + 2); // four leaves, three copies to the sheet; six and two of the eight
}

TEST_CASE("sheets of whole books that the sources state") {
  // Comedias sueltas glossary: quarto A-E⁴, 5 sheets; DCRM-L (Noble, 26 Apr 2010): folio A¹⁰, 5 sheets; DCRM-L (Lancaster, 20 Nov
  // 2012): quarto A¹⁰, two and a half; an octavo alphabet is 23 sheets, 368 pages (Bernard, Geofroy Tory, 1909)
  CHECK(arrange(of("4_quarto"), {40, 0})->sheets_a_copy() == 5);
  CHECK(arrange(of("2_folio"), {20, 0})->sheets_a_copy() == 5);
  CHECK(arrange(of("4_quarto"), {20, 0})->sheets_a_copy() == Fraction{5, 2});
  CHECK(arrange(of("8_octavo"), {368, 0})->sheets_a_copy() == 23);
}

TEST_CASE("half-sheets take half the paper, and an odd copy a sheet of its own") {
  // Moxon; Savage (1841), s.v. Half Sheet: N copies of a half-sheet take N/2 sheets
  auto const plan = *arrange(of("8_octavo"), {8, 0});
  CHECK(plan.sheets_a_copy() == Fraction{1, 2});
  CHECK(plan.formes() == 1);
  CHECK(plan.sheets_for(500) == 250);
  CHECK(plan.sheets_for(501) == 251);
  CHECK(plan.sheets_for(INT64_MAX) == INT64_MAX / 2 + 1);
  CHECK_FALSE((*arrange(of("8_octavo"), {32, 0})).sheets_for(INT64_MAX)); // of two sheets each
}

TEST_CASE("no way of arranging takes less paper or, at that paper, fewer formes") {
  for (auto id : {"2_folio", "4_quarto", "6_sexto", "8_octavo", "12_common", "16_two_8s", "18_12_plus_6"}) {
    CAPTURE(id);
    auto const by = of(id);
    auto const n = by.leaves_to_sheet;
    for (auto sharing : {Sharing::none, Sharing::once, Sharing::freely}) {
      CAPTURE(static_cast<int>(sharing));
      Trial trial{by, sharing};
      for (int text = 2; text <= 2 * n; text += 2)
        for (int preliminaries = 0; preliminaries < n; preliminaries += 2)
          for (int end = 0; end < n; end += 2)
            for (int cancels = 0; cancels < (n <= 8 ? n : 4); ++cancels) {
              if (cancels > text + preliminaries + end) continue; // as many leaves as there are can be cancelled
              auto const plan = *arrange(by, {2 * text, 2 * preliminaries, 2 * end, cancels}, {.sharing = sharing});
              CAPTURE(text);
              CAPTURE(preliminaries);
              CAPTURE(end);
              CAPTURE(cancels);
              REQUIRE(plan.sheets_a_copy() == Fraction{text + preliminaries + end + cancels, n}); // no less is possible
              REQUIRE(plan.formes() == 2 * (text / n) + trial.formes({preliminaries, text % n, end, cancels}));
            }
    }
  }
}

TEST_CASE("what is kept of the make-up of a scheme is what its fold makes") { // tests/fold compares folds with sources
  for (auto const scheme : Attested::all()) {
    CAPTURE(scheme.id());
    CHECK(make_up(scheme) == make_up(*fold(scheme.scheme())));
  }
}

TEST_CASE("in every scheme each page has its place, and each leaf its paper") {
  for (int row = 0; row < Attested::count; ++row) {
    auto const by = make_up(*fold(Attested{static_cast<SchemeRow>(row)}.scheme()));
    CAPTURE(row);
    REQUIRE(by.workings * by.leaves_to_press() + by.half_workings * by.leaves_to_press() / 2 == by.leaves());
    for (int text = 1; text <= 4 * by.leaves_to_sheet + 3; ++text)
      for (int preliminaries : {0, 1, 4, 13})
        for (auto sharing : {Sharing::none, Sharing::once, Sharing::freely}) {
          auto const plan =
              *arrange(by, {.text = text, .preliminaries = preliminaries, .end_matter = preliminaries / 2},
                       {.sharing = sharing});
          REQUIRE(plan.leaves() * 2 == text + preliminaries + preliminaries / 2 + plan.blank_pages);
          REQUIRE(plan.blank_pages <= 9);
          REQUIRE(plan.sheets_a_copy() == Fraction{plan.leaves(), by.leaves_to_sheet});
          REQUIRE(Fraction{*plan.sheets_for(100)} >= plan.sheets_a_copy() * Fraction{100});
          for (auto const& working : plan)
            if (working.is_shared()) {
              int sum = 0;
              for (auto share : working.shares) sum += share;
              REQUIRE(sum == working.leaves);
              REQUIRE((sharing == Sharing::freely || !working.is_equally_shared()));
            }
        }
  }
}

TEST_CASE("preliminaries and end matter of equal length share a sheet only where that is asked for") {
  // Bowers, Studies in Bibliography 1: only "of an unequal number of leaves", else positive evidence is wanted
  Pages const pages{
      .text = 16, .preliminaries = 4, .end_matter = 4}; // two leaves each: quarter-sheets, or one half-sheet
  auto const apart = *arrange(of("8_octavo"), pages);
  CHECK_FALSE(apart.shares_a_sheet());
  CHECK(apart.formes() == 4);
  auto const together = *arrange(of("8_octavo"), pages, {.sharing = Sharing::freely});
  CHECK(together.formes() == 3);
  CHECK(together.shared()->is_equally_shared());
  // run on, the end matter fills a half-sheet with nothing else
  CHECK(arrange(of("8_octavo"), {.text = 16, .end_matter = 4}, {.end_matter_runs_on = true})->gatherings == 2);
}

TEST_CASE("twelves gathered in eights and fours") {
  // Voet, The Golden Compasses II, App. 8: duodecimo sheets of sixteen pages and eight
  auto const plan = *arrange(of("12_8_plus_4"), {.text = 24 * 10});
  CHECK(plan.gatherings == 20);
  CHECK(plan.sheets_a_copy() == 10);
  CHECK(plan.is_even_working());
}

TEST_CASE("an even working leaves nothing over") {
  STATIC_CHECK(even_working(make_up(fold<schemes::octavo>()), 340) == EvenWorking{4, 12});
  STATIC_CHECK(even_working(make_up(fold<schemes::octavo>()), 352) == EvenWorking{0, 0});
  CHECK(arrange(of("8_octavo"), {.text = 352})->is_even_working());
  CHECK_FALSE(arrange(of("8_octavo"), {.text = 340})->is_even_working());
  CHECK(arrange(of("8_octavo"), {.text = 336})->sheets_a_copy() == 21);
}

TEST_CASE("the four kinds of half-sheet are kept apart") {
  // Tanselle, Studies in Bibliography 53, note 65; Moxon and Savage: half-sheet work, N copies from N/2 sheets
  auto const octavo = of("8_octavo");
  auto const turned = *arrange(octavo, {.text = 8});
  CHECK(turned.half_sheet(*turned.begin()) == HalfSheet::turned);
  CHECK(turned.formes() == 1);
  CHECK(turned.sheets_for(500) == 250);
  CHECK(turned.impressions_for(500) == 500);
  CHECK(turned.sheets_for(501) == 251);
  auto const cut = *arrange(octavo, {.text = 8}, {.parts = PartWork::cut_first});
  CHECK(cut.half_sheet(*cut.begin()) == HalfSheet::cut_first);
  CHECK(cut.formes() == 2);
  CHECK(cut.sheets_for(500) == 250);
  CHECK(cut.impressions_for(500) == 1000);
  auto const two = *arrange(octavo, {.text = 8, .preliminaries = 8}, {.sharing = Sharing::freely});
  CHECK(two.sheets_a_copy() == 1);
  CHECK(two.formes() == 2);
  // Studies in Bibliography 59: a half-sheet worked with four odd leaves, cancels and a title
  auto const odd = *arrange(octavo, {.text = 8, .cancel_leaves = 3});
  CHECK(odd.sheets_a_copy() == Fraction{7, 8});
  Plan worked_with_leaves;
  worked_with_leaves.leaves_to_sheet = 8;
  worked_with_leaves.add({1, 8, Working::Kind::sheet, {0, 4, 0, 4}});
  CHECK(worked_with_leaves.half_sheet(*worked_with_leaves.begin()) == HalfSheet::with_odd_leaves);
  CHECK(worked_with_leaves.half_sheet({1, 8, Working::Kind::sheet, {4, 4, 0, 0}}) == HalfSheet::two_worked_together);
  CHECK(worked_with_leaves.sheets_for(501) == 501);
  // a scheme that is a half-sheet by itself: every gathering of an odd run wastes half a sheet
  auto const scheme = *arrange(of("8_half_sheet"), {.text = 48});
  CHECK(scheme.formes() == 6);
  CHECK(scheme.sheets_for(500) == 1500);
  CHECK(scheme.sheets_for(501) == 6 * 251);
}

TEST_CASE("the formes of every plan print the pages of the copies, in every scheme") { // by arithmetic
  truth::Draw draw{1841};
  int settings = 0;
  for (int round = truth::rounds(1500); round > 0; --round)
    for (auto const scheme : Attested::all()) {
      Pages const pages{.text = draw.from_to(1, 700),
                        .preliminaries = draw.one_in(2) ? 0 : draw.from_to(1, 40),
                        .end_matter = draw.one_in(2) ? 0 : draw.from_to(1, 40),
                        .cancel_leaves = draw.one_in(2) ? 0 : draw.from_to(1, 5)};
      Arranging const how{draw.of<Sharing>({Sharing::none, Sharing::once, Sharing::freely}),
                          draw.one_in(3) ? PartWork::cut_first : PartWork::turned, draw.one_in(3)};
      auto const plan = arrange(make_up(scheme), pages, how);
      if (!plan) continue; // more cancels than leaves
      CAPTURE(scheme.id());
      CAPTURE(pages.text);
      std::int64_t blank_sides = 0;
      for (auto const& working : *plan) {
        if (working.kind == Working::Kind::one_side) blank_sides += working.times;
        settings += plan->settings(working) > 1 ? 1 : 0;
        if (how.parts == PartWork::cut_first && scheme.row() != SchemeRow::broadside)
          CHECK((working.kind == Working::Kind::sheet || working.kind == Working::Kind::cut_first));
      }
      press_law::check(*plan, press_law::even_copies(*plan, draw.from_to(1, 40)), blank_sides);
      press_law::check(*plan, draw.from_to(1, 3000), blank_sides);
    }
  CHECK(settings > 1000);
}

TEST_CASE("parts of less than half a sheet have their pages set again, and a third takes two formes") {
  // Savage (1841), s.v. Half Sheet: a half-sheet has one forme, two copies to the sheet. What is smaller fills the places of
  // the formes by arithmetic: 8 places of an octavo are twice the 4 pages of a quarter; 12 places of a duodecimo are not so many
  // times the 8 pages of a third, and three times the 4 pages of each of its sides
  struct {
    char const* id;
    std::int64_t pages, formes, sheets, impressions;
    int settings;
  } const rows[]{{"8_octavo", 8, 1, 500, 1000, 1},    {"8_octavo", 4, 1, 250, 500, 2},
                 {"12_common", 12, 1, 500, 1000, 1},  {"12_common", 8, 2, 334, 668, 3},
                 {"12_common", 4, 1, 167, 334, 3},    {"18_12_plus_6", 12, 2, 334, 668, 3},
                 {"18_12_plus_6", 4, 2, 112, 224, 9}, {"24_two_12s", 16, 2, 334, 668, 3},
                 {"16_two_8s", 8, 1, 250, 500, 2},    {"6_sexto", 4, 2, 334, 668, 3}};
  for (auto const& row : rows) {
    CAPTURE(row.id);
    CAPTURE(row.pages);
    auto const plan = *arrange(of(row.id), {.text = row.pages});
    REQUIRE(plan.size() == 1);
    CHECK(plan.formes() == row.formes);
    CHECK(plan.sheets_for(1000) == row.sheets);
    CHECK(plan.impressions_for(1000) == row.impressions);
    CHECK(plan.settings(*plan.begin()) == row.settings);
    auto const cut = *arrange(of(row.id), {.text = row.pages}, {.parts = PartWork::cut_first});
    CHECK(cut.formes() == 2);
    CHECK(cut.impressions_for(1000) == 2000);
    CHECK(cut.settings(*cut.begin()) == 1);
  }
  // a leaf to cancel, eight copies to the sheet: four settings of its two pages
  auto const cancel = *arrange(of("8_octavo"), {.text = 16, .cancel_leaves = 1});
  CHECK(cancel.settings(*(cancel.begin() + 1)) == 4);
  CHECK(cancel.impressions_for(1000) == 2000 + 250);
  CHECK_THROWS_AS(static_cast<void>(Working::kind_of(5, 8, PartWork::turned)), BrokenPrecondition);
  CHECK_THROWS_AS(static_cast<void>(cancel.settings(Working{})), BrokenPrecondition);
  STATIC_CHECK(Working::kind_of(2, 8, PartWork::turned) == Working::Kind::turned);
  STATIC_CHECK(Working::kind_of(2, 6, PartWork::turned) == Working::Kind::repeated);
  STATIC_CHECK(Working::kind_of(2, 6, PartWork::cut_first) == Working::Kind::cut_first);
}

TEST_CASE("a broadside is printed on one side where it has one page") { // common practice, no source
  auto const broadside = of("1_broadside");
  struct {
    std::int64_t pages, sheets, formes, impressions, perfected;
  } const rows[]{{1, 1, 1, 1, 0}, {2, 1, 2, 2, 1}, {3, 2, 3, 3, 1}, {4, 2, 4, 4, 2}};
  for (auto const& row : rows)
    for (auto sharing : {Sharing::none, Sharing::once, Sharing::freely}) {
      auto const plan = *arrange(broadside, {.text = row.pages}, {.sharing = sharing});
      CHECK(plan.sheets_a_copy() == row.sheets);
      CHECK(plan.formes() == row.formes);
      CHECK(plan.sheets_for(500) == 500 * row.sheets);
      CHECK(plan.impressions_for(500) == 500 * row.impressions);
      CHECK(plan.perfected_for(500) == 500 * row.perfected);
      CHECK(plan.blank_pages == row.pages % 2);
      CHECK(plan.is_even_working());
      CHECK(arrange_in_whole_sheets(broadside, {.text = row.pages})->formes() == row.formes);
    }
  // a page of each of three matters is three broadsides, each with a blank side
  auto const three = *arrange(broadside, {.text = 1, .preliminaries = 1, .end_matter = 1});
  CHECK(three.formes() == 3);
  CHECK(three.impressions_for(10) == 30);
  // run on, the end matter is on the back of the text
  CHECK(arrange(broadside, {.text = 1, .end_matter = 1}, {.end_matter_runs_on = true})->formes() == 2);
  auto const bill = *reckon({.scheme = schemes::broadside, .pages = 1, .copies = 500, .price_of_forme = 7});
  CHECK(bill.presswork.impressions == 500);
  CHECK(bill.presswork.perfected == 0);
  CHECK(bill.forme_cost == 7);
  CHECK(bill.sheets == Range<std::int64_t>{500, 500, 500});
  CHECK((*reckon({.scheme = schemes::broadside, .pages = 1}, {{.copies = 300}, {.copies = 200}})).presswork.perfected ==
        0);
}

TEST_CASE("plans are ranked by paper, then by formes") {
  auto const all = *plans(of("12_common"), {.text = 328, .preliminaries = 8});
  REQUIRE(all.size() == 3);
  CHECK(all[0].shares_a_sheet());
  CHECK(all[0].formes() < all[1].formes());
  CHECK(all[1].sheets_a_copy() < all[2].sheets_a_copy());
  CHECK(all[2].blank_pages == 24);
  auto const with_end = *plans(of("8_octavo"), {.text = 100, .preliminaries = 5, .end_matter = 7});
  for (std::size_t i = 1; i < with_end.size(); ++i) {
    CHECK(with_end[i - 1].sheets_a_copy() <= with_end[i].sheets_a_copy());
    CHECK_FALSE(with_end[i - 1] == with_end[i]);
  }
}

TEST_CASE("what cannot be arranged is an error value") {
  CHECK(arrange(of("8_octavo"), {-1, 0}).error().problem == Problem::negative_count);
  CHECK(arrange(of("8_octavo"), {0, 0}).error().problem == Problem::nothing_to_print);
  CHECK(arrange(of("8_octavo"), {.cancel_leaves = 4}).error().problem == Problem::nothing_to_print);
  for (auto figure : {INT64_MIN, std::int64_t{-1}}) {
    CHECK(arrange(of("8_octavo"), {.text = 1, .preliminaries = figure}).error().problem == Problem::negative_count);
    CHECK(arrange(of("8_octavo"), {.text = 1, .end_matter = figure}).error().problem == Problem::negative_count);
    CHECK(arrange(of("8_octavo"), {.text = 1, .cancel_leaves = figure}).error().problem == Problem::negative_count);
  }
  CHECK(arrange(of("8_octavo"), {.text = 1, .preliminaries = INT64_MAX}).error().problem == Problem::number_too_large);
  CHECK(arrange(of("8_octavo"), {.text = 1, .end_matter = INT64_MAX}).error().problem == Problem::number_too_large);
  CHECK(arrange(of("8_octavo"), {.text = 1, .cancel_leaves = INT64_MAX}).error().problem == Problem::number_too_large);
  CHECK(arrange(of("8_octavo"), {INT64_MAX, 0}).error().problem == Problem::number_too_large);
  // a cancel takes the place of a leaf, so there are at most as many as leaves with a page on them
  for (auto const& [pages, leaves] : {std::pair{Pages{.text = 16}, 8},
                                      {Pages{.text = 15}, 8},
                                      {Pages{.text = 1}, 1},
                                      {Pages{.text = 1, .preliminaries = 1, .end_matter = 1}, 3},
                                      {Pages{.text = 30, .preliminaries = 3, .end_matter = 5}, 20}}) {
    auto wrong = pages;
    wrong.cancel_leaves = leaves;
    for (auto const runs_on : {false, true}) {
      auto const more = leaves - (runs_on && pages.text % 2 != 0 && pages.end_matter % 2 != 0 ? 1 : 0);
      wrong.cancel_leaves = more;
      CHECK(arrange(of("8_octavo"), wrong, {.end_matter_runs_on = runs_on}));
      CHECK(arrange_in_whole_sheets(of("8_octavo"), wrong, {.end_matter_runs_on = runs_on}));
      ++wrong.cancel_leaves;
      for (auto const& error :
           {arrange(of("8_octavo"), wrong, {.end_matter_runs_on = runs_on}).error(),
            arrange_in_whole_sheets(of("8_octavo"), wrong, {.end_matter_runs_on = runs_on}).error()}) {
        CHECK(error.problem == Problem::too_many_cancels);
        CHECK(error.found_text() == "cancel_leaves");
        CHECK(error.limit == more);
      }
    }
  }
}

TEST_CASE("blank leaves are those without a page of their matter") { // leaves and pages counted by hand
  auto const octavo = of("8_octavo");
  struct {
    Pages pages;
    std::int64_t blank_pages, blank_leaves, in_sheets;
  } const rows[]{{{.text = 16}, 0, 0, 0},
                 {{.text = 15}, 1, 0, 0},
                 {{.text = 14}, 2, 1, 1},
                 {{.text = 13}, 3, 1, 1},
                 {{.text = 9}, 3, 1, 3},
                 {{.text = 16, .preliminaries = 1}, 3, 1, 7},
                 {{.text = 15, .preliminaries = 3}, 2, 0, 6}, // a blank page in each of two matters is no blank leaf
                 {{.text = 14, .preliminaries = 6, .end_matter = 1}, 7, 3, 1 + 5 + 7}};
  for (auto const& row : rows) {
    CAPTURE(row.pages.text);
    CAPTURE(row.pages.preliminaries);
    auto const plan = *arrange(octavo, row.pages);
    CHECK(plan.blank_pages == row.blank_pages);
    CHECK(plan.blank_leaves == row.blank_leaves);
    CHECK(arrange_in_whole_sheets(octavo, row.pages)->blank_leaves == row.in_sheets);
  }
}

TEST_CASE("parts of a sheet divide it, and are even unless the leaves are single") {
  // worked by hand
  using Parts = std::vector<int>;
  CHECK(parts_of_sheet(0, 8) == Parts{});
  CHECK(parts_of_sheet(6, 8) == Parts{4, 2});
  CHECK(parts_of_sheet(10, 12) == Parts{6, 4});
  CHECK(parts_of_sheet(4, 12) == Parts{4});    // two formes, as two parts of two leaves have, but one part
  CHECK(parts_of_sheet(8, 12) == Parts{6, 2}); // not 4 and 4: four formes
  CHECK(parts_of_sheet(8, 12, false, PartWork::cut_first) == Parts{6, 2});
  CHECK(parts_of_sheet(12, 24) == Parts{12});
  CHECK(parts_of_sheet(5, 8, true) == Parts{4, 1});
  CHECK(parts_of_sheet(7, 8, true) == Parts{4, 2, 1});
  CHECK_FALSE(parts_of_sheet(2, 9));
  CHECK(parts_of_sheet(2, 9, true) == Parts{1, 1});
  CHECK_THROWS_AS(static_cast<void>(parts_of_sheet(8, 8)), BrokenPrecondition);

  // A sheet of three leaves, a pair with one inside: eight leaves are two sheets and two leaves over, which no part holds,
  // so that they take a third sheet.
  auto const three = make_up(*fold(*read_scheme("scheme three 3°\nsheet S rows 1 columns 3 long-side left-right\n"
                                                "cut S column 2 pair one\nfold pair right-over-left 1\n"
                                                "gathering A pair one\n")));
  CHECK(three.leaves_to_sheet == 3);
  for (auto const& [leaves, sheets] : {std::pair{6, 2}, {8, 3}, {10, 4}, {12, 4}}) {
    auto const plan = arrange(three, {.text = 2 * leaves});
    REQUIRE(plan);
    CAPTURE(leaves);
    CHECK(plan->sheets_a_copy() == Fraction{sheets});
  }
}
