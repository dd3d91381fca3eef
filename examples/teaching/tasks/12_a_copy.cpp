// SPDX-License-Identifier: MIT
// Task 12. A book is A-C8. In one copy there are A1 to A8, B1 to B3, B6 to B8 and C1 to C7.
// Write a number in place of each YOUR_ANSWER.
#include <bifolium/collation.hpp>

#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

struct leaves_of_the_ideal_copy;
struct leaves_that_this_copy_wants;
struct leaf_of_B_that_was_conjugate_with_B4;
struct leaf_of_C_that_is_loose_because_C8_is_gone;

constexpr auto ideal = count_formula("A-C8") -> leaves;
static_assert(answer_is<leaves_of_the_ideal_copy, static_cast<int>(ideal), YOUR_ANSWER>);
static_assert(
    answer_is<leaves_that_this_copy_wants, static_cast<int>(ideal) - (8 + 6 + 7), YOUR_ANSWER>);
static_assert(answer_is<leaf_of_B_that_was_conjugate_with_B4,
                        Gathering<8>{}.leaf(4).conjugate()->number(), YOUR_ANSWER>);
static_assert(answer_is<leaf_of_C_that_is_loose_because_C8_is_gone,
                        Gathering<8>{}.leaf(8).conjugate()->number(), YOUR_ANSWER>);
