// SPDX-License-Identifier: MIT
// A view would outlive the formula.
// says g++: use of deleted function
// says clang: call to deleted function
#include <bifolium/collation.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto walk() { return gatherings(*read_formula("A–C⁸")); }
#else
inline auto walk(Formula const& formula) { return gatherings(formula); }
#endif
