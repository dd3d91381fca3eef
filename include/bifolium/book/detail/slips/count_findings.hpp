// SPDX-License-Identifier: MIT
/// The findings about the number of leaves, each with its sentence.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/book/detail/slips/count_facts.hpp>
#include <bifolium/book/detail/slips/formula_edit_text.hpp>
#include <bifolium/core/number_of.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Converts an edit of the text of a value to an edit of the field of which this text is all or a part.
template <class T> Edit edit_of(Field corrects, SlipKind kind, Stated<T> const& stated, TextEdit const& edit) {
  return {stated.in.value_or(corrects),
          kind,
          stated.from + edit.span.from,
          stated.from + edit.span.to,
          place_after(stated.at, place_in(stated.text, edit.span.from)),
          std::string{edit.span.of(stated.text)},
          edit.put,
          corrects};
}
/// Returns the text of a value after the edits of its field that are in it, or of these those that correct this value.
template <class T>
std::string edited(Stated<T> const& stated, Field field, std::vector<Edit> const& edits,
                   std::optional<Field> corrects = {}) {
  std::vector<TextEdit> of_text;
  for (auto const& edit : edits)
    if (edit.field == stated.in.value_or(field) && edit.corrects == corrects.value_or(edit.corrects) &&
        edit.from >= stated.from && edit.to <= stated.from + stated.text.size())
      of_text.push_back({{edit.from - stated.from, edit.to - stated.from}, edit.put});
  return edited(stated.text, of_text);
}

class CountFindings {
  CountFacts const& facts_;
  Description const& book_;
  Audit& audit_;

  [[nodiscard]] std::string pages_say() const {
    std::string sum;
    auto const& runs = book_.pagination->value.runs;
    bool const by_leaf = book_.pagination->value.by_leaf();
    for (std::size_t r = 0; r < runs.size(); ++r)
      sum += (r == 0 ? "" : " + ") + std::to_string(by_leaf ? runs[r].count : runs[r].pages());
    auto const total = by_leaf ? *facts_.pages() / 2 : *facts_.pages();
    auto const counted = by_leaf ? number_of(total, "leaf", "leaves") : number_of(total, "page", "pages");
    std::string plates;
    if (auto const most = book_.pagination->value.plate_pages; most > 0)
      plates = ", of which up to " + number_of(most, "can be a plate", "can be plates");
    return "the pagination has " + (runs.size() > 1 ? sum + " = " : std::string{}) + counted + plates;
  }
  void contradiction_of_pages(std::int64_t leaves, Field with) {
    auto const missing = facts_.pages_missing(leaves);
    Finding finding{
        FindingId::pages_contradict, Severity::error, FieldSet{with} | Field::pagination, -missing, {}, {}, {}};
    auto const off = missing < 0 ? -missing : missing;
    auto const by_leaf = book_.pagination->value.by_leaf();
    finding.says = (with == Field::formula ? "the formula has " : "the record states ") +
                   number_of(leaves, "leaf", "leaves") +
                   (by_leaf ? "" : " (" + number_of(2 * leaves, "page", "pages") + ')') + "; " + pages_say() + ", " +
                   std::string{missing < 0 && !book_.pagination->value.total().is_exact() ? "at least " : ""} +
                   std::to_string(by_leaf ? off / 2 : off) + (missing < 0 ? " too many" : " too few");
    audit_.findings.push_back(finding);
  }

public:
  CountFindings(CountFacts const& facts, Audit& audit) : facts_{facts}, book_{facts.book()}, audit_{audit} {}

