// SPDX-License-Identifier: MIT
// says: the gathering has no leaf with this number
#include <bifolium/leaf.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto leaf = Gathering<8>{}.leaf(9);
#else
constexpr auto leaf = Gathering<8>{}.leaf(8);
#endif
