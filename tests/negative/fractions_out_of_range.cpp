// SPDX-License-Identifier: MIT
// says: the exact result does not fit: use the checked_ functions
#include <bifolium/core/fraction.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Fraction sum = Fraction{INT64_MAX} + 1;
#else
constexpr auto sum = checked_add(Fraction{INT64_MAX}, 1);
#endif
