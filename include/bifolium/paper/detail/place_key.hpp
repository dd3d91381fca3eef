// SPDX-License-Identifier: MIT
/// Names of places were spelled freely and are catalogued as printed, so they are compared by a key: small letters
/// without accents, v as u and j as i, w as uu, æ and œ as two letters, without points, blanks or hyphens. `Lvgd.
/// Batau.` and `Lugd. Batav.` have the same key.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/utf8.hpp>

#include <string>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns a character without its accent, for the letters of western and central Europe: two letters for w, æ, œ and
/// ß, and an empty text if the character is not a letter.
constexpr std::string_view plain_letters(char32_t c) noexcept {
  constexpr char const* ascii = "abcdefghiiklmnopqrstuuwxyz0123456789"; // j as i, v as u
  if (c < 0x80) {
    auto const letter = small_letter(static_cast<char>(c));
    if (letter == 'w') return "uu"; // VVittebergae
    if (is_small(letter)) return {ascii + (letter - 'a'), 1};
    if (is_digit(letter)) return {ascii + (letter - '0' + 26), 1};
    return {};
  }
  if (c == 0xC6 || c == 0xE6) return "ae";
  if (c == 0x152 || c == 0x153) return "oe";
  if (c == 0xDF) return "ss";
  if (c == 0x132 || c == 0x133) return "ii";
  // U+00C0 to U+00FF and U+0100 to U+017F, one letter each; `.` if there is none
  constexpr char const* latin1 = "aaaaaa.ceeeeiiiidnooooo.ouuuuyt.aaaaaa.ceeeeiiiidnooooo.ouuuuyty";
  constexpr char const* extended = "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiii..iikkklllllllllln"
                                   "nnnnnnnnoooooo..rrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs";
  if (c < 0xC0 || c >= 0x180) return {};
  auto const* const letter = c < 0x100 ? latin1 + (c - 0xC0) : extended + (c - 0x100);
  return *letter == '.' ? std::string_view{} : std::string_view{letter, 1};
}
/// Adds the key of `text` to `key`.
inline void append_place_key(std::string& key, std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    auto const c = decode(text, at);
    key += plain_letters(c.value);
    at += c.bytes;
  }
}

} // namespace detail
} // namespace v0
} // namespace bifolium
