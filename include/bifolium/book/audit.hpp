// SPDX-License-Identifier: MIT
/// What an examination of a description answers: what each field implies, what has no common value, and which edits would make
/// it agree. A finding has an identifier that stays the same, a severity, and one sentence for a person; a repair is an edit
/// of the text as written, with its share among all that could be wrong.
#pragma once

#include <bifolium/book/detail/text_edit.hpp>
#include <bifolium/book/field.hpp>
#include <bifolium/leaf/alphabet.hpp>

#include <optional>
#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// What is found. The numbers and identifiers are stable.
enum class FindingId : std::uint16_t {
  pages_contradict = 601,           ///< formula and pagination have no common number of leaves
  leaves_contradict = 602,          ///< a stated number of leaves is not that of the formula or the pagination
  last_blank_not_counted = 603,     ///< they agree if a blank leaf at the end was not counted
  letters_skip = 604,               ///< a letter is missing between two gatherings
  gathering_twice = 605,            ///< a gathering is stated twice
  format_against_size = 606,        ///< the size of the leaf tells against the format
  format_against_chain_lines = 607, ///< the chain lines tell against the format
  format_against_gatherings = 608,  ///< so many leaves to a gathering are hardly met in the format
  height_unit = 609,                ///< centimetres taken for millimetres, or the other way round
  height_below_width = 610,         ///< broader than high, and not said to be oblong
  year_before_paper = 611,          ///< the paper did not exist in that year
  year_impossible = 612,            ///< before printing with movable type in Europe
  plates_in_leaves = 613,           ///< plates are counted among the leaves
  exponent_omitted = 614,           ///< a gathering has no number of leaves in the text
  odd_gathering = 615,              ///< a gathering of an odd number of leaves
  numbers_begin_inside = 616,       ///< page 1 does not begin a gathering
  pages_uncounted = 617,            ///< the pagination does not say how many pages there are
  part_unread = 618,                ///< text that was not read
  format_differs = 619,             ///< the format statement and that of the formula differ
  gatherings_differ = 620,          ///< "in fours" and the formula differ
  cover_below_leaf = 621,           ///< the binding is lower than the leaf
  signing_beyond_gathering = 622,   ///< more leaves are said to be signed than gatherings have
  numbers_begin_on_verso = 623,     ///< odd page numbers would be on versos
  not_searched = 624                ///< too long a formula or pagination to look for repairs
};

/// The identifier: `pages_contradict`.
[[nodiscard]] constexpr std::string_view identifier(FindingId id) noexcept {
  constexpr char const* names[]{"pages_contradict",
                                "leaves_contradict",
                                "last_blank_not_counted",
                                "letters_skip",
                                "gathering_twice",
                                "format_against_size",
                                "format_against_chain_lines",
                                "format_against_gatherings",
                                "height_unit",
                                "height_below_width",
                                "year_before_paper",
                                "year_impossible",
                                "plates_in_leaves",
                                "exponent_omitted",
                                "odd_gathering",
                                "numbers_begin_inside",
                                "pages_uncounted",
                                "part_unread",
                                "format_differs",
                                "gatherings_differ",
                                "cover_below_leaf",
                                "signing_beyond_gathering",
                                "numbers_begin_on_verso",
                                "not_searched"};
  return names[static_cast<std::size_t>(id) - 601];
}

/// How grave a finding is.
enum class Severity : std::uint8_t {
  note,  ///< odd, but met in sound descriptions
  doubt, ///< unlikely
  error  ///< no value agrees
};
/// The identifier: `error`, `doubt`, `note`.
[[nodiscard]] constexpr std::string_view identifier(Severity severity) noexcept {
  return severity == Severity::error ? "error" : severity == Severity::doubt ? "doubt" : "note";
}

