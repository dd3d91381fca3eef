// SPDX-License-Identifier: MIT
// Task 8. Write a number in place of each YOUR_ANSWER.
#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

constexpr auto const& sixes = impose<schemes::folio_in_sixes>();

struct page_beside_page_1;
struct page_beside_page_3;
struct sheet_of_page_6_counted_from_1;
static_assert(answer_is<page_beside_page_1, int{sixes.outer(0, 1, 0).page}, YOUR_ANSWER>);
static_assert(answer_is<page_beside_page_3, int{sixes.outer(0, 1, 1).page}, YOUR_ANSWER>);
static_assert(answer_is<sheet_of_page_6_counted_from_1, sixes.place(6).sheet + 1, YOUR_ANSWER>);
