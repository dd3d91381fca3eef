// SPDX-License-Identifier: MIT
/// examine: the counts, part by part or whole, then the other fields.
#pragma once

#include <bifolium/book/detail/audit/count_audit.hpp>
#include <bifolium/book/detail/audit/field_audit.hpp>
#include <bifolium/book/detail/audit/part_audit.hpp>
#include <bifolium/book/examine.hpp>
#include <bifolium/core/merge_sort.hpp>
#include <bifolium/core/message.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {
/// The first limit beyond which a formula or a pagination is, since both are read again to compare them.
inline std::optional<Error> beyond_limits(std::string_view text, std::size_t runs, std::size_t changes,
                                          Limits const& limits) {
  if (is_too_long(text, limits)) return too_long(limits);
  if (runs > limits.runs) return error_at(Problem::too_many_runs, TextPlace{}, text, limits.runs);
  if (changes > limits.changes) return error_at(Problem::too_many_changes, TextPlace{}, text, limits.changes);
  return std::nullopt;
}
/// Adds a finding if a field is beyond the limits. Returns true if one is.
inline bool beyond_limits(Description const& book, Limits const& limits, Audit& audit) {
  auto const add = [&](Field field, std::optional<Error> const& error) {
    if (!error) return;
    audit.findings.push_back({FindingId::limit_reached,
                              Severity::doubt,
                              FieldSet{field},
                              {},
                              std::string{identifier(field)} + " was not compared: " + sentence_of(*error),
                              {},
                              {}});
  };
  if (book.formula)
    add(Field::formula, beyond_limits(book.formula->text, book.formula->value.runs().size(),
                                      book.formula->value.changes().size(), limits));
  if (book.pagination)
    add(Field::pagination, beyond_limits(book.pagination->text, book.pagination->value.runs.size(),
                                         book.pagination->value.misprints.size(), limits));
  return !audit.findings.empty();
}
/// Sorts the findings, the most severe first, and leaves out those beyond the limit.
inline void in_order(std::vector<Finding>& findings, Limits const& limits) {
  auto const more_severe = [](Finding const& a, Finding const& b) { return a.level > b.level; };
  merge_sort(findings, more_severe);
  if (findings.size() <= limits.findings) return;
  auto const left_out = static_cast<std::int64_t>(findings.size() - limits.findings);
  findings.resize(limits.findings);
  findings.push_back({FindingId::limit_reached,
                      Severity::doubt,
                      {},
                      {},
                      number_of(left_out, "finding is", "findings are") + " left out: 'findings' of Limits allows " +
                          std::to_string(limits.findings),
                      {},
                      {}});
  merge_sort(findings, more_severe);
}
} // namespace detail

BIFOLIUM_INLINE Audit examine(Description const& description, AuditWeights const& weights, Limits const& limits) {
  Audit audit;
  if (!detail::beyond_limits(description, limits, audit) &&
      !detail::PartAudit{description, weights, limits, audit}.run())
    detail::CountAudit{description, weights, limits, audit}.run();
  detail::examine_fields(description, audit);
  // sentences quote the fields, in which there may be any bytes
  for (auto& finding : audit.findings) finding.says = one_line(finding.says);
  for (auto& repair : audit.repairs) repair.says = one_line(repair.says);
  detail::in_order(audit.findings, limits);
  return audit;
}

} // namespace v0
} // namespace bifolium
