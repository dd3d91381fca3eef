// SPDX-License-Identifier: MIT
// A quarto whose spine crease is made first: line 3, column 24 of its text.
// says clang: the_scheme_does_not_fold<bifolium::Problem::leaves_not_conjugate, 3, 24>
// says g++: the_scheme_does_not_fold<bifolium::v0::Problem::leaves_not_conjugate, 3, 24>
#include <bifolium/imposition.hpp>
using namespace bifolium;
#ifdef MISUSE
constexpr Scheme mine = written("scheme mine 4°\nsheet S rows 2 columns 2 long-side far-near\n"
                                "fold S right-over-left 1\nfold S far-over-near 1\ngathering A S\n");
#else
constexpr Scheme mine = written("scheme mine 4°\nsheet S rows 2 columns 2 long-side far-near\n"
                                "fold S far-over-near 1\nfold S right-over-left 1\ngathering A S\n");
#endif
static_assert(impose<mine>().pages() == 8);
