// SPDX-License-Identifier: MIT
// Task 4. Write a number in place of each YOUR_ANSWER.
#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

struct page_beside_page_1_of_an_octavo;
struct sum_of_two_pages_side_by_side_in_twelves;
struct leaf_conjugate_with_leaf_3_of_eight;
struct page_beside_page_6_of_a_quarto;

static_assert(answer_is<page_beside_page_1_of_an_octavo, Gathering<8>{}.conjugate_sum() - 1,
                        YOUR_ANSWER>);
static_assert(answer_is<sum_of_two_pages_side_by_side_in_twelves,
                        Gathering<12>{}.conjugate_sum(), YOUR_ANSWER>);
static_assert(answer_is<leaf_conjugate_with_leaf_3_of_eight,
                        Gathering<8>{}.leaf(3).conjugate()->number(), YOUR_ANSWER>);
static_assert(
    answer_is<page_beside_page_6_of_a_quarto, Gathering<4>{}.conjugate_sum() - 6, YOUR_ANSWER>);
