// SPDX-License-Identifier: MIT
/// Writes probabilities as this library prints them.
#pragma once

#include <bifolium/core/broken.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

/// Writes a probability with two decimals, rounded to nearest, so that 1.00 is at least 0.995. Precondition: 0 to 1, apart
/// from the rounding of sums of doubles.
inline std::string hundredths(double probability) {
  if (!(probability > -1e-9 && probability < 1 + 1e-9)) broken("a probability must be from 0 to 1");
  auto const n = static_cast<int>(probability * 100 + 0.5);
  std::string text = n >= 100 ? "1.0" : n < 10 ? "0.0" : "0.";
  return text.append(std::to_string(n >= 100 ? 0 : n));
}

} // namespace v0
} // namespace bifolium
