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
}
