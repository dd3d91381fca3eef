// SPDX-License-Identifier: MIT
// says: a letter must be from A to Z or a to z
#include <bifolium/leaf.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Signature signature = Signature::letter('5');
#else
constexpr Signature signature = Signature::letter('E');
#endif
