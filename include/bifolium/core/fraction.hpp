// SPDX-License-Identifier: MIT
/// Paper is counted in sheets and parts of sheets, and a bill must add up: sixteen leaves in twelves are 1 1/3 sheets,
/// not 1.33. `Fraction` is exact. What grows past 64 bits is never a wrong number: the `checked_` functions give nothing
/// back, the operators treat it as a broken precondition.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/short_text.hpp>

#include <compare>
#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// a + b, or nothing when it does not fit.
constexpr std::optional<std::int64_t> checked_add(std::int64_t a, std::int64_t b) noexcept {
  if (b > 0 ? a > INT64_MAX - b : a < INT64_MIN - b) return std::nullopt;
  return a + b;
}
/// a - b, or nothing when it does not fit.
constexpr std::optional<std::int64_t> checked_subtract(std::int64_t a, std::int64_t b) noexcept {
  if (b < 0 ? a > INT64_MAX + b : a < INT64_MIN + b) return std::nullopt;
  return a - b;
}
/// a * b, or nothing when it does not fit.
constexpr std::optional<std::int64_t> checked_multiply(std::int64_t a, std::int64_t b) noexcept {
  if (a == 0 || b == 0) return 0;
  if (a == -1) return b == INT64_MIN ? std::nullopt : std::optional<std::int64_t>{-b};
  if (b == -1) return a == INT64_MIN ? std::nullopt : std::optional<std::int64_t>{-a};
  bool const negative = (a < 0) != (b < 0);
  if (negative ? (a < 0 ? a < INT64_MIN / b : b < INT64_MIN / a) : (a > 0 ? a > INT64_MAX / b : a < INT64_MAX / b))
    return std::nullopt;
  return a * b;
}

/// An exact number: a whole part and a part of one, always in lowest terms with a denominator above 0.
class Fraction {
  std::int64_t numerator_{0}, denominator_{1};

  static constexpr std::int64_t common(std::int64_t a, std::int64_t b) noexcept {
    while (b != 0) {
      auto const rest = a % b;
      a = b;
      b = rest;
    }
    return a < 0 ? -a : a;
  }

public:
  constexpr Fraction() = default;
  /// A whole number.
  constexpr Fraction(std::int64_t whole) : numerator_{whole} {}
  /// pre: `denominator` above 0 and neither figure the most negative number.
  constexpr Fraction(std::int64_t numerator, std::int64_t denominator)
      : numerator_{numerator}, denominator_{denominator} {
    if (denominator <= 0 || numerator == INT64_MIN) broken("a fraction needs a denominator above nothing");
    auto const both = common(numerator, denominator);
    numerator_ /= both;
    denominator_ /= both;
  }

  /// The figure above the line, in lowest terms; it carries the sign.
  [[nodiscard]] constexpr std::int64_t numerator() const noexcept { return numerator_; }
  /// The figure below the line, in lowest terms; above nothing.
  [[nodiscard]] constexpr std::int64_t denominator() const noexcept { return denominator_; }
  /// True where nothing is left over.
  [[nodiscard]] constexpr bool is_whole() const noexcept { return denominator_ == 1; }
  /// The greatest whole number that is not above this one.
  [[nodiscard]] constexpr std::int64_t floor() const noexcept {
    return numerator_ / denominator_ - (numerator_ % denominator_ < 0 ? 1 : 0);
  }
  /// The least whole number that is not below this one.
  [[nodiscard]] constexpr std::int64_t ceil() const noexcept {
    return numerator_ / denominator_ + (numerator_ % denominator_ > 0 ? 1 : 0);
  }
  /// The nearest double.
  [[nodiscard]] constexpr double as_double() const noexcept {
    return static_cast<double>(numerator_) / static_cast<double>(denominator_);
  }

