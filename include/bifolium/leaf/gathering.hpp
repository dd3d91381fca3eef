// SPDX-License-Identifier: MIT
/// A gathering (or quire) is a number of leaves nested one inside another in folded pairs, the bifolia. In a regular
/// gathering of N leaves, leaf k is conjugate with leaf N+1-k, which means that the two are one piece of paper; the
/// outermost pair is the first and the last leaf. N is known while compiling (`Gathering<8>`) or only at run time
/// (`Gathering<>`), as with std::span. A real sheet can join leaves in other ways, as with single leaves, odd numbers
/// or cancels; `Fold` and the collation formula tell which.
#pragma once

#include <bifolium/core/checked.hpp>
#include <bifolium/fwd.hpp>

#include <compare>
#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <optional>
#include <string_view> // declares std::ranges::enable_borrowed_range

namespace bifolium {
inline namespace v0 {

/// The greatest number of leaves that a gathering can have: far more than is ever sewn together, and few enough that
/// page numbers fit in their types.
inline constexpr int most_leaves_in_gathering = 4096;

namespace detail {

/// The number of leaves. It takes no bytes if it is known while compiling, and two otherwise.
template <int N> struct LeavesOf {
  static_assert(N >= 1 && N <= most_leaves_in_gathering, "a gathering has from 1 to 4096 leaves");
  [[nodiscard]] constexpr int leaves() const noexcept { return N; }
  friend constexpr auto operator<=>(LeavesOf, LeavesOf) = default;
};
template <> struct LeavesOf<dynamic> {
  std::uint16_t leaves_;
  constexpr explicit LeavesOf(int number) : leaves_{static_cast<std::uint16_t>(number)} {
    if (number < 1 || number > most_leaves_in_gathering) broken("a gathering has from 1 to 4096 leaves");
  }
  [[nodiscard]] constexpr int leaves() const noexcept { return leaves_; }
  friend constexpr auto operator<=>(LeavesOf, LeavesOf) = default;
};

} // namespace detail

/// A gathering of N leaves nested one inside another.
template <int N> class Gathering : detail::LeavesOf<N> {
  using Base = detail::LeavesOf<N>;

public:
  constexpr Gathering() requires(N != dynamic) = default;
  /// Makes a gathering. Precondition: 1 to 4096 leaves.
  constexpr explicit Gathering(int number_of_leaves) requires(N == dynamic) : Base{number_of_leaves} {}
  /// The same of a number of a wider type. No number that is not whole is taken.
  template <detail::ChangesAs<int> Number>
  constexpr explicit Gathering(Number number_of_leaves) requires(N == dynamic)
      : Base{detail::unchanged<int>(number_of_leaves)} {}
  /// Converts a gathering whose size is known while compiling.
  template <int M>
  requires(N == dynamic && M != dynamic) constexpr Gathering(Gathering<M> other) : Base{other.leaves()} {}

  using Base::leaves;
  /// Returns the number of pages: two for each leaf.
  [[nodiscard]] constexpr int pages() const noexcept { return 2 * leaves(); }
  /// Returns leaf `number`, which counts from 1. Precondition: 1 to leaves().
  [[nodiscard]] constexpr Leaf<N> leaf(int number) const {
    if constexpr (N == dynamic)
      return Leaf<N>{number, *this};
    else
      return Leaf<N>{number};
  }
  /// Returns the sum of the numbers of two pages that are side by side on one bifolium: 2N+1, if pages count within the
  /// gathering.
  [[nodiscard]] constexpr int conjugate_sum() const noexcept { return pages() + 1; }

  /// An iterator over the leaves of a gathering.
  class Iterator {
    int leaves_{}, number_{1};

  public:
    /// The type of an element.
    using value_type = Leaf<N>;
    /// The type of a distance between two iterators.
    using difference_type = std::ptrdiff_t;
    constexpr Iterator() = default;
    /// Makes an iterator at a leaf of a gathering. Precondition: 1 to one past the last leaf.
    constexpr Iterator(Gathering of, int number) : leaves_{of.leaves()}, number_{number} {
      if (number < 1 || number > leaves_ + 1) broken("an iterator must be at a leaf of the gathering or past the last");
    }
    /// Returns the leaf at this position.
    [[nodiscard]] constexpr Leaf<N> operator*() const {
      if constexpr (N == dynamic)
        return Leaf<N>{number_, Gathering{leaves_}};
      else
        return Leaf<N>{number_};
    }
    /// Moves to the next leaf and returns this iterator.
    constexpr Iterator& operator++() { return ++number_, *this; }
    /// Moves to the next leaf and returns the iterator as it was before.
    constexpr Iterator operator++(int) {
      auto const before = *this;
      return ++number_, before;
    }
    friend constexpr bool operator==(Iterator, Iterator) = default;
  };
  /// Returns an iterator to the first leaf; a gathering is a range of its leaves: `for (auto leaf : Gathering<8>{})`.
  [[nodiscard]] constexpr Iterator begin() const noexcept { return {*this, 1}; }
  /// Returns an iterator past the last leaf.
  [[nodiscard]] constexpr Iterator end() const noexcept { return {*this, leaves() + 1}; }

  friend constexpr auto operator<=>(Gathering, Gathering) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Gathering g) {
    return out << "gathering of " << g.leaves();
  }
};
/// Deduces a gathering whose size is known only at run time: `Gathering(8)`.
Gathering(int)->Gathering<dynamic>;

} // namespace v0
} // namespace bifolium

template <int N> struct std::hash<bifolium::Gathering<N>> {
  std::size_t operator()(bifolium::Gathering<N> g) const noexcept { return static_cast<std::size_t>(g.leaves()); }
};
// Its iterators outlive a gathering, since they know the leaf by its number.
template <int N> inline constexpr bool std::ranges::enable_borrowed_range<bifolium::Gathering<N>> = true;

#include <bifolium/leaf/leaf.hpp> // what leaf() hands back
