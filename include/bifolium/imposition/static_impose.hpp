// SPDX-License-Identifier: MIT
/// Imposition while compiling. `impose<schemes::octavo>()` is a table of formes and positions in read-only data. It has
/// exactly the size that is needed, and is made once in a program.
#pragma once

#include <bifolium/fold/static_fold.hpp>
#include <bifolium/imposition/imposition.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {
template <auto const& S> inline constexpr auto imposed_once = impose(folded_once<S>);
} // namespace detail

/// Returns the formes of a scheme that is known while compiling: a row of the table or a constant `Scheme` with static
/// storage.
/// Example: `impose<schemes::octavo>().outer(1, 0) == head_up(1)`.
template <auto const& S> constexpr auto const& impose() { return detail::imposed_once<S>; }

} // namespace v0
} // namespace bifolium
