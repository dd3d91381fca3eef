// SPDX-License-Identifier: MIT
// An answer or an error: one of the two must be looked at.
// says g++: ignoring returned value of type
// says clang: ignoring return value of
// with: -Werror
#include <bifolium/fold.hpp>
using namespace bifolium;
#ifdef MISUSE
inline void f() { read_format("8°"); }
#else
inline bool f() { return read_format("8°").has_value(); }
#endif
