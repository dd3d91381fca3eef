// SPDX-License-Identifier: MIT
// Task 11. A sheet folded as folio, quarto, octavo or common twelves: which one is it? Write 2, 4,
// 8 or 12 in place of each YOUR_ANSWER; the last answer is a number of millimetres.
#include <bifolium/fold.hpp>
#include <bifolium/paper.hpp>

#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

// The format of four whose first leaf with the mark has it there, with chain lines that run so.
template <auto const& folded>
constexpr bool fits(ChainLines chains, double from_head, double from_gutter) {
  for (auto const leaf : folded) {
    auto const shown = shows(folded, leaf);
    auto const mark = shown.watermark_lying(Lie::as_given);
    if (mark && shown.chain_lines == chains && mark->from_head == from_head &&
        mark->from_gutter == from_gutter)
      return true;
  }
  return false;
}
constexpr int format_with(ChainLines chains, double from_head, double from_gutter) {
  return fits<fold<schemes::folio>()>(chains, from_head, from_gutter)    ? 2
         : fits<fold<schemes::quarto>()>(chains, from_head, from_gutter) ? 4
         : fits<fold<schemes::octavo>()>(chains, from_head, from_gutter) ? 8
                                                                         : 12;
}

struct chain_lines_horizontal_and_the_mark_in_the_middle_of_the_gutter;
struct chain_lines_vertical_and_the_mark_in_the_middle_of_the_leaf;
struct chain_lines_vertical_and_the_mark_at_the_head_of_the_gutter;
struct height_of_an_uncut_quarto_leaf_of_a_sheet_of_315_x_450_mm;

static_assert(answer_is<chain_lines_horizontal_and_the_mark_in_the_middle_of_the_gutter,
                        format_with(ChainLines::horizontal, 0.5, 0), YOUR_ANSWER>);
static_assert(answer_is<chain_lines_vertical_and_the_mark_in_the_middle_of_the_leaf,
                        format_with(ChainLines::vertical, 0.5, 0.5), YOUR_ANSWER>);
static_assert(answer_is<chain_lines_vertical_and_the_mark_at_the_head_of_the_gutter,
                        format_with(ChainLines::vertical, 0, 0), YOUR_ANSWER>);
constexpr auto leaf =
    leaf_size(fold<schemes::quarto>().sheet(0), Sheet<millimetres>{315_mm, 450_mm});
static_assert(answer_is<height_of_an_uncut_quarto_leaf_of_a_sheet_of_315_x_450_mm,
                        static_cast<int>(leaf.height.count()), YOUR_ANSWER>);
