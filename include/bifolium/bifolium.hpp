// SPDX-License-Identifier: MIT
/// The headers of all folders. What a folder's header leaves to be included by name is so here too, for it costs a compiler
/// a quarter more: what a record says beside the formula (collation/extent.hpp, read_pagination.hpp, read_signing.hpp,
/// record_lines.hpp), what draws or explains a formula or a ranking (drawing/formula_gathering.hpp, explain_formula.hpp,
/// explain_ranking.hpp), and std::formatter (format.hpp). Who needs one folder includes that: it costs half or less.
#pragma once

#include <bifolium/collation.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/core/version.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/evidence.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/leaf.hpp>
#include <bifolium/paper.hpp>
