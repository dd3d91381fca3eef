// SPDX-License-Identifier: MIT
// Fields are written in the order in which the type declares them, which the page of members shows (members.md). clang compiles
// another order with a warning.
// says g++: does not match declaration order in
// says clang: ISO C++ requires field designators to be specified in declaration order
// with: -Werror
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const leaf = observe({.year = 1725, .height = 201_mm});
#else
inline auto const leaf = observe({.height = 201_mm, .year = 1725});
#endif
