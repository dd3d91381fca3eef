// SPDX-License-Identifier: MIT
/// Unsigned whole numbers of 128 bits, for the numbers on the way to a sum of two fractions: the products of 64 bits
/// need not fit although the result does. Compilers have such a type, but the standard does not.
#pragma once

#include <bifolium/core/config.hpp>

#include <compare>
#include <cstdint>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the absolute value.
constexpr std::uint64_t magnitude(std::int64_t number) noexcept {
  return number < 0 ? 0 - static_cast<std::uint64_t>(number) : static_cast<std::uint64_t>(number);
}
constexpr std::uint64_t greatest_divisor(std::uint64_t a, std::uint64_t b) noexcept {
  while (b != 0) {
    auto const rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}
/// Returns the number of bits of a number: 0 for 0, 3 for 5.
constexpr int bits_of(std::uint64_t number) noexcept {
  int bits = 0;
  for (; number != 0; number >>= 1U) ++bits;
  return bits;
}

struct Wide {
  std::uint64_t high{}, low{};

  static constexpr Wide product(std::uint64_t a, std::uint64_t b) noexcept {
    constexpr std::uint64_t half = 0xFFFFFFFFU;
    std::uint64_t const al = a & half, ah = a >> 32U, bl = b & half, bh = b >> 32U;
    std::uint64_t const first = al * bl, second = ah * bl + (first >> 32U), third = al * bh + (second & half);
    return {ah * bh + (second >> 32U) + (third >> 32U), (third << 32U) | (first & half)};
  }
  /// Returns the sum. Precondition: it fits in 128 bits.
  friend constexpr Wide operator+(Wide a, Wide b) noexcept {
    auto const sum = a.low + b.low;
    return {a.high + b.high + (sum < a.low ? 1U : 0U), sum};
  }
  /// Returns the difference. Precondition: b <= a.
  friend constexpr Wide operator-(Wide a, Wide b) noexcept {
    return {a.high - b.high - (a.low < b.low ? 1U : 0U), a.low - b.low};
  }
  friend constexpr std::strong_ordering operator<=>(Wide const&, Wide const&) = default;
  friend constexpr bool operator==(Wide const&, Wide const&) = default;

  /// Returns the number shifted left. Precondition: 0 <= bits < 128, and no bit is lost.
  [[nodiscard]] constexpr Wide shifted(int bits) const noexcept {
    if (bits == 0) return *this;
    auto const by = static_cast<unsigned>(bits);
    if (by >= 64) return {low << (by - 64), 0};
    return {(high << by) | (low >> (64 - by)), low << by};
  }
  struct Divided;
  /// Divides bit by bit if 64 bits are not enough, which is rare. Precondition: 0 < divisor < 2^63.
  [[nodiscard]] constexpr Divided by(std::uint64_t divisor) const noexcept;
};
struct Wide::Divided {
  Wide quotient{};
  std::uint64_t rest{};
};
constexpr Wide::Divided Wide::by(std::uint64_t divisor) const noexcept {
  if (high == 0) return {{0, low / divisor}, low % divisor};
  Divided found;
  for (int bit = 127; bit >= 0; --bit) {
    auto const& word = bit >= 64 ? high : low;
    found.rest = (found.rest << 1U) | ((word >> static_cast<unsigned>(bit % 64)) & 1U);
    found.quotient = found.quotient.shifted(1);
    if (found.rest >= divisor) found.rest -= divisor, found.quotient.low |= 1U;
  }
  return found;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
