// SPDX-License-Identifier: MIT
// A number from a spreadsheet may have a fraction, which a ream has not.
// says: a whole number is wanted: of another its fraction or its meaning would be lost
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
inline ReamCount const ream(500.9, 25.9);
#else
inline ReamCount const ream(500, 25);
#endif
