// SPDX-License-Identifier: MIT
// A bare number has no unit: 187 of what?
// says: a bare number is not a length: write 190_mm, 19_cm or millimetres{190}
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr millimetres height = 187.0;
#else
constexpr millimetres height = 187_mm;
#endif
