// SPDX-License-Identifier: MIT
/// Reads marks of gatherings that are letters. A letter that is repeated belongs to a later alphabet: AA and Aa are 2A,
/// AAa is 3A. Hebrew letters are read as numerals, because Hebrew books count their gatherings so (from memory).
#pragma once

#include <bifolium/leaf/found_signature.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Reads Latin letters, alone or with a Greek letter after them, Greek and Cyrillic letters, and numbers in Hebrew
/// letters.
class LetterMarks : public MarkReader {
public:
  using MarkReader::MarkReader;

  /// Reads a Latin letter, once or repeated: A, AA, Aa, aaa. Precondition: the token is a letter.
  constexpr FoundSignature letters(TokenCursor& c, std::uint32_t multiple = 1) const noexcept {
    auto const first = c.token;
    auto const glyph = static_cast<char>(first.value);
    std::uint32_t repeated = 1;
    auto end = first.to;
    c.take();
    if (multiple == 1)
      for (auto before = glyph; doubles(c, before) && repeated < 9; c.take())
        ++repeated, end = c.token.to, before = static_cast<char>(c.token.value);
    Alphabet const alphabet{letters_};
    int const place = *letter_rank(glyph);
    auto const mark = is_capital(glyph) ? Mark::capital : Mark::small_letter;
    auto found =
        done(SignatureKey::of(mark, alphabet.letter(place), multiple > 1 ? multiple : repeated), first.from, end);
    found.glyph_outside = !alphabet.has(place);
    found.capitals = repeated > 1 && is_capital(at(end - 1));
    if (repeated == 1) take_greek(c, found, alphabet);
    return found;
  }

protected:
  /// Returns the number of letters, one or the same again, that are a mark by themselves, as most are: no part of a mark
  /// can follow them. Returns 0 for any other mark.
  [[nodiscard]] constexpr std::uint32_t letters_alone(Token const& t) const noexcept {
    if (!t.is(TokenKind::letter) || t.style != TokenStyle::line) return 0;
    auto end = t.to;
    for (auto before = static_cast<char>(t.value); is_latin_letter(at(end)); before = at(end), ++end)
      if (!is_doubled(before, at(end)) || end - t.to > 7) return 0;
    auto const after = static_cast<unsigned char>(at(end));
    bool const alone =
        after == 0xE2 ? at(end + 1) == '\x81' // ⁴ to ⁹
                      : after == '\0' || after == ' ' || (after >= '(' && after <= ';' && after != '*') || after == ']';
    return alone ? end - t.from : 0;
  }
  /// Takes such letters.
  constexpr FoundSignature take_alone(TokenCursor& c, std::uint32_t letters) const noexcept {
    auto const glyph = static_cast<char>(c.token.value);
    auto const from = c.token.from, end = c.token.to + letters - 1;
    for (auto k = letters; k > 0; --k) c.take();
    Alphabet const alphabet{letters_};
    int const place = *letter_rank(glyph);
    auto const mark = is_capital(glyph) ? Mark::capital : Mark::small_letter;
    auto found = done(SignatureKey::of(mark, alphabet.letter(place), letters), from, end);
    found.glyph_outside = !alphabet.has(place);
    found.capitals = letters > 1 && is_capital(at(end - 1));
    return found;
  }
  /// Takes π or χ at the cursor, also in Latin letters: pi, chi. Returns the position after it, or 0 for any other
  /// text.
  constexpr std::uint32_t unsigned_mark(TokenCursor& c, bool& chi) const noexcept {
    auto const t = c.token;
    if (t.is(TokenKind::greek)) {
      if (t.value != 16 && t.value != 22) return 0;
      chi = t.value == 22;
      c.take();
      return t.to;
    }
    if (!t.is(TokenKind::letter)) return 0;
    auto const first = t.to - 1;                  // a caret may come before the letter
    auto const initial = small_letter(at(first)); // most letters are others, and most texts have no pi
    auto const size = initial == 'p' && at(first + 1) == 'i'                           ? 2U
                      : initial == 'c' && at(first + 1) == 'h' && at(first + 2) == 'i' ? 3U
                                                                                       : 0U;
    if (size == 0 || is_small(at(first + size))) return 0;
    chi = size == 3;
    for (auto k = 0U; k < size; ++k) c.take();
    return first + size;
  }
  /// Takes the symbol after a letter, if there is one: H*, O**.
  constexpr FoundSignature with_affix(TokenCursor& c, FoundSignature found) const noexcept {
    auto const is_affix = [&] {
      auto const v = c.token.value;
      return c.touches(TokenKind::symbol) && c.token.style == TokenStyle::line &&
             (v == '*' || v == 0x2020 || v == 0x2021 || v == 0xA7 || v == 0xB6 || v == 0x261E || v == 0x2016);
    };
    if (!is_affix() || !found || found.key.beside() != Beside::none || !found.key.is_letter()) return found;
    auto const from = c.token.from;
    auto ahead = c;
    for (found.end = from; is_affix() && c.token.from == found.end; c.take()) found.end = c.token.to;
    if (found.end - from > Signature::longest_text) {
      c = ahead;
      found.end = from;
      return found;
    }
    found.key = found.key.with_symbol(Beside::after, from, found.end - from);
    return found;
  }
  /// Reads a Greek letter other than π and χ, once or repeated.
  constexpr FoundSignature greek_mark(TokenCursor& c, std::uint32_t multiple = 1) const noexcept {
    return of_alphabet(c, Mark::greek, Mark::greek_capital, multiple);
  }
  /// Reads a Cyrillic letter, once or repeated.
  constexpr FoundSignature cyrillic_mark(TokenCursor& c, std::uint32_t multiple = 1) const noexcept {
    return of_alphabet(c, Mark::cyrillic, Mark::cyrillic_capital, multiple);
  }
  /// Reads a number in Hebrew letters: א, יא, קכ״ג. No letter has a higher value than the letter before it.
  constexpr FoundSignature hebrew_mark(TokenCursor& c) const noexcept {
    auto const from = c.token.from;
    std::uint32_t figure = 0, before = 400;
    auto end = from;
    int letters = 0;
    for (; c.touches(TokenKind::hebrew) || (letters == 0 && c.at(TokenKind::hebrew)); c.take(), ++letters) {
      bool const fits = c.token.value < before || (c.token.value == 400 && before == 400);
      if (!fits || figure + c.token.value > highest_hebrew) return fail(Problem::unknown_mark, from);
      before = c.token.value;
      figure += before;
      end = c.token.to;
      // geresh and gershayim: they mark the letters as a numeral
      auto const sign = end < text_.size() ? decode(text_, end).value : 0;
      if (sign == 0x5F3 || sign == 0x5F4) end += 2, c = TokenCursor{text_, end - 2U};
    }
    // the sign of direction that is written after them belongs to the mark: what follows it follows the mark
    while (end < text_.size() && is_direction_sign(decode(text_, end).value)) end += decode(text_, end).bytes;
    auto found = done(SignatureKey::of(Mark::hebrew, 0, figure), from, end);
    found.one_letter = letters == 1;
    return found;
  }

private:
  /// Returns true if the letter repeats the one before it: Aa, AA, AAa, aa, but not aA.
  static constexpr bool doubles(TokenCursor const& c, char before) noexcept {
    if (!c.touches(TokenKind::letter) || c.token.raised()) return false;
    return is_doubled(before, static_cast<char>(c.token.value));
  }
  static constexpr bool is_doubled(char before, char again) noexcept {
    return small_letter(again) == small_letter(before) && !(is_small(before) && is_capital(again));
  }
  /// Takes the Greek letter that corresponds to the Latin one and belongs to the mark: aα.
  constexpr void take_greek(TokenCursor& c, FoundSignature& found, Alphabet alphabet) const noexcept {
    if (!c.touches(TokenKind::greek) || c.token.raised()) return;
    auto const place = static_cast<int>(c.token.value & 63U);
    if (alphabet != Alphabet{} || place != alphabet.place(found.key.letter) || found.glyph_outside) return;
    found.key = found.key.with_greek();
    found.end = c.token.to;
    c.take();
  }
  constexpr FoundSignature of_alphabet(TokenCursor& c, Mark lower, Mark capital,
                                       std::uint32_t multiple) const noexcept {
    auto const t = c.token;
    std::uint32_t repeated = 1;
    auto end = t.to;
    c.take();
    for (; multiple == 1 && c.touches(t.kind) && !c.token.raised() && c.token.value == t.value && repeated < 9;
         c.take())
      ++repeated, end = c.token.to;
    auto const mark = t.value > 64 ? capital : lower;
    return with_affix(
        c,
        done(SignatureKey::of(mark, static_cast<int>(t.value & 63U), multiple > 1 ? multiple : repeated), t.from, end));
  }
};

} // namespace detail

} // namespace v0
} // namespace bifolium
