// SPDX-License-Identifier: MIT
#include <bifolium/book/formula_plan.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/edition/plan_formula.hpp>

#include "data.hpp"
#include "edition/press_law.hpp"
#include "true_book.hpp"

#include <doctest/doctest.h>
#include <map>
#include <random>
#include <string>

using namespace bifolium;

namespace {

Plan plan(char const* text, Sharing sharing = Sharing::none) {
  auto const formula = read_formula(text);
  REQUIRE(formula);
  auto const found = plan_of(*formula, {.sharing = sharing});
  REQUIRE(found);
  return *found;
}
/// Workings by their leaves: how often, kind left aside.
std::map<int, std::int64_t> by_leaves(Plan const& plan) {
  std::map<int, std::int64_t> all;
  for (auto const& working : plan) all[working.leaves] += working.times;
  return all;
}
using Times = std::map<int, std::int64_t>;

} // namespace

TEST_CASE("the gatherings of a formula go to press as it has them") { // common practice, no source
  // ten sheets, a half-sheet of preliminaries, a half-sheet at the end
  auto const octavo = plan("8°: π⁴ A-K⁸ L⁴");
  CHECK(by_leaves(octavo) == Times{{8, 10}, {4, 2}});
  CHECK(octavo.formes() == 22);
  CHECK(octavo.gatherings == 12);
  CHECK(octavo.leaves_of == std::array<std::int64_t, matters>{4, 84, 0, 0});
  CHECK(octavo.sheets_for(500) == 10 * 500 + 2 * 250);
  CHECK(octavo.impressions_for(500) == 10 * 1000 + 2 * 500);
  // folio in sixes: three sheets to the gathering; quarto in eights: two
  CHECK(by_leaves(plan("2°: A-C⁶")) == Times{{2, 9}});
  CHECK(by_leaves(plan("4°: A-C⁸ D²")) == Times{{4, 6}, {2, 1}});
  // twelves: one sheet makes a gathering of 8 and one of 4
  CHECK(by_leaves(plan("12°: A-D⁸/⁴ E⁸")) == Times{{12, 2}, {6, 1}, {2, 1}});
  CHECK(by_leaves(plan("12°: A-D⁸/⁴ E⁴")) == Times{{12, 2}, {4, 1}});
  // in octavo the same counts are sheets and half-sheets
  CHECK(by_leaves(plan("8°: A-D⁸/⁴")) == Times{{8, 2}, {4, 2}});
  // a deleted leaf was printed; a leaf in two places was printed once
  CHECK(by_leaves(plan("8°: A-B⁸ C⁴(−C4)")) == Times{{8, 2}, {4, 1}});
  CHECK(plan("8°: A-B⁸ C⁴(−C4)").leaves() == 19);
  CHECK(plan("8°: π1(=C4) A-B⁸ C⁴(−C4)").sheets_a_copy() == Fraction{5, 2});
  // two cancels are a quarter of a sheet; a cancel and an inserted leaf too
  auto const cancels = plan("8°: A-B⁸(±A3, ±B5)");
  CHECK(by_leaves(cancels) == Times{{8, 2}, {2, 1}});
  CHECK(cancels.leaves_of == std::array<std::int64_t, matters>{0, 16, 0, 2});
  CHECK(cancels.blank_leaves == 0);
  CHECK(plan("8°: A-B⁸ (A1 blank, B8 blank; ±A3)").blank_leaves == 2);
  CHECK(plan("8°: A-B⁸ (A1 blank, B8 blank; ±A3)").blank_pages == 4);
  CHECK(plan("8°: A-B⁸ (−B8 blank)").blank_leaves == 0); // it is no leaf of the book
  CHECK(by_leaves(plan("8°: A⁸(±A3, A5+χ1)")) == Times{{8, 1}, {2, 1}});
  CHECK(by_leaves(plan("8°: A⁸(A4+χ⁴) B⁸")) == Times{{8, 2}, {4, 1}});
  // preliminaries and last gathering fill one sheet: inferred, and only where sharing is allowed
  auto const shared = plan("8°: π² A-K⁸ L⁶", Sharing::once);
  CHECK(by_leaves(shared) == Times{{8, 11}});
  REQUIRE(shared.shared());
  CHECK(shared.shared()->shares == std::array<std::uint8_t, matters>{2, 6, 0, 0});
  CHECK(shared.formes() == 22);
  CHECK(by_leaves(plan("8°: π² A-K⁸ L⁶")) == Times{{8, 10}, {4, 1}, {2, 2}});
}

