// SPDX-License-Identifier: MIT
/// Folds while compiling. `fold<schemes::octavo>()` is equal to the result of the run-time function, has room for
/// exactly its leaves, is in read-only data, and is made once in a program. A scheme that does not fold does not
/// compile, and the compiler shows the problem, the line and the column of the scheme's text.
#pragma once

#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/fold.hpp>

namespace bifolium {
inline namespace v0 {

/// This template is never defined. A compiler shows its name and arguments if a scheme does not fold. `because` is the
/// problem, whose sentence is in the page of errors; `line` and `column` are the place in the scheme's text, or 0 and 0
/// of a scheme that was not read from a text.
template <Problem because, int line, int column> struct the_scheme_does_not_fold;

namespace detail {
template <auto const& S> inline constexpr auto tried_once = fold(scheme_of<S>());
template <auto const& S> inline constexpr auto place_tried = tried_once<S>.error().place.value_or(TextPlace{0, 0});
template <auto const& S> constexpr auto fold_exactly() {
  if constexpr (tried_once<S>.has_value())
    return Fold<scheme_of<S>().cells()>{*tried_once<S>};
  else
    return the_scheme_does_not_fold<tried_once<S>.error().problem, int{place_tried<S>.line},
                                    int{place_tried<S>.column}>{};
}
template <auto const& S> inline constexpr auto folded_once = fold_exactly<S>();
} // namespace detail

/// Returns the fold of a scheme that is known while compiling. `S` is a row of the table or a constant `Scheme` with
/// static storage.
template <auto const& S> constexpr auto const& fold() { return detail::folded_once<S>; }

} // namespace v0
} // namespace bifolium
