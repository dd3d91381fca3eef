// SPDX-License-Identifier: MIT
// Lesson 7. Half-sheets: one forme, two copies.
//
// Fold: fold_a_sheet 8_half_sheet --out . Both sides of the sheet are printed from the same
//   forme. Cut it in two: you have two copies of the same four leaves.
// Look: class_page 8_half_sheet --out half.html; the switch at the openings turns the sheet the
//   wrong way.
// See: half a sheet of text takes one forme, not two, and half the paper. Turned about the
//   wrong line between the impressions, the sheet is spoilt.
// Task: tasks/07_half_sheets.cpp
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/misread.hpp>

#include "said.hpp"

using namespace bifolium;

constexpr auto const& half_sheet = impose<schemes::octavo_half_sheet>();
static_assert(half_sheet.one_forme() && half_sheet.pages() == 8);
static_assert(fold<schemes::octavo_half_sheet>().copies() == 2);

int main() {
  auto const scheme = schemes::octavo_half_sheet.scheme();
  auto const& folded = fold<schemes::octavo_half_sheet>();
  lesson::say("Half-sheet of octavo, type on the stone:\n" + forme_text(half_sheet));
  lesson::say(explain_steps(scheme).value());
  lesson::say(explain_count(scheme, 1000).value());
  lesson::say("\nTurned as it should be, left for right, a copy reads");
  lesson::say(pages_text(pages_met(half_sheet, folded)));
  auto const met = pages_met(half_sheet, folded, 0, Slip::turned_about_other_line);
  lesson::say("Wrong on purpose, turned far for near, it reads\n" + pages_text(met));
}
