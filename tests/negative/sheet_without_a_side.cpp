// SPDX-License-Identifier: MIT
// says: both sides of a sheet must be longer than zero
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Sheet<millimetres> sheet{381_mm, 0_mm};
#else
constexpr Sheet<millimetres> sheet{381_mm, 508_mm};
#endif
