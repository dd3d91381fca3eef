// SPDX-License-Identifier: MIT
// The pages in the formes do not say how the sheet is folded.
// says: an imposition does not keep its scheme: pass the scheme itself, as in forme_svg(schemes::octavo)
#include <bifolium/drawing.hpp>
#include <bifolium/imposition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const picture = forme_svg(impose<schemes::octavo>());
#else
inline auto const picture = forme_svg(schemes::octavo);
#endif
