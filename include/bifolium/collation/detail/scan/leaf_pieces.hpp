// SPDX-License-Identifier: MIT
/// Reads the numbers of inserted leaves, in which a point joins and a comma parts: χ1.2 is one fold, χ1,2 are two single
/// leaves, and χ1.2,3 is a fold and a leaf after it. A list is therefore made of pieces. Each is an insertion of its own,
/// because leaves of one insertion are all joined in one way.
///
///   pieces = piece , { "," , piece } ;
///   piece  = figure , ( { "." , figure } | "-" , figure ) ;
#pragma once

#include <bifolium/leaf/token_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Leaves of a list that are one insertion: a piece of paper (1.2), or single leaves that follow one another (3,4).
struct LeafPiece {
  std::uint32_t first{}, last{};
  bool conjugate{};
};

/// Returns true if the number at the cursor belongs to a list whose last number is `last`. Among leaves without a name
/// it does not if it begins something else: in A1+1,2+1 the 2 is the leaf before another insertion.
[[nodiscard]] constexpr bool continues_pieces(TokenCursor const& c, std::uint32_t last, bool unnamed) noexcept {
  if (!c.token.is_figure_not_raised() || c.token.value != last + 1) return false;
  auto const t = c.ahead();
  return !unnamed || t.spaced ||
         !(t.is(TokenKind::plus) || t.is(TokenKind::equals) || t.is(TokenKind::symbol) || t.is(TokenKind::figure) ||
           t.is(TokenKind::letter));
}
/// Returns true if a point at the cursor joins leaf `last` to the next: 1.2.
[[nodiscard]] constexpr bool joins_pieces(TokenCursor c, std::uint32_t last, bool unnamed) noexcept {
  if (!c.touches(TokenKind::point)) return false;
  c.take();
  return !c.token.spaced && continues_pieces(c, last, unnamed);
}
/// Takes the next piece from the number at the cursor. `unnamed`: blanks may follow a comma (A1+1, 2), and there are no
/// ranges.
constexpr LeafPiece take_leaf_piece(TokenCursor& c, bool unnamed) noexcept {
  LeafPiece piece{c.token.value, c.token.value, false};
  bool range = unnamed;
  for (c.take();;) {
    auto next = c;
    next.take();
    auto after = next;
    after.take();
    auto const number = next.token;
    if (joins_pieces(c, piece.last, unnamed) && (piece.conjugate || piece.first == piece.last))
      piece.conjugate = true;
    else if (piece.conjugate)
      return piece;
    else if (c.touches(TokenKind::comma) && continues_pieces(next, piece.last, unnamed) &&
             (unnamed || !number.spaced)) {
      if (joins_pieces(after, number.value, unnamed)) return piece; // 1,2.3
      range = unnamed;
    } else if (!range && c.touches(TokenKind::dash) && number.is_figure_not_raised() && !number.spaced &&
               number.value > piece.last)
      range = true;
    else
      return piece;
    piece.last = number.value;
    c = after;
  }
}
/// Takes all pieces of a list. Returns its leaves, conjugate if some of them are.
constexpr LeafPiece take_leaf_pieces(TokenCursor& c, bool unnamed) noexcept {
  auto all = take_leaf_piece(c, unnamed);
  while (c.touches(TokenKind::comma)) {
    auto next = c;
    next.take();
    if (!continues_pieces(next, all.last, unnamed) || (next.token.spaced && !unnamed)) break;
    auto const piece = take_leaf_piece(next, unnamed);
    all.last = piece.last;
    all.conjugate = all.conjugate || piece.conjugate;
    c = next;
  }
  return all;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
