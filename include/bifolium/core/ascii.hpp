// SPDX-License-Identifier: MIT
/// Digits and the 26 letters without accents, which take one byte in UTF-8. The functions of <cctype> ask the locale;
/// these do not.
#pragma once

#include <bifolium/core/config.hpp>

namespace bifolium {
inline namespace v0 {

/// True for 0 to 9.
constexpr bool is_digit(char c) noexcept { return c >= '0' && c <= '9'; }
/// True for A to Z.
constexpr bool is_capital(char c) noexcept { return c >= 'A' && c <= 'Z'; }
/// True for a to z.
constexpr bool is_small(char c) noexcept { return c >= 'a' && c <= 'z'; }
/// True for A to Z and a to z.
constexpr bool is_latin_letter(char c) noexcept { return is_capital(c) || is_small(c); }
/// The small letter of a capital; any other byte unchanged.
constexpr char small_letter(char c) noexcept { return is_capital(c) ? static_cast<char>(c - 'A' + 'a') : c; }
/// The capital of a small letter; any other byte unchanged.
constexpr char capital_letter(char c) noexcept { return is_small(c) ? static_cast<char>(c - 'a' + 'A') : c; }
/// The rank of a letter in the alphabet of 26, capital or small: 1 for A to 26 for Z; 0 for any other byte.
constexpr int letter_rank(char c) noexcept { return is_latin_letter(c) ? small_letter(c) - 'a' + 1 : 0; }

} // namespace v0
} // namespace bifolium
