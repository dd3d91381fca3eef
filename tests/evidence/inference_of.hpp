// SPDX-License-Identifier: MIT
/// The format inferred from evidence that is known to be sound.
#pragma once

#include <bifolium/evidence.hpp>

inline bifolium::Inference of(bifolium::LeafEvidence const& seen) {
  return bifolium::infer_format(*bifolium::observe(seen));
}
