// SPDX-License-Identifier: MIT
// Lesson 11. Naming a format from what is measured.
//
// Look: measure the leaves you folded: height and width in millimetres. Hold them against the
//   light: which way do the chain lines run, where is the mark? In a library ask first, use a
//   soft ruler, press nothing.
// See: size alone cannot part a quarto from an octavo on larger paper; the chain lines do. The
//   answer is a probability with its reasons, and "not determined" is an answer too.
// Task: tasks/11_naming_a_format.cpp
#include <bifolium/evidence.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>

#include "said.hpp"

using namespace bifolium;

int main() {
  // An invented leaf. observe() says no where a measure cannot be one of a leaf.
  auto seen = observe({.height = 187_mm, .width = 132_mm, .year = 1492}).value();
  lesson::say("A leaf of 187 x 132 mm, 1492, chain lines not looked at:");
  lesson::say(explain_ranking(infer_format(seen)));

  seen = observe({.height = 187_mm,
                  .width = 132_mm,
                  .chain_lines = ChainLines::vertical,
                  .year = 1492})
             .value();
  lesson::say("\nThe same leaf, chain lines vertical:");
  lesson::say(explain_ranking(infer_format(seen)));
}
