// SPDX-License-Identifier: MIT
/// Imposition while compiling: `impose<schemes::octavo>()` names a table of formes and places in read-only data, of
/// exactly the right size, made once in a program.
#pragma once

#include <bifolium/fold/static_fold.hpp>
#include <bifolium/imposition/imposition.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {
template <auto const& S> inline constexpr auto imposed_once = impose(folded_once<S>);
} // namespace detail

/// The formes of a scheme known while compiling: a row of the table or a constant `Scheme` (with static storage).
template <auto const& S> constexpr auto const& impose() { return detail::imposed_once<S>; }

} // namespace v0
} // namespace bifolium
