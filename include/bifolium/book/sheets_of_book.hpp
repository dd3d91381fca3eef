// SPDX-License-Identifier: MIT
/// The sheets on which a book was printed. When whole sheets are taken from each gathering, something is left: preliminaries, the
/// last gathering, cancels, inserted leaves. Printers did not waste paper, so some of these were printed together on one sheet;
/// and a leaf that is not in its place (-L4) may have left room for a cancel or an insert. All ways to put the remnants on sheets
/// are counted here, those of the fewest pieces of presswork are listed first, and the one thing to look at that decides
/// most between them is named.
///
/// What this rests on: the number of leaves a sheet makes, and what was seen of stocks of paper and of marks. That few pieces of
/// presswork were made is economy and no fact. Whether the pages of two remnants can be imposed together is not asked.
#pragma once

#include <bifolium/collation/formula.hpp>
#include <bifolium/core/fraction.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// What is left of a gathering after whole sheets, a cancel, or inserted leaves.
struct Remnant {
  /// Where it comes from.
  enum class Kind : std::uint8_t {
    part_sheet, ///< what is left of a gathering
    cancellans, ///< a leaf that took the place of another
    inserted    ///< leaves that were put in
  };
  std::string name{};                 ///< `A`, `±C3`, `+χ1`
  int leaves{};                       ///< how many
  Kind kind{};                        ///< where it comes from
  std::uint32_t likes{};              ///< units of one number are alike: cancels, or part-sheets of one run
  std::string stock{};                ///< the stock of paper, if it was seen; units of two stocks are not of one sheet
  std::optional<int> marked_leaves{}; ///< on how many of its leaves a piece of a mark is, if that was seen
};

/// What somebody saw of a unit, by its name.
struct RemnantEvidence {
  std::string unit{};                 ///< the name as in `Remnant`
  std::string stock{};                ///< a name for its stock of paper; empty if not told
  std::optional<int> marked_leaves{}; ///< on how many leaves a piece of a mark is; none if nobody looked
};

/// The place of a leaf that the ideal copy does not have.
struct FreePlace {
  std::string name{}; ///< `L4`
  int leaves{};       ///< how many
};

/// One way to put the units on sheets.
struct SheetGrouping {
  std::vector<std::vector<std::uint32_t>> sheets{}; ///< the units of each sheet or part of one, by their number
  std::vector<std::pair<std::uint32_t, std::uint32_t>>
      in_places{};  ///< units printed in the place of a deleted leaf: unit, place
  int pieces{};     ///< pieces of presswork beside the whole sheets
  int left_over{};  ///< leaves printed for nothing
  Fraction paper{}; ///< sheets of one copy, whole ones included
};

/// Two units, and in how many groupings they are of one sheet.
struct SheetQuestion {
  std::uint32_t first{}, second{}; ///< two units, by their number
  std::int64_t together{};         ///< groupings in which they are on one sheet
  std::int64_t of{};               ///< of all
};

/// The answer.
struct SheetsOfBook {
  int leaves_to_sheet{};                  ///< of the format
  std::int64_t whole{};                   ///< whole sheets, which gatherings make by themselves
  std::vector<Remnant> units{};           ///< what is left
  std::vector<FreePlace> places{};        ///< places of deleted leaves
  std::int64_t groupings{};               ///< how many ways there are
  std::int64_t groupings_of_likes{};      ///< the same, where units that are alike are not told apart
  int fewest_pieces{};                    ///< the fewest pieces of presswork
  std::int64_t with_fewest_pieces{};      ///< how many ways need just so many
  std::int64_t with_least_left_over{};    ///< and of these, how many leave the fewest leaves over
  std::vector<SheetGrouping> likeliest{}; ///< of those the first, at most 20, likes not told apart
  std::optional<SheetQuestion> decides{}; ///< what to look at; none where one way is left, or nothing can tell
};

} // namespace v0
} // namespace bifolium

#include <bifolium/book/detail/exact_cover.hpp>
#include <bifolium/book/detail/remnants.hpp>

namespace bifolium {
inline namespace v0 {

/// Counts the ways to put what is left after whole sheets on sheets of `format`.
/// error: number_too_large where more is left than can be counted (some 24 units; 16 where all differ).
/// pre: the format says how many leaves a sheet makes.
[[nodiscard]] inline Expected<SheetsOfBook> sheets_of_book(Formula const& formula, Format format,
                                                           std::vector<RemnantEvidence> const& seen = {}) {
  auto const leaves = format.leaves_to_sheet();
  if (!leaves) broken("sheets can be counted only for a format that says how many leaves a sheet makes");
  SheetsOfBook book;
  book.leaves_to_sheet = *leaves;
  detail::Remnants{formula, book}.find();
  for (auto& unit : book.units)
    for (auto const& one : seen)
      if (one.unit == unit.name) unit.stock = one.stock, unit.marked_leaves = one.marked_leaves;
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
