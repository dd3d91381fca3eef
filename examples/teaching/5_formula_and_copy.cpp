// SPDX-License-Identifier: MIT
// Lesson 5. The formula and the copy. A collation formula says how the book was made; the copy in the hand says what has
// become of it. A⁸ B⁸(±B3) C⁴ is a book of twenty leaves in which the third leaf of B was cut out and another pasted to
// its stub. Such a leaf, a cancel, is joined to nothing: its old conjugate holds the stub.
#include <bifolium/collation.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/drawing/formula_gathering.hpp>
#include <bifolium/explain/explain_formula.hpp>
#include <bifolium/fold.hpp>

#include <iostream>

using namespace bifolium;

static_assert(count_formula("A8 B8(±B3) C4")->leaves == 20); // a cancel takes the place of a leaf: nothing is added
static_assert(count_formula("A8 B8(-B8) C4")->leaves == 19); // a leaf cut away in the house
static_assert(count_formula("A8 B8(B5+χ1) C4")->leaves == 21);
static_assert(Gathering<8>{}.leaf(3).conjugate() == Gathering<8>{}.leaf(6)); // whose stub holds the cancel

// Wrong on purpose: B9 is asked for in a gathering of eight.
static_assert(!count_formula("A8 B8(-B9) C4"));

int main() {
  auto const book = *read_formula("A8 B8(±B3) C4");
  std::cout << "The leaves of A8 B8(±B3) C4:\n" << explain_count(book) << '\n';
  auto const copy = check_copy(book, read_leaves_present(book, "A1-B3 B5-C4")->spans);
  auto const gathering = drawn_gathering(book, IdealCopy{book}.find(*read_signature("B"))->gathering, copy);
  std::cout << gathering.title << ":\n" << gathering_text(gathering);
  std::cout
      << "B3 and B6 are one piece of paper in the formula; in this copy B6 is joined to the stub of the old B3.\n\n"
      << "To see a cancel: print a sheet to fold, cut the third leaf out but for a finger's breadth at the gutter,\n"
      << "write it anew on another sheet and paste it to the stub. Use copies only: never cut an original.\n";

  // Wrong on purpose: a leaf that is missing from a copy is no part of the formula, which tells of all copies.
  std::cout << "\nWrong on purpose, B4 taken out of the formula because this copy lacks it: "
            << count_formula("A8 B8(±B3, -B4) C4")->leaves << " leaves.\nNow every whole copy has one leaf too many.\n";
}
