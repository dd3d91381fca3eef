// SPDX-License-Identifier: MIT
// A length that was typed in is read by read_length, paper/read_length.hpp, which may give an error.
// says: a text is not a length: write 22_cm or 220_mm, or read it with read_length(text)
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const leaf = observe({.height = "22 cm"});
#else
inline auto const leaf = observe({.height = 22_cm});
#endif
