// SPDX-License-Identifier: MIT
// The same of a plain number.
// says g++: no matching function for call to
// says clang: no matching function for call to 'reckon'
#include <bifolium/edition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const bill = reckon({.pages = 160, .copies = "500"});
#else
inline auto const bill = reckon({.pages = 160, .copies = 500});
#endif
