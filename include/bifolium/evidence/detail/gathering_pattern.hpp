// SPDX-License-Identifier: MIT
/// The pattern of a gathering: the leaves that show a mark, its place, and the direction of their chain lines. It shows
/// how the gathering was folded. Different schemes make the same patterns: the 156 gatherings of the attested schemes
/// have 97, and each is evaluated once for all of them.
#pragma once

#include <bifolium/evidence/detail/leaf_facts.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What the leaves of a gathering show, and all that gather so.
struct GatheringPattern {
  std::span<LeafFacts const> leaves{}; ///< as the first of the schemes folds them, from the first leaf
  bool of_one_sheet{};                 ///< the scheme has one sheet, so that several can be laid one inside another
  std::vector<int> schemes{};          ///< numbers in `scheme_facts()`, each as often as it gathers so
};

/// Leaves of the same sheets that show the same marks and chain lines; edges and point-holes are no part of a pattern.
inline bool of_one_pattern(std::span<LeafFacts const> some, std::span<LeafFacts const> others) {
  if (some.size() != others.size()) return false;
  for (std::size_t i = 0; i < some.size(); ++i) {
    auto const& one = some[i];
    auto const& other = others[i];
    if (one.sheet != other.sheet || one.chain_lines != other.chain_lines || one.watermark != other.watermark ||
        one.either != other.either)
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

/// Returns all patterns. Found once a program, on first use.
inline std::vector<GatheringPattern> const& gathering_patterns() {
  static auto const patterns = find_gathering_patterns();
  return patterns;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
