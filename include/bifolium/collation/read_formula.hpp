// SPDX-License-Identifier: MIT
/// Reads a collation formula. Grammar and conventions follow Bowers as manuals report him (ICCU; STCV; Modena), and the
/// habits of BMC, GW and STC if the dialect says so.
#pragma once

#include <bifolium/collation/dialect.hpp>
#include <bifolium/collation/formula.hpp>
#include <bifolium/core/expected.hpp>
#include <bifolium/core/limits.hpp>

namespace bifolium {
inline namespace v0 {
/// Reads a formula with its format statement, changes, statement of signing and the text after it. Doubtful readings
/// are in warnings(). Errors: the first part that cannot be read, with its column in characters; the
/// limits of core/limits.hpp. Memory grows with the text alone, however many leaves it names: about 50 bytes a byte.
/// Example: `(*read_formula("8°: A-C8 D4")).leaves() == 28`.
BIFOLIUM_INLINE Expected<Formula> read_formula(std::string_view text, Dialect dialect = {}, Limits const& limits = {});

namespace detail {
/// Reads a formula with the grammar even if it is entirely plain, for tests that compare the two ways.
BIFOLIUM_INLINE Expected<Formula> read_by_grammar(std::string_view text, Dialect dialect, Limits const& limits = {});
} // namespace detail

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/collation/detail/formula_reader.hpp>
#endif
