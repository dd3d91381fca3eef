// SPDX-License-Identifier: MIT
// Task 9. The first answer is a letter in single quotation marks, the others are numbers.
#include <bifolium/leaf.hpp>

#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

struct letter_of_the_tenth_gathering;
struct first_page_of_gathering_D_of_an_octavo;
struct leaf_of_its_gathering_on_which_page_21_of_an_octavo_is;

constexpr auto tenth = Signature::letter('A').at_rank(10);
constexpr char letters[]{"ABCDEFGHIKLMNOPQRSTVXYZ"}; // the 23 letters of the trade
static_assert(Signature::letter(letters[9]) == tenth);
static_assert(answer_is<letter_of_the_tenth_gathering, letters[9], YOUR_ANSWER>);
static_assert(answer_is<first_page_of_gathering_D_of_an_octavo, 3 * Gathering<8>{}.pages() + 1,
                        YOUR_ANSWER>);
static_assert(answer_is<leaf_of_its_gathering_on_which_page_21_of_an_octavo_is,
                        (21 - 1) % Gathering<8>{}.pages() / 2 + 1, YOUR_ANSWER>);
