// SPDX-License-Identifier: MIT
// Books whose date is known, put to the bounds; and the signs that must give none.
#include <bifolium/evidence/period.hpp>

#include "check.hpp"
#include "data.hpp"

#include <cstdlib>
#include <string>

using namespace bifolium;

namespace {
constexpr PeriodBounds bounds_of(PeriodSigns const& signs) { return *period_bounds(signs); }
constexpr bool says(PeriodBounds const& bounds, BoundKind kind, int year) {
  for (auto const& bound : bounds)
    if (bound.kind == kind && bound.year == year) return true;
  return false;
}
} // namespace

TEST_CASE("wove paper binds from below, laid paper not at all") {
  // McMullin, Studies in Bibliography 56: in print from 1757; Hazen, same 5: laid displaced in books by 1805
  STATIC_CHECK(bounds_of({.material = Material::wove}).earliest() == 1757);
  STATIC_CHECK(!bounds_of({.material = Material::laid}).earliest());
  STATIC_CHECK(says(bounds_of({.material = Material::laid}), BoundKind::usual_until, 1805));
  STATIC_CHECK(bounds_of({.material = Material::vellum}).empty());
}

TEST_CASE("a book is not older than the date in its watermark") {
  // a sale description: Frankenstein (1818) on paper dated 1816
  STATIC_CHECK(bounds_of({.material = Material::wove, .watermark = true, .year_in_watermark = 1816}).earliest() ==
               1816);
}

TEST_CASE("the British act dates British paper alone") {
  // Paper Duties Act, 34 Geo. III c. 20 (1794): dates in British marks; French moulds bore 1742 (from memory)
  STATIC_CHECK(says(bounds_of({.year_in_watermark = 1742}), BoundKind::usual_from,
                    1794)); // which says "if the paper is British"
  STATIC_CHECK(!says(bounds_of({.place = Region::france, .year_in_watermark = 1742}), BoundKind::usual_from, 1794));
  STATIC_CHECK(bounds_of({.place = Region::france, .year_in_watermark = 1742}).earliest() == 1742);
}

TEST_CASE("dates from memory can be left out, and say that they are") {
  STATIC_CHECK(bounds_of({.machine_made = true}).earliest() == 1799);
  STATIC_CHECK(!bounds_of({.machine_made = true}).earliest(false));
  STATIC_CHECK(bounds_of({.material = Material::wove, .machine_made = true}).earliest(false) == 1757);
}

TEST_CASE("the spacing of chain lines is usual of a time at its ends, and bounds nothing in the middle") {
  // Briquet: 50-60 mm in the early fourteenth century, 28-40 in the fifteenth, up to 24 chains a sheet about 1500;
  // McKerrow, through Studies in Bibliography 37: 3/4 to 1 inch in books of the English hand press
  STATIC_CHECK(says(bounds_of({.chain_spacing = 55_mm}), BoundKind::usual_until, 1350));
  STATIC_CHECK(says(bounds_of({.chain_spacing = 34_mm}), BoundKind::usual_until, 1500));
  STATIC_CHECK(says(bounds_of({.chain_spacing = 17_mm}), BoundKind::usual_from, 1480));
  STATIC_CHECK(bounds_of({.chain_spacing = 0.75_in}).empty());
  STATIC_CHECK(bounds_of({.chain_spacing = 1_in}).empty());
  STATIC_CHECK(bounds_of({.chain_spacing = 30_mm}).empty());
  // English laid paper of 1794 with 1 1/16 in. between the lines (vintagepaper.co) must not be called early
  STATIC_CHECK(bounds_of({.chain_spacing = 1.0625_in}).empty());
  for (int mm = 5; mm < 90; ++mm) CHECK_FALSE(bounds_of({.chain_spacing = millimetres{mm}}).earliest());
}

TEST_CASE("lines of the page and the size of type describe and do not date") {
  STATIC_CHECK(bounds_of({.lines_of_page = 42, .twenty_lines = 140_mm}).empty());
  STATIC_CHECK(bounds_of({}).empty());
}

TEST_CASE("all signs at once are held") {
  // constructed
  STATIC_CHECK(bounds_of({.material = Material::wove,
                          .watermark = true,
                          .year_in_watermark = 1850,
                          .printed_signatures = true,
                          .machine_made = true,
                          .turned_chain_lines = true,
                          .tranchefile = true,
                          .chain_spacing = 55_mm,
                          .cloth_cover = true,
                          .ground_wood = true})
                   .size() == 15);
}

TEST_CASE("no dated book is refused its date") {
  // tests/data/later_leaf_sizes.tsv: copies of 1501 to 1820
  int asked = 0;
  for (auto const& row : data::rows("later_leaf_sizes.tsv", 9)) {
    auto const year = std::atoi(row[6].c_str());
    if (year == 0) continue;
    ++asked;
    CHECK(bounds_of({.watermark = true, .printed_signatures = true}).earliest() <= year);
  }
  CHECK(asked > 100);
}

TEST_CASE("what was seen of a leaf tells what paper it is") {
  // constructed: chain lines are of laid paper, unless the paper was called wove (the Virgil of 1757 has both)
  STATIC_CHECK(period_signs({.chain_lines = ChainLines::vertical}).material == Material::laid);
  STATIC_CHECK(period_signs({.material = Material::wove, .chain_lines = ChainLines::both}).material == Material::wove);
  STATIC_CHECK(period_signs({}).material == Material::unknown);
  STATIC_CHECK(period_signs({.watermark = MarkPlace::gutter}).watermark);
  STATIC_CHECK(!period_signs({.watermark = MarkPlace::absent}).watermark);
}

TEST_CASE("signs that cannot be are refused") {
  CHECK(period_bounds({.chain_spacing = 0_mm}).error().problem == Problem::impossible_measure);
  CHECK(period_bounds({.twenty_lines = -1_mm}).error().problem == Problem::impossible_measure);
  CHECK(period_bounds({.lines_of_page = 0}).error().problem == Problem::not_positive);
  CHECK(period_bounds({.year_in_watermark = 1200}).error().problem == Problem::watermark_too_early);
}
