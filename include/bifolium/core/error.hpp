// SPDX-License-Identifier: MIT
/// One error: the problem and its place. An error in a text has a line and a column. An error in a value that was
/// passed in a struct or as an argument has the name of the field instead, because there is no text. An error prints as
/// one line of UTF-8: `line 2, column 14: no piece has the name 'off'`. In it a tab or a line break of the text is a
/// blank, and a byte that belongs to no character, or a control character, is U+FFFD.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/config.hpp>
#include <bifolium/core/detail/error_words.hpp>
#include <bifolium/core/problem.hpp>
#include <bifolium/core/text_place.hpp>
#include <bifolium/core/text_span.hpp>

#include <cstddef>
#include <cstdint>
#include <iosfwd>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A problem and its place. `message(error)` and `<<` give the sentence of the problem with the place before it. An error is
/// compared with a problem: `result.error() == Problem::not_utf8`.
struct Error {
  Problem problem{}; ///< the problem
  /// the line and the column in the text; no value if the error is of a field or an argument
  std::optional<TextPlace> place{};
  /// the number or bound that the sentence of the problem names; 0 in the sentences that name none
  std::int64_t limit{};
  /// the beginning of the text that was found, byte for byte, ended by a zero byte; if there is no text, the name of
  /// the field
  char found[24]{};

  /// Returns true if the error has a line and a column in a text, and false if `found` is the name of a field.
  [[nodiscard]] constexpr bool is_in_text() const noexcept { return place.has_value(); }
  /// Returns the content of `found`: the text that was found, or the name of the field. It may have bytes that are not
  /// UTF-8, if the text has; `message` writes none.
  [[nodiscard]] constexpr std::string_view found_text() const& noexcept BIFOLIUM_LIFETIMEBOUND {
    std::size_t size = 0;
    while (size < sizeof found && found[size] != '\0') ++size;
    return {found, size};
  }
  std::string_view found_text() const&& = delete; // it looks at the error, which goes: keep it in a variable

  friend constexpr bool operator==(Error const&, Error const&) = default;
  /// Returns true if the error is of this problem, wherever its place.
  friend constexpr bool operator==(Error const& error, Problem asked) noexcept { return error.problem == asked; }
  template <class Traits>
  friend std::basic_ostream<char, Traits>& operator<<(std::basic_ostream<char, Traits>& out, Error const& error) {
    detail::ErrorWords words;
    words.add_place(error.problem, error.place, error.found_text());
    words.add_sentence(error.problem, error.limit, error.found_text(), error.is_in_text());
    return out << words.view();
  }
};

/// Makes an error at a place of a text that quotes `found`. The quotation is cut at a whole character if it is too
/// long. If there is no place, `found` is the name of a field.
constexpr Error error_at(Problem problem, std::optional<TextPlace> place, std::string_view found = {},
                         std::int64_t limit = 0) {
  Error error{problem, place, limit, {}};
  auto const most = sizeof error.found - 1;
  auto keep = found.size() <= most ? found.size() : most;
  if (keep < found.size())
    while (keep > 0 && continues_character(found[keep])) --keep;
  std::char_traits<char>::copy(error.found, found.data(), keep);
  return error;
}

/// Makes an `Error` about the value of a field or an argument, when there is no text. `field` is the name as the caller
/// writes it, up to 23 bytes, for example `copies` or `price_of_ream`.
constexpr Error error_in_field(Problem problem, std::string_view field, std::int64_t limit = 0) {
  return error_at(problem, std::nullopt, field, limit);
}

/// Returns an error of a part of a text with its line and column in the whole text, where the part begins at `start`.
/// An error in a field stays as it is.
constexpr Error error_after(TextPlace start, Error error) noexcept {
  if (error.place) error.place = place_after(start, *error.place);
  return error;
}

/// Makes an error for a part of a text, with its line and column, that quotes this part. Precondition: where.from <=
/// where.to <= text.size().
constexpr Error error_in(std::string_view text, TextSpan where, Problem problem, std::int64_t limit = 0) {
  return error_at(problem, place_in(text, where.from), where.of(text), limit);
}

} // namespace v0
} // namespace bifolium

template <> struct std::hash<bifolium::Error> {
  std::size_t operator()(bifolium::Error const& error) const noexcept {
    auto all = static_cast<std::size_t>(error.problem);
    if (error.place) all = (all * 31U + error.place->line) * 31U + error.place->column;
    return all * 31U + std::hash<std::string_view>{}(error.found_text());
  }
};
