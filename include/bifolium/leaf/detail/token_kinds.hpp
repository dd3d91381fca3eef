// SPDX-License-Identifier: MIT
/// The kinds of the tokens that are one character: each sign of ASCII, and all other signs.
#pragma once

#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/detail/characters.hpp>
#include <bifolium/leaf/token.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the kind of a sign of ASCII.
[[nodiscard]] constexpr TokenKind simple_kind(char c) noexcept {
  switch (c) {
  case '=':
    return TokenKind::equals;
  case '/':
    return TokenKind::slash;
  case '.':
    return TokenKind::point;
  case ',':
    return TokenKind::comma;
  case ';':
    return TokenKind::semicolon;
  case ':':
    return TokenKind::colon;
  case '?':
    return TokenKind::question;
  case '$':
    return TokenKind::dollar;
  case '(':
    return TokenKind::open_round;
  case ')':
    return TokenKind::close_round;
  case ']':
    return TokenKind::close_square;
  case '\'':
  case '"':
    return TokenKind::quote;
  case '*':
  case '#':
  case '@':
  case '%':
    return TokenKind::symbol;
  default:
    return TokenKind::other;
  }
}
/// Returns the kind of a character that is not ASCII.
[[nodiscard]] constexpr TokenKind high_kind(char32_t c) noexcept {
  if (is_dash(c)) return TokenKind::dash;
  if (c == 0x2212) return TokenKind::minus;
  if (c == 0xB1 || c == 0x2213) return TokenKind::plus_minus;
  if (c == 0xB7) return TokenKind::point;
  if (c == 0x2044) return TokenKind::slash;
  if (is_quotation_mark(c)) return TokenKind::quote;
  return is_signature_symbol(c) ? TokenKind::symbol : TokenKind::other;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
