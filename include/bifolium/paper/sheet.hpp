// SPDX-License-Identifier: MIT
/// A sheet of paper has two sides, of which one is not shorter than the other. The order in which they are given does not
/// matter.
/// It can be made of any length: the library's own, a plain floating number, or a type from elsewhere. Lengths from
/// elsewhere disagree about nearly every operator (some cannot be divided by 2, some hang when compared with 0), so a
/// sheet asks a foreign type only to add, subtract and compare, and leaves the rest to `LengthTraits`.
#pragma once

#include <bifolium/paper/length.hpp>

#include <array> // std::tuple_size, for structured bindings

namespace bifolium {
inline namespace v0 {

/// What a sheet must know of a type of length. Specialise it for a type of your own:
///   `static constexpr L part(L whole, int of)`: the `of`th part of `whole`, without loss;
///   `static constexpr double ratio(L a, L b)`: how many times b goes into a.
template <class L> struct LengthTraits;

/// Floating numbers, all in one unit that the program knows.
template <std::floating_point L> struct LengthTraits<L> {
  /// One of `of` equal parts.
  static constexpr L part(L whole, int of) { return whole / static_cast<L>(of); }
  /// How many times `b` goes into `a`.
  static constexpr double ratio(L a, L b) { return static_cast<double>(a) / static_cast<double>(b); }
};

/// Not for lengths counted in whole numbers: half a sheet of 297 mm is not 148 mm.
template <class Rep, class Unit>
requires(!std::integral<Rep>) struct LengthTraits<Length<Rep, Unit>> {
  /// One of `of` equal parts.
  static constexpr Length<Rep, Unit> part(Length<Rep, Unit> whole, int of) {
    return Length<Rep, Unit>{whole.count() / static_cast<Rep>(of)};
  }
  /// How many times `b` goes into `a`.
  static constexpr double ratio(Length<Rep, Unit> a, Length<Rep, Unit> b) {
    if constexpr (std::floating_point<Rep>)
      return static_cast<double>(a.count()) / static_cast<double>(b.count());
    else
      return (a.count() / b.count()).as_double();
  }
};

/// A length that a sheet can be made of. `L{}` is length zero. Whole numbers are refused, because halving would round them.
template <class L>
concept LengthLike = std::regular<L> && std::totally_ordered<L> && !std::integral<L> && requires(L a, L b) {
  { a + b } -> std::convertible_to<L>;
  { a - b } -> std::convertible_to<L>;
  { LengthTraits<L>::part(a, 4) } -> std::convertible_to<L>;
  { LengthTraits<L>::ratio(a, b) } -> std::convertible_to<double>;
};

/// A sheet of paper by its two sides.
template <class L> class Sheet {
  static_assert(LengthLike<L>, "a sheet is made of lengths that can be parted without loss (see LengthTraits)");
  L short_, long_;

public:
  using length_type = L; ///< what the sides are measured in

  /// The sides in either order. pre: both more than zero (so neither is NaN).
  constexpr Sheet(L a, L b) : short_(b < a ? b : a), long_(b < a ? a : b) {
    L const zero{};
    if (!(zero < a) || !(zero < b)) broken("a sheet has two sides, each longer than zero");
  }
  /// A sheet given in another unit.
  template <LengthLike M>
  requires(!std::same_as<L, M> && std::convertible_to<M, L> &&
           detail::keeps_number<L, M>) constexpr Sheet(Sheet<M> const& other)
      : short_{other.short_side()}, long_{other.long_side()} {}

  /// The shorter of the two sides.
  [[nodiscard]] constexpr L short_side() const { return short_; }
  /// The longer of the two sides.
  [[nodiscard]] constexpr L long_side() const { return long_; }
  /// `auto [shorter, longer] = sheet;`
  template <std::size_t I>
  requires(I < 2) [[nodiscard]] constexpr L get() const { return I == 0 ? short_ : long_; }
  /// Long side over short side: 1.414 for ISO paper, 1.2 to 1.5 for most hand-made sheets.
  [[nodiscard]] constexpr double ratio() const { return LengthTraits<L>::ratio(long_, short_); }

  /// Cut or folded once, across the long side.
  [[nodiscard]] constexpr Sheet halved() const { return {short_, LengthTraits<L>::part(long_, 2)}; }
  /// Two of them joined along the long side, which is what `double` before the name of a sheet should mean. Trade
  /// sizes keep the name and not always the sum. `halved` undoes it as long as the sheet is no longer than two short
  /// sides.
  [[nodiscard]] constexpr Sheet doubled() const { return {short_ + short_, long_}; }

  friend constexpr bool operator==(Sheet const&, Sheet const&) = default;
  /// `315 mm x 445 mm`, short side first.
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Sheet const& sheet) {
    return out << sheet.short_ << " x " << sheet.long_;
  }
};

/// Sides in two units give a sheet in the unit in which the two meet.
template <LengthLike A, LengthLike B> Sheet(A, B) -> Sheet<std::common_type_t<A, B>>;

/// Sheets measured in different units are equal when their sides are.
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

/// A sheet comes apart into two sides.
template <class L> struct std::tuple_size<bifolium::Sheet<L>> {
  static constexpr std::size_t value = 2; ///< shorter and longer
};
/// Both sides are of one type.
template <std::size_t I, class L> struct std::tuple_element<I, bifolium::Sheet<L>> {
  using type = L; ///< the type of a side
};
