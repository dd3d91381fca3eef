// SPDX-License-Identifier: MIT
/// What all audits of single fields share: the description, the findings, and how a place in a field is said.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/description.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// A description and the findings about its fields.
class FieldFindings {
protected:
  Description const& book_;
  Audit& audit_;

  FieldFindings(Description const& book, Audit& audit) : book_{book}, audit_{audit} {}
  void add(FindingId id, Severity level, FieldSet fields, std::string says, std::optional<std::string> settle,
           std::optional<std::int64_t> delta = std::nullopt) {
    audit_.findings.push_back({id,
                               level,
                               fields,
                               delta,
                               static_cast<std::string&&>(says),
                               static_cast<std::optional<std::string>&&>(settle),
                               {}});
  }
  /// A field has one line as a rule, so the line is said only where there are more.
  static std::string column_words(Error const& error) {
    if (!error.place) return {}; // of a text that was too long
    std::string words = " (";
    if (error.place->line > 1) words.append("line ").append(std::to_string(error.place->line)).append(", ");
    return words.append("column ").append(std::to_string(error.place->column)).append(")");
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
