// SPDX-License-Identifier: MIT
/// A position in a text, and the steps that every reader of a short text needs: look at a character, take it, skip
/// blanks, read a number, give the place of an error. Readers use this cursor, so that they agree on what a blank, a
/// dash and a digit is. Only the reader of the collation formula has its own, which works on tokens (leaf/lexer.hpp).
///
/// A function whose name begins with `take` moves the cursor past what it finds. If it finds nothing, the cursor does
/// not move.
///
/// People and programs type blanks as they please: two after a full stop, one that does not break before a unit, the end of
/// a line. So a blank in the words that a reader asks for, as in `take("not after")`, stands for all blanks there are, and
/// a hyphen for a dash of any kind.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/error.hpp>
#include <bifolium/core/text_place.hpp>
#include <bifolium/core/text_span.hpp>
#include <bifolium/core/utf8.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Moves forward through a text in UTF-8, and back to an earlier position. Positions count bytes from 0. The text must
/// outlive the cursor.
class TextCursor {
  std::string_view text_;
  std::size_t at_;
  PlaceCounter counter_{};

public:
  /// Makes a cursor at a position of a text. Precondition: at <= text.size().
  constexpr explicit TextCursor(std::string_view text, std::size_t at = 0) noexcept : text_{text}, at_{at} {}

  /// Returns the whole text.
  [[nodiscard]] constexpr std::string_view text() const noexcept { return text_; }
  /// Returns the position, in bytes from 0.
  [[nodiscard]] constexpr std::size_t at() const noexcept { return at_; }
  /// Moves to a position. Precondition: position <= text().size().
  constexpr void go_to(std::size_t position) noexcept { at_ = position; }
  /// Moves by some bytes, but not beyond the end of the text.
  constexpr void skip(std::size_t bytes) noexcept {
    auto const left = text_.size() - at_;
    at_ += bytes < left ? bytes : left;
  }
  /// Returns true if the cursor is at the end of the text.
  [[nodiscard]] constexpr bool at_end() const noexcept { return at_ == text_.size(); }
  /// Returns the text from the cursor to the end.
  [[nodiscard]] constexpr std::string_view rest() const noexcept { return {text_.data() + at_, text_.size() - at_}; }

  /// Returns the byte at the cursor, or the byte `bytes_ahead` bytes after it. Returns a zero byte after the end of the
  /// text.
  [[nodiscard]] constexpr char peek(std::size_t bytes_ahead = 0) const noexcept {
    return text_.size() - at_ > bytes_ahead ? text_[at_ + bytes_ahead] : '\0';
  }
  /// Returns the character at the cursor. At the end of the text it is a character of zero bytes.
  [[nodiscard]] constexpr CodePoint character() const noexcept { return at_end() ? CodePoint{} : decode(text_, at_); }
  /// Returns true if the text continues with `word`, in which a blank stands for one or more of any kind, and a
  /// hyphen for any dash.
  [[nodiscard]] constexpr bool starts_with(std::string_view word) const noexcept { return end_of(word) != nowhere; }
  /// Returns true if a digit is at the cursor.
  [[nodiscard]] constexpr bool at_digit() const noexcept { return is_digit(peek()); }

