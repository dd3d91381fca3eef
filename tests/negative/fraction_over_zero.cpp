// SPDX-License-Identifier: MIT
// says: a fraction needs a denominator above zero
#include <bifolium/core/fraction.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Fraction half{1, 0};
#else
constexpr Fraction half{1, 2};
#endif
