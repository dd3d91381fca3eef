// SPDX-License-Identifier: MIT
/// A position among the tokens of a text. Every reader of signatures moves with it. It is small, so that a reader can
/// copy it to look ahead and assign the copy to go there.
#pragma once

#include <bifolium/leaf/lexer.hpp>

namespace bifolium {
inline namespace v0 {

/// A position among the tokens of a text: the token at the position, and the lexer of those after it. To look ahead,
/// copy the cursor; to go there, assign the copy.
struct TokenCursor {
  Lexer lexer{}; ///< the lexer of the tokens after this one
  Token token{}; ///< the token at this position

  constexpr TokenCursor() = default;
  /// Makes a cursor at the first token from byte `at` on. For this cursor the text ends at byte `end`. At or after the
  /// end, every token is `end`.
  constexpr explicit TokenCursor(std::string_view text, std::size_t at = 0,
                                 std::size_t end = std::string_view::npos) noexcept
      : lexer{text.substr(0, end), at} {
    take();
  }
  /// Moves to the next token.
  constexpr void take() noexcept { token = lexer.next(); }
  /// Returns the token after this one.
  [[nodiscard]] constexpr Token ahead() const noexcept {
    auto rest = lexer;
    return rest.next();
  }
  /// Returns true if the token is of that kind.
  [[nodiscard]] constexpr bool at(TokenKind kind) const noexcept { return token.kind == kind; }
  /// Returns true if the token is of that kind and no blank comes before it.
  [[nodiscard]] constexpr bool touches(TokenKind kind) const noexcept { return token.kind == kind && !token.spaced; }
  /// Returns true at the end of the text.
  [[nodiscard]] constexpr bool ended() const noexcept { return token.kind == TokenKind::end; }
  /// Returns true if the token is a number on the line.
  [[nodiscard]] constexpr bool is_flat_figure() const noexcept { return token.is_flat_figure(); }
};

} // namespace v0
} // namespace bifolium
