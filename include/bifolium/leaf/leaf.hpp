// SPDX-License-Identifier: MIT
/// A leaf is one piece of paper in a gathering, with a page on either side: the recto, which is read first, and the
/// verso. Its conjugate is the leaf it is joined to across the gutter. Here that is the arithmetic of a regular
/// gathering, N+1-k; the middle leaf of an odd gathering has none. Recto and verso go by the order of reading, not by
/// hand: in a book read from right to left the recto is on the left.
#pragma once

#include <bifolium/leaf/gathering.hpp>
#include <bifolium/leaf/page_side.hpp>

namespace bifolium {
inline namespace v0 {

/// Leaf `number` of a gathering of N.
template <int N> class Leaf : detail::LeavesOf<N> {
  using Base = detail::LeavesOf<N>;
  std::uint16_t number_;

  constexpr void must_exist(int number) const {
    if (number < 1 || number > this->leaves()) broken("there is no such leaf in this gathering");
  }

public:
  /// pre: 1 to N.
  constexpr explicit Leaf(int number) requires(N != dynamic) : number_{static_cast<std::uint16_t>(number)} {
    must_exist(number);
  }
  /// pre: 1 to in.leaves().
  constexpr Leaf(int number, Gathering<> in) requires(N == dynamic)
      : Base{in.leaves()}, number_{static_cast<std::uint16_t>(number)} {
    must_exist(number);
  }
  /// A number known while compiling becomes one known when run.
  template <int M>
  requires(N == dynamic && M != dynamic) constexpr Leaf(Leaf<M> other)
      : Base{other.leaves()}, number_{static_cast<std::uint16_t>(other.number())} {}

  /// Counting from 1 at the front of the gathering.
  [[nodiscard]] constexpr int number() const noexcept { return number_; }
  using Base::leaves;

  /// The leaf joined to this one at the gutter; none for the middle leaf of an odd gathering.
  [[nodiscard]] constexpr std::optional<Leaf> conjugate() const {
    auto const other = leaves() + 1 - number();
    if (other == number()) return std::nullopt;
    Leaf leaf = *this;
    leaf.number_ = static_cast<std::uint16_t>(other);
    return leaf;
  }
  /// The side read first: page 2k-1 of the gathering.
  [[nodiscard]] constexpr PageSide<N> recto() const { return PageSide<N>{*this, false}; }
  /// The other side: page 2k.
  [[nodiscard]] constexpr PageSide<N> verso() const { return PageSide<N>{*this, true}; }

  /// Storage order: by the size of the gathering, then by number.
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
