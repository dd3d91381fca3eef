// SPDX-License-Identifier: MIT
// Lesson 4. Off-cut and inset. Twelve leaves are not made by halving. The common duodecimo is cut: eight leaves fold
// like an octavo, the off-cut of four is folded by itself and set in the middle of them.
#include <bifolium/drawing.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include <iostream>

using namespace bifolium;

constexpr auto const& twelves = impose<schemes::duodecimo>();
static_assert(twelves.outer(0, 3) == head_down(9)); // the off-cut holds pages 9 to 16, the middle of the gathering
static_assert(twelves.outer(0, 1) == head_down(13));
static_assert(twelves.outer(2, 0) == head_up(1) && twelves.outer(2, 1) == head_up(24)); // 25, as the manuals say

int main() {
  auto const scheme = schemes::duodecimo.scheme();
  auto const formes = impose(*fold(scheme));
  std::cout << "Common twelves, type on the stone:\n" << forme_text(formes) << '\n' << *explain_steps(scheme) << '\n';
  std::cout << *explain_page(scheme, 12) << "\n\nThe off-cut set inside, the gathering reads\n"
            << pages_text(pages_met(formes, *fold(scheme))) << '\n';

  // Wrong on purpose: the binder takes the off-cut for a gathering of its own and puts it behind.
  auto const behind = *fold("12_8_plus_4"_scheme.scheme());
  std::cout << "\nWrong on purpose, the off-cut put behind:\n"
            << pages_text(pages_met(formes, behind, 0)) << " then " << pages_text(pages_met(formes, behind, 1)) << '\n';

  // Wrong on purpose: long twelves have no off-cut; folded head to head first they come out of order.
  constexpr Scheme hasty = written(R"(scheme hasty_twelves 12°
sheet S rows 2 columns 6 long-side left-right
fold S far-over-near 1
fold S right-over-left 4 under
fold S right-over-left 2
fold S right-over-left 1
gathering A S
)");
  auto const long_twelves = impose(*fold(schemes::long_duodecimo.scheme()));
  std::cout << "\nWrong on purpose, long twelves folded head to head first:\n"
            << pages_text(pages_met(long_twelves, *fold(hasty))) << '\n';
}
