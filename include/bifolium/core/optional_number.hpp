// SPDX-License-Identifier: MIT
/// A whole number that may not be known. A std::optional of an integer takes 12.5 and keeps 12, and takes 70,000 for a
/// number of 16 bits, both in silence. What a caller states of a book must not change on the way in.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/checked.hpp>

#include <concepts>
#include <optional>
#include <utility>

namespace bifolium {
inline namespace v0 {

namespace detail {
/// Returns true if two numbers that may not be known are the same. std::optional would convert one of two whole numbers of
/// different signs to the type of the other, and -1 would be 4294967295.
template <class One, class Other>
constexpr bool same_optional(std::optional<One> const& one, std::optional<Other> const& other) {
  if constexpr (std::integral<One> && std::integral<Other>)
    return one.has_value() == other.has_value() && (!one || std::cmp_equal(+*one, +*other));
  else
    return one == other;
}
} // namespace detail

/// A whole number that may not be known: std::optional<Integer>, but that what is not a whole number is refused with a
/// sentence, and that a number must fit.
template <std::integral Integer> class OptionalNumber {
  std::optional<Integer> number_{};

public:
  /// Makes an unknown number.
  constexpr OptionalNumber() = default;
  /// Makes an unknown number.
  constexpr OptionalNumber(std::nullopt_t) {}
  /// Takes an optional number as it is.
  constexpr OptionalNumber(std::optional<Integer> number) : number_{number} {}
  /// Takes an optional number of another type, which std::optional would convert by itself. Precondition: it fits.
  template <std::integral Number>
  constexpr OptionalNumber(std::optional<Number> const& number)
      : OptionalNumber{number ? OptionalNumber{*number} : OptionalNumber{}} {}
  /// Refuses an optional floating-point number.
  template <std::floating_point Number> constexpr OptionalNumber(std::optional<Number> const&) {
    static_assert(sizeof(Number) == 0,
                  "a whole number is wanted, as a fraction would be lost: round it, or take a smaller unit");
  }
  /// Takes a whole number, but no bool and no char. Precondition: it fits.
  template <std::integral Number> constexpr OptionalNumber(Number number) : number_{static_cast<Integer>(number)} {
    static_assert(!detail::NoWholeNumber<Number>,
                  "a whole number is wanted: the meaning of a bool or a char would be lost");
    if (!std::in_range<Integer>(number)) broken("the number does not fit into this field");
  }
  /// Refuses a floating-point number. It is not deleted, since compilers would then reject an aggregate without this sentence.
  template <std::floating_point Number> constexpr OptionalNumber(Number) {
    static_assert(sizeof(Number) == 0,
                  "a whole number is wanted, as a fraction would be lost: round it, or take a smaller unit");
  }
  /// Refuses a text with a sentence.
  template <detail::TextGiven Text> constexpr OptionalNumber(Text const&) {
    static_assert(detail::never<Text>, "a text is not a number: write 8, or read it with whole_number(text)");
  }

  /// Returns true if the number is known.
  [[nodiscard]] constexpr bool has_value() const noexcept { return number_.has_value(); }
  /// True if the number is known.
  constexpr explicit operator bool() const noexcept { return number_.has_value(); }
  /// Returns the number. Precondition: it is known.
  constexpr Integer operator*() const {
    if (!number_) broken("the number is not known: ask has_value() first");
    return *number_;
  }
  /// Returns the number, or `other` if it is not known.
  [[nodiscard]] constexpr Integer value_or(Integer other) const { return number_.value_or(other); }
  /// Forgets the number.
  constexpr void reset() noexcept { number_.reset(); }
  /// Returns the number as a std::optional.
  constexpr operator std::optional<Integer>() const { return number_; }

  friend constexpr bool operator==(OptionalNumber const&, OptionalNumber const&) = default;
  /// Compares with a number.
  template <std::integral Number> friend constexpr bool operator==(OptionalNumber const& one, Number number) {
    return one.number_ && std::cmp_equal(*one.number_, number);
  }
  /// Returns true if the number is not known.
  friend constexpr bool operator==(OptionalNumber const& one, std::nullopt_t) { return !one.number_; }
  /// Compares with an optional number: two that are not known are equal. Without these, std::optional would take the other
  /// side for a number and say that they differ.
  template <class Number>
  friend constexpr bool operator==(OptionalNumber const& one, std::optional<Number> const& other) {
    return detail::same_optional(one.number_, other);
  }
  /// Compares with an optional number.
  template <class Number>
  friend constexpr bool operator==(std::optional<Number> const& other, OptionalNumber const& one) {
    return detail::same_optional(one.number_, other);
  }
  /// Compares with an optional number.
  template <class Number>
  friend constexpr bool operator!=(OptionalNumber const& one, std::optional<Number> const& other) {
    return !detail::same_optional(one.number_, other);
  }
  /// Compares with an optional number.
  template <class Number>
  friend constexpr bool operator!=(std::optional<Number> const& other, OptionalNumber const& one) {
    return !detail::same_optional(one.number_, other);
  }
};

} // namespace v0
} // namespace bifolium
