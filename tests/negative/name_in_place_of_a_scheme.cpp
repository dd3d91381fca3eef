// SPDX-License-Identifier: MIT
// says: a text is not a scheme: write schemes::octavo, *find_scheme(name) or *read_scheme(text)
#include <bifolium/explain.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const words = explain_page("octavo", 3);
#else
inline auto const words = explain_page(schemes::octavo, 3);
#endif
