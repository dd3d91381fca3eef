// SPDX-License-Identifier: MIT
#include <bifolium/core/optional_number.hpp>

#include "check.hpp"

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>

using namespace bifolium;

TEST_CASE("a whole number that may not be known is an optional number") {
  STATIC_CHECK(!OptionalNumber<int>{}.has_value());
  STATIC_CHECK(!OptionalNumber<int>{std::nullopt});
  STATIC_CHECK(OptionalNumber<int>{0}.has_value());
  STATIC_CHECK(*OptionalNumber<int>{7} == 7);
  STATIC_CHECK(OptionalNumber<int>{7} == 7);
  STATIC_CHECK(OptionalNumber<int>{7} != OptionalNumber<int>{});
  STATIC_CHECK(OptionalNumber<int>{}.value_or(3) == 3);
  STATIC_CHECK(OptionalNumber<int>{7}.value_or(3) == 7);
  STATIC_CHECK(*OptionalNumber<int>{std::optional<int>{5}} == 5);
  STATIC_CHECK(!OptionalNumber<int>{std::optional<int>{}});
  std::optional<int> const as_optional = OptionalNumber<int>{9};
  CHECK(as_optional == 9);
  OptionalNumber<std::int64_t> price{};
  price = 12;
  CHECK(price == 12);
  price.reset();
  CHECK(!price);
  CHECK_THROWS_WITH(*price, "the number is not known: ask has_value() first");
}

TEST_CASE("a number that does not fit is refused, not cut") {
  constexpr auto most = std::numeric_limits<std::uint16_t>::max();
  CHECK(*OptionalNumber<std::uint16_t>{65535} == most);
  CHECK_THROWS_WITH(OptionalNumber<std::uint16_t>{65536}, "the number does not fit into this field");
  CHECK_THROWS_WITH(OptionalNumber<std::uint16_t>{-1}, "the number does not fit into this field");
  CHECK_THROWS_WITH(OptionalNumber<int>{std::int64_t{1} << 32}, "the number does not fit into this field");
  CHECK_THROWS_WITH(OptionalNumber<std::int64_t>{std::numeric_limits<std::uint64_t>::max()},
                    "the number does not fit into this field");
  CHECK(*OptionalNumber<std::int64_t>{std::numeric_limits<std::int64_t>::min()} ==
        std::numeric_limits<std::int64_t>::min());
}

TEST_CASE("numbers that are not known are equal, whatever the side and the kind of optional") {
  OptionalNumber<int> const none, seven{7};
  std::optional<int> const no_int, int_seven{7};
  std::optional<std::int64_t> const no_long, long_seven{7};
  CHECK(none == no_int);
  CHECK(no_int == none);
  CHECK(none == no_long);
  CHECK(no_long == none);
  CHECK(none == OptionalNumber<int>{});
  CHECK(none == std::nullopt);
  CHECK(std::nullopt == none);
  CHECK(seven == int_seven);
  CHECK(int_seven == seven);
  CHECK(seven == long_seven);
  CHECK(long_seven == seven);
  CHECK(seven == 7);
  CHECK(7 == seven);
  CHECK(seven == std::int64_t{7});
  CHECK_FALSE(seven == std::nullopt);
  CHECK_FALSE(seven == no_int);
  CHECK_FALSE(no_int == seven);
  CHECK_FALSE(none == int_seven);
  CHECK_FALSE(int_seven == none);
  CHECK_FALSE(none == 0);
  CHECK_FALSE(0 == none);
  CHECK_FALSE(seven == 8);
  CHECK(seven != no_int);
  CHECK(no_int != seven);
  CHECK_FALSE(none != no_int);
  CHECK_FALSE(no_int != none);
  CHECK_FALSE(no_long != none);
  CHECK_FALSE(seven != long_seven);
  CHECK_FALSE(long_seven != seven);
}

namespace {
/// Calls `act` with the numbers at the ends of a type and round zero, and round the ends of the types of 32 bits.
template <class Number, class Act> void each_edge(Act act) {
  for (std::int64_t const edge : {std::int64_t{0}, std::int64_t{INT32_MAX}, std::int64_t{INT32_MIN},
                                  std::int64_t{UINT32_MAX}, std::int64_t{INT16_MAX}, std::int64_t{UINT8_MAX}})
    for (int const by : {-1, 0, 1})
      if (std::in_range<Number>(edge + by)) act(static_cast<Number>(edge + by));
  act(std::numeric_limits<Number>::min());
  act(std::numeric_limits<Number>::max());
}
/// Compares each edge of one type with each of another, from both sides. Two numbers are the same if their digits are.
template <class One, class Other> void compare_all() {
  each_edge<One>([](One one) {
    each_edge<Other>([&](Other other) {
      bool const same = std::to_string(one) == std::to_string(other);
      CAPTURE(std::to_string(one));
      CAPTURE(std::to_string(other));
      OptionalNumber<One> const number{one};
      std::optional<Other> const optional{other};
      CHECK((number == other) == same);
      CHECK((other == number) == same);
      CHECK((number == optional) == same);
      CHECK((optional == number) == same);
      CHECK((number != optional) != same);
      CHECK((optional != number) != same);
      CHECK_FALSE(OptionalNumber<One>{} == optional);
      CHECK_FALSE(number == std::optional<Other>{});
    });
  });
}
template <class One, class... Others> void compare_with() { (compare_all<One, Others>(), ...); }
template <class... Numbers> void compare_each_with_each() { (compare_with<Numbers, Numbers...>(), ...); }
} // namespace

TEST_CASE("an optional number is equal to another only if both are the same number, whatever their types and signs") {
  compare_each_with_each<std::int8_t, std::uint8_t, std::int16_t, std::uint16_t, std::int32_t, std::uint32_t,
                         std::int64_t, std::uint64_t>();
  STATIC_CHECK(OptionalNumber<int>{-1} != std::optional<unsigned>{4294967295U});
}
