// SPDX-License-Identifier: MIT
/// Counts the leaves of each part of a formula. It is done when everything is read, since changes may be far from the
/// gatherings that they change.
#pragma once

#include <bifolium/collation/formula.hpp>
#include <bifolium/core/partition_point.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Counts the leaves of the parts, of which there is at least one. `formula` has their runs and changes.
inline void count_leaves_of_parts(std::vector<FormulaPart>& parts, Formula const& formula) {
  if (parts.size() == 1) {
    parts[0].leaves = formula.leaves();
    return;
  }
  for (auto& part : parts)
    for (auto r = part.first_run; r < part.end_run; ++r) part.leaves += formula.runs()[r].leaf_total();
  for (auto const& change : formula.changes()) {
    auto const* const deletion = change.deletion();
    auto const* const insertion = change.insertion();
    if (deletion == nullptr && insertion == nullptr) continue;
    auto const run = change.gathering().run;
    auto& part = parts[partition_point(parts.size(), [&](std::size_t i) { return parts[i].first_run <= run; }) - 1];
    if (insertion != nullptr)
      part.leaves += insertion->leaves;
    else
      part.leaves -= deletion->leaves.count(formula.leaves_folded(deletion->gathering));
  }
}

} // namespace detail
} // namespace v0
} // namespace bifolium
