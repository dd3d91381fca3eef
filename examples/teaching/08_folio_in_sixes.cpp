// SPDX-License-Identifier: MIT
// Lesson 8. Folio in sixes: sheets inside one another.
//
// Fold: fold_a_sheet 'folio in sixes' --out . gives three sheets. Fold each once and set them
//   inside one another, the first outside.
// Look: class_page 'folio in sixes' --out sixes.html
// See: the pages of one sheet are no longer neighbours. Sheet 1 holds 1 and 2 and the last two
//   pages; the printer must know the text of page 12 before he can print page 1. That is why he
//   casts off (lesson 13). Set in order, the forme in the middle is the first that is complete;
//   set by formes, work began there too and went outwards (Hinman, Cast-Off Copy for the First
//   Folio, 1955; from memory).
// Task: tasks/08_folio_in_sixes.cpp
#include <bifolium/edition/standing_type.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include "said.hpp"

#include <iomanip>
#include <string>

using namespace bifolium;

constexpr auto const& sixes = impose<schemes::folio_in_sixes>();
static_assert(sixes.sheets() == 3 && sixes.pages() == 12);
// Cowie's Printer's Pocket-Book: in a quire two pages side by side add up to its pages and one
// more.
static_assert(sixes.outer(0, 0, 0).page + sixes.outer(0, 1, 0).page == 13);

int main() {
  lesson::say("Three sheets, type on the stone:\n" + forme_text(sixes));
  lesson::say(explain_steps(schemes::folio_in_sixes.scheme()).value());
  for (int page : {1, 6, 7})
    lesson::say(explain_page(schemes::folio_in_sixes.scheme(), page).value());
  auto const first = first_forme_in_order(sixes);
  lesson::say("\nSet in order, the first forme to be complete is the " +
              std::string{first.side == Side::outer ? "outer" : "inner"} + " one of sheet " +
              std::to_string(first.sheet + 1) + ", when " + std::to_string(first.set_in_order) +
              " pages are set.");
  lesson::say(
      "Set by itself, from the middle outwards, a forme has these pages, and so many others\n"
      "must be cast off before it can be set:");
  for (int sheet = sixes.sheets() - 1; sheet >= 0; --sheet)
    for (auto const side : {Side::inner, Side::outer}) {
      for (auto const one : sixes.forme(side, sheet)) std::cout << std::setw(3) << one.page;
      std::cout << std::setw(6) << forme_type(sixes, sheet, side).cast_off_pages << '\n';
    }
}
