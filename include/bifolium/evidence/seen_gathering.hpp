// SPDX-License-Identifier: MIT
/// What was seen of the leaves of one gathering, as `foldings_showing` asks for it: the way from the fields of a record to
/// every folding that shows them, whether or not the folding is of a known format.
#pragma once

#include <bifolium/evidence/seen.hpp>
#include <bifolium/fold/seen_leaf.hpp>

namespace bifolium {
inline namespace v0 {

/// The mark as a part of the leaf; none where it was not looked for.
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
    return seen_marks::somewhere; // any of the corners
  case MarkPlace::absent:
    return seen_marks::absent;
  }
  return std::nullopt;
}

/// The leaves of one gathering in `seen`; none where no leaf was looked at by itself, or where it is not told how many
/// leaves the gathering has. Chain lines told for the whole book are taken for those of each leaf that was looked at.
/// Allocates.
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
