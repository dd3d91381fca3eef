// SPDX-License-Identifier: MIT
#include <bifolium/edition/casting_off.hpp>

#include "check.hpp"

using namespace bifolium;

TEST_CASE("Savage's casting-up table, the cells that were read") {
  // Savage, Dictionary of the Art of Printing (1841): thousands in a sheet of quarto, octavo, twelves, eighteens
  int const table[][6]{
      {15, 12, 1, 3, 4, 6}, {15, 13, 2, 3, 5, 7}, {15, 20, 2, 5, 7, 11}, {16, 14, 2, 4, 5, 8}, {16, 20, 3, 5, 8, 12}};
  int const pages[]{8, 16, 24, 36};
  for (auto const& row : table)
    for (int i = 0; i < 4; ++i) CHECK(*thousands_in_sheet(row[0], row[1], pages[i]) == row[2 + i]);
  // Cowie: 55 lines x 60 ens x 24 pages = 79,200; at 5 1/4d. a thousand 34s. 6 3/4d., printed 34s. 6d. (a misprint)
  CHECK(*thousands_in_sheet(55, 60, 24) == 79);
  CHECK(Fraction{79} * Fraction{21, 4} == Fraction{34 * 12 + 6} + Fraction{3, 4});
}

TEST_CASE("casting off from a sample") {
  // constructed: 90,000 words, nine to the line, thirty lines to the page: 10,000 lines, 333 pages and a third
  auto const result = *cast_off({90'000, 9, 30});
  CHECK(result.lines == 10'000);
  CHECK(result.pages == 334);
  // BMC IA. 52540 and its like: a quarto page of 145 mm in type of 96 mm to twenty lines holds thirty lines (arithmetic;
  // that a quarto page of the time holds about 30 or 31 is common knowledge of the catalogues)
  CHECK(*lines_in_page(1450, 960) == 30);
  CHECK(cast_off({1, 0, 30}).error().problem == Problem::not_positive);
  CHECK(thousands_in_sheet(INT64_MAX, 2, 2).error().problem == Problem::number_too_large);
}
