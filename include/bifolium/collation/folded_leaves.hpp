// SPDX-License-Identifier: MIT
/// Leaves of one gathering that a formula changes together: A4, A2-4, or every leaf of A. They are counted as folded, so
/// that a leaf keeps its number where others are deleted. How many leaves "every leaf" is depends on the gathering, so
/// that number is asked for where it is needed.
#pragma once

#include <bifolium/core/checked.hpp>

namespace bifolium {
inline namespace v0 {

/// Leaves of one gathering as folded: one leaf, leaves that follow one another, or every leaf. A number converts to the
/// leaf with this number.
/// Example: `FoldedLeaves(2, 4).count(8) == 3`.
class FoldedLeaves {
  int first_{1}, last_{1};
  bool every_{};

public:
  /// Makes the first leaf.
  constexpr FoldedLeaves() = default;
  /// Makes one leaf. Precondition: at least 1.
  constexpr FoldedLeaves(int leaf) : FoldedLeaves{leaf, leaf} {}
  /// The same of a number of a wider type. Precondition: it fits in an int.
  template <detail::ChangesAs<int> Number>
  requires(!detail::NoWholeNumber<Number>) constexpr FoldedLeaves(Number leaf)
      : FoldedLeaves{detail::unchanged<int>(leaf)} {}
  /// Refuses a number that is not whole, as a leaf is converted to one by itself.
  template <detail::NoWholeNumber Number> FoldedLeaves(Number leaf) = delete;
  /// The same of two such numbers.
  template <class First, class Last>
  requires(detail::ChangesAs<First, int> || detail::ChangesAs<Last, int>) constexpr FoldedLeaves(First first, Last last)
      : FoldedLeaves{detail::unchanged<int>(first), detail::unchanged<int>(last)} {}
  /// Makes the leaves from one to another, including both. Precondition: at least 1, and the last is not before the first.
  constexpr FoldedLeaves(int first, int last) : first_{first}, last_{last} {
    if (first < 1) broken("the leaves of a gathering count from 1");
    if (last < first) broken("the last leaf of a change must not be before its first leaf");
  }
  /// Makes every leaf of the gathering, however many it has.
  [[nodiscard]] static constexpr FoldedLeaves every() noexcept {
    FoldedLeaves all;
    all.every_ = true;
    return all;
  }

  /// Returns true for every leaf of the gathering; false for stated leaves, even if the gathering has no others.
  [[nodiscard]] constexpr bool are_every() const noexcept { return every_; }
  /// Returns the first of them, from 1.
  [[nodiscard]] constexpr int first() const noexcept { return first_; }
  /// Returns the last of them. `folded` is the number of leaves of the gathering as folded.
  [[nodiscard]] constexpr int last(int folded) const noexcept { return every_ ? folded : last_; }
  /// Returns the number of them. `folded` is the number of leaves of the gathering as folded.
  [[nodiscard]] constexpr int count(int folded) const noexcept { return last(folded) - first_ + 1; }
  /// Returns true if a leaf of the gathering, numbered from 1, is one of them.
  [[nodiscard]] constexpr bool has(int leaf) const noexcept { return every_ || (leaf >= first_ && leaf <= last_); }
  friend constexpr bool operator==(FoldedLeaves, FoldedLeaves) = default;
};

} // namespace v0
} // namespace bifolium
