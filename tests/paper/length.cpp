// SPDX-License-Identifier: MIT
#include <bifolium/core/fraction.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/paper/length.hpp>
#include <bifolium/paper/measure.hpp>
#include <bifolium/paper/read_length.hpp>
#include <bifolium/paper/sheet_size.hpp>

#include "check.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <limits>
#include <optional>
#include <random>
#include <ratio>
#include <sstream>
#include <string>
#include <type_traits>
#include <unordered_set>
#include <vector>

using namespace bifolium;

namespace {
using whole_mm = Length<int, Millimetre>;
using whole_cm = Length<int, Centimetre>;
using whole_in = Length<int, Inch>;
using exact_mm = Length<Fraction, Millimetre>;

template <class A, class B>
concept adds = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept subtracts = requires(A a, B b) {
  a - b;
};
template <class A, class B>
concept multiplies = requires(A a, B b) {
  a* b;
};
template <class A, class B>
concept divides = requires(A a, B b) {
  a / b;
};
template <class A, class B>
concept equals = requires(A a, B b) {
  a == b;
};
template <class A, class B>
concept orders = requires(A a, B b) {
  a < b;
};
template <class A, class B>
concept assigns = requires(A a, B b) {
  a += b;
};

/// What GNU units answers, or nothing where it is not installed.
double gnu_units(char const* from, char const* to) {
  std::string const command = "units -t '" + std::string{from} + "' '" + to + "' 2>/dev/null";
  auto* const pipe = popen(command.c_str(), "r");
  if (!pipe) return 0;
  char answer[64]{};
  auto const* const line = std::fgets(answer, sizeof answer, pipe);
  pclose(pipe);
  return line ? std::strtod(line, nullptr) : 0;
}
} // namespace

TEST_CASE("a length is as small as its number") {
  STATIC_CHECK(sizeof(millimetres) == sizeof(double) && sizeof(whole_mm) == sizeof(int));
  STATIC_CHECK(std::is_trivially_copyable_v<millimetres> && std::regular<millimetres>);
  STATIC_CHECK(std::totally_ordered_with<millimetres, inches>);
  STATIC_CHECK(millimetres{} == 0_mm);
}

TEST_CASE("what is no sum of lengths does not compile") {
  STATIC_CHECK(adds<millimetres, inches> && subtracts<inches, paris_inches> && adds<whole_mm, whole_in>);
  STATIC_CHECK(!adds<millimetres, double> && !adds<int, whole_mm> && !subtracts<millimetres, int>);
  STATIC_CHECK(multiplies<millimetres, double> && multiplies<int, millimetres>);
  STATIC_CHECK(!multiplies<millimetres, millimetres> && !multiplies<millimetres, bool>);
  STATIC_CHECK(divides<millimetres, int> && divides<millimetres, inches> && !divides<double, millimetres>);
  STATIC_CHECK(equals<millimetres, inches> && !equals<millimetres, double> && !equals<whole_mm, int>);
  STATIC_CHECK(orders<paris_lines, whole_cm> && !orders<millimetres, int>);
  STATIC_CHECK(assigns<millimetres&, inches> && !assigns<millimetres&, double> && !assigns<whole_cm&, whole_mm>);
  STATIC_CHECK(!std::is_convertible_v<double, millimetres> && !std::is_convertible_v<millimetres, double>);
  STATIC_CHECK(!std::is_convertible_v<int, std::optional<millimetres>>);
  // a length that may be missing is an optional one: lengths of any unit, nothing, another optional
  OptionalLength height{};
  CHECK_FALSE(height);
  height = 19_cm;
  CHECK(*height == 190_mm);
  CHECK(height == 190_mm);
  CHECK(height == OptionalLength{19_cm});
  CHECK(OptionalLength{} < height);
  height = std::optional<millimetres>{1_in};
  CHECK(height->count() == 25.4);
  height = std::nullopt;
  CHECK_FALSE(height.has_value());
}

