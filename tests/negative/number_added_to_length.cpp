// SPDX-License-Identifier: MIT
// A bare number has no unit.
// says g++: no match for 'operator+'
// says clang: invalid operands to binary expression
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto height = 187_mm + 5;
#else
constexpr auto height = 187_mm + 5_mm;
#endif
