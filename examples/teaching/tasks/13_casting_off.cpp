// SPDX-License-Identifier: MIT
// Task 13. An octavo of 96 pages is printed in 500 copies. A ream has 500 sheets. Write a number in
// place of each YOUR_ANSWER.
#include <bifolium/fold.hpp>
#include <bifolium/paper.hpp>

#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

constexpr auto const& octavo = fold<schemes::octavo>();
constexpr int sheets = 96 / octavo.gathering(0).pages(); // of one copy

struct sheets_of_one_copy;
struct sheets_of_the_edition;
struct reams_of_paper;
struct impressions_at_the_press;
static_assert(answer_is<sheets_of_one_copy, sheets, YOUR_ANSWER>);
static_assert(answer_is<sheets_of_the_edition, 500 * sheets, YOUR_ANSWER>);
static_assert(
    answer_is<reams_of_paper, static_cast<int>(counted(500 * sheets, reams::of_500).reams),
              YOUR_ANSWER>);
static_assert(answer_is<impressions_at_the_press, 500 * sheets * 2, YOUR_ANSWER>);
