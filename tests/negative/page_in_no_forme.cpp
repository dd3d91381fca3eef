// SPDX-License-Identifier: MIT
// says: none of these formes has this page
#include <bifolium/imposition.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto place = impose<schemes::octavo>().place(17);
#else
constexpr auto place = impose<schemes::octavo>().place(16);
#endif
