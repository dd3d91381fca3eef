// SPDX-License-Identifier: MIT
/// Text of the input as a message may show it. A terminal obeys control characters, hides others and draws some letters like
/// Latin ones; so a message names each of these by its code point: `<U+001B>`, `А<U+0410>`. A byte that belongs to no
/// UTF-8 character is `<byte FF>`. Cells that only pass through a program are not touched.
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
/// Cyrillic, Armenian and Cherokee letters, full-width and mathematical ones: none is in a signature, and many look Latin.
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

/// A text as a message shows it. Spaces stay.
inline std::string shown(std::string_view text) {
  std::string safe;
  for (std::size_t at = 0; at < text.size();) {
    auto const one = character_at(text, at);
    if (!one.valid)
      safe.append("<byte ").append(code_point(one.code).substr(4)).append(">");
    else if (is_invisible(one.code))
      safe.append("<").append(code_point(one.code)).append(">");
    else
      safe.append(text.substr(at, one.bytes));
    if (one.valid && is_look_alike(one.code)) safe.append("<").append(code_point(one.code)).append(">");
    at += one.bytes;
  }
  return safe;
}

} // namespace support
