// SPDX-License-Identifier: MIT
#include <bifolium/core/fraction.hpp>

#include "check.hpp"

#include <numeric>
#include <random>
#include <sstream>

using namespace bifolium;

TEST_CASE("a fraction is written as the trade writes part sheets") {
  STATIC_CHECK(to_text(Fraction{43, 4}) == "10 3/4");
  STATIC_CHECK(to_text(Fraction{1, 2}) == "1/2");
  STATIC_CHECK(to_text(Fraction{32, 2}) == "16");
  STATIC_CHECK(to_text(Fraction{-7, 3}) == "-2 1/3");
  STATIC_CHECK(to_text(Fraction{}) == "0");
  STATIC_CHECK(to_text(Fraction{INT64_MAX, 2}) == "4611686018427387903 1/2");
  std::ostringstream out;
  out << Fraction{11, 4};
  CHECK(out.str() == "2 3/4");
}

TEST_CASE("fractions agree with std::gcd and with arithmetic over a common denominator") {
  std::mt19937 random{1455};
  std::uniform_int_distribution<std::int64_t> number{-5000, 5000}, below{1, 5000};
  for (int i = 0; i < 20000; ++i) {
    auto const a = number(random), b = below(random), c = number(random), d = below(random);
    Fraction const x{a, b}, y{c, d};
    REQUIRE(std::gcd(x.numerator(), x.denominator()) == 1);
    REQUIRE(x + y == Fraction{a * d + c * b, b * d});
    REQUIRE(x - y == Fraction{a * d - c * b, b * d});
    REQUIRE(x * y == Fraction{a * c, b * d});
    if (c > 0) REQUIRE(x / y == Fraction{a * d, b * c});
    if (c < 0) REQUIRE(x / y == Fraction{-a * d, b * -c});
    REQUIRE((x < y) == (a * d < c * b));
    REQUIRE((x == y) == (a * d == c * b));
    REQUIRE(x.floor() <= x.ceil());
    REQUIRE((Fraction{x.floor()} <= x && x < Fraction{x.floor() + 1}));
    REQUIRE((Fraction{x.ceil() - 1} < x && x <= Fraction{x.ceil()}));
  }
}

TEST_CASE("what does not fit is never a wrong number") {
  STATIC_CHECK(!checked_add(INT64_MAX, 1));
  STATIC_CHECK(!checked_multiply(INT64_MIN, -1));
  STATIC_CHECK(!checked_multiply(std::int64_t{1} << 32, std::int64_t{1} << 31));
  STATIC_CHECK(checked_multiply(std::int64_t{1} << 31, std::int64_t{1} << 31) == std::int64_t{1} << 62);
  STATIC_CHECK(checked_multiply(INT64_MIN, 1) == INT64_MIN);
  STATIC_CHECK(!checked_add(Fraction{INT64_MAX}, Fraction{1}));
  STATIC_CHECK(!checked_divide(Fraction{1}, Fraction{}));
  CHECK_THROWS_AS((void)(Fraction{INT64_MAX} + Fraction{1}), BrokenPrecondition);
  CHECK_THROWS_AS((Fraction{1, 0}), BrokenPrecondition);
  // compared by parts, the cross products would overflow
  STATIC_CHECK(Fraction{INT64_MAX, INT64_MAX - 1} < Fraction{INT64_MAX - 1, INT64_MAX - 2});
}
