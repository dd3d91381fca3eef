// SPDX-License-Identifier: MIT
// says: a sheet worked from one forme has no inner forme
#include <bifolium/imposition.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto page = impose<schemes::octavo_half_sheet>().inner(0, 0);
#else
constexpr auto page = impose<schemes::octavo_half_sheet>().outer(0, 0);
#endif
