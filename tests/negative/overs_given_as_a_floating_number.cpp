// SPDX-License-Identifier: MIT
// 3.2 is stored as something near it; a bill must add up.
// says: a floating-point number is not exact: write Fraction{16, 5}, 3.2_percent or read_fraction("3.2")
#include <bifolium/core/fraction_text.hpp>
#include <bifolium/edition.hpp>
using namespace bifolium;
#ifdef MISUSE
inline Edition const edition{.pages = 160, .copies = 500, .overs_percent = 3.2};
#else
inline Edition const edition{.pages = 160, .copies = 500, .overs_percent = 3.2_percent};
#endif
