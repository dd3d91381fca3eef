// SPDX-License-Identifier: MIT
// A number is not yet a leaf.
// says g++: could not convert '3' from 'int' to 'bifolium::v0::Leaf<8>'
// says clang: no known conversion from 'int' to 'Leaf<8>'
#include <bifolium/leaf.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr int number(Leaf<8> leaf) { return leaf.number(); }
constexpr int three = number(3);
#else
constexpr int number(Leaf<8> leaf) { return leaf.number(); }
constexpr int three = number(Leaf<8>{3});
#endif