TEST_CASE("a conversion happens by itself where nothing is lost, and by name where something is") {
  STATIC_CHECK(std::is_convertible_v<inches, millimetres> && std::is_convertible_v<whole_cm, whole_mm>);
  STATIC_CHECK(std::is_convertible_v<whole_mm, inches> && std::is_convertible_v<whole_in, exact_mm>);
  STATIC_CHECK(!std::is_constructible_v<whole_cm, whole_mm> && !std::is_constructible_v<whole_mm, millimetres>);
  STATIC_CHECK(!std::is_constructible_v<whole_mm, Length<std::int64_t, Millimetre>>);
  STATIC_CHECK(!std::is_constructible_v<whole_mm, double>);
  STATIC_CHECK(length_cast<whole_cm>(whole_mm{187}) == whole_cm{18});
  STATIC_CHECK(length_cast<whole_mm>(7.99_in) == whole_mm{202}); // 202.946 mm
  STATIC_CHECK(whole_mm{whole_cm{32}}.count() == 320);
  CHECK_THROWS_AS((void)length_cast<whole_mm>(millimetres{3e9}), BrokenPrecondition);
  CHECK_THROWS_AS((void)length_cast<whole_mm>(millimetres{std::nan("")}), BrokenPrecondition);
}

template <class Rep> void counts_exactly_or_says_so() {
  using Mm = Length<Rep, Millimetre>;
  using Cm = Length<Rep, Centimetre>;
  constexpr std::int64_t least = std::numeric_limits<Rep>::min(); // NOLINT(bugprone-signed-char-misuse): a number
  constexpr std::int64_t most = std::numeric_limits<Rep>::max();
  auto const is_broken = [](auto act) {
    try {
      act();
      return false;
    } catch (BrokenPrecondition const&) {
      return true;
    }
  };
  auto const fits = [&](std::int64_t number) { return least <= number && number <= most; };
  auto const product_fits = [&](std::int64_t a, std::int64_t b) { // of 32 bits times 32, which 64 may not hold
    return std::abs(static_cast<double>(a) * static_cast<double>(b)) < 1e18 && fits(a * b);
  };
  std::vector<std::int64_t> numbers;
  for (std::int64_t n = -300; n <= 300; ++n) numbers.push_back(n);
  for (std::int64_t n : {least, least + 1, most - 1, most, most / 10, most / 10 + 1, least / 10, least / 10 - 1})
    numbers.push_back(n);
  for (auto a : numbers) {
    CHECK(is_broken([&] { static_cast<void>(Mm{a}); }) == !fits(a));
    CHECK(is_broken([&] { static_cast<void>(length_cast<Mm>(Length<std::int64_t, Millimetre>{a})); }) == !fits(a));
    CHECK(is_broken([&] { static_cast<void>(length_cast<Mm>(millimetres{static_cast<double>(a) + 0.5})); }) ==
          !fits(static_cast<std::int64_t>(static_cast<double>(a) + 0.5)));
    if (!fits(a)) continue;
    CHECK(is_broken([&] { static_cast<void>(Mm{Cm{a}}); }) == !fits(a * 10));
    CHECK(is_broken([&] { static_cast<void>(-Mm{a}); }) == !fits(-a));
    for (std::int64_t b : {std::int64_t{-1}, std::int64_t{0}, std::int64_t{1}, std::int64_t{7}, most, most / 2 + 1}) {
      if (!fits(b)) continue;
      CHECK((Mm{a} < Mm{b}) == (a < b));
      CHECK((Cm{a} <=> Mm{b}) == (a * 10 <=> b));
      CHECK((Cm{a} == Mm{b}) == (a * 10 == b));
      CHECK(is_broken([&] { static_cast<void>(Mm{a} + Mm{b}); }) == !fits(a + b));
      CHECK(is_broken([&] { static_cast<void>(Mm{a} - Mm{b}); }) == !fits(a - b));
      CHECK(is_broken([&] {
              auto sum = Mm{a};
              sum += Mm{b};
            }) == !fits(a + b));
      CHECK(is_broken([&] { static_cast<void>(Mm{a} * static_cast<Rep>(b)); }) == !product_fits(a, b));
      CHECK(is_broken([&] { static_cast<void>(Mm{a} / static_cast<Rep>(b)); }) == (b == 0 || !fits(a / b)));
      CHECK(is_broken([&] { static_cast<void>(Mm{a} / Mm{b}); }) == (b == 0 || !fits(a / b)));
    }
  }
  std::ostringstream out;
  out << Mm{65};
  CHECK(out.str() == "65 mm");
}

