// SPDX-License-Identifier: MIT
/// What is left of a book after whole sheets, and the ways in which it may have been put together on sheets: the values that
/// `sheets_of_book` answers with. They say nothing of how they were found.
#pragma once

#include <bifolium/core/fraction.hpp>
#include <bifolium/core/range.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
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
  int leaves_to_sheet{};               ///< of the format
  std::int64_t whole{};                ///< whole sheets, which gatherings make by themselves
  std::vector<Remnant> units{};        ///< what is left
  std::vector<FreePlace> places{};     ///< places of deleted leaves
  std::int64_t groupings{};            ///< how many ways there are
  std::int64_t groupings_of_likes{};   ///< the same, where units that are alike are not told apart
  int fewest_pieces{};                 ///< the fewest pieces of presswork
  std::int64_t with_fewest_pieces{};   ///< how many ways need just so many
  std::int64_t with_least_left_over{}; ///< and of these, how many leave the fewest leaves over
  /// Sheets of one copy: the least and the most that any of the ways takes, and as `likeliest` has it.
  Range<Fraction> paper{};
  std::vector<SheetGrouping> likeliest{}; ///< of those the first, at most 20, likes not told apart
  std::optional<SheetQuestion> decides{}; ///< what to look at; none where one way is left, or nothing can tell
};

} // namespace v0
} // namespace bifolium
