// SPDX-License-Identifier: MIT
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/fraction_text.hpp>

#include "check.hpp"

#include <cmath>
#include <compare>
#include <concepts>
#include <limits>
#include <numeric>
#include <optional>
#include <random>
#include <sstream>
#include <string_view>
#include <type_traits>

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
    REQUIRE(-x == Fraction{-a, b});
    auto added = x, taken = x, multiplied = x, divided = x;
    REQUIRE((added += y) == Fraction{a * d + c * b, b * d});
    REQUIRE((taken -= y) == Fraction{a * d - c * b, b * d});
    REQUIRE((multiplied *= y) == Fraction{a * c, b * d});
    if (c > 0) REQUIRE((divided /= y) == Fraction{a * d, b * c});
    REQUIRE((added == x + y && taken == x - y && multiplied == x * y)); // and the number itself has changed
    if (c > 0) REQUIRE(divided == x / y);
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

namespace {

/// Numbers near which 64 bits end, and small ones.
std::int64_t edge(std::mt19937_64& draw, bool with_sign) {
  auto const size = static_cast<int>(draw() % 64);
  auto number = static_cast<std::int64_t>(draw() >> static_cast<unsigned>(size)) & INT64_MAX;
  if (draw() % 4 == 0) number = INT64_MAX - static_cast<std::int64_t>(draw() % 4);
  if (draw() % 4 == 0) number = static_cast<std::int64_t>(draw() % 4);
  if (with_sign && draw() % 2 == 0) return number == 0 && draw() % 2 == 0 ? INT64_MIN : -number;
  return with_sign || number > 0 ? number : 1;
}

#ifdef __SIZEOF_INT128__
__extension__ typedef __int128 Int;
__extension__ typedef unsigned __int128 UnsignedInt;

UnsignedInt divisor(UnsignedInt a, UnsignedInt b) {
  while (b != 0) {
    auto const rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}
/// above / below in lowest terms, where it fits in two numbers of 64 bits.
std::optional<Fraction> truth(Int above, UnsignedInt below) {
  auto const size = above < 0 ? -static_cast<UnsignedInt>(above) : static_cast<UnsignedInt>(above);
  auto const both = divisor(size, below);
  if (size / both > static_cast<UnsignedInt>(INT64_MAX) + (above < 0 ? 1U : 0U)) return std::nullopt;
  if (below / both > static_cast<UnsignedInt>(INT64_MAX)) return std::nullopt;
  auto const reduced = static_cast<std::uint64_t>(size / both);
  return Fraction{static_cast<std::int64_t>(above < 0 ? 0 - reduced : reduced),
                  static_cast<std::int64_t>(below / both)};
}

TEST_CASE("every result that fits is found at the ends of 64 bits, against numbers of 128 bits") {
  std::mt19937_64 draw{1454};
  int fits = 0, fits_not = 0;
  for (int i = 0; i < 40000; ++i) {
    Fraction const x{edge(draw, true), edge(draw, false)}, y{edge(draw, true), edge(draw, false)};
    Int const a = x.numerator(), b = x.denominator(), c = y.numerator(), d = y.denominator();
    // sums of two products of 126 bits fit in 127
    auto const below = static_cast<UnsignedInt>(b * d);
    REQUIRE(checked_add(x, y) == truth(a * d + c * b, below));
    REQUIRE(checked_subtract(x, y) == truth(a * d - c * b, below));
    REQUIRE(checked_multiply(x, y) == truth(a * c, below));
    if (c != 0)
      REQUIRE(checked_divide(x, y) == truth(c < 0 ? -a * d : a * d, static_cast<UnsignedInt>(c < 0 ? -b * c : b * c)));
    REQUIRE((x < y) == (a * d < c * b));
    REQUIRE(std::is_eq(x <=> y) == (a * d == c * b));
    ++(checked_add(x, y) ? fits : fits_not);
  }
  CHECK(fits > 2000);
  CHECK(fits_not > 2000);
}

TEST_CASE("a product rounded to a whole number is found whenever that fits, against numbers of 128 bits") {
  std::mt19937_64 draw{1455};
  auto const fitting = [](Int number) {
    return number >= Int{INT64_MIN} && number <= Int{INT64_MAX} ? std::optional{static_cast<std::int64_t>(number)}
                                                                : std::nullopt;
  };
  auto const down = [](Int above, Int below) { return above / below - (above % below < 0 ? 1 : 0); };
  auto const up = [](Int above, Int below) { return above / below + (above % below > 0 ? 1 : 0); };
  int fits = 0, only_rounded = 0;
  for (int i = 0; i < 10000; ++i) {
    // the truth divides once, so the divisors must fit together in 127 bits
    Fraction const x{edge(draw, true), edge(draw, false)}, y{edge(draw, true), 1 + (edge(draw, false) >> 8)};
    Int const above = Int{x.numerator()} * y.numerator(), below = Int{x.denominator()} * y.denominator();
    REQUIRE(detail::floor_of_product(x, y) == fitting(down(above, below)));
    REQUIRE(detail::ceil_of_product(x, y) == fitting(up(above, below)));
    REQUIRE(detail::ceil_of_product(x, y, 100) == fitting(up(above, below * 100)));
    fits += detail::ceil_of_product(x, y) ? 1 : 0;
    only_rounded += detail::ceil_of_product(x, y) && !checked_multiply(x, y) ? 1 : 0;
  }
  CHECK(fits > 500);
  CHECK(only_rounded > 500);
}
#endif

TEST_CASE("the nearest double is the one that long double finds") {
  if (std::numeric_limits<long double>::digits < 64) return; // no wider type to ask
  std::mt19937_64 draw{1456};
  int ties_apart = 0;
  for (int i = 0; i < 40000; ++i) {
    Fraction const x{edge(draw, true), edge(draw, false)};
    auto const wide = static_cast<long double>(x.numerator()) / static_cast<long double>(x.denominator());
    auto const nearest = static_cast<double>(wide);
    auto const found = x.as_double();
    if (found == nearest) continue;
    // the long double was rounded too: it lies on the middle of two doubles, and the fraction on one side of it
    REQUIRE(std::fabs(static_cast<long double>(found) - wide) == std::fabs(static_cast<long double>(nearest) - wide));
    ++ties_apart;
  }
  CHECK(ties_apart < 1000);
  STATIC_CHECK(Fraction{1, 3}.as_double() == 1.0 / 3);
  STATIC_CHECK(Fraction{INT64_MAX}.as_double() == 9223372036854775808.0);
  STATIC_CHECK(Fraction{INT64_MIN}.as_double() == -9223372036854775808.0);
  // 2^53 + 1 over 1 is between two doubles and goes to the even one; a little more goes up
  STATIC_CHECK(Fraction{9007199254740993}.as_double() == 9007199254740992.0);
  STATIC_CHECK(Fraction{9007199254740993 * 1000 + 1, 1000}.as_double() == 9007199254740994.0);
}

TEST_CASE("fractions compare in constant expressions at the ends of 64 bits") {
  STATIC_CHECK(Fraction{INT64_MIN} < Fraction{-INT64_MAX, 3});
  STATIC_CHECK(Fraction{-INT64_MAX, 3} < Fraction{-INT64_MAX + 1, 3});
  STATIC_CHECK(Fraction{INT64_MAX, INT64_MAX - 1} > Fraction{1});
  STATIC_CHECK(Fraction{INT64_MIN, 3} < Fraction{INT64_MIN + 1, 3});
  STATIC_CHECK(Fraction{INT64_MIN} + Fraction{INT64_MAX} == Fraction{-1});
  STATIC_CHECK(-Fraction{1, 2} == Fraction{-1, 2});
  STATIC_CHECK(!checked_subtract(Fraction{}, Fraction{INT64_MIN}));
  STATIC_CHECK(checked_divide(Fraction{INT64_MIN}, Fraction{-2}) == Fraction{std::int64_t{1} << 62});
  CHECK_THROWS_AS(Fraction{UINT64_MAX}, BrokenPrecondition);
}

template <class From>
concept BecomesFraction = std::is_constructible_v<Fraction, From>;
template <class A, class B>
concept BecomeFraction = requires(A a, B b) {
  Fraction(a, b);
};

TEST_CASE("no floating-point number becomes a fraction") {
  static_assert(!BecomesFraction<double> && !BecomesFraction<float> && !BecomesFraction<long double>);
  static_assert(!std::is_convertible_v<double, Fraction> && std::is_convertible_v<int, Fraction>);
  static_assert(BecomesFraction<unsigned> && BecomesFraction<std::int64_t> && BecomesFraction<short>);
  static_assert(!BecomeFraction<double, int> && !BecomeFraction<int, float> && BecomeFraction<int, unsigned short>);
}

TEST_CASE("a number is read as it is written, exactly") {
  struct Row {
    std::string_view text;
    Fraction number;
  };
  for (auto const& [text, number] :
       {Row{"12", 12}, Row{"3.2", {16, 5}}, Row{"3,2", {16, 5}}, Row{"-0.5", {-1, 2}}, Row{" 16/5 ", {16, 5}},
        Row{"3 1/5", {16, 5}}, Row{"½", {1, 2}}, Row{"3½", {7, 2}}, Row{"3 ⅔", {11, 3}}, Row{"−2 1/3", {-7, 3}},
        Row{"0", 0}, Row{"1.250", {5, 4}}, Row{"999999999999999999", 999'999'999'999'999'999}, Row{"007", 7}}) {
    CAPTURE(text);
    CHECK(read_fraction(text) == Expected<Fraction>{number});
  }
  struct Wrong {
    std::string_view text;
    Problem problem;
    std::uint32_t column;
  };
  for (auto const& [text, problem, column] :
       {Wrong{"", Problem::not_a_fraction, 1}, Wrong{"x", Problem::not_a_fraction, 1},
        Wrong{"3.", Problem::not_a_fraction, 3}, Wrong{".5", Problem::not_a_fraction, 1},
        Wrong{"1,250", Problem::not_a_fraction, 1}, Wrong{"3/", Problem::not_a_fraction, 3},
        Wrong{"3/0", Problem::not_positive, 3}, Wrong{"3 1/0", Problem::not_positive, 5},
        Wrong{"3 mm", Problem::trailing_text, 3}, Wrong{"1 2", Problem::trailing_text, 3},
        Wrong{"1000000000000000000", Problem::number_too_large, 1},
        Wrong{"999999999999999999.999999999999999999", Problem::number_too_large, 20},
        Wrong{"1e3", Problem::trailing_text, 2}, Wrong{"--1", Problem::not_a_fraction, 2}}) {
    CAPTURE(text);
    auto const read = read_fraction(text);
    REQUIRE(!read);
    CHECK(read.error().problem == problem);
    CHECK(read.error().place->column == column);
  }
  STATIC_CHECK(3.2_percent == Fraction{16, 5});
  STATIC_CHECK(5_percent == Fraction{5});
}

TEST_CASE("a fraction is written with decimals as long division writes it") {
  STATIC_CHECK(to_decimal(Fraction{16, 5}, 2) == "3.20");
  STATIC_CHECK(to_decimal(Fraction{2, 3}, 3) == "0.667");
  STATIC_CHECK(to_decimal(Fraction{-2, 3}, 0) == "-1");
  STATIC_CHECK(to_decimal(Fraction{1, 2}, 0) == "1");
  STATIC_CHECK(to_decimal(Fraction{-1, 3}, 0) == "0");
  STATIC_CHECK(to_decimal(Fraction{999, 1000}, 2) == "1.00");
  STATIC_CHECK(to_decimal(Fraction{INT64_MIN}, 0) == "-9223372036854775808");
  STATIC_CHECK(to_decimal(Fraction{1, INT64_MAX}, 18) == "0.000000000000000000");
  CHECK_THROWS_AS((void)to_decimal(Fraction{1}, 19), BrokenPrecondition);
  std::mt19937_64 draw{1457};
  for (int i = 0; i < 20000; ++i) { // read back it is within half of the last place
    Fraction const x{static_cast<std::int64_t>(draw() % 2000001) - 1000000,
                     static_cast<std::int64_t>(draw() % 9999) + 1};
    auto const decimals = static_cast<int>(draw() % 6);
    auto const text = to_decimal(x, decimals);
    auto const back = read_fraction(text.view());
    REQUIRE(back);
    std::int64_t ten = 1;
    for (int k = 0; k < decimals; ++k) ten *= 10;
    auto const off = *back < x ? x - *back : *back - x;
    REQUIRE(off <= Fraction{1, 2 * ten});
  }
}

} // namespace
