// SPDX-License-Identifier: MIT
/// A length that knows its unit, in the manner of std::chrono::duration: a number and, in the type, what it counts.
/// Paper is measured in millimetres today, was sold by the English inch and by the pouce of Paris, and the three are
/// mixed in one table often enough (an inch taken for another makes a demy sheet a different sheet). A number alone is
/// never a length here, and a length is never a number without being asked for its `count()`.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/fwd.hpp>

#include <compare>
#include <concepts>
#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <optional>
#include <type_traits>

namespace bifolium {
inline namespace v0 {

/// A unit says how many millimetres it has, as a ratio of whole numbers: `num` / `den`. `symbol` is what stands behind
/// the number; a unit of your own may go without (a std::ratio is such a unit).
struct Millimetre {
  static constexpr std::int64_t num = 1, den = 1; ///< one of it, in millimetres, as a fraction
  static constexpr char const* symbol = "mm";     ///< as it is written behind a number
};
/// The centimetre: ten millimetres.
struct Centimetre {
  static constexpr std::int64_t num = 10, den = 1; ///< one of it, in millimetres, as a fraction
  static constexpr char const* symbol = "cm";      ///< as it is written behind a number
};
/// The inch of 25.4 mm (international since 1959; the older English inch differs in the seventh figure).
struct Inch {
  static constexpr std::int64_t num = 127, den = 5; ///< one of it, in millimetres, as a fraction
  static constexpr char const* symbol = "in";       ///< as it is written behind a number
};
/// The pouce of Paris. The law of 19 frimaire VIII (1799) made the metre 443.296 lignes of it, so 1 pouce = 12 lignes =
/// 375000/13853 mm, which is 27.069949 mm to six places.
struct ParisInch {
  static constexpr std::int64_t num = 375'000, den = 13'853; ///< one of it, in millimetres, as a fraction
  static constexpr char const* symbol = "pouces";            ///< as it is written behind a number
};
/// The ligne, a twelfth of a pouce.
struct ParisLine {
  static constexpr std::int64_t num = 31'250, den = 13'853; ///< one of it, in millimetres, as a fraction
  static constexpr char const* symbol = "lignes";           ///< as it is written behind a number
};

template <class T>
concept LengthUnit = requires {
  { T::num } -> std::convertible_to<std::int64_t>;
  { T::den } -> std::convertible_to<std::int64_t>;
}
&&(T::num > 0) && (T::den > 0);

namespace detail {

constexpr std::int64_t common_divisor(std::int64_t a, std::int64_t b) {
  while (b != 0) {
    auto const rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

/// How many `To` make one `From`, in lowest terms. Crosswise first, so that nothing overflows before it must.
template <class From, class To> struct Conversion {
  static constexpr std::int64_t above = common_divisor(From::num, To::num), below = common_divisor(From::den, To::den);
  static constexpr std::int64_t num = (From::num / above) * (To::den / below);
  static constexpr std::int64_t den = (From::den / below) * (To::num / above);
};

/// The largest unit of which two others are whole multiples: for whole-number lengths only.
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

/// May stand beside a length as a factor: a number, but no truth value and no other length.
template <class T>
concept Factor = std::is_arithmetic_v<T> && !std::is_same_v<T, bool>;

} // namespace detail

/// `count()` times `Unit`. `Rep` is double in the named types below; a whole number, or an exact fraction such as
/// `Fraction`, keeps every result exact.
///
/// Which conversions happen by themselves is chrono's rule: those that lose nothing. Between lengths counted in
/// double (or in fractions) all do; between whole numbers only to a unit that divides the other (cm to mm). The rest is
/// asked for with `length_cast`. Whole numbers overflow as their `Rep` does.
template <class Rep, class Unit> class Length {
  static_assert(LengthUnit<Unit>, "a unit of length has num / den millimetres, both above 0");
  static_assert(!std::is_same_v<Rep, bool>);
  Rep count_{};

public:
  using rep = Rep;   ///< what counts
  using unit = Unit; ///< what is counted

  /// Nothing: 0 of the unit.
  constexpr Length() = default;
  /// A bare number becomes a length only by name: `millimetres{201}`.
  template <class Number>
  requires(std::convertible_to<Number, Rep> &&
           (!std::integral<Rep> || detail::keeps_number<Rep, Number> ||
            (std::integral<Number> && !std::is_same_v<Number, bool>))) constexpr explicit Length(Number const& number)
      : count_{static_cast<Rep>(number)} {}
  /// A length in another unit, where nothing is lost.
  template <class Rep2, class Unit2>
  requires(std::convertible_to<Rep2, Rep> &&
           (!std::integral<Rep> ||
            (std::integral<Rep2> && detail::keeps_number<Rep, Rep2> &&
             detail::Conversion<Unit2, Unit>::den == 1))) constexpr Length(Length<Rep2, Unit2> other)
      : count_{converted(static_cast<Rep>(other.count()), other)} {}

  /// How many of the unit.
  [[nodiscard]] constexpr Rep count() const { return count_; }

  /// The same length the other way.
  constexpr Length operator-() const { return Length{static_cast<Rep>(-count_)}; }
  constexpr Length& operator+=(Length other) { return count_ = static_cast<Rep>(count_ + other.count_), *this; }
  constexpr Length& operator-=(Length other) { return count_ = static_cast<Rep>(count_ - other.count_), *this; }

  /// `187 mm`; a unit without a symbol prints what it has: `3 x 1/5 mm`.
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Length length) {
    if constexpr (requires { Unit::symbol; })
      return out << length.count() << ' ' << Unit::symbol;
    else
      return out << length.count() << " x " << Unit::num << '/' << Unit::den << " mm";
  }

private:
  template <class Rep2, class Unit2> static constexpr Rep converted(Rep number, Length<Rep2, Unit2>) {
    using By = detail::Conversion<Unit2, Unit>;
    if constexpr (By::num != 1) number = static_cast<Rep>(number * static_cast<Rep>(By::num));
    if constexpr (By::den != 1) number = static_cast<Rep>(number / static_cast<Rep>(By::den));
    return number;
  }
};

/// Lengths in millimetres.
using millimetres = Length<double, Millimetre>;
/// Lengths in centimetres.
using centimetres = Length<double, Centimetre>;
/// Lengths in inches of 25.4 mm.
using inches = Length<double, Inch>;
/// Lengths in the inches of Paris, pouces.
using paris_inches = Length<double, ParisInch>;
/// Lengths in the lines of Paris, lignes.
using paris_lines = Length<double, ParisLine>;

} // namespace v0
} // namespace bifolium

/// Lengths in one unit meet in it. In different units they meet in millimetres, or, when both are whole numbers, in
/// the largest unit that both are whole multiples of, so that nothing is rounded (whole mm and whole inches: 1/5 mm).
template <class Rep1, class Unit1, class Rep2, class Unit2>
struct std::common_type<bifolium::Length<Rep1, Unit1>, bifolium::Length<Rep2, Unit2>> {
  using rep = std::common_type_t<Rep1, Rep2>;
  using type = bifolium::Length<rep, decltype(bifolium::detail::common_unit<rep, Unit1, Unit2>())>;
};

template <class Rep, class Unit> struct std::hash<bifolium::Length<Rep, Unit>> {
  std::size_t operator()(bifolium::Length<Rep, Unit> length) const { return std::hash<Rep>{}(length.count()); }
};

namespace bifolium {
inline namespace v0 {

/// `from` in another unit, losing what does not fit: whole numbers are cut off towards nothing, as in
/// std::chrono::duration_cast. pre: the result fits the `Rep` of `To`.
template <class To, class Rep, class Unit> [[nodiscard]] constexpr To length_cast(Length<Rep, Unit> from) {
  using By = detail::Conversion<Unit, typename To::unit>;
  using Out = typename To::rep;
  using Wide = std::common_type_t<Out, Rep, std::conditional_t<std::integral<Rep>, std::int64_t, Rep>>;
  auto const exact = static_cast<Wide>(from.count()) * static_cast<Wide>(By::num) / static_cast<Wide>(By::den);
  if constexpr (std::floating_point<Wide> && std::integral<Out>) {
    // 2^(bits - 1) is exact in every floating type, the largest whole number is not
    constexpr auto half = static_cast<Wide>(std::uint64_t{1} << (sizeof(Out) * 8 - 2));
    if (!(exact < 2 * half && exact >= -2 * half)) broken("the length does not fit the whole number it is cast to");
  }
  return To{static_cast<Out>(exact)};
}

/// `from` in whole units, any part of one counted as a whole: how cataloguers measure (17.1 cm is recorded as 18).
/// pre: the result fits the `Rep` of `To`.
template <class To, class Rep, class Unit> [[nodiscard]] constexpr To ceil(Length<Rep, Unit> from) {
  using Whole = Length<std::int64_t, typename To::unit>;
  auto const cut = length_cast<Whole>(from);
  return length_cast<To>(cut < from ? Whole{cut.count() + 1} : cut);
}

/// The sum, in the unit where the two meet.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr auto operator+(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>;
  return Common{Common{a}.count() + Common{b}.count()};
}
/// The difference, in the unit where the two meet.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr auto operator-(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>;
  return Common{Common{a}.count() - Common{b}.count()};
}
/// So many times the length.
template <class Rep, class Unit, detail::Factor Number>
[[nodiscard]] constexpr auto operator*(Length<Rep, Unit> length, Number factor) {
  using Out = std::common_type_t<Rep, Number>;
  return Length<Out, Unit>{static_cast<Out>(length.count()) * static_cast<Out>(factor)};
}
/// So many times the length.
template <class Rep, class Unit, detail::Factor Number>
[[nodiscard]] constexpr auto operator*(Number factor, Length<Rep, Unit> length) {
  return length * factor;
}
/// That part of the length; whole numbers are cut off.
template <class Rep, class Unit, detail::Factor Number>
[[nodiscard]] constexpr auto operator/(Length<Rep, Unit> length, Number divisor) {
  using Out = std::common_type_t<Rep, Number>;
  return Length<Out, Unit>{static_cast<Out>(length.count()) / static_cast<Out>(divisor)};
}
/// How many times `b` goes into `a`: a number. Two whole-number lengths divide as whole numbers do.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr auto operator/(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>;
  return Common{a}.count() / Common{b}.count();
}

