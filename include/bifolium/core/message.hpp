// SPDX-License-Identifier: MIT
/// The sentences for `Problem`: what was found, what would be right. They stand apart from the errors themselves, so
/// that a program which only counts the rows in error never includes <string>.
#pragma once

#include <bifolium/core/expected.hpp>

#include <string>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The sentence for a problem. `{found}` stands for the text that was met, `{limit}` for the number or bound that
/// would have been right; `message` fills them in.
constexpr std::string_view sentence(Problem problem) noexcept {
  switch (problem) {
  case Problem::none:
    return "nothing is wrong";

  case Problem::not_a_number:
    return "found '{found}' where a whole number should stand";
  case Problem::number_too_large:
    return "'{found}' is too large to be reckoned with";
  case Problem::trailing_text:
    return "'{found}' stands where the text should end";
  case Problem::unexpected_end:
    return "the text ends where more should follow";
  case Problem::not_utf8:
    return "a byte here belongs to no UTF-8 character";
  case Problem::not_positive:
    return "'{found}' should be more than nothing";
  case Problem::unknown_unit:
    return "'{found}' is no unit of length known here: write mm, cm, in, pouces or lignes";
  case Problem::unknown_format:
    return "'{found}' is no format: write it as 8°, 8vo or octavo";
  case Problem::not_a_length:
    return "found '{found}' where a length should stand, such as 187 mm, 18.7 cm or 4 3/4 in";
  case Problem::unit_missing:
    return "'{found}' has no unit: write mm, cm, in, pouces or lignes behind the number";

  case Problem::unknown_word:
    return "'{found}' is not a word of the language of folding at this place";
  case Problem::name_expected:
    return "found '{found}' where a name should stand: a letter, then letters, figures or _";
  case Problem::name_is_reserved:
    return "'{found}' is a word of the language and cannot be a name";
  case Problem::name_too_long:
    return "the name '{found}' has more than {limit} characters";
  case Problem::name_taken:
    return "the name '{found}' is already given to another piece";
  case Problem::no_such_piece:
    return "no piece is called '{found}'";
  case Problem::piece_is_cut_up:
    return "'{found}' has been cut: name one of the pieces it was cut into";
  case Problem::piece_is_folded:
    return "'{found}' is folded already: cuts come while a piece is flat";
  case Problem::piece_used_twice:
    return "'{found}' stands in a gathering already";
  case Problem::piece_left_over:
    return "'{found}' is left over: every piece must come into a gathering";
  case Problem::line_outside_piece:
    return "line {found} does not run inside the piece as it lies";
  case Problem::too_many_sheets:
    return "more than {limit} sheets";
  case Problem::too_many_pieces:
    return "more than {limit} pieces";
  case Problem::too_many_steps:
    return "more than {limit} cuts and folds";
  case Problem::too_many_cells:
    return "more than {limit} leaves to the sheets together";
  case Problem::too_many_gatherings:
    return "more than {limit} gatherings";
  case Problem::scheme_line_first:
    return "found '{found}' where the line 'scheme NAME FORMAT' should stand first";
  case Problem::sheets_come_first:
    return "sheets are described before anything is cut, folded or gathered";
  case Problem::no_sheet:
    return "the scheme has no sheet";
  case Problem::no_gathering:
    return "the scheme has no gathering";
  case Problem::pair_needs_single_leaves:
    return "'{found}' is more than one leaf: x+y joins two single leaves";
  case Problem::inner_needs_single_leaf:
    return "'{found}' is folded: ':inner' is for a single leaf";
  case Problem::not_folded_up:
    return "'{found}' still lies {limit} leaves wide: it is not folded up to one";
  case Problem::no_spine:
    return "'{found}' has no crease that runs far-near, so it has no spine";
  case Problem::leaves_not_conjugate:
    return "in '{found}' leaf {limit} is not joined to its conjugate across the gutter: it folds, but to no gathering";
  case Problem::page_twice_in_forme:
    return "page {limit} would stand twice in one forme";
  case Problem::copies_differ:
    return "gathering '{found}' begins with page {limit} as another does, but has other leaves";
  case Problem::backed_by_other_leaf:
    return "turned so, page {limit} is backed by a page of another leaf";
  case Problem::backed_head_to_tail:
    return "turned so, page {limit} is backed head to tail";
  case Problem::no_signature:
    return "found '{found}' where a signature should stand, such as A, 2B, *, π or [par.]";
  case Problem::unknown_mark:
    return "'{found}' is no signature: put the name of a symbol in square brackets";
  case Problem::second_letter_is_place:
    return "in '{found}' the first letter is the alphabet and the second the place in it (Aa, Ab ... Az), which is no "
           "doubled letter: number the gatherings, or put each mark in quotation marks";
  case Problem::inserted_leaf_or_gathering:
    return "'{found}' was read as one leaf, numbered {limit}; if a whole gathering is inserted, raise its count "
           "(π1+A⁸)";
  case Problem::identity_not_in_formula:
    return "'{found}' is said to be the same leaf, but the formula has no such leaf";
  case Problem::numbers_read_by_sequence:
    return "'{found}' was parted so that the numbers of the gatherings run on: raise the count, or write 12-20(4)";
  case Problem::very_thick_gathering:
    return "'{found}' has {limit} leaves in one gathering; if two counts take turns, write A-K8/4";
  case Problem::mark_too_long:
    return "'{found}' is too long for a signature: at most {limit} bytes";
  case Problem::no_leaf_count:
    return "'{found}' has no leaf count: write A⁸, or say in the dialect what an omitted count means";
  case Problem::flat_count:
    return "'{found}' stands on the line: this dialect wants the count raised (A⁸, A^8)";
  case Problem::zero_leaf_count:
    return "'{found}' is a gathering of no leaves";
  case Problem::run_crosses_series:
    return "the run to '{found}' crosses from one series to another: write each series as a run of its own";
  case Problem::run_goes_backwards:
    return "the run to '{found}' goes backwards";
  case Problem::flat_numbers:
    return "in '{found}' the number of the gathering and its leaf count cannot be told apart: raise the count, or "
           "write 12-20(4)";
  case Problem::bracket_not_opened:
    return "'{found}' closes a bracket that was not opened";
  case Problem::parenthesis_not_closed:
    return "the parenthesis '{found}' is not closed";
  case Problem::change_without_gathering:
    return "the change '{found}' stands before any gathering";
  case Problem::no_such_gathering:
    return "'{found}' names a gathering the formula does not have at this point";
  case Problem::no_such_leaf:
    return "'{found}' names a leaf beyond the {limit} of its gathering";
  case Problem::leaf_changed_twice:
    return "leaf '{found}' is deleted or cancelled already";
  case Problem::change_not_understood:
    return "'{found}' is no change: write (-A4), (±A4), (A3+1), (A3+χ1.2) or [=B2]";
  case Problem::multiple_too_high:
    return "'{found}' multiplies a signature by more than {limit}";
  case Problem::cycle_too_long:
    return "'{found}' alternates between more than {limit} counts";
  case Problem::odd_gathering:
    return "'{found}' is an odd number of leaves: leaves are conjugate in pairs; A⁸(-A8) or a single leaf may be meant";
  case Problem::letter_not_in_alphabet:
    return "'{found}' is not in the alphabet of this formula: J was read as I, U as V, W in its place; declare the "
           "letter if it was used";
  case Problem::alternation_over_odd_run:
    return "'{found}' alternates over {limit} gatherings, which the cycle does not divide: write the last one apart";
  case Problem::imperfect:
    return "'+' says that more leaves once existed: the count is a lower bound";
  case Problem::bracket_not_closed:
    return "the bracket '{found}' is not closed";
  case Problem::bracket_misread:
    return "'{found}' was read as an opening bracket, as scans have it";
  case Problem::count_supplied:
    return "'{found}' has no leaf count: {limit} was supplied, as the dialect says";
  case Problem::count_apart:
    return "the leaf count '{found}' stands apart from its signature";
  case Problem::run_of_one:
    return "the run to '{found}' has one gathering: the signature alone would do";
  case Problem::series_read_flat:
    return "'{found}' was read as a series raised before the letter: the run would go backwards otherwise";
  case Problem::duplicate_read_flat:
    return "'{found}' was read as a duplicate before a letter; π or χ and a gathering of its own may be meant";
  case Problem::series_starts_again:
    return "'{found}' comes again or out of order, with no mark of a new series";
  case Problem::joined_leaves_listed_apart:
    return "'{found}': these leaves are conjugate, which is written with a point, not a comma";
  case Problem::apart_leaves_listed_joined:
    return "'{found}': these leaves are not conjugate, which is written with a comma, not a point";
  case Problem::pair_after_last_leaf:
    return "'{found}' stands after the last leaf: it is the next gathering, and its letter can be inferred";
  case Problem::letter_read_as_figure:
    return "'{found}': the letter l was read as the figure 1";
  case Problem::leaves_read_as_count:
    return "'{found}' was read as leaves of one gathering, {limit} of them";
  case Problem::text_not_read:
    return "'{found}' was left aside as a note";
  case Problem::total_contradicts:
    return "'{found}' is stated, the formula has {limit} leaves";
  case Problem::place_not_stated:
    return "'{found}' does not say after which leaf: the end of the gathering was taken";
  case Problem::change_in_square_brackets:
    return "'{found}' was read as a change, which stands in parentheses";
  case Problem::second_statement_differs:
    return "'{found}' is given as the same book but has {limit} leaves";
  case Problem::part_of_sheet_not_stated:
    return "'{found}' does not say what part of a sheet the leaf is";

  case Problem::name_without_brackets:
    return "'{found}' was read as the name of a symbol: such names stand in square brackets";

  case Problem::not_a_reference:
    return "'{found}' refers to no leaf: write A3r, 2B1v, 36/10, 10b or f. 12v";
  case Problem::reference_not_in_book:
    return "the formula has no leaf '{found}'";
  case Problem::not_an_extent:
    return "'{found}' is no extent: write [8], 205, [3] p. or [2], 152 leaves";
  case Problem::not_a_pagination:
    return "'{found}' is no part of a pagination: write pp. [8] 1-205 [206] or ff. [2] 1-152";
  case Problem::fault_of_no_page:
    return "'{found}' names a number that no page of the statement has";
  case Problem::number_read_as_total:
    return "'{found}' was read as the last of its sequence, from 1 on";
  case Problem::bracket_read_as_number:
    return "'{found}' was read as the number of one page, not as so many pages without numbers";
  case Problem::not_a_signing:
    return "'{found}' is no part of a statement of signing: write [$4 (-A3, B4) signed]";
  case Problem::signing_of_no_leaf:
    return "'{found}' names a leaf that the formula does not have";
  case Problem::exception_changes_nothing:
    return "'{found}' is no exception: the rule says so already";
  case Problem::not_evidence:
    return "'{found}' tells nothing of joints: write A1.4 conjugate, A1.4 disjunct, B2 stub or A2 sewing";
  case Problem::not_stated:
    return "nothing of the kind is stated behind the formula";

  case Problem::date_numerals_differ:
    return "'{found}' in brackets is not the year {limit} printed before it: one of the two is a slip";
  case Problem::several_dates:
    return "'{found}' is a second date, and the statement does not say which is the date of printing";
  case Problem::year_clipped:
    return "'{found}' was read as {limit}";
  case Problem::circa_or_copyright:
    return "'{found}' was read as 'about'; c may also mean copyright";
  case Problem::unknown_place:
    return "no place of printing is known as '{found}'";
  case Problem::ambiguous_place:
    return "'{found}' is the name of {limit} places";
  case Problem::fictitious_place:
    return "'{found}' is a name that false imprints use";

  case Problem::impossible_measure:
    return "the {found} is no length: it must be above nothing and finite";
  case Problem::impossible_years:
    return "the years end before they begin, or have more than four figures";
  case Problem::impossible_gathering:
    return "a gathering has from 1 to 4096 leaves, not {limit}";
  case Problem::gathering_size_needed:
    return "leaves of a gathering need its size: say how many leaves are gathered";
  case Problem::leaf_outside_gathering:
    return "the leaves of this gathering are numbered from 1 to {limit}";
  case Problem::leaf_seen_twice:
    return "leaf {limit} of the gathering is described twice";
  case Problem::not_years:
    return "found '{found}' where a year or a range such as 1450-1500 should stand";
  case Problem::not_a_gathering_size:
    return "found '{found}' where a number of leaves should stand, or two by turns such as 8.4";
  case Problem::not_leaves_seen:
    return "found '{found}' where a leaf and what it shows should stand, such as 3 gutter or 7 fore-edge horizontal";
  case Problem::too_many_leaves_seen:
    return "up to 24 leaves of a gathering can be described";
  case Problem::chain_lines_on_wove:
    return "chain lines and wove paper together: are there two stocks?";
  case Problem::very_narrow_leaf:
    return "the leaf is three times as high as broad, or more: an agenda shape";
  case Problem::marks_in_vellum:
    return "vellum has neither chain lines nor watermarks";
  case Problem::tallest_below_lowest:
    return "the tallest volume is lower than the lowest";
  case Problem::watermark_too_early:
    return "a year of {limit} in a watermark: the first watermarks are of 1282";

  case Problem::negative_count:
    return "'{found}' is below nothing: pages, copies and sheets are counted from 0";
  case Problem::nothing_to_print:
    return "an edition has at least one page and one copy";
  case Problem::too_many_overs:
    return "overs are from 0 to 100 per cent";
  case Problem::ream_needed:
    return "a price or weight by the ream needs a ream: name how many sheets it has";
  case Problem::price_needed:
    return "to be compared by cost each way needs a price: of the ream, the forme or the token";
  case Problem::no_such_type:
    return "words to the square inch are known for types of 5, 5 1/2, 6, 7 and 8 points only";
  }
  return "an unknown problem";
}

/// The sentence about an error with what was found filled in, without its place.
inline std::string sentence_of(Error const& error) {
  std::string text;
  auto rest = sentence(error.problem);
  while (!rest.empty()) {
    auto const open = rest.find('{');
    text += rest.substr(0, open);
    if (open == std::string_view::npos) break;
    auto const close = rest.find('}', open);
    bool const nothing_to_quote = error.found[0] == '\0' && !text.empty() && text.back() == '\'';
    if (rest.substr(open, close - open + 1) != "{found}")
      text += std::to_string(error.limit);
    else if (nothing_to_quote) // the text ended, or the figure is a result and stands in no text
      text.pop_back(), text += text.ends_with("found ") ? "nothing" : "a figure";
    else
      text += error.found;
    rest.remove_prefix(close + (nothing_to_quote ? 2 : 1));
  }
  return text;
}

/// The same with line and column before it: `line 2, column 14: no piece is called 'off'`.
inline std::string message(Error const& error) {
  std::string text{"line "};
  text.append(std::to_string(error.line)).append(", column ").append(std::to_string(error.column)).append(": ");
  return text.append(sentence_of(error));
}

} // namespace v0
} // namespace bifolium
