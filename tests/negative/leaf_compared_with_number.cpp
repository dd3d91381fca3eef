// SPDX-License-Identifier: MIT
// says g++: no match for 'operator=='
// says clang: invalid operands to binary expression
#include <bifolium/leaf.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr bool first = Gathering<8>{}.leaf(1) == 1;
#else
constexpr bool first = Gathering<8>{}.leaf(1).number() == 1;
#endif
