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
    take_doubts(note.formula);
    book_.formula = stated(Formula{note.formula}, text);
    std::string_view const tail = note.formula.tail();
    auto const tail_at = tail.empty() ? text.npos : text.rfind(tail);
    if (note.signing) {
      auto const own = note.formula.signing();
      std::string_view const words = own ? std::string_view{*own} : tail;
      auto const at = text.find('$'), before = words.find('$'); // which is in the text of every statement of signing
      auto const from = at == text.npos || before == words.npos || at < before ? 0 : at - before;
      beside_.signing_in_formula = stated(Signing{*note.signing}, Part{words, from, place_in(text, from)});
    }
    if (tail_at == text.npos) return;
    if (auto const from = pagination_place(tail); from && note.pages) {
      auto const pages = tail.substr(*from);
      if (auto const extent = read_stated_pages(pages, limits_))
        beside_.pages_in_formula =
            stated(Pagination{extent->pagination}, part(text, {tail_at + *from, tail_at + tail.size()}));
    }
  }
  /// The words of which warnings quote the beginning, as the formula keeps them: in a note, or in the text after it. Notes
  /// and warnings come in the order of the text, so that each note is looked at once as a rule; `looks_` is there for
  /// texts in which it is not.
  class WordsOfWarnings {
    Formula const& formula_;
    std::string_view text_;
    std::size_t note_{}, looks_;

    [[nodiscard]] bool is_all(std::string_view words, std::string_view text, std::string_view quoted) {
      bool const begins = words.size() > quoted.size() && words.starts_with(quoted);
      looks_ -= (std::min)(looks_, begins ? words.size() : 1);
      return begins && text.starts_with(words);
    }
    /// The part from byte `from` that a warning quotes. It may quote blanks in place of characters of more bytes.
    [[nodiscard]] TextSpan as_many_characters(std::size_t from, std::string_view quoted) const noexcept {
      auto to = from;
      for (std::size_t i = 0; i < quoted.size() && to < text_.size(); i += decode(quoted, i).bytes)
        to += decode(text_, to).bytes;
      return {from, to};
    }

  public:
    WordsOfWarnings(Formula const& formula, std::string_view text)
        : formula_{formula}, text_{text}, looks_{16 * text.size()} {}
    /// All the words at byte `from` of which a warning quotes the beginning.
    [[nodiscard]] TextSpan at(std::size_t from, std::string_view quoted) {
      constexpr std::size_t least_cut = sizeof Error::found - 4; // a quotation is cut at a whole character
      if (quoted.size() < least_cut) return as_many_characters(from, quoted);
      auto const text = text_.substr(from);
      auto const& notes = formula_.notes();
      if (is_all(formula_.tail(), text, quoted)) return {from, from + formula_.tail().size()};
      for (std::size_t i = 0; i < notes.size() && looks_ > 0; ++i) {
        auto const one = (note_ + i) % notes.size();
        if (!is_all(notes[one], text, quoted)) continue;
        note_ = one + 1;
        return {from, from + notes[one].size()};
      }
      return as_many_characters(from, quoted);
    }
  };
  void take_doubts(Formula const& formula) {
    WordsOfWarnings words{formula, texts_.formula};
    auto const& all = formula.warnings();
    std::vector<std::uint32_t> order;
    for (std::uint32_t i = 0; i < all.size(); ++i)
      if (all[i].problem == Problem::text_not_read) order.push_back(i);
    merge_sort(order, [&](std::uint32_t a, std::uint32_t b) { return all[a].place < all[b].place; });
    TextPlace here;
    std::size_t from = 0;
    for (auto const i : order) {
      auto const at = all[i].place.value_or(TextPlace{});
      from += position_of(texts_.formula.substr(from), at, here);
      here = at;
      rest(Field::formula, texts_.formula, words.at(from, all[i].found_text()), at);
    }
    for (auto const& one : all)
      if (one.problem != Problem::text_not_read) take(one);
  }
  /// A doubt about the formula; one that contradicts a total of leaves stated beside it is a number of leaves.
  void take(Error const& warning) {
    if (warning.problem == Problem::total_contradicts && texts_.leaves.empty() && !book_.leaves) {
      TextCursor cursor{warning.found_text()};
      while (!cursor.at_end() && !cursor.at_digit()) cursor.skip(1);
      auto const at = warning.place.value_or(TextPlace{});
      auto const from = position_of(texts_.formula, at);
      bool const whole = texts_.formula.substr(from).starts_with(warning.found_text());
      if (auto const number = whole ? cursor.take_number(most_number) : std::nullopt) {
        book_.leaves = stated(std::int64_t{*number}, Part{warning.found_text(), from, at});
        book_.leaves->in = Field::formula;
        return;
      }
    }
    // these are findings of their own
    for (auto const told : {Problem::odd_gathering, Problem::count_supplied, Problem::letters_skipped})
      if (warning.problem == told) return;
    doubt(Field::formula, {warning});
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
    auto read = read_signature_note(text, book_.conventions.dialect(), limits_);
    auto const error = read ? Error{} : read.error();
    while (!read && left_out.size() < most_left_out) {
      auto const at = position_of(text, read.error().place.value_or(TextPlace{}));
      auto const open = text.rfind('(', at), close = text.find(')', at);
      if (open == text.npos || close == text.npos || text.find(')', open) != close) break;
      auto const place = place_in(text, open); // the same in the field, where the bytes before it may be more
      left_out.push_back({Field::formula, read.error(), text.substr(open, close + 1 - open),
                          position_of(texts_.formula, place), true});
      text = with_blanks(text, {open, close + 1});
      read = read_signature_note(text, book_.conventions.dialect(), limits_);
    }
    if (!read) return unread(Field::formula, error, texts_.formula);
    for (auto const& one : left_out) book_.unread.push_back(one);
    take(*read);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
