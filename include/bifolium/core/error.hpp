// SPDX-License-Identifier: MIT
/// One error: the problem and its place. An error in a text has a line and a column. An error in a value that was
/// passed in a struct or as an argument has the name of the field instead, because there is no text. An error prints as
/// one line of UTF-8: `line 2, column 14: no piece has the name 'off'`. In it a tab or a line break of the text is a blank,
/// and a byte that is no character, or a control character, is U+FFFD.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/config.hpp>
#include <bifolium/core/detail/error_words.hpp>
#include <bifolium/core/problem.hpp>

#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A problem and its place. Lines and columns count from 1, and a column counts characters (code points). Line 0 means
/// that there is no text. `message(error)` and `<<` give the sentence of the problem with the place before it. An error is
/// compared with a problem: `result.error() == Problem::not_utf8`.
struct Error {
  Problem problem{};                ///< the problem
  std::uint32_t line{1}, column{1}; ///< line and column in the text, each from 1; both 0 if there is no text
  std::int64_t limit{};             ///< the number or bound that belongs to the problem, if it has one
  /// the beginning of the text that was found, byte for byte, ended by a zero byte; if there is no text, the name of the
  /// field
  char found[24]{};

  /// Returns true if the error has a line and a column in a text, and false if `found` is the name of a field.
  [[nodiscard]] constexpr bool is_in_text() const noexcept { return line != 0; }
  /// Returns the content of `found`: the text that was found, or the name of the field. It may have bytes that are not
  /// UTF-8, if the text has; `message` writes none.
  [[nodiscard]] constexpr std::string_view found_text() const noexcept BIFOLIUM_LIFETIMEBOUND {
    std::size_t size = 0;
    while (size < sizeof found && found[size] != '\0') ++size;
    return {found, size};
  }

  friend constexpr bool operator==(Error const&, Error const&) = default;
  /// Returns true if the error is of this problem, wherever its place.
  friend constexpr bool operator==(Error const& error, Problem asked) noexcept { return error.problem == asked; }
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Error const& error) {
    detail::ErrorWords words;
    words.add_place(error.problem, error.line, error.column, error.found_text());
    words.add_sentence(error.problem, error.limit, error.found_text(), error.is_in_text());
    return out << words.view();
  }
};

/// Makes an `Error` that quotes `size` bytes of text. The quotation is cut at a whole character if it is too long.
constexpr Error error_at(Problem problem, std::uint32_t line, std::uint32_t column, char const* found = "",
                         std::size_t size = 0, std::int64_t limit = 0) {
  Error error{problem, line, column, limit, {}};
  auto const most = sizeof error.found - 1;
  auto keep = size <= most ? size : most;
  if (keep < size)
    while (keep > 0 && continues_character(found[keep])) --keep;
  std::char_traits<char>::copy(error.found, found, keep);
  return error;
}

/// Makes an `Error` about the value of a field or an argument, when there is no text. `field` is the name as the caller
/// writes it, up to 23 bytes, for example `copies` or `price_of_ream`.
constexpr Error error_in_field(Problem problem, std::string_view field, std::int64_t limit = 0) {
  return error_at(problem, 0, 0, field.data(), field.size(), limit);
}

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::Error> {
  std::size_t operator()(bifolium::Error const& error) const noexcept {
    auto const place = static_cast<std::size_t>(error.problem) * 31U + error.line;
    return (place * 31U + error.column) * 31U + std::hash<std::string_view>{}(error.found_text());
  }
};