/// Some of the fields.
class FieldSet {
  std::uint32_t bits_{};

public:
  constexpr FieldSet() = default;
  /// One or two.
  constexpr FieldSet(Field one) : bits_{1U << static_cast<unsigned>(one)} {}
  /// Those of both.
  friend constexpr FieldSet operator|(FieldSet a, FieldSet b) noexcept {
    FieldSet both;
    both.bits_ = a.bits_ | b.bits_;
    return both;
  }
  /// The field is among them.
  [[nodiscard]] constexpr bool has(Field field) const noexcept {
    return (bits_ >> static_cast<unsigned>(field) & 1U) != 0;
  }
  /// None is.
  [[nodiscard]] constexpr bool empty() const noexcept { return bits_ == 0; }
  friend constexpr bool operator==(FieldSet, FieldSet) = default;
};

/// What a field says the number of leaves, or a year, is: from `low` to `high`.
struct Implied {
  /// Of what.
  enum class Quantity : std::uint8_t { leaves, year };
  Field from{};        ///< the field that says so
  Quantity of{};       ///< of what
  std::int64_t low{};  ///< at least
  std::int64_t high{}; ///< at most
  friend constexpr bool operator==(Implied const&, Implied const&) = default;
};

/// An edit of the text of one field. Edits of one text do not overlap; where two begin at one place, the one that takes no
/// text away comes first in the result.
struct Edit {
  Field field{};           ///< whose text is edited
  SlipKind kind{};         ///< the slip that it mends
  std::size_t from{};      ///< the first byte of the text that goes
  std::size_t to{};        ///< the byte after the last
  std::uint32_t column{1}; ///< where that is, in code points from 1
  std::string old{};       ///< the text that goes; may be empty
  std::string put{};       ///< the text that comes; may be empty
};

/// Something that does not agree, or is odd.
struct Finding {
  FindingId id{};            ///< what it is
  Severity level{};          ///< how grave it is
  FieldSet fields{};         ///< those concerned
  std::int64_t delta{};      ///< pages or leaves too many (more than zero) or too few; 0 where no number is concerned
  std::string says{};        ///< one sentence: what each field says
  std::string settle{};      ///< what to look at to settle it; may be empty
  std::vector<Edit> edits{}; ///< that write out what was understood; for an omitted number of leaves alone
};

/// The text of a field after those of the edits that are of the field. pre: the edits are of that text.
[[nodiscard]] inline std::string edited(std::string_view text, Field field, std::vector<Edit> const& edits) {
  std::vector<detail::TextEdit> of_field;
  for (auto const& edit : edits)
    if (edit.field == field) of_field.push_back({{edit.from, edit.to}, edit.put});
  return detail::edited(text, of_field);
}

/// Edits after which the description agrees, or the description as it is.
struct Repair {
  std::vector<Edit> edits{}; ///< none, one or two; none: as it reads
  std::optional<Letters>
      letters{};         ///< the letters with which the formula is to be read, where they are not those stated
  std::int64_t leaves{}; ///< how many leaves the book then has
  std::optional<std::string> formula{};     ///< the fields after the edits, where they are stated
  std::optional<std::string> pagination{};  ///< the pagination after them
  std::optional<std::string> leaves_text{}; ///< the stated number of leaves after them
  std::string says{};                       ///< the slip in words
  double share{};                           ///< how likely, among all proposals and none of them
};

/// A share in words: people read words better than figures. What is said to be very likely was right nine times of ten in tests.
[[nodiscard]] constexpr std::string_view likelihood_in_words(double share) noexcept {
  return share >= .8 ? "very likely" : share >= .5 ? "likely" : "perhaps";
}

/// The answer.
struct Audit {
  std::vector<Implied> implied{};       ///< by field, in the order of the fields
  std::vector<Finding> findings{};      ///< the gravest first
  std::vector<Repair> repairs{};        ///< at most ten, the likeliest first
  double share_none{};                  ///< how likely none of the repairs is right; with their shares it adds up to 1
  std::optional<std::int64_t> leaves{}; ///< the number of leaves, where the fields agree about it

  /// No field contradicts another, and none is unlikely.
  [[nodiscard]] bool agrees() const {
    for (auto const& finding : findings)
      if (finding.level != Severity::note) return false;
    return true;
  }
};

} // namespace v0
} // namespace bifolium
