// SPDX-License-Identifier: MIT
/// What somebody saw of a leaf. Every field may be left out; "not looked at" and "not there" are different answers. What
/// cannot be (a height of nothing) is an error; what is odd but real (chain lines on wove paper: the first wove book has
/// both; a leaf three times as high as broad) is a warning beside the value.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/evidence/seen.hpp>
#include <bifolium/paper/measure.hpp>

namespace bifolium {
inline namespace v0 {

/// Something seen that can be. Made by `observe` alone.
class Observation {
  LeafEvidence seen_;
  std::array<Problem, 3> warnings_{};
  std::uint8_t warning_count_{};

  constexpr explicit Observation(LeafEvidence const& seen) : seen_{seen} {}
  constexpr void warn(Problem problem) { warnings_[warning_count_++] = problem; }
  friend constexpr Expected<Observation> observe(LeafEvidence const& seen);

public:
  /// What was seen, as given.
  [[nodiscard]] constexpr LeafEvidence const& seen() const noexcept { return seen_; }
  /// How many doubts there are: odd things that are met, such as chain lines on wove paper.
  [[nodiscard]] constexpr int warnings() const noexcept { return warning_count_; }
  /// The doubt of a number. pre: 0 <= i < warnings().
  [[nodiscard]] constexpr Problem warning(int i) const {
    if (i < 0 || i >= warning_count_) broken("there is no warning of that number");
    return warnings_[static_cast<std::size_t>(i)];
  }
};

/// Checks what was seen. error: impossible_measure, impossible_years, impossible_gathering; of leaves seen,
/// gathering_size_needed, leaf_outside_gathering, leaf_seen_twice.
constexpr Expected<Observation> observe(LeafEvidence const& seen) {
  if (!is_measure(seen.height)) return error_in_field(Problem::impossible_measure, "height");
  if (!is_measure(seen.width)) return error_in_field(Problem::impossible_measure, "width");
  if (!is_measure(seen.type_height)) return error_in_field(Problem::impossible_measure, "type_height");
  constexpr int most_year = 9999;
  if (seen.year && (seen.year->from > seen.year->to || seen.year->from < -most_year || seen.year->to > most_year))
    return error_in_field(Problem::impossible_years, "year");
  if (seen.gathering_leaves && (*seen.gathering_leaves < 1 || *seen.gathering_leaves > most_leaves_in_gathering))
    return error_in_field(Problem::impossible_gathering, "gathering_leaves", *seen.gathering_leaves);
  if (seen.alternating_with && (*seen.alternating_with < 1 || *seen.alternating_with > most_leaves_in_gathering))
    return error_in_field(Problem::impossible_gathering, "alternating_with", *seen.alternating_with);
  for (std::size_t i = 0; i < seen.leaves.size() && seen.leaves[i].leaf != 0; ++i) {
    auto const leaf = seen.leaves[i].leaf;
    if (!seen.gathering_leaves) return error_in_field(Problem::gathering_size_needed, "gathering_leaves");
    if (leaf < 1 || leaf > *seen.gathering_leaves)
      return error_in_field(Problem::leaf_outside_gathering, "leaves", *seen.gathering_leaves);
    for (std::size_t k = 0; k < i; ++k)
      if (seen.leaves[k].leaf == leaf) return error_in_field(Problem::leaf_seen_twice, "leaves", leaf);
  }
  Observation observation{seen};
  bool const chains = seen.chain_lines != ChainLines::unknown;
  bool const marks = seen.watermark != MarkPlace::unknown && seen.watermark != MarkPlace::absent;
  if (seen.material == Material::wove && chains) observation.warn(Problem::chain_lines_on_wove);
  if (seen.height && seen.width && seen.height->count() >= 3 * seen.width->count())
    observation.warn(Problem::very_narrow_leaf);
  if (seen.material == Material::vellum && (marks || chains)) observation.warn(Problem::marks_in_vellum);
  return observation;
}

} // namespace v0
} // namespace bifolium
