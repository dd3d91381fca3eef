// SPDX-License-Identifier: MIT
// The tables of paper, cell by cell against a second copy of what the sources say: a wrong digit in either is seen.
#include <bifolium/paper/count.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

#include "data.hpp"

#include <cmath>
#include <cstdlib>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// The years that the words of a source mean: 1741; 14th-15th c., which is 1301 to 1500; c. 1792, which is five years
/// around; up to 1922 and 1880s-, which are of the century.
YearRange years_of(std::string const& period) {
  std::vector<int> numbers;
  for (std::size_t i = 0; i < period.size(); ++i) {
    if (period[i] < '0' || period[i] > '9') continue;
    numbers.push_back(std::atoi(period.c_str() + i));
    while (i < period.size() && period[i] >= '0' && period[i] <= '9') ++i;
  }
  bool const centuries = period.find("th") != period.npos;
  auto from = numbers.front(), to = numbers.back();
  if (centuries) return {100 * (from - 1) + 1, 100 * to};
  if (period.starts_with("c. ")) from -= 5, to += 5;
  if (period.starts_with("to ")) from = to / 100 * 100 + 1;
  if (period.ends_with("-")) to = (to / 100 + 1) * 100;
  return {from, to};
}

} // namespace

TEST_CASE("every side of every sheet size is that of the second copy") {
  auto const rows = data::rows("sheet_sizes.tsv", 7); // the source of each row is in its last cell
  std::size_t i = 0;
  std::size_t recalled = 0;
  for (auto const& size : all_sheet_sizes()) {
    // sizes recalled for printing in Britain in the nineteenth century have no source to copy from
    if (size.trust == Trust::from_memory && size.years() == YearRange{1801, 1900}) {
      ++recalled;
      continue;
    }
    REQUIRE(i < rows.size());
    auto const& row = rows[i++];
    CAPTURE(row[0]);
    CAPTURE(row[6]);
    constexpr double rounding = 0.006; // the copy has hundredths of a millimetre, some of its rows tenths
    CHECK(std::abs(size.short_side().count() - std::stod(row[1])) < 0.05 + rounding);
    CHECK(std::abs(size.long_side().count() - std::stod(row[2])) < 0.05 + rounding);
    CHECK((size.unit == SheetUnit::mm) == (row[3] == "mm"));
    CHECK((size.unit == SheetUnit::cm) == (row[3] == "cm"));
    CHECK(size.years() == years_of(row[5]));
  }
  CHECK(i == rows.size());
  CHECK(recalled == 10);
}

TEST_CASE("every ream and lot is that of the second copy") {
  struct Ream {
    ReamCount const& count;
    int ream, quire, good;
    Region region;
  };
  Ream const all[]{
      // sizes.com s.v. quire (MSS. of 1590-1620 and 1682, Tabart 1804, Martin 1904): writing 24, printing 25, 20 to the
      // ream
      {reams::of_480, 480, 24, 480, Region::britain},
      {reams::of_500, 500, 25, 500, Region::europe},
      // Savage (1841): 21 1/2 quires of 24; 18 inside quires of 24 and two outside ones of 20
      {reams::of_516, 516, 24, 516, Region::britain},
      {reams::from_mill, 472, 24, 432, Region::britain},
      {reams::rame, 500, 25, 500, Region::france}, // from memory, so no proof
      // Nelkenbrecher (1890), p. 368, at sizes.com s.v. Ries
      {reams::ries_printing, 500, 25, 500, Region::germany},
      {reams::ries_writing, 480, 24, 480, Region::germany},
      {reams::neuries, 1000, 100, 1000, Region::germany}};
  for (auto const& one : all) {
    CAPTURE(one.count.name);
    CHECK(one.count.ream == one.ream);
    CHECK(one.count.quire == one.quire);
    CHECK(one.count.good == one.good);
    CHECK(one.count.region == one.region);
  }
  // the years of those sources
  CHECK(reams::of_480.years.from == 1590);
  CHECK(reams::of_480.years.to == 1904);
  CHECK(reams::of_500.years.from == 1590);
  CHECK(reams::of_500.years.to == 1904);
  CHECK(reams::from_mill.years.to == 1841);
  CHECK(reams::ries_printing.years.to == 1877); // until the Neuries
  CHECK(reams::ries_writing.years.to == 1877);
  CHECK(reams::neuries.years.from == 1877);
  // which are in use when and where, and no others
  auto const in_use = [](int year, Region region) {
    std::string all_of;
    each_ream_count({year, year}, region, [&](ReamCount const& count) { all_of += std::to_string(count.ream) + " "; });
    return all_of;
  };
  CHECK(in_use(1650, Region::britain) == "480 500 ");
  CHECK(in_use(1820, Region::britain) == "480 500 516 472 ");
  CHECK(in_use(1850, Region::germany) == "500 500 480 "); // the European 500 and both of Germany
  CHECK(in_use(1885, Region::germany) == "500 1000 ");
  CHECK(in_use(1750, Region::france) == "500 500 ");
  CHECK(in_use(1450, Region::germany).empty());
  // GNU units 2.22: bundle 1000, bale 5000; Wikipedia: short bundle 960, short bale 4800, printer's bale 5160; Savage
  // (1841):
  // 43 quires of 24; Nelkenbrecher: ten Ries
  CHECK(lots::bundle.sheets == 1000);
  CHECK(lots::perfect_bundle.sheets == 1032);
  CHECK(lots::bale.sheets == 5000);
  CHECK(lots::short_bundle.sheets == 960);
  CHECK(lots::short_bale.sheets == 4800);
  CHECK(lots::printers_bale.sheets == 5160);
  CHECK(lots::ballen_writing.sheets == 4800);
  CHECK(lots::ballen_printing.sheets == 5000);
  CHECK(sheets_in_alphabet == 23); // letters without J, U and W
}
