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
namespace detail::real {

#if defined(__GNUC__)
inline double log(double x) noexcept { return __builtin_log(x); }
inline double exp(double x) noexcept { return __builtin_exp(x); }
inline double sqrt(double x) noexcept { return __builtin_sqrt(x); }
inline double atan(double x) noexcept { return __builtin_atan(x); }
inline double erfc(double x) noexcept { return __builtin_erfc(x); }
#else
inline double log(double x) noexcept { return std::log(x); }
inline double exp(double x) noexcept { return std::exp(x); }
inline double sqrt(double x) noexcept { return std::sqrt(x); }
inline double atan(double x) noexcept { return std::atan(x); }
inline double erfc(double x) noexcept { return std::erfc(x); }
#endif
constexpr double abs(double x) noexcept { return x < 0 ? -x : x; }

} // namespace detail::real
} // namespace v0
} // namespace bifolium
