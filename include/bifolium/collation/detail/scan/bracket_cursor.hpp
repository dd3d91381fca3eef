// SPDX-License-Identifier: MIT
/// Looks at the brackets of a formula: are there several gatherings in them, and where do they close? These functions do not
/// move the cursor.
#pragma once

#include <bifolium/collation/detail/scan/extent_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class BracketCursor : protected ExtentCursor {
protected:
  using ExtentCursor::ExtentCursor;

  /// Returns the position of the bracket that closes the square bracket at this byte, with others inside it:
  /// [$3 (−[par.]2) signed]. Returns 0 if there is none before `end`.
  [[nodiscard]] constexpr std::uint32_t bracket_end(std::uint32_t i,
                                                    std::size_t end = std::string_view::npos) const noexcept {
    int open = 0;
    for (; i < text_.size() && i < end; ++i) {
      open += at(i) == '[' ? 1 : at(i) == ']' ? -1 : 0;
      if (open == 0) return i;
    }
    return 0;
  }
  /// Returns true if the brackets at the cursor contain several gatherings, or one with its count, and not a single
  /// mark.
  [[nodiscard]] constexpr bool is_group(TokenCursor const& c) const {
    auto const close = closing_square(c.token.to);
    if (close == 0) return true;
    CountReader const inner{text_.substr(0, close), letters_};
    auto const in = cursor(c.token.to, close);
    auto const first = in.token;
    auto p = in;
    auto const mark = inner.take(p);
    if (mark && p.ended()) {
      return mark.key.mark() == Mark::printed && // ['gg3.4'] has its count
             named_leaves(text_.substr(mark.key.text_from, mark.key.text_size)).has_value();
    }
    if (mark && !first.is(TokenKind::letter)) {
      auto q = p;
      if (q.touches(TokenKind::dash)) {
        q.take();
        if (inner.take(q)) return true; // [1-9¹⁰ 10¹²], [π-σ²]
      }
      if (inner.take_count(p, true, true).found()) return true;
    }
    return looks_like_group(in, close);
  }
  [[nodiscard]] constexpr bool looks_like_group(TokenCursor const& in, std::uint32_t close) const {
    bool words = false;
    auto const first = in.token;
    Token previous{};
    for (auto q = in; !q.ended(); previous = q.token, q.take()) {
      if (q.token.raised() || q.at(TokenKind::open_round) || q.at(TokenKind::semicolon)) return true;
      if (q.at(TokenKind::letter) && (!previous.is(TokenKind::letter) || q.token.spaced))
        words = words || is_word(q.token.from);
      if (q.touches(TokenKind::figure) && previous.is(TokenKind::letter)) return true;
    }
    return !words && first.is(TokenKind::letter) && !first.spaced && at(close - 1) != '.';
  }
  /// Returns true if the mark )( is directly after the sign of a change: (-)(4).
  [[nodiscard]] constexpr bool is_cross_in_change(TokenCursor const& c, Token const& before) const noexcept {
    return c.touches(TokenKind::close_round) && at(c.token.to) == '(' && is_digit(at(c.token.to + 1)) &&
           (is_loss(before) || before.is(TokenKind::plus) || before.is(TokenKind::equals));
  }
  /// Returns the position of the parenthesis that closes the one at the cursor, or 0 if there is none.
  [[nodiscard]] constexpr std::uint32_t closing_round(TokenCursor const& round) const noexcept {
    auto i = round.token.to; // most parentheses have no other in them, nor markup, and )( does not end them
    while (i < text_.size() && text_[i] != '(' && text_[i] != ')' && text_[i] != '<') ++i;
    if (at(i) == ')' && at(i + 1) != '(') return i;
    int open = 0;
    auto c = round;
    for (Token before{}; !c.ended(); before = c.token, c.take()) {
      if (open > 0 && is_cross_in_change(c, before)) {
        c.take();
        continue;
      }
      if (c.at(TokenKind::open_round)) ++open;
      if (c.at(TokenKind::close_round) && --open == 0) return c.token.from;
    }
    return 0;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
