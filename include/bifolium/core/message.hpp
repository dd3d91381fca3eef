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
  case Problem::text_goes_on:
    return "'{found}' stands where the text should end";
  case Problem::text_ends:
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
  }
  return "an unknown problem";
}

/// The whole sentence about an error, with line and column: `line 2, column 14: no piece is called 'off'`.
inline std::string message(Error const& error) {
  std::string text{"line "};
  text.append(std::to_string(error.line)).append(", column ").append(std::to_string(error.column)).append(": ");
  auto rest = sentence(error.problem);
  while (!rest.empty()) {
    auto const open = rest.find('{');
    text += rest.substr(0, open);
    if (open == std::string_view::npos) break;
    auto const close = rest.find('}', open);
    if (rest.substr(open, close - open + 1) == "{found}")
      text += error.found;
    else
      text += std::to_string(error.limit);
    rest.remove_prefix(close + 1);
  }
  return text;
}

} // namespace v0
} // namespace bifolium
