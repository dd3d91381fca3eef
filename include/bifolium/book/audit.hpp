// SPDX-License-Identifier: MIT
/// The result of examining a description: what each field implies, which fields contradict each other, and which edits
/// would make them agree. A finding has a stable identifier, a severity, and a sentence for people. A repair is a list
/// of edits of the text as written, with its probability among all possible mistakes.
#pragma once

#include <bifolium/book/detail/slips/text_edit.hpp>
#include <bifolium/book/field.hpp>
#include <bifolium/book/slip_kind.hpp>
#include <bifolium/core/text_place.hpp>
#include <bifolium/leaf/alphabet.hpp>

#include <optional>
#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The kinds of finding. Numbers and identifiers are stable.
enum class FindingId : std::uint16_t {
  pages_contradict = 601,           ///< no number of leaves agrees with both formula and pagination
  leaves_contradict = 602,          ///< a stated number of leaves differs from that of the formula or the pagination
  last_blank_not_counted = 603,     ///< the fields agree if a blank leaf at the end was not counted
  letters_skip = 604,               ///< a letter is missing between two gatherings
  gathering_twice = 605,            ///< a gathering is stated twice
  format_against_size = 606,        ///< the size of the leaf is evidence against the format
  format_against_chain_lines = 607, ///< the chain lines are evidence against the format
  format_against_gatherings = 608,  ///< gatherings of this size are rare in the format
  /// the leaf is so low or so high that the unit of its height or a figure is probably wrong
  height_unit = 609,
  height_below_width = 610,   ///< the leaf is broader than high and is not described as oblong
  year_before_paper = 611,    ///< this paper did not exist in that year
  year_impossible = 612,      ///< the year is before printing with movable type in Europe
  plates_in_leaves = 613,     ///< plates are counted among the leaves
  exponent_omitted = 614,     ///< a gathering has no leaf count in the text
  odd_gathering = 615,        ///< a gathering has an odd number of leaves
  numbers_begin_inside = 616, ///< page 1 is not at the beginning of a gathering
  /// the pagination does not say how many pages there are, or pages without numbers are not in it
  pages_uncounted = 617,
  part_unread = 618,              ///< a text was not read
  format_differs = 619,           ///< the format statement differs from the format in the formula
  gatherings_differ = 620,        ///< the statement of gatherings ("in fours") differs from the formula
  cover_below_leaf = 621,         ///< the binding is lower than the leaf
  signing_beyond_gathering = 622, ///< more leaves are described as signed than the gatherings have
  numbers_begin_on_verso = 623,   ///< odd page numbers would be on versos
  not_searched = 624,             ///< some repairs were not searched for: the formula or pagination is too long
  dates_contradict = 625,         ///< the date of the imprint and the coded date have no common year
  date_numerals_differ = 626,     ///< the year in Roman numerals differs from the one supplied in arabic figures
  read_with_doubt = 627,          ///< a text was read and may mean something else
  places_contradict = 628,        ///< the place of the imprint is not in the country that is coded
  stated_twice = 629,             ///< the text of another field states the same fact with another value
  signing_of_no_leaf = 630,       ///< the statement of signing names a leaf that the formula does not have
  oblong_but_high = 631,          ///< the leaf is higher than broad and is described as oblong
  /// a limit of the caller was reached: numbers of leaves were not compared, or findings are left out
  limit_reached = 632,
  format_against_watermark = 633,   ///< no leaf of the format has its watermark at this place
  paper_signs_in_vellum = 634,      ///< chain lines or a watermark are stated of vellum, which has neither
  format_against_edges = 635,       ///< bolts and rough edges are evidence against the format
  format_against_point_hole = 636,  ///< a point-hole is evidence against the format
  format_against_countermark = 637, ///< no leaf of the format has its countermark at this place
  format_against_leaves = 638       ///< what leaves of a gathering show together is evidence against the format
};

inline constexpr int first_finding = 601; ///< the number of the first kind of finding; the others follow without a gap
inline constexpr int finding_count = 38;  ///< number of kinds of finding

