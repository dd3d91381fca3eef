// SPDX-License-Identifier: MIT
/// Reads one signature at one position of a text. The readers of signatures, formulas, references and statements of
/// signing all use this reader, so that they accept the same marks:
///
///   signature = [ series ] , [ duplicate ] , ( "[" , signature , "]" | "[" , words , "]"
///             | [ multiple ] , mark , [ affix ] ) ;
///   series    = raised figure | "[2nd]" | "[3rd]" ;
///   duplicate = "π" | "χ" | "pi" | "chi" | "[pi]" | "[chi]" ;
///   multiple  = figure ;
///   mark      = letter , { the same letter } | letter , Greek letter of its place | Greek letter , { the same }
///             | Cyrillic letter , { the same } | Hebrew letters | figure | symbol , letter
///             | "(" , letter , [ affix ] , ")"
///             | symbol , { the same } | symbol , "_" , symbol | quoted | ")(" , { ")(" } | "):(" , { "):(" } | ")o("
///             | ")::(" | "))((" | "(*)" | "(?)" | "(:" | ":)" | "(:)" | "(::)" ;
///   affix     = "*" | "†" | "‡" | "§" | "¶" | "☞" | "‖" ;
///
/// The parts of a signature nest only in this order. The level, which says what was read before, decides what may
/// follow.
#pragma once

#include <bifolium/leaf/detail/mark_shapes.hpp>

