// SPDX-License-Identifier: MIT
/// Marks the answers of a task while it is compiled. A right answer compiles. A wrong one does
/// not, and the compiler shows what is there and what was said, such as
///
///     wrong_answer<outer_forme, row<1>, column<0>, holds<1>, not_<2>>
///
/// that is: in the outer forme, row 1, column 0 holds page 1, not page 2. Rows count from the
/// far edge and columns from the left, both from 0.
#pragma once

#include <bifolium/imposition.hpp>

#include <cstddef>

namespace marker {

using bifolium::Head;
using bifolium::Side;

/// How a page lies in the forme, seen by the compositor.
enum class Lies : unsigned char { upright, upside_down };
inline constexpr auto upright = Lies::upright, upside_down = Lies::upside_down;

// The words of a message.
struct outer_forme;
struct inner_forme;
template <int> struct row;
template <int> struct column;
template <int> struct page;
template <auto> struct holds;
template <auto> struct is;
template <auto> struct not_;

/// Never defined: its arguments say what is there and what was said.
template <class... Words> struct wrong_answer;

template <bool right, class... Words> constexpr bool mark() {
  if constexpr (!right) return sizeof(wrong_answer<Words...>) != 0;
  return true;
}

/// Whether a place of the outer (or only) forme holds that page.
template <auto const& formes, int r, int c, int answer>
constexpr bool
    outer_holds = mark<int{formes.outer(r, c).page} == answer, outer_forme, row<r>, column<c>,
                       holds<int{formes.outer(r, c).page}>, not_<answer>>();
/// Whether a place of the inner forme holds that page.
template <auto const& formes, int r, int c, int answer>
constexpr bool
    inner_holds = mark<int{formes.inner(r, c).page} == answer, inner_forme, row<r>, column<c>,
                       holds<int{formes.inner(r, c).page}>, not_<answer>>();

/// How page `number` lies in its forme.
template <auto const& formes, int number>
constexpr Lies lie_of = formes.place(number).head == Head::far_edge ? Lies::upright
                                                                    : Lies::upside_down;
template <auto const& formes, int number, Lies answer>
constexpr bool lies = mark<lie_of<formes, number> == answer, page<number>,
                           is<lie_of<formes, number>>, not_<answer>>();

/// Any other question: its name is the first word of the message.
template <class Question, auto right, decltype(right) answer>
constexpr bool answer_is = mark<right == answer, Question, is<right>, not_<answer>>();

} // namespace marker
