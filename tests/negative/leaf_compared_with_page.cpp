// SPDX-License-Identifier: MIT
// A leaf has two pages.
// says g++: no match for 'operator=='
// says clang: invalid operands to binary expression
#include <bifolium/leaf.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr bool same = Leaf<8>{1} == Leaf<8>{1}.recto();
#else
constexpr bool same = Leaf<8>{1} == Leaf<8>{1}.recto().leaf();
#endif
