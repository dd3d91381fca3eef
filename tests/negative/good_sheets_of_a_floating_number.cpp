// SPDX-License-Identifier: MIT
// The good sheets of a ream are counted as its sheets are: a number from a spreadsheet may have a fraction.
// says: a whole number is wanted, as a fraction would be lost
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
inline ReamCount const ream(500, 25, 432.9);
#else
inline ReamCount const ream(500, 25, 432);
#endif
