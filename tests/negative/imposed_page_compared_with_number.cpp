// SPDX-License-Identifier: MIT
// A page in a forme has a head: it is not its number.
// says g++: no match for 'operator=='
// says clang: invalid operands to binary expression
#include <bifolium/imposition.hpp>
using namespace bifolium;
#ifdef MISUSE
static_assert(impose<schemes::octavo>().outer(0, 0) == 8);
#else
static_assert(impose<schemes::octavo>().outer(0, 0) == head_down(8));
#endif
