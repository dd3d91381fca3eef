// SPDX-License-Identifier: MIT
// The long side of a sheet lies far-near or left-right: line 2, column 36 of the text.
// says clang: the_text_of_the_scheme_is_wrong<bifolium::Problem::unknown_word, 2, 36>
// says g++: the_text_of_the_scheme_is_wrong<bifolium::v0::Problem::unknown_word, 2, 36>
#include <bifolium/fold.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Scheme mine = written<"scheme mine 2°\nsheet S rows 1 columns 2 long-side upright\n"
#else
constexpr Scheme mine = written<"scheme mine 2°\nsheet S rows 1 columns 2 long-side left-right\n"
#endif
                                "fold S right-over-left 1\ngathering A S\n">();
static_assert(fold<mine>().leaves() == 2);
