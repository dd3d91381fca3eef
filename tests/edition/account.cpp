// SPDX-License-Identifier: MIT
#include <bifolium/edition.hpp>

#include "check.hpp"

#include <cstdint>
#include <ostream>
#include <random>
#include <vector>

using namespace bifolium;

namespace {

Plan octavo(std::int64_t pages, Arranging how = {}) {
  return *arrange(make_up(*fold(schemes::octavo.scheme())), {.text = pages}, how);
}

} // namespace

TEST_CASE("paper for customary numbers of copies leads back to them") {
  // MacKellar, The American Printer (1893): paper for 250, 500, 750 and 1000 copies of a sheet is 258, 516, 774 and 1032
  // sheets, which are half, one, one and a half and two perfect reams of 516; the overs are 16 on 500 (Savage 1841)
  struct {
    Fraction reams;
    std::int64_t copies;
  } const rows[]{{{1, 2}, 250}, {1, 500}, {{3, 2}, 750}, {2, 1000}};
  Edition const edition{.overs_percent = Fraction{16, 5}};
  for (auto const& row : rows) {
    auto const found = *copies_of_account(edition, octavo(16), {row.reams});
    REQUIRE(found.size() == 4);
    CHECK(found[3].ream == reams::of_516);
    CHECK(found[3].most == row.copies); // the whole of the last unit is used
    CHECK(found[3].overs_most == row.copies * 8 / 250);
    CHECK(found[3].sheets.high == row.copies + row.copies * 8 / 250);
    CHECK(found[1].most < row.copies); // a smaller ream gives fewer
  }
}

TEST_CASE("the copies of an account are those that take its paper, and no others") {
  std::mt19937 generator{1841};
  auto const draw = [&](std::int64_t below) { return static_cast<std::int64_t>(generator()) % below; };
  std::size_t agreeing = 0, without = 0;
  for (int round = 0; round < 400; ++round) {
    Edition const edition{.overs_percent = Fraction{draw(11), 2}, .overplus = draw(3)};
    auto const plan = octavo(16 + draw(120), {.parts = draw(2) == 0 ? PartWork::turned : PartWork::cut_first});
    PaperOfAccount paper{.reams = draw(6)};
    if (round % 3 != 0) paper.quires = draw(20);
    if (round % 3 == 2) paper.loose = draw(24);
    if (round % 5 == 0 && !paper.quires) paper.reams = Fraction{1 + draw(11), 4};
    auto const found = copies_of_account(edition, plan, paper);
    if (!found) {
      CHECK(paper.reams == Fraction{});
      CHECK(found.error().problem == Problem::not_positive);
      continue;
    }
    std::vector<std::int64_t> taken; // sheets of 1, 2, 3 ... copies
    for (std::int64_t copies = 1; copies <= 4000; ++copies) {
      auto const overs = (Fraction{copies} * edition.overs_percent / Fraction{100}).ceil() + edition.overplus;
      taken.push_back(*plan.sheets_for(copies + overs));
    }
    std::size_t next = 0;
    for (auto const& ream : reams_of_accounts) {
      // in plain arithmetic: the last unit that the account names is started
      auto const amount = [&](std::int64_t of_ream) {
        return paper.reams * Fraction{of_ream} +
               Fraction{paper.quires.value_or(0) * ream.quire + paper.loose.value_or(0)};
      };
      CHECK(sheets_stated(paper, ream) == amount(ream.ream).floor());
      auto const unit = paper.loose    ? Fraction{1}
                        : paper.quires ? Fraction{ream.quire}
                                       : Fraction{ream.good, paper.reams.denominator()};
      // sheets are whole, so that what lies between two of them does not count
      auto const above = (amount(ream.good) - unit).floor(), most = amount(ream.ream).floor();
      std::vector<std::int64_t> agree;
      for (std::int64_t copies = 1; copies <= 4000; ++copies)
        if (auto const sheets = taken[static_cast<std::size_t>(copies - 1)]; sheets > above && sheets <= most)
          agree.push_back(copies);
      if (agree.empty()) {
        CHECK((next == found->size() || (*found)[next].ream != ream));
        ++without;
        continue;
      }
      REQUIRE(next < found->size());
      auto const& one = (*found)[next++];
      CHECK(one.ream == ream);
      CHECK(one.least == agree.front());
      CHECK(one.most == agree.back());
      CHECK(agree.size() == static_cast<std::size_t>(one.most - one.least + 1));
      ++agreeing;
    }
    CHECK(next == found->size());
  }
  CHECK(agreeing > 500);
  CHECK(without > 100);
}

