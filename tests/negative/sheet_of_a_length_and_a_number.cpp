// SPDX-License-Identifier: MIT
// says: a bare number is not a length: write 190_mm, 19_cm or millimetres{190}
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Sheet<millimetres> demy{381_mm, 508};
#else
constexpr Sheet<millimetres> demy{381_mm, 20_in};
#endif
