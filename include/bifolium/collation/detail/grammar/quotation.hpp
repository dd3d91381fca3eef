// SPDX-License-Identifier: MIT
/// Tells a quoted formula from a quoted mark. A formula is often copied with its quotation marks: "A-K⁸". But quotation
/// marks are also part of the notation, round a mark as it is printed ("G&H"⁸) and round leaves by their names
/// ('gg3.4'). A mark has neither blanks nor a dash, and a run goes on after it; names of leaves have points between
/// them; and a formula has a leaf count.
#pragma once

#include <bifolium/leaf/token_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// What is between two quotation marks, token by token.
class Quotation {
  Token last_{};
  bool flat_counts_, begins_{true}, several_{}, counted_{}, pointed_{}, other_{};

  /// Returns true for a token after which a leaf count may come: the last of a mark, or a parenthesis, A(6).
  [[nodiscard]] static constexpr bool names(Token const& t) noexcept {
    return t.is(TokenKind::letter) || t.is(TokenKind::greek) || t.is(TokenKind::cyrillic) || t.is(TokenKind::hebrew) ||
           t.is(TokenKind::symbol) || t.is(TokenKind::close_square) || t.is(TokenKind::close_round) ||
           t.is(TokenKind::open_round);
  }

public:
  /// `flat_counts`: leaf counts may be on the line.
  constexpr explicit Quotation(bool flat_counts) noexcept : flat_counts_{flat_counts} {}
  /// Adds the next token.
  constexpr void add(Token const& t) noexcept {
    bool const figure = t.is(TokenKind::figure);
    several_ = several_ || t.is(TokenKind::dash) || (t.spaced && !begins_);
    counted_ = counted_ || (figure && !begins_ && (t.raised() || (flat_counts_ && !t.spaced && names(last_))));
    pointed_ = pointed_ || (figure && last_.is(TokenKind::point));
    other_ = other_ || !(figure || t.is(TokenKind::letter) || t.is(TokenKind::point));
    last_ = t, begins_ = false;
  }
  /// Returns true for what stands in brackets if they are a gathering: a leaf count comes after them, [hand]⁸, or is in
  /// them, [B⁸].
  [[nodiscard]] constexpr bool begins_gathering(TokenCursor c) const noexcept {
    auto const open = c.token;
    bool const square = open.is(TokenKind::open_square);
    c.take();
    Quotation inside{flat_counts_ && square};
    bool const named = names(c.token) && !c.at(TokenKind::open_round) && !c.at(TokenKind::close_round);
    for (; !c.ended() && c.token.to - open.from < widest_name; c.take()) {
      if (c.at(square ? TokenKind::close_square : TokenKind::close_round)) {
        c.take();
        bool const count_after = c.at(TokenKind::figure) && !c.token.spaced;
        return count_after || (square && named && inside.counted_ && !inside.several_);
      }
      inside.add(c.token);
    }
    return false;
  }
  /// Returns true if it has several elements: a blank or a dash.
  [[nodiscard]] constexpr bool several() const noexcept { return several_; }
  /// Returns true if it is a formula. `first`: nothing but a heading comes before it. `after`: what comes after it.
  [[nodiscard]] constexpr bool is_formula(bool first, TokenCursor const& after) const noexcept {
    bool const leaves = pointed_ && !other_; // 'gg3.4'
    bool const one = first && counted_ && !leaves;
    bool const stop = after.at(TokenKind::point) || after.at(TokenKind::colon);
    if (after.ended() || (stop && after.ahead().is(TokenKind::end))) return one || (several_ && (first || counted_));
    bool const bracket = after.token.spaced && (after.at(TokenKind::open_round) || after.at(TokenKind::open_square));
    if (bracket && !several_ && begins_gathering(after)) return false; // "B2" [hand]⁸ is "B2" ¶⁸ with another mark
    bool const goes_on = bracket || after.at(TokenKind::semicolon) || (after.at(TokenKind::comma) && several_);
    return goes_on && (one || (several_ && counted_));
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
