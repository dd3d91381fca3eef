// SPDX-License-Identifier: MIT
// Lesson 3. Head to head. When the far half of the sheet is folded over the near half it is turned end for end. A page
// that is to stand upright in the book must stand on its head in the forme, and the two rows meet with their heads.
#include <bifolium/drawing.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/explain/explain_formula.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include <iostream>

using namespace bifolium;

constexpr auto const& quarto = impose<schemes::quarto>();
static_assert(quarto.outer(0, 0) == head_down(4) && quarto.outer(1, 0) == head_up(1)); // heads meet between the rows
static_assert(quarto.inner(0, 1) == head_down(3) && quarto.inner(1, 1) == head_up(2));

// Half-sheet work: one forme holds all eight pages and prints both sides; cut in two it gives two copies.
constexpr auto const& half_sheet = impose<schemes::octavo_half_sheet>();
static_assert(half_sheet.one_forme());
static_assert(half_sheet.outer(1, 0) == head_up(1) && half_sheet.outer(1, 3) == head_up(2)); // 1 is backed by 2

int main() {
  auto const scheme = schemes::octavo_half_sheet.scheme();
  auto const folded = *fold(scheme);
  auto const formes = impose(folded);
  std::cout << "Quarto, both views:\n" << both_views_text(impose(*fold(schemes::quarto.scheme())));
  std::cout << *explain_page(schemes::quarto.scheme(), 4) << '\n' << *explain_page(schemes::quarto.scheme(), 1) << '\n';
  std::cout << "\nHalf-sheet octavo, type on the stone:\n"
            << forme_text(formes) << *explain_count(scheme, 1000) << '\n';
  std::cout << "\nTurned as it should be, left for right, a copy reads\n"
            << pages_text(pages_met(formes, folded)) << '\n';

  // Wrong on purpose: the sheet is turned far for near between the impressions.
  auto const met = pages_met(formes, folded, 0, Slip::turned_about_other_line);
  std::cout << "\nWrong on purpose, turned far for near, it reads\n" << pages_text(met) << '\n';
}
