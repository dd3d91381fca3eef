// SPDX-License-Identifier: MIT
/// Decides which lengths can be measurements of a book. Every function that takes a measured length uses this test, so
/// that all of them refuse the same typing mistakes.
#pragma once

#include <bifolium/paper/length.hpp>

#include <compare>
#include <concepts>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// A length that may not have been measured: std::optional<millimetres>, but that a bare number is refused with a
/// sentence, as by a length.
class OptionalLength {
  std::optional<millimetres> length_{};

  constexpr void must_hold() const {
    if (!length_) broken("there is no length: ask has_value() first");
  }

public:
  /// Makes a missing length.
  constexpr OptionalLength() = default;
  /// Makes a missing length.
  constexpr OptionalLength(std::nullopt_t) {}
  /// Takes an optional length as it is.
  constexpr OptionalLength(std::optional<millimetres> const& length) : length_{length} {}
  /// Takes a length in any unit.
  template <class Rep, class Unit>
  requires std::convertible_to<Length<Rep, Unit>, millimetres>
  constexpr OptionalLength(Length<Rep, Unit> length) : length_{length} {}
  /// Refuses a text with a sentence.
  template <detail::TextGiven Text> constexpr OptionalLength(Text const&) {
    static_assert(detail::never<Text>,
                  "a text is not a length: write 22_cm or 220_mm, or read it with read_length(text)");
  }
  /// Refuses a bare number. It is not deleted, since clang would then reject `observe({.height = 190})` without this
  /// sentence.
  template <class Number>
  requires detail::BareNumber<Number, double>
  constexpr OptionalLength(Number const&) {
    static_assert(detail::never<Number>, "a bare number is not a length: write 190_mm, 19_cm or millimetres{190}");
  }

  /// Returns true if there is a length.
  [[nodiscard]] constexpr bool has_value() const noexcept { return length_.has_value(); }
  /// True if there is a length.
  constexpr explicit operator bool() const noexcept { return length_.has_value(); }
  /// Returns the length. Precondition: there is one.
  constexpr millimetres const& operator*() const& BIFOLIUM_LIFETIMEBOUND { return must_hold(), *length_; }
  /// Returns the length, to be changed. Precondition: there is one.
  constexpr millimetres& operator*() & BIFOLIUM_LIFETIMEBOUND { return must_hold(), *length_; }
  /// Returns the length of a temporary by value. Precondition: there is one.
  constexpr millimetres operator*() && { return must_hold(), *length_; }
  /// Accesses the length. Precondition: there is one.
  constexpr millimetres const* operator->() const BIFOLIUM_LIFETIMEBOUND { return must_hold(), &*length_; }
  /// Returns the length, or `other` if there is none.
  [[nodiscard]] constexpr millimetres value_or(millimetres other) const { return length_.value_or(other); }
  /// Removes the length.
  constexpr void reset() noexcept { length_.reset(); }
  /// Returns the length as a std::optional.
  constexpr operator std::optional<millimetres>() const { return length_; }

  friend constexpr bool operator==(OptionalLength const&, OptionalLength const&) = default;
  friend constexpr auto operator<=>(OptionalLength const&, OptionalLength const&) = default;
};

/// Returns true if the length is more than zero and less than a kilometre. The upper bound is high because posters are
/// measured too. Returns false for NaN.
[[nodiscard]] constexpr bool is_measure(millimetres length) { return length > 0_mm && length < 1'000'000_mm; }
/// Returns true if there is no length, because it was not measured, or if the length can be a measurement.
[[nodiscard]] constexpr bool is_measure(OptionalLength length) { return !length || is_measure(*length); }

} // namespace v0
} // namespace bifolium
