// SPDX-License-Identifier: MIT
/// A description of a book as values: whatever a catalogue says of it, every field optional. Each value keeps the text it was
/// read from and where in its field that text begins, so that a repair can be an edit of what the cataloguer wrote. Nothing is
/// compared here: `examine` does that.
#pragma once

#include <bifolium/book/field.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/core/year_range.hpp>
#include <bifolium/evidence/observation.hpp>
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/signing.hpp>
#include <bifolium/record/size_statement.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// A value and the text it was read from.
template <class T> struct Stated {
  T value;                 ///< what the text means
  std::string text{};      ///< as written
  std::uint32_t column{1}; ///< where the text begins in its field, in code points from 1
};

/// What a catalogue does with blank leaves at the ends of a book.
enum class BlankLeaves : std::uint8_t {
  unknown, ///< not known: two pages fewer may be the blank leaf at the end
  counted, ///< all are counted
  left_out ///< none is
};

/// How a catalogue writes. From its rules (040 $e), or known of it.
struct Conventions {
  Omitted omitted{};                ///< what a gathering without a number of leaves means
  std::optional<Letters> letters{}; ///< letters beside the 23; none: not known
  BlankLeaves blanks{};             ///< whether blank leaves are counted
  friend constexpr bool operator==(Conventions const&, Conventions const&) = default;

  /// How formulas are read.
  [[nodiscard]] constexpr Dialect dialect() const { return {omitted, letters.value_or(Letters{}), true}; }
};

/// Text of a field that could not be read, and why.
struct UnreadField {
  Field field{};      ///< which
  Error error{};      ///< why, with the column
  std::string text{}; ///< the text that was not read: the whole field, or a parenthesis of a formula
  std::size_t from{}; ///< where it begins in the text of the field, in bytes
};

/// What is said of a book.
struct Description {
  std::optional<Stated<Formula>> formula{};           ///< the collation formula
  std::optional<Stated<Pagination>> pagination{};     ///< the extent or the statement of pagination
  std::optional<Stated<std::int64_t>> leaves{};       ///< a number of leaves stated by itself
  std::optional<Stated<std::int64_t>> plates{};       ///< leaves of plates
  std::optional<Stated<Format>> format{};             ///< the format statement
  std::optional<Stated<Signing>> signing{};           ///< the statement of signing
  std::optional<Stated<int>> gatherings{};            ///< leaves of most gatherings: "in fours"
  std::optional<Stated<SizeRange>> height{}, width{}; ///< of the leaf
  std::optional<Stated<SizeRange>> binding{};         ///< the height of the cover
  std::optional<Stated<ChainLines>> chain_lines{};    ///< their direction
  std::optional<Stated<Material>> material{};         ///< laid or wove paper, vellum
  std::optional<Stated<YearRange>> year{};            ///< of printing
  std::optional<Stated<Region>> place{};              ///< of printing
  std::vector<UnreadField> unread{};                  ///< what could not be read
  Conventions conventions{};                          ///< of the catalogue
};

} // namespace v0
} // namespace bifolium
