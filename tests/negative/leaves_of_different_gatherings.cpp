// SPDX-License-Identifier: MIT
// says g++: no match for 'operator=='
// says clang: invalid operands to binary expression ('Leaf<8>' and 'Leaf<4>')
#include <bifolium/leaf.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr bool same = Leaf<8>{1} == Leaf<4>{1};
#else
constexpr bool same = Leaf<8>{1} == Leaf<8>{1};
#endif
