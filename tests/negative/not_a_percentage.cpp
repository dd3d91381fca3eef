// SPDX-License-Identifier: MIT
// says: write a percentage with digits and a point: 3.2_percent
#include <bifolium/core/fraction_text.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr auto overs = 1e3_percent;
#else
constexpr auto overs = 100_percent;
#endif
