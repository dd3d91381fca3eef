// SPDX-License-Identifier: MIT
/// Examines a description for contradictions. A record states the same few facts several times: formula, pagination and
/// a stated number give the number of leaves; format statement, size, chain lines and gatherings concern the format;
/// paper, place and imprint the date. If their values do not agree, there is a finding; if edits of the text would make
/// them agree, the most likely ones are proposed, at most two at a time.
///
/// A proposal is ranked by the probability of the description after it and the probability of its slip
/// (book/audit_weights.hpp). A description that agrees never gets a repair, however unusual it is. The description is
/// not changed; edits are only proposed.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/audit_weights.hpp>
#include <bifolium/book/description.hpp>
#include <bifolium/core/limits.hpp>

namespace bifolium {
inline namespace v0 {

/// Examines a description. The same description always gives the same answer, on any thread. The time grows with the texts,
/// and repairs of very long fields are not searched for, which is a finding (not_searched). If a formula or a pagination is
/// beyond the limits, the numbers of leaves are not compared; if there are more findings than the limit, the least severe
/// are left out; either is a finding (limit_reached). The function allocates memory for the answer.
/// Example: `examine(read_description({.formula = "8°: A-C8", .pagination = "46, [2] p."})).agrees()`.
[[nodiscard]] BIFOLIUM_INLINE Audit examine(Description const& description, AuditWeights const& weights = audit_weights,
                                            Limits const& limits = {});

} // namespace v0
} // namespace bifolium

#ifndef BIFOLIUM_COMPILED
#include <bifolium/book/detail/audit/examine.hpp>
#endif
