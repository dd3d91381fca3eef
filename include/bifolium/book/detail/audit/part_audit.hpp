// SPDX-License-Identifier: MIT
/// Examines a book in several parts or volumes: `A-P⁸; A-R⁴` with `236; 266 p.`. Each part has a number of leaves of
/// its own, so each is examined by itself, and its findings name the part. A part of the formula begins after a
/// semicolon, or where the same letters begin again.
#pragma once

#include <bifolium/book/detail/audit/count_audit.hpp>
#include <bifolium/book/detail/audit/part_repairs.hpp>
#include <bifolium/core/number_of.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class PartAudit {
  static constexpr std::size_t most_searched = 16; // the repairs of all parts are combined
  Description const& book_;
  AuditWeights const& weights_;
  Limits const& limits_;
  Audit& audit_;
  std::vector<TextSpan> formulas_{}, paginations_{};
  PlaceCounter in_formula_{}, in_pagination_{};

  /// Returns the pieces between semicolons that are not in brackets.
  static std::vector<TextSpan> between_semicolons(std::string_view text) {
    std::vector<TextSpan> pieces;
    std::size_t from = 0;
    int depth = 0;
    for (std::size_t i = 0; i <= text.size(); ++i) {
      if (i < text.size()) {
        depth += text[i] == '(' || text[i] == '[' ? 1 : text[i] == ')' || text[i] == ']' ? -1 : 0;
        if (text[i] != ';' || depth > 0) continue;
      }
      if (auto const piece = trimmed(text, {from, i}, " "); !piece.empty()) pieces.push_back(piece);
      from = i + 1;
    }
    return pieces;
  }
  /// Divides the text of a formula where its letters begin again.
  static std::vector<TextSpan> between_alphabets(Stated<Formula> const& formula, Dialect dialect) {
    FormulaPlaces const places{formula.text, formula.value, dialect, FormulaPlaces::Of::runs};
    auto const& runs = formula.value.runs();
    auto const alphabet = formula.value.alphabet();
    std::vector<TextSpan> pieces;
    if (!places.complete()) return pieces;
    auto const series = series_of_runs(formula.value);
    struct Reached {
      std::size_t part{}; // 0: not yet in any
      std::int64_t rank{};
    };
    std::vector<Reached> reached(runs.size()); // by series, the last letter in this part
    std::size_t from = places.runs()[0].from;
    for (std::size_t r = 0; r < runs.size(); ++r) {
      auto& in_series = reached[static_cast<std::size_t>(series[r])];
      bool const letters = runs[r].first.is_letter();
      bool const again = r > 0 && (runs[r].begins_part || (letters && in_series.part == pieces.size() + 1 &&
                                                           runs[r].first.rank(alphabet) <= in_series.rank));
      auto const last = runs[r].last.rank(alphabet);
      auto const part = pieces.size() + (again ? 2 : 1);
      in_series = {part, in_series.part == part && in_series.rank > last ? in_series.rank : last};
      if (!again) continue;
      auto const begin = places.runs()[r].from;
      pieces.push_back({from, trimmed(formula.text, {from, begin}, " ;,").to});
      from = begin;
    }
    pieces.push_back({from, formula.text.size()});
    return pieces;
  }
  template <class T>
  static Stated<T> piece(T value, Stated<T> const& whole, PlaceCounter& places, TextSpan span, std::string text) {
    return {static_cast<T&&>(value), static_cast<std::string&&>(text),
            place_after(whole.at, places.place(whole.text, span.from)), whole.in, whole.from + span.from};
  }
  /// Returns the description of one part, or no value if a piece cannot be read by itself.
  [[nodiscard]] std::optional<Description> part(std::size_t i) {
    Description one;
    one.conventions = book_.conventions;
    one.year = book_.year;
    auto formula_text = std::string{formulas_[i].of(book_.formula->text)};
    auto const formula = read_formula(formula_text, one.conventions.dialect(), limits_);
    if (!formula) return std::nullopt;
    one.formula = piece(Formula{*formula}, *book_.formula, in_formula_, formulas_[i], formula_text);
    // the unit is written once, after the last part
    auto page_text = std::string{paginations_[i].of(book_.pagination->text)};
    auto extent = read_extent(page_text, limits_);
    if (!extent) extent = read_extent(page_text += book_.pagination->value.by_leaf() ? " leaves" : " p.", limits_);
    if (!extent) return std::nullopt;
    one.pagination =
        piece(Pagination{extent->pagination}, *book_.pagination, in_pagination_, paginations_[i], page_text);
    return one;
  }
  /// Names the part in its repairs. A unit that the part borrowed from the end of the statement ("120; 246 p.") is not in
  /// its own text, so a repair that edits it is left out.
  void name_part(std::vector<Repair>& repairs, std::size_t i) const {
    auto const end = book_.pagination->from + paginations_[i].to;
    std::erase_if(repairs, [&](Repair const& repair) {
      for (auto const& edit : repair.edits)
        if (edit.corrects == Field::pagination && edit.to > end) return true;
      return false;
    });
    for (auto& repair : repairs) repair.says = "part " + std::to_string(i + 1) + ": " + repair.says;
  }

