// SPDX-License-Identifier: MIT
// Two sizes that alternate are not a decimal: 8.4 would be a gathering of eight leaves.
// says: a whole number is wanted: of another its fraction or its meaning would be lost
#include <bifolium/collation.hpp>
using namespace bifolium;
#ifdef MISUSE
inline Cycle const leaves(8.4);
#else
inline Cycle const leaves(8);
#endif
