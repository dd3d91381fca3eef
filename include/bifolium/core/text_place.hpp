// SPDX-License-Identifier: MIT
/// Lines and columns. Readers work with positions in bytes; a person who reads an error needs the line and the column.
/// All readers count them here, so that a list on several lines gets the right line from each. core/error.hpp has the
/// errors that name such a place.
#pragma once

#include <bifolium/core/utf8.hpp>

#include <compare>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A place in a text as a person counts it.
struct TextPlace {
  std::uint32_t line{1};   ///< the line, from 1
  std::uint32_t column{1}; ///< the column in that line, in characters from 1
  friend constexpr auto operator<=>(TextPlace, TextPlace) = default;
};

/// Counts the lines and columns of one text. Counting starts at the last place, so that places in the order of the text
/// need only one pass through it.
class PlaceCounter {
  std::size_t at_{0};
  TextPlace place_{};

public:
  /// Returns the place of byte `at` of `text`, or the place after the text if it has fewer bytes. Precondition: `text`
  /// is the same in each call.
  constexpr TextPlace place(std::string_view text, std::size_t at) noexcept {
    if (at < at_) at_ = 0, place_ = {};
    while (at_ < at && at_ < text.size()) {
      auto const byte = static_cast<unsigned char>(text[at_]);
      ++place_.column;
      if (byte == '\n') ++place_.line, place_.column = 1;
      at_ += byte < 0x80 ? 1U : decode(text, at_).bytes;
    }
    return place_;
  }
};

/// Returns the line and the column of byte `at` of a text, or the place after the text if it has fewer bytes.
/// Example: `place_in("A8\nB8", 3) == TextPlace{2, 1}`.
constexpr TextPlace place_in(std::string_view text, std::size_t at) noexcept { return PlaceCounter{}.place(text, at); }

/// Returns the position in bytes of a line and a column of a text, or its size if it has no such place. `here` is the place
/// at which the text begins, if it is the rest of a longer one.
constexpr std::size_t position_of(std::string_view text, TextPlace place, TextPlace here = {}) noexcept {
  std::size_t at = 0;
  while (at < text.size() && here != place) {
    if (text[at] == '\n')
      ++here.line, here.column = 1, ++at;
    else
      ++here.column, at += decode(text, at).bytes;
  }
  return at;
}

/// Returns the place in a whole text of a place in a part of it, where the part begins at `start`.
constexpr TextPlace place_after(TextPlace start, TextPlace place) noexcept {
  if (place.line == 1) return {start.line, start.column + place.column - 1};
  return {start.line + place.line - 1, place.column};
}

} // namespace v0
} // namespace bifolium
