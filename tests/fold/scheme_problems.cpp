// SPDX-License-Identifier: MIT
// Every problem of the language of folding: a text that has it, and the place that is told.
#include <bifolium/core/message.hpp>
#include <bifolium/fold.hpp>

#include "check.hpp"
#include "marked_text.hpp"

#include <string>

using namespace bifolium;

namespace {

std::string const first_line = "scheme x 4°\n";
std::string const quarto_sheet = "scheme x 4°\nsheet S rows 2 columns 2 long-side far-near\n";
std::string const two_leaves = "scheme x 2°\nsheet S rows 2 columns 1 long-side far-near\n";

/// A line for each number from `from` up to `to`, in which every `%` is the number and every `&` the one before it.
std::string lines(std::string_view line, int from, int to) {
  std::string all;
  for (int i = from; i <= to; ++i) {
    for (char c : line)
      if (c == '%')
        all += std::to_string(i);
      else if (c == '&')
        all += std::to_string(i - 1);
      else
        all += c;
    all += '\n';
  }
  return all;
}

struct Wrong {
  Problem problem;
  std::string text; ///< `@` marks the place, MarkedText
  std::string found{};
  std::int64_t limit{};
};

/// Reading the text or folding it tells this problem, there, and what was found.
void is_told(Wrong const& wrong) {
  MarkedText const marked{wrong.text};
  CAPTURE(wrong.text);
  auto const scheme = read_scheme(marked.text);
  auto const folded = scheme ? fold(*scheme) : Expected<Fold<>>{scheme.error()};
  REQUIRE_FALSE(folded);
  auto const& error = folded.error();
  INFO(message(error));
  CHECK(identifier(error.problem) == identifier(wrong.problem));
  CHECK(error.place->line == marked.line);
  CHECK(error.place->column == marked.column);
  CHECK(error.found == wrong.found);
  CHECK(error.limit == wrong.limit);
}

} // namespace

