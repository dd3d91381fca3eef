// SPDX-License-Identifier: MIT
/// How far two names are from each other, so that a name with a slip can be told together with the one that was likely
/// meant.
#pragma once

#include <bifolium/core/ascii.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {

/// Returns the number of letters that must be changed, added, removed or exchanged with a neighbour to make one word
/// from the other, ignoring case and the kinds of gaps between words. Words of more than 48 bytes are compared by their
/// first 48. Example: `letters_apart("heigth", "Height") == 1`.
[[nodiscard]] constexpr int letters_apart(std::string_view a, std::string_view b) {
  constexpr std::size_t most = 48;
  a = a.substr(0, most), b = b.substr(0, most);
  auto const letter = [](char c) { return c == '_' || c == '-' ? ' ' : small_letter(c); };
  std::array<std::array<int, most + 1>, 3> rows{};
  for (std::size_t j = 0; j <= b.size(); ++j) rows[0][j] = static_cast<int>(j);
  for (std::size_t i = 1; i <= a.size(); ++i) {
    auto &here = rows[i % 3], &above = rows[(i + 2) % 3], &two_above = rows[(i + 1) % 3];
    here[0] = static_cast<int>(i);
    for (std::size_t j = 1; j <= b.size(); ++j) {
      auto best = above[j - 1] + (letter(a[i - 1]) == letter(b[j - 1]) ? 0 : 1);
      best = above[j] + 1 < best ? above[j] + 1 : best;
      best = here[j - 1] + 1 < best ? here[j - 1] + 1 : best;
      bool const exchanged =
          i > 1 && j > 1 && letter(a[i - 1]) == letter(b[j - 2]) && letter(a[i - 2]) == letter(b[j - 1]);
      if (exchanged && two_above[j - 2] + 1 < best) best = two_above[j - 2] + 1;
      here[j] = best;
    }
  }
  return rows[a.size() % 3][b.size()];
}

} // namespace v0
} // namespace bifolium
