// SPDX-License-Identifier: MIT
/// What an inference takes for granted, and what a caller may know better: how common formats were, which paper a shop had,
/// which paper formats were printed on, what evidence is worth. All of it can be seen and replaced, and the answer names what
/// was.
#pragma once

#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/priors.hpp>

#include <span>

namespace bifolium {
inline namespace v0 {

/// A stock of paper that the caller has measured, or a sheet he believes in.
struct PaperStock {
  char const* name{""};                 ///< as the answer names it
  Sheet<millimetres> sheet{1_mm, 1_mm}; ///< whole, uncut
  double share{}; ///< of books of any format, how many are on it: 0 to 1, all stocks together at most 1
};

/// What is taken for granted. Left empty, all of it is what the fitted model has of the years and the place seen.
struct Assumptions {
  std::optional<Priors> priors{};       ///< how common formats were, whatever the years and the place
  std::span<PaperStock const> stocks{}; ///< looked at, not copied; the populations share what is left
  PaperModel const* model{};            ///< looked at, not copied; missing: `fitted_paper_model`
  EvidenceParameters const* parameters{&usual_parameters}; ///< looked at, not copied
};

} // namespace v0
} // namespace bifolium
