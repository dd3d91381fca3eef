// SPDX-License-Identifier: MIT
/// Printing for lessons: sentences broken into lines that fit a projector.
#pragma once

#include <cstddef>
#include <iostream>
#include <string_view>

namespace lesson {

/// Prints a text with no line longer than 96 characters, broken at blanks.
inline void say(std::string_view text) {
  constexpr std::size_t longest = 96;
  while (!text.empty()) {
    auto const end = text.find('\n') == text.npos ? text.size() : text.find('\n');
    auto line = text.substr(0, end);
    text.remove_prefix(end < text.size() ? end + 1 : end);
    while (line.size() > longest && line.rfind(' ', longest) != line.npos) {
      auto const blank = line.rfind(' ', longest);
      std::cout << line.substr(0, blank) << "\n  ";
      line.remove_prefix(blank + 1);
    }
    std::cout << line << '\n';
  }
}

} // namespace lesson
