// SPDX-License-Identifier: MIT
// Task 3. How does the page lie in its forme? Write upright or upside_down for the first three
// answers; the fourth is the name of a fold in quotation marks, such as "near-over-far".
#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

constexpr auto const& quarto = impose<schemes::quarto>();
static_assert(lies<quarto, 1, YOUR_ANSWER>);
static_assert(lies<quarto, 6, YOUR_ANSWER>);
static_assert(lies<impose<schemes::octavo>(), 12, YOUR_ANSWER>);

// With this fold first, the sheet becomes a quarto whose page 1 is near and on the left.
constexpr Scheme mine = written("scheme mine 4°\n"
                                "sheet S rows 2 columns 2 long-side far-near\n"
                                "fold S " YOUR_ANSWER " 1\n"
                                "fold S right-over-left 1\n"
                                "gathering A S\n");
static_assert(outer_holds<impose<mine>(), 1, 0, 1>);
