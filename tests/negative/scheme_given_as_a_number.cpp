// SPDX-License-Identifier: MIT
// says: a scheme is not made of a text or a number: write schemes::octavo or
#include <bifolium/edition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline Edition const edition{.scheme = 8, .pages = 160, .copies = 500};
#else
inline Edition const edition{.scheme = schemes::octavo, .pages = 160, .copies = 500};
#endif
