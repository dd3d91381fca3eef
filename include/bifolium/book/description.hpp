// SPDX-License-Identifier: MIT
/// A description of a book as values: the statements of a catalogue, in which every field is optional. Each value keeps
/// the text from which it was read and the place of this text in its field, so that a repair can be an edit of the
/// cataloguer's text. This header does not compare fields; `examine` does.
#pragma once

#include <bifolium/book/field.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/core/error.hpp>
#include <bifolium/core/optional_number.hpp>
#include <bifolium/core/text_place.hpp>
#include <bifolium/core/year_range.hpp>
#include <bifolium/evidence/observation.hpp>
#include <bifolium/paper/country_code.hpp>
#include <bifolium/paper/place.hpp>
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/signing.hpp>
#include <bifolium/record/size_statement.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// A value and the text from which it was read.
template <class T> struct Stated {
  T value;            ///< the meaning of the text
  std::string text{}; ///< the text as written
  TextPlace at{};     ///< line and column at which the text begins in its field
  /// the field of which the text is a part, if the text of another field states the value: pages after a formula
  std::optional<Field> in{};
  std::size_t from{}; ///< position at which the text begins in its field, in bytes
  friend bool operator==(Stated const&, Stated const&) = default;
};

/// The way in which a catalogue treats blank leaves at the ends of a book.
enum class BlankLeaves : std::uint8_t {
  unknown, ///< unknown: two pages fewer may be the blank leaf at the end
  counted, ///< all blank leaves are counted
  left_out ///< no blank leaf is counted
};

/// What a catalogue does with pages that bear no numbers.
enum class PagesWithoutNumbers : std::uint8_t {
  counted, ///< all are counted, in brackets, as by the rules for rare books
  left_out ///< those at the ends may be left out: fewer pages than the formula has are no contradiction
};

/// The conventions of a catalogue, from its rules (`conventions_of`, book/cataloguing_rules.hpp) or otherwise known.
struct Conventions {
  Omitted omitted{};                ///< the meaning of a gathering without a leaf count
  std::optional<Letters> letters{}; ///< the letters used in addition to the 23; no value if unknown
  BlankLeaves blanks{};             ///< whether the numbers of pages and leaves count blank leaves
  PagesWithoutNumbers pages{};      ///< whether the number of pages counts those without numbers
  friend constexpr bool operator==(Conventions const&, Conventions const&) = default;

  /// Returns the dialect in which formulas are read.
  [[nodiscard]] constexpr Dialect dialect() const { return {omitted, letters.value_or(Letters{}), true}; }
};

/// A text of a field that could not be read, and the reason.
struct UnreadField {
  Field field{};      ///< the field
  Error error{};      ///< the reason, with the column
  std::string text{}; ///< the text: the whole field, or a part of it; empty if it is longer than the limit
  std::size_t from{}; ///< position at which it begins in the text of the field, in bytes
  bool rest{};        ///< true if the field has a value, and this text is beside it
  friend bool operator==(UnreadField const&, UnreadField const&) = default;
};

/// A text that was read and may mean something else. A field can have very many, so none of them keeps its text.
struct FieldDoubt {
  Field field{}; ///< the field
  Error doubt{}; ///< the doubt, with its line and column in the text of the field
  friend bool operator==(FieldDoubt const&, FieldDoubt const&) = default;
};

/// A fact that the text of another field states again, with another value: plates listed after the pages, the format in
/// the text of the size, pages and signing after the formula.
struct SecondStatement {
  Field field{};        ///< the fact
  Field in{};           ///< the field whose text states it again
  std::string first{};  ///< the text of its own field, or the first that states it
  std::string second{}; ///< the text that states it again
  friend bool operator==(SecondStatement const&, SecondStatement const&) = default;
};

/// The statements of a catalogue about a book.
struct Description {
  std::optional<Stated<Formula>> formula{};       ///< the collation formula
  std::optional<Stated<Pagination>> pagination{}; ///< the extent or the statement of pagination
  std::optional<Stated<std::int64_t>> leaves{};   ///< a number of leaves that is stated by itself
  std::optional<Stated<std::int64_t>> plates{};   ///< leaves of plates
  std::optional<Stated<Format>> format{};         ///< the format statement, if it names one
  std::vector<Format> formats{};                  ///< the formats of a statement that names several
  std::optional<Stated<Signing>> signing{};       ///< the statement of signing
  std::optional<Stated<int>> gatherings{};        ///< leaves of most gatherings: "in fours"
  /// the other of two sizes that alternate: 4 of "8.4", where `gatherings` has 8
  OptionalNumber<int> gatherings_alternating_with{};
  std::optional<Stated<SizeRange>> height{}, width{};                    ///< height and width of the leaf
  std::optional<Stated<SizeRange>> binding{};                            ///< height of the cover
  std::optional<Stated<ChainLines>> chain_lines{};                       ///< direction of the chain lines
  std::optional<Stated<MarkPlace>> watermark{};                          ///< place of the watermark in the leaf
  std::optional<Stated<MarkPlace>> countermark{};                        ///< place of the countermark in the leaf
  std::optional<Stated<EdgeSeen>> head_edge{}, tail_edge{}, fore_edge{}; ///< what no binder cut away of the edges
  std::optional<Stated<HolePlace>> point_hole{};                         ///< place of the hole of a press point
  std::optional<Stated<EvidenceOfLeaves>> leaves_seen{};                 ///< what leaves of one gathering show
  std::optional<Stated<Material>> material{};                            ///< laid or wove paper, vellum
  std::optional<Stated<YearRange>> year{};                               ///< year of printing
  std::optional<Stated<YearRange>> coded_year{}; ///< year of printing, coded beside the imprint (MARC 21, 008)
  std::optional<Stated<Region>> place{};         ///< place of printing
  /// all places that the statement of place names or can mean; empty if it says that one of them is false
  std::vector<Place> places{};
  std::optional<Stated<CountryCode>> coded_place{}; ///< country of printing, coded beside the imprint (MARC 21, 008)
  std::vector<SecondStatement> again{};             ///< facts stated twice, where the two differ
  std::vector<UnreadField> unread{};                ///< texts that could not be read
  std::vector<FieldDoubt> doubts{};                 ///< texts that were read and are doubtful
  Conventions conventions{};                        ///< conventions of the catalogue

  /// Returns true if no field, and no part of a formula, could not be read. Texts beside the values may be left.
  [[nodiscard]] bool is_complete() const {
    for (auto const& one : unread)
      if (!one.rest || one.error.problem != Problem::trailing_text) return false;
    return true;
  }
  friend bool operator==(Description const&, Description const&) = default;
};

} // namespace v0
} // namespace bifolium
