// SPDX-License-Identifier: MIT
/// Everything in drawing/: formes, sheets, steps, gatherings and misread books as SVG, and pages to print as HTML.
#pragma once

#include <bifolium/drawing/book_svg.hpp>
#include <bifolium/drawing/cancel_sheet.hpp>
#include <bifolium/drawing/class_page.hpp>
#include <bifolium/drawing/drawn_gathering.hpp>
#include <bifolium/drawing/foldable.hpp>
#include <bifolium/drawing/forme_svg.hpp>
#include <bifolium/drawing/formula_gathering.hpp>
#include <bifolium/drawing/gathering_svg.hpp>
#include <bifolium/drawing/printable.hpp>
#include <bifolium/drawing/sheet_svg.hpp>
#include <bifolium/drawing/steps_svg.hpp>
#include <bifolium/drawing/svg.hpp>
