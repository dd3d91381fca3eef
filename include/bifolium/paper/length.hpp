// SPDX-License-Identifier: MIT
/// A length is a number with a unit in its type, as a std::chrono::duration is. Paper is measured in millimetres today;
/// it was sold by the English inch and by the pouce of Paris, and tables mix the three. A demy sheet whose inches are
/// read as pouces has the wrong size. So a plain number is never a length, and a length becomes a number only through
/// `count()`.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/fwd.hpp>
#include <bifolium/paper/detail/exact_rep.hpp>
#include <bifolium/paper/length_unit.hpp>

#include <compare>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <optional>
#include <type_traits>

namespace bifolium {
inline namespace v0 {

namespace detail {

constexpr std::int64_t common_divisor(std::int64_t a, std::int64_t b) {
  while (b != 0) {
    auto const rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

/// The number of `To` in one `From`, in lowest terms. It is reduced crosswise first, so that no product overflows
/// unless the result does.
template <class From, class To> struct Conversion {
  static constexpr std::int64_t above = common_divisor(From::num, To::num), below = common_divisor(From::den, To::den);
  static constexpr std::int64_t num = (From::num / above) * (To::den / below);
  static constexpr std::int64_t den = (From::den / below) * (To::num / above);
};

/// The largest unit of which two other units are whole multiples. Used for lengths in whole numbers only.
template <class A, class B> struct SharedUnit {
  static constexpr std::int64_t num = common_divisor(A::num, B::num);
  static constexpr std::int64_t den = A::den / common_divisor(A::den, B::den) * B::den;
};

template <class Rep, class A, class B> constexpr auto common_unit() {
  if constexpr (std::is_same_v<A, B>)
    return A{};
  else if constexpr (!std::integral<Rep>)
    return Millimetre{};
  else if constexpr (Conversion<A, B>::den == 1)
    return B{};
  else if constexpr (Conversion<B, A>::den == 1)
    return A{};
  else
    return SharedUnit<A, B>{};
}

template <class To, class From> constexpr bool keeps_number = requires(From from) { To{from}; };

/// A type that may multiply a length: a number, but not bool and not another length.
template <class T>
concept Factor = std::is_arithmetic_v<T> && !std::is_same_v<T, bool>;

/// A number type that converts to `Rep` and keeps its kind: a floating-point number does not convert to whole units.
template <class Number, class Rep>
concept CountFor = std::convertible_to<Number, Rep> &&
    (!std::integral<Rep> || keeps_number<Rep, Number> || (std::integral<Number> && !std::is_same_v<Number, bool>));
template <class Number, class Rep>
concept BareNumber = Factor<Number> && CountFor<Number, Rep>;
} // namespace detail

/// A length of `count()` times `Unit`. `Rep` is double in the named types below. With a whole number, or an exact
/// fraction such as `Fraction`, every result is exact.
///
/// Conversions that lose nothing are implicit, as in std::chrono: between lengths counted in double (or in fractions)
/// all conversions are; between whole numbers only those to a unit that divides the other (cm to mm). `length_cast`
/// makes the other conversions. Whole numbers are checked: a result that does not fit in `Rep` breaks a precondition.
template <class Rep, class Unit> class Length {
  static_assert(LengthUnit<Unit>, "a unit of length has num / den millimetres, both above zero");
  static_assert(!std::is_same_v<Rep, bool>, "a length is counted in a number");
  Rep count_{};

public:
  using rep = Rep;   ///< the type of the number
  using unit = Unit; ///< the unit of length

  /// Makes length zero.
  constexpr Length() = default;
  /// Makes a length of `number` units. A plain number becomes a length only with the name of the type:
  /// `millimetres{201}`. Precondition: `number` fits in `Rep`.
  template <class Number>
  requires detail::BareNumber<Number, Rep> && true constexpr explicit Length(Number const& number)
      : count_{detail::exact_rep<Rep>(number)} {}
  /// Makes a length of `number` units from a number of a class type, such as `Fraction`.
  template <class Number>
  requires(detail::CountFor<Number, Rep> && !detail::Factor<Number>) constexpr explicit Length(Number const& number)
      : count_{static_cast<Rep>(number)} {}
  // Compilers show the line of a deleted function, so the sentence is on it.
  // clang-format off
  template <class Number> requires detail::BareNumber<Number, Rep>
  constexpr Length(Number const&) = delete; // a bare number is not a length: write 190_mm, 19_cm or millimetres{190}
  // clang-format on
  /// Refuses a text with a sentence.
  template <detail::TextGiven Text> constexpr Length(Text const&) {
    static_assert(detail::never<Text>,
                  "a text is not a length: write 22_cm or 220_mm, or read it with read_length(text)");
  }
  /// Converts a length in another unit, if no part of it is lost. Precondition: the number of units fits in `Rep`.
  template <class Rep2, class Unit2>
  requires(std::convertible_to<Rep2, Rep> &&
           (!std::integral<Rep> ||
            (std::integral<Rep2> && detail::keeps_number<Rep, Rep2> &&
             detail::Conversion<Unit2, Unit>::den == 1))) constexpr Length(Length<Rep2, Unit2> other)
      : count_{converted<detail::Conversion<Unit2, Unit>>(other.count())} {}

  /// Returns the number of units.
  [[nodiscard]] constexpr Rep count() const { return count_; }

  /// Returns the length with the opposite sign. Precondition: the result fits in `Rep`.
  constexpr Length operator-() const { return Length{detail::exact_difference(Rep{}, count_)}; }
  /// Adds `other` to this length. Precondition: the result fits in `Rep`.
  constexpr Length& operator+=(Length other) { return count_ = detail::exact_sum(count_, other.count_), *this; }
  /// Subtracts `other` from this length. Precondition: the result fits in `Rep`.
  constexpr Length& operator-=(Length other) { return count_ = detail::exact_difference(count_, other.count_), *this; }

  /// Prints `187 mm`. A unit without a symbol prints its ratio: `3 x 1/5 mm`.
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Length length) {
    // a number of one byte is printed as a number, not as a character
    auto const number = [&] {
      if constexpr (std::integral<Rep> && sizeof(Rep) == 1)
        return static_cast<int>(length.count());
      else
        return length.count();
    }();
    if constexpr (requires { Unit::symbol; })
      return out << number << ' ' << Unit::symbol;
    else
      return out << number << " x " << Unit::num << '/' << Unit::den << " mm";
  }

private:
  template <class By, class Rep2> static constexpr Rep converted(Rep2 number) {
    if constexpr (std::integral<Rep>) { // whole numbers, of which each has a whole number of the other unit
      return detail::exact_product<Rep>(number, By::num);
    } else {
      auto result = detail::exact_rep<Rep>(number);
      if constexpr (By::num != 1) result = static_cast<Rep>(result * static_cast<Rep>(By::num));
      if constexpr (By::den != 1) result = static_cast<Rep>(result / static_cast<Rep>(By::den));
      return result;
    }
  }
};

/// Lengths in millimetres.
using millimetres = Length<double, Millimetre>;
/// Lengths in centimetres.
using centimetres = Length<double, Centimetre>;
/// Lengths in inches of 25.4 mm.
using inches = Length<double, Inch>;
/// Lengths in pouces, the inches of Paris.
using paris_inches = Length<double, ParisInch>;
/// Lengths in lignes, the lines of Paris.
using paris_lines = Length<double, ParisLine>;

} // namespace v0
} // namespace bifolium

/// The type in which two lengths are added or compared. Lengths in one unit keep this unit. Lengths in different units
/// use millimetres. If both count whole numbers, they use the largest unit of which both units are whole multiples, so
/// that no result is rounded (1/5 mm for whole millimetres and whole inches).
template <class Rep1, class Unit1, class Rep2, class Unit2>
struct std::common_type<bifolium::Length<Rep1, Unit1>, bifolium::Length<Rep2, Unit2>> {
  using rep = bifolium::detail::CommonRep<Rep1, Rep2>; ///< the type that holds the numbers of both
  using type = bifolium::Length<rep, decltype(bifolium::detail::common_unit<rep, Unit1, Unit2>())>;
};

template <class Rep, class Unit> struct std::hash<bifolium::Length<Rep, Unit>> {
  std::size_t operator()(bifolium::Length<Rep, Unit> length) const { return std::hash<Rep>{}(length.count()); }
};

namespace bifolium {
inline namespace v0 {

/// Converts `from` to another unit. A whole number of units is truncated towards zero, as by
/// std::chrono::duration_cast. Precondition: the result fits in the `Rep` of `To`.
template <class To, class Rep, class Unit> [[nodiscard]] constexpr To length_cast(Length<Rep, Unit> from) {
  using By = detail::Conversion<Unit, typename To::unit>;
  using Out = typename To::rep;
  if constexpr (std::integral<Rep> && std::integral<Out>) {
    auto const times = detail::exact_product<std::int64_t>(from.count(), By::num);
    return To{detail::exact_rep<Out>(times / By::den)};
  } else if constexpr (std::integral<Rep>) {
    auto const exact = static_cast<Out>(from.count()) * static_cast<Out>(By::num) / static_cast<Out>(By::den);
    return To{static_cast<Out>(exact)};
  } else {
    using Wide = std::common_type_t<Out, Rep>;
    auto const exact = static_cast<Wide>(from.count()) * static_cast<Wide>(By::num) / static_cast<Wide>(By::den);
    if constexpr (std::integral<Out>) {
      if (!detail::fits_whole<Out>(exact)) broken("the length does not fit in its whole-number type");
    }
    return To{static_cast<Out>(exact)};
  }
}

/// Rounds `from` up to whole units, as cataloguers measure: 17.1 cm is recorded as 18 cm. Precondition: the result fits
/// in the `Rep` of `To`.
template <class To, class Rep, class Unit> [[nodiscard]] constexpr To ceil(Length<Rep, Unit> from) {
  using Whole = Length<std::int64_t, typename To::unit>;
  auto const cut = length_cast<Whole>(from);
  return length_cast<To>(cut < from ? Whole{detail::exact_sum(cut.count(), std::int64_t{1})} : cut);
}

/// Returns the sum, in the type to which both lengths convert. Precondition: the sum fits in this type.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr auto operator+(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>;
  return Common{detail::exact_sum(Common{a}.count(), Common{b}.count())};
}
/// Returns the difference, in the type to which both lengths convert. Precondition: the difference fits in this type.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr auto operator-(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>;
  return Common{detail::exact_difference(Common{a}.count(), Common{b}.count())};
}
/// Returns the length multiplied by `factor`. Precondition: a whole number of units fits in its type.
template <class Rep, class Unit, detail::Factor Number>
[[nodiscard]] constexpr auto operator*(Length<Rep, Unit> length, Number factor) {
  using Out = detail::CommonRep<Rep, Number>;
  return Length<Out, Unit>{detail::exact_product<Out>(length.count(), factor)};
}
/// Returns the length multiplied by `factor`. Precondition: a whole number of units fits in its type.
template <class Rep, class Unit, detail::Factor Number>
[[nodiscard]] constexpr auto operator*(Number factor, Length<Rep, Unit> length) {
  return length * factor;
}
/// Returns the length divided by `divisor`. A whole number of units is truncated towards zero. Precondition: whole
/// units are not divided by zero.
template <class Rep, class Unit, detail::Factor Number>
[[nodiscard]] constexpr auto operator/(Length<Rep, Unit> length, Number divisor) {
  using Out = detail::CommonRep<Rep, Number>;
  return Length<Out, Unit>{detail::exact_quotient<Out>(length.count(), divisor)};
}
/// Returns the quotient of two lengths as a number. Lengths in whole units divide as whole numbers do. Precondition:
/// whole units are not divided by length zero.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr auto operator/(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>;
  return detail::exact_quotient<typename Common::rep>(Common{a}.count(), Common{b}.count());
}

