// SPDX-License-Identifier: MIT
// Lesson 3. Head to head.
//
// Fold: the quarto of lesson 2 again. Mark the head of every page with a stroke before you open
//   it.
// Look: the formes in quarto.html: the far row is upside down.
// See: the far half is turned end for end when it is folded over. A page that is to be upright
//   in the book must be upside down in the forme, and the two rows meet with their heads.
// Task: tasks/03_head_to_head.cpp
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/misread.hpp>

#include "said.hpp"

using namespace bifolium;

constexpr auto const& quarto = impose<schemes::quarto>();
static_assert(quarto.outer(0, 0) == head_down(4) && quarto.outer(1, 0) == head_up(1));
static_assert(quarto.inner(0, 1) == head_down(3) && quarto.inner(1, 1) == head_up(2));

// A way of folding can be written down. Text that does not fold does not compile, and the
// compiler says why: try to change the order of the two folds.
constexpr Scheme mine = written("scheme mine 4°\n"
                                "sheet S rows 2 columns 2 long-side far-near\n"
                                "fold S far-over-near 1\n"
                                "fold S right-over-left 1\n"
                                "gathering A S\n");
static_assert(impose<mine>() == quarto);

int main() {
  auto const scheme = schemes::quarto.scheme();
  lesson::say(explain_page(scheme, 4).value());
  lesson::say(explain_page(scheme, 1).value());

  // Wrong on purpose: an octavo whose far half is folded over first.
  constexpr Scheme hasty = written("scheme hasty_octavo 8°\n"
                                   "sheet S rows 2 columns 4 long-side left-right\n"
                                   "fold S far-over-near 1\n"
                                   "fold S right-over-left 2\n"
                                   "fold S right-over-left 1\n"
                                   "gathering A S\n");
  auto const& octavo = impose<schemes::octavo>();
  lesson::say("\nAn octavo folded in its own order reads");
  lesson::say(pages_text(pages_met(octavo, fold<schemes::octavo>())));
  lesson::say("Wrong on purpose, the far half folded over first, it reads");
  lesson::say(pages_text(pages_met(octavo, fold(hasty).value())));
  lesson::say("The order of the folds is part of the layout.");
}
