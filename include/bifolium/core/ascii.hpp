// SPDX-License-Identifier: MIT
/// Tests and conversions for ASCII digits and the 26 Latin letters without accents, which take one byte in UTF-8. The
/// functions of <cctype> depend on the locale; these functions do not.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Returns true for 0 to 9.
constexpr bool is_digit(char c) noexcept { return c >= '0' && c <= '9'; }
/// Returns true for A to Z.
constexpr bool is_capital(char c) noexcept { return c >= 'A' && c <= 'Z'; }
/// Returns true for a to z.
constexpr bool is_small(char c) noexcept { return c >= 'a' && c <= 'z'; }
/// Returns true for A to Z and a to z.
constexpr bool is_latin_letter(char c) noexcept {
  auto const lower = static_cast<unsigned char>(c) | 0x20U; // a capital and its small letter are this bit apart
  return lower >= 'a' && lower <= 'z';
}
/// Returns the small letter that belongs to a capital. Any other byte is returned unchanged.
constexpr char small_letter(char c) noexcept { return is_capital(c) ? static_cast<char>(c - 'A' + 'a') : c; }
/// Returns the capital that belongs to a small letter. Any other byte is returned unchanged.
constexpr char capital_letter(char c) noexcept { return is_small(c) ? static_cast<char>(c - 'a' + 'A') : c; }
namespace detail {
/// Returns true if a byte begins no word, as figures, brackets and commas do not: tables of words need not be searched there.
/// The bytes of characters outside ASCII may begin one.
constexpr bool begins_no_word(char byte) noexcept {
  return !is_latin_letter(byte) && static_cast<unsigned char>(byte) < 0x80;
}
} // namespace detail
/// Returns true if two texts differ at most in capitals and small letters: `Octavo`, `octavo`.
constexpr bool equal_in_any_case(std::string_view a, std::string_view b) noexcept {
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i)
    if (small_letter(a[i]) != small_letter(b[i])) return false;
  return true;
}
/// Returns true if a text differs at most in capitals and small letters from a row of a table of words, which ends with a
/// zero byte. Most rows differ in their first letter, so their size is not asked for.
constexpr bool equal_in_any_case(std::string_view a, char const* row) noexcept {
  for (auto const c : a)
    if (small_letter(c) != small_letter(*row) || *row++ == '\0') return false;
  return *row == '\0';
}
/// Returns true for a byte that continues a character of UTF-8: a text must not be cut before it.
constexpr bool continues_character(char byte) noexcept { return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U; }
/// Returns the rank of a letter in the alphabet of 26, from 1 for A or a to 26 for Z or z. Precondition, which is not
/// checked because this is asked for each letter of a formula: it is one of them.
constexpr int rank_of_letter(char letter) noexcept { return letter & 0x1F; }
/// Returns the rank of a letter in the alphabet of 26, capital or small, from 1 for A to 26 for Z, or no value for any
/// other byte.
constexpr std::optional<int> letter_rank(char c) noexcept {
  if (!is_latin_letter(c)) return std::nullopt;
  return rank_of_letter(c);
}

} // namespace v0
} // namespace bifolium
