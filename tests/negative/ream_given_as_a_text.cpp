// SPDX-License-Identifier: MIT
// says: a text is not a count of the ream: write reams::of_500, or ReamCount{500, 25}
#include <bifolium/edition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const bill = reckon({.pages = 160, .copies = 500, .ream = "500"});
#else
inline auto const bill = reckon({.pages = 160, .copies = 500, .ream = reams::of_500});
#endif
