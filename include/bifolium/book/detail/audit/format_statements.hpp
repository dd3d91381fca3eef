// SPDX-License-Identifier: MIT
/// The format stated twice, in its own field and before the formula. The two are compared before anything else, since one of
/// them is wrong whatever the leaf shows; what was seen of the leaf then says which.
#pragma once

#include <bifolium/book/detail/audit/format_findings.hpp>
#include <bifolium/book/evidence_of.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Compares the statements with one another.
class FormatStatements : FormatFindings {
  /// A statement of several formats, of which none is that of the formula.
  void several_and_another() {
    if (book_.formats.empty() || !book_.formula || book_.formula->value.second_format()) return;
    auto const of_formula = book_.formula->value.format();
    if (!of_formula || !of_formula->leaves_to_sheet()) return;
    std::string stated;
    for (auto const& one : book_.formats) {
      if (!one.leaves_to_sheet() || one.leaves_to_sheet() == of_formula->leaves_to_sheet()) return;
      stated += (stated.empty() ? "" : " and ") + std::string{one.symbol().view()};
    }
    add(FindingId::format_differs, Severity::error, FieldSet{Field::format} | Field::formula,
        "the formats are stated as " + stated + ", and in the formula as " + std::string{of_formula->symbol().view()},
        "chain lines and watermark");
  }
  /// Two statements of it.
  void two_statements() {
    if (!book_.format || !book_.formula || !book_.formula->value.format() || book_.formula->value.second_format())
      return;
    auto const stated = book_.format->value, of_formula = *book_.formula->value.format();
    if (!stated.leaves_to_sheet() || !of_formula.leaves_to_sheet() ||
        stated.leaves_to_sheet() == of_formula.leaves_to_sheet())
      return;
    std::optional<Field> doubted;
    if (auto const observation = observe(evidence_of(book_))) {
      auto const inference = infer_format(*observation);
      auto const here = probability(inference, *stated.leaves_to_sheet()),
                 there = probability(inference, *of_formula.leaves_to_sheet());
      bool const told = is_measured(book_.height) || book_.chain_lines;
      if (told && here > slip * there) doubted = Field::formula;
      if (told && there > slip * here) doubted = Field::format;
    }
    auto says = "the format is stated as " + std::string{stated.symbol().view()} + ", and in the formula as " +
                std::string{of_formula.symbol().view()};
    if (doubted)
      says += std::string{"; the rest of the description agrees with "} +
              std::string{(doubted == Field::formula ? stated : of_formula).symbol().view()};
    add(FindingId::format_differs, Severity::error, FieldSet{Field::format} | Field::formula, says,
        "chain lines and watermark", doubted);
  }

public:
  FormatStatements(Description const& book, Audit& audit) : FormatFindings{book, audit} {}
  void run() {
    two_statements();
    several_and_another();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
