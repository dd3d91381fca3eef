// SPDX-License-Identifier: MIT
/// Text of the input as a message may show it. A terminal obeys control characters, hides others and draws some letters like
/// Latin ones; so a message names each of these by its code point: `<U+001B>`, and `о<U+043E>` in the middle of a Latin word. A
/// byte that belongs to no UTF-8 character is `<byte FF>`. Cells that only pass through a program are not touched.
///
/// A text that is an answer, such as a formula, will be read by a program again. There every letter and every blank stays as it
/// is, and only what a terminal would obey is named.
#pragma once

#include <bifolium/core/utf8.hpp>

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace support {

/// Cyrillic, Armenian and Cherokee letters, full-width and mathematical ones, of which many look Latin.
constexpr bool is_look_alike(char32_t code) {
  return (code >= 0x400 && code <= 0x58F) || (code >= 0x13A0 && code <= 0x13F5) || (code >= 0xFF01 && code <= 0xFF5E) ||
         (code >= 0x1D400 && code <= 0x1D7FF);
}

/// `U+0410`: at least four hexadecimal digits.
inline std::string code_point(char32_t code) {
  std::string digits;
  for (; code > 0 || digits.size() < 4; code >>= 4U) digits.insert(digits.begin(), "0123456789ABCDEF"[code & 0xFU]);
  return "U+" + digits;
}

/// The character at a byte as its code point, and a byte that is none as its value.
inline std::string named(std::string_view text, std::size_t at) {
  auto const one = bifolium::decode(text, at);
  if (!one.malformed) return "<" + code_point(one.value) + ">";
  return "<byte " + code_point(static_cast<unsigned char>(text[at])).substr(4) + ">";
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
    auto const one = bifolium::decode(text, at);
    auto const bytes = text.substr(at, one.bytes);
    bool const look_alike = is_look_alike(one.value);
    if (look_alike || is_plain_letter(text[at])) {
      if (word.empty()) begin = at;
      word.append(bytes).append(look_alike ? named(text, at) : "");
      latin = latin || !look_alike;
    } else {
      if (!word.empty()) end_word(at);
      bool const hidden =
          one.malformed || bifolium::is_invisible(one.value) || one.value == 0xA0; // a blank that looks like another
      safe.append(hidden ? named(text, at) : std::string{bytes});
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
    auto const one = bifolium::decode(text, at);
    if (one.value == '\t' || one.value == '\n' || one.value == '\r')
      safe += ' ';
    else
      safe.append(one.malformed || bifolium::is_control_character(one.value) ? named(text, at)
                                                                             : std::string{text.substr(at, one.bytes)});
    at += one.bytes;
  }
  return safe;
}

} // namespace support
