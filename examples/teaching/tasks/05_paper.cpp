// SPDX-License-Identifier: MIT
// Task 5. Write vertical or horizontal for the first two answers, the number of a leaf for the
// others.
#include <bifolium/fold.hpp>

#include "../marker.hpp"

using namespace bifolium;
using namespace marker;
using enum ChainLines;

struct chain_lines_of_a_quarto;
struct chain_lines_of_an_octavo;
struct next_leaf_of_an_octavo_with_a_part_of_the_mark_of_leaf_1;
struct first_leaf_of_a_quarto_with_the_mark;

template <auto const& folded>
constexpr ChainLines chains = *shows(folded, {0, folded.gathering(0).leaf(1)}).chain_lines;
// The first leaf after `leaf` that has a part of the watermark.
template <auto const& folded> constexpr int marked_after(int leaf) {
  do ++leaf;
  while (!shows(folded, {0, folded.gathering(0).leaf(leaf)}).watermark_lying(Lie::as_given));
  return leaf;
}

static_assert(answer_is<chain_lines_of_a_quarto, chains<fold<schemes::quarto>()>, YOUR_ANSWER>);
static_assert(
    answer_is<chain_lines_of_an_octavo, chains<fold<schemes::octavo>()>, YOUR_ANSWER>);
static_assert(answer_is<next_leaf_of_an_octavo_with_a_part_of_the_mark_of_leaf_1,
                        marked_after<fold<schemes::octavo>()>(1), YOUR_ANSWER>);
static_assert(answer_is<first_leaf_of_a_quarto_with_the_mark,
                        marked_after<fold<schemes::quarto>()>(0), YOUR_ANSWER>);