/// Lengths compare as lengths, whatever they are counted in: `25.4_mm == 1_in`.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr bool operator==(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>;
  return Common{a}.count() == Common{b}.count();
}
/// Compared in the unit where the two meet.
template <class Rep1, class Unit1, class Rep2, class Unit2>
[[nodiscard]] constexpr auto operator<=>(Length<Rep1, Unit1> a, Length<Rep2, Unit2> b) {
  using Common = std::common_type_t<Length<Rep1, Unit1>, Length<Rep2, Unit2>>;
  return Common{a}.count() <=> Common{b}.count();
}

/// `201_mm`, `32_cm`, `4.75_in`, `36.5_pouces`, `6_lignes`: always counted in double.
inline namespace literals {
/// 187_mm
constexpr millimetres operator""_mm(unsigned long long n) { return millimetres{static_cast<double>(n)}; }
/// 187.5_mm
constexpr millimetres operator""_mm(long double n) { return millimetres{static_cast<double>(n)}; }
/// 19_cm
constexpr centimetres operator""_cm(unsigned long long n) { return centimetres{static_cast<double>(n)}; }
/// 18.7_cm
constexpr centimetres operator""_cm(long double n) { return centimetres{static_cast<double>(n)}; }
/// 7_in
constexpr inches operator""_in(unsigned long long n) { return inches{static_cast<double>(n)}; }
/// 7.25_in
constexpr inches operator""_in(long double n) { return inches{static_cast<double>(n)}; }
/// 12_pouces
constexpr paris_inches operator""_pouces(unsigned long long n) { return paris_inches{static_cast<double>(n)}; }
/// 12.5_pouces
constexpr paris_inches operator""_pouces(long double n) { return paris_inches{static_cast<double>(n)}; }
/// 6_lignes
constexpr paris_lines operator""_lignes(unsigned long long n) { return paris_lines{static_cast<double>(n)}; }
/// 6.5_lignes
constexpr paris_lines operator""_lignes(long double n) { return paris_lines{static_cast<double>(n)}; }
} // namespace literals

} // namespace v0
} // namespace bifolium
