// SPDX-License-Identifier: MIT
/// Writes a formula in one canonical notation: a blank between runs, a semicolon between parts, changes directly after
/// the run, a hyphen and never an en dash (because records are searched with the hyphen), a true minus and a plus-minus
/// in changes. Reading the text gives the same formula.
#pragma once

#include <bifolium/collation/detail/write_changes.hpp>
#include <bifolium/collation/formula.hpp>
#include <bifolium/leaf/named_leaves.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

class FormulaWriter : ChangeWriter {
  /// Returns true if the mark states its leaves, so that it needs no count: 'gg3.4'. Without a count, a mark with a dash
  /// or a blank would be a quotation ("fol. 1"), and one in square brackets may be words (["fol1"]).
  static bool says_its_leaves(Run const& run) {
    if (run.gatherings != 1 || run.leaves.size() != 1 || run.unsigned_throughout) return false;
    auto const named = named_leaves(run.first);
    for (auto const c : std::string_view{run.first.text(), named ? run.first.text_size() : 0})
      if (!is_latin_letter(c) && !is_digit(c) && c != '.' && c != '*') return false;
    return named && run.leaves.term(0) == named->count;
  }
  /// Returns true if the first mark without its count could be a quoted formula, "B2", since no gathering with a plain
  /// mark comes after it.
  [[nodiscard]] bool could_be_quoted() const noexcept {
    auto const& runs = formula_.runs();
    auto const& mark = runs[0].first;
    std::string_view const text{mark.text(), mark.text_size()};
    if (text.find('.') != text.npos && text.find('*') == text.npos) return false; // 'gg3.4'
    if (runs.size() == 1) return true;
    auto const& next = runs[1];
    bool const plain = next.first.is_letter() || next.first.mark() == Mark::number;
    return next.begins_part || next.unsigned_throughout || next.first_inferred || !plain;
  }

  /// Returns true if the words would be of a list of leaves after a comma: as in K8, 7 wanting.
  [[nodiscard]] static bool could_go_on_with_leaves(std::string_view words) {
    auto i = words.find_first_not_of("0123456789");
    if (i == 0 && !words.empty() && is_latin_letter(words[0])) i = words.find_first_not_of("0123456789", 1);
    if (i == 0 || i == words.npos || !is_digit(words[i - 1])) return false;
    for (; i < words.size(); ++i) {
      auto const word = word_at(words, i);
      if (word.empty()) continue;
      i += word.size() - 1;
      if (word.size() == 1 || word == "and") continue;
      if (is_unit_of_leaves(word)) return false; // 80 Bl.
      return is_blank_word(word) || is_wanting_word(word) || word == "are" || word == "both" ||
             cancel_word(word) != CancelWord::none;
    }
    return false;
  }

public:
  FormulaWriter(Formula const& formula, Notation notation) : ChangeWriter{formula, notation} {}

  void signatures() {
    auto const& runs = formula_.runs();
    std::size_t change = 0;
    bool open = false;
    std::size_t part = 0;
    auto const parts = formula_.parts();
    for (std::size_t r = 0; r < runs.size(); ++r) {
      auto const& run = runs[r];
      bool const begins = part < parts.size() && parts[part].first_run == r;
      bool const labelled = begins && parts[part].label;
      if (open && (!run.unsigned_throughout || labelled)) text_ += ']', open = false;
      if (r != 0) text_ += run.begins_part ? "; " : " ";
      if (labelled) put(*parts[part].label), text_ += ": ";
      if (begins) ++part;
      if (!open && run.unsigned_throughout) text_ += '[', open = true;
      mark(run.first, run.first_inferred);
      if (run.gatherings > 1 || run.first != run.last) {
        text_ += '-';
        mark(run.last, run.last_inferred);
      }
      if (!says_its_leaves(run) || (r == 0 && could_be_quoted())) cycle(run.leaves, run.last.mark() == Mark::number);
      if (run.imperfect) text_ += '+';
      while (change < formula_.changes().size() && form(change).after_run == r) change = parenthesis(change);
    }
    if (open) text_ += ']';
  }
  /// Royal 4° (8s): with a colon after it, or nothing if no format is stated.
  void format_statement() {
    if (!formula_.format()) return;
    if (auto const paper = formula_.paper_class()) {
      put(*paper);
      text_ += paper->size() < 4 ? ". " : " "; // an abbreviation: gr. 8°
    }
    text_ += formula_.format()->symbol().view();
    if (formula_.second_format()) text_ += " and ", text_ += formula_.second_format()->symbol().view();
    if (auto const gathered = formula_.gathered()) {
      for (std::size_t i = 0; i < gathered->size(); ++i) text_ += i == 0 ? " (" : "/", number(gathered->term(i));
      text_ += gathered->size() == 1 ? "s)" : ")";
    }
    text_ += ": ";
  }
  std::string whole() {
    if (notation_ == Notation::tei) text_ += "<formula>";
    format_statement();
    signatures();
    if (auto const signing = formula_.signing()) text_ += ' ', put(*signing);
    if (!formula_.tail().empty()) {
      auto const& tail = formula_.tail(); // ", in eights" would be the count of the last run
      bool const counts = is_word_before_counts(word_at(tail, 0));
      bool const joins = tail.starts_with("and ") && (tail.size() == 4 || !is_digit(tail[4])); // as ", and" joins a run
      bool const dashed = is_dash(decode(tail, 0).value); // after a comma it would be a run without a beginning
      text_ += counts || could_go_on_with_leaves(tail) ? "; " : dashed ? ": " : joins ? "," : ", ";
      put(tail);
    }
    if (notation_ == Notation::tei) text_ += "</formula>";
    return static_cast<std::string&&>(text_);
  }
  std::string format_and_signatures() {
    format_statement();
    signatures();
    return static_cast<std::string&&>(text_);
  }
  std::string signatures_only() {
    signatures();
    return static_cast<std::string&&>(text_);
  }
};

} // namespace detail

/// Writes the whole formula with format, statement of signing and the text after it. In every notation, reading the
/// text gives the same formula, and writing that formula gives the same text.
/// Example: `write_formula(*read_formula("8vo: A-C8")) == "8°: A-C⁸"`.
[[nodiscard]] inline std::string write_formula(Formula const& formula, Notation notation = Notation::unicode) {
  return detail::FormulaWriter{formula, notation}.whole();
}
/// Writes the format, the gatherings and the changes, without the statement of signing and the text after them.
[[nodiscard]] inline std::string write_format_and_signatures(Formula const& formula,
                                                             Notation notation = Notation::unicode) {
  return detail::FormulaWriter{formula, notation}.format_and_signatures();
}
/// Writes the gatherings and changes only, as for a note on signatures.
[[nodiscard]] inline std::string write_signatures(Formula const& formula, Notation notation = Notation::unicode) {
  return detail::FormulaWriter{formula, notation}.signatures_only();
}

} // namespace v0
} // namespace bifolium
