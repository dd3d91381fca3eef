// SPDX-License-Identifier: MIT
/// One error: which problem, and where. An error about a text has a line and a column. An error about a value that was
/// passed in a struct or as an argument has the name of the field instead, because there is no text. An error prints as
/// one line: `line 2, column 14: no piece has the name 'off'`.
#pragma once

#include <bifolium/core/config.hpp>
#include <bifolium/core/detail/error_words.hpp>
#include <bifolium/core/problem.hpp>

#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A problem and its place. Line and column begin with 1, and the column counts characters (code points); line 0 means
/// that there is no text. `message(error)` and `<<` give its sentence with the place before it.
struct Error {
  Problem problem{};                ///< what is wrong
  std::uint32_t line{1}, column{1}; ///< the place in the text, each from 1; both 0 where there is no text
  std::int64_t limit{};             ///< the number or bound that belongs to the problem, if it has one
  /// the beginning of the text that was found, or the name of the field where there is no text; a zero byte ends it
  char found[24]{};

  /// True where line and column are a place in a text; false where `found` is the name of a field.
  [[nodiscard]] constexpr bool is_in_text() const noexcept { return line != 0; }
  /// What `found` holds: the text that was found, or the name of the field.
  [[nodiscard]] constexpr std::string_view found_text() const noexcept BIFOLIUM_LIFETIMEBOUND {
    std::size_t size = 0;
    while (size < sizeof found && found[size] != '\0') ++size;
    return {found, size};
  }

  friend constexpr bool operator==(Error const&, Error const&) = default;
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Error const& error) {
    detail::ErrorWords words;
    words.add_place(error.problem, error.line, error.column, error.found_text());
    words.add_sentence(error.problem, error.limit, error.found_text(), error.is_in_text());
    return out << words.view();
  }
};

/// An `Error` that quotes `size` bytes of text, cut to what fits at a whole character.
constexpr Error error_at(Problem problem, std::uint32_t line, std::uint32_t column, char const* found = "",
                         std::size_t size = 0, std::int64_t limit = 0) {
  Error error{problem, line, column, limit, {}};
  auto const most = sizeof error.found - 1;
  auto keep = size <= most ? size : most;
  if (keep < size)
    while (keep > 0 && (static_cast<unsigned char>(found[keep]) & 0xC0U) == 0x80U) --keep;
  for (std::size_t i = 0; i < keep; ++i) error.found[i] = found[i];
  return error;
}

/// An `Error` about the value of a field or an argument, where there is no text. `field` is its name as the caller writes
/// it, up to 23 bytes: `copies`, `price_of_ream`.
constexpr Error error_in_field(Problem problem, std::string_view field, std::int64_t limit = 0) {
  return error_at(problem, 0, 0, field.data(), field.size(), limit);
}

} // namespace v0
} // namespace bifolium
