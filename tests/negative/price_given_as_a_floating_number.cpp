// SPDX-License-Identifier: MIT
// 12.5 shillings are 150 pence; a field of whole numbers would keep 12.
// says: a whole number is wanted, as a fraction would be lost: round it, or take a smaller unit
#include <bifolium/edition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline Edition const edition{.pages = 160, .copies = 500, .price_of_ream = 12.5};
#else
inline Edition const edition{.pages = 160, .copies = 500, .price_of_ream = 150};
#endif
