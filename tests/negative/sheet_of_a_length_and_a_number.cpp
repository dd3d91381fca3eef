// SPDX-License-Identifier: MIT
// says g++: no matching function for call to 'bifolium::v0::Sheet
// says clang: no matching constructor for initialization of 'const Sheet<millimetres>'
#include <bifolium/paper.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Sheet<millimetres> demy{381_mm, 508};
#else
constexpr Sheet<millimetres> demy{381_mm, 20_in};
#endif
