// SPDX-License-Identifier: MIT
// says: a scheme is not made of a text or a number: write schemes::octavo or
#include <bifolium/explain.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const formes = forme_text("octavo");
#else
inline auto const formes = forme_text(schemes::octavo);
#endif
