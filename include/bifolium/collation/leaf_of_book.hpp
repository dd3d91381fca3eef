// SPDX-License-Identifier: MIT
/// Leaves and gatherings by their place in the structure of a book, as values: what the ideal copy (collation/ideal_copy.hpp)
/// takes and gives.
#pragma once

#include <bifolium/collation/change.hpp>

namespace bifolium {
inline namespace v0 {

/// A leaf by its place in the structure. `inserted` is 0 for a leaf of the gathering as folded, and counts the leaves
/// inserted after it from 1. Leaf 0 is the place before the first leaf.
struct LeafOfBook {
  GatheringAt gathering{}; ///< which gathering
  int leaf{1};             ///< from 1, or the leaf after which something is inserted
  int inserted{};          ///< 0 for a leaf of the gathering, else which of the leaves inserted there, from 1
  friend constexpr auto operator<=>(LeafOfBook const&, LeafOfBook const&) = default;
};
/// Which side of a leaf is meant. Recto is the side read first, also in a book read from right to left.
enum class LeafSide : std::uint8_t { not_said, recto, verso };

/// Leaves that follow one another, by their numbers in the book, both ends counted.
struct NumbersOfLeaves {
  std::int64_t from{}; ///< the number of the first, from 1
  std::int64_t to{};   ///< the number of the last; below `from` where there is none
  /// How many leaves there are.
  [[nodiscard]] constexpr std::int64_t count() const noexcept { return to - from + 1; }
  friend constexpr bool operator==(NumbersOfLeaves, NumbersOfLeaves) = default;
};
/// One gathering of the book.
struct GatheringOfBook {
  GatheringAt at{};          ///< its place in the formula
  Signature signature{};     ///< what it is signed
  int folded{};              ///< leaves as folded
  std::int64_t leaves{};     ///< leaves in the ideal copy
  std::int64_t first_leaf{}; ///< the number of its first leaf in the book, from 1
  friend constexpr bool operator==(GatheringOfBook const&, GatheringOfBook const&) = default;
};
/// An inserted leaf: what it was inserted with, and which leaf of that it is.
struct InsertedLeaf {
  Insertion insertion{}; ///< the insertion it belongs to
  int number{1};         ///< which leaf of the insertion, from 1
  /// The figure that belongs to its name, as 4 of χ4: counted on from the first, or from 1.
  [[nodiscard]] constexpr int figure() const noexcept { return first_figure() + number - 1; }
  /// The figure of the first leaf of the insertion.
  [[nodiscard]] constexpr int first_figure() const noexcept {
    bool const counted_on = insertion.first_figure > 0 && insertion.joined != Joined::gathering;
    return counted_on ? insertion.first_figure : 1;
  }
  friend constexpr bool operator==(InsertedLeaf const&, InsertedLeaf const&) = default;
};

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::LeafOfBook> {
  std::size_t operator()(bifolium::LeafOfBook const& leaf) const noexcept {
    return (std::hash<bifolium::GatheringAt>{}(leaf.gathering) * 131U + static_cast<std::size_t>(leaf.leaf)) * 31U +
           static_cast<std::size_t>(leaf.inserted);
  }
};
