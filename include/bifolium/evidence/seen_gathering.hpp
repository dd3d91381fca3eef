// SPDX-License-Identifier: MIT
/// Converts the evidence of the leaves of one gathering to the input of `foldings_showing`. It leads from the fields of
/// a record to every folding that agrees with them, whether or not the folding is of a known format.
#pragma once

#include <bifolium/evidence/seen.hpp>
#include <bifolium/fold/seen_leaf.hpp>

namespace bifolium {
inline namespace v0 {

/// Returns the mark as a part of the leaf, or no value if nobody looked for it.
constexpr std::optional<SeenMark> seen_mark(MarkPlace place) noexcept {
  switch (place) {
  case MarkPlace::unknown:
    return std::nullopt;
  case MarkPlace::centre:
    return seen_marks::centre;
  case MarkPlace::gutter:
    return seen_marks::gutter;
  case MarkPlace::head_of_gutter:
    return seen_marks::head_of_gutter;
  case MarkPlace::fore_edge:
    return seen_marks::fore_edge;
  case MarkPlace::head_or_tail_edge:
    return seen_marks::head_or_tail_edge;
  case MarkPlace::corner:
    return seen_marks::somewhere; // in one of the corners
  case MarkPlace::absent:
    return seen_marks::absent;
  }
  return std::nullopt;
}

/// Returns the leaves of one gathering, or no value if no single leaf was examined or the size of the gathering is
/// unknown. Chain lines that were recorded for the whole book are used for each examined leaf. The function allocates
/// memory.
inline std::optional<SeenGathering> seen_gathering(LeafEvidence const& seen) {
  SeenGathering gathering;
  gathering.leaves = seen.gathering_leaves.value_or(0);
  for (auto const& one : seen.leaves) {
    if (one.leaf == 0) break;
    SeenLeaf leaf;
    leaf.leaf = one.leaf;
    leaf.watermark = seen_mark(one.mark);
    auto const lines = one.chain_lines == ChainLines::unknown ? seen.chain_lines : one.chain_lines;
    if (lines == ChainLines::vertical || lines == ChainLines::horizontal) leaf.chain_lines = lines;
    gathering.seen.push_back(leaf);
  }
  if (gathering.leaves == 0 || gathering.seen.empty()) return std::nullopt;
  return gathering;
}

} // namespace v0
} // namespace bifolium
