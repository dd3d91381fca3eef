// SPDX-License-Identifier: MIT
/// A leaf of a book with one of its sides, to which a reference such as B3v leads.
#pragma once

#include <bifolium/collation/leaf_of_book.hpp>

namespace bifolium {
inline namespace v0 {

/// A leaf and a side of it.
struct Reference {
  LeafOfBook leaf{}; ///< the leaf
  LeafSide side{};   ///< the side
  bool doubtful{};   ///< true if more than one leaf may be meant; the first is taken. Comparison ignores it
  /// Orders references as in the book. A leaf without a side comes before its recto.
  friend constexpr auto operator<=>(Reference const& a, Reference const& b) noexcept {
    auto const c = a.leaf <=> b.leaf;
    return std::is_neq(c) ? c : a.side <=> b.side;
  }
  friend constexpr bool operator==(Reference const& a, Reference const& b) noexcept {
    return a.leaf == b.leaf && a.side == b.side;
  }
};

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::Reference> {
  std::size_t operator()(bifolium::Reference const& reference) const noexcept {
    return std::hash<bifolium::LeafOfBook>{}(reference.leaf) * 3U + static_cast<std::size_t>(reference.side);
  }
};
