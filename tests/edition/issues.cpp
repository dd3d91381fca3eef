// SPDX-License-Identifier: MIT
#include <bifolium/edition/issues.hpp>
#include <bifolium/edition/standing_type.hpp>
#include <bifolium/imposition/static_impose.hpp>

#include "check.hpp"

using namespace bifolium;

TEST_CASE("two papers from the same formes") {
  // constructed: 501 common and 25 fine copies of ten sheets and a half-sheet; each paper rounds its half-sheets up
  Edition const edition{.scheme = schemes::octavo, .pages = 168, .price_of_forme = 100, .price_of_token = 20};
  auto const bill = *reckon(edition, {{.copies = 501, .ream = reams::of_500, .price_of_ream = 1000},
                                      {.copies = 25, .ream = reams::of_480, .price_of_ream = 3000}});
  REQUIRE(bill.issues.size() == 2);
  CHECK(bill.formes == 21);
  CHECK(bill.issues[0].sheets.stated == 5010 + 251);
  CHECK(bill.issues[1].sheets.stated == 250 + 13);
  CHECK(bill.sheets.stated == 5261 + 263);
  CHECK(bill.presswork.impressions == 2 * (5261 + 263));
  CHECK(bill.forme_cost == 2100); // once
  CHECK(bill.press_cost == Fraction{20 * 2 * 5524, 250}.ceil());
  // of 501 and 25 half-sheets the odd ones are shared in the least: 5010 + 250.5 and 250 + 12.5
  CHECK(bill.total_cost == Range<std::int64_t>{10'522 + 1'644 + 2'100 + 884, 10'522 + 1'644 + 2'100 + 884,
                                               2 * 11 * 501 + Fraction{3000 * 11 * 25, 480}.ceil() + 2'100 + 884});
  CHECK(bill.total_cost->stated ==
        bill.issues[0].paper_cost->stated + bill.issues[1].paper_cost->stated + *bill.forme_cost + *bill.press_cost);
}

TEST_CASE("a price that is given makes a total, whatever the others are") {
  // constructed: 501 copies of ten sheets and a half-sheet are 5010 + 251 sheets and 10522 impressions; 20 a token of 250
  Edition edition{.scheme = schemes::octavo, .pages = 168};
  auto const costs = [&] { return *reckon(edition, {{.copies = 501, .ream = reams::of_500}}); };
  CHECK(!costs().press_cost);
  CHECK(!costs().forme_cost);
  CHECK(!costs().total_cost);
  edition.price_of_token = 20;
  CHECK(costs().press_cost == 842); // 841.76
  CHECK(!costs().forme_cost);
  CHECK(costs().total_cost == Range<std::int64_t>{842, 842, 842});
  CHECK(!costs().issues[0].press_cost); // the formes and the presswork are paid once, for all issues
  edition.price_of_token = 0;
  CHECK(costs().press_cost == 0);
  CHECK(costs().total_cost == Range<std::int64_t>{});
  edition.price_of_token = {};
  edition.price_of_forme = 7;
  CHECK(costs().forme_cost == 147); // 21 formes
  CHECK(costs().total_cost == Range<std::int64_t>{147, 147, 147});
  CHECK(!costs().press_cost);
  edition.price_of_forme = {};
  auto const paper = *reckon(edition, {{.copies = 501, .ream = reams::of_500, .price_of_ream = 1000}});
  CHECK(paper.total_cost->stated == 10'522); // 5261 sheets at two a sheet
  CHECK(paper.total_cost == paper.issues[0].paper_cost);
}

TEST_CASE("issues that cannot be reckoned are error values") {
  Edition edition{.scheme = schemes::octavo, .pages = 168};
  CHECK(reckon(edition, std::vector<Issue>{}).error().problem == Problem::list_empty);
  CHECK(reckon(edition, {{.copies = 0}}).error().problem == Problem::nothing_to_print);
  CHECK(reckon(edition, {{.copies = -1}}).error().problem == Problem::negative_count);
  CHECK(reckon(edition, {{.copies = 1, .overplus = -1}}).error().problem == Problem::negative_count);
  auto const many = INT64_MAX / 30;
  CHECK(reckon(edition, {{.copies = many}, {.copies = many}, {.copies = many}, {.copies = many}}).error().problem ==
        Problem::result_too_large);
  edition.price_of_forme = -1;
  CHECK(reckon(edition, {{.copies = 1}}).error().problem == Problem::negative_count);
  CHECK(found_in(reckon(edition, {{.copies = 1}}).error()) == "price_of_forme");
  edition.price_of_forme = INT64_MAX;
  CHECK(reckon(edition, {{.copies = 1}}).error().problem == Problem::result_too_large);
  edition.price_of_forme = {};
  edition.price_of_token = -1;
  CHECK(reckon(edition, {{.copies = 1}}).error().problem == Problem::negative_count);
  CHECK(found_in(reckon(edition, {{.copies = 1}}).error()) == "price_of_token");
  CHECK(reckon(edition, {{.copies = 1}}).error().limit == -1);
  edition.price_of_token = INT64_MAX;
  CHECK(reckon(edition, {{.copies = 501}}).error().problem == Problem::result_too_large);
}

TEST_CASE("type that stands before the first forme can be printed") {
  // Bosquet, Guide manuel de l'ouvrier relieur (1903): the inner side of a quarto has 2 7 below and 3 6 above; set in order it
  // is full with page 7, one before the outer
  STATIC_CHECK(first_forme_in_order(impose<schemes::quarto>()) == FormeType{0, Side::inner, 4, 7, 7, 3});
  // an octavo half-sheet has one forme with all its pages
  CHECK(first_forme_in_order(impose<schemes::octavo_half_sheet>()).set_in_order == 8);
  // a folio in sixes: the inner forme of the innermost sheet holds 6 and 7
  auto const sixes = first_forme_in_order(impose<schemes::folio_in_sixes>());
  CHECK(sixes.pages == 2);
  CHECK(sixes.last_page == 7);
  CHECK(sixes.set_in_order == 7);
}

TEST_CASE("quired folios set by formes need the whole gathering cast off") {
  // Cowie, Printer's Pocket-book: the two pages of a forme add up to the pages of the quire and one more
  auto const eights = impose(*fold(schemes::folio_in_eights.scheme()));
  int most = 0;
  for (int sheet = 0; sheet < eights.sheets(); ++sheet)
    for (auto side : {Side::outer, Side::inner}) {
      auto const type = forme_type(eights, sheet, side);
      CHECK(type.pages == 2);
      int sum = 0;
      for (auto standing : eights.forme(side, sheet)) sum += standing.page;
      CHECK(sum == 17);
      CHECK(type.set_in_order == type.last_page);
      CHECK(type.cast_off_pages == type.last_page - 2);
      most = type.cast_off_pages > most ? type.cast_off_pages : most;
    }
  CHECK(most == 14); // for 1 and 16: every other page of the gathering
  CHECK(*FormeType::ens(2, 55, 60) == 6600);
  CHECK(FormeType::ens(INT64_MAX, 2, 1).error().problem == Problem::result_too_large);
  CHECK(FormeType::ens(1, -1, 1).error().problem == Problem::negative_count);
}
