// SPDX-License-Identifier: MIT
// The last gathering has no leaf count, and nothing says what that means.
// says: there is no value: look at error() first
#include <bifolium/collation.hpp>
using namespace bifolium;
#ifdef MISUSE
static_assert(count_formula("8°: A–K⁸ L")->leaves == 84);
#else
static_assert(count_formula("8°: A–K⁸ L⁴")->leaves == 84);
#endif