TEST_CASE("a copy takes the sheets that the paper of its formula states, and its bill adds up") {
  std::int64_t checked = 0;
  for (auto const& row : data::rows("tcp_formulas.tsv", 4)) {
    for (auto const* format : {"2°: ", "4°: ", "8°: ", "12°: "}) {
      auto const formula = read_formula(format + row.at(1), {.omitted = Omitted::eight});
      if (!formula || !states_paper(*formula) || formula->runs().empty()) continue;
      auto const found = *plan_of(*formula, {.sharing = Sharing::once});
      CAPTURE(row.at(1));
      CHECK(found.sheets_a_copy() == paper(*formula).sheets.stated);
      std::int64_t leaves = found.leaves_of[0] + found.leaves_of[1];
      CHECK(leaves == IdealCopy{*formula}.leaves());
      auto const bill = reckon({.copies = 750, .overs_percent = 4}, found);
      REQUIRE(bill);
      CHECK(bill->sheets.low <= bill->sheets.stated);
      CHECK(bill->sheets.stated <= bill->sheets.high);
      ++checked;
    }
  }
  CHECK(checked > 1400);
}

namespace {

/// The signature of gathering `i`, from 0, in the alphabet of 23 letters.
std::string signed_as(int i) {
  std::string const letters = "ABCDEFGHIKLMNOPQRSTVXYZ";
  return (i < 23 ? "" : std::to_string(i / 23 + 1)) + letters[static_cast<std::size_t>(i % 23)];
}
/// A formula with each gathering by itself: A8 B4 C8.
std::string one_by_one(int format, std::vector<int> const& leaves) {
  auto text = std::to_string(format) + "°:";
  for (std::size_t i = 0; i < leaves.size(); ++i)
    text += ' ' + signed_as(static_cast<int>(i)) + '^' + std::to_string(leaves[i]);
  return text;
}
/// The same with runs of gatherings whose counts alternate as in `cycle`: A-D8/4.
std::string as_run(int format, std::vector<int> const& cycle, int gatherings) {
  auto text = std::to_string(format) + "°: A" + (gatherings > 1 ? "-" + signed_as(gatherings - 1) : "") + '^';
  for (std::size_t i = 0; i < cycle.size(); ++i) text += (i == 0 ? "" : "/") + std::to_string(cycle[i]);
  return text;
}
std::vector<int> sizes_of(SheetMakeUp const& unit) {
  return {unit.sizes.begin(), unit.sizes.begin() + unit.gathering_count};
}
std::vector<Working> workings_of(Plan const& plan) { return {plan.begin(), plan.end()}; }

} // namespace

