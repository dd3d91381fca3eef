// SPDX-License-Identifier: MIT
/// Texts that were not read, read with a doubt, or read twice with two values. Whatever a reader leaves out is told here, each
/// with its column, since a field that is silently half read agrees with everything.
#pragma once

#include <bifolium/book/detail/audit/field_findings.hpp>
#include <bifolium/core/message.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Tells what the readers of the fields left.
class UnreadAudit : FieldFindings {
public:
  UnreadAudit(Description const& book, Audit& audit) : FieldFindings{book, audit} {}
  void run() {
    for (auto const& part : book_.unread) {
      bool const stopped = part.rest && part.error.problem == Problem::trailing_text;
      std::string words{identifier(part.field)};
      if (stopped)
        words.append(": '").append(part.text).append("' was not read");
      else if (part.rest)
        words.append(", '").append(part.text).append("' was left out: ").append(sentence_of(part.error));
      else
        words.append(" could not be read: ").append(sentence_of(part.error));
      add(FindingId::part_unread, stopped ? Severity::note : Severity::doubt, FieldSet{part.field},
          words.append(column_words(part.error)), {});
    }
    for (auto const& one : book_.doubts) {
      bool const numerals = one.doubt.problem == Problem::date_numerals_differ;
      add(numerals ? FindingId::date_numerals_differ : FindingId::read_with_doubt,
          numerals ? Severity::doubt : Severity::note, FieldSet{one.field},
          std::string{identifier(one.field)} + ": " + sentence_of(one.doubt) + column_words(one.doubt),
          numerals ? std::optional<std::string>{"the date as it is printed"} : std::nullopt);
    }
    for (auto const& one : book_.again)
      add(FindingId::stated_twice, Severity::doubt, FieldSet{one.field} | one.in,
          std::string{identifier(one.field)} + ": stated as '" + one.first + "', and in the " +
              std::string{identifier(one.in)} + " as '" + one.second + "'",
          "which of the two is right");
    if (book_.pagination && book_.pagination->value.unpaged)
      add(FindingId::pages_uncounted, Severity::note, FieldSet{Field::pagination},
          "the pagination does not say how many pages there are", {});
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
