// SPDX-License-Identifier: MIT
// The recording of size, against the worked examples of the rules themselves.
#include <bifolium/record/recording.hpp>

#include "check.hpp"

#include <array>
#include <limits>
#include <string>

using namespace bifolium;

namespace {
std::string words(Measured const& measured) { return to_words(*recorded_size(measured)); }
} // namespace

TEST_CASE("sizes are recorded as the examples of the rules have them") {
  // Descriptive Cataloging of Rare Materials (Books), 5D: each line one of its examples
  CHECK(words({.height = 17.1_cm}) == "18 cm");
  CHECK(words({.height = 98.2_mm}) == "99 mm");
  CHECK(words({.height = 20_cm, .width = 32_cm}) == "20 x 32 cm");
  CHECK(words({.height = 20_cm, .width = 8_cm}) == "20 x 8 cm");
  CHECK(words({.height = 95_mm, .width = 120_mm}) == "95 x 120 mm");
  CHECK(words({.height = 24_cm, .tallest = 28_cm}) == "24-28 cm");
  CHECK(words({.height = 12_cm, .binding = 20_cm}) == "12 cm bound to 20 cm");
  // AACR2 2.5D, a single sheet issued folded: example from memory
  CHECK(words({.height = 48_cm, .width = 30_cm, .single_sheet = true, .folded_height = 24_cm, .folded_width = 15_cm}) ==
        "48 x 30 cm folded to 24 x 15 cm");
  CHECK(to_words(*recorded_size({.height = 20_cm}), Format::of(4)) == "20 cm (4to)");
  CHECK(to_words(*recorded_size({.height = 51_cm, .width = 38_cm, .single_sheet = true}), Format::of(1)) ==
        "51 x 38 cm (full-sheet)");
  // University of Illinois Library, Book size rules (after AACR2 2.5D)
  CHECK(words({.height = 28.2_cm}) == "29 cm");
  // Library Journal 3 (1878) 19-20: between 18 and 19 cm is 19
  CHECK(words({.height = 18.4_cm}) == "19 cm");
}

TEST_CASE("formats follow the size, and only those that are known") {
  auto const size = *recorded_size({.height = 20_cm});
  // the same rules: "20 cm (4to)", and a mixture of formats named one after the other
  CHECK(to_words(size, std::array{Format::of(4), Format::of(8)}) == "20 cm (4to and 8vo)");
  CHECK(to_words(*recorded_size({.height = 305_mm}), Format::of(2)) == "31 cm (fol.)");
  CHECK(to_words(size, Format::of(12, Shape::longer)) == "20 cm (long 12mo)");
  // the rules: a format where it can be determined; of a single sheet only when the fraction is known
  CHECK(to_words(size, Format{}) == "20 cm");
  CHECK(to_words(size, Format::single_sheet()) == "20 cm");
  CHECK(to_words(size, std::array{Format{}, Format::of(8)}) == "20 cm (8vo)");
}

TEST_CASE("a width is given when it tells something, strictly") {
  // same rules: broader than high, or less than half; equal and exactly half are not
  STATIC_CHECK(recorded_size({.height = 200_mm, .width = 200_mm})->size.width == std::nullopt);
  STATIC_CHECK(recorded_size({.height = 200_mm, .width = 100_mm})->size.width == std::nullopt);
  STATIC_CHECK(recorded_size({.height = 200_mm, .width = 99_mm})->size.width == 10);
  STATIC_CHECK(recorded_size({.height = 200_mm, .width = 201_mm})->size.width == 21);
}

TEST_CASE("whole centimetres stay what they are, in whatever unit they were measured") {
  // constructed: 10 in. is 254 mm exactly, and arithmetic must not make 27 of it or 21 of 20
  STATIC_CHECK(recorded_size({.height = 10_in})->size.height == 26);
  STATIC_CHECK(recorded_size({.height = millimetres{2000.0 / 3 * 0.3}})->size.height == 20);
  STATIC_CHECK(recorded_size({.height = 99.9_mm})->size.height == 100);
  STATIC_CHECK(recorded_size({.height = 99.9_mm})->size.in_millimetres);
  STATIC_CHECK(recorded_size({.height = 100_mm})->size == StatedSize{.height = 10});
}

TEST_CASE("the binding is measured, and mentioned apart from 3 cm") {
  // the same rules: "differs by 3 centimeters or more"; the figures are constructed about that limit
  STATIC_CHECK(recorded_size({.height = 171_mm, .binding = 200_mm}) == RecordedSize{.size = {.height = 20}});
  STATIC_CHECK(recorded_size({.height = 170_mm, .binding = 200_mm}) ==
               RecordedSize{.size = {.height = 17}, .bound_to = StatedSize{.height = 20}});
  // a small book in a small binding: its binding is under 10 cm too
  CHECK(words({.height = 50_mm, .binding = 90.5_mm}) == "50 mm bound to 91 mm");
  // an oblong leaf in its binding: both sides of one thing
  CHECK(words({.height = 195_mm, .width = 280_mm, .binding = 205_mm, .binding_width = 290_mm}) == "21 x 29 cm");
  CHECK(words({.height = 195_mm, .width = 280_mm, .binding = 205_mm}) == "20 x 28 cm");
}

TEST_CASE("a size that cannot be is refused") {
  for (auto height : {0.0, -10.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()})
    CHECK(recorded_size({.height = millimetres{height}}).error().problem == Problem::impossible_measure);
  CHECK(recorded_size({.height = 20_cm, .tallest = 19_cm}).error().problem == Problem::tallest_below_lowest);
}
