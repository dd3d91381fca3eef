// SPDX-License-Identifier: MIT
/// Leaves and gatherings by their place in the structure of a book. The functions of the ideal copy
/// (collation/ideal_copy.hpp) take and return these values.
#pragma once

#include <bifolium/collation/change.hpp>

namespace bifolium {
inline namespace v0 {

/// A leaf by its place in the structure of the book: a leaf of a gathering as folded, or a leaf that was inserted. The
/// second leaf inserted after B3 is `{b, 3, 2}`, where `b` is the place of gathering B.
struct LeafOfBook {
  GatheringAt gathering{}; ///< the gathering
  /// the leaf as folded, from 1; for an inserted leaf, how many leaves as folded come before it, which may be 0
  int leaf{1};
  /// the number of the leaf among those inserted there, from 1; no value for a leaf as folded
  std::optional<int> inserted{};
  friend constexpr auto operator<=>(LeafOfBook const&, LeafOfBook const&) = default;
};
/// The side of a leaf. The recto is the side that is read first, also in a book read from right to left.
enum class LeafSide : std::uint8_t { not_said, recto, verso };

/// Leaves that follow one another, by their numbers in the book, including both ends.
struct NumbersOfLeaves {
  std::int64_t from{}; ///< the number of the first leaf, from 1
  std::int64_t to{};   ///< the number of the last leaf; less than `from` if there is no leaf
  /// Returns the number of leaves.
  [[nodiscard]] constexpr std::int64_t count() const noexcept { return to - from + 1; }
  friend constexpr bool operator==(NumbersOfLeaves, NumbersOfLeaves) = default;
};
/// One gathering of the book.
struct GatheringOfBook {
  GatheringAt at{};          ///< its place in the formula
  Signature signature{};     ///< its signature
  int folded{};              ///< number of leaves as folded
  std::int64_t leaves{};     ///< number of leaves in the ideal copy
  std::int64_t first_leaf{}; ///< number of its first leaf in the book, from 1
  friend constexpr bool operator==(GatheringOfBook const&, GatheringOfBook const&) = default;
};
/// An inserted leaf: the insertion, and the number of the leaf in it.
struct InsertedLeaf {
  Insertion insertion{}; ///< the insertion
  int number{1};         ///< the number of the leaf in the insertion, from 1
  /// Returns the number that belongs to the name of the leaf, such as 4 in χ4: it counts from that of the first leaf,
  /// or from 1. After a leaf that an inserted gathering lacks it is higher: a3 is the second leaf of a⁴(−a2).
  [[nodiscard]] constexpr int figure() const { return first_figure() + insertion.leaf_at(number) - 1; }
  /// Returns the number that belongs to the name of the first leaf of the insertion, as folded.
  [[nodiscard]] constexpr int first_figure() const noexcept {
    return insertion.joined == Joined::gathering ? 1 : insertion.first_figure.value_or(1);
  }
  friend constexpr bool operator==(InsertedLeaf const&, InsertedLeaf const&) = default;
};

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::LeafOfBook> {
  std::size_t operator()(bifolium::LeafOfBook const& leaf) const noexcept {
    return (std::hash<bifolium::GatheringAt>{}(leaf.gathering) * 131U + static_cast<std::size_t>(leaf.leaf)) * 31U +
           static_cast<std::size_t>(leaf.inserted.value_or(0));
  }
};
