// SPDX-License-Identifier: MIT
/// Everything in collation/: formulas read, written and counted, their paper, their leaves.
#pragma once

#include <bifolium/collation/change.hpp>
#include <bifolium/collation/count.hpp>
#include <bifolium/collation/dialect.hpp>
#include <bifolium/collation/formula.hpp>
#include <bifolium/collation/ideal_copy.hpp>
#include <bifolium/collation/leaf_of_book.hpp>
#include <bifolium/collation/paper.hpp>
#include <bifolium/collation/parts.hpp>
#include <bifolium/collation/passage.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/reference.hpp>
#include <bifolium/collation/write_formula.hpp>
