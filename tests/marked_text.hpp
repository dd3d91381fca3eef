// SPDX-License-Identifier: MIT
/// A text for tests of errors, in which `@` marks the place of what is wrong. The mark is not part of the text.
#pragma once

#include <cstdint>
#include <doctest/doctest.h>
#include <string>
#include <string_view>

/// The text without its mark, and the place of the mark: the line, and the column in characters, both from 1.
struct MarkedText {
  std::string text;
  std::uint32_t line{1}, column{1};

  explicit MarkedText(std::string_view marked) : text{marked} {
    auto const mark = text.find('@');
    REQUIRE_MESSAGE(mark != text.npos, text);
    text.erase(mark, 1);
    for (std::size_t i = 0; i < mark; ++i) {
      if (text[i] == '\n')
        ++line, column = 1;
      else if ((static_cast<unsigned char>(text[i]) & 0xC0U) != 0x80U)
        ++column;
    }
  }
};
