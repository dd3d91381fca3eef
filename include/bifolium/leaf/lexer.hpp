// SPDX-License-Identifier: MIT
/// A lexer, which makes the tokens of leaf/token.hpp from a text one at a time and without allocation.
/// leaf/token_cursor.hpp goes from token to token.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/utf8.hpp>
#include <bifolium/leaf/detail/token_kinds.hpp>
#include <bifolium/leaf/markup.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Makes the tokens of a text, one after another. The text must outlive the lexer and be shorter than 4 GB.
class Lexer {
  char const* text_{};
  std::uint32_t size_{}, at_{};
  TokenStyle mode_{TokenStyle::line};

public:
  constexpr Lexer() = default;
  /// Makes a lexer that begins at byte `at` of the text. At or after the end of the text, every token is `end`.
  constexpr explicit Lexer(std::string_view text, std::size_t at = 0) noexcept
      : text_{text.data()}, size_{static_cast<std::uint32_t>(text.size())}, at_{static_cast<std::uint32_t>(at)} {}

  /// Returns the next token. At the end of the text it returns `end` every time.
  constexpr Token next() noexcept {
    if (at_ >= size_) return {TokenKind::end, TokenStyle::line, false, size_, size_, 0};
    if (mode_ != TokenStyle::line) return any();
    // most tokens are one letter, figure or mark of ASCII on the line, perhaps after a blank
    auto const from = text_[at_] == ' ' && at_ + 1 < size_ ? at_ + 1 : at_;
    auto const c = static_cast<unsigned char>(text_[from]);
    auto const after = [&] { return static_cast<unsigned char>(at(from + 1)); };
    switch (detail::kind_of_byte(c)) {
    case detail::ByteKind::letter:
      return after() < 0xCC ? on_line(TokenKind::letter, from, c) : any(); // an accent may follow
    case detail::ByteKind::figure:
      return is_digit(static_cast<char>(after())) ? any() : on_line(TokenKind::figure, from, c - 0U - '0');
    case detail::ByteKind::simple:
      return on_line(detail::simple_kind(text_[from]), from, c);
    case detail::ByteKind::sign:
      if (after() == '+' || after() == '-' || after() == '/') return any(); // +-, -/+
      return on_line(c == '-' ? TokenKind::dash : TokenKind::plus, from, c);
    case detail::ByteKind::square: // but not [superscript 8]
      return (after() | 0x20U) == 's' ? any() : on_line(TokenKind::open_square, from, c);
    case detail::ByteKind::high:
      return c == 0xC2 || (c == 0xE2 && after() == 0x81) ? raised(from) : any();
    default:
      return any();
    }
  }

private:
  constexpr Token on_line(TokenKind kind, std::uint32_t from, std::uint32_t value) noexcept {
    bool const spaced = from != at_;
    at_ = from + 1;
    return {kind, TokenStyle::line, spaced, from, at_, value};
  }
  // raised() and any() are apart from next(), which is so short that it saves no register
  [[gnu::noinline]] constexpr Token raised(std::uint32_t from) noexcept {
    auto const first = raised_digit_at({text_, size_}, from);
    if (first.bytes == 0) return any();
    bool const spaced = from != at_;
    at_ = from;
    return raised_figure(first, spaced, from);
  }
  [[gnu::noinline]] constexpr Token any() noexcept {
    auto found = one();
    if (mode_ != TokenStyle::line && at_ < size_) take_closing(found);
    return found;
  }
  constexpr Token one() noexcept {
    bool spaced = false;
    for (auto from = at_;;) {
      if (at_ >= size_) return {TokenKind::end, TokenStyle::line, spaced, size_, size_, 0};
      auto const c = static_cast<unsigned char>(text_[at_]);
      switch (auto const kind = detail::kind_of_byte(c)) {
      case detail::ByteKind::letter:
        if (static_cast<unsigned char>(at(at_ + 1)) >= 0xCC) return accented(spaced, from, c);
        return token(TokenKind::letter, 1, spaced, from, c);
      case detail::ByteKind::blank:
        from = ++at_, spaced = true;
        continue;
      case detail::ByteKind::figure:
        return figure(spaced, from, mode_);
      case detail::ByteKind::simple:
        return token(detail::simple_kind(text_[at_]), 1, spaced, from, c);
      default:
        if (Token found; special(kind, spaced, from, found)) return found;
      }
    }
  }

