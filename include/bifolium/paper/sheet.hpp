// SPDX-License-Identifier: MIT
/// A sheet of paper by its two sides, a shorter and a longer one. They can be given in either order.
///
/// A sheet can be made of the library's lengths, of floating-point numbers, or of a length type of another library.
/// Such types differ in nearly every operator (some cannot be divided by 2, some do not terminate when compared with
/// 0). So a sheet uses only addition, subtraction and comparison of a foreign type, and leaves the rest to
/// `LengthTraits`.
#pragma once

#include <bifolium/paper/length.hpp>

#include <array> // std::tuple_size, for structured bindings

namespace bifolium {
inline namespace v0 {

/// The operations that a sheet needs of a type of length. Specialise it for a type of your own:
///   `static constexpr L part(L whole, int of)`: one of `of` equal parts of `whole`, without loss;
///   `static constexpr double ratio(L a, L b)`: the quotient a / b as a number.
template <class L> struct LengthTraits;

/// Floating-point numbers, all in one unit that the program chooses.
template <std::floating_point L> struct LengthTraits<L> {
  /// Returns one of `of` equal parts.
  static constexpr L part(L whole, int of) { return whole / static_cast<L>(of); }
  /// Returns the quotient a / b.
  static constexpr double ratio(L a, L b) { return static_cast<double>(a) / static_cast<double>(b); }
};

/// Lengths of the library. Lengths counted in whole numbers are excluded, because half a sheet of 297 mm is not 148 mm.
template <class Rep, class Unit>
requires(!std::integral<Rep>) struct LengthTraits<Length<Rep, Unit>> {
  /// Returns one of `of` equal parts.
  static constexpr Length<Rep, Unit> part(Length<Rep, Unit> whole, int of) {
    return Length<Rep, Unit>{whole.count() / static_cast<Rep>(of)};
  }
  /// Returns the quotient a / b.
  static constexpr double ratio(Length<Rep, Unit> a, Length<Rep, Unit> b) {
    if constexpr (std::floating_point<Rep>)
      return static_cast<double>(a.count()) / static_cast<double>(b.count());
    else
      return (a.count() / b.count()).as_double();
  }
};

/// A length type that a sheet can be made of. `L{}` must be length zero. Whole numbers are refused, because halving
/// would round them.
template <class L>
concept LengthLike = std::regular<L> && std::totally_ordered<L> && !std::integral<L> && requires(L a, L b) {
  { a + b } -> std::convertible_to<L>;
  { a - b } -> std::convertible_to<L>;
  { LengthTraits<L>::part(a, 4) } -> std::convertible_to<L>;
  { LengthTraits<L>::ratio(a, b) } -> std::convertible_to<double>;
};

/// A sheet of paper by its two sides.
template <class L> class Sheet {
  static_assert(LengthLike<L>, "a sheet is made of lengths that can be divided without loss (see LengthTraits)");
  L short_, long_;

public:
  using length_type = L; ///< the type of the sides

  /// Makes a sheet from its sides in either order. Precondition: both are more than zero (so neither is NaN).
  constexpr Sheet(L a, L b) : short_(b < a ? b : a), long_(b < a ? a : b) {
    L const zero{};
    if (!(zero < a) || !(zero < b)) broken("both sides of a sheet must be longer than zero");
  }
  /// Converts a sheet given in another unit.
  template <LengthLike M>
  requires(!std::same_as<L, M> && std::convertible_to<M, L> &&
           detail::keeps_number<L, M>) constexpr Sheet(Sheet<M> const& other)
      : short_{other.short_side()}, long_{other.long_side()} {}

  /// Returns the shorter of the two sides.
  [[nodiscard]] constexpr L short_side() const { return short_; }
  /// Returns the longer of the two sides.
  [[nodiscard]] constexpr L long_side() const { return long_; }
  /// Gives the sides to a structured binding: `auto [shorter, longer] = sheet;`.
  template <std::size_t I>
  requires(I < 2) [[nodiscard]] constexpr L get() const { return I == 0 ? short_ : long_; }
  /// Returns the long side divided by the short side: 1.414 for ISO paper, 1.2 to 1.5 for most hand-made sheets.
  [[nodiscard]] constexpr double ratio() const { return LengthTraits<L>::ratio(long_, short_); }

  /// Returns half of the sheet, cut or folded once across the long side.
  [[nodiscard]] constexpr Sheet halved() const { return {short_, LengthTraits<L>::part(long_, 2)}; }
  /// Returns two of these sheets joined along the long side. This is what `double` before the name of a sheet should
  /// mean; the sizes in the trade do not always follow it. `halved` reverses it if the long side is at most twice the
  /// short side.
  [[nodiscard]] constexpr Sheet doubled() const { return {short_ + short_, long_}; }

  friend constexpr bool operator==(Sheet const&, Sheet const&) = default;
  /// Prints the short side first: `315 mm x 445 mm`.
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Sheet const& sheet) {
    return out << sheet.short_ << " x " << sheet.long_;
  }
};

/// Deduces the unit of a sheet whose sides are in two units: their common type.
template <LengthLike A, LengthLike B> Sheet(A, B) -> Sheet<std::common_type_t<A, B>>;

/// Compares sheets measured in different units. They are equal if their sides are.
template <class A, class B>
requires(!std::same_as<A, B>) [[nodiscard]] constexpr bool operator==(Sheet<A> const& a,
                                                                      Sheet<B> const& b) requires requires {
  a.short_side() == b.short_side();
}
{ return a.short_side() == b.short_side() && a.long_side() == b.long_side(); }

} // namespace v0
} // namespace bifolium

template <class L>
requires requires(L side) { std::hash<L>{}(side); }
struct std::hash<bifolium::Sheet<L>> {
  std::size_t operator()(bifolium::Sheet<L> const& sheet) const {
    return std::hash<L>{}(sheet.short_side()) * 31U + std::hash<L>{}(sheet.long_side());
  }
};

/// A structured binding of a sheet has two elements.
template <class L> struct std::tuple_size<bifolium::Sheet<L>> {
  static constexpr std::size_t value = 2; ///< the shorter and the longer side
};
/// Both elements of a structured binding have the type of the sides.
template <std::size_t I, class L> struct std::tuple_element<I, bifolium::Sheet<L>> {
  using type = L; ///< the type of a side
};
