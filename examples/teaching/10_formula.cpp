// SPDX-License-Identifier: MIT
// Lesson 10. Writing a formula from leaves.
//
// Look: take any gathered book of lessons 2 to 8, or three of them one after another, and write
//   down the signature of every leaf. Count the leaves of each gathering.
// See: A-C⁸ D⁴ says: gatherings A, B and C have eight leaves each, D has four. (±B3) says that
//   B3 was cut out and another leaf pasted to its stub; (-D4) that D4 was cut away in the
//   printing house.
// Task: tasks/10_formula.cpp
#include <bifolium/collation.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/explain.hpp>

#include "said.hpp"

using namespace bifolium;

static_assert(count_formula("A8 B8 C8 D4")->leaves == 28);
static_assert(count_formula("A-C8 D4")->leaves == 28); // the same book, written shorter
static_assert(count_formula("A-C8(±B3) D4")->leaves ==
              28); // a cancel takes the place of a leaf
static_assert(count_formula("A-C8 D4(-D4)")->leaves == 27);   // a leaf cut away in the house
static_assert(count_formula("A-C8 D4(D2+χ1)")->leaves == 29); // a leaf inserted
static_assert(
    !count_formula("A8 B8(-B9)")); // wrong on purpose: B9 in a gathering of eight is an error

int main() {
  auto const book = read_formula("8°: A-B8(±B3) C4(-C4)").value();
  lesson::say("The leaves of 8°: A-B8(±B3) C4(-C4):\n" + explain_count(book));
  IdealCopy const leaves{book}; // the leaves one by one
  for (auto const& gathering : leaves.gatherings()) {
    auto const drawn = *drawn_gathering(book, gathering.at);
    lesson::say(drawn.title + "\n" + gathering_text(drawn));
  }
  lesson::say("To make a cancel with your own hands: fold_a_sheet --cancel --out . Never cut "
              "an original.");
}
