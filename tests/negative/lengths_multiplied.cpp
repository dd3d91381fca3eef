// SPDX-License-Identifier: MIT
// An area is not a length.
// says g++: no match for 'operator*'
// says clang: invalid operands to binary expression
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto area = 187_mm * 114_mm;
#else
constexpr auto twice = 187_mm * 2;
#endif
