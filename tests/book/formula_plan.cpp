// SPDX-License-Identifier: MIT
#include <bifolium/book/formula_plan.hpp>
#include <bifolium/collation/read_formula.hpp>

#include "data.hpp"

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

TEST_CASE("a formula without one format has no plan of its own") {
  CHECK(plan_of(*read_formula("A-K⁸")).error().problem == Problem::format_not_stated);
  CHECK(plan_of(*read_formula("A-K⁸"), 8).sheets_a_copy() == 10);
  CHECK(plan_of(*read_formula("1°: [A]1")).value().formes() == 2); // the back of the leaf may be printed too
}
