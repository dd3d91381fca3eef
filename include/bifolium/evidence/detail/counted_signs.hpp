// SPDX-License-Identifier: MIT
/// Which of the things seen count as evidence, and each once: vellum has neither chain lines nor marks, and what was seen
/// over a gathering is not counted again for the one leaf.
#pragma once

#include <bifolium/evidence/detail/leaves_likelihood.hpp>
#include <bifolium/evidence/inference.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class CountedSigns {
  LeafEvidence const& seen_;
  bool of_paper_, leaves_show_marks_{}, leaves_show_chains_{};
  std::array<bool, sign_count> has_{};

public:
  /// Looks at what was seen, and keeps looking: it must outlive the signs.
  explicit CountedSigns(LeafEvidence const& seen) : seen_{seen}, of_paper_{seen.material != Material::vellum} {
    for (auto const& one : seen.leaves) {
      if (one.leaf == 0 || !of_paper_) break;
      leaves_show_marks_ = leaves_show_marks_ || one.mark != MarkPlace::unknown;
      leaves_show_chains_ = leaves_show_chains_ || one.chain_lines != ChainLines::unknown;
    }
    auto const count = [&](EvidenceKind sign, bool counts) { has_[static_cast<std::size_t>(sign)] = counts; };
    count(EvidenceKind::size, seen.height.has_value() || seen.width.has_value());
    count(EvidenceKind::chain_lines, chains() != ChainLines::unknown);
    count(EvidenceKind::watermark, mark() != MarkPlace::unknown || countermark() != MarkPlace::unknown);
    count(EvidenceKind::gathering, seen.gathering_leaves.has_value());
    count(EvidenceKind::type_page, seen.type_height.has_value());
    for (auto const edge : {seen.head, seen.tail, seen.fore_edge})
      if (edge != EdgeSeen::unknown) count(EvidenceKind::edges, true);
    count(EvidenceKind::point_hole, seen.point_hole != HolePlace::unknown);
    count(EvidenceKind::leaves, leaves_show_marks_ || leaves_show_chains_);
  }

  [[nodiscard]] LeafEvidence const& seen() const { return seen_; }
  /// Whether the material can have chain lines and marks at all.
  [[nodiscard]] bool of_paper() const { return of_paper_; }
  /// Whether several leaves of a gathering were looked at for marks, for chain lines.
  [[nodiscard]] bool leaves_show_marks() const { return leaves_show_marks_; }
  [[nodiscard]] bool leaves_show_chains() const { return leaves_show_chains_; }
  [[nodiscard]] ChainLines chains() const {
    return of_paper_ && !leaves_show_chains_ ? seen_.chain_lines : ChainLines::unknown;
  }
  [[nodiscard]] MarkPlace mark() const {
    return of_paper_ && !leaves_show_marks_ ? seen_.watermark : MarkPlace::unknown;
  }
  [[nodiscard]] MarkPlace countermark() const {
    return of_paper_ && !leaves_show_marks_ ? seen_.countermark : MarkPlace::unknown;
  }
  /// Whether it may still be worth looking for a mark.
  [[nodiscard]] bool mark_open() const {
    return of_paper_ && !has(EvidenceKind::watermark) && !has(EvidenceKind::leaves);
  }
  [[nodiscard]] bool has(EvidenceKind sign) const { return has_[static_cast<std::size_t>(sign)]; }

  /// What the signs would give if the leaf were none of the kinds known: see `ChanceOfSigns`. The chain lines as they are
  /// read.
  [[nodiscard]] double by_chance(ChainLines chain_lines, EvidenceParameters const& parameters) const {
    auto const& chance = parameters.chance;
    double likelihood = 1;
    if (seen_.height && seen_.width) likelihood *= chance.size;
    if (seen_.height.has_value() != seen_.width.has_value()) likelihood *= chance.one_side;
    if (chain_lines == ChainLines::vertical || chain_lines == ChainLines::horizontal) likelihood *= chance.chain_lines;
    for (auto place : {mark(), countermark()})
      if (place != MarkPlace::unknown) likelihood *= chance.mark(place != MarkPlace::absent);
    if (has(EvidenceKind::gathering)) likelihood *= chance.gathering;
    if (has(EvidenceKind::type_page)) likelihood *= chance.type_page;
    for (auto edge : {seen_.head, seen_.tail, seen_.fore_edge})
      if (edge != EdgeSeen::unknown) likelihood *= chance.edge;
    if (has(EvidenceKind::point_hole)) likelihood *= chance.point_hole;
    if (has(EvidenceKind::leaves)) likelihood *= LeavesLikelihood{seen_.leaves, parameters}.by_chance();
    return likelihood;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
