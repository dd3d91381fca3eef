// SPDX-License-Identifier: MIT
// Task 6. Write a page number in place of each YOUR_ANSWER. Row 0, the far row, is the off-cut.
#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

constexpr auto const& twelves = impose<schemes::duodecimo>();
static_assert(outer_holds<twelves, 2, 1, YOUR_ANSWER>); // beside page 1
static_assert(outer_holds<twelves, 0, 3, YOUR_ANSWER>); // the first page of the off-cut
static_assert(outer_holds<twelves, 0, 2, YOUR_ANSWER>); // the last page of the off-cut

struct pages_of_the_off_cut;
static_assert(answer_is<pages_of_the_off_cut, 8, YOUR_ANSWER>);
