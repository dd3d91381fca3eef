// SPDX-License-Identifier: MIT
/// Everything in evidence/: what a leaf shows, and the format, the sheets and the dates it argues for. What serves the
/// searches of fold/ is included by name, as they are: `evidence/seen_gathering.hpp`, `evidence/folding_weights.hpp`.
#pragma once

#include <bifolium/evidence/assumptions.hpp>
#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/inference.hpp>
#include <bifolium/evidence/leaf_facts.hpp>
#include <bifolium/evidence/leaf_origin.hpp>
#include <bifolium/evidence/leaf_shape.hpp>
#include <bifolium/evidence/observation.hpp>
#include <bifolium/evidence/paper_counts.hpp>
#include <bifolium/evidence/paper_dates.hpp>
#include <bifolium/evidence/paper_model.hpp>
#include <bifolium/evidence/parameters.hpp>
#include <bifolium/evidence/period.hpp>
#include <bifolium/evidence/priors.hpp>
#include <bifolium/evidence/ranked_formats.hpp>
#include <bifolium/evidence/read_seen.hpp>
#include <bifolium/evidence/scheme_facts.hpp>
#include <bifolium/evidence/seen.hpp>
#include <bifolium/evidence/signs_against.hpp>
#include <bifolium/evidence/words.hpp>
