// SPDX-License-Identifier: MIT
/// Lines to paste into a record: the note on signatures, the leaves, the physical description, and the whole collation as a
/// descriptive bibliography prints it. Pure functions from values to text; the punctuation is ISBD's. The extent is written
/// by record/write_extent.hpp, size and format by record/recording.hpp.
#pragma once

#include <bifolium/collation/write_formula.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/write_extent.hpp>
#include <bifolium/record/write_pagination.hpp>
#include <bifolium/record/write_signing.hpp>

namespace bifolium {
inline namespace v0 {

/// "Signatures: π² A-K⁸ L⁴(−L4)."
[[nodiscard]] inline std::string signatures_note(Formula const& formula, Notation notation = Notation::unicode) {
  return "Signatures: " + write_signatures(formula, notation) + '.';
}
/// "85 leaves".
[[nodiscard]] inline std::string leaves_line(Formula const& formula) {
  return std::to_string(leaf_count(formula)) + (leaf_count(formula) == 1 ? " leaf" : " leaves");
}

/// "[8], 205, [3] p. ; 20 cm (4to)". Either may be empty. `size` is what record/recording.hpp writes.
[[nodiscard]] inline std::string physical_description(std::string_view extent, std::string_view size) {
  std::string text{extent};
  if (!extent.empty() && !size.empty()) text += " ; ";
  return text += size;
}

/// What is stated beside a formula, in fields of its own.
struct StatedBeside {
  std::optional<Signing> signing{};       ///< of the leaves
  std::optional<Pagination> pagination{}; ///< of the pages
};

/// Formula, statement of signing, leaves and pages, as a descriptive bibliography prints them:
/// "8°: π² A-K⁸ L⁴(−L4) [$4 (−A1) signed]; 85 leaves, pp. [4] 1-166". Signing and pages are those in the text of the formula;
/// where it has none, those of `beside`. A statement in the text that cannot be read is left as it was.
[[nodiscard]] inline std::string collation_line(Formula const& formula, StatedBeside const& beside = {}) {
  std::string text;
  if (formula.format()) {
    if (!formula.paper_class().empty()) text += formula.paper_class() + ' ';
    text += formula.format()->symbol().view();
    if (formula.second_format()) text += " and ", text += formula.second_format()->symbol().view();
    text += ": ";
  }
  text += write_signatures(formula);
  if (!formula.signing().empty()) {
    auto const signing = signing_of(formula);
    text += ' ' + (signing ? write_signing(*signing) : formula.signing());
  } else if (beside.signing)
    text += ' ' + write_signing(*beside.signing);
  text += "; " + leaves_line(formula);
  if (auto const pages = pagination_of(formula))
    text += ", " + write_pagination(*pages);
  else if (auto const from = detail::pagination_place(formula.tail()))
    text.append(", ").append(formula.tail(), *from);
  else if (beside.pagination)
    text += ", " + write_pagination(*beside.pagination);
  return text;
}

} // namespace v0
} // namespace bifolium
