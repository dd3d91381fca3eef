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
  trailing_text = 3,    ///< something stands after the end of what was to be read
  unexpected_end = 4,   ///< the text ends where more was expected
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

  // 200-299: signatures and the collation formula: first what cannot be read
  no_signature = 200,       ///< nothing here is a signature
  unknown_mark = 201,       ///< a mark that is no signature and no note
  mark_too_long = 202,      ///< a name, symbol or quoted mark beyond the fixed room
  no_leaf_count = 203,      ///< a gathering without a count, and a dialect that supplies none
  flat_count = 204,         ///< a count on the line, and a dialect that wants it raised
  zero_leaf_count = 205,    ///< a gathering of no leaves
  run_crosses_series = 206, ///< the ends of a run belong to different series
  run_goes_backwards = 207, ///< the last signature of a run comes before the first
  flat_numbers = 208,       ///< numbered gatherings and their counts run together
  bracket_not_opened = 209, ///< a closing bracket too many
  parenthesis_not_closed = 210,
  change_without_gathering = 211, ///< a change before any gathering
  no_such_gathering = 212,        ///< a change names a gathering that is not there
  no_such_leaf = 213,             ///< a change names a leaf the gathering does not have
  leaf_changed_twice = 214,       ///< a leaf is deleted or cancelled twice
  change_not_understood = 215,
  multiple_too_high = 216,
  cycle_too_long = 217,         ///< an alternation of more terms than can be kept
  second_letter_is_place = 218, ///< Aa-Az: the first letter is the alphabet, the second the place in it
  // then what can be read but is doubtful
  odd_gathering = 230,
  letter_not_in_alphabet = 231, ///< J, U or W as the end of a run of an alphabet without it
  alternation_over_odd_run = 232,
  imperfect = 233, ///< `+`: more leaves once existed
  bracket_not_closed = 234,
  bracket_misread = 235, ///< J or another mark where a scan lost an opening bracket
  count_supplied = 236,  ///< the dialect's leaf count for a gathering without one
  count_apart = 237,     ///< a count that stands apart from its signature
  run_of_one = 238,
  series_read_flat = 239,           ///< 2A read as the second series
  duplicate_read_flat = 240,        ///< πA may be π + A
  series_starts_again = 241,        ///< a signature met before, with no sign of a new series
  joined_leaves_listed_apart = 242, ///< a comma between conjugates
  apart_leaves_listed_joined = 243, ///< a point between leaves that are not conjugate
  pair_after_last_leaf = 244,       ///< what follows the last leaf is the next gathering
  letter_read_as_figure = 245,      ///< l read as 1
  leaves_read_as_count = 246,       ///< m1-3: leaves 1 to 3 counted as three
  text_not_read = 247,              ///< words left aside
  total_contradicts = 248,          ///< a stated total and the formula
  place_not_stated = 249,           ///< an insertion that does not say where
  change_in_square_brackets = 250,
  second_statement_differs = 251,   ///< A = B, where B counts otherwise
  part_of_sheet_not_stated = 252,   ///< single sheet, fraction unknown
  name_without_brackets = 253,      ///< par⁴ for [par.]⁴
  inserted_leaf_or_gathering = 254, ///< π1+A8: one leaf, or a gathering whose count lost its raising
  identity_not_in_formula = 255,    ///< [=B2] where the formula has no B2
  very_thick_gathering = 256,       ///< more leaves than are folded together; perhaps an alternation run together
  numbers_read_by_sequence = 257,   ///< 1-210 312: numbers and counts parted so that the numbers run on

  // 300-399: references, pagination, extents, checking a copy
  not_a_reference = 300,       ///< no leaf is referred to so
  reference_not_in_book = 301, ///< the formula has no such leaf
  not_an_extent = 303,
  not_a_pagination = 304,          ///< no statement of pagination or foliation
  fault_of_no_page = 306,          ///< a warning: a misprint, omission or repetition of a number no page has
  number_read_as_total = 307,      ///< a warning: 205 read as 1-205
  bracket_read_as_number = 308,    ///< a warning: [2] read as page 2, not as two pages
  not_a_signing = 309,             ///< no statement of signing
  signing_of_no_leaf = 310,        ///< a warning: an exception that names no leaf of the formula
  exception_changes_nothing = 311, ///< a warning: -A5 where only four leaves are signed
  not_evidence = 312,              ///< no evidence of how leaves are joined
  not_stated = 313,                ///< no signing or no pagination stands behind the formula

  // dates and places of printing, as catalogues state them
  date_numerals_differ = 320, ///< a warning: `MDCCXXV [1752]`
  several_dates = 321,        ///< a warning: years that the statement does not join
  year_clipped = 322,         ///< a warning: 742 read as 1742
  circa_or_copyright = 323,   ///< a warning: c1890
  unknown_place = 325,        ///< no place of printing is called so
  ambiguous_place = 326,      ///< a warning: a name of several towns
  fictitious_place = 327,     ///< a warning: a name that false imprints use

  // 400-499: observations and inference
  impossible_measure = 400, ///< a height, width or type height that is no length
  impossible_years = 401,   ///< a range of years that ends before it begins, or one of more than four figures
  impossible_gathering = 402,
  gathering_size_needed = 403,  ///< leaves of a gathering were seen, but not how many leaves it has
  leaf_outside_gathering = 404, ///< a leaf seen has a number the gathering has not
  leaf_seen_twice = 405,
  not_years = 406,
  not_a_gathering_size = 407,
  not_leaves_seen = 408,
  too_many_leaves_seen = 409,
  chain_lines_on_wove = 410,  ///< a warning: mixed stocks
  very_narrow_leaf = 411,     ///< a warning: the shape of the agenda
  marks_in_vellum = 412,      ///< a warning
  tallest_below_lowest = 420, ///< the volumes of a set
  watermark_too_early = 421,  ///< a year in a watermark before there were watermarks

  // 500-599: the edition: casting off, paper, presswork
  negative_count = 500,   ///< pages, copies or sheets below nothing
  nothing_to_print = 501, ///< an edition of no pages or no copies
  too_many_overs = 502,   ///< spoilage and overplus of more than the edition itself
  ream_needed = 503,      ///< a price by the ream, and no ream named
  price_needed = 504,     ///< a comparison by cost of ways without a price
  no_such_type = 505,     ///< a size of type of which the table does not know how much it holds
};

} // namespace v0
} // namespace bifolium
