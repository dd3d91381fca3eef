// SPDX-License-Identifier: MIT
/// A leaf is one piece of paper in a gathering, with a page on each side: the recto, which is read first, and the
/// verso. Its conjugate is the leaf to which it is joined at the gutter, the inner margin. This header has the
/// arithmetic of a regular gathering, in which leaf k is conjugate with leaf N+1-k and the middle leaf of an odd
/// gathering has no conjugate. Recto and verso are defined by the order of reading, not by left and right: in a book
/// read from right to left the recto is on the left.
#pragma once

#include <bifolium/leaf/gathering.hpp>
#include <bifolium/leaf/page_side.hpp>

namespace bifolium {
inline namespace v0 {

/// Leaf `number` of a gathering of N leaves.
template <int N> class Leaf : detail::LeavesOf<N> {
  using Base = detail::LeavesOf<N>;
  std::uint16_t number_;

  constexpr void must_exist(int number) const {
    if (number < 1 || number > this->leaves()) broken("the gathering has no leaf with this number");
  }

public:
  /// Makes leaf `number`. Precondition: 1 to N.
  constexpr explicit Leaf(int number) requires(N != dynamic) : number_{static_cast<std::uint16_t>(number)} {
    must_exist(number);
  }
  /// Makes leaf `number` of a gathering. Precondition: 1 to in.leaves().
  constexpr Leaf(int number, Gathering<> in) requires(N == dynamic)
      : Base{in.leaves()}, number_{static_cast<std::uint16_t>(number)} {
    must_exist(number);
  }
  /// The same of a number of a wider type. No number that is not whole is taken.
  template <detail::ChangesAs<int> Number>
  constexpr explicit Leaf(Number number) requires(N != dynamic) : Leaf{detail::unchanged<int>(number)} {}
  /// The same in a gathering.
  template <detail::ChangesAs<int> Number>
  constexpr Leaf(Number number, Gathering<> in) requires(N == dynamic) : Leaf{detail::unchanged<int>(number), in} {}
  /// Converts a leaf of a gathering whose size is known while compiling.
  template <int M>
  requires(N == dynamic && M != dynamic) constexpr Leaf(Leaf<M> other)
      : Base{other.leaves()}, number_{static_cast<std::uint16_t>(other.number())} {}

  /// Returns the number of the leaf, which counts from 1 at the front of the gathering.
  [[nodiscard]] constexpr int number() const noexcept { return number_; }
  using Base::leaves;

  /// Returns the leaf to which this one is joined at the gutter, or no value for the middle leaf of an odd gathering.
  [[nodiscard]] constexpr std::optional<Leaf> conjugate() const {
    auto const other = leaves() + 1 - number();
    if (other == number()) return std::nullopt;
    Leaf leaf = *this;
    leaf.number_ = static_cast<std::uint16_t>(other);
    return leaf;
  }
  /// Returns the side that is read first: page 2k-1 of the gathering for leaf k.
  [[nodiscard]] constexpr PageSide<N> recto() const { return PageSide<N>{*this, false}; }
  /// Returns the other side: page 2k of the gathering for leaf k.
  [[nodiscard]] constexpr PageSide<N> verso() const { return PageSide<N>{*this, true}; }

  /// Orders leaves for storage: by the size of the gathering, then by number.
  friend constexpr auto operator<=>(Leaf, Leaf) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Leaf leaf) {
    return out << "leaf " << leaf.number() << " of " << leaf.leaves();
  }
};

} // namespace v0
} // namespace bifolium

template <int N> struct std::hash<bifolium::Leaf<N>> {
  std::size_t operator()(bifolium::Leaf<N> leaf) const noexcept {
    return static_cast<std::size_t>(leaf.leaves()) * 4099U + static_cast<std::size_t>(leaf.number());
  }
};
