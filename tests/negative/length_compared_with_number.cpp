// SPDX-License-Identifier: MIT
// says g++: no match for 'operator=='
// says clang: invalid operands to binary expression
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr bool tall = 187_mm == 187;
#else
constexpr bool tall = 187_mm == 18.7_cm;
#endif
