// SPDX-License-Identifier: MIT
/// Reads the field of the formula. Catalogues write the leaves, the signing and the pages after the formula, so one text
/// can state four facts; those beside the formula are kept apart until the fields of their own are read.
#pragma once

#include <bifolium/book/detail/reading/field_reader.hpp>
#include <bifolium/book/detail/reading/left_out.hpp>
#include <bifolium/book/detail/reading/stated_pages.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class FormulaFieldReader : protected FieldReader {
  bool total_seen_{}; // of several totals the first is taken

  void take(SignatureNote const& note) {
    auto const text = texts_.formula;
    take_doubts(note.formula);
    if (texts_.leaves.empty() && !total_seen_) take_total(note.formula);
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
    plates_after_formula();
    if (tail_at == text.npos) return;
    if (auto const from = pagination_place(tail); from && note.pages) {
      auto const pages = tail.substr(*from);
      if (auto const extent = read_stated_pages(pages, limits_))
        beside_.pages_in_formula =
            stated(Pagination{extent->pagination}, part(text, {tail_at + *from, tail_at + tail.size()}));
    }
  }
  /// Takes a number of plates in a part of the text of its own: 8°: A-K⁸; 3 plates.
  void plates_after_formula() {
    auto const text = texts_.formula;
    int depth = 0;
    auto from = text.npos; // after the first comma or semicolon
    for (std::size_t i = 0; i <= text.size(); ++i) {
      char const c = i < text.size() ? text[i] : ';';
      depth += c == '(' || c == '[' ? 1 : c == ')' || c == ']' ? -1 : 0;
      if ((c != ';' && c != ',') || (depth > 0 && i < text.size())) continue;
      if (from != text.npos) {
        auto const piece = trimmed(text, {from, i}, " .");
        auto const extent = read_extent(piece.of(text), limits_);
        auto const number =
            extent && extent->pagination.runs.empty() && extent->unread.empty() && !extent->plates.empty()
                ? extent->leaves_of_plates()
                : std::nullopt;
        if (number && !extent->plates.front().approximate) {
          beside_.plates_in_formula = stated(std::int64_t{*number}, part(text, piece));
          return;
        }
      }
      from = i + 1;
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
    if (warning.problem == Problem::total_contradicts && texts_.leaves.empty() && !total_seen_) {
      total_seen_ = true;
      auto const words = warning.found_text();
      auto const at = warning.place.value_or(TextPlace{});
      auto const from = position_of(texts_.formula, at);
      if (auto const total = total_in(words); total && texts_.formula.substr(from).starts_with(words)) {
        book_.leaves = stated(std::int64_t{total->leaves}, Part{words.substr(0, total->end), from, at});
        book_.leaves->in = Field::formula;
        return;
      }
    }
    // these are findings of their own
    for (auto const told : {Problem::odd_gathering, Problem::count_supplied, Problem::letters_skipped})
      if (warning.problem == told) return;
    doubt(Field::formula, {warning});
  }
  /// A number of leaves that is stated after a formula, and the end of its words: 42 in "[42] leaves; pp. 84".
  struct Total {
    std::int64_t leaves{};
    std::size_t end{};
  };
  static std::optional<Total> total_in(std::string_view words) {
    TextCursor cursor{words};
    while (!cursor.at_end() && !cursor.at_digit()) cursor.skip(1);
    auto const number = cursor.take_number(most_number);
    if (!number) return std::nullopt;
    static_cast<void>(cursor.take(']'));
    cursor.take_blanks();
    auto const* const unit = take_page_unit(cursor);
    if (unit == nullptr || unit->unit != PageUnit::leaves) return std::nullopt;
    return Total{*number, cursor.at()};
  }
  /// A total that agrees with the formula is no doubt, but a repair of the formula must agree with it too.
  void take_total(Formula const& formula) {
    auto const text = texts_.formula;
    for (auto const& passage : formula.passages()) {
      if (passage.kind != Passage::Kind::leaves || passage.text.to > text.size()) continue;
      auto const total = total_in(passage.text.of(text));
      if (!total || total->leaves != formula.leaves()) continue;
      book_.leaves =
          stated(std::int64_t{total->leaves}, part(text, {passage.text.from, passage.text.from + total->end}));
      book_.leaves->in = Field::formula;
      return;
    }
  }

protected:
  using FieldReader::FieldReader;
  static constexpr std::int64_t most_number = 9999999;

  void formula() {
    auto const text = texts_.formula;
    if (text.empty()) return;
    auto const read = read_formula_without(text, book_.conventions.dialect(), limits_);
    if (!read.note) return unread(Field::formula, read.note.error(), text);
    for (auto const& one : read.left_out)
      book_.unread.push_back({Field::formula, one.error, std::string{one.at.of(text)}, one.at.from, true});
    take(*read.note);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