public:
  PartAudit(Description const& book, AuditWeights const& weights, Limits const& limits, Audit& audit)
      : book_{book}, weights_{weights}, limits_{limits}, audit_{audit} {}

  /// Examines the parts. Returns false if there is only one part, or if the fields cannot be divided into parts. `search`:
  /// repairs are searched for.
  bool run(bool search = true) {
    if (!book_.formula || !book_.pagination || book_.pagination->value.unpaged ||
        book_.pagination->text.find(';') == std::string::npos)
      return false;
    paginations_ = between_semicolons(book_.pagination->text);
    if (paginations_.size() < 2) return false;
    formulas_ = between_alphabets(*book_.formula, book_.conventions.dialect());
    if (formulas_.size() != paginations_.size()) return false;
    std::vector<Description> parts;
    for (std::size_t i = 0; i < formulas_.size(); ++i) {
      auto one = part(i);
      if (!one) return false;
      parts.push_back(static_cast<Description&&>(*one));
    }
    examine(parts, search);
    return true;
  }

private:
  void examine(std::vector<Description> const& parts, bool search) {
    std::vector<Audit> answers(parts.size());
    std::size_t contradicting = 0;
    std::int64_t leaves = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      CountAudit{parts[i], weights_, limits_, answers[i]}.run(search && contradicting < most_searched);
      leaves += answers[i].leaves.value_or(parts[i].formula->value.leaves());
      for (auto& finding : answers[i].findings) {
        if (finding.id == FindingId::exponent_omitted) continue; // reported for the whole
        finding.says = "part " + std::to_string(i + 1) + ": " + finding.says;
        audit_.findings.push_back(finding);
      }
      contradicting += answers[i].leaves ? 0U : 1U;
    }
    audit_.implied.push_back({Field::formula, Implied::Quantity::leaves, leaves, leaves});
    if (contradicting == 0) audit_.leaves = leaves;
    if (book_.leaves) {
      audit_.implied.push_back({Field::leaves, Implied::Quantity::leaves, book_.leaves->value, book_.leaves->value});
      auto const more = book_.leaves->value - leaves;
      if (more != 0)
        audit_.findings.push_back({FindingId::leaves_contradict,
                                   Severity::error,
                                   FieldSet{Field::formula} | Field::leaves,
                                   more,
                                   "the parts of the formula have " + number_of(leaves, "leaf", "leaves") +
                                       " together; the stated number is " + std::to_string(book_.leaves->value),
                                   {},
                                   {}});
    }
    if (!search) return;
    if (contradicting > most_searched) {
      not_searched(audit_, "no repairs are searched for where more than " + std::to_string(most_searched) +
                               " parts contradict each other");
      audit_.share_none = 1;
    } else if (contradicting > 0 || (book_.leaves && book_.leaves->value != leaves))
      propose(parts, answers, leaves);
  }
  /// Makes the proposals: one repair of every part that contradicts itself.
  void propose(std::vector<Description> const& parts, std::vector<Audit>& answers, std::int64_t leaves) {
    PartRepairs repairs{book_, weights_, leaves};
    for (std::size_t i = 0; i < parts.size(); ++i) {
      if (answers[i].leaves) continue;
      name_part(answers[i].repairs, i);
      repairs.add(answers[i].repairs, parts[i].formula->value.leaves(), answers[i].share_none);
    }
    repairs.write(audit_, [&](Repair const& repair) { return holds(repair); });
  }
  /// Returns true if the parts agree after the repair, when its texts are read again.
  [[nodiscard]] bool holds(Repair const& repair) const {
    Description after;
    after.conventions = book_.conventions;
    if (repair.letters) after.conventions.letters = repair.letters;
    auto const formula = read_formula_without(*repair.formula, after.conventions.dialect(), limits_);
    auto const extent = read_stated_pages(*repair.pagination, limits_);
    if (!formula.note || !extent) return false;
    after.formula = Stated<Formula>{formula.note->formula, *repair.formula};
    after.pagination = Stated<Pagination>{extent->pagination, *repair.pagination};
    if (book_.leaves) after.leaves = Stated<std::int64_t>{repair.leaves, repair.leaves_text.value_or("")};
    Audit audit;
    if (!PartAudit{after, weights_, limits_, audit}.run(false)) return false;
    return !audit.contradicts() && audit.leaves.value_or(repair.leaves) == repair.leaves;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
