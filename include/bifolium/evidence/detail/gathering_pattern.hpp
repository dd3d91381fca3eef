// SPDX-License-Identifier: MIT
/// The pattern of a gathering: the leaves that show a mark, its place, and the direction of their chain lines. It shows
/// how the gathering was folded. Different schemes make the same patterns: the 156 gatherings of the attested schemes
/// have 97, and each is evaluated once for all of them.
#pragma once

#include <bifolium/evidence/scheme_facts.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The evidence of the leaves of a gathering, and the schemes that make it.
struct GatheringPattern {
  std::span<LeafFacts const> leaves{}; ///< as the first of the schemes folds them, from the first leaf
  /// true if the scheme has one sheet, so that several can be laid one inside another
  bool of_one_sheet{};
  std::vector<int> schemes{}; ///< indices of `scheme_facts()`, each as often as it makes such a gathering
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

[[gnu::cold]] inline std::vector<GatheringPattern> find_gathering_patterns() {
  std::vector<GatheringPattern> all;
  auto const& schemes = scheme_facts();
  for (int number = 0; number < Attested::count; ++number) {
    auto const& facts = schemes[static_cast<std::size_t>(number)];
    for (int g = 0; g < facts.gatherings; ++g) {
      auto const leaves = facts.gathering(g);
      bool const of_one_sheet = facts.sheets == 1;
      GatheringPattern* pattern = nullptr;
      for (auto& one : all)
        if (one.of_one_sheet == of_one_sheet && of_one_pattern(one.leaves, leaves)) pattern = &one;
      if (pattern == nullptr) {
        all.push_back({leaves, of_one_sheet, {}});
        pattern = &all.back();
      }
      pattern->schemes.push_back(number);
    }
  }
  return all;
}

/// Returns all patterns. They are computed once in a program, at the first use.
inline std::vector<GatheringPattern> const& gathering_patterns() {
  static auto const patterns = find_gathering_patterns();
  return patterns;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
