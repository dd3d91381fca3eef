// SPDX-License-Identifier: MIT
/// The fields of a description of a book, and the kinds of slip in them. Both have identifiers for programs, which do
/// not change from release to release.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A field of a description.
enum class Field : std::uint8_t {
  formula,     ///< the collation formula
  pagination,  ///< the extent or the statement of pagination
  leaves,      ///< a number of leaves that is stated by itself
  plates,      ///< leaves of plates
  format,      ///< the format statement
  signing,     ///< the statement of signing
  gatherings,  ///< number of leaves of most gatherings
  height,      ///< height of the leaf
  width,       ///< width of the leaf
  binding,     ///< height of the binding
  chain_lines, ///< direction of the chain lines
  material,    ///< laid or wove paper, vellum
  year,        ///< year of printing
  place,       ///< place of printing
  coded_year   ///< year of printing, as a record codes it beside the imprint
};
inline constexpr std::size_t field_count = 15; ///< number of fields

/// Returns the identifier of a field, which is also the name of its column: `chain_lines`.
[[nodiscard]] constexpr std::string_view identifier(Field field) noexcept {
  constexpr char const* names[field_count]{"formula",     "pagination", "leaves", "plates", "format",
                                           "signing",     "gatherings", "height", "width",  "binding",
                                           "chain_lines", "material",   "year",   "place",  "coded_year"};
  return names[static_cast<std::size_t>(field)];
}

/// A kind of slip. The first thirteen occur in a formula, the next nine in a pagination, and the last three in a number
/// of leaves. The four slips of digits occur in both kinds of number.
enum class SlipKind : std::uint8_t {
  exponent,           ///< another number of leaves: B⁴ for B⁸
  omitted_exponent,   ///< another meaning of a missing leaf count
  end_letter,         ///< B-G for B-H
  start_letter,       ///< C-H for B-H
  shifted_letters,    ///< B-G⁴ H² for B-H⁴ I²: the following letters are shifted
  multiple_lost,      ///< A-V for A-2V
  gathering_missing,  ///< a gathering in the middle, where letters are skipped
  last_missing,       ///< the last gathering
  first_missing,      ///< the preliminaries
  gathering_twice,    ///< a gathering is stated twice
  change_missing,     ///< a deleted or inserted leaf is not stated
  change_twice,       ///< a change is stated twice, or changes nothing
  alphabet,           ///< J, U or W are separate letters
  unnumbered_missing, ///< [2] is missing
  unnumbered_value,   ///< [4] for [2]
  unnumbered_extra,   ///< [2] should not be there
  roman,              ///< a slip in a Roman numeral
  unit,               ///< leaves for pages, or pages for leaves
  leaf_as_page,       ///< a leaf counted as one page
  restarted,          ///< a continuing number was read as a new sequence
  misnumbered,        ///< the book itself is misnumbered, and "i.e." is missing
  transposed,         ///< 182 for 128
  dropped,            ///< 18 for 128
  doubled,            ///< 1228 for 128
  substituted,        ///< 123 for 128
  plates_counted,     ///< plates counted among the leaves
  blank_not_counted,  ///< a blank leaf not counted
  pages_for_leaves    ///< pages given as leaves
};
inline constexpr std::size_t slip_count = 28; ///< number of kinds of slip

/// Returns the identifier of a kind of slip: `transposed`.
[[nodiscard]] constexpr std::string_view identifier(SlipKind kind) noexcept {
  constexpr char const* names[slip_count]{"exponent",
                                          "omitted_exponent",
                                          "end_letter",
                                          "start_letter",
                                          "shifted_letters",
                                          "multiple_lost",
                                          "gathering_missing",
                                          "last_missing",
                                          "first_missing",
                                          "gathering_twice",
                                          "change_missing",
                                          "change_twice",
                                          "alphabet",
                                          "unnumbered_missing",
                                          "unnumbered_value",
                                          "unnumbered_extra",
                                          "roman",
                                          "unit",
                                          "leaf_as_page",
                                          "restarted",
                                          "misnumbered",
                                          "transposed",
                                          "dropped",
                                          "doubled",
                                          "substituted",
                                          "plates_counted",
                                          "blank_not_counted",
                                          "pages_for_leaves"};
  return names[static_cast<std::size_t>(kind)];
}

} // namespace v0
} // namespace bifolium
