// SPDX-License-Identifier: MIT
/// examine: the counts, part by part or whole, then the other fields.
#pragma once

#include <bifolium/book/detail/count_audit.hpp>
#include <bifolium/book/detail/field_audit.hpp>
#include <bifolium/book/detail/part_audit.hpp>
#include <bifolium/book/examine.hpp>
#include <bifolium/core/insertion_sort.hpp>
#include <bifolium/core/message.hpp>

namespace bifolium {
inline namespace v0 {

BIFOLIUM_INLINE Audit examine(Description const& description, AuditWeights const& weights) {
  Audit audit;
  if (!detail::PartAudit{description, weights, audit}.run()) detail::CountAudit{description, weights, audit}.run();
  detail::FieldAudit{description, audit}.run();
  // sentences quote the fields, in which there may be any bytes
  for (auto& finding : audit.findings) finding.says = one_line(finding.says);
  for (auto& repair : audit.repairs) repair.says = one_line(repair.says);
  insertion_sort(audit.findings, [](Finding const& a, Finding const& b) { return a.level > b.level; });
  return audit;
}

} // namespace v0
} // namespace bifolium
