// SPDX-License-Identifier: MIT
/// Writes lines for a record: the note on signatures, the leaves, the physical description, and the whole collation as
/// a descriptive bibliography prints it. All functions turn values into text; the punctuation is that of ISBD.
/// record/write_extent.hpp writes the extent, record/recording.hpp size and format.
#pragma once

#include <bifolium/collation/write_formula.hpp>
#include <bifolium/core/number_of.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/write_extent.hpp>
#include <bifolium/record/write_pagination.hpp>
#include <bifolium/record/write_signing.hpp>

namespace bifolium {
inline namespace v0 {

/// Writes the note on signatures: "Signatures: π² A-K⁸ L⁴(−L4)."
[[nodiscard]] inline std::string signatures_note(Formula const& formula, Notation notation = Notation::unicode) {
  return "Signatures: " + write_signatures(formula, notation) + '.';
}
/// Writes the number of leaves: "85 leaves".
[[nodiscard]] inline std::string leaves_line(Formula const& formula) {
  return number_of(formula.leaves(), "leaf", "leaves");
}

/// Writes the physical description: "[8], 205, [3] p. ; 20 cm (4to)". Either part may be empty. `size` is a text that
/// record/recording.hpp writes.
[[nodiscard]] inline std::string physical_description(std::string_view extent, std::string_view size) {
  std::string text{extent};
  if (!extent.empty() && !size.empty()) text += " ; ";
  return text += size;
}

/// Statements beside a formula, in fields of their own.
struct StatedBeside {
  std::optional<Signing> signing{};       ///< the signing of the leaves
  std::optional<Pagination> pagination{}; ///< the numbers of the pages
};

/// Writes formula, statement of signing, leaves and pages as a descriptive bibliography prints them: "8°: π² A-K⁸
/// L⁴(−L4) [$4 (−A1) signed]; 85 leaves, pp. [4] 1-166". Signing and pages are taken from the text of the formula, or
/// from `beside` if the text has none. A statement in the text that cannot be read is repeated unchanged.
[[nodiscard]] inline std::string collation_line(Formula const& formula, StatedBeside const& beside = {}) {
  auto text = write_format_and_signatures(formula);
  if (auto const written = formula.signing()) {
    auto const signing = signing_of(formula);
    text.append(" ").append(signing ? write_signing(*signing) : *written);
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