TEST_CASE("whole numbers of every size count lengths exactly, or break a precondition") {
  counts_exactly_or_says_so<signed char>();
  counts_exactly_or_says_so<unsigned char>();
  counts_exactly_or_says_so<short>();
  counts_exactly_or_says_so<unsigned short>();
  counts_exactly_or_says_so<int>();
  counts_exactly_or_says_so<unsigned>();
  // a length below zero is not above one without a sign
  STATIC_CHECK(Length<int, Millimetre>{-1} < Length<unsigned, Millimetre>{1});
  STATIC_CHECK((Length<unsigned, Millimetre>{1} - Length<int, Millimetre>{2}).count() == -1);
  // whole numbers above 2^53 are not all floating-point numbers
  using Long = Length<std::int64_t, Millimetre>;
  CHECK(millimetres{Long{std::int64_t{1} << 60}}.count() == 1152921504606846976.0);
  CHECK_THROWS_AS((void)millimetres{Long{(std::int64_t{1} << 53) + 1}}, BrokenPrecondition);
  CHECK_THROWS_AS((void)millimetres{Long{INT64_MAX}}, BrokenPrecondition);
  CHECK_THROWS_AS((void)(Long{INT64_MAX} + Long{1}), BrokenPrecondition);
  CHECK_THROWS_AS((void)(Long{INT64_MIN} / -1), BrokenPrecondition);
  CHECK_THROWS_AS((void)(length_cast<Long>(Length<std::int64_t, Centimetre>{INT64_MAX})), BrokenPrecondition);
  CHECK_THROWS_AS((void)(Length<std::uint64_t, Millimetre>{UINT64_MAX}), BrokenPrecondition);
  CHECK_THROWS_AS((void)(length_cast<Length<unsigned, Millimetre>>(millimetres{-1.0})), BrokenPrecondition);
  STATIC_CHECK(length_cast<Length<unsigned, Millimetre>>(millimetres{4294967295.5}).count() == 4294967295U);
  CHECK_THROWS_AS((void)(length_cast<Length<unsigned, Millimetre>>(millimetres{4294967296.0})), BrokenPrecondition);
}

TEST_CASE("a height is recorded in whole centimetres, rounded up") {
  // DCRM(B) 5D: a volume 17.1 cm high is recorded as 18 cm
  STATIC_CHECK(bifolium::ceil<whole_cm>(17.1_cm) == whole_cm{18});
  STATIC_CHECK(bifolium::ceil<whole_cm>(171_mm) == whole_cm{18});
  STATIC_CHECK(bifolium::ceil<whole_cm>(180_mm) == whole_cm{18});
}

TEST_CASE("lengths in different units meet in millimetres, whole ones where neither is rounded") {
  STATIC_CHECK(std::is_same_v<decltype(1_in + 1_cm), millimetres>);
  STATIC_CHECK(std::is_same_v<decltype(1_in + 1_in), inches>);
  STATIC_CHECK(std::is_same_v<decltype(whole_mm{} + whole_cm{}), whole_mm>);
  STATIC_CHECK((whole_mm{1} + whole_in{1}).count() == 132); // in fifths of a millimetre
  STATIC_CHECK(whole_mm{127} == whole_in{5} && whole_mm{26} > whole_in{1} && whole_mm{25} < whole_in{1});
  STATIC_CHECK(25.4_mm == 1_in && 2.54_cm == 1_in && 12_lignes == 1_pouces);
  STATIC_CHECK(20_in / 1_in == 20.0 && 1_in / 1_mm == 25.4 && 2 * 3_mm == 6_mm && 7_mm / 2 == 3.5_mm);
  STATIC_CHECK(-(5_mm - 8_mm) == 3_mm);
  STATIC_CHECK(Length<int, std::ratio<1000>>{1} == whole_mm{1000}); // a metre, as a unit from elsewhere
}

