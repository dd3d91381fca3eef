// SPDX-License-Identifier: MIT
// A length in whole units times a number, or divided by one, is what whole numbers without a limit give, or it is refused: for
// every type of the length and of the number, and every sign.
#include <bifolium/core/fraction.hpp>
#include <bifolium/paper/length.hpp>

#include <concepts>
#include <cstdint>
#include <doctest/doctest.h>
#include <limits>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#ifndef __SIZEOF_INT128__ // a compiler for 32 bits
#include <boost/multiprecision/cpp_int.hpp>
#endif

using namespace bifolium;

namespace {

#ifdef __SIZEOF_INT128__
__extension__ typedef __int128 Int;
#else
using Int = boost::multiprecision::int128_t;
#endif

/// Numbers of a type: its ends, and those round zero and round the ends of other types.
template <class Number> std::vector<Number> edges() {
  std::vector<Number> all{std::numeric_limits<Number>::min(), std::numeric_limits<Number>::max(),
                          static_cast<Number>(std::numeric_limits<Number>::max() / 2)};
  for (std::int64_t const edge : {std::int64_t{0}, std::int64_t{5}, std::int64_t{INT32_MAX}, std::int64_t{UINT32_MAX},
                                  std::int64_t{INT8_MAX}, std::int64_t{INT64_MAX}})
    for (int const by : {-1, 0, 1})
      for (int const sign : {1, -1})
        if ((edge != INT64_MAX || by < 1) && std::in_range<Number>(sign * (edge + by)))
          all.push_back(static_cast<Number>(sign * (edge + by)));
  if constexpr (std::is_unsigned_v<Number> && sizeof(Number) == sizeof(std::uint64_t))
    for (auto const by : {-1, 0, 1}) all.push_back((std::uint64_t{1} << 63) + static_cast<std::uint64_t>(by));
  return all;
}
template <class L> bool is(std::optional<L> const& length, Int exact) {
  return length && Int{length->count()} == exact;
}
/// Lengths are counted below 2^63, even in an unsigned type.
template <class Out> bool fits(Int exact) {
  return exact >= Int{std::numeric_limits<Out>::min()} && exact <= Int{std::numeric_limits<Out>::max()} &&
         exact <= Int{INT64_MAX};
}
/// Calls an operator: no value if it is refused.
template <class Act> auto tried(Act act) -> std::optional<decltype(act())> {
  try {
    return act();
  } catch (BrokenPrecondition const&) {
    return std::nullopt;
  }
}

/// Adds, subtracts, divides and compares two lengths, where their types allow it: a signed and an unsigned number of 64 bits
/// have no type in common.
template <class L, class M> void ask_lengths(L one, M other) {
  if constexpr (std::convertible_to<L, std::common_type_t<L, M>> && std::convertible_to<M, std::common_type_t<L, M>>) {
    using Both = typename decltype(one + other)::rep;
    auto const a = Int{one.count()}, b = Int{other.count()};
    auto const sum = tried([&] { return one + other; }), difference = tried([&] { return one - other; });
    auto const times = tried([&] { return one / other; });
    CHECK(sum.has_value() == fits<Both>(a + b));
    if (sum) CHECK(is(sum, a + b));
    CHECK(difference.has_value() == fits<Both>(a - b));
    if (difference) CHECK(is(difference, a - b));
    CHECK(times.has_value() == (b != 0 && fits<Both>(a / b)));
    if (times) CHECK(Int{*times} == a / b);
    CHECK((one == other) == (a == b));
    CHECK((one < other) == (a < b));
  }
}
template <class Rep, class Number> void ask() {
  using L = Length<Rep, Millimetre>;
  for (auto const count : edges<Rep>()) {
    if (!std::in_range<std::int64_t>(count)) continue; // no length counts so many units
    L const length{count};
    for (auto const number : edges<Number>()) {
      CAPTURE(std::to_string(count));
      CAPTURE(std::to_string(number));
      auto const a = Int{count}, b = Int{number};
      using Out = typename decltype(length * number)::rep;
      auto const after = tried([&] { return length * number; }), before = tried([&] { return number * length; });
      auto const divided = tried([&] { return length / number; });
      CHECK(after.has_value() == fits<Out>(a * b));
      CHECK(before == after);
      if (after) CHECK(is(after, a * b));
      CHECK(divided.has_value() == (b != 0 && fits<Out>(a / b)));
      if (divided) CHECK(is(divided, a / b));
      if (std::in_range<std::int64_t>(number)) ask_lengths(length, Length<Number, Millimetre>{number});
    }
  }
}
template <class Rep, class... Numbers> void ask_with() { (ask<Rep, Numbers>(), ...); }
template <class... Numbers> void ask_each_with_each() { (ask_with<Numbers, Numbers...>(), ...); }

} // namespace

TEST_CASE("whole lengths and numbers of every type and sign give the exact result or none") {
  ask_each_with_each<std::int8_t, std::uint8_t, std::int16_t, std::uint16_t, std::int32_t, std::uint32_t, std::int64_t,
                     std::uint64_t>();
  ask<int, unsigned long long>();
  ask<unsigned long long, unsigned long long>();
}

TEST_CASE("a fraction of a unit and a floating-point number take the sign of the factor too") {
  Length<Fraction, Millimetre> const fifth{Fraction{1, 5}};
  CHECK((fifth * 5U).count() == Fraction{1});
  CHECK((fifth / 5U).count() == Fraction{1, 25});
  CHECK_THROWS_AS((void)(fifth * UINT64_MAX), BrokenPrecondition);
  CHECK_THROWS_AS((void)(fifth / UINT64_MAX), BrokenPrecondition);
  CHECK((5_mm * UINT64_MAX).count() > 0);
  CHECK((5_mm / UINT64_MAX).count() > 0);
  CHECK((Length<int, Millimetre>{5} * 0.5).count() == 2.5);
  CHECK((Length<int, Millimetre>{-5} / 2.F).count() == -2.5F);
}