  /// The four operations, or nothing where the exact result does not fit (or the divisor is nothing).
  friend constexpr std::optional<Fraction> checked_add(Fraction a, Fraction b) {
    auto const both = common(a.denominator_, b.denominator_);
    auto const x = bifolium::checked_multiply(a.numerator_, b.denominator_ / both);
    auto const y = bifolium::checked_multiply(b.numerator_, a.denominator_ / both);
    auto const below = bifolium::checked_multiply(a.denominator_ / both, b.denominator_);
    if (!x || !y || !below) return std::nullopt;
    auto const above = bifolium::checked_add(*x, *y);
    if (!above || *above == INT64_MIN) return std::nullopt;
    return Fraction{*above, *below};
  }
  friend constexpr std::optional<Fraction> checked_subtract(Fraction a, Fraction b) {
    if (b.numerator_ == INT64_MIN) return std::nullopt;
    b.numerator_ = -b.numerator_;
    return checked_add(a, b);
  }
  friend constexpr std::optional<Fraction> checked_multiply(Fraction a, Fraction b) {
    auto const one = common(a.numerator_, b.denominator_), other = common(b.numerator_, a.denominator_);
    if (a.numerator_ == 0 || b.numerator_ == 0) return Fraction{};
    auto const above = bifolium::checked_multiply(a.numerator_ / one, b.numerator_ / other);
    auto const below = bifolium::checked_multiply(a.denominator_ / other, b.denominator_ / one);
    if (!above || !below || *above == INT64_MIN) return std::nullopt;
    return Fraction{*above, *below};
  }
  friend constexpr std::optional<Fraction> checked_divide(Fraction a, Fraction b) {
    if (b.numerator_ == 0 || b.numerator_ == INT64_MIN) return std::nullopt;
    return checked_multiply(a, b.numerator_ > 0 ? Fraction{b.denominator_, b.numerator_}
                                                : Fraction{-b.denominator_, -b.numerator_});
  }

  friend constexpr Fraction operator+(Fraction a, Fraction b) { return or_broken(checked_add(a, b)); }
  friend constexpr Fraction operator-(Fraction a, Fraction b) { return or_broken(checked_subtract(a, b)); }
  friend constexpr Fraction operator*(Fraction a, Fraction b) { return or_broken(checked_multiply(a, b)); }
  friend constexpr Fraction operator/(Fraction a, Fraction b) { return or_broken(checked_divide(a, b)); }
  constexpr Fraction& operator+=(Fraction b) { return *this = *this + b; }
  constexpr Fraction& operator-=(Fraction b) { return *this = *this - b; }

  friend constexpr bool operator==(Fraction, Fraction) = default;
  friend constexpr std::strong_ordering operator<=>(Fraction a, Fraction b) {
    // The whole parts first, then the rests turned upside down: nothing here can overflow.
    for (;;) {
      auto const x = a.floor(), y = b.floor();
      if (x != y) return x <=> y;
      auto const rest_a = a.numerator_ - x * a.denominator_, rest_b = b.numerator_ - y * b.denominator_;
      if (rest_a == 0 || rest_b == 0) return (rest_a != 0) <=> (rest_b != 0);
      Fraction const next_a{b.denominator_, rest_b}, next_b{a.denominator_, rest_a};
      a = next_a;
      b = next_b;
    }
  }

  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Fraction f) {
    return out << to_text(f).view();
  }
  /// As the trade writes it: `10 3/4`, `1/2`, `16`, `-2 1/3`.
  friend constexpr ShortText<64> to_text(Fraction f) {
    ShortText<64> text;
    bool const negative = f.numerator_ < 0;
    auto const above =
        negative ? 0 - static_cast<std::uint64_t>(f.numerator_) : static_cast<std::uint64_t>(f.numerator_);
    auto const below = static_cast<std::uint64_t>(f.denominator_);
    if (negative) text.append("-");
    if (above / below != 0 || above == 0) append_digits(text, above / below);
    if (above % below != 0) {
      if (above / below != 0) text.append(" ");
      append_digits(text, above % below);
      text.append("/");
      append_digits(text, below);
    }
    return text;
  }

private:
  static constexpr Fraction or_broken(std::optional<Fraction> result) {
    if (!result) broken("the exact result does not fit: use the checked_ functions");
    return *result;
  }
  static constexpr void append_digits(ShortText<64>& text, std::uint64_t number) {
    char digits[20]{};
    std::size_t at = 20;
    do digits[--at] = static_cast<char>('0' + number % 10);
    while ((number /= 10) != 0);
    text.append(digits + at, 20 - at);
  }
};

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::Fraction> {
  std::size_t operator()(bifolium::Fraction f) const noexcept {
    return static_cast<std::size_t>(f.numerator()) * 31U + static_cast<std::size_t>(f.denominator());
  }
};
