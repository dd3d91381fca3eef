// SPDX-License-Identifier: MIT
/// Examines the fields that do not concern the number of leaves, each kind by an audit of its own, in the order in which
/// findings of one severity are told: what could not be read comes first, since the rest is compared without it.
#pragma once

#include <bifolium/book/detail/audit/format_audit.hpp>
#include <bifolium/book/detail/audit/formula_audit.hpp>
#include <bifolium/book/detail/audit/imprint_audit.hpp>
#include <bifolium/book/detail/audit/measure_audit.hpp>
#include <bifolium/book/detail/audit/unread_audit.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Adds the findings of all fields.
inline void examine_fields(Description const& book, Audit& audit) {
  UnreadAudit{book, audit}.run();
  if (book.formula) FormulaAudit{book, audit}.run();
  MeasureAudit{book, audit}.run();
  ImprintAudit{book, audit}.run();
  FormatAudit{book, audit}.run();
}

} // namespace detail
} // namespace v0
} // namespace bifolium
