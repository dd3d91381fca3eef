// SPDX-License-Identifier: MIT
/// The characters of signatures: which are letters, which may be a symbol, and what each byte of ASCII is to the lexer.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns true for a letter with an accent, and for ç æ œ ß and the like: French, Spanish and German printers signed
/// preliminary gatherings á é í, â ê î (common practice, no source). Within words they are letters.
constexpr bool is_accented_letter(char32_t c) noexcept {
  return (c >= 0xC0 && c <= 0xFF && c != 0xD7 && c != 0xF7 && c != 0xE3 && c != 0xF1 && c != 0xF5) || c == 0x152 ||
         c == 0x153;
}
/// Returns true for a character that can be a symbol: one that is set as type and has no other meaning in a formula.
constexpr bool is_signature_symbol(char32_t c) noexcept {
  if (c < 0x80) return c == '*' || c == '&' || c == ':' || c == '#' || c == '@' || c == '%';
  if (c == 0xA7 || c == 0xB6) return true; // § ¶
  if (is_accented_letter(c)) return true;
  // vowels with a tilde or a macron, which some printers used after z, and the long s
  if (c == 0xE3 || c == 0xF1 || c == 0xF5 || c == 0x129 || c == 0x169 || c == 0x1EBD || c == 0x101 || c == 0x113 ||
      c == 0x12B || c == 0x14D || c == 0x16B || c == 0x17F)
    return true;
  if (c < 0x250) return false;
  if (c >= 0x400 && c < 0x530) return true; // Cyrillic letters without a fixed place in the alphabet
  if (c == 0x2016) return true;             // ‖
  if (c >= 0x300 && c < 0x2020) return false;
  if (c == 0x2020 || c == 0x2021 || c == 0x203B || c == 0x2042) return true; // † ‡ ※ ⁂
  if (c >= 0x204A && c <= 0x205C) return true;  // the Tironian et, the reversed paragraph, asterisks, dots
  if (c >= 0x2100 && c <= 0x214F) return true;  // ℞ ℣ and similar signs
  if (c == 0x2184) return true;                 // reversed c, for con
  if (c < 0x2190) return false;                 // raised figures, dashes, quotation marks
  if (c == 0x2212 || c == 0x2213) return false; // minus
  return c < 0xD800 || (c >= 0xF900 && c != 0xFFFD && c != 0xFEFF && c < 0x1FAFF);
}
/// Returns the number of a Greek letter, or 0 for any other character. Sets `capital`.
constexpr int greek_letter(char32_t c, bool& capital) noexcept {
  capital = c < 0x3B1;
  auto const n = c >= 0x3B1 && c <= 0x3C9   ? static_cast<int>(c - 0x3B1) + 1
                 : c >= 0x391 && c <= 0x3A9 ? static_cast<int>(c - 0x391) + 1
                                            : 0;
  return n == 0 ? 0 : n >= 18 ? n - 1 : n; // final sigma has the number of sigma
}
/// Returns the number of a Cyrillic letter, or 0 for any other character. Sets `capital`. Counted are 31 letters: those
/// of the civil type without Ё and Й, which are later, and without І, Ѣ, Ѳ and Ѵ (from memory).
constexpr int cyrillic_letter(char32_t c, bool& capital) noexcept {
  capital = c < 0x430;
  auto const n = c >= 0x410 && c <= 0x44F ? static_cast<int>(c - (capital ? 0x410 : 0x430)) + 1 : 0;
  return n == 10 ? 0 : n > 10 ? n - 1 : n; // Й
}
/// Returns the value of a Hebrew letter as a numeral, or 0 for any other character. A final form has the value of its
/// letter.
constexpr int hebrew_letter(char32_t c) noexcept {
  constexpr int worth[]{1,  2,  3,  4,  5,  6,  7,  8,  9,  10,  20,  20,  30, 40,
                        40, 50, 50, 60, 70, 80, 80, 90, 90, 100, 200, 300, 400};
  return c >= 0x5D0 && c <= 0x5EA ? worth[c - 0x5D0] : 0;
}
/// Returns true for a sign that sets the direction of writing or joins letters. It is invisible and has no meaning
/// here.
constexpr bool is_direction_sign(char32_t c) noexcept {
  return c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) || (c >= 0x2060 && c <= 0x2069) || c == 0x61C;
}

/// The kind of token that a byte begins.
enum class ByteKind : std::uint8_t {
  simple,
  letter,
  figure,
  blank,
  sign,
  caret,
  brace,
  angle,
  square,
  ampersand,
  high
};

/// The kind of each byte, 32 to a row: a is the first enumerator of ByteKind, b the second. The table is written out,
/// because a computed one would be computed in every source file that includes this header.
// one row each for the bytes from 00, 20, 40, 60 and so on
inline constexpr char letters_of_kinds[]{"aaaaaaaaaddaadaaaaaaaaaaaaaaaaaa"
                                         "daaaaajaaaaeaeaaccccccccccaahaaa"
                                         "abbbbbbbbbbbbbbbbbbbbbbbbbbiaafa"
                                         "abbbbbbbbbbbbbbbbbbbbbbbbbbaagaa"
                                         "kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk"
                                         "kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk"
                                         "kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk"
                                         "kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk"};
constexpr ByteKind kind_of_byte(unsigned char c) noexcept { return static_cast<ByteKind>(letters_of_kinds[c] - 'a'); }

} // namespace detail
} // namespace v0
} // namespace bifolium
