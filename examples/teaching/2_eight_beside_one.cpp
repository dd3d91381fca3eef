// SPDX-License-Identifier: MIT
// Lesson 2. Why page 8 stands beside page 1. In a quarto the last leaf and the first are one piece of paper, joined at
// the spine. So the first page and the last lie side by side, and so do the pages of every joined pair: their numbers
// add up to the same sum, one more than the pages of the gathering.
#include <bifolium/drawing.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include <iostream>

using namespace bifolium;

constexpr auto const& quarto = impose<schemes::quarto>();
constexpr auto const& octavo = impose<schemes::octavo>();

static_assert(quarto.outer(1, 0) == head_up(1) && quarto.outer(1, 1) == head_up(8));  // 9, says Savage (1841)
static_assert(octavo.outer(1, 0) == head_up(1) && octavo.outer(1, 1) == head_up(16)); // 17
static_assert(Gathering<4>{}.conjugate_sum() == 9 && Gathering<8>{}.conjugate_sum() == 17);
static_assert(Gathering<8>{}.leaf(1).conjugate() == Gathering<8>{}.leaf(8));

// Wrong on purpose: printed as an octavo, but the far half is folded over first.
constexpr Scheme hasty = written(R"(scheme hasty_octavo 8°
sheet S rows 2 columns 4 long-side left-right
fold S far-over-near 1
fold S right-over-left 2
fold S right-over-left 1
gathering A S
)");

int main() {
  auto const printed = impose(*fold(schemes::octavo.scheme()));
  std::cout << *explain_page(schemes::quarto.scheme(), 8) << '\n'
            << *explain_page(schemes::octavo.scheme(), 16) << '\n'
            << *explain_page(schemes::octavo.scheme(), 5) << '\n';
  std::cout << "\nAn octavo folded in its own order reads\n"
            << pages_text(pages_met(printed, *fold(schemes::octavo.scheme()))) << '\n';
  std::cout << "\nWrong on purpose, the far half folded over first, it reads\n"
            << pages_text(pages_met(printed, *fold(hasty))) << "\nThe order of the folds is part of the layout.\n";
}
