// SPDX-License-Identifier: MIT
/// The error of a text that is not UTF-8. A byte that is no character is nearly always the reason why the text cannot be read,
/// and what a reader says of it - no leaf count, no unit - leads away from it. So each reader whose text is refused looks
/// for such a byte first. A text that can be read is not looked through: what was not read is told as it is.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/text_place.hpp>

namespace bifolium {
inline namespace v0 {

/// Returns the error not_utf8 of the first byte of a text that is no character, or `error` if there is none. The error of
/// a limit stays as it is, since a text that is too long is not looked through.
constexpr Error error_of_text(std::string_view text, Error const& error) noexcept {
  bool const of_limit = error.problem >= Problem::text_too_long && error.problem <= Problem::too_many_leaves_drawn;
  if (of_limit || !error.is_in_text()) return error;
  for (std::size_t at = 0; at < text.size();) {
    auto const c = decode(text, at);
    if (c.malformed) return error_in(text, {at, at}, Problem::not_utf8);
    at += c.bytes;
  }
  return error;
}
/// Returns what `read` makes of a text. If it refuses a text that is not UTF-8, the error is not_utf8, with its place.
template <class Read> [[nodiscard]] constexpr auto read_utf8(std::string_view text, Read read) -> decltype(read(text)) {
  auto result = read(text);
  if (!result) result = error_of_text(text, result.error());
  return result;
}

} // namespace v0
} // namespace bifolium
