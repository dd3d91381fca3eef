// SPDX-License-Identifier: MIT
/// Folding while compiling. `fold<schemes::octavo>()` is the same fold the run-time function gives, with room for
/// exactly its leaves, in read-only data, made once in a program. A scheme that does not fold is a compile error at a
/// call whose name is the sentence and whose arguments are the line, the column and the problem.
#pragma once

#include <bifolium/fold/attested.hpp>
#include <bifolium/fold/fold.hpp>

namespace bifolium {
inline namespace v0 {

/// Its name and arguments are what a compiler shows for a scheme that does not fold.
constexpr void scheme_does_not_fold_at(int line, int column, Problem problem) {
  (void)line, (void)column;
  if (problem != Problem::none) broken("the scheme does not fold to gatherings");
}

namespace detail {
template <auto const& S> constexpr auto fold_exactly() {
  auto folded = fold(scheme_of<S>()); // not const: clang would fold once more to look at the condition
  if (!folded)
    scheme_does_not_fold_at(static_cast<int>(folded.error().line), static_cast<int>(folded.error().column),
                            folded.error().problem);
  return Fold<scheme_of<S>().cells()>{*folded};
}
template <auto const& S> inline constexpr auto folded_once = fold_exactly<S>();
} // namespace detail

/// The fold of a scheme known while compiling: `S` is a row of the table or a constant `Scheme` (with static storage).
template <auto const& S> constexpr auto const& fold() { return detail::folded_once<S>; }

} // namespace v0
} // namespace bifolium