TEST_CASE("every problem of words and names in a scheme is told where it stands") {
  Wrong const all[]{
      {Problem::scheme_line_first, "@"},
      {Problem::scheme_line_first, "\n# nothing else@"},
      {Problem::scheme_line_first, "\n@sheet S rows 1", "sheet"},
      {Problem::unexpected_end, "scheme@"},
      {Problem::unexpected_end, "scheme x@\n"},
      {Problem::name_expected, "scheme @x! 4°", "x!"},
      // an error keeps the first 23 bytes of what was found
      {Problem::name_too_long, "scheme @" + std::string(48, 'x') + " 4°", std::string(23, 'x'), 47},
      {Problem::unknown_format, "scheme x @doormat", "doormat"},
      {Problem::unexpected_end, "scheme x 4° reads@"},
      {Problem::unknown_word, "scheme x 4° reads @upwards", "upwards"},
      {Problem::trailing_text, "scheme x 4° @read", "read"},
      {Problem::no_sheet, "scheme x 4°@"},
      {Problem::no_sheet, "scheme x 4°\n@fold S right-over-left 1", "fold"},
      {Problem::no_gathering, quarto_sheet + "@"},
      {Problem::unknown_word, quarto_sheet + "@crease S", "crease"},

      {Problem::unexpected_end, first_line + "sheet@"},
      {Problem::unexpected_end, first_line + "sheet S@"},
      {Problem::unknown_word, first_line + "sheet S @columns 2", "columns"},
      {Problem::not_positive, first_line + "sheet S rows @0", "0"},
      {Problem::not_a_number, first_line + "sheet S rows @2x", "2x"},
      {Problem::number_too_large, first_line + "sheet S rows @129", "129", 128},
      {Problem::unexpected_end, first_line + "sheet S rows 2 columns@"},
      {Problem::not_positive, first_line + "sheet S rows 2 columns @0", "0"},
      {Problem::too_many_cells, first_line + "sheet S rows 20 columns @20", "20", 128},
      {Problem::unexpected_end, first_line + "sheet S rows 2 columns 2 half@"},
      {Problem::unknown_word, first_line + "sheet S rows 2 columns 2 @third", "third"},
      {Problem::unexpected_end, first_line + "sheet S rows 2 columns 2 long-side@"},
      {Problem::unknown_word, first_line + "sheet S rows 2 columns 2 long-side @upright", "upright"},
      {Problem::unknown_word, quarto_sheet + "sheet T rows 1 columns 1 long-side far-near turned @by", "by"},
      {Problem::unexpected_end, quarto_sheet + "sheet T rows 1 columns 1 long-side far-near turned about@"},
      {Problem::sheets_come_first, quarto_sheet + "fold S right-over-left 1\n@sheet T", "sheet"},
      {Problem::sheets_come_first, quarto_sheet + "gathering A S\n@sheet T", "sheet"},

      {Problem::unexpected_end, quarto_sheet + "cut S@"},
      {Problem::unknown_word, quarto_sheet + "cut S @line 1", "line"},
      {Problem::line_outside_piece, quarto_sheet + "cut S row @2 a b", "2"},
      {Problem::line_outside_piece, quarto_sheet + "cut S column @0 a b", "0"},
      {Problem::name_taken, quarto_sheet + "cut S row 1 @S b", "S"},
      {Problem::name_taken, quarto_sheet + "cut S row 1 a @a", "a"},
      {Problem::name_taken, quarto_sheet + "sheet @S rows 1 columns 1 long-side far-near", "S"},
      {Problem::name_expected, quarto_sheet + "cut S row 1 @1b b", "1b"},
      {Problem::name_expected, quarto_sheet + "cut S row 1 a @b-c", "b-c"},
      {Problem::name_is_reserved, quarto_sheet + "cut S row 1 @under b", "under"},
      {Problem::name_is_reserved, quarto_sheet + "gathering @page S", "page"},
      {Problem::name_too_long, quarto_sheet + "cut S row 1 @sixteen_letters_ b", "sixteen_letters_", 15},
      {Problem::piece_is_folded, quarto_sheet + "fold S right-over-left 1\ncut @S row 1 a b", "S"},
      {Problem::piece_used_twice, quarto_sheet + "gathering A S\ncut @S row 1 a b", "S"},
      {Problem::no_such_piece, quarto_sheet + "cut @T row 1 a b", "T"},

      {Problem::no_such_piece, quarto_sheet + "fold @T right-over-left 1", "T"},
      {Problem::piece_is_cut_up, quarto_sheet + "cut S row 1 a b\nfold @S right-over-left 1", "S"},
      {Problem::unexpected_end, quarto_sheet + "fold S@"},
      {Problem::unknown_word, quarto_sheet + "fold S @right-on-left 1", "right-on-left"},
      {Problem::unexpected_end, quarto_sheet + "fold S right-over-left@"},
      {Problem::trailing_text, quarto_sheet + "fold S right-over-left 1 @over", "over"},

      {Problem::no_such_piece, quarto_sheet + "gathering A @T", "T"},
      {Problem::unexpected_end, quarto_sheet + "gathering A@"},
      {Problem::unexpected_end, quarto_sheet + "gathering A S page@"},
      {Problem::not_positive, quarto_sheet + "gathering A S page @0", "0"},
      {Problem::number_too_large, quarto_sheet + "gathering A S page @60001", "60001", 60000},
      {Problem::piece_is_cut_up, quarto_sheet + "cut S row 1 a b\ngathering A @S", "S"},
      {Problem::piece_used_twice, quarto_sheet + "gathering A S @S", "S"},
      {Problem::piece_left_over, quarto_sheet + "cut S row 1 a @b\ngathering A a", "b"},
      {Problem::unknown_word, quarto_sheet + "gathering A S:@far", "far"},
      {Problem::inner_needs_single_leaf, quarto_sheet + "gathering A S:@inner", "S"},
      {Problem::pair_needs_single_leaves, quarto_sheet + "cut S row 1 a b\ngathering A @a+b", "a"},
      {Problem::pair_needs_single_leaves, quarto_sheet + "cut S row 1 a b\ncut a column 1 c d\ngathering A c+@b", "b"},
  };
  for (auto const& one : all) is_told(one);
}

