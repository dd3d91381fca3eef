// SPDX-License-Identifier: MIT
// says: a sheet is made of lengths that can be divided without loss
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Sheet<int> a4{210, 297};
#else
constexpr Sheet<double> a4{210, 297};
#endif
