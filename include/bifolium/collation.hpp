// SPDX-License-Identifier: MIT
/// Everything in collation/: formulas read, written and counted.
#pragma once

#include <bifolium/collation/count.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/write_formula.hpp>