/// Returns the identifier of a finding: `pages_contradict`. A number that is not a finding, such as that of
/// `Finding{}`, gives "unknown".
[[nodiscard]] constexpr std::string_view identifier(FindingId id) noexcept {
  constexpr char const* names[finding_count]{"pages_contradict",
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
                                             "not_searched",
                                             "dates_contradict",
                                             "date_numerals_differ",
                                             "read_with_doubt",
                                             "places_contradict",
                                             "stated_twice",
                                             "signing_of_no_leaf",
                                             "oblong_but_high",
                                             "limit_reached",
                                             "format_against_watermark",
                                             "paper_signs_in_vellum",
                                             "format_against_edges",
                                             "format_against_point_hole",
                                             "format_against_countermark",
                                             "format_against_leaves"};
  auto const i = static_cast<int>(id) - first_finding;
  return i >= 0 && i < finding_count ? names[i] : "unknown";
}
static_assert(static_cast<int>(FindingId::format_against_leaves) == first_finding + finding_count - 1);

/// Returns the kind of finding that has an identifier, such as one that was stored, or no value if none has it.
/// Example: `find_finding("stated_twice") == FindingId::stated_twice`.
[[nodiscard]] constexpr std::optional<FindingId> find_finding(std::string_view text) noexcept {
  for (int i = first_finding; i < first_finding + finding_count; ++i)
    if (identifier(static_cast<FindingId>(i)) == text) return static_cast<FindingId>(i);
  return std::nullopt;
}

/// The severity of a finding.
enum class Severity : std::uint8_t {
  note,  ///< unusual, but found in correct descriptions
  doubt, ///< unlikely
  error  ///< a contradiction
};
/// Returns the identifier of a severity: `error`, `doubt`, `note`. A number that is not a severity gives "unknown".
[[nodiscard]] constexpr std::string_view identifier(Severity severity) noexcept {
  constexpr char const* names[]{"note", "doubt", "error"};
  auto const i = static_cast<std::size_t>(severity);
  return i < std::size(names) ? names[i] : "unknown";
}

/// A set of fields.
class FieldSet {
  std::uint32_t bits_{};

public:
  constexpr FieldSet() = default;
  /// Makes a set of one field. Precondition: `one` is an enumerator.
  constexpr FieldSet(Field one) {
    if (static_cast<std::size_t>(one) >= field_count) broken("there is no field with this number");
    bits_ = 1U << static_cast<unsigned>(one);
  }
  /// Returns the union of two sets.
  friend constexpr FieldSet operator|(FieldSet a, FieldSet b) noexcept {
    FieldSet both;
    both.bits_ = a.bits_ | b.bits_;
    return both;
  }
  /// Returns true if the set has the field.
  [[nodiscard]] constexpr bool has(Field field) const noexcept {
    return static_cast<std::size_t>(field) < field_count && (bits_ >> static_cast<unsigned>(field) & 1U) != 0;
  }
  /// Returns true if the set has no field.
  [[nodiscard]] constexpr bool empty() const noexcept { return bits_ == 0; }
  friend constexpr bool operator==(FieldSet, FieldSet) = default;
};

/// The number of leaves, or the year, that a field implies: from `low` to `high`.
struct Implied {
  /// The quantity that is implied.
  enum class Quantity : std::uint8_t { leaves, year };
  Field from{};        ///< the field
  Quantity of{};       ///< the quantity
  std::int64_t low{};  ///< the least value
  std::int64_t high{}; ///< the greatest value
  friend constexpr bool operator==(Implied const&, Implied const&) = default;
};

/// An edit of the text of one field. Edits of one text do not overlap. If two begin at the same place, the one that
/// removes no text comes first in the result.
struct Edit {
  Field field{};      ///< the field whose text is edited
  SlipKind kind{};    ///< the slip that the edit corrects
  std::size_t from{}; ///< position of the first byte that is removed
  std::size_t to{};   ///< position after the last byte that is removed
  TextPlace at{};     ///< line and column of the removed text
  std::string old{};  ///< the removed text; it has no characters if the edit only adds
  std::string put{};  ///< the new text; it has no characters if the edit only removes
  Field corrects{};   ///< the field whose value is corrected: `field`, or one that its text states beside its own value
  friend bool operator==(Edit const&, Edit const&) = default;
};

/// A contradiction or an unusual fact in a description.
struct Finding {
  FindingId id{};    ///< the kind
  Severity level{};  ///< the severity
  FieldSet fields{}; ///< the fields with the contradiction
  /// pages or leaves too many (more than 0) or too few (less than 0), if a number is concerned
  std::optional<std::int64_t> delta{};
  std::string says{};                  ///< one sentence with the values of the fields, in one line of UTF-8
  std::optional<std::string> settle{}; ///< what to look at in the book to decide, if a look can
  std::vector<Edit> edits{};           ///< edits that add a missing leaf count; empty for other kinds
  std::optional<Field> doubted{};      ///< the field that is probably wrong, if one can be named
  friend bool operator==(Finding const&, Finding const&) = default;
};

