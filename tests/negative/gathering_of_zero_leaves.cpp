// SPDX-License-Identifier: MIT
// says: a gathering has from 1 to 4096 leaves
#include <bifolium/leaf.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Gathering gathering{0};
#else
constexpr Gathering gathering{2};
#endif
