// SPDX-License-Identifier: MIT
/// The make-up of attested schemes, without reading or folding them. Nobody types it in: the program
/// bench/write_make_ups.cpp folds every scheme and writes detail/make_up_rows.hpp. So a unit that asks for a bill
/// compiles neither the reader of schemes nor the folder.
#pragma once

#include <bifolium/edition/detail/make_up_rows.hpp>

namespace bifolium {
inline namespace v0 {

static_assert(std::size(detail::make_up_rows) == Attested::count,
              "the make-ups are not those of the attested schemes: write make_up_rows.hpp again with write_make_ups");

/// Returns the make-up of an attested scheme, the same as that of its fold.
/// Example: `make_up(schemes::octavo) == make_up(fold<schemes::octavo>())`.
constexpr SheetMakeUp make_up(Attested scheme) { return detail::make_up_rows[static_cast<std::size_t>(scheme.row())]; }

} // namespace v0
} // namespace bifolium
