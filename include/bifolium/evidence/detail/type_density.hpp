// SPDX-License-Identifier: MIT
/// How likely a type page is to be higher or lower than usual for its leaf: a t distribution, whose tails are heavy.
#pragma once

#include <bifolium/evidence/parameters.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Variance of the logarithm of type page over leaf, where the sheet is known. Chosen with `type_tails`.
inline constexpr double usual_type_variance = 0.0064;

/// Returns the density of the t distribution with `type_tails` degrees of freedom at `x` from its middle, relative to
/// the density there. `precision`: 1 over its variance.
constexpr double type_density(double x, double precision) {
  static_assert(type_tails == 7, "the exponent is half of one more");
  auto const base = 1 + x * x * precision * (1.0 / (type_tails - 2));
  return 1 / (base * base * (base * base));
}

} // namespace detail
} // namespace v0
} // namespace bifolium
