// SPDX-License-Identifier: MIT
/// Arithmetic of 64-bit whole numbers that never gives a wrong number. If the result does not fit in 64 bits, the
/// functions return no value.
///
/// A constructor of ints takes 1490.7 and keeps 1490, takes 4,294,968,786 and keeps 1490 too, and takes true for 1: all in
/// silence, where the number stands in round brackets or comes through emplace. So what is made of several whole numbers
/// has a constructor for numbers that would change on the way in: it converts those that fit and refuses all others.
#pragma once

#include <bifolium/core/broken.hpp>

#include <cstdint>
#include <optional>
#include <type_traits>

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

namespace detail {

/// A number that the language would convert to a whole number, with its fraction or its meaning lost.
template <class T>
concept NoWholeNumber = std::is_floating_point_v<T> || std::is_same_v<T, bool> || std::is_same_v<T, char>;

/// A number that the language would change on the way into `To`, a signed type: no whole number, or one of a type that has
/// greater numbers.
template <class From, class To>
concept ChangesAs = NoWholeNumber<From> ||
    (std::is_integral_v<From> &&
     (sizeof(From) > sizeof(To) || (sizeof(From) == sizeof(To) && std::is_unsigned_v<From>)));

/// Returns the same number in another type. Precondition: it fits.
template <class To, class From> constexpr To unchanged(From number) {
  static_assert(!NoWholeNumber<From>, "a whole number is wanted: of another its fraction or its meaning would be lost");
  if constexpr (ChangesAs<From, To>) {
    auto const kept = static_cast<To>(number);
    if (static_cast<From>(kept) != number || (kept < 0) != (number < From{}))
      broken("the whole number does not fit into its field");
    return kept;
  } else {
    return static_cast<To>(number);
  }
}

} // namespace detail
} // namespace v0
} // namespace bifolium

#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic pop
#endif
