// SPDX-License-Identifier: MIT
/// Arithmetic of 64-bit whole numbers that never gives a wrong number. If the result does not fit in 64 bits, the
/// functions return no value.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>
#include <optional>

// g++ 12 takes what an empty std::optional does not hold for a value that is used, when the address sanitizer is on.
#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#endif

namespace bifolium {
inline namespace v0 {

/// Returns a + b, or no value if the sum does not fit in 64 bits.
constexpr std::optional<std::int64_t> checked_add(std::int64_t a, std::int64_t b) noexcept {
  auto const sum = static_cast<std::int64_t>(static_cast<std::uint64_t>(a) + static_cast<std::uint64_t>(b));
  if (((a ^ sum) & (b ^ sum)) < 0) return std::nullopt; // both have another sign than the sum
  return sum;
}
/// Returns a - b, or no value if the difference does not fit in 64 bits.
constexpr std::optional<std::int64_t> checked_subtract(std::int64_t a, std::int64_t b) noexcept {
  if (b < 0 ? a > INT64_MAX + b : a < INT64_MIN + b) return std::nullopt;
  return a - b;
}
/// Returns a * b, or no value if the product does not fit in 64 bits.
constexpr std::optional<std::int64_t> checked_multiply(std::int64_t a, std::int64_t b) noexcept {
  if (a == 0 || b == 0) return 0;
  if (a == -1) return b == INT64_MIN ? std::nullopt : std::optional<std::int64_t>{-b};
  if (b == -1) return a == INT64_MIN ? std::nullopt : std::optional<std::int64_t>{-a};
  bool const negative = (a < 0) != (b < 0);
  if (negative ? (a < 0 ? a < INT64_MIN / b : b < INT64_MIN / a) : (a > 0 ? a > INT64_MAX / b : a < INT64_MAX / b))
    return std::nullopt;
  return a * b;
}

} // namespace v0
} // namespace bifolium

#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic pop
#endif
