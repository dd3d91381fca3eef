// SPDX-License-Identifier: MIT
/// A page is one side of a leaf. Pages of a gathering of N leaves count from 1 to 2N. In the open book the facing page
/// is on the next or the previous leaf. On the flat bifolium the conjugate page is beside it on the conjugate leaf.
#pragma once

#include <bifolium/leaf/gathering.hpp>

namespace bifolium {
inline namespace v0 {

/// The recto or the verso of a leaf in a gathering of N leaves.
template <int N> class PageSide {
  Leaf<N> leaf_;
  bool verso_;

public:
  /// Makes one side of a leaf: the verso if `verso` is true, else the recto.
  constexpr PageSide(Leaf<N> leaf, bool verso) : leaf_{leaf}, verso_{verso} {}
  /// Converts a page of a gathering whose size is known while compiling.
  template <int M>
  requires(N == dynamic && M != dynamic) constexpr PageSide(PageSide<M> other)
      : leaf_{other.leaf()}, verso_{other.is_verso()} {}

  /// Returns the leaf of this page.
  [[nodiscard]] constexpr Leaf<N> leaf() const noexcept { return leaf_; }
  /// Returns true if the page is the second side of the leaf.
  [[nodiscard]] constexpr bool is_verso() const noexcept { return verso_; }
  /// Returns true if the page is the first side of the leaf.
  [[nodiscard]] constexpr bool is_recto() const noexcept { return !verso_; }
  /// Returns the number of the page in its gathering, 1 to 2N; the recto of the first leaf is page 1. The pages of a
  /// scheme and the pages of a book are counted differently.
  [[nodiscard]] constexpr int page_in_gathering() const noexcept { return 2 * leaf_.number() - (verso_ ? 0 : 1); }

  /// Returns the page on the back of this one.
  [[nodiscard]] constexpr PageSide other_side() const { return PageSide{leaf_, !verso_}; }
  /// Returns the other page of the opening. The first recto and the last verso of the gathering have no facing page.
  [[nodiscard]] constexpr std::optional<PageSide> facing() const {
    auto const next = leaf_.number() + (verso_ ? 1 : -1);
    if (next < 1 || next > leaf_.leaves()) return std::nullopt;
    if constexpr (N == dynamic)
      return PageSide{Leaf<N>{next, Gathering<>{leaf_.leaves()}}, !verso_};
    else
      return PageSide{Leaf<N>{next}, !verso_};
  }
  /// Returns the page beside this one on the flat bifolium, across the gutter. The two page numbers add up to 2N+1.
  [[nodiscard]] constexpr std::optional<PageSide> conjugate() const {
    auto const leaf = leaf_.conjugate();
    if (!leaf) return std::nullopt;
    return PageSide{*leaf, !verso_};
  }

  friend constexpr auto operator<=>(PageSide, PageSide) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, PageSide page) {
    return out << (page.is_verso() ? "verso" : "recto") << " of " << page.leaf();
  }
};

} // namespace v0
} // namespace bifolium

template <int N> struct std::hash<bifolium::PageSide<N>> {
  std::size_t operator()(bifolium::PageSide<N> page) const noexcept {
    return static_cast<std::size_t>(page.leaf().leaves()) * 8209U + static_cast<std::size_t>(page.page_in_gathering());
  }
};

#include <bifolium/leaf/leaf.hpp> // what leaf() hands back
