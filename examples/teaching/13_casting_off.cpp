// SPDX-License-Identifier: MIT
// Lesson 13. Casting off, and the paper of an edition.
//
// Look: a page of manuscript and a page of type. Count the words of three lines of each.
// See: from the words of the manuscript follow the pages, from the pages the sheets, from the
//   sheets and the copies the reams of paper and the work at the press. Nothing is hidden: a
//   ream is named where it is used.
// Task: tasks/13_casting_off.cpp
#include <bifolium/edition.hpp>
#include <bifolium/explain.hpp>

#include "said.hpp"

using namespace bifolium;

// An invented book of 27,000 words: 9 words a line, 32 lines a page.
constexpr Sample sample{.in_copy = 27'000, .a_line = 9, .lines_a_page = 32};
constexpr auto cast = cast_off(sample).value();
static_assert(cast.pages.stated == 94);

constexpr Edition edition{
    .scheme = schemes::octavo, .pages = 96, .copies = 500, .ream = reams::of_500};

int main() {
  std::cout << "27,000 words make " << cast.pages.stated
            << " pages; they are printed on 96, six sheets.\n";
  auto const bill = reckon(edition).value();
  std::cout << "500 copies take " << bill.sheets.stated << " sheets, " << bill.paper->reams
            << " reams of 500, " << bill.presswork.impressions << " impressions.\n\n";
  lesson::say(explain_count(schemes::octavo.scheme(), 500).value());
}
