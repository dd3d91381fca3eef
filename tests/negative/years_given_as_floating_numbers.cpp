// SPDX-License-Identifier: MIT
// In round brackets, or through emplace, numbers are converted without a word, and these would lose their fractions.
// says: a whole number is wanted: of another its fraction or its meaning would be lost
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline YearRange const years(1490.7, 1500.2);
#else
inline YearRange const years(1490, 1500);
#endif
