// SPDX-License-Identifier: MIT
/// Figures raised above the line, as counts of leaves and series of signatures are written: ⁸, ¹², ²A.
#pragma once

#include <bifolium/core/broken.hpp>
#include <bifolium/core/short_text.hpp>
#include <bifolium/core/utf8.hpp>

namespace bifolium {
inline namespace v0 {

/// A whole number in raised figures. pre: 0 <= number, up to nine figures.
[[nodiscard]] constexpr ShortText<27> raised(int number) {
  if (number < 0 || number > 999'999'999) broken("raised figures are for whole numbers of up to nine figures");
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
