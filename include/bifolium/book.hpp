// SPDX-License-Identifier: MIT
/// Everything in book/: a description of a book as values, read from the texts of its fields, and checked
/// against itself; the sheets on which a book was printed.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/audit_weights.hpp>
#include <bifolium/book/cataloguing_rules.hpp>
#include <bifolium/book/description.hpp>
#include <bifolium/book/evidence_of.hpp>
#include <bifolium/book/examine.hpp>
#include <bifolium/book/field.hpp>
#include <bifolium/book/field_texts.hpp>
#include <bifolium/book/formula_plan.hpp>
#include <bifolium/book/read_description.hpp>
#include <bifolium/book/sheet_grouping.hpp>
#include <bifolium/book/sheets_of_book.hpp>
#include <bifolium/book/weight_counts.hpp>
