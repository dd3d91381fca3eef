// SPDX-License-Identifier: MIT
/// The words of a scheme's text: lines, blanks, comments, numbers, and the place of each word. fold/read_scheme.hpp has
/// the grammar.
#pragma once

#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/fold/scheme.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Reads a text word by word. A function that fails returns false and stores the reason in `error_`.
class SchemeWords {
protected:
  TextCursor cursor_;
  std::size_t line_start_{0};
  std::uint32_t line_{1};
  std::string_view word_{}; ///< the last word taken
  std::size_t word_start_{0};
  unsigned bits_{0}; ///< all bytes of the words of this line, combined with OR
  Error error_{};

  constexpr explicit SchemeWords(std::string_view text) : cursor_{text} {}

  constexpr bool fail(Problem problem, std::int64_t limit = 0) {
    error_ = error_at(problem, cursor_.place(word_start_), word_, limit);
    return false;
  }
  /// Reading is also done while compiling, where every step counts. In a line of plain ASCII the column of a word is
  /// its distance from the beginning; only other lines are decoded.
  constexpr SourcePlace here() const {
    auto const fit = [](std::size_t n) { return static_cast<std::uint16_t>(n < 65535 ? n : 65535); };
    bool const plain = (bits_ & 0x80U) == 0;
    return {fit(line_),
            fit(plain ? word_start_ - line_start_ + 1 : column_of(cursor_.text(), word_start_, line_start_))};
  }
  /// Returns true if a byte belongs to a word: any byte above the blank, except the sign of a comment.
  static constexpr bool in_word(unsigned char c) { return c > ' ' && c != '#'; }
  constexpr void skip_blanks() {
    while (!cursor_.at_end() && static_cast<unsigned char>(cursor_.peek()) <= ' ' && cursor_.peek() != '\n')
      cursor_.skip(1);
  }
  /// Takes the next word of the line into word_. Returns false at the end of the line.
  constexpr bool next() {
    skip_blanks();
    word_start_ = cursor_.at();
    for (; in_word(static_cast<unsigned char>(cursor_.peek())); cursor_.skip(1))
      bits_ |= static_cast<unsigned char>(cursor_.peek());
    word_ = {cursor_.text().data() + word_start_, cursor_.at() - word_start_};
    return !word_.empty();
  }
  constexpr bool expect(std::string_view word) {
    if (next() && word_ == word) return true;
    return fail(word_.empty() ? Problem::unexpected_end : Problem::unknown_word);
  }
  /// Takes the next word if it is `word`. Otherwise it takes no word.
  constexpr bool take_if(std::string_view word) {
    auto const at = cursor_.at();
    if (next() && word_ == word) return true;
    cursor_.go_to(at);
    return false;
  }
  constexpr bool end_of_line() { return !next() || fail(Problem::trailing_text); }
  constexpr bool number(int& value, int most) {
    if (!next()) return fail(Problem::unexpected_end);
    TextCursor digits{word_};
    auto const number = digits.take_capped_number(most);
    if (!number || !digits.at_end()) return fail(Problem::not_a_number);
    value = static_cast<int>(*number);
    return value <= most || fail(Problem::number_too_large, most);
  }
  constexpr bool axis(Axis& value) {
    if (!next()) return fail(Problem::unexpected_end);
    if (word_ != "far-near" && word_ != "left-right") return fail(Problem::unknown_word);
    value = word_ == "far-near" ? Axis::far_near : Axis::left_right;
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
