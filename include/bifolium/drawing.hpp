// SPDX-License-Identifier: MIT
/// Formes, sheets and gatherings as text and SVG, and their facts in words. What draws or explains a formula
/// (drawing/formula_gathering.hpp, drawing/explain_formula.hpp) or a ranking (drawing/explain_ranking.hpp) is included by
/// name, as it needs all of collation/ or evidence/.
#pragma once

#include <bifolium/drawing/book_svg.hpp>
#include <bifolium/drawing/cancel_sheet.hpp>
#include <bifolium/drawing/explain.hpp>
#include <bifolium/drawing/foldable.hpp>
#include <bifolium/drawing/forme_svg.hpp>
#include <bifolium/drawing/forme_text.hpp>
#include <bifolium/drawing/gathering_svg.hpp>
#include <bifolium/drawing/misread.hpp>
#include <bifolium/drawing/sheet_svg.hpp>
