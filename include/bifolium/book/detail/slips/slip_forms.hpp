// SPDX-License-Identifier: MIT
/// The forms that a slip of one kind takes, with the share of each among the slips of its kind. A run that ends one
/// letter too early is more frequent than one that ends three too early; 4 is written for 8 more often than 5 for 7.
///
/// All are estimates without a source, because there is no open corpus of slips with their corrections. They say which
/// form is more frequent than which; the share of a kind is in `AuditWeights`. The shares of a kind need not add up to
/// 1: what is left is for forms that are not searched for, and where the search gives every size of a gathering, the
/// size has a probability of its own.
#pragma once

namespace bifolium {
inline namespace v0 {
namespace detail {
namespace slip_form {

// the digits of a number, and the letters of a Roman numeral
inline constexpr double similar_digit = .12, other_digit = .04; ///< of a wrong digit, for each digit it may be
inline constexpr double digit_twice = .5, digit_added = .05;    ///< of a digit too many
inline constexpr double roman_replaced = .3, roman_length = .5; ///< a letter replaced; one left out, added or exchanged
// the leaves of a gathering
inline constexpr double neighbouring_count = .25, even_count = .06, odd_count = .03; ///< 4 for 8; 2 for 8; 7 for 8
inline constexpr double count_supplied = .5, same_count_supplied = .3, next_count_meant = .7;
// the letters of a run
inline constexpr double one_letter = .4, two_letters = .06, three_letters = .02; ///< in either direction
inline constexpr double first_letter = .5, shifted = .5, alphabets_lost = .4;
// whole gatherings
/// A skipped letter is visible, so a gathering that is missing there is far more likely than at another place.
inline constexpr double where_a_letter_is_skipped = 7.4;
inline constexpr double run_twice = .8, first_run_added = .05;
inline constexpr double last_lost = .8, last_added = .1;
inline constexpr double preliminaries_without_a = .9, preliminaries_before_a = .25, preliminaries_after_first = .08;
/// An A of the same leaves as B would be written together with it: its loss is a wrong first letter.
inline constexpr double a_like_b = .05;
// changes of leaves
inline constexpr double last_leaf_removed = .4, first_leaf_removed = .25, leaf_inserted = .2, two_leaves_removed = .1;
inline constexpr double change_dropped = .6, change_of_several_reduced = .3;
// runs of pages
inline constexpr double pages_1_2_or_4 = .2, other_pages = .04; ///< by how many pages a number in brackets is wrong
inline constexpr double run_before = .35, run_after = .45, run_between = .1, leaves_at_an_end = .4, run_added = .25;
inline constexpr double first_number = .5; ///< the first number of a run, and not the last, is wrong
inline constexpr double continues_all = .5, continues_roman = .3, begins_again = .1;
inline constexpr double unit_exchanged = .8, every_leaf_one_page = .9;
// the stated number of leaves
inline constexpr double all_plates = .9, all_pages = .9, one_blank = .6, two_blanks = .15, end_leaf = .1;

} // namespace slip_form
} // namespace detail
} // namespace v0
} // namespace bifolium
