// SPDX-License-Identifier: MIT
// says: the forme has no such row or column
#include <bifolium/imposition.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto page = impose<schemes::octavo>().outer(2, 0);
#else
constexpr auto page = impose<schemes::octavo>().outer(1, 3);
#endif
