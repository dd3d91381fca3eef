// SPDX-License-Identifier: MIT
/// Everything in copy/ except `copy/paper_of_copy.hpp`, which brings the search for foldings: a copy compared with the ideal
/// copy that the formula describes, and what its joints show. With it comes the reader of formulas, of which an ideal copy is
/// made.
#pragma once

#include <bifolium/collation/read_formula.hpp>
#include <bifolium/copy/check_copy.hpp>
#include <bifolium/copy/copy_words.hpp>
#include <bifolium/copy/joints.hpp>
#include <bifolium/copy/leaf_in_copy.hpp>
#include <bifolium/copy/leaf_span.hpp>
#include <bifolium/copy/read_leaves_present.hpp>
