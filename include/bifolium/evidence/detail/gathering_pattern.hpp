// SPDX-License-Identifier: MIT
/// The pattern of a gathering: the leaves that show a mark, its place, and the direction of their chain lines. It shows
/// how the gathering was folded. Different schemes make the same patterns: the 156 gatherings of the attested schemes
/// have 97, and each is evaluated once for all of them.
#pragma once

#include <bifolium/evidence/scheme_facts.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The evidence of the leaves of a gathering.
struct GatheringPattern {
  std::span<LeafFacts const> leaves{}; ///< as the first of its schemes folds them, from the first leaf
  /// true if the scheme has one sheet, so that several can be laid one inside another
  bool of_one_sheet{};
};

/// Returns true if the leaves belong to the same sheets and show the same marks and chain lines. Edges and point-holes
/// do not belong to a pattern.
inline bool of_one_pattern(std::span<LeafFacts const> some, std::span<LeafFacts const> others) {
  if (some.size() != others.size()) return false;
  for (std::size_t i = 0; i < some.size(); ++i) {
    auto const& one = some[i];
    auto const& other = others[i];
    if (one.sheet != other.sheet || one.chain_lines != other.chain_lines || one.watermark != other.watermark ||
        one.either(0) != other.either(0) || one.either(1) != other.either(1))
      return false;
  }
  return true;
}

/// All patterns, and which of them the gatherings of the schemes have.
class GatheringPatterns {
  static constexpr std::size_t most = 192; // room for gatherings
  std::array<GatheringPattern, most> patterns_;
  std::array<std::uint8_t, most> of_gatherings_; // the number of the pattern of each, in the order of the schemes
  std::size_t count_{};

public:
  /// Room for one number a pattern.
  template <class T> using Each = std::array<T, most>;

  [[gnu::cold]] GatheringPatterns() {
    std::size_t gathering = 0;
    for (auto const& scheme : scheme_facts())
      for (int g = 0; g < scheme.gatherings; ++g) {
        if (gathering == most) broken("there is no room for so many gatherings of schemes");
        GatheringPattern const here{scheme.gathering(g), scheme.sheets == 1};
        std::size_t at = 0;
        while (at < count_ &&
               (patterns_[at].of_one_sheet != here.of_one_sheet || !of_one_pattern(patterns_[at].leaves, here.leaves)))
          ++at;
        if (at == count_) patterns_[count_++] = here;
        of_gatherings_[gathering++] = static_cast<std::uint8_t>(at);
      }
  }
  /// Returns the patterns.
  [[nodiscard]] std::span<GatheringPattern const> all() const BIFOLIUM_LIFETIMEBOUND {
    return {patterns_.data(), count_};
  }
  /// Returns the number of the pattern of each gathering of all schemes, one scheme after another.
  [[nodiscard]] std::uint8_t const* of_gatherings() const BIFOLIUM_LIFETIMEBOUND { return of_gatherings_.data(); }
};
/// Returns all patterns. They are found once in a program, at the first use.
inline GatheringPatterns const& gathering_patterns() {
  static GatheringPatterns const patterns;
  return patterns;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
