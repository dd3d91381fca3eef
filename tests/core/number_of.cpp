// SPDX-License-Identifier: MIT
// A number and its noun: one has the singular, every other number the plural (English, from memory).
#include <bifolium/core/number_of.hpp>

#include "check.hpp"

using namespace bifolium;

TEST_CASE("one thing has the singular") {
  CHECK(number_of(1, "leaf", "leaves") == "1 leaf");
  for (std::int64_t const number :
       {std::int64_t{0}, std::int64_t{2}, std::int64_t{11}, std::int64_t{21}, std::int64_t{-1}, INT64_MAX})
    CHECK(number_of(number, "leaf", "leaves") == std::to_string(number) + " leaves");
}
