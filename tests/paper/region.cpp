// SPDX-License-Identifier: MIT
#include <bifolium/paper/sheet_sizes.hpp>

#include "check.hpp"

#include <doctest/doctest.h>

using namespace bifolium;

TEST_CASE("a region lies in its whole, and in nothing that lies in it") {
  STATIC_CHECK(is_in(Region::venice, Region::italy));
  STATIC_CHECK(identifier(Region::north_italy) == "north_italy");
  STATIC_CHECK(identifier(Region::usa) == "usa");
  STATIC_CHECK(is_in(Region::venice, Region::europe));
  STATIC_CHECK(!is_in(Region::italy, Region::venice));
  STATIC_CHECK(!is_in(Region::usa, Region::europe));
  for (int i = 0; i < region_count; ++i) {
    auto const region = static_cast<Region>(i);
    CHECK(is_in(region, region));
    CHECK(is_in(region, Region::anywhere));
    CHECK(is_in(region, whole_of(region)));
    CHECK_FALSE(identifier(region).empty());
    if (region != Region::anywhere) CHECK_FALSE(is_in(whole_of(region), region));
  }
}

TEST_CASE("a number that names no region is refused where a row is looked up for it") {
  for (int const number : {region_count, region_count + 1, 255}) {
    auto const no_region = static_cast<Region>(number);
    CHECK_THROWS_AS((void)detail::row_of(no_region), BrokenPrecondition);
    CHECK(identifier(no_region) == "unknown");
  }
  CHECK(detail::row_of(Region::usa) == std::size_t{region_count} - 1);
}

TEST_CASE("a town of a country asks for the sheets of the country") {
  auto const count = [](Region region) { return usable_for({1600, 1600}, region).count(); };
  CHECK(count(Region::venice) == count(Region::italy));
  CHECK(count(Region::ireland) == count(Region::britain));
  CHECK(count(Region::spain) < count(Region::europe)); // rows for Europe as a whole alone
  CHECK(count(Region::spain) > 0);
}