TEST_CASE("an account that cannot be read backwards is an error value") {
  auto const plan = octavo(16);
  CHECK(copies_of_account({}, plan, {}).error().problem == Problem::not_positive);
  CHECK(copies_of_account({}, plan, {.reams = -1}).error().problem == Problem::negative_count);
  CHECK(copies_of_account({}, plan, {.reams = 1, .quires = -1}).error().problem == Problem::negative_count);
  CHECK(copies_of_account({}, plan, {.reams = 1, .loose = -1}).error().problem == Problem::negative_count);
  CHECK(copies_of_account({}, plan, {.reams = Fraction{1, 2}, .quires = 1}).error().problem == Problem::not_a_number);
  CHECK(copies_of_account({}, plan, {.reams = INT64_MAX}).error().problem == Problem::result_too_large);
  CHECK(copies_of_account({}, plan, {.reams = 100'000'000'000'000}).error().problem == Problem::result_too_large);
  CHECK(copies_of_account({}, Plan{}, {.reams = 1}).error().problem == Problem::nothing_to_print);
  CHECK(copies_of_account({.overs_percent = -1}, plan, {.reams = 1}).error().problem == Problem::too_many_overs);
  std::vector<ReamCount> const none{ReamCount{}};
  CHECK(copies_of_account({}, plan, {.reams = 1}, none).error().problem == Problem::not_positive);
  // a ream and a sheet exactly, for copies of two sheets each: an odd number by no ream
  std::vector<ReamCount> const usual{reams::of_480, reams::of_500, reams::of_516};
  CHECK((*copies_of_account({}, octavo(32), {.reams = 1, .loose = 1}, usual)).empty());
  CHECK((*copies_of_account({}, octavo(32), {.reams = 1, .loose = 2}, usual)).size() == 3);
  for (auto const& wrong : {PaperOfAccount{},
                            {.reams = -1},
                            {.reams = 1, .quires = -1},
                            {.reams = 1, .loose = -1},
                            {.reams = Fraction{1, 2}, .quires = 1},
                            {.reams = INT64_MAX}})
    CHECK(sheets_stated(wrong, reams::of_516).error().problem == copies_of_account({}, plan, wrong).error().problem);
}

TEST_CASE("the copies that some sheets print are those for which one copy more takes more") {
  Edition const editions[]{
      {}, {.overs_percent = Fraction{32, 10}}, {.overplus = 7}, {.overs_percent = 5, .overplus = 1}};
  for (std::int64_t pages : {2, 16, 20, 44, 333})
    for (auto const& edition : editions) {
      auto const plan = octavo(pages);
      auto const taken = [&](std::int64_t copies) { // in plain arithmetic
        auto const overs = (Fraction{copies} * edition.overs_percent / Fraction{100}).ceil() + edition.overplus;
        return *plan.sheets_for(copies + overs);
      };
      std::int64_t most = 0;
      for (std::int64_t sheets = 0; sheets < 300; ++sheets) {
        while (taken(most + 1) <= sheets) ++most;
        CHECK(copies_within(edition, plan, sheets) == most);
      }
    }
  auto const plan = octavo(16);
  CHECK(copies_within({}, plan, -1).error().problem == Problem::negative_count);
  CHECK(copies_within({}, Plan{}, 1).error().problem == Problem::nothing_to_print);
  CHECK(copies_within({.overs_percent = -1}, plan, 1).error().problem == Problem::too_many_overs);
  CHECK(copies_within({}, plan, INT64_MAX).error().problem == Problem::result_too_large);
}

TEST_CASE("a plan of sheets without one in it takes no paper, so that no account is of its copies") {
  for (int leaves = 1; leaves <= 128; ++leaves) { // any number of copies would take the same paper: none
    Plan none;
    none.leaves_to_sheet = leaves;
    REQUIRE(none.sheets_for(750) == 0);
    for (auto const& edition : {Edition{}, Edition{.overs_percent = 5}, Edition{.overplus = 7}}) {
      auto const of_account = copies_of_account(edition, none, {.reams = 2});
      REQUIRE_FALSE(of_account);
      CHECK(of_account.error().problem == Problem::nothing_to_print);
      CHECK(found_in(of_account.error()) == "plan");
      for (std::int64_t const sheets : {0, 1, 1000}) {
        auto const within = copies_within(edition, none, sheets);
        REQUIRE_FALSE(within);
        CHECK(within.error().problem == Problem::nothing_to_print);
        CHECK(found_in(within.error()) == "plan");
      }
    }
  }
}

