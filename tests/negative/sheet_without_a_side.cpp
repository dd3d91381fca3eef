// SPDX-License-Identifier: MIT
// says: a sheet has two sides, each longer than zero
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Sheet<millimetres> sheet{381_mm, 0_mm};
#else
constexpr Sheet<millimetres> sheet{381_mm, 508_mm};
#endif