/// Returns the text of a field after those of the edits that belong to this field. Precondition: the edits were made
/// for this text, so that each removes what it says.
[[nodiscard]] inline std::string edited(std::string_view text, Field field, std::vector<Edit> const& edits) {
  std::vector<detail::TextEdit> of_field;
  for (auto const& edit : edits) {
    if (edit.field != field) continue;
    if (edit.from > edit.to || edit.to > text.size() || TextSpan{edit.from, edit.to}.of(text) != edit.old)
      broken("an edit must be of the text to which it is applied");
    of_field.push_back({{edit.from, edit.to}, edit.put});
  }
  return detail::edited(text, of_field);
}

/// Edits after which the description agrees, or the description as it is.
struct Repair {
  std::vector<Edit> edits{}; ///< one or two edits; none for the description as it is
  /// the letters with which the formula must be read, if they are not the stated ones
  std::optional<Letters> letters{};
  std::int64_t leaves{}; ///< number of leaves of the book after the edits
  std::optional<std::string>
      formula{}; ///< the formula after the edits, if there is one, with what its text states beside it
  std::optional<std::string> pagination{};  ///< the pagination after the edits, if there is one
  std::optional<std::string> leaves_text{}; ///< the stated number of leaves after the edits, if there is one
  std::string says{};                       ///< the slip in words
  double share{};                           ///< its probability, among all proposals and the case that none is right
  friend bool operator==(Repair const&, Repair const&) = default;
};

/// Returns a probability in words, since people understand words better than numbers. In tests, repairs called very
/// likely were right nine times out of ten.
[[nodiscard]] constexpr std::string_view likelihood_in_words(double share) noexcept {
  return share >= .8 ? "very likely" : share >= .5 ? "likely" : "perhaps";
}

/// Returns what to look at in the book to decide whether the first slip of a repair was made, or no value for the
/// description as it is, which has no slip.
[[nodiscard]] inline std::optional<std::string_view> what_settles(Repair const& repair) noexcept {
  if (!repair.edits.empty()) {
    auto const& edit = repair.edits.front();
    auto const* in_leaves = edit.corrects == Field::leaves ? detail::row_of(edit.kind).settles_leaves : nullptr;
    return in_leaves != nullptr ? std::string_view{in_leaves} : what_settles(edit.kind);
  }
  return repair.letters ? std::optional{what_settles(SlipKind::alphabet)} : std::nullopt;
}

/// The result of examining a description.
struct Audit {
  std::vector<Implied> implied{};  ///< implied values, in the order of the fields
  std::vector<Finding> findings{}; ///< the findings, the most severe first
  std::vector<Repair> repairs{};   ///< at most ten repairs, the most likely first
  /// probability that no repair is right; with those of the repairs it adds up to 1
  double share_none{};
  std::optional<std::int64_t> leaves{}; ///< the number of leaves, if the fields agree

  /// Returns true if every finding is a note: no fields contradict each other, no value is unlikely, every field could be
  /// read, if not to its end. Words beside a value may be unread, which `left_unread` tells. Also true where there is nothing to
  /// compare, as in an empty record.
  [[nodiscard]] bool agrees() const {
    for (auto const& finding : findings)
      if (finding.level != Severity::note) return false;
    return true;
  }
  /// Returns true if fields contradict each other: a finding is an error. A field that could not be read contradicts nothing.
  [[nodiscard]] bool contradicts() const {
    for (auto const& finding : findings)
      if (finding.level == Severity::error) return true;
    return false;
  }
  /// Returns true if a field, or a part of one, was not read, or was not compared because of a limit. Words beside a value
  /// that was read count too: `340 p. (misnumbered 304)` has a value and is not read to its end.
  [[nodiscard]] bool left_unread() const {
    for (auto const& finding : findings)
      if (finding.id == FindingId::part_unread || finding.id == FindingId::limit_reached) return true;
    return false;
  }
  friend bool operator==(Audit const&, Audit const&) = default;
};

} // namespace v0
} // namespace bifolium
