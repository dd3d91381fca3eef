// SPDX-License-Identifier: MIT
// Years as ranges: laws of intervals.
#include <bifolium/core/text_span.hpp>
#include <bifolium/core/year_range.hpp>

#include "check.hpp"

#include <climits>

using namespace bifolium;

TEST_CASE("a year is a range of one") {
  STATIC_CHECK(YearRange{1725} == YearRange{1725, 1725});
  STATIC_CHECK(YearRange{1725}.is_one_year());
  STATIC_CHECK(YearRange{1720, 1729}.size() == 10);
  STATIC_CHECK(!YearRange{1720, 1729}.is_one_year());
}

TEST_CASE("both ends of a range belong to it") {
  STATIC_CHECK(YearRange{1720, 1729}.contains(1720));
  STATIC_CHECK(YearRange{1720, 1729}.contains(1729));
  STATIC_CHECK(!YearRange{1720, 1729}.contains(1730));
  STATIC_CHECK(YearRange{1720, 1729}.meets({1729, 1740}));
  STATIC_CHECK(!YearRange{1720, 1729}.meets({1730, 1740}));
  STATIC_CHECK(YearRange{1720, 1729}.joined(1745) == YearRange{1720, 1745});
  STATIC_CHECK(YearRange{1725}.widened(5) == YearRange{1720, 1730});
}

TEST_CASE("no range of years is too long to be counted or widened") {
  STATIC_CHECK(YearRange{INT_MIN, INT_MAX}.size() == INT_MAX);
  STATIC_CHECK(YearRange{INT_MIN, INT_MAX}.widened(5) == YearRange{INT_MIN, INT_MAX});
  STATIC_CHECK(YearRange{INT_MAX - 2}.widened(5) == YearRange{INT_MAX - 7, INT_MAX});
  STATIC_CHECK(YearRange{INT_MAX}.widened(INT_MIN) == YearRange{INT_MAX, -1}); // turned round, as by any number below 0
}

TEST_CASE("a span names a part of its text") {
  STATIC_CHECK(TextSpan{2, 6}.of("A 1725.") == "1725");
  STATIC_CHECK(TextSpan{3, 3}.empty());
}
