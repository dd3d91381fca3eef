// SPDX-License-Identifier: MIT
/// The number of leaves that each field of a description gives, and whether the fields agree.
#pragma once

#include <bifolium/book/description.hpp>
#include <bifolium/book/detail/reading/left_out.hpp>
#include <bifolium/book/detail/slips/formula_places.hpp>
#include <bifolium/book/detail/slips/formula_shape.hpp>
#include <bifolium/collation/ideal_copy.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The result of comparing the fields.
enum class CountVerdict : std::uint8_t { agrees, blank_missing, contradicts };

class CountFacts {
  Description const& book_;
  Limits const& limits_;
  std::optional<std::int64_t> formula_leaves_{}, pages_{};
  int blanks_{};
  std::string formula_text_{};                // with blanks in place of the parentheses that could not be read
  std::vector<ChangePlace> unread_changes_{}; // those parentheses, and the number of leaves that they seem to add

  void leave_out_unread() {
    std::string_view const text = book_.formula->text;
    auto const head = note_head(text).bytes;
    formula_text_ = std::string(head, ' ').append(text.substr(head));
    for (auto const& piece : book_.unread) {
      if (piece.field != Field::formula || piece.error.problem == Problem::trailing_text || piece.text.empty() ||
          piece.text[0] != '(')
        continue;
      auto const end = piece.from + piece.text.size();
      if (end > formula_text_.size()) continue;
      auto const added = leaves_added_by(piece.text);
      for (auto i = piece.from; i < end; ++i) formula_text_[i] = ' ';
      unread_changes_.push_back({{piece.from, end}, added});
      *formula_leaves_ += added;
    }
  }

public:
  CountFacts(Description const& book, Limits const& limits) : book_{book}, limits_{limits} {
    if (book.formula) {
      formula_leaves_ = book.formula->value.leaves();
      leave_out_unread();
      if (auto const& formula = book.formula->value; !formula.notes().empty()) {
        IdealCopy const copy{formula};
        blanks_ = static_cast<int>(copy.blanks().size());
      }
    }
    if (book.pagination && !book.pagination->value.runs.empty() && !book.pagination->value.incomplete &&
        !book.pagination->value.approximate)
      pages_ = book.pagination->value.pages();
  }
  [[nodiscard]] Description const& book() const { return book_; }
  [[nodiscard]] Limits const& limits() const { return limits_; }
  [[nodiscard]] std::optional<std::int64_t> formula_leaves() const { return formula_leaves_; }
  [[nodiscard]] std::optional<std::int64_t> pages() const { return pages_; }
  /// Returns the number of leaves that the formula notes as blank.
  [[nodiscard]] int blanks() const { return blanks_; }
  [[nodiscard]] std::string const& formula_text() const { return formula_text_; }
  [[nodiscard]] std::vector<ChangePlace> const& unread_changes() const { return unread_changes_; }
  /// Returns the number of leaves, from the formula if there is one.
  [[nodiscard]] std::optional<std::int64_t> leaves() const {
    return formula_leaves_ ? formula_leaves_ : book_.leaves ? std::optional{book_.leaves->value} : std::nullopt;
  }
  /// Returns the number of fields that state a number.
  [[nodiscard]] int fields() const { return (formula_leaves_ ? 1 : 0) + (pages_ ? 1 : 0) + (book_.leaves ? 1 : 0); }
  /// Sets the number of leaves of the formula after it was read with other letters.
  void take(std::int64_t formula_leaves) { formula_leaves_ = formula_leaves; }

  /// Returns by how many pages the pagination has fewer than `leaves` leaves; less than zero if it has more.
  [[nodiscard]] std::int64_t pages_missing(std::int64_t leaves) const {
    return book_.pagination->value.pages_missing(2 * leaves);
  }
  [[nodiscard]] CountVerdict pages_verdict(std::int64_t leaves) const {
    auto const missing = pages_missing(leaves);
    if (missing == 0) return CountVerdict::agrees;
    bool const by_leaf = book_.pagination->value.by_leaf();
    if (missing == Pagination::blank_verso && !by_leaf) return CountVerdict::agrees;
    if (missing > Pagination::blank_verso && missing <= 2 * blanks_ + Pagination::blank_verso)
      return CountVerdict::agrees; // the formula says that it is blank
    // pages without numbers were not counted
    if (missing > Pagination::blank_verso && book_.conventions.pages == PagesWithoutNumbers::left_out)
      return CountVerdict::blank_missing;
    bool const may_be_blank = missing > Pagination::blank_verso && missing <= Pagination::blank_leaf &&
                              book_.conventions.blanks != BlankLeaves::counted;
    return may_be_blank ? CountVerdict::blank_missing : CountVerdict::contradicts;
  }
  [[nodiscard]] CountVerdict verdict(std::optional<std::int64_t> formula) const {
    auto result = CountVerdict::agrees;
    auto const worse = [&](CountVerdict other) { result = other > result ? other : result; };
    auto const leaves = formula ? formula : book_.leaves ? std::optional{book_.leaves->value} : std::nullopt;
    if (leaves && pages_) worse(pages_verdict(*leaves));
    if (formula && book_.leaves && *formula != book_.leaves->value) {
      bool const blank = blanks_ > 0 && *formula - book_.leaves->value > 0 && *formula - book_.leaves->value <= blanks_;
      worse(blank ? CountVerdict::agrees : CountVerdict::contradicts);
    }
    return result;
  }

  [[nodiscard]] std::optional<Formula> read_with(Letters letters) const {
    auto dialect = book_.conventions.dialect();
    dialect.letters = letters;
    auto read = read_formula(formula_text_, dialect, limits_);
    if (!read) return std::nullopt;
    return *read;
  }
  /// Returns which of J, U and W are printed at the end of a run: a letter without another letter beside it.
  [[nodiscard]] Letters letters_printed() const {
    Letters printed;
    std::string_view const text = formula_text_;
    int depth = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
      depth += text[i] == '(' ? 1 : text[i] == ')' && depth > 0 ? -1 : 0;
      auto const c = small_letter(text[i]);
      if (depth > 0 || (c != 'j' && c != 'u' && c != 'w')) continue;
      auto const other = [&](std::size_t k) { return is_latin_letter(text[k]) && small_letter(text[k]) != c; };
      if ((i > 0 && other(i - 1)) || (i + 1 < text.size() && other(i + 1))) continue;
      printed.j = printed.j || c == 'j';
      printed.u = printed.u || c == 'u';
      printed.w = printed.w || c == 'w';
    }
    return printed;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
