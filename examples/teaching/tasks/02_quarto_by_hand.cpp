// SPDX-License-Identifier: MIT
// Task 2. Write a page number in place of each YOUR_ANSWER.
#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

constexpr auto const& quarto = impose<schemes::quarto>();

// The outer forme: row 1 is the near row, row 0 the far one; column 0 is on the left.
static_assert(outer_holds<quarto, 1, 0, YOUR_ANSWER>);
static_assert(outer_holds<quarto, 1, 1, YOUR_ANSWER>);
static_assert(outer_holds<quarto, 0, 0, YOUR_ANSWER>);
static_assert(outer_holds<quarto, 0, 1, YOUR_ANSWER>);
