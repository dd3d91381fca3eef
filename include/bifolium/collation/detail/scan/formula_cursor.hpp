// SPDX-License-Identifier: MIT
/// Looks at the words of a formula: are these letters a word or several signatures? These functions do not move the cursor.
/// extent_cursor.hpp looks at extents, and bracket_cursor.hpp at brackets.
#pragma once

#include <bifolium/collation/detail/scan/count_reader.hpp>
#include <bifolium/collation/dialect.hpp>
#include <bifolium/leaf/named_leaves.hpp>
#include <bifolium/leaf/roman.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

[[nodiscard]] constexpr bool is_loss(Token const& t) noexcept {
  return t.is(TokenKind::dash) || t.is(TokenKind::minus) || t.is(TokenKind::plus_minus);
}
/// Returns true for a comma, semicolon or full point between the parts of a formula.
[[nodiscard]] constexpr bool is_separator(Token const& t) noexcept {
  return t.is(TokenKind::comma) || t.is(TokenKind::semicolon) ||
         (t.is(TokenKind::point) && t.value == '.'); // and not ·
}
/// Returns true for a word that joins two runs: and, und, et (common practice, no source). The Italian and Spanish letters e
/// and y may be signatures, and are none of these.
[[nodiscard]] constexpr bool joins_runs(std::string_view word) noexcept {
  for (std::string_view const one : {"and", "und", "et", "ed", "en", "og", "och"})
    if (word == one) return true;
  return false;
}

/// Looks at the text of a formula. It uses the dialect, because letters side by side are signatures if the alphabet has
/// them in this order.
class FormulaCursor : protected CountReader {
  /// Returns true if two letters show that the letters are a word: the second is not the same, nor A, nor the next in the
  /// alphabet, where J, U and W may be missing. This is true of most words. P and C may begin pi and chi.
  [[nodiscard]] static constexpr bool is_word_at_once(char a, char b) noexcept {
    auto const first = small_letter(a), second = small_letter(b);
    if (!is_latin_letter(a) || !is_latin_letter(b) || first == second || first == 'p' || first == 'c') return false;
    return second != 'a' && (is_small(a) != is_small(b) || second < first || second > first + 3);
  }

protected:
  Alphabet alphabet_;
  bool flat_counts_;

  constexpr FormulaCursor(std::string_view text, Dialect dialect) noexcept
      : CountReader{text, dialect.letters}, alphabet_{dialect.letters}, flat_counts_{dialect.flat_counts} {}

  [[nodiscard]] constexpr TokenCursor cursor(std::size_t at, std::size_t end = std::string_view::npos) const noexcept {
    return TokenCursor{text_, at < text_.size() ? at : text_.size(), end};
  }
  [[nodiscard]] constexpr std::string_view word(TokenCursor const& c) const noexcept {
    return c.at(TokenKind::letter) ? word_at(text_, c.token.from) : std::string_view{};
  }
  [[nodiscard]] constexpr bool begins(std::uint32_t i, std::string_view words) const noexcept {
    return text_.substr(i < text_.size() ? i : text_.size(), words.size()) == words;
  }
  /// Returns the position after the blanks at byte `i`.
  [[nodiscard]] constexpr std::uint32_t after_blanks(std::uint32_t i) const noexcept {
    return static_cast<std::uint32_t>(bifolium::after_blanks(text_, i));
  }
  /// Returns the position at which the blanks before byte `i` begin.
  [[nodiscard]] constexpr std::uint32_t before_blanks(std::uint32_t i) const noexcept {
    return static_cast<std::uint32_t>(bifolium::before_blanks(text_, i));
  }
  /// Returns true if a blank is at byte `i`.
  [[nodiscard]] constexpr bool is_blank_at(std::uint32_t i) const noexcept { return blank_at(text_, i) != 0; }
  /// Returns the cursor after the word at its position.
  [[nodiscard]] constexpr TokenCursor after_word(TokenCursor const& c) const noexcept {
    return cursor(c.token.from + word(c).size());
  }
  /// Returns true if the letters at byte `i` are a word and not signatures side by side (ab, lm, zaa, zA).
  [[nodiscard]] constexpr bool is_word(std::uint32_t i) const noexcept {
    if (is_word_at_once(at(i), at(i + 1U))) return true;
    auto const letters_together = word_at(text_, i);
    if (letters_together.size() < 2) return false;
    TokenCursor c{text_, i, i + letters_together.size()};
    SignatureReader const reader{text_.substr(0, i + letters_together.size()), letters_};
    auto one = reader.take(c);
    if (!one) return true;
    if (one.key.mark() == Mark::pi || one.key.mark() == Mark::chi) return false;
    while (c.at(TokenKind::letter)) {
      auto const next = reader.letters(c);
      auto const rank = next.key.rank(alphabet_);
      bool const follows = one.key.mark() == next.key.mark() ? rank == one.key.rank(alphabet_) + 1 : rank == 1;
      if (!follows) return true;
      one = next;
    }
    return false;
  }
  /// Returns true if letters follow the word at the cursor after a tag: p. xi<sup>th</sup>. Words are stored without
  /// tags, so that these letters belong to the word.
  [[nodiscard]] constexpr bool goes_on_after_tag(TokenCursor const& c) const noexcept {
    return after_word(c).touches(TokenKind::letter);
  }
};

/// Asks of words whether they can be taken for gatherings.
class Prose : FormulaCursor {
public:
  constexpr Prose(std::string_view words, Dialect dialect) noexcept : FormulaCursor{words, dialect} {}
  /// Returns true if a word is at the beginning that is neither several signatures nor a name with a count.
  [[nodiscard]] constexpr bool begins() const {
    auto c = cursor(word_at(text_, 0).size());
    return is_word(0) && !take_count(c, flat_counts_).found();
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
