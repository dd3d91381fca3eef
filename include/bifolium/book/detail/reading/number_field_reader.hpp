// SPDX-License-Identifier: MIT
/// Reads the fields that count leaves: of the book, of plates, of most gatherings. A number is taken only where its words say
/// that it counts these and all of them: 12 quires, -86 and "85 and 1 blank" are no number of leaves, and "170 p." states
/// the pages.
#pragma once

#include <bifolium/book/detail/reading/formula_field_reader.hpp>
#include <bifolium/leaf/counts_in_words.hpp>
#include <bifolium/leaf/leaf_words.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class NumberFieldReader : protected FormulaFieldReader {
  enum class Counted : std::uint8_t { leaves, plates };

  /// A number that is not exact is a doubt and no value, since it contradicts nothing.
  void not_exact(Field field, std::string_view text, TextSpan number) {
    doubt(field, {TextCursor{text}.error(Problem::pages_approximate, trimmed(text, number, " ,;"))});
  }
  void not_all(Field field, std::string_view text, std::size_t from) {
    unread(field, TextCursor{text}.error_from(from, Problem::trailing_text), text);
  }
  /// A dash directly before a number is its sign, unless a word is joined: in-8.
  static bool is_negative(std::string_view text, std::size_t number) {
    auto const before = number;
    while (number > 0 && continues_character(text[number - 1])) --number;
    if (number > 0) --number;
    if (before == number) return false;
    auto const sign = decode(text, number).value;
    return (is_dash(sign) || sign == 0x2212 || sign == '+') && (number == 0 || !is_latin_letter(text[number - 1]));
  }
  static bool take_unit_of_leaves(TextCursor& cursor) {
    if (begins_no_word(cursor.peek())) return false;
    for (auto const& row : page_unit_words)
      if (row.unit == PageUnit::leaves && cursor.take_word_in_any_case(row.word)) return true;
    return false;
  }
  /// Returns true if words after a number of leaves count more of them, or others: + 1, and 1 blank, ; 2 blank, [i.e. 86].
  static bool count_more(std::string_view words) {
    TextCursor cursor{words};
    cursor.take_while([](char32_t c) { return is_space(c) || c == ',' || c == ';' || c == '.'; });
    if (auto included = cursor; take_inclusion(included)) return false;
    if (names_pages(cursor.rest())) return true;
    bool const joined = cursor.take('+') || cursor.take('&') || cursor.take('/') || cursor.take_dash() ||
                        cursor.take_word("and") || cursor.take_word("plus") || cursor.take_word("or") ||
                        cursor.take_word("et") || cursor.take_word("und") || cursor.take_word("to");
    cursor.take_blanks();
    static_cast<void>(cursor.take('['));
    if (cursor.starts_with("i.e.")) return true;
    if (!cursor.at_digit()) return false;
    cursor.take_capped_number(most_number);
    static_cast<void>(cursor.take(']'));
    cursor.take_blanks();
    return joined || cursor.take_word_in_any_case("blank") || cursor.take_word_in_any_case("blanks");
  }
  /// Takes the words after a number. Of leaves they must end with a unit of leaves: 84 unnumbered leaves. Of plates any may
  /// stand there that is no unit of something else, since all prints are named.
  bool take_counted(TextCursor& cursor, Field field, std::string_view text, Counted what) {
    constexpr int most_words = 6; // before the unit; each may be asked for the words of plates that follow
    bool folded = false;
    auto const from = cursor.at();
    int words = 0;
    for (auto word_from = from;; word_from = cursor.at()) {
      if (what == Counted::plates && take_plates(cursor, folded)) break;
      if (take_unit_of_leaves(cursor)) break;
      if (auto other = cursor; take_page_unit(other) != nullptr) return false;
      auto const word = cursor.take_until([](char32_t c) { return is_space(c) || c == ',' || c == ';' || c == '('; });
      if (word.empty() || !is_latin_letter(word.front()) || ++words > most_words) {
        cursor.go_to(word_from);
        return what == Counted::plates || word_from == from;
      }
      rest(field, text, {word_from, cursor.at()});
      cursor.take_blanks();
    }
    cursor.take_blanks();
    return true;
  }
  /// The first number of a text that is no extent: "84", "84 Leaves", "about 84". Words before it are told.
  void number_in(Field field, std::string_view text, Counted what, std::optional<Stated<std::int64_t>>& to) {
    for (TextCursor cursor{text}; !cursor.at_end(); cursor.skip(1)) {
      if (bool const word = cursor.at() == 0 || !is_latin_letter(text[cursor.at() - 1]); word && take_about(cursor))
        if (cursor.at_digit() || cursor.peek() == '[') return not_exact(field, text, {0, text.size()});
      if (cursor.at_end()) break;
      if (!cursor.at_digit()) continue;
      auto const from = cursor.at();
      if (is_negative(text, from)) break;
      auto const number = cursor.take_number(most_number);
      if (!number) return unread(field, cursor.error_from(from, Problem::number_too_large), text);
      while (cursor.take_blanks() || cursor.take(']') || cursor.take('.')) continue;
      auto const told = book_.unread.size();
      auto const after = cursor.at();
      if (count_more(cursor.rest())) return not_all(field, text, after);
      if (cursor.peek() != '?' && !about_follows(cursor) && !take_counted(cursor, field, text, what)) {
        book_.unread.resize(told);
        return not_all(field, text, after);
      }
      while (cursor.take_blanks() || cursor.take(']') || cursor.take('.')) continue;
      if (cursor.peek() == '?' || take_about(cursor)) return not_exact(field, text, {0, text.size()});
      if (count_more(cursor.rest())) {
        book_.unread.resize(told);
        return not_all(field, text, cursor.at());
      }
      auto const before = text.substr(0, from);
      if (std::any_of(before.begin(), before.end(), is_latin_letter)) rest(field, text, {0, from});
      rest(field, text, {cursor.at(), text.size()});
      to = stated(std::int64_t{*number}, text);
      return;
    }
    unread(field, TextCursor{text}.error_here(Problem::not_a_number), text);
  }
  static bool about_follows(TextCursor look) { return take_about(look); }

