// SPDX-License-Identifier: MIT
/// Roman numerals as printers wrote them, beyond the usual order of the letters: XIIX for 18, XXC for 80, IC for 99, IIIIXX
/// for 80. leaf/roman.hpp reads and writes the usual ones.
#pragma once

#include <bifolium/core/detail/numeral_part.hpp>

namespace bifolium {
inline namespace v0 {

/// A numeral at the beginning of a text.
struct PrintedNumeral {
  int value{};         ///< the value; 0 if there is no numeral, or letters of numerals in an order that nobody can read
  std::size_t bytes{}; ///< number of bytes of the letters of numerals
  friend constexpr bool operator==(PrintedNumeral const&, PrintedNumeral const&) = default;
};

/// Returns the numeral that all letters of numerals at the beginning of `text` make, up to 24 of them.
/// Example: `printed_numeral("XIIX").value == 18`.
[[nodiscard]] constexpr PrintedNumeral printed_numeral(std::string_view text) noexcept {
  char typed = '\0';
  auto const part = detail::numeral_part(text, 0, typed);
  return {part.value, part.bytes};
}

} // namespace v0
} // namespace bifolium
