// SPDX-License-Identifier: MIT
/// The leaves of a book that are left after whole sheets, and the ways in which they may have been printed together on
/// sheets: the values that `sheets_of_book` returns.
#pragma once

#include <bifolium/core/fraction.hpp>
#include <bifolium/core/optional_number.hpp>
#include <bifolium/core/range.hpp>

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// A unit that is left after whole sheets: leaves of a gathering, a cancel, or inserted leaves.
struct Remnant {
  /// The origin of the unit.
  enum class Kind : std::uint8_t {
    part_sheet, ///< leaves of a gathering after whole sheets
    cancellans, ///< a leaf that replaced another
    inserted    ///< inserted leaves
  };
  std::string name{};                 ///< `A`, `±C3`, `+χ1`
  int leaves{};                       ///< number of leaves
  Kind kind{};                        ///< the origin
  std::uint32_t likes{};              ///< units with one number are interchangeable: cancels, or part-sheets of one run
  std::optional<std::string> stock{}; ///< the stock of paper, if known; units of two stocks are not on one sheet
  OptionalNumber<int> marked_leaves{}; ///< number of its leaves that show a part of a watermark, if known
  friend bool operator==(Remnant const&, Remnant const&) = default;
};

/// Evidence about a unit, which is given by its name. What several of these say of one unit is joined.
struct RemnantEvidence {
  std::string unit{};                 ///< the name, as in `Remnant`
  std::optional<std::string> stock{}; ///< a name for its stock of paper, if known
  /// number of its leaves that show a part of a watermark; no value if nobody looked
  OptionalNumber<int> marked_leaves{};
  friend bool operator==(RemnantEvidence const&, RemnantEvidence const&) = default;
};

/// The place of a leaf, or of leaves side by side, that the ideal copy does not have.
struct FreePlace {
  std::string name{};                 ///< its first leaf: `L4`
  int leaves{};                       ///< number of leaves
  std::string gathering{};            ///< the gathering that it is a part of: `L`
  std::optional<std::string> stock{}; ///< the stock of paper of that gathering, if known
  friend bool operator==(FreePlace const&, FreePlace const&) = default;
};

/// One way to print the units on sheets.
struct SheetGrouping {
  std::vector<std::vector<std::uint32_t>> sheets{}; ///< the units of each sheet or part of a sheet, by index
  std::vector<std::pair<std::uint32_t, std::uint32_t>>
      in_places{};  ///< units printed in places of deleted leaves: indices of `SheetsOfBook::units` and of its `places`
  int pieces{};     ///< pieces of presswork in addition to the whole sheets
  int left_over{};  ///< printed leaves that are not used
  Fraction paper{}; ///< sheets of one copy, including whole ones
  friend bool operator==(SheetGrouping const&, SheetGrouping const&) = default;
};

/// Two units, or a unit and the place of a leaf that the book does not have, and the number of groupings that print them
/// on one sheet.
struct SheetQuestion {
  std::uint32_t first{}, second{}; ///< two units, as indices of `SheetsOfBook::units`; of a place, the same unit twice
  /// the place in which the unit may have been printed, as an index of `SheetsOfBook::places`; no value for two units
  OptionalNumber<std::uint32_t> place{};
  std::int64_t together{}; ///< number of groupings that print them on one sheet
  std::int64_t of{};       ///< number of all groupings
  friend constexpr bool operator==(SheetQuestion const&, SheetQuestion const&) = default;
};

/// The sheets of a book.
struct SheetsOfBook {
  int leaves_to_sheet{};               ///< leaves of a sheet in the format
  std::int64_t whole{};                ///< whole sheets, of one gathering or of several that a scheme makes of a sheet
  std::vector<Remnant> units{};        ///< the units that are left
  std::vector<FreePlace> places{};     ///< places of deleted leaves
  std::int64_t groupings{};            ///< number of groupings
  std::int64_t groupings_of_likes{};   ///< number of groupings if interchangeable units are not distinguished
  int fewest_pieces{};                 ///< the least number of pieces of presswork
  std::int64_t with_fewest_pieces{};   ///< number of groupings with this least number
  std::int64_t with_least_left_over{}; ///< number of these that leave the fewest leaves over
  /// Sheets of one copy: the least and the greatest number of any grouping, and in `stated` the number of the most
  /// likely one.
  Range<Fraction> paper{};
  /// at most 20 of the most likely groupings, without distinguishing interchangeable units
  std::vector<SheetGrouping> likeliest{};
  /// what to look at; no value if one grouping is left, or none
  std::optional<SheetQuestion> decides{};
  friend bool operator==(SheetsOfBook const&, SheetsOfBook const&) = default;
};

} // namespace v0
} // namespace bifolium
