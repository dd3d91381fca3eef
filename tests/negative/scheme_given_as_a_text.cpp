// SPDX-License-Identifier: MIT
// A name that is known only when the program runs is looked up by find_scheme.
// says: a scheme is not made of a text or a number: write schemes::octavo or
#include <bifolium/edition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline Edition const edition{.scheme = "octavo", .pages = 160, .copies = 500};
#else
inline Edition const edition{.scheme = schemes::octavo, .pages = 160, .copies = 500};
#endif
