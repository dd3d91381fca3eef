// SPDX-License-Identifier: MIT
/// The sheets on which a book was printed. When whole sheets are taken from each gathering, something is left: preliminaries, the
/// last gathering, cancels, inserted leaves. Printers did not waste paper, so some of these were printed together on one sheet;
/// and a leaf that is not in its place (-L4) may have left room for a cancel or an insert. All ways to put the remnants on sheets
/// are counted here, those of the fewest pieces of presswork are listed first, and the one thing to look at that decides
/// most between them is named.
///
/// What this rests on: the number of leaves a sheet makes, and what was seen of stocks of paper and of marks. That few pieces of
/// presswork were made is economy and no fact. Whether the pages of two remnants can be imposed together is not asked.
///
/// `paper` (collation/paper.hpp) reckons the same sheets without grouping them. What a grouping takes is the number stated there,
/// without the leaves printed in free places and with those left white; so none takes less than the low number, and one takes the
/// stated number where the remnants come out even.
#pragma once

#include <bifolium/book/detail/exact_cover.hpp>
#include <bifolium/book/detail/remnants.hpp>
#include <bifolium/leaf/read_signature.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {
/// What was seen belongs to a unit; or to a gathering that fills whole sheets, of which nothing is asked.
inline std::optional<Error> take_evidence(Formula const& formula, std::vector<RemnantEvidence> const& seen,
                                          SheetsOfBook& book) {
  for (auto const& one : seen) {
    bool known = false;
    for (auto& unit : book.units)
      if (one.unit == unit.name) unit.stock = one.stock, unit.marked_leaves = one.marked_leaves, known = true;
    if (known) continue;
    auto const mark = read_signature(one.unit, formula.letters());
    if (!mark || !IdealCopy{formula}.find(*mark))
      return error_at(Problem::no_such_remnant, 1, 1, one.unit.data(), one.unit.size());
  }
  return std::nullopt;
}
} // namespace detail

/// Counts the ways to put what is left after whole sheets on sheets of `format`.
/// error: number_too_large where more is left than can be counted (some 24 units; 16 where all differ); no_such_remnant where
/// something was seen of a unit that the formula does not have.
/// pre: the format says how many leaves a sheet makes.
[[nodiscard]] inline Expected<SheetsOfBook> sheets_of_book(Formula const& formula, Format format,
                                                           std::vector<RemnantEvidence> const& seen = {}) {
  auto const leaves = format.leaves_to_sheet();
  if (!leaves) broken("sheets can be counted only for a format that says how many leaves a sheet makes");
  SheetsOfBook book;
  book.leaves_to_sheet = *leaves;
  detail::Remnants{formula, book}.find();
  if (auto const error = detail::take_evidence(formula, seen, book)) return *error;
  detail::ExactCover cover{book};
  if (!cover.possible())
    return error_at(Problem::number_too_large, 1, 1, "number of part-sheets", 21, detail::ExactCover::most_units);
  cover.count();
  return book;
}

/// What to look at, in words: `A and K: a sheet of 4° has one mark, on one fold of its two: look for it in both`.
[[nodiscard]] inline std::string to_words(SheetsOfBook const& book, SheetQuestion const& question) {
  auto const &first = book.units[question.first].name, &second = book.units[question.second].name;
  std::string words = "whether " + first + " and " + second + " are of one sheet (in " +
                      std::to_string(question.together) + " of " + std::to_string(question.of) + " ways they are): ";
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
