// SPDX-License-Identifier: MIT
#include <bifolium/fold/leaf_size.hpp>
#include <bifolium/fold/static_fold.hpp>

#include "check.hpp"
#include "paper/boost_lengths.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

using namespace bifolium;

TEST_CASE("octavo and quarto leaves of a sheet") {
  // demy 22 1/2 x 17 1/2 in. (Cockerell 1901) untrimmed: octavo 8 3/4 x 5 5/8, quarto 11 1/4 x 8 3/4 in. (R. Hollick,
  // 'Demy octavo', 2010, gives 8 3/4 x 5 5/8 before trimming)
  constexpr Sheet demy{22.5_in, 17.5_in};
  constexpr auto const& octavo = fold<schemes::octavo>();
  STATIC_CHECK(leaf_size(octavo, {0, octavo.gathering(0).leaf(3)}, demy) == LeafSize<inches>{8.75_in, 5.625_in});
  STATIC_CHECK(leaf_size(fold<schemes::quarto>().sheet(0), demy) == LeafSize<inches>{11.25_in, 8.75_in});
  STATIC_CHECK(leaf_size(fold<schemes::folio>().sheet(0), demy) == LeafSize<inches>{17.5_in, 11.25_in});
}

TEST_CASE("lengths of Boost fold as the library's own do") {
  // the same demy, exactly: 8 3/4 x 5 5/8 in.
  Sheet const demy{rational{45, 2}, rational{35, 2}};
  constexpr auto const& octavo = fold<schemes::octavo>();
  auto const leaf = leaf_size(octavo, {0, octavo.gathering(0).leaf(3)}, demy);
  CHECK(leaf == LeafSize<rational>{rational{35, 4}, rational{45, 8}});
  CHECK(sheet_implied(octavo.sheet(0), leaf).least == demy);
  // an A4 leaf is the quarto of an A2 sheet, 420 x 594 mm (ISO 216)
  auto const a4 = leaf_size(fold<schemes::quarto>().sheet(0), Sheet{0.594 * metre, 0.420 * metre});
  CHECK(a4.height.value() == doctest::Approx(0.297));
  CHECK(a4.width.value() == doctest::Approx(0.210));
  auto const exactly = [](int millimetres) { return rational_metres::from_value({millimetres, 1000}); };
  CHECK(leaf_size(fold<schemes::quarto>().sheet(0), Sheet{exactly(594), exactly(420)}) ==
        LeafSize<rational_metres>{exactly(297), exactly(210)});
}

TEST_CASE("the leaves of the uncut 24° of 1671") {
  // Buhler, Studies in Bibliography 7: columns 3 3/8, four of 2 1/2, 3 3/8 in.; rows 5, 4 3/4, 4 3/4, 5 in.; leaves of four
  // sizes: 4 3/4 x 2 1/2, at the head or tail of the sheet a quarter inch taller, at its sides 7/8 in. wider
  constexpr std::array columns{3.375_in, 2.5_in, 2.5_in, 2.5_in, 2.5_in, 3.375_in};
  constexpr std::array rows{5.0_in, 4.75_in, 4.75_in, 5.0_in};
  auto const sheet = *fold("24_three_8s_1671"_scheme.scheme());
  std::map<std::pair<double, double>, int> sizes;
  for (int g = 0; g < sheet.gatherings(); ++g)
    for (int k = 1; k <= 8; ++k) {
      auto const size = leaf_size(sheet, {g, sheet.gathering(g).leaf(k)}, std::span<inches const>{rows},
                                  std::span<inches const>{columns});
      ++sizes[{size.height.count(), size.width.count()}];
    }
  CHECK(sizes == std::map<std::pair<double, double>, int>{
                     {{4.75, 2.5}, 8}, {{5.0, 2.5}, 8}, {{4.75, 3.375}, 4}, {{5.0, 3.375}, 4}});
}

TEST_CASE("a leaf implies a least sheet, and the sheet gives the leaf back") {
  for (int row = 0; row < Attested::count; ++row) {
    auto const sheet = *fold(Attested{static_cast<SchemeRow>(row)}.scheme());
    Sheet const paper{320_mm, 450_mm};
    auto const leaf = leaf_size(sheet.sheet(0), paper);
    auto const implied = sheet_implied(sheet.sheet(0), leaf);
    CHECK(implied.lies_as_laid);
    CHECK(implied.least.long_side().count() == doctest::Approx(450));
    CHECK(implied.least.short_side().count() == doctest::Approx(320));
  }
  // a plain number is a length too
  STATIC_CHECK(sheet_implied(fold<schemes::quarto>().sheet(0), LeafSize<double>{10, 7}).least == Sheet{20.0, 14.0});
}

TEST_CASE("paper cut before printing is reckoned from the whole sheet") {
  auto const half = *fold(*read_scheme("scheme x 2°\nsheet S rows 1 columns 2 half long-side far-near\n"
                                       "fold S right-over-left 1\ngathering A S\n"));
  // Buhler, Studies in Bibliography 23: folios on halves of royal. Royal 430 x 620 mm (Needham 1988)
  CHECK(leaf_size(half.sheet(0), Sheet{430_mm, 620_mm}) == LeafSize<millimetres>{310_mm, 215_mm});
  CHECK(sheet_implied(half.sheet(0), LeafSize<millimetres>{310_mm, 215_mm}).least == Sheet{430_mm, 620_mm});
}
