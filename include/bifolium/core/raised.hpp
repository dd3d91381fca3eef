// SPDX-License-Identifier: MIT
/// Writes raised digits. Formulas write leaf counts and series of signatures with them (A⁸, ¹², ²A).
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/core/utf8.hpp>

namespace bifolium {
inline namespace v0 {

/// Writes a whole number in raised digits. Precondition: 0 to 999999999.
[[nodiscard]] constexpr ShortText<27> raised(int number) {
  if (number < 0 || number > 999'999'999) broken("a number in raised digits must be from 0 to 999999999");
  int place = 1;
  while (number / place > 9) place *= 10;
  ShortText<27> text;
  for (; place > 0; place /= 10) {
    char bytes[4]{};
    text.append(bytes, encode(superscript(number / place % 10), bytes));
  }
  return text;
}

} // namespace v0
} // namespace bifolium