TEST_CASE("every limit of a scheme is told where it is passed") {
  auto const single_leaf = "sheet S% rows 1 columns 1 long-side far-near";
  is_told({Problem::too_many_sheets, first_line + lines(single_leaf, 1, 8) + "@sheet S9", "sheet", 8});
  is_told({Problem::too_many_pieces,
           "scheme x 4°\nsheet S rows 1 columns 40 long-side left-right\ncut S column 1 a1 b1\n" +
               lines("cut b& column % a% b%", 2, 19) + "cut b19 column 20 a20 @b20",
           "b20", 40});
  auto const folds = lines("fold S right-over-left 1", 1, 64);
  is_told({Problem::too_many_steps, quarto_sheet + folds + "@fold S right-over-left 1", "fold", 64});
  is_told({Problem::too_many_steps,
           quarto_sheet + "sheet T rows 2 columns 1 long-side far-near\n" + folds + "@cut T row 1 a b", "cut", 64});
  is_told({Problem::too_many_gatherings,
           "scheme x 4°\nsheet S rows 1 columns 18 long-side left-right\ncut S column 1 a1 b1\n" +
               lines("cut b& column % a% b%", 2, 17) + lines("gathering A% a%", 1, 16) + "@gathering A17 a17",
           "gathering", 16});
}

TEST_CASE("every problem of folding a scheme that reads is told where it stands") {
  Wrong const all[]{
      {Problem::line_outside_piece, quarto_sheet + "fold S far-over-near 1\nfold S far-over-near @1\ngathering A S",
       "1"},
      {Problem::line_outside_piece, quarto_sheet + "fold S far-over-near @128\ngathering A S", "128"},
      {Problem::not_folded_up, quarto_sheet + "fold S far-over-near 1\ngathering A @S", "S", 2},
      {Problem::not_folded_up, two_leaves + "gathering A @S", "S", 2},
      {Problem::no_spine, two_leaves + "fold S far-over-near 1\ngathering A @S", "S"},
      {Problem::leaves_not_conjugate, quarto_sheet + "fold S right-over-left @1\nfold S far-over-near 1\ngathering A S",
       "S", 1},
      // the second half laid the same way as the first: the one forme would have page 1 twice
      {Problem::page_twice_in_forme,
       "scheme x 4°\nsheet S rows 2 columns 2 long-side far-near turned about left-right\ncut S row 1 H2 H\n"
       "fold H right-over-left 1\nfold H2 right-over-left 1\ngathering A H\n@gathering A H2 page 1",
       "", 1},
      {Problem::copies_differ,
       "scheme x 8°\nsheet S rows 2 columns 2 long-side far-near\nsheet T rows 1 columns 2 long-side left-right\n"
       "fold S far-over-near 1\nfold S right-over-left 1\nfold T right-over-left 1\ngathering A S\n"
       "@gathering B T page 1",
       "B", 1},
      // page 2 is on the back of a leaf in A, and on the front of one in B
      {Problem::copies_differ,
       "scheme x 8°\nsheet S rows 1 columns 2 long-side far-near\nsheet T rows 1 columns 2 long-side left-right\n"
       "fold S right-over-left 1\nfold T right-over-left 1\ngathering A S\n@gathering B T page 2",
       "B", 2},
      {Problem::backed_by_other_leaf,
       "scheme x 4°\nsheet @S rows 2 columns 2 long-side far-near turned about far-near\ncut S row 1 H2 H\n"
       "fold H right-over-left 1\nfold H2 right-over-left 1 under\ngathering A H\ngathering A H2:near page 1",
       "", 2},
      // turned end over end, leaf b must point its head the other way: b:near:inner
      {Problem::backed_head_to_tail,
       "scheme x 4°\nsheet @S rows 2 columns 1 long-side far-near turned about left-right\ncut S row 1 a b\n"
       "gathering A a\ngathering B b:inner page 1",
       "", 1},
  };
  for (auto const& one : all) is_told(one);
}
