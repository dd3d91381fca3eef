// SPDX-License-Identifier: MIT
// A number that was typed in is read by whole_number, core/text_cursor.hpp.
// says: a text is not a number: write 8, or read it with whole_number(text)
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const leaf = observe({.height = 201_mm, .gathering_leaves = "8"});
#else
inline auto const leaf = observe({.height = 201_mm, .gathering_leaves = 8});
#endif
