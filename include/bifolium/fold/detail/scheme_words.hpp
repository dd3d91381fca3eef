// SPDX-License-Identifier: MIT
/// The words of a scheme's text: lines, blanks, comments, numbers, and the place of each word. fold/read_scheme.hpp has
/// the grammar.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/fold/scheme.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Reads a text word by word. A function that fails returns false and stores the reason in `error_`.
class SchemeWords {
protected:
  std::string_view text_;
  std::size_t at_{0}, line_start_{0};
  std::uint32_t line_{1};
  std::string_view word_{}; ///< the last word taken
  std::size_t word_start_{0};
  unsigned bits_{0}; ///< all bytes of the words of this line, combined with OR
  Error error_{};

  constexpr explicit SchemeWords(std::string_view text) : text_{text} {}

  constexpr bool fail(Problem problem, std::int64_t limit = 0) {
    error_ = error_at(problem, line_, column_of(text_, word_start_, line_start_), word_.data(), word_.size(), limit);
    return false;
  }
  /// Reading is also done while compiling, where every step counts. In a line of plain ASCII the column of a word is
  /// its distance from the beginning; only other lines are decoded.
  constexpr SourcePlace here() const {
    auto const fit = [](std::size_t n) { return static_cast<std::uint16_t>(n < 65535 ? n : 65535); };
    bool const plain = (bits_ & 0x80U) == 0;
    return {fit(line_), fit(plain ? word_start_ - line_start_ + 1 : column_of(text_, word_start_, line_start_))};
  }
  /// Returns true if a byte belongs to a word: any byte above the blank, except the sign of a comment.
  static constexpr bool in_word(unsigned char c) { return c > ' ' && c != '#'; }
  constexpr void skip_blanks() {
    while (at_ < text_.size() && static_cast<unsigned char>(text_[at_]) <= ' ' && text_[at_] != '\n') ++at_;
  }
  /// Takes the next word of the line into word_. Returns false at the end of the line.
  constexpr bool next() {
    skip_blanks();
    word_start_ = at_;
    for (; at_ < text_.size() && in_word(static_cast<unsigned char>(text_[at_])); ++at_)
      bits_ |= static_cast<unsigned char>(text_[at_]);
    word_ = {text_.data() + word_start_, at_ - word_start_};
    return !word_.empty();
  }
  constexpr bool expect(std::string_view word) {
    if (next() && word_ == word) return true;
    return fail(word_.empty() ? Problem::unexpected_end : Problem::unknown_word);
  }
  /// Takes the next word if it is `word`. Otherwise it takes no word.
  constexpr bool take_if(std::string_view word) {
    auto const at = at_;
    if (next() && word_ == word) return true;
    at_ = at;
    return false;
  }
  constexpr bool end_of_line() { return !next() || fail(Problem::trailing_text); }
  constexpr bool number(int& value, int most) {
    if (!next()) return fail(Problem::unexpected_end);
    value = 0;
    for (char c : word_) {
      if (!is_digit(c)) return fail(Problem::not_a_number);
      value = value * 10 + (c - '0');
      if (value > most) return fail(Problem::number_too_large, most);
    }
    return true;
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
