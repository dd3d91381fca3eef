// SPDX-License-Identifier: MIT
/// Characters of one byte: figures and the letters of the alphabet without accents, whatever the locale says.
#pragma once

namespace bifolium {
inline namespace v0 {
namespace detail {

constexpr bool is_digit(char c) noexcept { return c >= '0' && c <= '9'; }
constexpr bool is_capital(char c) noexcept { return c >= 'A' && c <= 'Z'; }
constexpr bool is_small(char c) noexcept { return c >= 'a' && c <= 'z'; }
constexpr bool is_latin_letter(char c) noexcept { return is_capital(c) || is_small(c); }
constexpr char small_letter(char c) noexcept { return is_capital(c) ? static_cast<char>(c - 'A' + 'a') : c; }

} // namespace detail
} // namespace v0
} // namespace bifolium