#ifdef __SIZEOF_INT128__
namespace {
__extension__ typedef __int128 Int;

/// The sheets of `copies` copies and their overs, in numbers that do not end at 64 bits.
Int sheets_of_copies(Edition const& edition, Plan const& plan, Int copies) {
  auto const up = [](Int above, Int below) { return above / below + (above % below > 0 ? 1 : 0); };
  Int const given_out = copies +
                        up(copies * edition.overs_percent.numerator(), Int{100} * edition.overs_percent.denominator()) +
                        edition.overplus;
  Int all = 0;
  for (auto const& working : plan) all += up(given_out * working.leaves, plan.leaves_to_sheet) * working.times;
  return all;
}
/// The greatest number of copies, up to the last that is searched, that take at most so many sheets.
std::int64_t greatest_within(Edition const& edition, Plan const& plan, Int sheets) {
  Int low = 0, high = 1'000'000'000'000;
  while (low < high) {
    auto const middle = low + (high - low + 1) / 2;
    if (sheets_of_copies(edition, plan, middle) <= sheets)
      low = middle;
    else
      high = middle - 1;
  }
  return static_cast<std::int64_t>(low);
}
/// Overs whose share of the copies seldom fits in two numbers of 64 bits, and customary ones.
Fraction draw_percent(std::mt19937_64& draw) {
  constexpr std::int64_t below[]{
      1, 2, 3, 1000, 1'000'000'000, 999'999'937, 1'000'000'000'000, 4'611'686'018'427'387'847};
  auto const divisor = below[draw() % 8];
  auto const most = Fraction{100} <= Fraction{INT64_MAX, divisor} ? 100 * divisor : INT64_MAX;
  return {static_cast<std::int64_t>(draw() % static_cast<std::uint64_t>(most)), divisor};
}
} // namespace

TEST_CASE("copies of large accounts are those of plain arithmetic, whatever the share of overs") {
  std::mt19937_64 draw{1842};
  int found_some = 0, too_large = 0, far = 0;
  for (int round = 0; round < 300; ++round) {
    Edition const edition{.overs_percent = draw_percent(draw),
                          .overplus = draw() % 3 == 0 ? static_cast<std::int64_t>(draw() >> (2 + draw() % 60)) : 0};
    auto const plan = octavo(static_cast<std::int64_t>(2 + draw() % 120));
    auto const reams = static_cast<std::int64_t>(draw() >> (1 + draw() % 62)) / 500;
    CAPTURE(edition.overs_percent);
    CAPTURE(edition.overplus);
    CAPTURE(reams);
    auto const of_one = edition.overplus; // what one copy takes must fit before anything is searched
    Edition one = edition;
    one.copies = 1;
    bool const sound = reckon(one, plan).has_value();
    if (!sound) CHECK(of_one > INT64_MAX / 1000);
    auto const within = copies_within(edition, plan, reams * 500);
    auto const truth = greatest_within(edition, plan, Int{reams} * 500);
    bool const searched = sound && truth < 1'000'000'000'000;
    REQUIRE(within.has_value() == searched);
    if (within) CHECK(*within == truth);
    if (!within) CHECK(within.error().problem == Problem::result_too_large);
    too_large += within ? 0 : 1;
    far += within && *within > 1'000'000 ? 1 : 0;
    if (reams == 0) continue;
    std::vector<ReamCount> const by{reams::of_500};
    auto const copies = copies_of_account(edition, plan, {.reams = reams}, by);
    REQUIRE(copies.has_value() == searched);
    if (!copies) continue;
    auto const least = greatest_within(edition, plan, Int{reams - 1} * 500) + 1;
    REQUIRE(copies->empty() == (truth < least));
    if (copies->empty()) continue;
    ++found_some;
    auto const& row = copies->front();
    CHECK(row.least == least);
    CHECK(row.most == truth);
    CHECK(row.sheets == Range<std::int64_t>{(reams - 1) * 500 + 1, reams * 500, reams * 500});
    auto const overs = [&](std::int64_t number) {
      return sheets_of_copies(edition, octavo(16), number) - number; // a copy of one sheet
    };
    CHECK(Int{row.overs_least} == overs(row.least));
    CHECK(Int{row.overs_most} == overs(row.most));
  }
  CHECK(found_some > 50);
  CHECK(too_large > 10);
  CHECK(far > 30);
}

TEST_CASE("more sheets are never for fewer copies") {
  std::mt19937_64 draw{1843};
  for (int round = 0; round < 12; ++round) {
    Edition const edition{.overs_percent = draw_percent(draw)};
    auto const plan = octavo(static_cast<std::int64_t>(2 + draw() % 120));
    std::int64_t before = 0;
    for (std::int64_t sheets = 1; sheets < INT64_MAX / 3; sheets = sheets * 2 + static_cast<std::int64_t>(draw() % 3)) {
      auto const here = copies_within(edition, plan, sheets);
      if (!here) break;
      CHECK(*here >= before);
      before = *here;
    }
  }
}

TEST_CASE("a bill for which the sheets fit in 64 bits is found, whatever the share of overs") {
  std::mt19937_64 draw{1844};
  int found_some = 0;
  for (int round = 0; round < 500; ++round) {
    Edition edition{.overs_percent = draw_percent(draw), .overplus = static_cast<std::int64_t>(draw() % 20)};
    edition.copies = 1 + static_cast<std::int64_t>(draw() >> (1 + draw() % 62));
    auto const plan = octavo(static_cast<std::int64_t>(2 + draw() % 120));
    auto const sheets = sheets_of_copies(edition, plan, edition.copies);
    auto const bill = reckon(edition, plan);
    CAPTURE(edition.overs_percent);
    CAPTURE(edition.copies);
    if (bill) {
      CHECK(Int{bill->sheets.stated} == sheets);
      ++found_some;
    } else {
      CHECK(sheets > Int{INT64_MAX} / 1000); // impressions, hours and what is printed on whole sheets must fit as well
    }
  }
  CHECK(found_some > 250);
}
#endif
