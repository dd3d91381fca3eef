// SPDX-License-Identifier: MIT
// says g++: no matching function for call to 'impose<8>()'
// says clang: no matching function for call to 'impose'
#include <bifolium/imposition.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto const& formes = impose<8>();
#else
constexpr auto const& formes = impose<schemes::octavo>();
#endif