TEST_CASE("the pouce of Paris is 12 of the 443.296 lignes of a metre") {
  // law of 19 frimaire an VIII
  STATIC_CHECK(exact_mm{Length<Fraction, ParisLine>{Fraction{443'296, 1000}}} == exact_mm{1000});
  STATIC_CHECK(exact_mm{Length<Fraction, ParisInch>{1}}.count() == Fraction{375'000, 13'853});
  STATIC_CHECK(exact_mm{Length<Fraction, Inch>{Fraction{1, 2}}}.count() == Fraction{127, 10});
}

TEST_CASE("units agree with GNU units") {
  // recorded from GNU units 2.22 (definitions of September 2022); asked anew where it is installed
  struct {
    char const* from;
    millimetres length;
    double recorded;
  } const rows[]{{"frenchinch", 1_pouces, 27.069949},         {"frenchfoot", 12_pouces, 324.83938},
                 {"36.5 frenchinch", 36.5_pouces, 988.05313}, {"24.75 frenchinch", 24.75_pouces, 669.98123},
                 {"frenchinch/12", 1_lignes, 27.069949 / 12}, {"4.75 inch", 4.75_in, 120.65}};
  for (auto const& [from, length, recorded] : rows) {
    CAPTURE(from);
    CHECK(length.count() == doctest::Approx(recorded).epsilon(1e-7));
    if (auto const now = gnu_units(from, "mm"); now > 0) CHECK(length.count() == doctest::Approx(now).epsilon(1e-7));
  }
}

TEST_CASE("there and back again gives the length that went (property, seed fixed)") {
  std::mt19937 random{1741};
  std::uniform_real_distribution<double> some{0.1, 3000};
  std::uniform_int_distribution<int> number{1, 100'000};
  for (int i = 0; i < 5000; ++i) {
    millimetres const a{some(random)}, b{some(random)};
    CHECK(millimetres{inches{a}}.count() == doctest::Approx(a.count()).epsilon(1e-15));
    CHECK(millimetres{paris_lines{a}}.count() == doctest::Approx(a.count()).epsilon(1e-15));
    CHECK((inches{a} < inches{b}) == (a < b));
    Length<Fraction, Inch> const exact{Fraction{number(random), number(random)}};
    CHECK(Length<Fraction, Inch>{Length<Fraction, ParisInch>{exact}} == exact);
    auto const mm = number(random);
    CHECK(length_cast<whole_mm>(whole_mm{mm} + whole_in{mm} - whole_in{mm}) == whole_mm{mm});
  }
}

TEST_CASE("a length prints itself with its unit and hashes") {
  std::ostringstream out;
  out << 187_mm << ", " << 4.75_in << ", " << 36.5_pouces << ", " << whole_mm{1} + whole_in{1};
  CHECK(out.str() == "187 mm, 4.75 in, 36.5 pouces, 132 x 1/5 mm");
  std::unordered_set<millimetres> const set{1_in, 25.4_mm, 2_mm};
  CHECK(set.size() == 2);
}

TEST_CASE("lengths are read as people write them") {
  STATIC_CHECK(*read_length("187 mm") == 187_mm);
  STATIC_CHECK(*read_length("18.7 cm") == 187_mm && *read_length("18,7cm") == 187_mm);
  STATIC_CHECK(*read_length("4 3/4 in") == 4.75_in && *read_length("4-3/4 inches") == 4.75_in);
  STATIC_CHECK(*read_length("4¾\"") == 4.75_in && *read_length("4 ¾ in.") == 4.75_in && *read_length("½ in") == 0.5_in);
  STATIC_CHECK(*read_length("3/4 inch") == 0.75_in && *read_length("\t 9 pouces ") == 9_pouces);
  STATIC_CHECK(*read_length("36 pouces 6 lignes") == 36.5_pouces);
  STATIC_CHECK(*read_length("24 pouces 9 lignes") == 24.75_pouces);
  STATIC_CHECK(*read_length("6 lignes") == 0.5_pouces);
}

TEST_CASE("vulgar fractions in one character are those of Unicode") {
  // Unicode Character Database 15.0, Numeric_Value of U+00BC-00BE, U+2153, U+2154, U+215B-215E
  std::pair<char const*, double> const characters[]{{"¼", 1 / 4.}, {"½", 1 / 2.}, {"¾", 3 / 4.},
                                                    {"⅓", 1 / 3.}, {"⅔", 2 / 3.}, {"⅛", 1 / 8.},
                                                    {"⅜", 3 / 8.}, {"⅝", 5 / 8.}, {"⅞", 7 / 8.}};
  for (auto const& [character, part] : characters) {
    auto const length = read_length(std::string{"7 "} + character + " in");
    REQUIRE_MESSAGE(length, character);
    CHECK(length->count() == doctest::Approx((7 + part) * 25.4));
  }
}

TEST_CASE(
    "a unit has many words, in capitals and small letters, with a full stop and without") { // common practice, no source
  struct Words {
    std::vector<char const*> words;
    millimetres two;
  };
  for (auto const& [words, two] :
       {Words{
            {"mm", "millimetres", "millimetre", "millimeters", "Millimeter", "millimètres", "millimetri", "milímetros"},
            2_mm},
        Words{{"cm", "cms", "centimetres", "centimeters", "Zentimeter", "centimètres", "centimetri", "centímetros"},
              20_mm},
        Words{{"in", "inch", "inches", "\"", "\u2033"}, 2_in}, Words{{"pouces", "pouce"}, 2_pouces},
        Words{{"lignes", "ligne", "lig"}, 2_lignes}})
    for (std::string const word : words)
      for (std::string const before : {"2 ", "2", "2\u00a0"})
        for (std::string const after : {"", ".", " "}) {
          bool const sign = word == "\"" || word == "\u2033";
          if (sign && after == ".") continue;
          auto const text = before + word + after;
          CAPTURE(text);
          CHECK(read_length(text) == two);
          std::string capitals;
          for (char const c : text) capitals += capital_letter(c);
          CHECK(read_length(capitals) == two);
        }
  CHECK(read_length("9 pouces 6 lig.") == millimetres{9.5_pouces});
  CHECK(length_in(SheetUnit::pouce, 2) == millimetres{2_pouces});
}

TEST_CASE("what is no length is an error that says where") {
  struct {
    char const* text;
    Problem problem;
    unsigned column;
  } const rows[]{{"", Problem::not_a_length, 1},
                 {"nan mm", Problem::not_a_length, 1},
                 {"inf cm", Problem::not_a_length, 1},
                 {"-5 mm", Problem::not_positive, 1},
                 {"0 mm", Problem::not_positive, 1},
                 {"1/0 in", Problem::not_positive, 1},
                 {"187", Problem::unit_missing, 1},
                 {"187 km", Problem::unknown_unit, 5},
                 {"4¾ ell", Problem::unknown_unit, 4},
                 {"1,250 mm", Problem::not_a_length, 1},
                 {"187 mm x", Problem::trailing_text, 8},
                 {"1 in 2 in", Problem::trailing_text, 6},
                 {"9 pouces 2 mm", Problem::trailing_text, 10},
                 {"9 pouces, 2 lignes", Problem::unknown_unit, 3},
                 {"9 pouces x", Problem::trailing_text, 10},
                 {"1. mm", Problem::not_a_number, 3},
                 {"1e3 mm", Problem::unknown_unit, 2},
                 {"9999999999999 mm", Problem::number_too_large, 1},
                 {"+5 mm", Problem::not_a_length, 1}};
  for (auto const& [text, problem, column] : rows) {
    auto const length = read_length(text);
    CAPTURE(text);
    REQUIRE(!length);
    CHECK(length.error().problem == problem);
    CHECK(length.error().place->column == column);
    CHECK(message(length.error()).size() > 20);
  }
  CHECK(message(read_length("187").error()) ==
        "line 1, column 1: '187' has no unit: write mm, cm, in, pouces or lignes after the number");
  CHECK(message(read_length("nan mm").error()) ==
        "line 1, column 1: found 'nan mm' where a length is expected: write 187 mm, 18.7 cm or 4 3/4 in");
}

TEST_CASE("decimal lengths agree with strtod") {
  std::mt19937 random{1799};
  std::uniform_int_distribution<int> whole{0, 99'999}, part{1, 99'999};
  for (int i = 0; i < 2000; ++i) {
    auto const text = std::to_string(whole(random)) + "." + std::to_string(part(random));
    CHECK(read_length(text + " mm")->count() == std::strtod(text.c_str(), nullptr));
  }
}

TEST_CASE("no text, however odd, is more than an error (constructed)") {
  std::mt19937 random{7};
  std::string const letters = "0123456789.,/- \t\"mcinpouelgs½¾\xC3\xFF";
  std::uniform_int_distribution<std::size_t> pick{0, letters.size() - 1}, size{0, 24};
  for (int i = 0; i < 20000; ++i) {
    std::string text;
    for (auto n = size(random); n > 0; --n) text += letters[pick(random)];
    if (auto const length = read_length(text)) CHECK((*length > 0_mm && std::isfinite(length->count())));
  }
}