TEST_CASE("several gatherings to the sheet, as the manuals have them") {
  // first pages of the signatures: Cim, Le Livre III (1907) and Une bibliothèque (1902), table of signatures: 16° in two
  // gatherings of 16 pages, 18° in two of 24 and 12, 18° in three of 12, 32° in four of 16. 12° as 8 and 4: Voet, The Golden
  // Compasses II, App. 8. 12° in eights, three to two sheets: McKerrow (1927), quoted by Bühler, Studies in Bibliography 7. 24°
  // in two twelves, in 16 and 8: Lenormand, Manuel du relieur (1900). Half-sheets of eighteens with nine leaves: from memory
  struct {
    char const* text;
    std::int64_t sheets_of_1000, formes;
  } const rows[]{{"18°: A-F⁶", 2000, 4},
                 {"18°: A-D⁹", 2000, 4},
                 {"18°: A-D¹²/⁶", 2000, 4},
                 {"18°: A¹² B⁶ C¹² D⁶", 2000, 4},
                 {"18°: A⁶ B¹² C⁶ D¹²", 2000, 4},
                 {"32°: A-D⁸", 1000, 2},
                 {"32°: A-D¹⁶", 2000, 4},
                 {"24°: A-C⁸", 1000, 2},
                 {"24°: A-B¹²", 1000, 2},
                 {"24°: A¹⁶ B⁸", 1000, 2},
                 {"16°: A-D⁸", 2000, 4},
                 {"12°: A-F⁸/⁴", 3000, 6},
                 {"12°: A⁸ B⁴ C⁸ D⁴ E⁸ F⁴", 3000, 6},
                 {"12°: A⁸ B-C⁴ D⁸", 2000, 4},
                 {"12°: A-F⁸", 4000, 8},
                 {"12°: A-B⁸ C⁸ D⁸ E-F⁸", 4000, 8},
                 {"12°: A-F⁶", 3000, 6},
                 {"8°: A-D⁴", 2000, 4},
                 {"64°: A-H⁸", 1000, 2},
                 {"128°: A-Q⁸", 1000, 2}};
  for (auto const& row : rows) {
    CAPTURE(std::string{row.text});
    auto const found = plan(row.text, Sharing::once);
    CHECK(found.formes() == row.formes);
    CHECK(found.sheets_for(1000) == row.sheets_of_1000);
    CHECK(found.impressions_for(1000) == 2 * row.sheets_of_1000);
    for (auto const& working : found) {
      CHECK(found.settings(working) == 1);
      CHECK_FALSE(working.is_shared());
    }
  }
  // what is left beside them is a part of a sheet: a third of an eighteen takes two formes
  auto const left = plan("18°: A-G⁶");
  CHECK(left.formes() == 6);
  CHECK(by_leaves(left) == Times{{18, 2}, {6, 1}});
  // the first and the last gathering are each of a sheet with their neighbour, so they do not share one (D and F could)
  auto const neighbours = plan("12°: A⁸ B⁴ C¹² D⁸ E¹² F⁴ G¹² H⁸ I⁴", Sharing::once);
  CHECK_FALSE(neighbours.shares_a_sheet());
  CHECK(by_leaves(neighbours) == Times{{12, 5}, {6, 1}, {4, 1}, {2, 1}});
  CHECK(plan("12°: π⁴ A-N¹² O⁸", Sharing::once).shares_a_sheet()); // Bowers, Studies in Bibliography 1
  // volumes are not worked together
  CHECK(by_leaves(plan("12°: A-K¹² L⁸; A⁴ B-F¹²")) == Times{{12, 15}, {6, 1}, {4, 1}, {2, 1}});
}

TEST_CASE("gatherings written one by one and as runs make one plan") {
  truth::Draw draw{1679};
  int units = 0;
  for (int round = truth::rounds(600); round > 0; --round) {
    auto const format = draw.of<int>({2, 4, 6, 8, 12, 16, 18, 20, 24, 32, 36, 48, 64, 96, 128});
    std::vector<int> cycle;
    for (auto terms = draw.from_to(1, 4); terms > 0; --terms)
      cycle.push_back(draw.of<int>({2, 4, 6, 8, 8, 12, 16, format, format / 2}));
    auto const gatherings = draw.from_to(1, 80);
    std::vector<int> all;
    for (int i = 0; i < gatherings; ++i) all.push_back(cycle[static_cast<std::size_t>(i) % cycle.size()]);
    auto const apart = one_by_one(format, all), run = as_run(format, cycle, gatherings);
    CAPTURE(apart);
    auto const one = plan(apart.c_str()), other = plan(run.c_str());
    CHECK(workings_of(one) == workings_of(other));
    CHECK(one.gatherings == gatherings);
    units += one.formes() > 4 ? 1 : 0;
    // half of them as a run, then one by one, then the rest as a run
    if (gatherings < 12 || cycle.size() != 1) continue;
    auto text = as_run(format, cycle, 5);
    for (int i = 5; i < 8; ++i) text += ' ' + signed_as(i) + '^' + std::to_string(cycle[0]);
    text += ' ' + signed_as(8) + '-' + signed_as(gatherings - 1) + '^' + std::to_string(cycle[0]);
    CAPTURE(text);
    CHECK(workings_of(plan(text.c_str())) == workings_of(one));
  }
  CHECK(units > 300);
  // the last of a long run may be of one sheet with what follows it
  CHECK(by_leaves(plan("12°: A-Z⁴ 2A⁸")) == Times{{12, 1}, {4, 22}});
  CHECK(by_leaves(plan("12°: A-Z⁸ 2A⁴")) == Times{{12, 15}, {6, 1}, {2, 1}});
  CHECK(by_leaves(plan("18°: A-2Z⁶ 3A¹²")) == Times{{18, 16}});
  // long runs are counted, not walked: by arithmetic, 229,977 gatherings
  CHECK(by_leaves(plan("12°: A-9998Z⁸/⁴")) == Times{{12, 9998 * 23 / 2}});
  CHECK(by_leaves(plan("12°: A-9999Z⁸")) == Times{{12, 9999 * 23 / 3 * 2}});
  CHECK(by_leaves(plan("12°: A-9999Z⁸/⁸/⁴")) == Times{{12, 9999 * 23 / 3}, {6, 9999 * 23 / 3}, {2, 9999 * 23 / 3}});
}

