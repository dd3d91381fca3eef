// SPDX-License-Identifier: MIT
/// Which leaves of a gathering show a mark, and where, and which way their chain lines run: the pattern by which a
/// gathering tells how it was folded. Different schemes make the same patterns, so the 156 gatherings of the attested
/// schemes come to 97, and each is asked once for all of them.
#pragma once

#include <bifolium/evidence/leaf_facts.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What one leaf shows, on paper with a mark in each half of the sheet.
struct LeafPattern {
  int sheet{}; ///< of the gathering, from 0
  ChainLines chain_lines{};
  std::array<MarkPlace, 2> watermark{}; ///< by how the sheet was laid: as given, end for end
  std::array<MarkPlace, 2> either{};    ///< the watermark or, where there is none, the countermark
  friend constexpr bool operator==(LeafPattern const&, LeafPattern const&) = default;
};
/// All leaves of a gathering, from the first.
struct GatheringPattern {
  std::vector<LeafPattern> leaves{};
  bool of_one_sheet{};                ///< the scheme has one sheet, so that several can be laid one inside another
  std::vector<std::size_t> schemes{}; ///< numbers in `scheme_facts()`, each as often as it gathers so
};

inline std::vector<GatheringPattern> find_gathering_patterns() {
  std::vector<GatheringPattern> all;
  auto const& schemes = scheme_facts();
  for (std::size_t number = 0; number < schemes.size(); ++number)
    for (auto const& gathering : schemes[number].gatherings) {
      std::vector<LeafPattern> leaves;
      for (auto const& facts : gathering) {
        auto& leaf = leaves.emplace_back(LeafPattern{facts.sheet, facts.chain_lines, facts.watermark, facts.watermark});
        for (std::size_t lie = 0; lie < 2; ++lie)
          if (leaf.either[lie] == MarkPlace::absent) leaf.either[lie] = facts.countermark[lie];
      }
      bool const of_one_sheet = schemes[number].sheets == 1;
      GatheringPattern* pattern = nullptr;
      for (auto& one : all)
        if (one.of_one_sheet == of_one_sheet && one.leaves == leaves) pattern = &one;
      if (pattern == nullptr) pattern = &all.emplace_back(GatheringPattern{leaves, of_one_sheet, {}});
      pattern->schemes.push_back(number);
    }
  return all;
}

/// All patterns. Found once a program, on first use.
inline std::vector<GatheringPattern> const& gathering_patterns() {
  static std::vector<GatheringPattern> const patterns = find_gathering_patterns();
  return patterns;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
