// SPDX-License-Identifier: MIT
/// Spells the parts of a signature that are not stored as text: numbers, and letters of other alphabets. `put` receives
/// the bytes, as in Signature::spell.
#pragma once

#include <cstddef>
#include <cstdint>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Spells a number in figures.
template <class Put> constexpr void spell_number(Put& put, std::uint32_t number) {
  char digits[10]{};
  std::size_t at = 10;
  do digits[--at] = static_cast<char>('0' + number % 10);
  while ((number /= 10) != 0);
  put(digits + at, 10 - at);
}
/// Spells a character of two bytes.
template <class Put> constexpr void spell_character(Put& put, unsigned code) {
  char const bytes[2]{static_cast<char>(static_cast<unsigned char>(0xC0U | (code >> 6U))),
                      static_cast<char>(static_cast<unsigned char>(0x80U | (code & 0x3FU)))};
  put(bytes, 2);
}
/// Spells a Greek letter: U+03B1 to U+03C9 without final sigma, U+0391 to U+03A9 without the gap at the same place.
template <class Put> constexpr void spell_greek(Put& put, int place, bool capital) {
  spell_character(put, (capital ? 0x391U : 0x3B1U) + static_cast<unsigned>(place) - 1U + (place >= 18 ? 1U : 0U));
}
/// Spells a number from 1 to 999 in Hebrew letters, which add up: first those for hundreds, then for tens, then for
/// units; 15 and 16 are spelled as 9 and 6, and 9 and 7. A left-to-right mark (U+200E) comes after them. Without it,
/// figures after the letters would be shown in another order where text is set from right to left.
template <class Put> constexpr void spell_hebrew(Put& put, std::uint32_t figure) {
  constexpr unsigned letters[]{0x5D0, 0x5D1, 0x5D2, 0x5D3, 0x5D4, 0x5D5, 0x5D6, 0x5D7, 0x5D8, 0x5D9, 0x5DB,
                               0x5DC, 0x5DE, 0x5E0, 0x5E1, 0x5E2, 0x5E4, 0x5E6, 0x5E7, 0x5E8, 0x5E9, 0x5EA};
  for (; figure >= 400; figure -= 400) spell_character(put, letters[21]);
  if (figure >= 100) spell_character(put, letters[17 + figure / 100]);
  figure %= 100;
  bool const no_name = figure == 15 || figure == 16; // 10 and 5 would be a name of God
  if (figure >= 10) spell_character(put, no_name ? letters[8] : letters[8 + figure / 10]);
  if (auto const units = no_name ? figure - 9 : figure % 10; units != 0) spell_character(put, letters[units - 1]);
  put("\xE2\x80\x8E", 3);
}
/// Spells a Cyrillic letter: U+0410 to U+042F and U+0430 to U+044F, without Й.
template <class Put> constexpr void spell_cyrillic(Put& put, unsigned place, bool capital) {
  spell_character(put, (capital ? 0x410U : 0x430U) + place - 1U + (place >= 10 ? 1U : 0U));
}

} // namespace detail
} // namespace v0
} // namespace bifolium
