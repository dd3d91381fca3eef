// SPDX-License-Identifier: MIT
/// Everything in evidence/: what a leaf shows, and the format it argues for.
#pragma once

#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/observation.hpp>
#include <bifolium/evidence/read_seen.hpp>
#include <bifolium/evidence/words.hpp>