  void imply() {
    auto const add = [&](Field field, std::int64_t low, std::int64_t high) {
      audit_.implied.push_back({field, Implied::Quantity::leaves, low, high});
    };
    if (facts_.formula_leaves()) add(Field::formula, *facts_.formula_leaves(), *facts_.formula_leaves());
    if (facts_.pages()) {
      auto const total = book_.pagination->value.total();
      auto const least = (total.low + 1) / 2, stated = (total.stated + 1) / 2;
      add(Field::pagination, least, book_.conventions.blanks == BlankLeaves::counted ? stated : stated + 1);
    }
    if (book_.leaves) add(Field::leaves, book_.leaves->value, book_.leaves->value);
  }
  void find() {
    bool const leaves_known = facts_.formula_leaves() || book_.leaves;
    std::int64_t const leaves = facts_.formula_leaves() ? *facts_.formula_leaves()
                                : book_.leaves          ? book_.leaves->value
                                                        : 0;
    auto const with = facts_.formula_leaves() ? Field::formula : Field::leaves;
    if (leaves_known && facts_.pages()) {
      auto const pages = facts_.pages_verdict(leaves);
      if (pages == CountVerdict::contradicts) contradiction_of_pages(leaves, with);
      if (pages == CountVerdict::blank_missing) pages_not_counted(leaves, with);
    }
    if (facts_.formula_leaves() && book_.leaves && *facts_.formula_leaves() != book_.leaves->value)
      contradiction_of_leaves(*facts_.formula_leaves(), book_.leaves->value);
  }
  /// Notes that the pagination has fewer pages than the leaves, as many as blank or unnumbered ones can be.
  void pages_not_counted(std::int64_t leaves, Field with) {
    auto const missing = facts_.pages_missing(leaves);
    bool const uncounted = missing > Pagination::blank_leaf;
    Finding note{uncounted ? FindingId::pages_uncounted : FindingId::last_blank_not_counted,
                 Severity::note,
                 FieldSet{with} | Field::pagination,
                 -missing,
                 {},
                 {},
                 {}};
    note.says = (with == Field::formula ? "the formula has " : "the record states ") +
                number_of(leaves, "leaf", "leaves") + " and " + pages_say() + ": " +
                number_of(missing, "page", "pages") + " too few, as when " +
                (uncounted ? "pages without numbers are" : "a blank leaf is") + " not counted";
    note.settle =
        uncounted ? "how many pages without numbers there are" : "whether the first or the last leaf is blank";
    audit_.findings.push_back(note);
  }
  /// Adds that the formula has another number of leaves than the one that is stated.
  void contradiction_of_leaves(std::int64_t of_formula, std::int64_t stated) {
    auto const more = stated - of_formula;
    auto const blank = more < 0 && -more <= facts_.blanks();
    Finding finding{blank ? FindingId::last_blank_not_counted : FindingId::leaves_contradict,
                    blank ? Severity::note : Severity::error,
                    FieldSet{Field::formula} | Field::leaves,
                    more,
                    {},
                    {},
                    {}};
    finding.says = "the formula has " + number_of(of_formula, "leaf", "leaves") + "; the stated number is " +
                   std::to_string(stated) + ", " + std::to_string(more < 0 ? -more : more) +
                   (more < 0 ? " too few" : " too many");
    if (book_.plates && more == book_.plates->value && more > 0) {
      finding.id = FindingId::plates_in_leaves;
      finding.fields = finding.fields | Field::plates;
      finding.says += ", exactly the number of plates";
      finding.settle = "whether plates were counted as leaves";
    }
    audit_.findings.push_back(finding);
  }
  /// Odd numbers are on rectos, so an even number of pages comes before page 1. Returns true, with a finding, if that
  /// is not so.
  bool look_at_versos() {
    if (!facts_.pages() || book_.pagination->value.by_leaf()) return false;
    std::int64_t before = 0;
    for (auto const& run : book_.pagination->value.runs) {
      if (run.starred) return false; // 24a after 24 is put in, and stands on a recto
      if (run.numbering == Numbering::printed && run.numerals == Numerals::arabic && before > 0) {
        if ((before + run.first) % 2 == 0) {
          Finding finding{
              FindingId::numbers_begin_on_verso, Severity::doubt, FieldSet{Field::pagination}, {}, {}, {}, {}};
          finding.says = number_of(before, "page comes", "pages come") + " before page " + std::to_string(run.first) +
                         " in the pagination, so odd numbers would be on versos";
          finding.settle =
              "whether page " + std::to_string(run.first) + " is a recto, and how many pages come before it";
          audit_.findings.push_back(finding);
          return true;
        }
        return false;
      }
      before += run.pages();
    }
    return false;
  }
  /// Adds the leaf counts that the reader supplied, and edits that write them.
  void omitted_counts() {
    if (!book_.formula) return;
    bool any = false;
    for (auto const& warning : book_.formula->value.warnings()) any = any || warning.problem == Problem::count_supplied;
    if (!any) return;
    Finding note{FindingId::exponent_omitted, Severity::note, FieldSet{Field::formula}, {}, {}, {}, {}};
    note.says = "the formula has gatherings without a leaf count, which means eight in this catalogue";
    if (audit_.leaves && (facts_.pages() || book_.leaves)) {
      note.says += "; with them the fields agree";
      FormulaPlaces const places{facts_.formula_text(), book_.formula->value, book_.conventions.dialect(),
                                 FormulaPlaces::Of::runs};
      auto shape = shape_of(book_.formula->value);
      for (std::size_t r = 0; r < shape.runs.size(); ++r) shape.runs[r].omitted = places.omitted(r);
      FormulaEditText const writer{facts_.formula_text(), book_.formula->value, places, shape};
      FormulaEdit edit;
      edit.what = FormulaEdit::What::supply_all;
      edit.a = 8;
      for (auto const& one : writer.of_all_counts(edit))
        note.edits.push_back(edit_of(Field::formula, SlipKind::omitted_exponent, *book_.formula, one));
    }
    note.settle = "the number of leaves of these gatherings";
    audit_.findings.push_back(note);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
