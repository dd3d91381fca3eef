// SPDX-License-Identifier: MIT
// Lesson 4. Conjugates, and why 8 is beside 1.
//
// Fold: the quarto once more; slit its folds at the head with a paper knife, away from the
//   body. Take it apart: it is two pieces of paper, each of two leaves.
// Look: the gathering in quarto.html, standing on its spine. Point at a leaf.
// See: the first and the last leaf are one piece of paper, joined at the spine. So page 1 and
//   page 8 lie side by side, and the pages of every joined pair add up to one more than the
//   pages of the gathering.
// Task: tasks/04_conjugates.cpp
#include <bifolium/drawing.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include "said.hpp"

using namespace bifolium;

constexpr auto const& quarto = impose<schemes::quarto>();
constexpr auto const& octavo = impose<schemes::octavo>();
// The sums are those of Savage's Dictionary of the Art of Printing (1841): quarto 9, octavo 17.
static_assert(quarto.outer(1, 0) == head_up(1) && quarto.outer(1, 1) == head_up(8));
static_assert(octavo.outer(1, 0) == head_up(1) && octavo.outer(1, 1) == head_up(16));
static_assert(Gathering<4>{}.conjugate_sum() == 9 && Gathering<8>{}.conjugate_sum() == 17);
static_assert(Gathering<8>{}.leaf(1).conjugate() == Gathering<8>{}.leaf(8));

int main() {
  lesson::say("A quarto, the outermost pair first:");
  lesson::say(gathering_text(regular_gathering("A", 4)));
  lesson::say("An octavo:");
  lesson::say(gathering_text(regular_gathering("A", 8)));
  lesson::say(explain_page(schemes::quarto.scheme(), 8).value());
  lesson::say(explain_page(schemes::octavo.scheme(), 16).value());
  lesson::say(explain_page(schemes::octavo.scheme(), 5).value());
}
