// SPDX-License-Identifier: MIT
/// The pages of a description: an extent, or numbers to which nobody wrote a unit, which are pages.
#pragma once

#include <bifolium/record/read_pagination.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Reads an extent, in which numbers without a unit are pages, with a doubt: a number alone, or several as extents and
/// paginations list them. Of other numbers, as in 17 x, nobody knows what they count.
inline Expected<Extent> read_stated_pages(std::string_view text, Limits const& limits) {
  TextCursor look{text};
  look.take_while([](char32_t c) { return is_space(c) || c == '.' || (c >= '0' && c <= '9'); });
  bool const number = look.at_end();
  bool const listed = text.find_first_of("[(,-+") != text.npos;
  return PaginationReader{text, true, limits, number || listed}.read();
}

/// Text that was left unread names pages: what was read is not all of them.
inline bool names_pages(std::string_view text) {
  int depth = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    depth += text[i] == '(' ? 1 : text[i] == ')' ? -1 : 0;
    if (depth > 0 || !is_digit(text[i]) || (i + 1 < text.size() && is_digit(text[i + 1]))) continue;
    TextCursor cursor{text, i + 1};
    static_cast<void>(cursor.take(']'));
    cursor.take_blanks();
    bool folded = false;
    if (take_plates(cursor, folded)) continue;
    if (take_page_unit(cursor) != nullptr) return true;
  }
  return false;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