TEST_CASE("the plan of a formula follows the scheme that is given, in every scheme") {
  truth::Draw draw{1723};
  for (auto const scheme : Attested::all()) {
    auto const by = make_up(scheme);
    auto const cycle = sizes_of(by);
    for (int units = 1; units <= 6; ++units) {
      auto const gatherings = units * by.gathering_count;
      std::vector<int> all;
      for (int i = 0; i < gatherings; ++i) all.push_back(cycle[static_cast<std::size_t>(i) % cycle.size()]);
      auto const text = one_by_one(by.leaves_to_sheet, all);
      CAPTURE(scheme.id());
      CAPTURE(text);
      auto const formula = *read_formula(text);
      auto const found = plan_of(formula, scheme, {.sharing = Sharing::none});
      REQUIRE(found);
      CHECK(gatherings_by(formula, scheme) == gatherings);
      // the scheme says what a unit takes (tests/edition compares it with the folds)
      CHECK(found->formes() == units * (2 * by.workings + by.half_workings));
      CHECK(found->sheets_for(1000) == units * (1000 * by.workings + 500 * by.half_workings));
      CHECK(found->impressions_for(1000) == 2 * *found->sheets_for(1000));
      // the same book from its pages
      auto const arranged = *arrange(by, {.text = 4 * units * by.leaves() / 2}, {.sharing = Sharing::none});
      CHECK(workings_of(arranged) == workings_of(*found));
    }
    // a last gathering that is smaller, as `arrange` makes it
    for (int round = truth::rounds(12); round > 0; --round) {
      auto const arranged = *arrange(by, {.text = draw.from_to(1, 8 * by.leaves())}, {.sharing = Sharing::none});
      auto const formula = *read_formula(*formula_of(arranged, by));
      auto const found = plan_of(formula, scheme, {.sharing = Sharing::none});
      CAPTURE(*formula_of(arranged, by));
      REQUIRE(found);
      CHECK(gatherings_by(formula, scheme) == arranged.gatherings);
      CHECK(found->sheets_a_copy() == arranged.sheets_a_copy());
      CHECK(found->formes() >= arranged.formes());
    }
  }
  // two half-sheets worked together, only because the scheme says so: Tanselle, Studies in Bibliography 53, note 65
  auto const fours = *read_formula("8°: A-D⁴");
  CHECK(by_leaves(*plan_of(fours, *Attested::find("8_two_half_sheets"))) == Times{{8, 2}});
  CHECK(by_leaves(*plan_of(fours, schemes::octavo_half_sheet)) == Times{{4, 4}});
  CHECK(by_leaves(*plan_of(*read_formula("16°: A-D⁸"), *Attested::find("16_half_sheet"))) == Times{{8, 4}});
}

