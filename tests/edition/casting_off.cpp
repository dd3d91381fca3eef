// SPDX-License-Identifier: MIT
#include <bifolium/edition/casting_off.hpp>

#include "check.hpp"

#include <array>
#include <string_view>

using namespace bifolium;

TEST_CASE("Savage's casting-up table, the cells that were read") {
  // Savage, Dictionary of the Art of Printing (1841), as oldbookillustrations.com has the entry: thousands in a sheet of
  // quarto, octavo, twelves, eighteens. Of these five rows all twenty cells were read, and agree. The printed table has more
  // rows; their cells are in no source that could be read, so they are not here.
  int const table[][6]{
      {15, 12, 1, 3, 4, 6}, {15, 13, 2, 3, 5, 7}, {15, 20, 2, 5, 7, 11}, {16, 14, 2, 4, 5, 8}, {16, 20, 3, 5, 8, 12}};
  int const pages[]{8, 16, 24, 36};
  for (auto const& row : table)
    for (int i = 0; i < 4; ++i) CHECK(*thousands_in_sheet(row[0], row[1], pages[i]) == row[2 + i]);
  // Cowie: 55 lines x 60 ens x 24 pages = 79,200; at 5 1/4d. a thousand 34s. 6 3/4d., printed 34s. 6d. (a misprint)
  CHECK(*thousands_in_sheet(55, 60, 24) == 79);
  CHECK(Fraction{79} * Fraction{21, 4} == Fraction{34 * 12 + 6} + Fraction{3, 4});
}

TEST_CASE("casting off from a sample of words, letters or ens") {
  // constructed: 90,000 words, nine to the line, thirty lines to the page: 10,000 lines, 333 pages and a third
  auto const result = *cast_off({90'000, 9, 30});
  CHECK(result.lines == 10'000);
  CHECK(result.pages.stated == 334);
  CHECK(result.pages.low == 334);
  CHECK(result.pages.high == 334);
  // MacKellar's rule (1893): words a line x lines a page x folios of the copy; the figures are constructed
  CHECK(*in_manuscript(Fraction{15, 2}, 24, 500) == 90'000);
  // lines that held from eight words to ten: from 300 pages to 375
  auto const range =
      *cast_off({.in_copy = 90'000, .a_line = 9, .lines_a_page = 30, .least_a_line = 8, .most_a_line = 10});
  CHECK(range.pages.low == 300);
  CHECK(range.pages.stated == 334);
  CHECK(range.pages.high == 375);
  // letters and ens are counted the same way, on another assumption
  auto const letters = *cast_off({.in_copy = 540'000, .a_line = 54, .lines_a_page = 30, .unit = CastingUnit::letters});
  CHECK(letters.pages.stated == 334);
  CHECK(std::string_view{letters.assumption()} != result.assumption());
  auto const ens = *ens_in_line(Fraction{24 * 12}, Fraction{10}); // a measure of 24 pica ems in ten-point type
  CHECK(ens == Fraction{288, 5});
  CHECK(cast_off({.in_copy = 540'000, .a_line = ens, .lines_a_page = 30, .unit = CastingUnit::ens})->pages.stated ==
        313);
}

TEST_CASE("lines in a page from the measure of twenty") {
  // arithmetic: a page of 145 mm in type of 96 mm to twenty lines has thirty lines of 4.8 mm; in 98 mm, 29
  STATIC_CHECK(*lines_in_page(145, 96) == 30);
  STATIC_CHECK(*lines_in_page(145, 98) == 29);
  STATIC_CHECK(*lines_in_page(Fraction{1451, 10}, Fraction{960, 10}) == 30);
}

TEST_CASE("words to the square inch, set solid") {
  // a printers' handbook of about 1900, pp. 72-73
  STATIC_CHECK(*words_in_page(8, 20) == 640);
  STATIC_CHECK(*words_in_page(Fraction{11, 2}, 1) == 65);
  CHECK(words_in_page(9, 20).error().problem == Problem::no_such_type);
}

TEST_CASE("what cannot be cast off is an error value, in every figure") {
  CHECK(cast_off({1, 0, 30}).error().problem == Problem::not_positive);
  CHECK(cast_off({1, 9, 0}).error().problem == Problem::not_positive);
  CHECK(cast_off({-1, 9, 30}).error().problem == Problem::negative_count);
  CHECK(cast_off({.in_copy = 1, .a_line = 9, .lines_a_page = 3, .least_a_line = 10}).error().problem ==
        Problem::out_of_order);
  CHECK(cast_off({.in_copy = 1, .a_line = 9, .lines_a_page = 3, .most_a_line = 8}).error().problem ==
        Problem::out_of_order);
  CHECK(cast_off({INT64_MAX, Fraction{1, 2}, 30}).error().problem == Problem::result_too_large);
  CHECK(cast_off({INT64_MAX, 1, INT64_MAX})->pages.stated == 1);
  CHECK(thousands_in_sheet(INT64_MAX, 2, 2).error().problem == Problem::result_too_large);
  CHECK(thousands_in_sheet(2, INT64_MAX, 2).error().problem == Problem::result_too_large);
  CHECK(thousands_in_sheet(2, 2, INT64_MAX).error().problem == Problem::result_too_large);
  CHECK(thousands_in_sheet(1, 1, INT64_MAX).error().problem == Problem::result_too_large);
  for (auto const& [lines, ens, pages] : {std::array{-1, 1, 1}, std::array{1, -1, 1}, std::array{1, 1, -1}})
    CHECK(thousands_in_sheet(lines, ens, pages).error().problem == Problem::negative_count);
  for (auto const& [lines, ens, pages] : {std::array{0, 600, 8}, std::array{60, 0, 8}, std::array{60, 600, 0}})
    CHECK(*thousands_in_sheet(lines, ens, pages) == 0); // zero is a count
  CHECK(*in_manuscript(0, 30, 10) == 0);
  CHECK(*in_manuscript(9, 0, 10) == 0);
  CHECK(*in_manuscript(9, 30, 0) == 0);
  CHECK(cast_off({0, 9, 30})->pages.stated == 0);
  CHECK(in_manuscript(INT64_MAX, 2, 1).error().problem == Problem::result_too_large);
  CHECK(in_manuscript(1, INT64_MAX, 2).error().problem == Problem::result_too_large);
  CHECK(in_manuscript(1, -1, 2).error().problem == Problem::negative_count);
  CHECK(lines_in_page(INT64_MAX, 1).error().problem == Problem::result_too_large);
  CHECK(lines_in_page(1, 0).error().problem == Problem::not_positive);
  CHECK(ens_in_line(INT64_MAX, 1).error().problem == Problem::result_too_large);
  CHECK(ens_in_line(1, -1).error().problem == Problem::not_positive);
  CHECK(words_in_page(8, INT64_MAX).error().problem == Problem::result_too_large);
  CHECK(words_in_page(8, 0).error().problem == Problem::not_positive);
}

TEST_CASE("each unit of casting off says what is assumed with it") {
  auto const assumed = [](CastingUnit unit) { return std::string_view{CastOff{.unit = unit}.assumption()}; };
  CHECK(assumed(CastingUnit::words).starts_with("the sample's words a line"));
  CHECK(assumed(CastingUnit::letters).starts_with("the sample's letters a line, spaces counted"));
  CHECK(assumed(CastingUnit::ens).starts_with("a letter is an en on the average"));
}