protected:
  using FormulaFieldReader::FormulaFieldReader;

  /// 84, "84 leaves", "[4], 80 leaves", "84 [i.e. 86] ff."; pages are the pagination.
  void leaves() {
    auto const text = texts_.leaves;
    if (text.empty()) return;
    auto const extent = read_extent(text, limits_);
    if (!extent || extent->pagination.runs.empty())
      return number_in(Field::leaves, text, Counted::leaves, book_.leaves);
    auto const& read = extent->pagination;
    for (auto const span : extent->unread)
      if (count_more(span.of(text))) return not_all(Field::leaves, text, span.from);
    for (auto const span : extent->unread) rest(Field::leaves, text, span);
    if (auto const plates = extent->leaves_of_plates())
      beside_.plates_in_leaves =
          stated(std::int64_t{*plates}, part(text, {extent->plates.front().at.from, extent->plates.back().at.to}));
    if (!read.by_leaf())
      beside_.pages_in_leaves = stated(Pagination{read}, text);
    else if (read.approximate)
      not_exact(Field::leaves, text, {0, text.size()});
    else
      book_.leaves = stated(extent->pages() / 2, text);
  }
  void plates() {
    auto const text = texts_.plates;
    if (text.empty()) return;
    auto const extent = read_extent(text, limits_);
    auto const number = extent ? extent->leaves_of_plates() : std::nullopt;
    if (!number || !extent->pagination.runs.empty())
      return number_in(Field::plates, text, Counted::plates, book_.plates);
    for (auto const& one : extent->plates)
      if (one.approximate) return not_exact(Field::plates, text, one.at);
    for (auto const span : extent->unread)
      if (count_more(span.of(text))) return not_all(Field::plates, text, span.from);
    for (auto const span : extent->unread) rest(Field::plates, text, span);
    book_.plates = stated(std::int64_t{*number}, text);
  }
  /// Takes the other numbers of leaves, if all of the text after the first is those: 8.4, in eights and fours, 8/4/8/4.
  void alternating(TextCursor& cursor, std::int64_t first) {
    std::optional<std::int64_t> other;
    auto after = cursor;
    while (true) {
      after.take_blanks();
      if (after.at_end()) break;
      bool const parted = after.take('.') || after.take(',') || after.take(';') || after.take('/') || after.take('&') ||
                          after.take_word_in_any_case("and");
      if (!parted) return;
      after.take_blanks();
      if (after.take_in_any_case("in ")) after.take_blanks();
      auto const number = take_number_in_words(after);
      if (!number || !(number->plural || number->figures)) return;
      if (number->value < 1 || number->value > most_leaves_in_gathering) return;
      if (number->value == first) continue; // 8.4.8.4
      if (other && other != number->value) return;
      other = number->value;
    }
    cursor = after;
    if (other) book_.gatherings_alternating_with = static_cast<int>(*other);
  }
  /// "8", "in fours", "8s", "8.4", "in half-sheets" of a format that is stated. What follows the numbers is left.
  Expected<int> gathering(std::string_view text) {
    auto const sheet = book_.format ? book_.format->value.leaves_to_sheet().value_or(0) : 0; // 0 where it is not known
    for (TextCursor cursor{text}; !cursor.at_end();) {
      std::optional<std::int64_t> leaves;
      auto const from = cursor.at();
      if (sheet >= 2 && take_half_sheet(cursor))
        leaves = sheet / 2;
      else if (auto look = cursor; auto const number = take_number_in_words(look))
        if (number->plural || number->figures) leaves = number->value, cursor = look;
      if (leaves) {
        if (*leaves < 1 || *leaves > most_leaves_in_gathering || is_negative(text, from)) break;
        alternating(cursor, *leaves);
        rest(Field::gatherings, text, {cursor.at(), text.size()});
        return static_cast<int>(*leaves);
      }
      if (cursor.take_letters().empty()) cursor.skip(1);
    }
    return TextCursor{text}.error_from(0, Problem::not_a_gathering_size);
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
