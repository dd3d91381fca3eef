// SPDX-License-Identifier: MIT
// A date that was typed in is read by read_date, core/read_date.hpp: [1725?] is 1720 to 1730.
// says: a text is not a year: write 1725 or YearRange{1720, 1729}, or read it with read_date(text)
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const leaf = observe({.height = 201_mm, .year = "1725"});
#else
inline auto const leaf = observe({.height = 201_mm, .year = 1725});
#endif
