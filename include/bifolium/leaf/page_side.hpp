// SPDX-License-Identifier: MIT
/// A page is one side of a leaf. Within a gathering of N leaves pages count from 1 to 2N; the page beside it in the open
/// book (facing) lies on the next leaf, the page beside it on the flat bifolium (conjugate) on the conjugate leaf.
#pragma once

#include <bifolium/leaf/gathering.hpp>

namespace bifolium {
inline namespace v0 {

/// The recto or the verso of a leaf in a gathering of N.
template <int N> class PageSide {
  Leaf<N> leaf_;
  bool verso_;

public:
  /// One side of a leaf.
  constexpr PageSide(Leaf<N> leaf, bool verso) : leaf_{leaf}, verso_{verso} {}
  /// A number known while compiling becomes one known when run.
  template <int M>
  requires(N == dynamic && M != dynamic) constexpr PageSide(PageSide<M> other)
      : leaf_{other.leaf()}, verso_{other.is_verso()} {}

  /// The leaf it is a side of.
  [[nodiscard]] constexpr Leaf<N> leaf() const noexcept { return leaf_; }
  /// True for the second side of the leaf.
  [[nodiscard]] constexpr bool is_verso() const noexcept { return verso_; }
  /// True for the first side of the leaf.
  [[nodiscard]] constexpr bool is_recto() const noexcept { return !verso_; }
  /// 1 to 2N, the recto of the first leaf being 1. The page of the scheme and the page of the book are other counts.
  [[nodiscard]] constexpr int page_in_gathering() const noexcept { return 2 * leaf_.number() - (verso_ ? 0 : 1); }

  /// The page on the back of this one.
  [[nodiscard]] constexpr PageSide other_side() const { return PageSide{leaf_, !verso_}; }
  /// The other page of the opening: none beside the first recto and the last verso of the gathering.
  [[nodiscard]] constexpr std::optional<PageSide> facing() const {
    auto const next = leaf_.number() + (verso_ ? 1 : -1);
    if (next < 1 || next > leaf_.leaves()) return std::nullopt;
    if constexpr (N == dynamic)
      return PageSide{Leaf<N>{next, Gathering<>{leaf_.leaves()}}, !verso_};
    else
      return PageSide{Leaf<N>{next}, !verso_};
  }
  /// The page beside it across the gutter on the flat bifolium; the two numbers add up to 2N+1.
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
