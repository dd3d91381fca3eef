// SPDX-License-Identifier: MIT
/// Which of the things seen count as evidence, and each once: vellum has neither chain lines nor marks, and what was seen
/// over a gathering is not counted again for the one leaf.
#pragma once

#include <bifolium/evidence/inference.hpp>
#include <bifolium/evidence/leaves_likelihood.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class CountedSigns {
  Seen const& seen_;

  [[nodiscard]] bool any_leaf(bool marks) const {
    for (auto const& one : seen_.leaves)
      if (one.leaf != 0 && (marks ? one.mark != MarkPlace::unknown : one.chain_lines != ChainLines::unknown))
        return true;
    return false;
  }

public:
  explicit CountedSigns(Seen const& seen) : seen_{seen} {}

  [[nodiscard]] Seen const& seen() const { return seen_; }
  /// Whether the material can have chain lines and marks at all.
  [[nodiscard]] bool of_paper() const { return seen_.material != Material::vellum; }
  /// Whether several leaves of a gathering were looked at for marks, for chain lines.
  [[nodiscard]] bool leaves_show_marks() const { return of_paper() && any_leaf(true); }
  [[nodiscard]] bool leaves_show_chains() const { return of_paper() && any_leaf(false); }
  [[nodiscard]] ChainLines chains() const {
    return of_paper() && !any_leaf(false) ? seen_.chain_lines : ChainLines::unknown;
  }
  [[nodiscard]] MarkPlace mark() const { return of_paper() && !any_leaf(true) ? seen_.watermark : MarkPlace::unknown; }
  [[nodiscard]] MarkPlace countermark() const {
    return of_paper() && !any_leaf(true) ? seen_.countermark : MarkPlace::unknown;
  }
  [[nodiscard]] bool has(Sign sign) const {
    switch (sign) {
    case Sign::size:
      return seen_.height.has_value() || seen_.width.has_value();
    case Sign::chain_lines:
      return chains() != ChainLines::unknown;
    case Sign::watermark:
      return mark() != MarkPlace::unknown || countermark() != MarkPlace::unknown;
    case Sign::gathering:
      return seen_.gathering_leaves.has_value();
    case Sign::type_page:
      return seen_.type_height.has_value();
    case Sign::edges:
      return seen_.head != EdgeSeen::unknown || seen_.tail != EdgeSeen::unknown || seen_.fore_edge != EdgeSeen::unknown;
    case Sign::point_hole:
      return seen_.point_hole != HolePlace::unknown;
    case Sign::leaves:
      return leaves_show_marks() || leaves_show_chains();
    }
    return false;
  }

  /// What the signs would give if the leaf were none of these: sizes spread evenly over what leaves there are, and each
  /// other sign as it comes (proposed, as no leaf of no sheet was ever measured). The chain lines as they are read.
  [[nodiscard]] double by_chance(ChainLines chain_lines) const {
    constexpr double size = 0.38; // one in 2.9 of logarithm of height times 0.9 of ratio
    double likelihood = 1;
    if (seen_.height && seen_.width) likelihood *= size;
    if (seen_.height.has_value() != seen_.width.has_value()) likelihood *= 0.35;
    if (chain_lines == ChainLines::vertical || chain_lines == ChainLines::horizontal) likelihood *= 0.5;
    for (auto place : {mark(), countermark()})
      if (place != MarkPlace::unknown) likelihood *= place == MarkPlace::absent ? 0.5 : 0.1;
    if (has(Sign::gathering)) likelihood *= 0.1;
    if (has(Sign::type_page)) likelihood *= 0.3;
    for (auto edge : {seen_.head, seen_.tail, seen_.fore_edge})
      if (edge != EdgeSeen::unknown) likelihood *= 0.3;
    if (has(Sign::point_hole)) likelihood *= 0.2;
    if (has(Sign::leaves)) likelihood *= LeavesLikelihood{seen_.leaves, 0}.by_chance();
    return likelihood;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
