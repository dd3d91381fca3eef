// SPDX-License-Identifier: MIT
// says: a text is not a fraction: write Fraction{16, 5} or 3.2_percent, or read it with read_fraction(text)
#include <bifolium/edition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const bill = reckon({.pages = 160, .copies = 500, .overs_percent = "3.2"});
#else
inline auto const bill = reckon({.pages = 160, .copies = 500, .overs_percent = {16, 5}});
#endif
