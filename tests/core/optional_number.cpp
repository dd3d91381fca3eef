// SPDX-License-Identifier: MIT
#include <bifolium/core/optional_number.hpp>

#include "check.hpp"

#include <cstdint>
#include <limits>
#include <optional>
#include <type_traits>

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
