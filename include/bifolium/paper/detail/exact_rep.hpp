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
/// A whole number as its size and its sign, so that a factor of 2^63 and more is not taken for one below zero.
struct Signed {
  std::uint64_t size{};
  bool negative{};

  /// Returns the number. Precondition: it fits.
  [[nodiscard]] constexpr std::int64_t number() const {
    constexpr auto most = static_cast<std::uint64_t>(INT64_MAX);
    if (size > most + (negative ? 1U : 0U)) broken("the length does not fit in its whole-number type");
    return static_cast<std::int64_t>(negative ? 0 - size : size);
  }
};

template <std::integral Number> constexpr Signed signed_of(Number number) {
  if constexpr (std::is_unsigned_v<Number> && sizeof(Number) == sizeof(std::uint64_t)) {
    return {static_cast<std::uint64_t>(number), false};
  } else {
    auto const same = whole(number);
    auto const bits = static_cast<std::uint64_t>(same);
    return {same < 0 ? 0 - bits : bits, same < 0};
  }
}

/// Returns a * b in the type `Rep`, which may be unlike those of both.
template <class Rep, class A, class B> constexpr Rep exact_product(A a, B b) {
  if constexpr (std::integral<Rep>) {
    auto const one = signed_of(a), other = signed_of(b);
    if (other.size != 0 && one.size > UINT64_MAX / other.size)
      broken("the length does not fit in its whole-number type");
    return exact_rep<Rep>(Signed{one.size * other.size, one.negative != other.negative}.number());
  } else {
    return static_cast<Rep>(static_cast<Rep>(a) * static_cast<Rep>(b));
  }
}
/// Returns a / b in the type `Rep`, which may be unlike those of both.
template <class Rep, class A, class B> constexpr Rep exact_quotient(A a, B b) {
  if constexpr (std::integral<Rep>) {
    auto const one = signed_of(a), other = signed_of(b);
    if (other.size == 0) broken("a length of whole units cannot be divided by zero");
    return exact_rep<Rep>(Signed{one.size / other.size, one.negative != other.negative}.number());
  } else {
    return static_cast<Rep>(static_cast<Rep>(a) / static_cast<Rep>(b));
  }
}

/// The type in which two lengths are compared; for whole numbers, a 64-bit number, which is signed unless both are counted in
/// an unsigned one of 64 bits.
template <class Rep>
using ComparedRep =
    std::conditional_t<!std::integral<Rep> || (std::is_unsigned_v<Rep> && sizeof(Rep) == sizeof(std::uint64_t)), Rep,
                       std::int64_t>;
template <class L> using Compared = Length<ComparedRep<typename L::rep>, typename L::unit>;

} // namespace detail
} // namespace v0
} // namespace bifolium
