// SPDX-License-Identifier: MIT
// Lesson 1. A sheet folded once. Take a sheet of paper, fold it, number its four pages, open it again: that is a folio.
// The two pages on one side are printed together from one forme. What is on the left in type is on the right on paper.
#include <bifolium/drawing.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include <iostream>

using namespace bifolium;

constexpr auto const& folio = impose<schemes::folio>();

// The exercise: say what stands where before you unfold. If one of these is wrong, the program does not compile.
static_assert(folio.outer(0, 0) == head_up(1)); // row 0, column 0 of the outer forme, type on the stone
static_assert(folio.outer(0, 1) == head_up(4));
static_assert(folio.inner(0, 0) == head_up(3));
static_assert(folio.printed(Side::outer, 0, 0) == head_up(4)); // the paper is the mirror of the type

int main() {
  auto const scheme = schemes::folio.scheme();
  std::cout << "Type on the stone:\n" << forme_text(impose(*fold(scheme)));
  std::cout << "\nHow to fold:\n" << *explain_steps(scheme);
  for (int page = 1; page <= 4; ++page) std::cout << *explain_page(scheme, page) << '\n';

  std::cout << "\nThe same sheet for a book read from right to left, type on the stone:\n"
            << forme_text(impose(*fold(mirrored(scheme))))
            << "It looks like the printed paper of the other. That is the trap: always say which one you draw.\n";

  // Wrong on purpose: the inner forme lies on the press the wrong way round.
  auto const met = pages_met(impose(*fold(scheme)), *fold(scheme), 0, Slip::inner_forme_turned);
  std::cout << "\nWrong on purpose, inner forme turned end for end. The reader meets:\n" << pages_text(met) << '\n';
}
