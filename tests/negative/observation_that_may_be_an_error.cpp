// SPDX-License-Identifier: MIT
// What was seen may be an error, which somebody has to look at.
// says: it may be an error: look first, or write infer_format(*observe(...))
#include <bifolium/evidence.hpp>
using namespace bifolium;
#ifdef MISUSE
inline auto const named = infer_format(observe({.height = 190_mm}));
#else
inline auto const named = infer_format(*observe({.height = 190_mm}));
#endif
