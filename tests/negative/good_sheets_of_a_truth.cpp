// SPDX-License-Identifier: MIT
// Whether there are good sheets does not say how many.
// says: a whole number is wanted: the meaning of a bool or a char would be lost
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
inline ReamCount const ream(500LL, 25, true);
#else
inline ReamCount const ream(500LL, 25, 432);
#endif
