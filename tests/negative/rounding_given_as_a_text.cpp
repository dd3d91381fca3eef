// SPDX-License-Identifier: MIT
// says: a text is not a length: write 22_cm or 220_mm, or read it with read_length(text)
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const leaf = observe({.height = 22_cm, .rounded_up_to = "1 cm"});
#else
inline auto const leaf = observe({.height = 22_cm, .rounded_up_to = 1_cm});
#endif
