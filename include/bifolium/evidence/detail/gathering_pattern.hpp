// SPDX-License-Identifier: MIT
/// The pattern of a gathering: the leaves that show a mark, its place, and the direction of their chain lines. It shows
/// how the gathering was folded. Different schemes make the same patterns: the 156 gatherings of the attested schemes
/// have 97, and each is evaluated once for all of them.
#pragma once

#include <bifolium/evidence/scheme_facts.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What a leaf shows of its paper, as numbers of the rows in which it is looked up.
struct PatternLeaf {
  std::uint8_t sheet{};            ///< of the gathering
  std::uint8_t chain_lines{};      ///< as `ChainLines`
  std::uint8_t one[2]{}, two[2]{}; ///< the mark of paper with one or two in a sheet, as `MarkPlace`, for the two lies

  PatternLeaf() = default;
  [[gnu::cold]] explicit PatternLeaf(LeafFacts const& facts)
      : sheet{static_cast<std::uint8_t>(facts.sheet)}, chain_lines{static_cast<std::uint8_t>(facts.chain_lines)} {
    for (std::size_t lie = 0; lie < 2; ++lie) {
      one[lie] = static_cast<std::uint8_t>(facts.watermark[lie]);
      two[lie] = static_cast<std::uint8_t>(facts.either(lie));
    }
  }
  friend bool operator==(PatternLeaf const&, PatternLeaf const&) = default;
};

/// The evidence of the leaves of a gathering. Edges and point-holes do not belong to it.
struct GatheringPattern {
  PatternLeaf const* leaves{}; ///< from the first leaf
  std::uint8_t size{};         ///< their number
  /// true if the scheme has one sheet, so that several can be laid one inside another
  bool of_one_sheet{};

  [[gnu::cold]] friend bool operator==(GatheringPattern const& some, GatheringPattern const& others) {
    if (some.size != others.size || some.of_one_sheet != others.of_one_sheet) return false;
    for (std::size_t i = 0; i < some.size; ++i)
      if (some.leaves[i] != others.leaves[i]) return false;
    return true;
  }
};

/// All patterns, and which of them the gatherings of the schemes have.
class GatheringPatterns {
  static constexpr std::size_t most = 192; // room for gatherings
  PatternLeaf leaves_[leaf_rows::leaves];
  GatheringPattern patterns_[most];
  std::uint8_t of_gatherings_[most]; // the number of the pattern of each, in the order of the schemes
  std::size_t count_{};

public:
  /// One number a pattern.
  using Each = double[most];

  [[gnu::cold]] GatheringPatterns() {
    std::size_t gathering = 0;
    auto* leaves = leaves_;
    for (auto const& scheme : scheme_facts())
      for (int g = 0; g < scheme.gatherings; ++g) {
        if (gathering == most) broken("there is no room for so many gatherings of schemes");
        auto& here = patterns_[count_] = {leaves, scheme.gathered[static_cast<std::size_t>(g)], scheme.sheets == 1};
        auto* end = leaves;
        for (auto const& facts : scheme.gathering(g)) *end++ = PatternLeaf{facts};
        std::size_t at = 0;
        while (patterns_[at] != here) ++at;
        if (at == count_) ++count_, leaves = end;
        of_gatherings_[gathering++] = static_cast<std::uint8_t>(at);
      }
  }
  GatheringPatterns(GatheringPatterns const&) = delete; // the patterns look at its leaves
  GatheringPatterns& operator=(GatheringPatterns const&) = delete;
  /// Returns the patterns.
  [[nodiscard]] GatheringPattern const* begin() const BIFOLIUM_LIFETIMEBOUND { return patterns_; }
  [[nodiscard]] GatheringPattern const* end() const BIFOLIUM_LIFETIMEBOUND { return patterns_ + count_; }
  /// Returns the number of the pattern of each gathering of all schemes, one scheme after another.
  [[nodiscard]] std::uint8_t const* of_gatherings() const BIFOLIUM_LIFETIMEBOUND { return of_gatherings_; }
};
/// Returns all patterns. They are found once in a program, at the first use.
[[gnu::noinline]] inline GatheringPatterns const& gathering_patterns() {
  static GatheringPatterns const patterns;
  return patterns;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
