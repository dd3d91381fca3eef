// SPDX-License-Identifier: MIT
/// Lines to paste into a record: the note on signatures, the leaves, the extent, the physical description, and the whole
/// collation as a descriptive bibliography prints it. Pure functions from values to text. The extent follows the rules for
/// rare books (DCRM(B) area 5B): each sequence by its last number, pages without numbers in brackets, a wrong last number
/// corrected with "i.e."; the punctuation is ISBD's. The size and format of the physical description come as text, because
/// evidence/ knows how sizes are recorded.
#pragma once

#include <bifolium/collation/write_formula.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_signing.hpp>
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

/// The extent as a library states it: "[8], 205, [3] p.", "viii, 154 [i.e. 152] p.", "[2], 152 leaves". Reading it gives
/// as many pages again (read_extent). Empty where the pages bear no numbers and how many there are is not stated.
[[nodiscard]] inline std::string extent_line(Pagination const& pagination) {
  std::string text;
  auto const& runs = pagination.runs;
  auto const part = [&](std::string const& words) { text += (text.empty() ? "" : ", ") + words; };
  for (std::size_t r = 0; r < runs.size();) {
    // one sequence of numbers: the runs that go on in it, without what bears no number at its end
    auto const first = r;
    auto end = r;
    for (; r < runs.size() && runs[r].numbering != Numbering::none; ++r) {
      bool const same = runs[r].numerals == runs[first].numerals && runs[r].series == runs[first].series;
      bool const new_sequence = r > first && runs[r].first == 1;
      if (!same || new_sequence) break;
      if (runs[r].numbering == Numbering::printed) end = r + 1;
    }
    auto const numbers = [&](std::size_t from, std::size_t to) {
      std::int64_t count = 0;
      for (auto i = from; i < to; ++i) count += runs[i].count;
      return count;
    };
    if (end > first) {
      auto const count = numbers(first, end);
      auto const& head = runs[first];
      auto const last = runs[end - 1].last;
      auto words =
          (head.first == 1 ? "" : page_figure(head.first, head.numerals) + '-') + page_figure(last, head.numerals);
      if (last - head.first + 1 != count) words += " [i.e. " + page_figure(head.first - 1 + count, head.numerals) + ']';
      part(words);
    }
    auto without = numbers(end, r);
    if (r < runs.size() && runs[r].numbering == Numbering::none) without += runs[r++].count;
    if (without > 0) part('[' + std::to_string(without) + ']');
  }
  if (text.empty()) return text;
  if (!pagination.by_leaf) return text + " p.";
  return text + (page_count(pagination) == 2 ? " leaf" : " leaves");
}
/// The extent of a book whose pages bear no numbers, or of which they are not known: all its pages, "[170] p.".
[[nodiscard]] inline std::string extent_line(Formula const& formula) {
  return '[' + std::to_string(page_count(formula)) + "] p.";
}

/// "[8], 205, [3] p. ; 20 cm (4to)". Either may be empty. `size` is what record/recording.hpp writes.
[[nodiscard]] inline std::string physical_description(std::string_view extent, std::string_view size) {
  std::string text{extent};
  if (!extent.empty() && !size.empty()) text += " ; ";
  return text += size;
}

/// Formula, statement of signing, leaves and pages, as a descriptive bibliography prints them:
/// "8°: π² A-K⁸ L⁴(−L4) [$4 (−A1) signed]; 85 leaves, pp. [4] 1-166". A statement that cannot be read stands as it was.
[[nodiscard]] inline std::string collation_line(Formula const& formula) {
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
  }
  text += "; " + leaves_line(formula);
  if (auto const pages = pagination_of(formula)) text += ", " + write_pagination(*pages);
  return text;
}

} // namespace v0
} // namespace bifolium
