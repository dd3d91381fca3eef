// SPDX-License-Identifier: MIT
// Lesson 2. A quarto by hand.
//
// Fold: fold_a_sheet quarto --out . prints the sheet and its steps. Lay it inner side up, far
//   edge away from you; fold the far half over on the near, then the right half over on the
//   left.
// Look: class_page quarto --out quarto.html. Say where each page will lie before you press
//   Forward.
// See: two folds make four leaves; each fold brings page 3 to 2, or 5 to 4. These are the
//   numbers a folder looks at.
// Task: tasks/02_quarto_by_hand.cpp
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include "said.hpp"

using namespace bifolium;

constexpr auto const& quarto = impose<schemes::quarto>();
static_assert(quarto.pages() == 8 && quarto.rows() == 2 && quarto.columns() == 2);
static_assert(fold<schemes::quarto>().leaves() == 4);

int main() {
  auto const scheme = schemes::quarto.scheme();
  lesson::say("Quarto, both views:\n" + both_views_text(quarto));
  lesson::say("\nHow to fold:\n" + explain_steps(scheme).value());
  // The walk through a scheme has the paper before and after each step, as values.
  auto const steps = walk(scheme).value();
  for (auto const& step : steps) {
    std::cout << "After step " << step.number + 1 << " the pages that are up:";
    auto const pile = step.after.pile(0);
    for (auto const& layer : pile) {
      bool covered = false;
      for (auto const& other : pile)
        covered = covered ||
                  (&other > &layer && other.row == layer.row && other.column == layer.column);
      if (!covered) std::cout << ' ' << page_on(fold<schemes::quarto>(), upper_side(layer));
    }
    std::cout << '\n';
  }
}
