// SPDX-License-Identifier: MIT
// A year from a spreadsheet or from JSON may be a floating-point number; its fraction would be lost without a word.
// says: a year is a whole number: write 1725, or YearRange{1720, 1729}
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const leaf = observe({.height = 201_mm, .year = 1725.5});
#else
inline auto const leaf = observe({.height = 201_mm, .year = 1725});
#endif
