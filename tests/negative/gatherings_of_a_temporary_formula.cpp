// SPDX-License-Identifier: MIT
// A view would outlive the ideal copy.
// says g++: use of deleted function
// says clang: call to deleted member function 'gatherings'
#include <bifolium/collation.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto walk() { return IdealCopy{*read_formula("A–C⁸")}.gatherings(); }
#else
inline auto walk(IdealCopy const& book) { return book.gatherings(); }
#endif
