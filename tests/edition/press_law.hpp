// SPDX-License-Identifier: MIT
/// The arithmetic of the press, which holds for every plan: what its formes print, an impression each, are the pages of the
/// copies. The places of a forme are counted here from the paper that goes to press and not asked of the plan.
///
/// The ways of printing are those that are described: a sheet of two formes, a forme for each side; half-sheet work, one
/// forme on both sides, so that there are twice as many copies as the forme has settings (Savage, Dictionary of the Art of
/// Printing, 1841, s.v. Half Sheet; Moxon); paper cut before printing (Tanselle, Studies in Bibliography 53, note 65); a
/// broadside. That a page may be set more than once is common practice, no source.
#pragma once

#include <bifolium/edition/plan.hpp>

#include <doctest/doctest.h>

namespace press_law {

using namespace bifolium;

/// Checks a plan for a number of copies. `blank_sides` are the pages that nothing is printed on in workings of one side.
inline void check(Plan const& plan, std::int64_t copies, std::int64_t blank_sides = 0) {
  std::int64_t const sheet = plan.leaves_to_sheet;
  std::int64_t printed = 0, pulls_in_all = 0, formes_in_all = 0, paper = 0, leaves_in_all = 0;
  bool even = true; // no place of a forme is printed for nothing
  for (auto const& working : plan) {
    std::int64_t const leaves = working.leaves, to_sheet = sheet / leaves;
    CAPTURE(leaves);
    CAPTURE(sheet);
    REQUIRE(leaves > 0);
    REQUIRE(sheet % leaves == 0); // equal parts of the sheet
    std::int64_t places = sheet, formes = 2, sides = 2, to_press = (copies + to_sheet - 1) / to_sheet;
    std::int64_t set = 1; // pages of one copy in each forme, as often as they are set
    switch (working.kind) {
    case Working::Kind::sheet:
      REQUIRE(leaves == sheet);
      break;
    case Working::Kind::turned: // one forme has both pages of each leaf
      formes = 1;
      REQUIRE(to_sheet % 2 == 0);
      REQUIRE(sheet % (2 * leaves) == 0); // else the places do not hold them
      set = sheet / (2 * leaves);
      break;
    case Working::Kind::repeated:
      REQUIRE(to_sheet % 2 == 1);
      REQUIRE(to_sheet > 1);
      set = to_sheet;
      break;
    case Working::Kind::cut_first:
      places = leaves, to_press = copies;
      break;
    case Working::Kind::one_side:
      places = leaves, to_press = copies, formes = sides = 1;
      break;
    default:
      FAIL("a way of printing that nobody describes");
    }
    CHECK(plan.settings(working) == set);
    CHECK(plan.pages_to_forme(working) == places);
    CHECK(working.formes() == formes);
    auto const pulls = to_press * sides;
    printed += working.times * pulls * places;
    pulls_in_all += working.times * pulls;
    formes_in_all += working.times * formes;
    paper += working.times * ((copies + to_sheet - 1) / to_sheet);
    leaves_in_all += working.times * leaves;
    even = even && (to_press * sides * places == 2 * leaves * copies || working.kind == Working::Kind::one_side);
  }
  CHECK(plan.impressions_for(copies) == pulls_in_all);
  CHECK(plan.formes() == formes_in_all);
  CHECK(plan.sheets_for(copies) == paper);
  CHECK(paper * sheet >= leaves_in_all * copies); // no leaf without paper
  auto const pages = (2 * leaves_in_all - blank_sides) * copies;
  if (even)
    CHECK(printed == pages);
  else
    CHECK(printed > pages);
}
/// So many copies that every part of a sheet comes out even.
inline std::int64_t even_copies(Plan const& plan, int times) { return std::int64_t{plan.leaves_to_sheet} * times; }

} // namespace press_law
