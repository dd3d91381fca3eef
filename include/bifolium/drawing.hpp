// SPDX-License-Identifier: MIT
/// Everything in drawing/: formes, sheets, gatherings and misread books as SVG.
#pragma once

#include <bifolium/drawing/book_svg.hpp>
#include <bifolium/drawing/cancel_sheet.hpp>
#include <bifolium/drawing/foldable.hpp>
#include <bifolium/drawing/forme_svg.hpp>
#include <bifolium/drawing/formula_gathering.hpp>
#include <bifolium/drawing/gathering_svg.hpp>
#include <bifolium/drawing/sheet_svg.hpp>
#include <bifolium/drawing/svg.hpp>
