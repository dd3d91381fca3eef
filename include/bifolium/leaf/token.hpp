// SPDX-License-Identifier: MIT
/// Signatures, formulas and lists of leaves are typed in many ways that mean one thing. A raised eight is ⁸, ^8, ^{8},
/// ^8^, <sup>8</sup>, `<hi rend="superscript">8</hi>` or [superscript 8], and π may be [superscript pi]; ± is +-, -+,
/// +/- or -/+; & is &amp;; five dashes are one. Tokens undo the typing and nothing else: whether )( is two brackets or
/// one mark, whether 8 is a count or a name, is decided by whoever reads them. leaf/lexer.hpp makes them one at a time,
/// without allocation; they keep their place in the text as it was given.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// The kind of a token. Blanks are not tokens.
enum class TokenKind : std::uint8_t {
  end,          ///< the end of the text
  letter,       ///< one Latin letter
  greek,        ///< one Greek letter, π and χ included
  cyrillic,     ///< one letter of the Cyrillic alphabet
  hebrew,       ///< one Hebrew letter
  figure,       ///< digits together, raised or on the line
  symbol,       ///< one character that may be a mark: * † ¶ & ã
  dash,         ///< - – — and similar characters
  minus,        ///< − or a raised minus
  plus,         ///< + or a raised plus
  plus_minus,   ///< ± ∓ +- -+ +/- -/+
  equals,       ///< =
  slash,        ///< / or a fraction slash
  point,        ///< . or ·
  comma,        ///< ,
  semicolon,    ///< ;
  colon,        ///< :
  question,     ///< ?
  dollar,       ///< $
  open_round,   ///< (
  close_round,  ///< )
  open_square,  ///< [
  close_square, ///< ]
  quote,        ///< a quotation mark of any kind
  other,        ///< anything else
  malformed     ///< a byte that is not UTF-8
};
/// How a number or letter is set: on the line or raised, and how the raising is written.
enum class TokenStyle : std::uint8_t {
  line,    ///< on the line
  lowered, ///< below it: A₆, the sixth leaf of A
  sign,    ///< raised characters: ⁸
  caret,   ///< ^8, ^8^
  brace,   ///< ^{8}
  tag      ///< in an element or brackets: <sup>8</sup>, [superscript 8]
};

/// One token and its position in the text, in bytes.
struct Token {
  TokenKind kind{};     ///< what it is
  TokenStyle style{};   ///< where it is set
  bool spaced{};        ///< blanks come before it
  std::uint32_t from{}; ///< the first byte, markup included
  std::uint32_t to{};   ///< the byte after the last
  /// The letter, the number (at most 1,000,000), the place of a Greek or Cyrillic letter (and 64 for a capital), what a
  /// Hebrew letter is worth, the code point.
  std::uint32_t value{};

  /// Returns true if the token is of kind `k`.
  [[nodiscard]] constexpr bool is(TokenKind k) const noexcept { return kind == k; }
  /// Whether it is raised above the line, in any notation.
  [[nodiscard]] constexpr bool raised() const noexcept { return style > TokenStyle::lowered; }
  /// A figure that is raised.
  [[nodiscard]] constexpr bool is_raised_figure() const noexcept { return kind == TokenKind::figure && raised(); }
  /// A figure on the line.
  [[nodiscard]] constexpr bool is_flat_figure() const noexcept {
    return kind == TokenKind::figure && style == TokenStyle::line;
  }
  /// A figure on the line or below it, which may number a leaf: A6, A₆.
  [[nodiscard]] constexpr bool is_figure_not_raised() const noexcept { return kind == TokenKind::figure && !raised(); }
  friend constexpr bool operator==(Token const&, Token const&) = default;
};

} // namespace v0
} // namespace bifolium
