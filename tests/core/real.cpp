// SPDX-License-Identifier: MIT
#include <bifolium/core/real.hpp>

#include "check.hpp"

#include <algorithm>
#include <cmath>

using namespace bifolium;

TEST_CASE("the quick functions of real numbers are those of the standard library to twelve digits") {
  for (double x = -690; x < 690; x += 0.037) CHECK(std::abs(real::quick_exp(x) / std::exp(x) - 1) < 1e-12);
  CHECK(real::quick_exp(0) == 1);
  CHECK(real::quick_exp(-701) == 0);
  CHECK(real::quick_exp(-1e300) == 0);
  for (double x = 1e-300; x < 1e300; x *= 1.0371) {
    auto const expected = std::log(x);
    CHECK(std::abs(real::quick_log(x) - expected) <= 1e-12 * std::max(1.0, std::abs(expected)));
  }
  for (double x = 0.5; x < 2; x += 0.00137) CHECK(std::abs(real::quick_log(x) - std::log(x)) < 1e-13);
  CHECK(real::quick_log(1) == 0);
  for (double a = 1e-200; a < 1e100; a *= 3.137)
    for (double b = 1e-100; b < 1e90; b *= 7.713) {
      auto const expected = std::log(a) - std::log(b);
      CHECK(std::abs(real::quick_log_of_ratio(a, b) - expected) <= 1e-12 * std::max(1.0, std::abs(expected)));
    }
  for (double b = 0.5; b < 3; b += 0.0173)
    for (double a = b / 2; a < 2 * b; a += 0.0137)
      CHECK(std::abs(real::quick_log_of_ratio(a, b) - std::log(a / b)) < 1e-12);
}
