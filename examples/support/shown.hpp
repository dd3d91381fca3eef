// SPDX-License-Identifier: MIT
/// Text of the input as a message may show it. A terminal obeys control characters, hides others and draws some letters like
/// Latin ones; so a message names each of these by its code point: `<U+001B>`, and `о<U+043E>` in the middle of a Latin word. A
/// byte that belongs to no UTF-8 character is `<byte FF>`. Cells that only pass through a program are not touched.
///
/// A text that is an answer, such as a formula, will be read by a program again. There every letter and every blank stays as it
/// is, and only what a terminal would obey is named.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace support {

/// One character of a text and its bytes; `valid` is false for a byte that belongs to no character.
struct Character {
  std::uint32_t code{};
  std::size_t bytes{1};
  bool valid{};
};

/// The character that begins at a byte of a text. Precondition: at < text.size().
inline Character character_at(std::string_view text, std::size_t at) {
  auto const byte = [&](std::size_t i) { return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i])); };
  auto const first = byte(at);
  if (first < 0x80) return {first, 1, true};
  std::size_t const bytes = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
  Character const broken{first, 1, false};
  if (first < 0xC2 || first > 0xF4 || at + bytes > text.size()) return broken;
  std::uint32_t code = first & (0x7FU >> bytes);
  for (std::size_t i = 1; i < bytes; ++i) {
    if ((byte(at + i) & 0xC0U) != 0x80U) return broken;
    code = code << 6U | (byte(at + i) & 0x3FU);
  }
  constexpr std::uint32_t least[]{0, 0, 0x80, 0x800, 0x10000};
  bool const surrogate = code >= 0xD800 && code <= 0xDFFF;
  return code < least[bytes] || surrogate || code > 0x10FFFF ? broken : Character{code, bytes, true};
}

/// Control characters, marks of direction, and characters that leave no trace on the screen.
constexpr bool is_invisible(std::uint32_t code) {
  return code < 0x20 || (code >= 0x7F && code <= 0xA0) || code == 0xAD || (code >= 0x200B && code <= 0x200F) ||
         (code >= 0x2028 && code <= 0x202E) || (code >= 0x2060 && code <= 0x206F) || code == 0xFEFF ||
         (code >= 0xFFF9 && code <= 0xFFFB) || (code >= 0xE0000 && code <= 0xE007F);
}
/// Characters that a terminal obeys: control characters, ends of lines, and those that turn the direction of the text that
/// follows. The marks of direction U+200E and U+200F only stand beside a letter, as after a signature in Hebrew letters.
constexpr bool is_obeyed(std::uint32_t code) {
  return code < 0x20 || (code >= 0x7F && code < 0xA0) || (code >= 0x2028 && code <= 0x202E) ||
         (code >= 0x2066 && code <= 0x2069);
}
/// Cyrillic, Armenian and Cherokee letters, full-width and mathematical ones, of which many look Latin.
constexpr bool is_look_alike(std::uint32_t code) {
  return (code >= 0x400 && code <= 0x58F) || (code >= 0x13A0 && code <= 0x13F5) || (code >= 0xFF01 && code <= 0xFF5E) ||
         (code >= 0x1D400 && code <= 0x1D7FF);
}

/// `U+0410`: at least four hexadecimal digits.
inline std::string code_point(std::uint32_t code) {
  std::string digits;
  for (; code > 0 || digits.size() < 4; code >>= 4U) digits.insert(digits.begin(), "0123456789ABCDEF"[code & 0xFU]);
  return "U+" + digits;
}

/// A character as its code point, and a byte that is none as its value.
inline std::string named(Character one) {
  return "<" + (one.valid ? code_point(one.code) : "byte " + code_point(one.code).substr(4)) + ">";
}
/// Returns true for a Latin letter without accents, a figure or an underscore.
constexpr bool is_plain_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

/// A text as a message shows it. Spaces stay. A word that is all of one alphabet is not mistaken for another.
inline std::string shown(std::string_view text) {
  std::string safe, word; // word: the letters since the last other character, with those that look Latin named
  bool latin = false;
  std::size_t begin = 0;
  auto const end_word = [&](std::size_t at) {
    safe.append(latin ? std::string_view{word} : text.substr(begin, at - begin));
    word.clear();
    latin = false;
  };
  for (std::size_t at = 0; at < text.size();) {
    auto const one = character_at(text, at);
    auto const bytes = text.substr(at, one.bytes);
    bool const look_alike = one.valid && is_look_alike(one.code);
    if (look_alike || is_plain_letter(text[at])) {
      if (word.empty()) begin = at;
      word.append(bytes).append(look_alike ? named(one) : "");
      latin = latin || !look_alike;
    } else {
      if (!word.empty()) end_word(at);
      safe.append(!one.valid || is_invisible(one.code) ? named(one) : std::string{bytes});
    }
    at += one.bytes;
  }
  if (!word.empty()) end_word(text.size());
  return safe;
}
/// A text that is an answer, as one cell: a tab or the end of a line is a blank, and the letters and blanks are those of the
/// text.
inline std::string data_cell(std::string_view text) {
  std::string safe;
  for (std::size_t at = 0; at < text.size();) {
    auto const one = character_at(text, at);
    if (one.valid && (one.code == '\t' || one.code == '\n' || one.code == '\r'))
      safe += ' ';
    else
      safe.append(!one.valid || is_obeyed(one.code) ? named(one) : std::string{text.substr(at, one.bytes)});
    at += one.bytes;
  }
  return safe;
}

} // namespace support