/// Compares two lengths, in whatever units they are counted: `25.4_mm == 1_in`. Precondition: whole units fit in 64
/// bits in the unit of which both are multiples.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr bool operator==(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = detail::Compared<std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>>;
  return Common{a}.count() == Common{b}.count();
}
/// Compares two lengths, in whatever units they are counted. Precondition: whole units fit in 64 bits in the unit of
/// which both are multiples.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr auto operator<=>(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = detail::Compared<std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>>;
  return Common{a}.count() <=> Common{b}.count();
}

/// Literals of lengths counted in double: `201_mm`, `32_cm`, `4.75_in`, `36.5_pouces`, `6_lignes`.
inline namespace literals {
/// Makes millimetres: `187_mm`.
constexpr millimetres operator""_mm(unsigned long long n) { return millimetres{static_cast<double>(n)}; }
/// Makes millimetres: `187.5_mm`.
constexpr millimetres operator""_mm(long double n) { return millimetres{static_cast<double>(n)}; }
/// Makes centimetres: `19_cm`.
constexpr centimetres operator""_cm(unsigned long long n) { return centimetres{static_cast<double>(n)}; }
/// Makes centimetres: `18.7_cm`.
constexpr centimetres operator""_cm(long double n) { return centimetres{static_cast<double>(n)}; }
/// Makes inches: `7_in`.
constexpr inches operator""_in(unsigned long long n) { return inches{static_cast<double>(n)}; }
/// Makes inches: `7.25_in`.
constexpr inches operator""_in(long double n) { return inches{static_cast<double>(n)}; }
/// Makes inches of Paris: `12_pouces`.
constexpr paris_inches operator""_pouces(unsigned long long n) { return paris_inches{static_cast<double>(n)}; }
/// Makes inches of Paris: `12.5_pouces`.
constexpr paris_inches operator""_pouces(long double n) { return paris_inches{static_cast<double>(n)}; }
/// Makes lines of Paris: `6_lignes`.
constexpr paris_lines operator""_lignes(unsigned long long n) { return paris_lines{static_cast<double>(n)}; }
/// Makes lines of Paris: `6.5_lignes`.
constexpr paris_lines operator""_lignes(long double n) { return paris_lines{static_cast<double>(n)}; }
} // namespace literals

} // namespace v0
} // namespace bifolium
