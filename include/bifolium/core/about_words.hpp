// SPDX-License-Identifier: MIT
/// Words that say that a number is not exact: circa, about, etwa. They mean one thing before a year, before a number of
/// pages and before a height, so all readers of statements ask this table.
///
/// Rules: DCRMR 5.23 and 6.21 (approximately), the rules before it (ca.). The words of other languages: common practice,
/// no source.
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/text_cursor.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {

namespace detail {
using namespace std::string_view_literals;

/// Without their full stops. A row of several words comes before the row of its first words.
inline constexpr std::string_view about_words[]{
    "approximately"sv, "approx"sv,   "circa il"sv, "circa"sv,   "ca"sv,       "c"sv,        "about"sv,
    "around"sv,        "roughly"sv,  "some"sv,     "nearly"sv,  "almost"sv,   "vers"sv,     "environ"sv,
    "env"sv,           "presque"sv,  "um"sv,       "rund"sv,    "ungefähr"sv, "etwa"sv,     "verso il"sv,
    "hacia"sv,         "cerca de"sv, "cirka"sv,    "omkring"sv, "omtrent"sv,  "ongeveer"sv, "±"sv,
};
} // namespace detail

/// Takes a word for `about` with its full stop, in capitals or small letters, and the blanks after it. Returns true if
/// one was taken. A letter alone needs its full stop or a figure (c200), since `c` is also a Roman numeral; nothing says that
/// a number follows.
[[nodiscard]] constexpr bool take_about(TextCursor& cursor) noexcept {
  if (detail::begins_no_word(cursor.peek())) return false;
  for (auto const word : detail::about_words) {
    auto end = cursor;
    if (!end.take_in_any_case(word) || is_latin_letter(end.peek())) continue;
    if (!end.take('.') && word.size() == 1 && !end.at_digit()) continue;
    end.take_blanks();
    cursor = end;
    return true;
  }
  return false;
}

} // namespace v0
} // namespace bifolium
