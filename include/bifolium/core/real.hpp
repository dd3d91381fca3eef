// SPDX-License-Identifier: MIT
/// The functions of real numbers that the evidence is weighed with. g++ and clang have them built in; <cmath> would add
/// a hundred more to every unit.
#pragma once

#include <bifolium/core/config.hpp>

#if !defined(__GNUC__) // which clang defines too
#include <cmath>
#endif

namespace bifolium {
inline namespace v0 {
/// Functions of real numbers. Each gives what the function of the same name in <cmath> gives.
namespace real {

#if defined(__GNUC__)
/// Returns the natural logarithm.
inline double log(double x) noexcept { return __builtin_log(x); }
/// Returns the exponential function.
inline double exp(double x) noexcept { return __builtin_exp(x); }
/// Returns the square root.
inline double sqrt(double x) noexcept { return __builtin_sqrt(x); }
/// Returns the angle in radians whose tangent is x.
inline double atan(double x) noexcept { return __builtin_atan(x); }
/// Returns the complementary error function.
inline double erfc(double x) noexcept { return __builtin_erfc(x); }
#else
/// Returns the natural logarithm.
inline double log(double x) noexcept { return std::log(x); }
/// Returns the exponential function.
inline double exp(double x) noexcept { return std::exp(x); }
/// Returns the square root.
inline double sqrt(double x) noexcept { return std::sqrt(x); }
/// Returns the angle in radians whose tangent is x.
inline double atan(double x) noexcept { return std::atan(x); }
/// Returns the complementary error function.
inline double erfc(double x) noexcept { return std::erfc(x); }
#endif
/// Returns the absolute value.
constexpr double abs(double x) noexcept { return x < 0 ? -x : x; }

} // namespace real
} // namespace v0
} // namespace bifolium
