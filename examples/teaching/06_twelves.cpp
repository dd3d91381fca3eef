// SPDX-License-Identifier: MIT
// Lesson 6. Twelves and the off-cut.
//
// Fold: fold_a_sheet 12_common --out . (scissors for children; a knife only with a steel rule
//   on a board). Cut off the far row, fold the two parts, set the small one inside the large
//   one.
// Look: class_page 12_common --out twelves.html; the switch at the openings puts the off-cut
//   outside.
// See: twelve leaves are not made by halving. Eight fold like an octavo; the off-cut of four is
//   folded by itself and set in the middle, so its pages are those of the middle.
// Task: tasks/06_twelves.cpp
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/misread.hpp>

#include "said.hpp"

using namespace bifolium;

constexpr auto const& twelves = impose<schemes::duodecimo>();
static_assert(twelves.outer(0, 3) == head_down(9)); // the off-cut holds pages 9 to 16
static_assert(twelves.outer(2, 0) == head_up(1) &&
              twelves.outer(2, 1) == head_up(24)); // 25: Savage

constexpr auto in_eight_and_four =
    "12_8_plus_4"_scheme; // a scheme by its id; show_formes --list has all

int main() {
  auto const scheme = schemes::duodecimo.scheme();
  lesson::say("Common twelves, type on the stone:\n" + forme_text(twelves));
  lesson::say("\n" + explain_steps(scheme).value());
  lesson::say(explain_page(scheme, 12).value());

  auto const& apart = fold<in_eight_and_four>();
  lesson::say("\nWrong on purpose, the off-cut gathered after the eight and not set inside:");
  lesson::say(pages_text(pages_met(twelves, apart, 0)) + " then " +
              pages_text(pages_met(twelves, apart, 1)));

  // Wrong on purpose: long twelves have no off-cut; folded head to head first they are out of
  // order.
  constexpr Scheme hasty = written("scheme hasty_twelves 12°\n"
                                   "sheet S rows 2 columns 6 long-side left-right\n"
                                   "fold S far-over-near 1\n"
                                   "fold S right-over-left 4 under\n"
                                   "fold S right-over-left 2\n"
                                   "fold S right-over-left 1\n"
                                   "gathering A S\n");
  lesson::say("\nWrong on purpose, long twelves folded head to head first:");
  lesson::say(pages_text(pages_met(impose<schemes::long_duodecimo>(), fold(hasty).value())));
}