  /// Takes the byte `c` if it is at the cursor. Returns true if it was taken.
  constexpr bool take(char c) noexcept {
    if (at_end() || text_[at_] != c) return false;
    ++at_;
    return true;
  }
  /// Takes `word` if the text continues with it; a blank in it stands for one or more of any kind, a hyphen for any dash.
  /// Returns true if it was taken.
  constexpr bool take(std::string_view word) noexcept { return take_to(end_of(word)); }
  /// Takes `word` as `take` does, if no Latin letter follows: `leaf`, but not the beginning of `leafs`. Returns true if it
  /// was taken.
  constexpr bool take_word(std::string_view word) noexcept {
    auto const from = at_;
    if (!take(word)) return false;
    if (is_latin_letter(peek())) return at_ = from, false;
    return true;
  }
  /// Takes `word` as `take` does, in capitals, small letters or both. Returns true if it was taken.
  constexpr bool take_in_any_case(std::string_view word) noexcept { return take_to(end_of(word, true)); }
  /// Takes `word` as `take_word` does, in capitals, small letters or both. Returns true if it was taken.
  constexpr bool take_word_in_any_case(std::string_view word) noexcept {
    auto const from = at_;
    if (!take_in_any_case(word)) return false;
    if (is_latin_letter(peek())) return at_ = from, false;
    return true;
  }
  /// Takes a word of a table: one that ends with a full stop as `take` does, any other as `take_word` does. Returns true if
  /// it was taken. The bytes of the word are not counted first, because most words of a table are not the one that follows.
  /// Precondition: the word begins with a letter.
  constexpr bool take_listed(char const* word) noexcept {
    if (peek() != *word) return false;
    auto const end = end_of_same(word, nullptr, false);
    if (end == nowhere || (word[-1] != '.' && end < text_.size() && is_latin_letter(text_[end]))) return false;
    return at_ = end, true;
  }
  /// Takes all Latin letters at the cursor and returns them, with ß after two or more: weiß. The result is empty if there
  /// is none.
  constexpr std::string_view take_letters() noexcept {
    auto const from = at_;
    for (;;) {
      while (at_ < text_.size() && is_latin_letter(text_[at_])) ++at_;
      if (peek() != '\xC3' || peek(1) != '\x9F' || at_ - from < 2) return {text_.data() + from, at_ - from};
      at_ += 2;
    }
  }
  /// Takes one character if `is(character)` is true; `is` is a function such as is_dash or is_degree_sign. Returns true
  /// if it was taken.
  template <class Is> constexpr bool take_one(Is is) noexcept {
    auto const next = character();
    if (next.bytes == 0 || next.malformed || !is(next.value)) return false;
    at_ += next.bytes;
    return true;
  }
  /// Takes all characters at the cursor for which `is(character)` is true. Returns true if there was at least one.
  template <class Is> constexpr bool take_while(Is is) noexcept {
    auto const from = at_;
    while (take_one(is)) continue;
    return at_ != from;
  }
  /// Takes the text before the first character for which `ends(character)` is true, or the rest of the text, and
  /// returns it. For a byte that begins no character, `ends` is asked about U+FFFD.
  template <class Ends> constexpr std::string_view take_until(Ends ends) noexcept {
    auto const from = at_;
    while (!at_end() && !ends(character().value)) at_ += character().bytes;
    return text_.substr(from, at_ - from);
  }
  /// Takes a hyphen or a dash of any kind. Returns true if it was taken.
  constexpr bool take_dash() noexcept { return take_one(is_dash); }
  /// Takes a quotation mark of any kind. Returns true if it was taken.
  constexpr bool take_quotation_mark() noexcept { return take_one(is_quotation_mark); }
  /// Takes all blanks at the cursor: spaces of any width, tabs and line breaks. Returns true if there was at least one.
  constexpr bool take_blanks() noexcept {
    auto const from = at_;
    at_ = after_blanks(text_, at_);
    return at_ != from;
  }

