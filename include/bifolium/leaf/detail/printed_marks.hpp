// SPDX-License-Identifier: MIT
/// Reads marks of gatherings that are neither letters nor one symbol: marks made of parentheses, marks in parentheses,
/// and marks in quotation marks, which are stored as they were printed. Beside them, letters in brackets that are not square.
#pragma once

#include <bifolium/leaf/detail/letter_marks.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Returns the number of bytes of )( at a position, or of ) ( before a leaf count, or of ):( )o( )*( before a leaf count or
/// a leaf, of )::( and, before a leaf count, of ))((; or 0 for any other text.
constexpr std::uint32_t cross_size(std::string_view text, std::uint32_t from) noexcept {
  auto const at = [&](std::size_t i) { return i < text.size() ? text[i] : '\0'; };
  if (at(from) != ')' || from + 1 >= text.size()) return 0;
  if (at(from + 1) == '(') return 2;
  if (auto const open = after_blanks(text, from + 1);
      open != from + 1 && at(open) == '(') { // ) (⁴, as it is typed apart
    auto const next = TokenCursor{text, open + 1}.token;
    return !next.spaced && next.is_raised_figure() ? static_cast<std::uint32_t>(open + 1 - from) : 0;
  }
  if (at(from + 1) == ':' && at(from + 2) == '(') return 3;
  auto const four = text.substr(from, 4);
  if (four == ")::(") return 4;
  if (four == "))((") { // and not the ends of two parentheses
    auto const next = TokenCursor{text, from + 4U}.token;
    if (!next.spaced && next.is(TokenKind::figure)) return 4;
  }
  auto const inner = decode(text, from + 1);
  bool const printed = is_latin_letter(at(from + 1)) || at(from + 1) == '?' || is_signature_symbol(inner.value);
  auto const end = from + 1 + static_cast<std::uint32_t>(inner.bytes);
  if (inner.malformed || !printed || at(end) != '(') return 0;
  auto const next = TokenCursor{text, end + 1U}.token;
  return !next.spaced && next.is(TokenKind::figure) ? end + 1 - from : 0;
}

/// Returns the sign that closes a bracket of another form than square ones, or 0 if the sign opens none.
[[nodiscard]] [[nodiscard]] constexpr std::uint32_t closing_bracket(std::uint32_t open) noexcept {
  switch (open) {
  case '{':
    return '}';
  case 0x2329: // 〈E〉
    return 0x232A;
  case 0x27E8: // ⟨E⟩
    return 0x27E9;
  case 0x3008:
    return 0x3009;
  default:
    return 0;
  }
}

