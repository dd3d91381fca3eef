// SPDX-License-Identifier: MIT
// That there are good sheets is no number of them.
// says: a whole number is wanted: the meaning of a bool or a char would be lost
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
inline ReamCount const ream(500LL, 25, true);
#else
inline ReamCount const ream(500LL, 25, 432);
#endif
