// SPDX-License-Identifier: MIT
// The same where the evidence is written in the call.
// says: a bare number is not a length: write 190_mm, 19_cm or millimetres{190}
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const leaf = observe({.height = 190, .chain_lines = ChainLines::horizontal});
#else
inline auto const leaf = observe({.height = 190_mm, .chain_lines = ChainLines::horizontal});
#endif
