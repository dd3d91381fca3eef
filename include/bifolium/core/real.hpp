// SPDX-License-Identifier: MIT
/// The functions of real numbers that the evidence is weighed with. g++ and clang have them built in; <cmath> would add
/// a hundred more to every unit.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>

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
/// Returns the absolute value.
constexpr double abs(double x) noexcept { return __builtin_fabs(x); }
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
/// Returns the absolute value.
constexpr double abs(double x) noexcept { return x < 0 ? -x : x; }
#endif
/// Returns the exponential function to twelve digits, from a polynomial between two powers of two. It is three times as
/// fast and the same on every machine. Below e^-700 it is 0. Precondition: x is at most 700.
inline double quick_exp(double x) noexcept {
  if (!(x > -700)) return 0;
  // a number so large has no room for a fraction: its last bits are the nearest whole power of two
  constexpr double whole = 6755399441055744; // 1.5 * 2^52
  auto const bits = __builtin_bit_cast(std::uint64_t, x * 1.4426950408889634 + whole);
  // taken from the bits: `whole` less the sum would be of more digits where registers have them
  auto const n = static_cast<std::int32_t>(static_cast<std::uint32_t>(bits));
  auto const r = (x - n * 0.693147180369123816490) - n * 1.90821492927058770002e-10;
  auto const r2 = r * r, r4 = r2 * r2;
  auto const low = (1 + r) + r2 * (1.0 / 2 + r * (1.0 / 6));
  auto const middle = (1.0 / 24 + r * (1.0 / 120)) + r2 * (1.0 / 720 + r * (1.0 / 5040));
  auto const high = 1.0 / 40320 + r * (1.0 / 362880) + r2 * (1.0 / 3628800);
  auto const power = (bits + 1023) << 52U;
  return (low + r4 * (middle + r4 * high)) * __builtin_bit_cast(double, power);
}
/// Returns the natural logarithm to twelve digits in the same way. Precondition: x is at least 2^-1022.
inline double quick_log(double x) noexcept {
  auto const bits = __builtin_bit_cast(std::uint64_t, x);
  constexpr std::uint64_t root_half = 0x3FE6A09E667F3BCDU; // as its bits
  auto const n = static_cast<int>(static_cast<std::int64_t>(bits - root_half) >> 52);
  auto const m = __builtin_bit_cast(double, bits - (static_cast<std::uint64_t>(n) << 52U)); // root_half to its double
  auto const s = (m - 1) / (m + 1), t = s * s, t2 = t * t;
  auto const low = 1 + t * (1.0 / 3) + t2 * (1.0 / 5 + t * (1.0 / 7));
  auto const high = 1.0 / 9 + t * (1.0 / 11) + t2 * (1.0 / 13 + t * (1.0 / 15));
  return n * 0.69314718055994530942 + 2 * s * (low + t2 * t2 * high);
}

} // namespace real
} // namespace v0
} // namespace bifolium
