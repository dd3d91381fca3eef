// SPDX-License-Identifier: MIT
/// A part of a text, stored as two positions and not as a copy. A reader uses it to say which part it read and which
/// part it left unread. The caller, who has the text, can show or mark that part.
#pragma once

#include <bifolium/core/config.hpp>
#include <bifolium/core/utf8.hpp>

#include <cstddef>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The bytes of a text from `from` up to, but not including, `to`.
struct TextSpan {
  std::size_t from{}; ///< the position of the first byte, from 0
  std::size_t to{};   ///< the position after the last byte

  /// Returns the length in bytes.
  [[nodiscard]] constexpr std::size_t size() const noexcept { return to - from; }
  /// Returns true if the part has no bytes.
  [[nodiscard]] constexpr bool empty() const noexcept { return from == to; }
  /// Returns this part of `text`. Precondition: `text` is at least as long as the text that the span was made from.
  [[nodiscard]] constexpr std::string_view of(std::string_view text) const { return text.substr(from, to - from); }

  friend constexpr bool operator==(TextSpan, TextSpan) = default;
};

/// Returns a part of a text without those characters of ASCII at its two ends that are among `ends`; a blank stands for
/// blanks of any kind and line breaks. A part that has no others becomes empty.
/// Example: `trimmed(" A8, ", {0, 5}, " ,") == TextSpan{1, 3}`.
constexpr TextSpan trimmed(std::string_view text, TextSpan part, std::string_view ends) noexcept {
  bool const blanks = ends.find(' ') != ends.npos;
  auto const is_end = [&](char c) { return c != ' ' && ends.find(c) != ends.npos; };
  while (!part.empty()) {
    std::size_t const bytes = is_end(text[part.to - 1]) ? 1 : blanks ? blank_before(text, part.to) : 0;
    if (bytes == 0 || bytes > part.to - part.from) break;
    part.to -= bytes;
  }
  while (!part.empty()) {
    std::size_t const bytes = is_end(text[part.from]) ? 1 : blanks ? blank_at(text, part.from) : 0;
    if (bytes == 0 || bytes > part.to - part.from) break;
    part.from += bytes;
  }
  return part;
}
/// Returns a text without those characters at its two ends.
constexpr std::string_view trimmed(std::string_view text, std::string_view ends) noexcept {
  return trimmed(text, {0, text.size()}, ends).of(text);
}

} // namespace v0
} // namespace bifolium
