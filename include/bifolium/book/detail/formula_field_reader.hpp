// SPDX-License-Identifier: MIT
/// Reads the field of the formula. Catalogues write the leaves, the signing and the pages after the formula, so one text
/// can state four facts; those beside the formula are kept apart until the fields of their own are read.
#pragma once

#include <bifolium/book/detail/field_reader.hpp>
#include <bifolium/book/detail/stated_pages.hpp>
#include <bifolium/record/read_signature_note.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class FormulaFieldReader : protected FieldReader {
  void take(SignatureNote const& note) {
    auto const text = texts_.formula;
    for (auto const& one : note.formula.warnings()) take(one, note.formula);
    book_.formula = stated(Formula{note.formula}, text);
    std::string_view const tail = note.formula.tail();
    auto const tail_at = tail.empty() ? text.npos : text.rfind(tail);
    if (note.signing) {
      auto const at = text.find('$');
      auto const own = note.formula.signing();
      beside_.signing_in_formula =
          stated(Signing{*note.signing}, own ? std::string_view{*own} : tail, place_in(text, at == text.npos ? 0 : at));
    }
    if (tail_at == text.npos) return;
    if (auto const from = pagination_place(tail); from && note.pages) {
      auto const pages = tail.substr(*from);
      if (auto const extent = read_stated_pages(pages))
        beside_.pages_in_formula = stated(Pagination{extent->pagination}, pages, place_in(text, tail_at + *from));
    }
  }
  /// All the words at byte `from` of which a warning quotes the beginning, as the formula keeps them: in a note, or in
  /// the text after it.
  [[nodiscard]] std::string_view words_at(std::size_t from, std::string_view quoted, Formula const& formula) const {
    auto const text = texts_.formula.substr(from);
    auto const is_all = [&](std::string const& words) {
      return words.size() > quoted.size() && text.starts_with(words);
    };
    if (is_all(formula.tail())) return text.substr(0, formula.tail().size());
    for (auto const& words : formula.notes())
      if (is_all(words)) return text.substr(0, words.size());
    return quoted;
  }
  /// A doubt about the formula; one that contradicts a total of leaves stated beside it is a number of leaves.
  void take(Error const& warning, Formula const& formula) {
    if (warning.problem == Problem::text_not_read) {
      auto const from = position_of(texts_.formula, {warning.line, warning.column});
      rest(Field::formula, texts_.formula, {from, from + words_at(from, warning.found_text(), formula).size()});
      return;
    }
    if (warning.problem == Problem::total_contradicts && texts_.leaves.empty() && !book_.leaves) {
      TextCursor cursor{warning.found_text()};
      while (!cursor.at_end() && !cursor.at_digit()) cursor.skip(1);
      if (auto const number = cursor.take_number(most_number)) {
        book_.leaves = stated(std::int64_t{*number}, warning.found_text(), {warning.line, warning.column});
        return;
      }
    }
    // these are findings of their own
    for (auto const told : {Problem::odd_gathering, Problem::count_supplied, Problem::letters_skipped})
      if (warning.problem == told) return;
    doubt(Field::formula, {warning}, texts_.formula);
  }

protected:
  using FieldReader::FieldReader;
  static constexpr std::int64_t most_number = 9999999;

  /// A formula may name a leaf that it does not have, which is a finding and no reason to give up: a parenthesis that
  /// cannot be read is left out and kept apart.
  void formula() {
    if (texts_.formula.empty()) return;
    constexpr int most_left_out = 8;
    std::string text{texts_.formula};
    std::vector<UnreadField> left_out;
    auto read = read_signature_note(text, book_.conventions.dialect());
    auto const error = read ? Error{} : read.error();
    while (!read && left_out.size() < most_left_out) {
      auto const at = position_of(text, {read.error().line, read.error().column});
      auto const open = text.rfind('(', at), close = text.find(')', at);
      if (open == text.npos || close == text.npos || text.find(')', open) != close) break;
      left_out.push_back({Field::formula, read.error(), text.substr(open, close + 1 - open), open, true});
      for (auto i = open; i <= close; ++i) text[i] = ' ';
      read = read_signature_note(text, book_.conventions.dialect());
    }
    if (!read) return unread(Field::formula, error, texts_.formula);
    for (auto const& one : left_out) book_.unread.push_back(one);
    take(*read);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
