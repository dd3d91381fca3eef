// SPDX-License-Identifier: MIT
/// Computes how common each attested scheme was, for `foldings_showing`, which sorts the remaining foldings by it. The
/// library's model says how common the formats were at the place and in the years, on which paper, and in which
/// gatherings. Within a format the schemes count as equally common.
#pragma once

#include <bifolium/evidence/infer.hpp>
#include <bifolium/fold/folding_weights.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Returns the schemes of one kind of leaf that have gatherings as in the evidence, or all of them if none has, or if
/// the evidence does not say.
inline std::vector<int> schemes_gathering(LeafShape const& shape, LeafEvidence const& seen) {
  std::vector<int> gathering;
  for (auto const number : shape.schemes) {
    auto const& facts = scheme_facts()[static_cast<std::size_t>(number)];
    if (!seen.gathering_leaves) continue;
    if (!facts.gathers(*seen.gathering_leaves)) continue;
    if (!seen.alternating_with || facts.gathers(*seen.alternating_with)) gathering.push_back(number);
  }
  if (gathering.empty()) gathering.assign(shape.schemes.begin(), shape.schemes.end());
  return gathering;
}

} // namespace detail

/// Returns how common the schemes of the table are for a book of this size, year, place, type page and gathering.
/// Marks, chain lines, edges and point-holes of `observation` are left out: `foldings_showing` compares them itself,
/// and they would count twice. Without evidence the weights are those of all years. The function allocates memory.
/// Precondition: as for `infer_format`.
inline FoldingWeights folding_weights(Observation const& observation, Assumptions const& assumed = {}) {
  auto seen = observation.seen();
  seen.leaves = {};
  seen.chain_lines = {}, seen.watermark = {}, seen.countermark = {}, seen.point_hole = {};
  seen.head = seen.tail = seen.fore_edge = {};
  FoldingWeights weights;
  for (auto const& candidate : infer_format(*observe(seen), assumed)) {
    double shares = 0;
    for (auto const& shape : leaf_shapes())
      if (shape.format == candidate.format) shares += shape.share;
    for (auto const& shape : leaf_shapes()) {
      if (shape.format != candidate.format) continue;
      auto const schemes = detail::schemes_gathering(shape, seen);
      for (auto const number : schemes)
        weights.of(scheme_facts()[static_cast<std::size_t>(number)].scheme) +=
            candidate.probability * shape.share / shares / static_cast<double>(schemes.size());
    }
  }
  return weights;
}

} // namespace v0
} // namespace bifolium
