// SPDX-License-Identifier: MIT
/// A part of a text, kept as a place and not as a copy: a reader says with it what it read and what it left unread, and
/// the caller, who has the text, can show or mark it.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// Some bytes of a text, from `from` up to `to`.
struct TextSpan {
  std::size_t from{}; ///< the first byte
  std::size_t to{};   ///< the byte after the last

  /// Its length in bytes.
  [[nodiscard]] constexpr std::size_t size() const noexcept { return to - from; }
  /// True where there are no elements.
  [[nodiscard]] constexpr bool empty() const noexcept { return from == to; }
  /// The part of `text` it names. pre: it was made from a text at least as long.
  [[nodiscard]] constexpr std::string_view of(std::string_view text) const { return text.substr(from, to - from); }

  friend constexpr bool operator==(TextSpan, TextSpan) = default;
};

} // namespace v0
} // namespace bifolium
