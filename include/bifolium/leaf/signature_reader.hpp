// SPDX-License-Identifier: MIT
/// Reads one signature at one position of a text. The readers of signatures, formulas, references and statements of
/// signing all use this reader, so that they accept the same marks:
///
///   signature = [ series ] , [ duplicate ] , ( "[" signature "]" | "[" name "]" | [ multiple ] , mark , [ affix ] ) ;
///   series    = raised figure | "[2nd]" | "[3rd]" ... ;
///   duplicate = "π" | "χ" | "pi" | "chi" | "[pi]" | "[chi]" ;
///   multiple  = figure ;
///   mark      = letter , { the same letter } | Greek letter , { the same } | figure | [ symbols ] , letter
///             | symbol , { the same } | quoted | ")(" , { ")(" } | "):(" | "(*)" | "(:" | ":)" | "(:)" ;
///   affix     = "*" | "†" | "‡" | "§" | "¶" | "☞" ;
///
/// The parts of a signature nest only in this order. The level, which says what was read before, decides what may
/// follow.
#pragma once

#include <bifolium/core/problem.hpp>
#include <bifolium/leaf/signature_key.hpp>
#include <bifolium/leaf/token.hpp>

namespace bifolium {
inline namespace v0 {

/// A signature found in a text, or the reason why there is none.
struct FoundSignature {
  SignatureKey key{};   ///< the signature
  std::uint32_t from{}; ///< position of its first byte
  std::uint32_t end{};  ///< position of the byte after it; if there is no signature, of the byte that is wrong
  bool inferred{};      ///< true if it is in square brackets: the gathering is unsigned and the signature inferred
  bool flat_prefix{};   ///< true if a π or χ that is not raised comes before another mark
  bool glyph_outside{}; ///< true for J, U or W in an alphabet without it
  bool multiplied{};    ///< true if a number comes before the mark: 2A, which may mean ²A
  bool count_inside{};  ///< true if a raised number follows inside the quotation marks
  Problem problem{Problem::no_signature}; ///< the reason why there is no signature; Problem::none if there is one
  /// Returns true if a signature was found.
  constexpr explicit operator bool() const noexcept { return problem == Problem::none; }
};

/// Reads the signatures of one text.
class SignatureReader {
protected:
  std::string_view text_; ///< the text
  Letters letters_;       ///< the letters used in addition to the 23

public:
  /// Makes a reader of `text`, which must outlive the reader. `added` lists the letters used in addition to the 23.
  constexpr SignatureReader(std::string_view text, Letters added) noexcept : text_{text}, letters_{added} {}

  /// Reads the signature at the cursor and moves the cursor to the token after it. If there is no signature, the cursor
  /// does not move, or moves to the token that is wrong.
  constexpr FoundSignature take(TokenCursor& c) const noexcept { return take(c, Level::anything); }
  /// Reads the signature at the beginning of a run. Its leaf count may be inside the quotation marks of the mark:
  /// 'Gg⁶'.
  constexpr FoundSignature take_first(TokenCursor& c) const noexcept {
    return c.at(TokenKind::quote) ? quoted(c, true) : take(c, Level::anything);
  }
  /// Reads one Latin letter, or the same letter repeated: A, AA, Aa, aaa. Precondition: the token is a letter.
  constexpr FoundSignature letters(TokenCursor& c, std::uint32_t multiple = 1) const noexcept {
    auto const first = c.token;
    auto const glyph = static_cast<char>(first.value);
    std::uint32_t repeated = 1;
    auto end = first.to;
    c.take();
    if (multiple == 1 && c.touches(TokenKind::letter) && !c.token.raised()) {
      auto const again = static_cast<char>(c.token.value);
      bool const doubles =
          small_letter(again) == small_letter(glyph) && !(is_small(glyph) && is_capital(again)); // not aA
      for (; doubles && is_letter(c, again) && repeated < 9; c.take()) ++repeated, end = c.token.to;
    }
    Alphabet const alphabet{letters_};
    auto const place = letter_rank(glyph);
    auto const mark = is_capital(glyph) ? Mark::capital : Mark::small_letter;
    auto found =
        done(SignatureKey::of(mark, alphabet.letter(place), multiple > 1 ? multiple : repeated), first.from, end);
    found.glyph_outside = !alphabet.has(place);
    return found;
  }

protected:
  /// The parts that were read before a mark.
  enum class Level : std::uint8_t { anything, after_series, after_duplicate, after_symbol };

  /// Returns the byte at a position, or a zero byte after the end of the text.
  [[nodiscard]] constexpr char at(std::size_t i) const noexcept { return i < text_.size() ? text_[i] : '\0'; }
  /// Returns true if the token is that letter, is not raised, and follows the token before it without a blank.
  static constexpr bool is_letter(TokenCursor const& c, char glyph) noexcept {
    return c.touches(TokenKind::letter) && !c.token.raised() && static_cast<char>(c.token.value) == glyph;
  }
  /// Makes the result for a failure.
  static constexpr FoundSignature fail(Problem problem, std::uint32_t at) noexcept {
    FoundSignature found;
    found.problem = problem;
    found.from = found.end = at;
    return found;
  }
  /// Makes the result for a signature and its bytes.
  static constexpr FoundSignature done(SignatureKey key, std::uint32_t from, std::uint32_t end) noexcept {
    FoundSignature found;
    found.key = key;
    found.from = from;
    found.end = end;
    found.problem = Problem::none;
    return found;
  }
  /// Makes the result for a symbol, name or printed mark: the text from `from` to `to`.
  constexpr FoundSignature text_mark(Mark mark, std::uint32_t from, std::uint32_t to, std::uint32_t end,
                                     std::uint32_t multiple) const noexcept {
    auto found = done(SignatureKey::of(mark, 0, multiple), from, end);
    found.key.text_from = from;
    found.key.text_size = static_cast<std::uint8_t>(to - from < 255 ? to - from : 255);
    detail::MarkText const words{text_.substr(from, to - from)};
    if (to - from > 254 || words.too_long() || words.size == 0) return fail(Problem::mark_too_long, end);
    for (std::size_t i = 0; i < words.size; ++i) { // &amp;lt; would be written &lt; and read as another mark
      std::size_t taken = 0;
      detail::entity({words.bytes, words.size}, i, taken);
      if (taken != 0) return fail(Problem::unknown_mark, from);
    }
    for (auto k = from; k < to; k += decode(text_, k).bytes)
      if (decode(text_, k).malformed) return fail(Problem::not_utf8, k);
    return found;
  }

private:
  constexpr FoundSignature take(TokenCursor& c, Level level) const noexcept {
    auto const from = c.token.from;
    auto found = mark(c, level);
    if (found) found.from = from;
    return found;
  }
  constexpr FoundSignature mark(TokenCursor& c, Level level) const noexcept {
    auto const t = c.token;
    bool const may_be_raised = t.kind <= TokenKind::figure || t.is(TokenKind::plus);
    if (t.raised() && !may_be_raised) return fail(Problem::no_signature, t.from);
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
      return symbol(c, 1, level);
    case TokenKind::plus:
      return level == Level::anything && !t.raised() ? symbol(c, 1, level) : fail(Problem::no_signature, t.from);
    case TokenKind::end:
      return fail(Problem::unexpected_end, t.from);
    case TokenKind::malformed:
      return fail(Problem::not_utf8, t.from);
    default:
      return fail(Problem::no_signature, t.from);
    }
  }
  /// Reads pi or chi at the cursor, in Greek or in Latin letters. Returns the position of the byte after it, or 0 if it
  /// is neither.
  constexpr std::uint32_t unsigned_mark(TokenCursor& c, bool& chi) const noexcept {
    auto const t = c.token;
    if (t.is(TokenKind::greek)) {
      if (t.value != 16 && t.value != 22) return 0;
      chi = t.value == 22;
      c.take();
      return t.to;
    }
    if (!t.is(TokenKind::letter)) return 0;
    auto const first = t.to - 1; // a caret may come before the letter
    auto const word = text_.substr(first, 3);
    auto const pair = word.substr(0, 2);
    auto const size = pair == "pi" || pair == "Pi" ? 2U : word == "chi" || word == "Chi" ? 3U : 0U;
    if (size == 0 || is_small(at(first + size))) return 0;
    chi = size == 3;
    for (auto k = 0U; k < size; ++k) c.take();
    return first + size;
  }
  /// Returns true if the token can follow a prefix directly: a letter, a multiple of a letter, or a letter in brackets.
  [[nodiscard]] constexpr bool takes_prefix(TokenCursor c) const noexcept {
    auto const is_mark = [&] {
      return c.touches(TokenKind::letter) ||
             (c.touches(TokenKind::greek) && c.token.value != 16 && c.token.value != 22);
    };
    if (c.token.spaced || c.token.raised()) return false;
    if (c.at(TokenKind::quote)) return c.token.value == '\'' || c.token.value == '"';
    if (c.at(TokenKind::open_square)) {
      if (closing_square(c.token.to) == 0) return false;
      c.take();
      if (c.touches(TokenKind::figure) && !c.token.raised()) c.take();
      return c.touches(TokenKind::letter) && !c.token.raised();
    }
    if (c.at(TokenKind::figure)) c.take();
    return is_mark() && !c.token.raised();
  }
  /// Returns the position of the bracket that closes a square bracket, or 0 if it is too far away for a name.
  [[nodiscard]] constexpr std::uint32_t closing_square(std::uint32_t i) const noexcept {
    for (auto end = i + detail::widest_name; i < text_.size() && i < end; ++i) {
      if (text_[i] == ']') return i;
      if (text_[i] == '[') break;
    }
    return 0;
  }
  /// Reads the symbol that a letter may have after it: H*, O**.
  constexpr FoundSignature with_affix(TokenCursor& c, FoundSignature found) const noexcept {
    auto const is_affix = [&] {
      auto const v = c.token.value;
      return c.touches(TokenKind::symbol) && !c.token.raised() &&
             (v == '*' || v == 0x2020 || v == 0x2021 || v == 0xA7 || v == 0xB6 || v == 0x261E);
    };
    if (!is_affix() || !found || found.key.beside() != Beside::none || !found.key.is_letter()) return found;
    auto const from = c.token.from;
    auto ahead = c;
    for (; is_affix(); c.take()) found.end = c.token.to;
    if (found.end - from > Signature::longest_text) {
      c = ahead;
      found.end = from;
      return found;
    }
    found.key = found.key.with_symbol(Beside::after, from, found.end - from);
    return found;
  }
  constexpr FoundSignature greek(TokenCursor& c, Level level) const noexcept {
    auto const t = c.token;
    bool chi = false;
    if (auto const end = unsigned_mark(c, chi); end != 0)
      return unsigned_or_duplicate(c, chi, t.from, end, level, !t.raised());
    if (t.raised()) return fail(Problem::no_signature, t.from);
    std::uint32_t repeated = 1;
    auto end = t.to;
    c.take();
    for (; c.touches(TokenKind::greek) && !c.token.raised() && c.token.value == t.value && repeated < 9; c.take())
      ++repeated, end = c.token.to;
    auto const mark = t.value > 64 ? Mark::greek_capital : Mark::greek;
    return with_affix(c, done(SignatureKey::of(mark, static_cast<int>(t.value & 63U), repeated), t.from, end));
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
  /// Reads what is in square brackets: [A] inferred, [pi], [2nd]A, [par.].
  constexpr FoundSignature bracketed(TokenCursor& c, std::uint32_t multiple, Level level) const noexcept {
    auto const open = c.token.from;
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
                        first.is(TokenKind::symbol) || first.is(TokenKind::colon);
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
  constexpr FoundSignature symbol(TokenCursor& c, std::uint32_t multiple, Level level) const noexcept {
    auto const first = c.token;
    auto const kept = first.value == '&' ? 1U : first.to - first.from; // of &amp;
    auto end = first.to;
    std::uint32_t repeated = 1;
    c.take();
    auto const same = [&] { return c.touches(first.kind) && c.token.value == first.value && !c.token.raised(); };
    for (; multiple == 1 && same() && repeated < 9; c.take()) ++repeated, end = c.token.to;
    bool const prefix = level < Level::after_symbol && multiple == 1 && !first.is(TokenKind::plus) &&
                        !c.at(TokenKind::open_square) && !c.at(TokenKind::quote) && takes_prefix(c);
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
  /// Reads )( and, doubled, )()(; also ):(.
  constexpr FoundSignature cross(TokenCursor& c) const noexcept {
    auto const from = c.token.from;
    if (at(from + 1) == ':' && at(from + 2) == '(') {
      c = TokenCursor{text_, from + 3U};
      return text_mark(Mark::symbol, from, from + 3, from + 3, 1);
    }
    std::uint32_t end = from, repeated = 0;
    while (at(end) == ')' && at(end + 1) == '(' && repeated < 9) end += 2, ++repeated;
    if (repeated == 0) return fail(Problem::no_signature, from);
    for (auto k = 0U; k < 2 * repeated; ++k) c.take();
    return text_mark(Mark::symbol, from, from + 2, end, repeated);
  }
  /// Reads (*) and (**), symbols printed in parentheses; also (: and (:).
  constexpr FoundSignature in_parentheses(TokenCursor& c) const noexcept {
    auto const from = c.token.from;
    auto p = c;
    p.take();
    if (p.touches(TokenKind::colon)) {
      p.take();
      bool const shut = p.touches(TokenKind::close_round);
      if (shut) p.take();
      c = p;
      auto const end = from + (shut ? 3U : 2U);
      return text_mark(Mark::symbol, from, end, end, 1);
    }
    if (p.touches(TokenKind::letter) || p.is_flat_figure() || p.touches(TokenKind::question)) return printed_so(c, p);
    if (!p.touches(TokenKind::symbol) || p.token.value == '&') return fail(Problem::no_signature, from);
    for (auto const v = p.token.value; p.touches(TokenKind::symbol) && p.token.value == v;) p.take();
    if (!p.touches(TokenKind::close_round)) return fail(Problem::no_signature, from);
    auto const end = p.token.to;
    p.take();
    c = p;
    return text_mark(Mark::symbol, from, end, end, 1);
  }
  /// Reads a mark printed in parentheses, such as (a)⁴, (2Y)⁵ or (?)⁴. A count or a leaf must follow; otherwise these
  /// are words. `p` is after the parenthesis.
  constexpr FoundSignature printed_so(TokenCursor& c, TokenCursor p) const noexcept {
    auto const from = c.token.from;
    if (p.is_flat_figure()) p.take();
    auto const first = p.token;
    int letters = 0;
    for (; p.touches(TokenKind::letter) && !p.token.raised() && letters < 3; p.take()) {
      if (small_letter(static_cast<char>(p.token.value)) != small_letter(static_cast<char>(first.value))) break;
      ++letters;
    }
    if (letters == 0 && p.touches(TokenKind::question)) p.take(), ++letters;
    auto const end = p.token.to;
    if (letters == 0 || !p.touches(TokenKind::close_round)) return fail(Problem::no_signature, from);
    p.take();
    if (!p.touches(TokenKind::figure)) return fail(Problem::no_signature, from);
    c = p;
    return text_mark(Mark::symbol, from, end, end, 1);
  }
  /// Returns true if the number at the cursor multiplies the mark after it. `next` is at that mark.
  [[nodiscard]] constexpr bool multiplies(Token figure, TokenCursor next) const noexcept {
    auto const& t = next.token;
    if (t.spaced || t.raised()) return false;
    auto const counted = [](Token k) { // a mark only with its count or leaf: 2:⁸, 2)(⁴, 2:/3; 2)( alone too
      return !k.spaced && (k.is(TokenKind::figure) || k.is(TokenKind::slash));
    };
    switch (t.kind) {
    case TokenKind::letter:
    case TokenKind::greek:
    case TokenKind::symbol:
      return true;
    case TokenKind::colon: {
      auto const k = next.ahead();
      return counted(k) || (k.is(TokenKind::dash) && !k.spaced);
    }
    case TokenKind::close_round: {
      if (at(t.to) != '(' || figure.value < 2) return false;
      next.take(), next.take();
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
    case TokenKind::greek: {
      auto const mark = t.value > 64 ? Mark::greek_capital : Mark::greek;
      c.take();
      return with_affix(c, done(SignatureKey::of(mark, static_cast<int>(t.value & 63U), figure), t.from, t.to));
    }
    case TokenKind::open_square: {
      auto const found = bracketed(c, figure, Level::after_symbol);
      return found && found.key.mark() != Mark::name ? fail(Problem::no_signature, t.from) : found;
    }
    case TokenKind::close_round:
      c.take(), c.take();
      return text_mark(Mark::symbol, t.from, t.from + 2, t.from + 2, figure);
    default:
      return figure == 1 ? symbol(c, 1, level) : symbol(c, figure, level);
    }
  }
  /// Reads a mark in quotation marks: '1', "G&H". With `with_count`, a raised number may come before the closing
  /// quotation mark: 'Gg⁶'.
  constexpr FoundSignature quoted(TokenCursor& c, bool with_count) const noexcept {
    auto const open = c.token;
    if (!opens_quotation(open.value)) return fail(Problem::no_signature, open.from);
    auto const shut = open.value == 0x2018 ? 0x2019U : open.value == 0x201C ? 0x201DU : open.value;
    constexpr std::uint32_t most = 5 * Signature::longest_text; // five bytes are one where it is &amp;
    auto to = open.to, raised = open.to; // raised: where the raised digits before the closing quotation mark begin
    while (to < text_.size() && to - open.to <= most && decode(text_, to).value != shut) {
      auto const digit = superscript_digit(decode(text_, to).value) >= 0;
      to += decode(text_, to).bytes;
      if (!digit) raised = to;
    }
    if (to >= text_.size() || decode(text_, to).value != shut) return fail(Problem::unknown_mark, open.from);
    auto end = to + decode(text_, to).bytes;
    auto const follows = TokenCursor{text_, end}.token;
    bool const counted = !follows.spaced && (follows.is(TokenKind::figure) || follows.is(TokenKind::slash) ||
                                             follows.is(TokenKind::open_round) || follows.raised());
    bool const count_inside = with_count && raised != to && raised != open.to && !counted;
    if (count_inside) to = end = raised;
    if (!quotable(open.to, to)) return fail(Problem::unknown_mark, open.from);
    TokenCursor in{text_, open.to, to};
    auto const figure = in.token;
    in.take();
    bool const number = figure.is_flat_figure() && in.ended() && figure.from == open.to && figure.to == to &&
                        figure.value > 0 && to - open.to <= 6;
    auto found = number ? done(SignatureKey::of(Mark::number, 0, figure.value).in_quotation_marks(), open.from, end)
                        : text_mark(Mark::printed, open.to, to, end, 1);
    found.count_inside = count_inside;
    if (found) c = TokenCursor{text_, end};
    return found;
  }
  /// Returns true if the text can be a quoted mark. A parenthesis in it must not close another one, and '1-10' may mean
  /// '1'-'10'.
  [[nodiscard]] constexpr bool quotable(std::uint32_t from, std::uint32_t to) const noexcept {
    int round = 0, square = 0;
    for (auto k = from; k < to; ++k) {
      auto const b = static_cast<unsigned char>(text_[k]);
      round += b == '(' ? 1 : b == ')' ? -1 : 0;
      square += b == '[' ? 1 : b == ']' ? -1 : 0;
      if (b < 0x20 || b == '"' || round < 0 || square < 0) return false;
    }
    if (round != 0 || square != 0) return false;
    auto k = from;
    while (k < to && is_digit(text_[k])) ++k;
    return k == from || k >= to || !is_dash(decode(text_, k).value) || !is_digit(at(k + decode(text_, k).bytes));
  }
};

} // namespace v0
} // namespace bifolium
