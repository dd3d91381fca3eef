// SPDX-License-Identifier: MIT
/// Reads the format as a record or a dealer states it: `8vo`, `gr. in-8°`, `demy 8vo`, `4to in 8s`, `8° (4s)`, `4to and
/// 8vo`, `8°?`. Words about the size of the paper come before the format, the leaves of the gatherings after it, and a
/// book may have two formats. fold/read_format.hpp reads a format alone.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/text_cursor.hpp>
#include <bifolium/fold/read_format.hpp>
#include <bifolium/leaf/gathering.hpp>
#include <bifolium/leaf/leaf_words.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

/// The content of a statement of format.
struct FormatStatement {
  std::vector<Format> formats{};      ///< one format, or two if the book has sheets of both
  std::string paper{};                ///< words before the format about the paper or the size: demy, royal, gr., small
  std::optional<int> gatherings_of{}; ///< leaves of the gatherings: 8 in `4to in 8s`
  bool probable{};                    ///< true if there is a question mark
  std::vector<TextSpan> unread{};     ///< text that does not belong to the format
  friend bool operator==(FormatStatement const& a, FormatStatement const& b) {
    return a.formats == b.formats && a.paper == b.paper && a.gatherings_of == b.gatherings_of &&
           a.probable == b.probable;
  }
};

namespace detail {

/// Reads `in 8s`, `in eights`, `(4s)` or `in half-sheets` after a format. Returns no value if the gatherings are not named.
inline std::optional<int> take_gatherings(TextCursor& cursor, Format format) {
  auto const here = cursor.at();
  cursor.take_blanks();
  cursor.take(',');
  cursor.take_blanks();
  bool const bracket = cursor.take('(');
  cursor.take_word("gathered");
  cursor.take_blanks();
  bool const in = cursor.take_word("in");
  cursor.take_blanks();
  std::optional<int> leaves;
  if (auto const number = cursor.take_number(most_leaves_in_gathering))
    leaves = cursor.take_word("s") || cursor.take("'s") || cursor.take("’s") ? std::optional{static_cast<int>(*number)}
                                                                             : std::nullopt;
  else if (auto const sheet = format.leaves_to_sheet(); sheet && *sheet > 2 && take_half_sheet(cursor))
    leaves = *sheet / 2;
  else
    leaves = number_of_plural(cursor.take_letters());
  if (leaves && *leaves > 0 && (in || bracket) && (!bracket || cursor.take(')'))) return leaves;
  return cursor.go_to(here), std::nullopt;
}

} // namespace detail

/// Reads a statement of format. Words before the format are stored as words about the paper. Error: unknown_format if
/// no format is named.
[[nodiscard]] inline Expected<FormatStatement> read_format_statement(std::string_view text) {
  FormatStatement read;
  TextCursor cursor{text};
  cursor.take_blanks();
  auto const begin = cursor.at();
  while (true) {
    cursor.take_blanks();
    if (auto const found = format_at_start(cursor.rest()); found && found->bytes > 0) {
      read.formats.push_back(found->format);
      cursor.skip(found->bytes);
    } else if (read.formats.empty()) {
      auto const from = cursor.at();
      while (!cursor.at_end() && !is_space(cursor.character().value) && cursor.peek() != '-') cursor.skip(1);
      if (cursor.at_end()) return cursor.error_from(begin, Problem::unknown_format);
      read.paper.append(read.paper.empty() ? "" : " ").append(text.substr(from, cursor.at() - from));
      static_cast<void>(cursor.take('-')); // Gr.-8°
      continue;
    }
    read.probable = cursor.take('?') || read.probable;
    if (!read.gatherings_of) read.gatherings_of = detail::take_gatherings(cursor, read.formats.back());
    cursor.take_blanks();
    if (read.formats.size() < 2 && (cursor.take_word("and") || cursor.take_word("or") || cursor.take('&'))) continue;
    break;
  }
  cursor.take_blanks();
  while (cursor.take('.') || cursor.take(':') || cursor.take(')')) cursor.take_blanks();
  if (!cursor.at_end()) read.unread.push_back({cursor.at(), text.size()});
  return read;
}

} // namespace v0
} // namespace bifolium
