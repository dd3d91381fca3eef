// SPDX-License-Identifier: MIT
// Lesson 1. A sheet folded once.
//
// Fold: take any sheet of paper, fold it once, number its four pages, open it again. That is a
//   folio. Compare it with the printed one: fold_a_sheet folio --out .
// Look: class_page folio --out folio.html, in a browser.
// See: the two pages on one side are printed together, from one forme. What is on the left in
//   type is on the right on paper.
// Task: tasks/01_folded_once.cpp
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/misread.hpp>

#include "said.hpp"

using namespace bifolium;

constexpr auto const& folio = impose<schemes::folio>();

// Checked while compiling: a line that is not true stops the compiler.
static_assert(folio.outer(0, 0) ==
              head_up(1)); // row 0, column 0 of the outer forme, type on the stone
static_assert(folio.printed(Side::outer, 0, 0) ==
              head_up(4)); // the paper is the mirror of the type

int main() {
  auto const scheme = schemes::folio.scheme();
  lesson::say("Type on the stone:\n" + forme_text(folio));
  // A scheme that somebody wrote may not fold; then there is no text but an error. value()
  // takes the text out; where there is none the program ends with the sentence of the error.
  lesson::say("\nHow to fold:\n" + explain_steps(scheme).value());
  for (int page = 1; page <= 4; ++page) lesson::say(explain_page(scheme, page).value());

  lesson::say("\nThe same sheet for a book read from right to left, type on the stone:");
  lesson::say(forme_text(impose(fold(mirrored(scheme)).value())));
  lesson::say("It looks like the printed paper of the other. That is the trap: always say "
              "which one you draw.");

  auto const met = pages_met(folio, fold<schemes::folio>(), 0, Slip::inner_forme_turned);
  lesson::say("\nWrong on purpose, the inner forme laid end for end. The reader meets:\n" +
              pages_text(met));
}
