// SPDX-License-Identifier: MIT
/// Everything in collation/: counting, reading and writing formulas, their paper, their leaves.
#pragma once

#include <bifolium/collation/check_copy.hpp>
#include <bifolium/collation/count.hpp>
#include <bifolium/collation/dialect.hpp>
#include <bifolium/collation/extent.hpp>
#include <bifolium/collation/formula.hpp>
#include <bifolium/collation/joints.hpp>
#include <bifolium/collation/leaf_span.hpp>
#include <bifolium/collation/pagination.hpp>
#include <bifolium/collation/paper.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/read_pagination.hpp>
#include <bifolium/collation/read_signing.hpp>
#include <bifolium/collation/record_lines.hpp>
#include <bifolium/collation/reference.hpp>
#include <bifolium/collation/signing.hpp>
#include <bifolium/collation/walk.hpp>
#include <bifolium/collation/write_formula.hpp>
