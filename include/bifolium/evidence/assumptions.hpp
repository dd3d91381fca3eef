// SPDX-License-Identifier: MIT
/// What an inference takes for granted: how common formats were, which sheets there were, what evidence is worth. All of
/// it can be seen and replaced; who replaces nothing gets what is said of the years and the place of the leaf.
#pragma once

#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/priors.hpp>
#include <bifolium/paper/sheet_sizes.hpp>

namespace bifolium {
inline namespace v0 {

/// What is taken for granted. Left empty, the priors and the sheets are those of the years and the place seen.
struct Assumptions {
  std::optional<PriorsByPeriod> priors{};                   ///< how common formats were, period by period
  std::optional<SheetSizes> sheet_sizes{};                  ///< at least one
  EvidenceParameters const* parameters{&fitted_parameters}; ///< looked at, not copied
};

} // namespace v0
} // namespace bifolium
