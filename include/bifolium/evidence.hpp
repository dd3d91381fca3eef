// SPDX-License-Identifier: MIT
/// Everything in evidence/: what a leaf shows, the format it argues for, and how its size is recorded.
#pragma once

#include <bifolium/evidence/height_scale.hpp>
#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/leaf_origin.hpp>
#include <bifolium/evidence/measure.hpp>
#include <bifolium/evidence/observation.hpp>
#include <bifolium/evidence/period.hpp>
#include <bifolium/evidence/read_seen.hpp>
#include <bifolium/evidence/recording.hpp>
#include <bifolium/evidence/words.hpp>
