// SPDX-License-Identifier: MIT
/// Looks ahead in a signature: tells from the next tokens what a prefix, a figure or a bracket belongs to, and takes
/// nothing.
#pragma once

#include <bifolium/leaf/detail/printed_marks.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

class MarkShapes : public PrintedMarks {
public:
  using PrintedMarks::PrintedMarks;

protected:
  /// Returns the position of the bracket that closes a square bracket, or 0 if it is too far away for a name.
  [[nodiscard]] constexpr std::uint32_t closing_square(std::uint32_t i) const noexcept {
    for (auto end = i + detail::widest_name; i < text_.size() && i < end; ++i) {
      if (text_[i] == ']') return i;
      if (text_[i] == '[') break;
    }
    return 0;
  }
  /// Returns true if the mark at the cursor may follow a prefix: a letter, a multiple of one, or a letter in brackets.
  [[nodiscard]] constexpr bool takes_prefix(TokenCursor const& next) const noexcept {
    if (next.token.spaced || next.token.style != TokenStyle::line) return false;
    auto c = next;
    auto const is_mark = [&] {
      return c.touches(TokenKind::letter) || c.touches(TokenKind::cyrillic) ||
             (c.touches(TokenKind::greek) && c.token.value != 16 && c.token.value != 22);
    };
    if (c.at(TokenKind::quote)) return c.token.value == '\'' || c.token.value == '"';
    if (c.at(TokenKind::open_square)) {
      if (closing_square(c.token.to) == 0) return false;
      c.take();
      if (c.touches(TokenKind::figure) && !c.token.raised()) c.take();
      return c.touches(TokenKind::letter) && !c.token.raised();
    }
    if (c.at(TokenKind::figure)) c.take();
    return is_mark() && c.token.style == TokenStyle::line;
  }
  /// Returns true if a figure multiplies the mark after it, which is at `next`.
  [[nodiscard]] constexpr bool multiplies(Token figure, TokenCursor next) const noexcept {
    auto const& t = next.token;
    if (t.spaced || t.style != TokenStyle::line) return false;
    auto const counted = [](Token k) { // a mark only with its count or leaf: 2:⁸, 2)(⁴, 2:/3; 2)( alone too
      return !k.spaced && (k.is(TokenKind::figure) || k.is(TokenKind::slash));
    };
    switch (t.kind) {
    case TokenKind::letter:
    case TokenKind::greek:
    case TokenKind::cyrillic:
    case TokenKind::symbol:
      return true;
    case TokenKind::colon: {
      auto const k = next.ahead();
      return counted(k) || (k.is(TokenKind::dash) && !k.spaced);
    }
    case TokenKind::close_round: {
      auto const size = detail::cross_size(text_, t.from);
      if (size == 0 || figure.value < 2) return false;
      next = TokenCursor{text_, t.from + size};
      return counted(next.token) || next.ended();
    }
    case TokenKind::open_square: {
      auto const k = at(t.to);
      return figure.value > 1 && k != '$' && k != '=' && closing_square(t.to) != 0;
    }
    default:
      return false;
    }
  }
  /// Returns the number of "2nd", "3rd" or "4th" if the brackets contain only that, else 0.
  [[nodiscard]] constexpr int ordinal(Token first, std::uint32_t close) const noexcept {
    if (!first.is_flat_figure() || first.value < 2 || first.value > 9 || close != first.to + 2) return 0;
    auto const ending = text_.substr(first.to, 2);
    bool const fits = ending == (first.value == 2 ? "nd" : first.value == 3 ? "rd" : "th");
    return fits ? static_cast<int>(first.value) : 0;
  }
  /// Returns true if the brackets contain neither gatherings with their counts nor changes nor statements.
  static constexpr bool is_name(TokenCursor in) noexcept {
    auto const first = in.token.kind;
    if (first == TokenKind::dash && in.ahead().is(TokenKind::end)) return true; // [-]: unsigned
    if (first == TokenKind::dash || first == TokenKind::minus || first == TokenKind::plus ||
        first == TokenKind::plus_minus)
      return false; // a change in the wrong brackets
    for (; !in.ended(); in.take()) {
      auto const& t = in.token;
      bool const control = t.is(TokenKind::other) && t.value < 0x20;
      if (t.raised() || control || t.is(TokenKind::open_round) || t.is(TokenKind::close_round) ||
          t.is(TokenKind::dollar) || t.is(TokenKind::equals) || t.is(TokenKind::semicolon) ||
          (t.is(TokenKind::other) && (t.value == '<' || t.value == '^')))
        return false;
    }
    return true;
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