/// Reads )( and similar marks, symbols and letters in parentheses, and any mark in quotation marks.
class PrintedMarks : public LetterMarks {
public:
  using LetterMarks::LetterMarks;

protected:
  /// Reads )( ):( )o( )*(, once or repeated: )()(.
  constexpr FoundSignature cross(TokenCursor& c, std::uint32_t multiple = 1) const noexcept {
    auto const from = c.token.from;
    auto const size = cross_size(text_, from);
    std::uint32_t end = from, repeated = 0;
    auto const mark = text_.substr(from, size);
    for (; size != 0 && repeated < 9 && text_.substr(end, size) == mark; end += size) ++repeated;
    if (repeated == 0) return fail(Problem::no_signature, from);
    if (multiple > 1) end = from + size, repeated = 1;
    c = TokenCursor{text_, end};
    return text_mark(Mark::symbol, from, from + size, end, multiple > 1 ? multiple : repeated);
  }
  /// Reads {E} and ⟨E⟩, in which some catalogues have a signature that is inferred: [E].
  constexpr FoundSignature in_other_brackets(TokenCursor& c, std::uint32_t close) const noexcept {
    auto const open = c.token.from;
    auto p = c;
    p.take();
    if (!p.touches(TokenKind::letter) || p.token.raised()) return fail(Problem::no_signature, open);
    auto found = letters(p);
    if (!found || !(p.touches(TokenKind::other) || p.touches(TokenKind::symbol)) || p.token.value != close)
      return fail(Problem::no_signature, open);
    found.end = p.token.to;
    found.inferred = true;
    p.take();
    c = p;
    return found;
  }
  /// Reads a symbol printed in parentheses, (*) and (**), or (: and (:).
  constexpr FoundSignature in_parentheses(TokenCursor& c) const noexcept {
    auto const from = c.token.from;
    auto p = c;
    p.take();
    if (p.touches(TokenKind::colon)) {
      p.take();
      bool const two = p.touches(TokenKind::colon) && p.ahead().is(TokenKind::close_round) && !p.ahead().spaced; // (::)
      if (two) p.take();
      bool const shut = p.touches(TokenKind::close_round);
      if (shut) p.take();
      c = p;
      auto const end = from + (two ? 4U : shut ? 3U : 2U);
      return text_mark(Mark::symbol, from, end, end, 1);
    }
    if (p.touches(TokenKind::letter) || p.is_flat_figure() || p.touches(TokenKind::question)) return printed_so(c, p);
    auto const kind = p.token.kind; // (*), and (+), whose sign stands for a change elsewhere
    bool const symbol = kind == TokenKind::symbol || (kind == TokenKind::plus && p.token.style == TokenStyle::line);
    if (!symbol || p.token.spaced || p.token.value == '&') return fail(Problem::no_signature, from);
    for (auto const v = p.token.value; p.touches(kind) && p.token.value == v;) p.take();
    if (!p.touches(TokenKind::close_round)) return fail(Problem::no_signature, from);
    auto const end = p.token.to;
    p.take();
    bool const counted = p.touches(TokenKind::figure) || p.touches(TokenKind::dash);
    if (kind == TokenKind::plus && !counted) return fail(Problem::no_signature, from); // (+)(2 adds a leaf of )(
    c = p;
    return text_mark(Mark::symbol, from, end, end, 1);
  }
  /// Reads a mark that was printed in parentheses: (a)⁴, (2Y)⁵, (H*)⁴, (?)⁴. A leaf count, a leaf or the other end of a
  /// run must follow; other parentheses contain words. `p` is after the parenthesis.
  constexpr FoundSignature printed_so(TokenCursor& c, TokenCursor p) const noexcept {
    auto const from = c.token.from;
    auto found = fail(Problem::no_signature, from);
    std::uint32_t multiple = 1;
    if (p.is_flat_figure()) multiple = p.token.value, p.take();
    if (p.touches(TokenKind::letter) && !p.token.raised() && multiple > 0 && multiple <= Signature::highest_multiple)
      found = with_affix(p, letters(p, multiple)); // (H*)
    else if (p.touches(TokenKind::question))
      p.take();
    else
      return found;
    auto const end = p.token.to;
    if (!p.touches(TokenKind::close_round)) return fail(Problem::no_signature, from);
    p.take();
    auto next = p; // (a)-(c), (a)-²(c)
    next.take();
    if (next.token.is_raised_figure()) next.take();
    bool const run = p.touches(TokenKind::dash) && next.at(TokenKind::open_round);
    if (!p.touches(TokenKind::figure) && !run) return fail(Problem::no_signature, from);
    c = p;
    if (!found) return text_mark(Mark::symbol, from, end, end, 1);
    found.key = found.key.in_enclosure();
    found.from = from;
    found.end = end;
    return found;
  }
  /// Reads a mark in quotation marks: '1', "G&H". If `with_count` is true, a leaf count may stand inside them: 'Gg⁶'.
  constexpr FoundSignature quoted(TokenCursor& c, bool with_count) const noexcept {
    auto const open = c.token;
    if (!opens_quotation(open.value)) return fail(Problem::no_signature, open.from);
    auto const shut = [&](std::uint32_t at) { return ends_quotation(open.value, decode(text_, at).value); };
    constexpr std::uint32_t most = 5 * Signature::longest_text; // &amp; is five bytes for one
    auto to = open.to, raised = open.to; // raised: position of the raised figures at the end of the quoted text
    while (to < text_.size() && to - open.to <= most && !shut(to)) {
      bool const digit = superscript_digit(decode(text_, to).value).has_value();
      to += decode(text_, to).bytes;
      if (!digit) raised = to;
    }
    if (to >= text_.size() || !shut(to)) return fail(Problem::unknown_mark, open.from);
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
    auto found = number ? done(SignatureKey::of(Mark::number, 0, figure.value).in_enclosure(), open.from, end)
                        : text_mark(Mark::printed, open.to, to, end, 1);
    found.count_inside = count_inside;
    if (found) c = TokenCursor{text_, end};
    return found;
  }
  /// Returns true if quoted text can be a mark. A parenthesis in it must not close another one. '1-10' is refused,
  /// because '1'-'10' may be meant.
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

} // namespace detail

} // namespace v0
} // namespace bifolium