namespace bifolium {
inline namespace v0 {

/// Reads signatures of one text.
class SignatureReader : public detail::MarkShapes {
public:
  using MarkShapes::MarkShapes;

  /// Reads the signature at the cursor and moves the cursor to the token after it. If there is no signature, the cursor
  /// does not move, or moves to the token that is wrong.
  constexpr FoundSignature take(TokenCursor& c) const noexcept {
    auto const alone = letters_alone(c.token);
    return alone != 0 ? take_alone(c, alone) : take(c, Level::anything);
  }
  /// Reads the signature at the beginning of a run. Its leaf count may be inside the quotation marks of the mark:
  /// 'Gg⁶'.
  constexpr FoundSignature take_first(TokenCursor& c) const noexcept {
    return c.at(TokenKind::quote) ? quoted(c, true) : take(c);
  }

protected:
  /// The parts that were read before a mark.
  enum class Level : std::uint8_t { anything, after_series, after_duplicate, after_symbol };

private:
  constexpr FoundSignature take(TokenCursor& c, Level level) const noexcept {
    auto const from = c.token.from;
    auto found = mark(c, level);
    if (found) found.from = from;
    return found;
  }
  constexpr FoundSignature mark(TokenCursor& c, Level level) const noexcept {
    auto const t = c.token;
    // the text of a letter or figure is not stored; that of any other mark would have the markup in it
    if (t.style != TokenStyle::line && t.kind > TokenKind::figure) return fail(Problem::no_signature, t.from);
    switch (t.kind) {
    case TokenKind::letter:
      if ((t.value | 0x20U) == 'p' || (t.value | 0x20U) == 'c' || t.raised()) {
        bool chi = false;
        if (auto const end = unsigned_mark(c, chi); end != 0)
          return unsigned_or_duplicate(c, chi, t.from, end, level, !t.raised());
        if (t.raised()) return fail(Problem::no_signature, t.from); // only π and χ are raised
      }
      return with_affix(c, letters(c));
    case TokenKind::greek:
      return greek(c, level);
    case TokenKind::cyrillic:
      return t.raised() ? fail(Problem::no_signature, t.from) : cyrillic_mark(c);
    case TokenKind::hebrew:
      return t.raised() ? fail(Problem::no_signature, t.from) : hebrew_mark(c);
    case TokenKind::figure:
      return t.raised() ? series(c, level) : number_or_multiple(c, level);
    case TokenKind::open_square:
      return bracketed(c, 1, level);
    case TokenKind::quote:
      return quoted(c, false);
    case TokenKind::close_round:
      return cross(c);
    case TokenKind::open_round:
      return in_parentheses(c);
    case TokenKind::colon:
      if (at(t.to) != ')') return symbol(c, 1, level);
      c.take(), c.take();
      return text_mark(Mark::symbol, t.from, t.from + 2, t.from + 2, 1);
    case TokenKind::symbol:
    case TokenKind::other:
      if (auto const close = detail::closing_bracket(t.value); close != 0) return in_other_brackets(c, close);
      return t.is(TokenKind::symbol) ? symbol(c, 1, level) : fail(Problem::no_signature, t.from);
    case TokenKind::plus:
      return level == Level::anything ? symbol(c, 1, level) : fail(Problem::no_signature, t.from);
    case TokenKind::malformed:
      return fail(Problem::not_utf8, t.from);
    default:
      return fail(Problem::no_signature, t.from);
    }
  }
  constexpr FoundSignature greek(TokenCursor& c, Level level) const noexcept {
    auto const t = c.token;
    bool chi = false;
    if (auto const end = unsigned_mark(c, chi); end != 0)
      return unsigned_or_duplicate(c, chi, t.from, end, level, !t.raised());
    return t.raised() ? fail(Problem::no_signature, t.from) : greek_mark(c);
  }
  /// Reads a raised number before a mark: ²A, ^2A, <sup>2</sup>A.
  constexpr FoundSignature series(TokenCursor& c, Level level) const noexcept {
    auto const t = c.token;
    if (level != Level::anything || t.value < 1 || t.value > 99) return fail(Problem::no_signature, t.from);
    c.take();
    if (t.style == TokenStyle::caret && c.token.style == TokenStyle::caret && c.touches(TokenKind::figure))
      c = TokenCursor{text_, c.token.from + 1U}; // ^2^3A: the second caret separates the series from the multiple
    auto found = take(c, Level::after_series);
    if (found) found.key = found.key.in_series(static_cast<int>(t.value));
    return found;
  }
  constexpr FoundSignature unsigned_or_duplicate(TokenCursor& c, bool chi, std::uint32_t from, std::uint32_t end,
                                                 Level level, bool flat) const noexcept {
    if (level < Level::after_duplicate && takes_prefix(c)) {
      auto ahead = c;
      auto found = take(ahead, Level::after_duplicate);
      auto const mark = found.key.mark();
      if (!found) return found;
      bool const leaf = !flat && found.key.is_bare_number(); // π before a figure is written like leaf 5 of π
      if (leaf) return fail(Problem::no_signature, ahead.token.from);
      if (mark != Mark::pi && mark != Mark::chi) { // ππ is two gatherings, not a duplicate
        found.key = found.key.duplicated(chi ? Duplicate::chi : Duplicate::pi);
        found.flat_prefix = flat;
        c = ahead;
        return found;
      }
    }
    if (!flat) return fail(Problem::no_signature, c.token.from); // a raised π is a prefix and nothing else
    return done(SignatureKey::of(chi ? Mark::chi : Mark::pi), from, end);
  }
  /// Reads [A], as most signatures in brackets are.
  constexpr FoundSignature letter_in_brackets(TokenCursor& c) const noexcept {
    auto const open = c.token.from;
    TokenCursor letter{text_, open + 1U, open + 2U};
    auto found = letters(letter);
    found.end = open + 3;
    found.inferred = true;
    c = TokenCursor{text_, open + 3U};
    return with_affix(c, found);
  }
  /// Reads what is in square brackets: [A] inferred, [pi], [2nd]A, [par.].
  constexpr FoundSignature bracketed(TokenCursor& c, std::uint32_t multiple, Level level) const noexcept {
    auto const open = c.token.from;
    if (multiple == 1 && level < Level::after_symbol && at(open + 2U) == ']' && is_latin_letter(at(open + 1U)))
      return letter_in_brackets(c);
    auto const close = closing_square(c.token.to);
    if (close == 0 || close == c.token.to) return fail(Problem::no_signature, open);
    TokenCursor const after{text_, close + 1U};
    TokenCursor const in{text_, open + 1U, close};
    if (multiple == 1) {
      bool chi = false;
      if (auto p = in; unsigned_mark(p, chi) != 0 && p.ended()) {
        c = after;
        return unsigned_or_duplicate(c, chi, open, close + 1, level, true);
      }
      if (auto const figure = ordinal(in.token, close);
          figure != 0 && level == Level::anything && takes_prefix(after)) {
        c = after;
        auto found = take(c, Level::after_series);
        if (found) found.key = found.key.in_series(figure);
        return found;
      }
    }
    auto const& first = in.token;
    bool const marked = first.is(TokenKind::letter) || first.is(TokenKind::figure) || first.is(TokenKind::greek) ||
                        first.is(TokenKind::cyrillic) || first.is(TokenKind::hebrew) || first.is(TokenKind::symbol) ||
                        first.is(TokenKind::colon);
    if (marked) {
      SignatureReader const inner{text_.substr(0, close), letters_};
      auto p = in;
      auto found = inner.take(p, level == Level::anything ? Level::anything : Level::after_symbol);
      if (found && p.ended() && level < Level::after_symbol && multiple == 1) {
        c = after;
        found.end = close + 1;
        found.inferred = found.key.mark() != Mark::pi && found.key.mark() != Mark::chi; // the bibliographer's marks
        return with_affix(c, found);
      }
      // as a name it would be read again as a mark
      if (auto q = in; (level != Level::anything || multiple > 1) && inner.take(q) && q.ended())
        return fail(Problem::no_signature, open);
    }
    for (auto k = in; !k.ended(); k.take())
      if (k.at(TokenKind::malformed)) return fail(Problem::not_utf8, k.token.from);
    if (in.ended() || !is_name(in)) return fail(Problem::no_signature, open);
    c = after;
    return text_mark(Mark::name, open + 1, close, close + 1, multiple);
  }
  constexpr FoundSignature symbol(TokenCursor& c, std::uint32_t multiple, Level level) const noexcept {
    auto const first = c.token;
    auto const kept = first.value == '&' ? 1U : first.to - first.from; // of &amp;
    auto end = first.to;
    std::uint32_t repeated = 1;
    c.take();
    auto const same = [&] {
      return c.token.kind == first.kind && c.token.value == first.value && c.token.style == TokenStyle::line &&
             c.token.from == end;
    };
    for (; multiple == 1 && same() && repeated < 9; c.take()) ++repeated, end = c.token.to;
    if (detail::is_accented_letter(first.value) && is_in_word(c, first.from))
      return fail(Problem::unknown_mark, first.from);
    if (repeated == 1 && at(end) == '_') { // *_* is one mark
      auto p = TokenCursor{text_, end + 1U};
      if (p.touches(first.kind) && p.token.value == first.value) {
        c = p;
        c.take();
        return text_mark(Mark::symbol, first.from, p.token.to, p.token.to, multiple);
      }
    }
    bool const prefix = level < Level::after_symbol && multiple == 1 && !first.is(TokenKind::plus) &&
                        !detail::is_accented_letter(first.value) && !c.at(TokenKind::open_square) &&
                        !c.at(TokenKind::quote) && takes_prefix(c);
    if (prefix) {
      auto ahead = c;
      auto found = take(ahead, Level::after_symbol);
      if (found && found.key.is_letter() && found.key.beside() == Beside::none &&
          found.key.duplicate() == Duplicate::none && kept * repeated <= Signature::longest_text) {
        found.key = found.key.with_symbol(Beside::before, first.from, end - first.from);
        c = ahead;
        return found;
      }
    }
    return text_mark(Mark::symbol, first.from, first.from + kept, end, multiple > 1 ? multiple : repeated);
  }
  /// Returns true if letters stand before the mark or, at the cursor, after it.
  [[nodiscard]] constexpr bool is_in_word(TokenCursor const& c, std::uint32_t from) const noexcept {
    bool const letter =
        c.touches(TokenKind::letter) || (c.touches(TokenKind::symbol) && detail::is_accented_letter(c.token.value));
    return (letter && c.token.style == TokenStyle::line) || (from > 0 && is_latin_letter(at(from - 1)));
  }
  constexpr FoundSignature number_or_multiple(TokenCursor& c, Level level) const noexcept {
    auto const figure = c.token;
    if (figure.value == 0) return fail(Problem::zero_leaf_count, figure.to);
    auto next = c;
    next.take();
    if (!multiplies(figure, next)) {
      if (figure.value > Signature::highest_number) return fail(Problem::number_too_large, figure.to);
      c = next;
      return done(SignatureKey::of(Mark::number, 0, figure.value), figure.from, figure.to);
    }
    if (figure.value > Signature::highest_multiple) return fail(Problem::multiple_too_high, figure.to);
    auto found = multiplied(next, figure.value, level);
    found.multiplied = found && figure.value > 1;
    if (found) c = next;
    return found;
  }
  /// Reads the mark that a number multiplies.
  constexpr FoundSignature multiplied(TokenCursor& c, std::uint32_t figure, Level level) const noexcept {
    auto const t = c.token;
    bool chi = false;
    if (auto p = c; true)
      if (auto const end = unsigned_mark(p, chi); end != 0) {
        c = p;
        return done(SignatureKey::of(chi ? Mark::chi : Mark::pi, 0, figure), t.from, end);
      }
    switch (t.kind) {
    case TokenKind::letter:
      return with_affix(c, letters(c, figure));
    case TokenKind::greek:
      return greek_mark(c, figure);
    case TokenKind::cyrillic:
      return cyrillic_mark(c, figure);
    case TokenKind::open_square: {
      auto const found = bracketed(c, figure, Level::after_symbol);
      return found && found.key.mark() != Mark::name ? fail(Problem::no_signature, t.from) : found;
    }
    case TokenKind::close_round:
      return cross(c, figure);
    default:
      return figure == 1 ? symbol(c, 1, level) : symbol(c, figure, level);
    }
  }
};

} // namespace v0
} // namespace bifolium
