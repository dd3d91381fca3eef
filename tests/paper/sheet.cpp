// SPDX-License-Identifier: MIT
#include <bifolium/paper.hpp>

#include "check.hpp"
#include "paper/boost_lengths.hpp"

#include <limits>
#include <sstream>

using namespace bifolium;

TEST_CASE("a sheet knows its short side from its long one") {
  STATIC_CHECK(Sheet{445_mm, 315_mm} == Sheet{315_mm, 445_mm});
  STATIC_CHECK(Sheet{445_mm, 315_mm}.short_side() == 315_mm && Sheet{445_mm, 315_mm}.long_side() == 445_mm);
  STATIC_CHECK(Sheet<millimetres>{Sheet{10_in, 20_in}} == Sheet{254_mm, 508_mm});
  STATIC_CHECK(Sheet{10_in, 20_in} == Sheet{254_mm, 508_mm} && Sheet{10_in, 508_mm} == Sheet{20_in, 10_in});
  STATIC_CHECK(Sheet{20_in, 10_in}.ratio() == 2.0);
  STATIC_CHECK(sizeof(Sheet<millimetres>) == 16 && std::is_trivially_copyable_v<Sheet<millimetres>>);
  CHECK(std::hash<Sheet<inches>>{}(Sheet{1_in, 2_in}) == std::hash<Sheet<inches>>{}(Sheet{2_in, 1_in}));
  std::ostringstream out;
  out << Sheet{445_mm, 315_mm};
  CHECK(out.str() == "315 mm x 445 mm");
}

TEST_CASE("what is no sheet is a broken precondition, what is no length does not compile") {
  CHECK_THROWS_AS((Sheet{0_mm, 315_mm}), BrokenPrecondition);
  CHECK_THROWS_AS((Sheet{315_mm, millimetres{-1}}), BrokenPrecondition);
  CHECK_THROWS_AS((Sheet{315_mm, millimetres{std::numeric_limits<double>::quiet_NaN()}}), BrokenPrecondition);
  STATIC_CHECK(LengthLike<double> && LengthLike<inches> && LengthLike<metres> && LengthLike<rational>);
  STATIC_CHECK(!LengthLike<int> && !LengthLike<Length<int, Millimetre>> && !LengthLike<char const*>);
}

TEST_CASE("sheets of foreign lengths fold as the others do") {
  Sheet const a{0.6 * metre, 0.4 * metre};
  CHECK(a.halved().short_side().value() == doctest::Approx(0.3));
  CHECK(a.halved().long_side().value() == doctest::Approx(0.4));
  CHECK(a.doubled().long_side().value() == doctest::Approx(0.8));
  CHECK(a.ratio() == doctest::Approx(1.5));
  Sheet const b{rational{35, 2}, rational{45, 2}}; // demy, 17 1/2 x 22 1/2 in
  CHECK(b.halved() == Sheet{rational{45, 4}, rational{35, 2}});
  CHECK(b.halved().doubled() == b);
  CHECK(b.doubled() == Sheet{rational{35}, rational{45, 2}});
  STATIC_CHECK(Sheet{2.0, 1.0}.halved() == Sheet{1.0, 1.0});
}

TEST_CASE("ISO 216: each size is half of the one before, cut down to the whole millimetre") {
  // ISO 216 A and B as listed by libpaper 1.1.29 (paperconf -s -m) and memoir.cls 3.7.19
  double const a[][2]{{841, 1189}, {594, 841}, {420, 594}, {297, 420}, {210, 297}, {148, 210},
                      {105, 148},  {74, 105},  {52, 74},   {37, 52},   {26, 37}};
  double const b[][2]{{1000, 1414}, {707, 1000}, {500, 707}, {353, 500}, {250, 353}, {176, 250},
                      {125, 176},   {88, 125},   {62, 88},   {44, 62},   {31, 44}};
  auto const follows = [](auto const& series) {
    for (std::size_t i = 0; i + 1 < std::size(series); ++i) {
      auto const half = Sheet{millimetres{series[i][0]}, millimetres{series[i][1]}}.halved();
      CHECK(length_cast<Length<int, Millimetre>>(half.short_side()).count() == series[i + 1][0]);
      CHECK(length_cast<Length<int, Millimetre>>(half.long_side()).count() == series[i + 1][1]);
      CHECK(half.ratio() == doctest::Approx(1.41421).epsilon(0.02));
    }
  };
  follows(a);
  follows(b);
}

TEST_CASE("ISO 217: RA and SRA sheets halve exactly or to the millimetre below") {
  // values of ISO 217 at second hand: the standard itself was not seen
  double const ra[][2]{{860, 1220}, {610, 860}, {430, 610}, {305, 430}, {215, 305}};
  double const sra[][2]{{900, 1280}, {640, 900}, {450, 640}, {320, 450}, {225, 320}};
  for (std::size_t i = 0; i + 1 < 5; ++i) {
    CHECK(Sheet{ra[i][0], ra[i][1]}.halved() == Sheet{ra[i + 1][0], ra[i + 1][1]});
    CHECK(Sheet{sra[i][0], sra[i][1]}.halved() == Sheet{sra[i + 1][0], sra[i + 1][1]});
  }
}

TEST_CASE("leaves of octavo, halved three times, are those of memoir") {
  // memoir.cls 3.7.19, octavo stock in inches; the sheets are Cockerell's (1901) and Tomlinson's (large post, 1854)
  struct {
    char const* name;
    YearRange years;
    double height, width;
  } const rows[]{{"foolscap", {1901, 1901}, 6.75, 4.25},
                 {"crown", {1901, 1901}, 7.5, 5},
                 {"royal", {1901, 1901}, 10, 6.25},
                 {"imperial", {1901, 1901}, 11, 7.5},
                 {"large post", {1854, 1854}, 8.25, 5.25}};
  for (auto const& [name, years, height, width] : rows) {
    CAPTURE(name);
    bool found = false;
    for (auto const& size : find_sheets({.name = name, .years = years, .region = Region::britain}))
      if (size.source == SheetSource::cockerell_1901 || size.source == SheetSource::tomlinson_1854) {
        auto const leaf = Sheet<inches>{size.sheet()}.halved().halved().halved();
        CHECK(leaf.long_side().count() == doctest::Approx(height));
        CHECK(leaf.short_side().count() == doctest::Approx(width));
        found = true;
      }
    CHECK(found);
  }
}

TEST_CASE("halving and doubling undo each other (property)") {
  for (int s = 1; s < 40; ++s)
    for (int l = s; l <= 2 * s; ++l) {
      Sheet const sheet{static_cast<double>(s), static_cast<double>(l)};
      CHECK(sheet.halved().doubled() == sheet);
      CHECK(sheet.doubled().halved() == sheet);
    }
  STATIC_CHECK(Sheet{1.0, 4.0}.halved() == Sheet{1.0, 2.0});
  STATIC_CHECK(Sheet{1.0, 4.0}.halved().doubled() == Sheet{2.0, 2.0}); // longer than two short sides: not undone
}
