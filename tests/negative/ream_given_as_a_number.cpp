// SPDX-License-Identifier: MIT
// says: a ream has no fixed number of sheets: write reams::of_500, or ReamCount{500, 25}
#include <bifolium/edition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline Edition const edition{.pages = 160, .copies = 500, .ream = 500};
#else
inline Edition const edition{.pages = 160, .copies = 500, .ream = reams::of_500};
#endif
