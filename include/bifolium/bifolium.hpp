// SPDX-License-Identifier: MIT
/// Everything but format.hpp (std::formatter), which is the one header to be asked for by name. Each folder has a header
/// of its own beside this one for those who need less.
#pragma once

#include <bifolium/collation.hpp>
#include <bifolium/collation/extent.hpp>
#include <bifolium/collation/read_pagination.hpp>
#include <bifolium/collation/read_signing.hpp>
#include <bifolium/collation/record_lines.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/version.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/drawing/explain_formula.hpp>
#include <bifolium/drawing/explain_ranking.hpp>
#include <bifolium/drawing/formula_gathering.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/leaf.hpp>
#include <bifolium/paper.hpp>