  /// Takes the markup that ends raising; it belongs to the token before it.
  constexpr void take_closing(Token& found) noexcept {
    auto const bytes = end_of_style_at({text_, size_}, at_);
    if (!bytes) return;
    at_ += *bytes;
    found.to = at_;
    mode_ = TokenStyle::line;
  }
  [[nodiscard]] constexpr char at(std::uint32_t i) const noexcept { return i < size_ ? text_[i] : '\0'; }
  constexpr Token token(TokenKind kind, std::uint32_t bytes, bool spaced, std::uint32_t from,
                        std::uint32_t value) noexcept {
    at_ += bytes;
    return {kind, mode_, spaced, from, at_, value};
  }
  constexpr Token figure(bool spaced, std::uint32_t from, TokenStyle style) noexcept {
    std::uint32_t value = 0;
    for (; at_ < size_ && is_digit(text_[at_]); ++at_)
      value = value < 1000000 ? value * 10 + static_cast<std::uint32_t>(text_[at_] - '0') : value;
    if (style == TokenStyle::caret && ends_caret_number({text_, size_}, at_)) ++at_;
    return {TokenKind::figure, style, spaced, from, at_, value};
  }
  /// Takes a letter with a combining sign after it. The two are one character, ã, and a symbol.
  constexpr Token accented(bool spaced, std::uint32_t from, unsigned char c) noexcept {
    auto const sign = decode({text_, size_}, at_ + 1);
    bool const combining = sign.value >= 0x300 && sign.value <= 0x36F;
    return token(combining ? TokenKind::symbol : TokenKind::letter, combining ? 1U + sign.bytes : 1U, spaced, from,
                 combining ? sign.value * 256 + c : c);
  }
  /// Reads a token that needs more than one byte to decide. Returns false if it was a blank or only changes the style.
  constexpr bool special(detail::ByteKind kind, bool& spaced, std::uint32_t& from, Token& found) noexcept {
    switch (kind) {
    case detail::ByteKind::sign:
      return found = sign(spaced, from), true;
    case detail::ByteKind::caret:
      return caret(spaced, from, found);
    case detail::ByteKind::brace:
      if (mode_ != TokenStyle::brace) return found = token(TokenKind::other, 1, spaced, from, '}'), true;
      from = ++at_, mode_ = TokenStyle::line;
      return false;
    case detail::ByteKind::angle:
      return angle(spaced, from, found);
    case detail::ByteKind::square:
      return found = square(spaced, from), true;
    case detail::ByteKind::ampersand:
      return ampersand(spaced, from, found);
    default:
      return high(spaced, from, found);
    }
  }
  /// Reads & and the entities: &amp; is a symbol, &lt; and &gt; are signs without a meaning, &nbsp; is a blank.
  constexpr bool ampersand(bool& spaced, std::uint32_t& from, Token& found) noexcept {
    auto const entity = entity_at({text_, size_}, at_).value_or(Entity{'&', 1});
    if (entity.character == ' ') {
      from = at_ += entity.bytes, spaced = true;
      return false;
    }
    auto const kind = entity.character == '&' ? TokenKind::symbol : TokenKind::other;
    found = token(kind, entity.bytes, spaced, from, static_cast<unsigned char>(entity.character));
    return true;
  }
  /// Reads - and +, and the signs that the two form together.
  constexpr Token sign(bool spaced, std::uint32_t from) noexcept {
    char const c = text_[at_], other = c == '-' ? '+' : '-';
    if (at(at_ + 1) == other) return token(TokenKind::plus_minus, 2, spaced, from, 0xB1);
    if (at(at_ + 1) == '/' && at(at_ + 2) == other) return token(TokenKind::plus_minus, 3, spaced, from, 0xB1);
    return token(c == '-' ? TokenKind::dash : TokenKind::plus, 1, spaced, from, static_cast<unsigned char>(c));
  }
  constexpr bool caret(bool spaced, std::uint32_t from, Token& found) noexcept {
    if (auto const markup = markup_at({text_, size_}, at_)) {
      at_ += markup->bytes, mode_ = TokenStyle::brace;
      return false;
    }
    ++at_;
    if (is_digit(at(at_))) return found = figure(spaced, from, TokenStyle::caret), true;
    bool const raises = is_latin_letter(at(at_)) || static_cast<unsigned char>(at(at_)) >= 0xC2; // ^πA
    if (!raises) return found = token(TokenKind::other, 0, spaced, from, '^'), true;
    found = next();
    found.style = TokenStyle::caret, found.spaced = spaced || found.spaced, found.from = from;
    return true;
  }
  /// Reads `<sup>`, `<sub>` and TEI's `<hi rend="superscript">`, and their ends.
  constexpr bool angle(bool spaced, std::uint32_t& from, Token& found) noexcept {
    auto const markup = markup_at({text_, size_}, at_);
    if (!markup || (markup->kind == MarkupKind::ends && mode_ == TokenStyle::line))
      return found = token(TokenKind::other, 1, spaced, from, '<'), true;
    at_ += markup->bytes;
    if (markup->kind == MarkupKind::ends) from = at_;
    mode_ = markup->kind == MarkupKind::ends     ? TokenStyle::line
            : markup->kind == MarkupKind::lowers ? TokenStyle::lowered
                                                 : TokenStyle::tag;
    return false;
  }
  /// Reads [superscript 8] as a raised number, [superscript pi] and [superscript chi] as the letters, which are raised
  /// before a mark without being marked so, and any other bracket as a bracket.
  constexpr Token square(bool spaced, std::uint32_t from) noexcept {
    auto const name = superscript_named_at({text_, size_}, at_);
    if (!name) return token(TokenKind::open_square, 1, spaced, from, '[');
    at_ += *name;
    if (!is_digit(at(at_))) {
      bool const pi = at(at_) == 'p';
      bool capital = false;
      auto const letter = detail::greek_letter(pi ? 0x3C0 : 0x3C7, capital);
      at_ += pi ? 3U : 4U; // with the bracket
      return {TokenKind::greek, TokenStyle::line, spaced, from, at_, static_cast<std::uint32_t>(letter)};
    }
    auto raised = figure(spaced, from, TokenStyle::tag);
    if (at(at_) == ']') raised.to = ++at_;
    return raised;
  }
  /// Reads a character that is not ASCII.
  constexpr bool high(bool& spaced, std::uint32_t& from, Token& found) noexcept {
    if (auto const markup = markup_at({text_, size_}, at_)) {
      mode_ = markup->kind == MarkupKind::raises ? TokenStyle::tag : TokenStyle::line;
      at_ += markup->bytes;
      if (mode_ == TokenStyle::line) from = at_;
      return false;
    }
    auto const c = decode({text_, size_}, at_);
    if (auto const digit = superscript_digit(c.value))
      return found = raised_figure({*digit, c.bytes}, spaced, from), true;
    if (is_blank(c.value) || c.value == 0xFEFF) {
      from = at_ += c.bytes, spaced = true;
      return false;
    }
    if (subscript_digit(c.value)) return found = lowered_figure(spaced, from), true;
    if (detail::is_direction_sign(c.value)) {
      from = at_ += c.bytes;
      return false;
    }
    if (c.malformed) return found = token(TokenKind::malformed, 1, spaced, from, 0), true;
    if (c.value == 0x207A || c.value == 0x207B) {
      found = token(c.value == 0x207A ? TokenKind::plus : TokenKind::minus, 3, spaced, from, c.value);
      found.style = TokenStyle::sign;
      return true;
    }
    bool capital = false;
    if (auto const place = detail::greek_letter(c.value, capital); place != 0)
      found = token(TokenKind::greek, 2, spaced, from, static_cast<std::uint32_t>(place + (capital ? 64 : 0)));
    else if (auto const letter = detail::cyrillic_letter(c.value, capital); letter != 0)
      found = token(TokenKind::cyrillic, 2, spaced, from, static_cast<std::uint32_t>(letter + (capital ? 64 : 0)));
    else if (auto const worth = detail::hebrew_letter(c.value); worth != 0)
      found = token(TokenKind::hebrew, 2, spaced, from, static_cast<std::uint32_t>(worth));
    else
      found = token(detail::high_kind(c.value), c.bytes, spaced, from, c.value);
    return true;
  }
  /// Reads a number in raised digits, ⁸, whose first digit is at the position of the lexer.
  constexpr Token raised_figure(RaisedDigit digit, bool spaced, std::uint32_t from) noexcept {
    std::uint32_t value = 0;
    for (; digit.bytes != 0; digit = at_ < size_ ? raised_digit_at({text_, size_}, at_) : RaisedDigit{}) {
      value = value < 1000000 ? value * 10 + static_cast<std::uint32_t>(digit.digit) : value;
      at_ += digit.bytes;
    }
    return {TokenKind::figure, TokenStyle::sign, spaced, from, at_, value};
  }
  /// Reads a number in lowered digits: ₈.
  constexpr Token lowered_figure(bool spaced, std::uint32_t from) noexcept {
    std::uint32_t value = 0;
    while (at_ < size_ && static_cast<unsigned char>(text_[at_]) >= 0xC2) {
      auto const c = decode({text_, size_}, at_);
      auto const digit = subscript_digit(c.value);
      if (!digit) break;
      value = value < 1000000 ? value * 10 + static_cast<std::uint32_t>(*digit) : value;
      at_ += c.bytes;
    }
    return {TokenKind::figure, TokenStyle::lowered, spaced, from, at_, value};
  }
};

} // namespace v0
} // namespace bifolium
