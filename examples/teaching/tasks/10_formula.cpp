// SPDX-License-Identifier: MIT
// Task 10. Write a formula in quotation marks in place of each YOUR_ANSWER, such as "A-B8 C2".
#include <bifolium/collation.hpp>

#include "../marker.hpp"

using namespace bifolium;
using namespace marker;

// A formula that cannot be read: why, and at which character.
template <Problem> struct because;
template <int> struct at_character;
struct your_formula;
template <int> struct has_leaves;
template <int> struct has_gatherings;

template <auto const& formula> inline constexpr auto counted = count_formula(formula);
template <auto const& formula, int leaves, int gatherings> constexpr bool says() {
  if constexpr (!counted<formula>.has_value())
    return mark<false, your_formula, because<counted<formula>.error().problem>,
                at_character<int{counted<formula>.error().place->column}>>();
  else
    return mark < counted<formula>->leaves == leaves &&
               counted<formula>->gatherings == gatherings,
           your_formula, has_leaves<static_cast<int>(counted<formula>->leaves)>, not_<leaves>,
           has_gatherings<static_cast<int>(counted<formula>->gatherings)>,
           not_ < gatherings >> ();
}

// Signed: A, A2, A3, A4 and four leaves without a signature; B to B4 and four more; C, C2 and two
// more.
constexpr char plain[]{YOUR_ANSWER};
static_assert(says<plain, 20, 3>());

// The same book; its last leaf, C4, was blank and cut away in the printing house.
constexpr char cut[]{YOUR_ANSWER};
static_assert(says<cut, 19, 3>());
