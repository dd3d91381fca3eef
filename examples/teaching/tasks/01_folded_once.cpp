// SPDX-License-Identifier: MIT
// Task 1. Write a page number in place of each YOUR_ANSWER. Do not unfold the sheet first.
// It compiles when all answers are right: g++ -std=c++20 -fsyntax-only -Iinclude THIS_FILE
#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

constexpr auto const& folio = impose<schemes::folio>();

// The outer forme, type on the stone: which page is on the left, which on the right?
static_assert(outer_holds<folio, 0, 0, YOUR_ANSWER>);
static_assert(outer_holds<folio, 0, 1, YOUR_ANSWER>);
// The inner forme.
static_assert(inner_holds<folio, 0, 0, YOUR_ANSWER>);
static_assert(inner_holds<folio, 0, 1, YOUR_ANSWER>);
