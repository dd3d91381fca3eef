// SPDX-License-Identifier: MIT
// says clang: scheme_text_is_wrong_at(2, 36
// says g++: the text of a scheme is wrong
#include <bifolium/fold.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Scheme mine = written("scheme mine 2°\nsheet S rows 1 columns 2 long-side upright\n"
#else
constexpr Scheme mine = written("scheme mine 2°\nsheet S rows 1 columns 2 long-side left-right\n"
#endif
                                "fold S right-over-left 1\ngathering A S\n");
