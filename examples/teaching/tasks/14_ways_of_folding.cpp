// SPDX-License-Identifier: MIT
// Task 14. A sheet has two rows of two leaves. Fold it in the three ways below, and look at the
// packet each time. Write true or false, or a number, in place of each YOUR_ANSWER.
#include <bifolium/fold.hpp>

#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

#define SHEET "scheme mine 4°\nsheet S rows 2 columns 2 long-side far-near\n"
constexpr auto head_fold_first =
    read_scheme(SHEET "fold S far-over-near 1\nfold S right-over-left 1\ngathering A S\n");
constexpr auto gutter_fold_first =
    read_scheme(SHEET "fold S right-over-left 1\nfold S far-over-near 1\ngathering A S\n");
constexpr auto far_row_underneath = read_scheme(
    SHEET "fold S far-over-near 1 under\nfold S right-over-left 1\ngathering A S\n");

// Are the first and the last leaf joined at the gutter, and the second and the third?
struct a_gathering_if_the_head_is_folded_first;
struct a_gathering_if_the_gutter_is_folded_first;
struct a_gathering_if_the_far_row_goes_underneath;
static_assert(answer_is<a_gathering_if_the_head_is_folded_first,
                        fold(*head_fold_first).has_value(), YOUR_ANSWER>);
static_assert(answer_is<a_gathering_if_the_gutter_is_folded_first,
                        fold(*gutter_fold_first).has_value(), YOUR_ANSWER>);
static_assert(answer_is<a_gathering_if_the_far_row_goes_underneath,
                        fold(*far_row_underneath).has_value(), YOUR_ANSWER>);

// The leaf at the far edge on the left, counted from the front of the gathering, if the far row
// goes over the near one, and if it goes underneath.
struct leaf_at_the_far_left_if_the_far_row_goes_over;
struct leaf_at_the_far_left_if_it_goes_underneath;
static_assert(
    answer_is<leaf_at_the_far_left_if_the_far_row_goes_over,
              fold(*head_fold_first).value().leaf_at(0, 0, 0).leaf.number(), YOUR_ANSWER>);
static_assert(
    answer_is<leaf_at_the_far_left_if_it_goes_underneath,
              fold(*far_row_underneath).value().leaf_at(0, 0, 0).leaf.number(), YOUR_ANSWER>);
