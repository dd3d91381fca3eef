// SPDX-License-Identifier: MIT
/// The kinds of slip in a description: what each is called by programs, what it is called by people, and what in the
/// book decides whether it was made. The identifiers do not change from release to release.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A kind of slip. The first thirteen occur in a formula, the next nine in a pagination, and the last three in a number
/// of leaves. The four slips of digits occur in both kinds of number. In an example, what the description says comes
/// before "for", and what it should say after it.
enum class SlipKind : std::uint8_t {
  exponent,           ///< another number of leaves than the gathering has: B⁴ for B⁸
  omitted_exponent,   ///< a missing leaf count means another number than it was read as
  end_letter,         ///< another last gathering of a run: B-G for B-H
  start_letter,       ///< another first gathering of a run: C-H for B-H
  shifted_letters,    ///< B-G⁴ H² for B-H⁴ I²: the following letters are shifted
  multiple_lost,      ///< the multiple of the last gathering is left out: A-V for A-2V
  gathering_missing,  ///< a gathering in the middle is not stated, so that letters are skipped
  last_missing,       ///< the last gathering is not stated
  first_missing,      ///< the gatherings of the preliminaries are not stated
  gathering_twice,    ///< a gathering is stated twice
  change_missing,     ///< a deleted or inserted leaf is not stated
  change_twice,       ///< a change is stated twice, or changes nothing
  alphabet,           ///< J, U or W are separate letters, and the description does not say so
  unnumbered_missing, ///< pages without numbers are not stated: [2] is missing
  unnumbered_value,   ///< another number of pages without numbers: [4] for [2]
  unnumbered_extra,   ///< pages without numbers that the book does not have: [2] should not be there
  roman,              ///< a slip in a Roman numeral
  unit,               ///< leaves for pages, or pages for leaves
  leaf_as_page,       ///< a leaf counted as one page
  restarted,          ///< a continuing number was read as a new sequence
  misnumbered,        ///< the book itself is misnumbered, and "i.e." is missing
  transposed,         ///< two digits in the wrong order: 182 for 128
  dropped,            ///< a digit left out: 18 for 128
  doubled,            ///< a digit written twice: 1228 for 128
  substituted,        ///< a wrong digit: 123 for 128
  plates_counted,     ///< plates counted among the leaves
  blank_not_counted,  ///< a blank leaf not counted
  pages_for_leaves    ///< pages given as leaves
};
inline constexpr std::size_t slip_count = 28; ///< number of kinds of slip

namespace detail {

/// What is known of a kind of slip.
struct SlipRow {
  char const* identifier; ///< its name for programs
  char const* reason;     ///< its name for people, after "x for y" or "x is missing"
  char const* settles;    ///< what to look at in the book to decide
  /// the same for a slip in the stated number of leaves, where it is something else; null if it is not
  char const* settles_leaves{};
};
/// In the order of SlipKind. The slips of digits occur in two fields, and only one of them has numbers of pages.
inline constexpr SlipRow slip_rows[slip_count]{
    {"exponent", "another number of leaves was written",
     "the leaves of this gathering: count them, or find its sewing"},
    {"omitted_exponent", "the number of leaves is not written, and means this",
     "the leaves of this gathering: count them, or find its sewing"},
    {"end_letter", "the run ends with another letter", "the signatures at this place in the book"},
    {"start_letter", "the run begins with another letter", "the signatures at this place in the book"},
    {"shifted_letters", "one letter is wrong, and the following letters are shifted",
     "the signatures at this place in the book"},
    {"multiple_lost", "the number before the letter was lost", "the signatures at this place in the book"},
    {"gathering_missing", "a gathering is missing where a letter is skipped",
     "the signatures at this place in the book"},
    {"last_missing", "the last gathering is wrong or missing", "the last gathering and its signature"},
    {"first_missing", "the preliminaries are missing", "the leaves before the first signed gathering"},
    {"gathering_twice", "a gathering is stated twice, or is not in the book", "whether there are two such gatherings"},
    {"change_missing", "a leaf that was cut away or inserted is not stated",
     "stubs, and the conjugates of the first and last leaves"},
    {"change_twice", "a change to the leaves is counted twice",
     "stubs, and the conjugates of the first and last leaves"},
    {"alphabet", "J, U or W are separate letters in this book",
     "the gathering after V, and whether J, U and W are signed"},
    {"unnumbered_missing", "pages without numbers are missing", "the pages without numbers, blank ones too"},
    {"unnumbered_value", "another number of pages without numbers was written",
     "the pages without numbers, blank ones too"},
    {"unnumbered_extra", "these pages without numbers are not in the book",
     "the pages without numbers, blank ones too"},
    {"roman", "a slip in a Roman numeral", "the number on the last page of this run"},
    {"unit", "leaves and pages were exchanged", "whether the versos have numbers"},
    {"leaf_as_page", "each leaf was counted as one page", "whether the versos have numbers"},
    {"restarted", "the numbers continue instead of beginning again, or the reverse",
     "the first number after the preliminaries"},
    {"misnumbered", "the book is misnumbered", "where the page numbers jump"},
    {"transposed", "two digits were exchanged", "the number on the last page of this run", "the leaves: count them"},
    {"dropped", "a digit was left out", "the number on the last page of this run", "the leaves: count them"},
    {"doubled", "one digit too many was written", "the number on the last page of this run", "the leaves: count them"},
    {"substituted", "one digit was taken for another", "the number on the last page of this run",
     "the leaves: count them"},
    {"plates_counted", "plates were counted as leaves", "whether plates were counted as leaves"},
    {"blank_not_counted", "a blank leaf was not counted", "whether the first or the last leaf is blank"},
    {"pages_for_leaves", "pages were given as leaves", "whether the versos have numbers"},
};
/// Returns true if no column of a row is empty.
constexpr bool slip_rows_complete() noexcept {
  for (auto const& row : slip_rows)
    if (row.identifier == nullptr || row.reason == nullptr || row.settles == nullptr) return false;
  return true;
}
static_assert(slip_rows_complete(), "every kind of slip has a row with an identifier, a reason and what settles it");
static_assert(static_cast<std::size_t>(SlipKind::pages_for_leaves) + 1 == slip_count, "the last kind is the last row");
/// For a number that is not a kind of slip.
inline constexpr SlipRow no_slip{"unknown", "", ""};
/// Returns the row of a kind of slip.
constexpr SlipRow const& row_of(SlipKind kind) noexcept {
  auto const i = static_cast<std::size_t>(kind);
  return i < slip_count ? slip_rows[i] : no_slip;
}

} // namespace detail

/// Returns the identifier of a kind of slip: `transposed`. A number that is not a kind of slip gives "unknown".
[[nodiscard]] constexpr std::string_view identifier(SlipKind kind) noexcept { return detail::row_of(kind).identifier; }
/// Returns what to look at in the book to decide whether a slip was made: `the last gathering and its signature`.
[[nodiscard]] constexpr std::string_view what_settles(SlipKind kind) noexcept { return detail::row_of(kind).settles; }

} // namespace v0
} // namespace bifolium
