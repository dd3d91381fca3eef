// SPDX-License-Identifier: MIT
// Task 7. Write a number in place of each YOUR_ANSWER.
#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

// The one forme of a half-sheet of octavo, near row: pages 1, 8, then which two?
constexpr auto const& half_sheet = impose<schemes::octavo_half_sheet>();
static_assert(outer_holds<half_sheet, 1, 2, YOUR_ANSWER>);
static_assert(outer_holds<half_sheet, 1, 3, YOUR_ANSWER>);

constexpr int copies_a_sheet = fold<schemes::octavo_half_sheet>().copies();
struct copies_that_one_sheet_gives;
struct sheets_for_1000_copies;
static_assert(answer_is<copies_that_one_sheet_gives, copies_a_sheet, YOUR_ANSWER>);
static_assert(answer_is<sheets_for_1000_copies, 1000 / copies_a_sheet, YOUR_ANSWER>);