  /// Takes a whole number in digits. Returns no value if there is no digit or if the number is more than `most`. The
  /// cursor then stays before the first digit, so `at_digit()` tells the two cases apart. Precondition: 0 <= most.
  constexpr std::optional<std::int64_t> take_number(std::int64_t most = 999'999'999'999'999'999) noexcept {
    auto const from = at_;
    std::int64_t number = 0;
    for (; at_digit(); ++at_) {
      std::int64_t const digit = text_[at_] - '0';
      if (number > most / 10 || number * 10 > most - digit) return at_ = from, std::nullopt;
      number = number * 10 + digit;
    }
    if (at_ == from) return std::nullopt;
    return number;
  }
  /// Takes a whole number in digits, however large. Returns `most + 1` for a number that is more than `most`, and no
  /// value if there is no digit. It is for readers that tell the error only after they know what the number counts.
  /// Precondition: 0 <= most <= 99999999999999999.
  constexpr std::optional<std::int64_t> take_capped_number(std::int64_t most) noexcept {
    if (!at_digit()) return std::nullopt;
    std::int64_t number = 0;
    for (; at_digit(); ++at_)
      if (number <= most) number = number * 10 + (text_[at_] - '0');
    return number <= most ? number : most + 1;
  }
  /// Takes a whole number in raised digits (², ¹²). Returns no value, and does not move the cursor, if there is no
  /// raised digit or if the number is more than `most`. Precondition: 0 <= most.
  constexpr std::optional<std::int64_t> take_raised_number(std::int64_t most = 999'999'999) noexcept {
    auto const from = at_;
    std::int64_t number = 0;
    for (auto next = character(); superscript_digit(next.value); next = character()) {
      int const digit = *superscript_digit(next.value);
      if (number > most / 10 || number * 10 > most - digit) return at_ = from, std::nullopt;
      number = number * 10 + digit;
      at_ += next.bytes;
    }
    if (at_ == from) return std::nullopt;
    return number;
  }

private:
  static constexpr auto nowhere =
      std::string_view::npos; // an optional number would be looked at once more for each word
  constexpr bool take_to(std::size_t position) noexcept {
    if (position == nowhere) return false;
    at_ = position;
    return true;
  }
  /// Returns the position after `word`, or `nowhere` if the text does not continue with it. Readers ask for one word after
  /// another, of which most differ in the first letter.
  [[nodiscard]] constexpr std::size_t end_of(std::string_view word, bool in_any_case = false) const noexcept {
    if (word.empty()) return at_;
    auto const first = word[0], here = peek();
    bool const differs = here != first && first != ' ' && first != '-';
    if (differs && !(in_any_case && small_letter(here) == small_letter(first))) return nowhere;
    auto const* from = word.data();
    return end_of_same(from, from + word.size(), in_any_case);
  }
  /// Moves `word` to its end, or to the first byte that the text does not have. `word_end` is null for a word that ends with a
  /// zero byte.
  [[nodiscard, gnu::noinline]] constexpr std::size_t end_of_same(char const*& word, char const* word_end,
                                                                 bool in_any_case) const noexcept {
    auto end = at_;
    for (; word_end != nullptr ? word != word_end : *word != '\0'; ++word) {
      auto const c = *word;
      auto const here = end < text_.size() ? text_[end] : '\0';
      if (c == ' ') {
        auto const blanks = end;
        end = after_blanks(text_, end);
        if (end == blanks) return nowhere;
      } else if (here == c || (in_any_case && small_letter(here) == small_letter(c))) {
        ++end;
      } else if (c == '-' && end < text_.size() && is_dash(decode(text_, end).value)) {
        end += decode(text_, end).bytes;
      } else {
        return nowhere;
      }
    }
    return end;
  }

public:
  /// Returns the line and the column of a position. Precondition: position <= text().size().
  [[nodiscard]] constexpr TextPlace place(std::size_t position) noexcept { return counter_.place(text_, position); }
  /// Makes an error for a part of the text, with line and column, that quotes this part. Precondition: where.from <=
  /// where.to <= text().size().
  [[nodiscard]] constexpr Error error(Problem problem, TextSpan where, std::int64_t limit = 0) {
    return error_at(problem, place(where.from), where.of(text_), limit);
  }
  /// Makes an error at byte `from` that quotes the rest of the text from there. Precondition: from <= text().size().
  [[nodiscard]] constexpr Error error_from(std::size_t from, Problem problem, std::int64_t limit = 0) {
    return error(problem, {from, text_.size()}, limit);
  }
  /// Makes an error at the cursor that quotes the rest of the text.
  [[nodiscard]] constexpr Error error_here(Problem problem, std::int64_t limit = 0) {
    return error_from(at_, problem, limit);
  }
};

/// Returns the whole number that a text consists of, in digits. Returns no value if there is any other character, or if
/// the number is more than `most`. Precondition: 0 <= most.
[[nodiscard]] constexpr std::optional<std::int64_t> whole_number(std::string_view text, std::int64_t most) noexcept {
  TextCursor cursor{text};
  auto const number = cursor.take_number(most);
  return cursor.at_end() ? number : std::nullopt;
}

} // namespace v0
} // namespace bifolium
