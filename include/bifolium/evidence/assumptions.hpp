// SPDX-License-Identifier: MIT
/// The assumptions of an inference that a caller can replace: how common formats were, which paper a shop had, on which
/// paper formats were printed, and the weight of evidence. The answer says which assumptions came from the caller.
#pragma once

#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/priors.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {

/// A stock of paper that the caller has measured or assumes.
struct PaperStock {
  char const* name{""};                 ///< its name in the answer
  Sheet<millimetres> sheet{1_mm, 1_mm}; ///< the whole, uncut sheet
  double share{};                       ///< share of all books that are on it, 0 to 1; all stocks together at most 1
};

/// The assumptions of an inference. Empty fields are taken from the fitted model for the year and the place.
struct Assumptions {
  std::optional<Priors> priors{};       ///< how common formats were, for all years and places
  std::span<PaperStock const> stocks{}; ///< a view, not a copy; the populations of the model share the rest
  PaperModel const* model{};            ///< a view, not a copy; `fitted_paper_model` if null
  EvidenceParameters const* parameters{&usual_parameters}; ///< a view, not a copy
};

} // namespace v0
} // namespace bifolium
