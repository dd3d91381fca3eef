// SPDX-License-Identifier: MIT
/// Writes an error as a std::string. What it quotes of a text is shown so that the message is one line of UTF-8, which
/// a table, a log or JSON can hold, whatever bytes the text has. These functions have a header of their own, so that a
/// program that only counts errors need not include <string>.
#pragma once

#include <bifolium/core/error.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

/// Returns the sentence of an error without its place, with the text that was found filled in: `no piece has the name
/// 'off'`.
inline std::string sentence_of(Error const& error) {
  detail::ErrorWords words;
  words.add_sentence(error.problem, error.limit, error.found_text(), error.is_in_text());
  return std::string{words.view()};
}

/// Returns the sentence of an error with its place before it: `line 2, column 14: no piece has the name 'off'`. If
/// there is no text, the message names the field: `'copies' must not be less than zero`.
inline std::string message(Error const& error) {
  detail::ErrorWords words;
  words.add_place(error.problem, error.place, error.found_text());
  words.add_sentence(error.problem, error.limit, error.found_text(), error.is_in_text());
  return std::string{words.view()};
}

/// Returns a text that somebody else wrote as messages quote it, in one line of valid UTF-8: a tab or a line break
/// becomes a blank, another control character and a byte that belongs to no character become U+FFFD.
inline std::string one_line(std::string_view text) {
  std::string shown;
  for (std::size_t at = 0; at < text.size(); at += decode(text, at).bytes) shown += shown_character(text, at);
  return shown;
}

} // namespace v0
} // namespace bifolium
