// SPDX-License-Identifier: MIT
/// Arithmetic of the numbers that count lengths. Whole numbers of any size and sign give the exact result or break a
/// precondition; floating-point numbers and fractions use their own arithmetic.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/checked.hpp>
#include <bifolium/fwd.hpp>

#include <concepts>
#include <cstdint>
#include <type_traits>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Converts a whole number to a signed 64-bit number.
template <std::integral Number> constexpr std::int64_t whole(Number number) {
  if constexpr (ChangesAs<Number, std::int64_t> && !NoWholeNumber<Number>)
    if (static_cast<Number>(static_cast<std::int64_t>(number)) != number ||
        (std::is_unsigned_v<Number> && number > static_cast<Number>(INT64_MAX)))
      broken("a whole number of a length must be less than 2^63");
  return static_cast<std::int64_t>(number);
}
template <class Rep> constexpr bool holds(std::int64_t number) {
  if constexpr (std::is_unsigned_v<Rep>)
    return number >= 0 && (sizeof(Rep) >= sizeof number || number < std::int64_t{1} << (8 * sizeof(Rep) % 64));
  else
    return static_cast<std::int64_t>(static_cast<Rep>(number)) == number;
}
/// Returns true if a number with a fractional part, truncated, fits in a whole number. Powers of two are exact in every
/// floating-point type.
template <std::integral Out, class Number> constexpr bool fits_whole(Number exact) {
  constexpr auto half = static_cast<Number>(std::uint64_t{1} << (sizeof(Out) * 8 - 2));
  if constexpr (std::is_unsigned_v<Out>)
    return exact > static_cast<Number>(-1) && exact < 4 * half;
  else
    return exact < 2 * half && (exact > -2 * half - 1 || exact == -2 * half);
}

/// Converts a number to another type without changing its value.
template <class Rep, class Number> constexpr Rep exact_rep(Number number) {
  if constexpr (std::integral<Rep> && std::integral<Number>) {
    auto const same = whole(number);
    if (!holds<Rep>(same)) broken("the length does not fit in its whole-number type");
    return static_cast<Rep>(same);
  } else if constexpr (std::floating_point<Rep> && std::integral<Number>) {
    auto const nearest = static_cast<Rep>(number);
    if (!fits_whole<std::int64_t>(nearest) || static_cast<std::int64_t>(nearest) != whole(number))
      broken("the whole number of a length is too large to be exact as a floating-point number");
    return nearest;
  } else {
    return static_cast<Rep>(number);
  }
}

/// Returns the type that counts two lengths together. If only one of two whole-number types is signed, it is a signed
/// 64-bit number.
template <class A, class B> constexpr auto common_rep() {
  if constexpr (std::integral<A> && std::integral<B> && std::is_signed_v<A> != std::is_signed_v<B>)
    return std::int64_t{};
  else
    return std::common_type_t<A, B>{};
}
template <class A, class B> using CommonRep = decltype(common_rep<A, B>());

template <class Rep> constexpr Rep exact_sum(Rep a, Rep b) {
  if constexpr (std::integral<Rep>) {
    auto const sum = checked_add(whole(a), whole(b));
    if (!sum) broken("the length does not fit in its whole-number type");
    return exact_rep<Rep>(*sum);
  } else {
    return static_cast<Rep>(a + b);
  }
}
template <class Rep> constexpr Rep exact_difference(Rep a, Rep b) {
  if constexpr (std::integral<Rep>) {
    auto const difference = checked_subtract(whole(a), whole(b));
    if (!difference) broken("the length does not fit in its whole-number type");
    return exact_rep<Rep>(*difference);
  } else {
    return static_cast<Rep>(a - b);
  }
}
template <class Rep> constexpr Rep exact_product(Rep a, Rep b) {
  if constexpr (std::integral<Rep>) {
    auto const product = checked_multiply(whole(a), whole(b));
    if (!product) broken("the length does not fit in its whole-number type");
    return exact_rep<Rep>(*product);
  } else {
    return static_cast<Rep>(a * b);
  }
}
template <class Rep> constexpr Rep exact_quotient(Rep a, Rep b) {
  if constexpr (std::integral<Rep>) {
    if (b == 0) broken("a length of whole units cannot be divided by zero");
    auto const divisor = whole(b);
    if (divisor == -1) return exact_difference(Rep{}, a);
    return exact_rep<Rep>(whole(a) / divisor);
  } else {
    return static_cast<Rep>(a / b);
  }
}

/// The type in which two lengths are compared; for whole numbers, a 64-bit number.
template <class L>
using Compared =
    Length<std::conditional_t<std::integral<typename L::rep>, std::int64_t, typename L::rep>, typename L::unit>;

} // namespace detail
} // namespace v0
} // namespace bifolium
