// SPDX-License-Identifier: MIT
/// The functions of real numbers that the evidence is weighed with. g++ and clang know them without a header; <cmath>
/// would bring a hundred more into every unit.
#pragma once

#include <bifolium/core/config.hpp>

#if !defined(__GNUC__) // which clang defines too
#include <cmath>
#endif

namespace bifolium {
inline namespace v0 {
/// Functions of real numbers, each as the standard library has it.
namespace real {

#if defined(__GNUC__)
/// The natural logarithm.
inline double log(double x) noexcept { return __builtin_log(x); }
/// The exponential function.
inline double exp(double x) noexcept { return __builtin_exp(x); }
/// The square root.
inline double sqrt(double x) noexcept { return __builtin_sqrt(x); }
/// The angle whose tangent is x, in radians.
inline double atan(double x) noexcept { return __builtin_atan(x); }
/// The complementary error function.
inline double erfc(double x) noexcept { return __builtin_erfc(x); }
#else
/// The natural logarithm.
inline double log(double x) noexcept { return std::log(x); }
/// The exponential function.
inline double exp(double x) noexcept { return std::exp(x); }
/// The square root.
inline double sqrt(double x) noexcept { return std::sqrt(x); }
/// The angle whose tangent is x, in radians.
inline double atan(double x) noexcept { return std::atan(x); }
/// The complementary error function.
inline double erfc(double x) noexcept { return std::erfc(x); }
#endif
/// The value without its sign.
constexpr double abs(double x) noexcept { return x < 0 ? -x : x; }

} // namespace real
} // namespace v0
} // namespace bifolium
