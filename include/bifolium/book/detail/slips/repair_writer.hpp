// SPDX-License-Identifier: MIT
/// Writes a proposal of the search as a repair: edits of the texts as written. The edited texts are read again before
/// the repair is offered.
#pragma once

#include <bifolium/book/detail/reading/stated_pages.hpp>
#include <bifolium/book/detail/slips/leaves_edit.hpp>
#include <bifolium/book/detail/slips/page_places.hpp>
#include <bifolium/book/detail/slips/search.hpp>
#include <bifolium/book/detail/slips/slip_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class RepairWriter {
  CountFacts const& facts_;
  Description const& book_;
  std::optional<FormulaPlaces> const& formula_places_;
  std::optional<PagePlaces> const& page_places_;
  SearchInput const& input_;

  /// Writes the edits of the formula. Returns false if they cannot be written so that the text reads back.
  bool write_formula_edits(FormulaVariant const& variant, Repair& repair) const {
    auto const& stated = *book_.formula;
    FormulaEditText const writer{stated.text, stated.value, *formula_places_, input_.formulas[0]};
    auto dialect = book_.conventions.dialect();
    if (variant.reading != 0 || variant.shape.added != input_.formulas[0].added) {
      dialect.letters = variant.shape.added;
      repair.letters = variant.shape.added;
    }
    for (int number = 0; number < 6; ++number) {
      std::vector<TextEdit> edits;
      std::vector<SlipKind> kinds;
      for (int e = 0; e < variant.count; ++e) {
        auto const& edit = variant.edits[e];
        if (edit.what == FormulaEdit::What::alphabet) continue;
        if (edit.what == FormulaEdit::What::supply_all || edit.what == FormulaEdit::What::supply_next) {
          for (auto const& one : writer.of_all_counts(edit)) edits.push_back(one), kinds.push_back(edit.kind);
          continue;
        }
        auto const one = writer.of(edit, number, variant.count == 2 && variant.edits[0].run == variant.edits[1].run);
        if (!one) return false;
        edits.push_back(*one), kinds.push_back(edit.kind);
      }
      auto const text = edited(stated.text, edits);
      if (leaves_of_formula(text, dialect, facts_.limits()) == variant.leaves) {
        repair.formula = text;
        for (std::size_t i = 0; i < edits.size(); ++i)
          repair.edits.push_back(edit_of(Field::formula, kinds[i], stated, edits[i]));
        return true;
      }
    }
    return false;
  }
  bool write_page_edits(PageVariant const& variant, Repair& repair) const {
    auto const& stated = *book_.pagination;
    std::vector<TextEdit> edits;
    for (int e = 0; e < variant.count; ++e) {
      if (!page_places_->complete()) return false;
      auto const one = page_places_->of(variant.edits[e]);
      if (!one) return false;
      edits.push_back(*one);
    }
    repair.pagination = edited(stated.text, edits);
    auto const read = read_stated_pages(*repair.pagination, facts_.limits());
    if (!read || read->pages() != variant.shape.pages()) return false;
    for (std::size_t i = 0; i < edits.size(); ++i)
      repair.edits.push_back(edit_of(Field::pagination, variant.edits[i].kind, stated, edits[i]));
    return true;
  }
  /// Describes an edit in the text of the value that it corrects.
  [[nodiscard]] std::string words_of(Edit const& edit) const {
    auto const in = [&](auto const& stated) { return in_words(edit, stated.text, stated.from); };
    if (edit.corrects == Field::formula) return in(*book_.formula);
    return edit.corrects == Field::pagination ? in(*book_.pagination) : in(*book_.leaves);
  }
  [[nodiscard]] std::string words_of(Repair const& repair) const {
    std::string words;
    for (auto const& edit : repair.edits) words += (words.empty() ? "" : "; and ") + words_of(edit);
    if (repair.letters && *repair.letters != Letters{}) {
      words += words.empty() ? "" : "; and ";
      words += "the letters of the book include";
      if (repair.letters->j) words += " J";
      if (repair.letters->u) words += " U";
      if (repair.letters->w) words += " W";
    }
    return words.empty() ? "as it reads" : words;
  }

public:
  RepairWriter(CountFacts const& facts, std::optional<FormulaPlaces> const& formula_places,
               std::optional<PagePlaces> const& page_places, SearchInput const& input)
      : facts_{facts}, book_{facts.book()}, formula_places_{formula_places}, page_places_{page_places}, input_{input} {}

  /// Returns the repair, or no value if an edit cannot be written, or if its text does not read back to the same
  /// numbers.
  [[nodiscard]] std::optional<Repair> repair(Search const& search, Proposal const& proposal) const {
    Repair repair;
    if (proposal.formula >= 0) {
      auto const& variant = search.formula(proposal);
      repair.leaves = variant.leaves;
      if (!write_formula_edits(variant, repair)) return std::nullopt;
    }
    if (proposal.pages >= 0 && !write_page_edits(search.pages(proposal), repair)) return std::nullopt;
    if (proposal.leaves >= 0) {
      repair.leaves = search.leaves(proposal).leaves;
      if (!write_leaves_edit(*book_.leaves, search.leaves(proposal), repair)) return std::nullopt;
    }
    if (repair.formula) repair.formula = edited(*book_.formula, Field::formula, repair.edits);
    repair.says = words_of(repair);
    return repair;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
