// SPDX-License-Identifier: MIT
// Lesson 12. A copy that lacks leaves.
//
// Fold: the octavo of lesson 4 with a leaf taken out of it (cut your own sheet, never an
//   original).
// Look: the leaf that was its conjugate is loose now, or its stub is seen at the fold.
// See: the formula says how the book was made, for all copies. What one copy lacks is said of
//   that copy.
// Task: tasks/12_a_copy.cpp
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>
#include <bifolium/drawing.hpp>

#include "said.hpp"

using namespace bifolium;

int main() {
  auto const book = read_formula("8°: A8 B8(±B3) C4").value();
  IdealCopy const leaves{book}; // the leaves of a perfect copy
  auto const present = read_leaves_present(leaves, "A1-B3 B5-C4").value();
  auto const copy = check_copy(leaves, present.spans);
  for (auto const& gathering : leaves.gatherings()) {
    auto const drawn = *drawn_gathering(book, gathering.at, copy);
    lesson::say(drawn.title + "\n" + gathering_text(drawn));
  }
  // Wrong on purpose: what one copy lacks does not belong to the formula.
  std::cout << "Wrong on purpose, B4 taken out of the formula because this copy lacks it: "
            << count_formula("A8 B8(±B3, -B4) C4")->leaves
            << " leaves.\nNow every whole copy has one leaf too many.\n";
}
