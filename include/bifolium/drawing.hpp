// SPDX-License-Identifier: MIT
/// Everything in drawing/: formes, sheets and gatherings as text and SVG, and their facts in words.
#pragma once

#include <bifolium/drawing/book_svg.hpp>
#include <bifolium/drawing/cancel_sheet.hpp>
#include <bifolium/drawing/explain.hpp>
#include <bifolium/drawing/explain_formula.hpp>
#include <bifolium/drawing/explain_ranking.hpp>
#include <bifolium/drawing/foldable.hpp>
#include <bifolium/drawing/forme_svg.hpp>
#include <bifolium/drawing/forme_text.hpp>
#include <bifolium/drawing/formula_gathering.hpp>
#include <bifolium/drawing/gathering_svg.hpp>
#include <bifolium/drawing/misread.hpp>
#include <bifolium/drawing/sheet_svg.hpp>
