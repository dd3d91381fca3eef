// SPDX-License-Identifier: MIT
// A number that does not fit is refused wherever a value of the library is made of whole numbers, and one that fits is kept,
// whatever its type. What is not a whole number does not compile: tests/negative.
#include <bifolium/collation/folded_leaves.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/optional_number.hpp>
#include <bifolium/core/year_range.hpp>
#include <bifolium/leaf/cycle.hpp>
#include <bifolium/leaf/leaf.hpp>
#include <bifolium/paper/count.hpp>
#include <bifolium/paper/length.hpp>

#include "check.hpp"

#include <climits>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <utility>

using namespace bifolium;

namespace {

/// Asks `make(number)`, which makes a value and returns the number that it holds, with numbers of a type round the ends of
/// the type of its field and round its own.
template <class Number, class Field, class Make> void ask(Make make, Field least, Field greatest) {
  auto const ask_one = [&](Number number) {
    bool const fits = std::cmp_greater_equal(number, least) && std::cmp_less_equal(number, greatest);
    CAPTURE(number);
    if (fits)
      CHECK(std::cmp_equal(make(number), number));
    else
      CHECK_THROWS_AS((void)make(number), BrokenPrecondition);
  };
  for (auto const edge :
       {std::int64_t{least}, std::int64_t{greatest}, std::int64_t{INT_MAX}, std::int64_t{INT_MIN},
        std::int64_t{INT16_MAX}, std::int64_t{0}, std::int64_t{1} << 32, (std::int64_t{1} << 32) + 1490})
    for (int const by : {-1, 0, 1})
      if ((edge != INT64_MAX || by < 1) && (edge != INT64_MIN || by > -1) && std::in_range<Number>(edge + by))
        ask_one(static_cast<Number>(edge + by));
  ask_one(std::numeric_limits<Number>::max());
  ask_one(std::numeric_limits<Number>::min());
}
/// The same with every type of whole numbers.
template <class Field, class Make> void ask_all(Make make, Field least, Field greatest) {
  ask<signed char>(make, least, greatest);
  ask<unsigned char>(make, least, greatest);
  ask<short>(make, least, greatest);
  ask<unsigned short>(make, least, greatest);
  ask<int>(make, least, greatest);
  ask<unsigned>(make, least, greatest);
  ask<long>(make, least, greatest);
  ask<unsigned long>(make, least, greatest);
  ask<long long>(make, least, greatest);
  ask<unsigned long long>(make, least, greatest);
}

} // namespace

TEST_CASE("a value keeps the whole numbers it is made of, or says that they do not fit") {
  ask_all([](auto n) { return YearRange(n).from; }, INT_MIN, INT_MAX);
  ask_all([](auto n) { return YearRange(n, 1500).from; }, INT_MIN, INT_MAX);
  ask_all([](auto n) { return YearRange(1490, n).to; }, INT_MIN, INT_MAX);
  ask_all([](auto n) { return Fraction(n).numerator(); }, INT64_MIN, INT64_MAX);
  ask_all([](auto n) { return Fraction(n, 1).numerator(); }, INT64_MIN, INT64_MAX);
  ask_all([](auto n) { return Fraction(1, n).denominator(); }, std::int64_t{1}, INT64_MAX);
  ask_all([](auto n) { return *OptionalNumber<int>(n); }, INT_MIN, INT_MAX);
  ask_all([](auto n) { return *OptionalNumber<int>(std::optional{n}); }, INT_MIN, INT_MAX);
  ask_all([](auto n) { return *OptionalNumber<std::int16_t>(std::optional{n}); }, std::int16_t{INT16_MIN},
          std::int16_t{INT16_MAX});
  ask_all([](auto n) { return ReamCount(n, 25).ream; }, INT32_MIN, INT32_MAX);
  ask_all([](auto n) { return ReamCount(500, n).quire; }, INT32_MIN, INT32_MAX);
  ask_all([](auto n) { return ReamCount(500, 25, n).good; }, INT32_MIN, INT32_MAX);
  ask_all([](auto n) { return ReamCount(500, 25, std::optional{n}).good; }, INT32_MIN, INT32_MAX);
  ask_all([](auto n) { return ReamCount(500LL, 25, n).good; }, INT32_MIN, INT32_MAX);
  ask_all([](auto n) { return FoldedLeaves(n).first(); }, 1, INT_MAX);
  ask_all([](auto n) { return FoldedLeaves(1, n).last(8); }, 1, INT_MAX);
  ask_all([](auto n) { return Gathering<>(n).leaves(); }, 1, most_leaves_in_gathering);
  ask_all([](auto n) { return Cycle(n).term(0); }, 1, most_leaves_in_gathering);
  ask_all([](auto n) { return Leaf<8>(n).number(); }, 1, 8);
  ask_all([](auto n) { return Leaf<>(n, Gathering<>{8}).number(); }, 1, 8);
  ask_all([](auto n) { return Length<long long, Millimetre>(n).count(); }, INT64_MIN, INT64_MAX);
  ask_all([](auto n) { return Length<std::int16_t, Millimetre>(n).count(); }, std::int16_t{INT16_MIN},
          std::int16_t{INT16_MAX});
#if defined(__SIZEOF_INT128__) && !defined(__STRICT_ANSI__)
  // integers of 128 bits are whole numbers only in a compiler's own dialect
  __extension__ using Wide = __int128;
  auto const wide = static_cast<Wide>(1) << 64 | 5;
  CHECK_THROWS_AS((void)Fraction(wide), BrokenPrecondition);
  CHECK_THROWS_AS((void)Fraction(wide, 2), BrokenPrecondition);
  CHECK_THROWS_AS((void)YearRange(wide), BrokenPrecondition);
  CHECK_THROWS_AS(((void)Length<long long, Millimetre>(wide)), BrokenPrecondition);
#endif
  STATIC_CHECK(YearRange{1490LL, 1500LL} == YearRange{1490, 1500});
  STATIC_CHECK(!OptionalNumber<int>(std::optional<long>{}).has_value());
}

TEST_CASE("counts of paper are not negative") {
  CHECK(sheets_in(PaperCount{1, 2, 3}, reams::of_500) == 553);
  for (auto const& [count, field] :
       {std::pair{PaperCount{-1, 2, 3}, "reams"}, std::pair{PaperCount{1, -2, 3}, "quires"},
        std::pair{PaperCount{1, 2, -3}, "loose"}}) {
    auto const all = sheets_in(count, reams::of_500);
    REQUIRE_FALSE(all);
    CHECK(all.error().problem == Problem::negative_count);
    CHECK(message(all.error()).find(field) != std::string::npos);
  }
}

TEST_CASE("a price that fits is found, even if it would not fit on the way to it") {
  for (std::int64_t const n : {std::int64_t{1}, std::int64_t{23}, INT64_MAX / 23, INT64_MAX / 10, INT64_MAX}) {
    CHECK(price_of_alphabet(n, 23) == Fraction{n});
    CHECK(price_of_alphabet(n, 46) == Fraction{n, 2});
  }
  CHECK_FALSE(price_of_alphabet(INT64_MAX / 10, 1));
}
