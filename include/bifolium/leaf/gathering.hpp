// SPDX-License-Identifier: MIT
/// A gathering (quire) is a number of leaves nested one inside another as folded pairs, the bifolia. In a regular one
/// leaf k is conjugate with leaf N+1-k: the outermost pair is the first and the last leaf.
/// N may be known while compiling (`Gathering<8>`) or only when the program runs (`Gathering<>`), as with std::span.
/// What a given sheet really joins - single leaves, nines, cancels - is asked of `Fold` and of the collation formula.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/fwd.hpp>

#include <compare>
#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// The most leaves a gathering may have; far above anything sewn, low enough that pages never overflow.
inline constexpr int most_leaves_in_gathering = 4096;

namespace detail {

/// The number of leaves: no bytes when it is known while compiling, two when it is not.
template <int N> struct LeavesOf {
  static_assert(N >= 1 && N <= most_leaves_in_gathering, "a gathering has from 1 to 4096 leaves");
  [[nodiscard]] constexpr int leaves() const noexcept { return N; }
  friend constexpr auto operator<=>(LeavesOf, LeavesOf) = default;
};
template <> struct LeavesOf<dynamic> {
  std::uint16_t leaves_{1};
  constexpr explicit LeavesOf(int number) : leaves_{static_cast<std::uint16_t>(number)} {
    if (number < 1 || number > most_leaves_in_gathering) broken("a gathering has from 1 to 4096 leaves");
  }
  [[nodiscard]] constexpr int leaves() const noexcept { return leaves_; }
  friend constexpr auto operator<=>(LeavesOf, LeavesOf) = default;
};

} // namespace detail

/// N leaves, one inside another.
template <int N> class Gathering : detail::LeavesOf<N> {
  using Base = detail::LeavesOf<N>;

public:
  constexpr Gathering() requires(N != dynamic) = default;
  /// pre: 1 to 4096 leaves.
  constexpr explicit Gathering(int number_of_leaves) requires(N == dynamic) : Base{number_of_leaves} {}
  /// A number known while compiling becomes one known when run.
  template <int M>
  requires(N == dynamic && M != dynamic) constexpr Gathering(Gathering<M> other) : Base{other.leaves()} {}

  using Base::leaves;
  /// Two to a leaf.
  [[nodiscard]] constexpr int pages() const noexcept { return 2 * leaves(); }
  /// Leaf `number`, counting from 1. pre: 1 to leaves().
  [[nodiscard]] constexpr Leaf<N> leaf(int number) const {
    if constexpr (N == dynamic)
      return Leaf<N>{number, *this};
    else
      return Leaf<N>{number};
  }
  /// The two pages seen side by side on one conjugate pair add up to this, numbered within the gathering.
  [[nodiscard]] constexpr int conjugate_sum() const noexcept { return pages() + 1; }

  friend constexpr auto operator<=>(Gathering, Gathering) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Gathering g) {
    return out << "gathering of " << g.leaves();
  }
};
/// A number in parentheses is known when run.
Gathering(int)->Gathering<dynamic>;

} // namespace v0
} // namespace bifolium

template <int N> struct std::hash<bifolium::Gathering<N>> {
  std::size_t operator()(bifolium::Gathering<N> g) const noexcept { return static_cast<std::size_t>(g.leaves()); }
};

#include <bifolium/leaf/leaf.hpp> // what leaf() hands back
