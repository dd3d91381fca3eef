// SPDX-License-Identifier: MIT
/// Paper is counted in sheets and parts of sheets, and a bill must add up: sixteen leaves in twelves are 1 1/3 sheets,
/// not 1.33. `Fraction` is exact. If a result does not fit in 64 bits, the `checked_` functions return no value and the
/// operators break a precondition; no function returns a wrong number. A result that fits is always found, even if the
/// numbers on the way to it would not fit.
///
/// A floating-point number cannot be converted to a fraction, because 3.2 is stored as a number near 3.2. Write
/// `Fraction{16, 5}`, or include core/fraction_text.hpp for `3.2_percent` and `read_fraction("3.2")`.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/checked.hpp>
#include <bifolium/core/detail/wide.hpp>
#include <bifolium/core/short_text.hpp>

#include <compare>
#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <optional>
#include <type_traits>

namespace bifolium {
inline namespace v0 {

/// An exact number: the quotient of two whole numbers, always in lowest terms with a denominator above zero.
class Fraction {
  std::int64_t numerator_{0}, denominator_{1};

public:
  /// Makes zero.
  constexpr Fraction() = default;
  /// Converts a whole number. Precondition: it fits in a signed 64-bit number.
  template <class Whole>
  requires std::is_integral_v<Whole>
  constexpr Fraction(Whole whole) : numerator_{detail::unchanged<std::int64_t>(whole)} {}
  /// Makes `numerator` / `denominator` in lowest terms. Precondition: `denominator` is above zero.
  constexpr Fraction(std::int64_t numerator, std::int64_t denominator)
      : numerator_{numerator}, denominator_{denominator} {
    if (denominator <= 0) broken("a fraction needs a denominator above zero");
    auto const both = static_cast<std::int64_t>(
        detail::greatest_divisor(detail::magnitude(numerator), detail::magnitude(denominator)));
    numerator_ /= both;
    denominator_ /= both;
  }
  /// The same of numbers of wider types. Preconditions: each fits in a signed 64-bit number; `denominator` is above zero.
  template <class Numerator, class Denominator>
  requires(std::is_integral_v<Numerator>&& std::is_integral_v<Denominator> &&
           (detail::ChangesAs<Numerator, std::int64_t> ||
            detail::ChangesAs<Denominator, std::int64_t>)) constexpr Fraction(Numerator numerator,
                                                                              Denominator denominator)
      : Fraction{detail::unchanged<std::int64_t>(numerator), detail::unchanged<std::int64_t>(denominator)} {}
  // Compilers show the line of a deleted function, so the sentence is on it.
  // clang-format off
  Fraction(double) = delete; // a floating-point number is not exact: write Fraction{16, 5}, 3.2_percent or read_fraction("3.2")
  Fraction(float) = delete; // a floating-point number is not exact: write Fraction{16, 5}, 3.2_percent or read_fraction("3.2")
  Fraction(long double) = delete; // a floating-point number is not exact: write Fraction{16, 5}, or read_fraction("3.2")
  template <class A, class B> requires(std::is_floating_point_v<A> || std::is_floating_point_v<B>)
  Fraction(A, B) = delete; // both must be whole numbers: Fraction{16, 5}
  // clang-format on
  /// Refuses a text with a sentence.
  template <detail::TextGiven Text> constexpr Fraction(Text const&) {
    static_assert(
        detail::never<Text>,
        "a text is not a fraction: write Fraction{16, 5} or 3.2_percent, or read it with read_fraction(text)");
  }

  /// Returns the numerator in lowest terms. It has the sign of the fraction.
  [[nodiscard]] constexpr std::int64_t numerator() const noexcept { return numerator_; }
  /// Returns the denominator in lowest terms. It is above zero.
  [[nodiscard]] constexpr std::int64_t denominator() const noexcept { return denominator_; }
  /// Returns true if the fraction is a whole number.
  [[nodiscard]] constexpr bool is_whole() const noexcept { return denominator_ == 1; }
  /// Returns the greatest whole number that is not above this fraction.
  [[nodiscard]] constexpr std::int64_t floor() const noexcept {
    return numerator_ / denominator_ - (numerator_ % denominator_ < 0 ? 1 : 0);
  }
  /// Returns the least whole number that is not below this fraction.
  [[nodiscard]] constexpr std::int64_t ceil() const noexcept {
    return numerator_ / denominator_ + (numerator_ % denominator_ > 0 ? 1 : 0);
  }
  /// Returns the double that is nearest to this fraction. If two are equally near, it is the one whose last bit is 0.
  [[nodiscard]] constexpr double as_double() const noexcept {
    // Up to 2^53 doubles are exact whole numbers, and one division rounds once.
    constexpr std::int64_t exact = std::int64_t{1} << 53;
    if (-exact <= numerator_ && numerator_ <= exact && denominator_ <= exact)
      return static_cast<double>(numerator_) / static_cast<double>(denominator_);
    auto const above = detail::magnitude(numerator_), below = detail::magnitude(denominator_);
    // a quotient of 62 or 63 bits, whose last bit also tells whether anything was cut off, is rounded once
    int const bits = 62 + detail::bits_of(below) - detail::bits_of(above), shift = bits < 0 ? 0 : bits;
    auto const divided = detail::Wide{0, above}.shifted(shift).by(below);
    auto number = static_cast<double>(divided.quotient.low | (divided.rest != 0 ? 1U : 0U));
    for (int i = 0; i < shift; ++i) number /= 2;
    return numerator_ < 0 ? -number : number;
  }

  /// Returns a + b, or no value if the sum does not fit in 64 bits.
  friend constexpr std::optional<Fraction> checked_add(Fraction a, Fraction b) noexcept {
    return sum(a, b, b.numerator_ < 0);
  }
  /// Returns a - b, or no value if the difference does not fit in 64 bits.
  friend constexpr std::optional<Fraction> checked_subtract(Fraction a, Fraction b) noexcept {
    return sum(a, b, b.numerator_ >= 0);
  }
  /// Returns a * b, or no value if the product does not fit in 64 bits.
  friend constexpr std::optional<Fraction> checked_multiply(Fraction a, Fraction b) noexcept {
    return product((a.numerator_ < 0) != (b.numerator_ < 0), detail::magnitude(a.numerator_),
                   detail::magnitude(a.denominator_), detail::magnitude(b.numerator_),
                   detail::magnitude(b.denominator_));
  }
  /// Returns a / b, or no value if the quotient does not fit in 64 bits or b is zero.
  friend constexpr std::optional<Fraction> checked_divide(Fraction a, Fraction b) noexcept {
    if (b.numerator_ == 0) return std::nullopt;
    return product((a.numerator_ < 0) != (b.numerator_ < 0), detail::magnitude(a.numerator_),
                   detail::magnitude(a.denominator_), detail::magnitude(b.denominator_),
                   detail::magnitude(b.numerator_));
  }

  friend constexpr Fraction operator+(Fraction a, Fraction b) { return or_broken(checked_add(a, b)); }
  friend constexpr Fraction operator-(Fraction a, Fraction b) { return or_broken(checked_subtract(a, b)); }
  friend constexpr Fraction operator*(Fraction a, Fraction b) { return or_broken(checked_multiply(a, b)); }
  friend constexpr Fraction operator/(Fraction a, Fraction b) { return or_broken(checked_divide(a, b)); }
  friend constexpr Fraction operator-(Fraction a) { return or_broken(checked_subtract(Fraction{}, a)); }
  /// Adds `b` to this value. Precondition: the result fits in 64 bits.
  constexpr Fraction& operator+=(Fraction b) { return *this = *this + b; }
  /// Subtracts `b` from this value. Precondition: the result fits in 64 bits.
  constexpr Fraction& operator-=(Fraction b) { return *this = *this - b; }
  /// Multiplies this value by `b`. Precondition: the result fits in 64 bits.
  constexpr Fraction& operator*=(Fraction b) { return *this = *this * b; }
  /// Divides this value by `b`. Precondition: `b` is not zero and the result fits in 64 bits.
  constexpr Fraction& operator/=(Fraction b) { return *this = *this / b; }

  friend constexpr bool operator==(Fraction, Fraction) = default;
  friend constexpr std::strong_ordering operator<=>(Fraction a, Fraction b) noexcept {
    if ((a.numerator_ < 0) != (b.numerator_ < 0)) return a.numerator_ <=> b.numerator_;
    auto const crosswise = [](Fraction above, Fraction below) {
      return detail::Wide::product(detail::magnitude(above.numerator_), detail::magnitude(below.denominator_));
    };
    return a.numerator_ < 0 ? crosswise(b, a) <=> crosswise(a, b) : crosswise(a, b) <=> crosswise(b, a);
  }
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Fraction f) {
    return out << to_text(f).view();
  }
  /// Writes a fraction as a whole number and a proper fraction: `10 3/4`, `1/2`, `16`, `-2 1/3`.
  friend constexpr ShortText<64> to_text(Fraction f) {
    ShortText<64> text;
    auto const above = detail::magnitude(f.numerator_), below = detail::magnitude(f.denominator_);
    if (f.numerator_ < 0) text.append("-");
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
  /// Returns the fraction of a sign and two numbers in lowest terms, or no value if they do not fit.
  static constexpr std::optional<Fraction> made(bool negative, detail::Wide above, detail::Wide below) noexcept {
    constexpr auto most = static_cast<std::uint64_t>(INT64_MAX);
    if (above.high != 0 || below.high != 0 || below.low > most || above.low > most + (negative ? 1U : 0U))
      return std::nullopt;
    Fraction result;
    result.numerator_ = static_cast<std::int64_t>(negative ? 0 - above.low : above.low);
    result.denominator_ = static_cast<std::int64_t>(below.low);
    return result;
  }
  /// Returns a + b, or a - b if `b_is_negative`. Only a divisor of the common divisor of both denominators can cancel:
  /// Knuth, The Art of Computer Programming, vol. 2, 4.5.1.
  static constexpr std::optional<Fraction> sum(Fraction a, Fraction b, bool b_is_negative) noexcept {
    using detail::Wide;
    auto const below_a = detail::magnitude(a.denominator_), below_b = detail::magnitude(b.denominator_);
    auto const both = detail::greatest_divisor(below_a, below_b);
    auto const x = Wide::product(detail::magnitude(a.numerator_), below_b / both);
    auto const y = Wide::product(detail::magnitude(b.numerator_), below_a / both);
    bool const a_is_negative = a.numerator_ < 0;
    bool const negative = x < y ? b_is_negative : a_is_negative;
    auto const above = a_is_negative == b_is_negative ? x + y : x < y ? y - x : x - y;
    if (above == Wide{}) return Fraction{};
    auto const cancels = both == 1 ? 1 : detail::greatest_divisor(both, above.by(both).rest);
    return made(negative, cancels == 1 ? above : above.by(cancels).quotient,
                Wide::product(below_a / both, below_b / cancels));
  }
  /// Returns (a / b) * (c / d), both in lowest terms. Precondition: b and d are above zero.
  static constexpr std::optional<Fraction> product(bool negative, std::uint64_t a, std::uint64_t b, std::uint64_t c,
                                                   std::uint64_t d) noexcept {
    if (a == 0 || c == 0) return Fraction{};
    auto const one = detail::greatest_divisor(a, d), other = detail::greatest_divisor(c, b);
    return made(negative, detail::Wide::product(a / one, c / other), detail::Wide::product(b / other, d / one));
  }
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

namespace detail {

// Products of which only the next whole number is wanted: copies of overs, coins, sheets. The exact product need not fit in 64
// bits although that number does, and whether it fits depends on what can be reduced: a greater number may fit where a smaller
// one does not. A search that took what does not fit for too much would go astray.
/// Returns a * b / `below`, rounded up or down to a whole number, or no value if that does not fit in 64 bits. Divisions that
/// round in the same direction may be done one after another. Precondition: `below` is above zero.
constexpr std::optional<std::int64_t> rounded_product(Fraction a, Fraction b, bool up, std::int64_t below) noexcept {
  bool const negative = (a.numerator() < 0) != (b.numerator() < 0);
  auto size = Wide::product(magnitude(a.numerator()), magnitude(b.numerator()));
  bool exact = true;
  for (auto const divisor : {a.denominator(), b.denominator(), below}) {
    auto const divided = size.by(magnitude(divisor));
    size = divided.quotient;
    exact = exact && divided.rest == 0;
  }
  if (!exact && up != negative) size = size + Wide{0, 1}; // away from zero
  constexpr auto most = static_cast<std::uint64_t>(INT64_MAX);
  if (size.high != 0 || size.low > most + (negative ? 1U : 0U)) return std::nullopt;
  return static_cast<std::int64_t>(negative ? 0 - size.low : size.low);
}
/// Returns the least whole number that is not below a * b / `below`, or no value if it does not fit in 64 bits.
constexpr std::optional<std::int64_t> ceil_of_product(Fraction a, Fraction b, std::int64_t below = 1) noexcept {
  return rounded_product(a, b, true, below);
}
/// Returns the greatest whole number that is not above a * b, or no value if it does not fit in 64 bits.
constexpr std::optional<std::int64_t> floor_of_product(Fraction a, Fraction b) noexcept {
  return rounded_product(a, b, false, 1);
}

} // namespace detail

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::Fraction> {
  std::size_t operator()(bifolium::Fraction f) const noexcept {
    return static_cast<std::size_t>(f.numerator()) * 31U + static_cast<std::size_t>(f.denominator());
  }
};
