// SPDX-License-Identifier: MIT
/// A description that checks itself. A record says the same few things several times: formula, pagination and stated leaves
/// speak of the number of leaves; format statement, size, chain lines and gatherings of the format; paper, place and imprint
/// of the date. Where what they say has no common value, there is a finding; and where edits of what was written would give
/// one, the likeliest are proposed, at most two at a time.
///
/// A proposal is ranked by how likely the description would be after it and how likely its slip is (book/audit_weights.hpp). A
/// description that agrees is never given a repair, however odd it looks. Nothing is changed: edits are offered.
#pragma once

#include <bifolium/book/detail/count_audit.hpp>
#include <bifolium/book/detail/field_audit.hpp>
#include <bifolium/book/detail/part_audit.hpp>
#include <bifolium/core/insertion_sort.hpp>

namespace bifolium {
inline namespace v0 {

/// Examines a description. The same description gives the same answer, on whatever thread. Allocates the answer.
[[nodiscard]] inline Audit examine(Description const& description, AuditWeights const& weights = audit_weights) {
  Audit audit;
  if (!detail::PartAudit{description, weights, audit}.run()) detail::CountAudit{description, weights, audit}.run();
  detail::FieldAudit{description, audit}.run();
  insertion_sort(audit.findings, [](Finding const& a, Finding const& b) { return a.level > b.level; });
  return audit;
}

} // namespace v0
} // namespace bifolium
