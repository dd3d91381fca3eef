// SPDX-License-Identifier: MIT
/// Counting, reading and writing formulas, their paper, their leaves, a copy checked against them. What a record says
/// beside the formula - pagination, extent, signing, the lines of the record - is in headers included by name:
/// collation/read_pagination.hpp, extent.hpp, read_signing.hpp, record_lines.hpp.
#pragma once

#include <bifolium/collation/check_copy.hpp>
#include <bifolium/collation/count.hpp>
#include <bifolium/collation/dialect.hpp>
#include <bifolium/collation/formula.hpp>
#include <bifolium/collation/joints.hpp>
#include <bifolium/collation/leaf_span.hpp>
#include <bifolium/collation/paper.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/reference.hpp>
#include <bifolium/collation/walk.hpp>
#include <bifolium/collation/write_formula.hpp>
