// SPDX-License-Identifier: MIT
/// Finds the sheets on which a book was printed. After whole sheets are taken from each gathering, and from gatherings
/// of a run that an attested scheme makes of one sheet (8 and 4 of a duodecimo), some leaves are left: preliminaries, the
/// last gathering, cancels, inserted leaves. Printers did not waste paper, so some of these were printed together on one
/// sheet, and a leaf that is missing from its place (-L4) may have left room for a title leaf, a cancel or an insert. The
/// function counts all ways to print these remnants on sheets, lists those with the fewest pieces of presswork first, and
/// names the one observation that decides most between them.
///
/// The result depends on the number of leaves of a sheet and on evidence of stocks of paper and of watermarks. A small
/// number of pieces of presswork is economical, but it does not prove anything. The function does not check whether the
/// pages of two remnants can be imposed together.
///
/// `paper` (collation/paper.hpp) counts the same sheets without grouping them. The paper of a grouping is the number
/// stated there, less the leaves printed in free places, plus the leaves left blank. So no grouping takes less than the
/// low number, and one takes the stated number if the remnants fill their sheets.
#pragma once

#include <bifolium/book/sheet_grouping.hpp>
#include <bifolium/collation/formula.hpp>
#include <bifolium/core/number_of.hpp>

namespace bifolium {
inline namespace v0 {

/// Counts the ways to print on sheets of `format` what is left after whole sheets. What was seen of one unit is joined.
/// Errors: number_too_large if more is left than can be counted (about 24 units, with the places of missing leaves; 16 if all
/// are different); no_such_remnant if there is evidence for a unit that the formula does not have; remnant_seen_twice if two
/// things seen of one unit contradict each other; negative_count and too_many_marked_leaves if a unit cannot have so many
/// marked leaves. Precondition: the format says how many leaves a sheet makes.
[[nodiscard]] BIFOLIUM_INLINE Expected<SheetsOfBook> sheets_of_book(Formula const& formula, Format format,
                                                                    std::vector<RemnantEvidence> const& seen = {});

/// Says in words what to look at: `whether A and K were printed on one sheet (as in 1 of 2 ways): one fold of the sheet has
/// the mark in its gutter and the other has none`, `whether π was printed in the place of L4 (as in 1 of 2 ways)`.
[[nodiscard]] inline std::string to_words(SheetsOfBook const& book, SheetQuestion const& question) {
  auto const& first = book.units[question.first].name;
  auto const ways =
      " (as in " + std::to_string(question.together) + " of " + number_of(question.of, "way", "ways") + "): ";
  if (question.place) {
    auto const& place = book.places[*question.place];
    return "whether " + first + " was printed in the place of " + place.name + ways +
           "compare its paper with that of " + place.gathering +
           ": stock, distance of the chain lines, and that each sheet has one mark in all";
  }
  std::string words =
      "whether " + first + " and " + book.units[question.second].name + " were printed on one sheet" + ways;
  switch (book.leaves_to_sheet) {
  case 2:
    return words + "one leaf of the two has the mark, the other has not";
  case 4:
    return words +
           "one fold of the sheet has the mark in its gutter and the other has none; a mark in both, or in neither, "
           "excludes it";
  case 8:
    return words +
           "the sheet has one mark, in quarters at the head of four leaves; more than four such leaves exclude it";
  case 12:
    return words + "the sheet has one mark, on two leaves at the fore-edge; more than two such leaves exclude it";
  default:
    return words + "compare the paper: stock, distance of the chain lines, and that there is one mark in all";
  }
}

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/book/detail/sheets/sheets_of_book.hpp>
#endif
