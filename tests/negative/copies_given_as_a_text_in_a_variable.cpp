// SPDX-License-Identifier: MIT
// Here the compiler names the value.
// says g++: invalid conversion from
// says clang: cannot initialize a member subobject of type
#include <bifolium/edition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline Edition const edition{.pages = 160, .copies = "500"};
#else
inline Edition const edition{.pages = 160, .copies = 500};
#endif
