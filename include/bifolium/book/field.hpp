// SPDX-License-Identifier: MIT
/// The fields of a description of a book, and what was wrong where one of them is wrong. Both have words for machines, which
/// stay the same from release to release.
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
  gatherings,  ///< how many leaves most gatherings have
  height,      ///< of the leaf
  width,       ///< of the leaf
  binding,     ///< the height of the binding
  chain_lines, ///< their direction
  material,    ///< laid or wove paper, vellum
  year,        ///< of printing
  place        ///< of printing
};
inline constexpr std::size_t field_count = 14; ///< how many fields there are

/// The identifier of a field, as columns are named: `chain_lines`.
[[nodiscard]] constexpr std::string_view identifier(Field field) noexcept {
  constexpr char const* names[field_count]{"formula",     "pagination", "leaves", "plates", "format",
                                           "signing",     "gatherings", "height", "width",  "binding",
                                           "chain_lines", "material",   "year",   "place"};
  return names[static_cast<std::size_t>(field)];
}

/// A kind of slip. The first thirteen happen in a formula, the next nine in a pagination, the last three in a number of leaves;
/// the slips of figures happen in both numbers.
enum class SlipKind : std::uint8_t {
  exponent,           ///< another number of leaves: B⁴ for B⁸
  omitted_exponent,   ///< what a missing number of leaves means
  end_letter,         ///< B-G for B-H
  start_letter,       ///< C-H for B-H
  shifted_letters,    ///< B-G⁴ H² for B-H⁴ I²: the marks that follow moved along
  multiple_lost,      ///< A-V for A-2V
  gathering_missing,  ///< in the middle, where the letters skip
  last_missing,       ///< the last gathering
  first_missing,      ///< the preliminaries
  gathering_twice,    ///< stated twice
  change_missing,     ///< a deleted or inserted leaf is not stated
  change_twice,       ///< a change is counted twice, or is none
  alphabet,           ///< J, U or W are letters of their own
  unnumbered_missing, ///< [2] is missing
  unnumbered_value,   ///< [4] for [2]
  unnumbered_extra,   ///< [2] is one too many
  roman,              ///< a slip in a roman numeral
  unit,               ///< leaves for pages, or pages for leaves
  leaf_as_page,       ///< a leaf counted as one page
  restarted,          ///< numbers that run on were read as beginning again
  misnumbered,        ///< the book itself is misnumbered and "i.e." is missing
  transposed,         ///< 182 for 128
  dropped,            ///< 18 for 128
  doubled,            ///< 1228 for 128
  substituted,        ///< 123 for 128
  plates_counted,     ///< plates counted among the leaves
  blank_not_counted,  ///< a blank leaf not counted
  pages_for_leaves    ///< pages given as leaves
};
inline constexpr std::size_t slip_count = 28; ///< how many kinds of slip there are

/// The identifier of a kind of slip: `transposed`.
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