TEST_CASE("a scheme that makes other gatherings is an error") {
  for (auto const& [text, id] : {std::pair{"18°: A-F⁶", "18_12_plus_6"},
                                 {"18°: A-D⁹", "18_three_6s"},
                                 {"8°: A-K⁴", "8_octavo"},
                                 {"8°: A-K⁸", "8_half_sheet"},
                                 {"8°: A-K⁸", "8_in_16s"},
                                 {"12°: A-K¹²", "12_8_plus_4"},
                                 {"12°: A-F⁸", "12_8_plus_4"},
                                 {"12°: A-F⁸/⁴", "12_in_8s"}}) {
    CAPTURE(std::string{text});
    auto const formula = *read_formula(text);
    auto const found = plan_of(formula, *Attested::find(id));
    REQUIRE_FALSE(found);
    CHECK(found.error().problem == Problem::scheme_not_in_formula);
    CHECK(found.error().found_text() == "scheme");
  }
  CHECK(plan_of(*read_formula("4°: A-K⁸"), schemes::octavo).error().problem == Problem::formats_differ);
  // without a format in the formula the scheme has it; gatherings of other sizes are beside those of the scheme
  auto const mixed = *read_formula("π² A-C⁸ D⁴ E-K⁸ L⁴");
  CHECK(gatherings_by(mixed, schemes::octavo) == 11); // nine whole, π and L
  CHECK(by_leaves(*plan_of(mixed, schemes::octavo, {.sharing = Sharing::none})) == Times{{8, 9}, {4, 2}, {2, 1}});
  CHECK(gatherings_by(*read_formula("8°: A⁴"), schemes::octavo) == 1);
  // one whole unit is enough, at the end of the text too
  CHECK(gatherings_by(*read_formula("12°: A¹² B⁸ C⁴"), *Attested::find("12_8_plus_4")) == 2);
  // a unit is broken off by the end of the text only: a six among sixteen gatherings is none of it
  std::vector<int> eights(36, 8);
  eights[15] = 6;
  auto const of_128 = *read_formula(one_by_one(128, eights));
  for (auto const scheme : Attested::all())
    if (make_up(scheme).leaves_to_sheet == 128) CHECK(gatherings_by(of_128, scheme) == 20);
}

TEST_CASE("the formes of the plan of any formula print its pages") { // by arithmetic
  truth::Draw draw{1604};
  int settings = 0, wholes = 0;
  for (int round = truth::rounds(1500); round > 0; --round) {
    auto const format = draw.of<int>({1, 2, 4, 6, 8, 12, 16, 18, 20, 24, 32, 36, 48, 64, 72, 96, 128});
    std::string text = std::to_string(format) + "°:";
    if (draw.one_in(2)) text += " π^" + std::to_string(2 * draw.from_to(1, 6));
    auto const gatherings = draw.from_to(1, 30);
    std::vector<int> all;
    for (int i = 0; i < gatherings; ++i)
      all.push_back(i > 0 && !draw.one_in(4) ? all.back() : draw.of<int>({1, 2, 4, 6, 8, 9, 10, 12, 16, format}));
    std::int64_t leaves = 0;
    for (int i = 0; i < gatherings; ++i) {
      auto const size = all[static_cast<std::size_t>(i)];
      text += ' ' + signed_as(i) + '^' + std::to_string(size);
      leaves += size;
      if (size > 4 && draw.one_in(6)) text += draw.one_in(2) ? "(±" + signed_as(i) + "3)" : "(−" + signed_as(i) + "4)";
      if (size > 4 && draw.one_in(9)) text += "(" + signed_as(i) + "2+χ" + std::to_string(i + 1) + ")";
    }
    auto const formula = read_formula(text);
    REQUIRE_MESSAGE(formula, text);
    CAPTURE(text);
    Arranging const how{draw.of<Sharing>({Sharing::none, Sharing::once}),
                        draw.one_in(3) ? PartWork::cut_first : PartWork::turned, false};
    auto const found = *plan_of(*formula, how);
    CHECK(found.sheets_a_copy() * Fraction{format} == paper(*formula).sheets.stated * Fraction{format});
    CHECK(*found.sheets_for(1000) * format >= leaves * 1000);
    for (auto const& working : found) {
      settings += found.settings(working) > 1 ? 1 : 0;
      wholes += working.leaves == format ? 1 : 0;
    }
    press_law::check(found, press_law::even_copies(found, draw.from_to(1, 20)));
    press_law::check(found, draw.from_to(1, 3000));
  }
  CHECK(settings > 500);
  CHECK(wholes > 500);
}

TEST_CASE("a formula without one format has no plan of its own") {
  CHECK(plan_of(*read_formula("A-K⁸")).error().problem == Problem::format_not_stated);
  CHECK(plan_of(*read_formula("A-K⁸"), 8).sheets_a_copy() == 10);
  CHECK(plan_of(*read_formula("1°: [A]1")).value().formes() == 2); // the back of the leaf may be printed too
}
