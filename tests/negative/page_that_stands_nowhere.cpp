// SPDX-License-Identifier: MIT
// says: that page stands in no forme of these sheets
#include <bifolium/imposition.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto place = impose<schemes::octavo>().place(17);
#else
constexpr auto place = impose<schemes::octavo>().place(16);
#endif
