// SPDX-License-Identifier: MIT
/// Everything that can be wrong with a text or a measurement that came from outside, as one list of stable numbers.
/// The sentences for them are in core/message.hpp, so that code which only tests for an error pays for no text.
/// A number once released keeps its meaning; each part of the library has a hundred of its own.
#pragma once

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// What went wrong. The number is stable; the sentence may be worded better from one release to the next.
enum class Problem : std::uint16_t {
  none = 0,

  // 1-99: numbers, lengths, text in general
  not_a_number = 1,     ///< a whole number was expected
  number_too_large = 2, ///< the number or a result computed from it does not fit
  text_goes_on = 3,     ///< something stands after the end of what was to be read
  text_ends = 4,        ///< the text ends where more was expected
  not_utf8 = 5,         ///< a byte that begins no UTF-8 character
  not_positive = 6,     ///< a measurement or count that must be above nothing
  unknown_unit = 7,     ///< a length in a unit that is not known
  unknown_format = 8,   ///< no format is written so
  not_a_length = 9,     ///< a number with its unit was expected
  unit_missing = 10,    ///< a number without a unit

  // 100-199: the language of folding
  unknown_word = 100,
  name_expected = 101,
  name_is_reserved = 102,
  name_too_long = 103,
  name_taken = 104,
  no_such_piece = 105,
  piece_is_cut_up = 106,
  piece_is_folded = 107,
  piece_used_twice = 108,
  piece_left_over = 109,
  line_outside_piece = 110,
  too_many_sheets = 111,
  too_many_pieces = 112,
  too_many_steps = 113,
  too_many_cells = 114,
  too_many_gatherings = 115,
  scheme_line_first = 116,
  sheets_come_first = 117,
  no_sheet = 118,
  no_gathering = 119,
  pair_needs_single_leaves = 120,
  inner_needs_single_leaf = 121,
  // what folds, but to nothing that can be a book
  not_folded_up = 130,
  no_spine = 131,
  leaves_not_conjugate = 132,
  page_twice_in_forme = 133,
  copies_differ = 134,
  backed_by_other_leaf = 135,
  backed_head_to_tail = 136,

  // 200-299: signatures and the collation formula

  // 300-399: references, pagination, extents, checking a copy

  // 400-499: observations and inference

  // 500-599: the edition: casting off, paper, presswork
};

} // namespace v0
} // namespace bifolium
