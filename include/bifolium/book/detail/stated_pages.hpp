// SPDX-License-Identifier: MIT
/// The pages of a description: an extent, or numbers to which nobody wrote a unit, which are pages.
#pragma once

#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_pagination.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Places in what is read are those of the text.
inline Expected<Extent> read_stated_pages(std::string_view text) {
  auto extent = read_extent(text);
  if (extent || extent.error().problem != Problem::unexpected_end) return extent;
  bool const number = text.find_first_not_of("0123456789 .") == text.npos;
  if (!number && text.find_first_of("[(,-+") == text.npos) return extent; // 17 x
  auto const end = trimmed(text, {0, text.size()}, " .").to;
  auto with_unit = read_extent(std::string{text.substr(0, end)} + " p.");
  if (!with_unit) return extent;
  with_unit->pagination.warn(TextCursor{text}.error_from(0, Problem::pages_taken));
  return with_unit;
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
    auto const here = cursor.at();
    if (take_page_unit(cursor) == nullptr) continue;
    cursor.take_blanks();
    bool const plates = cursor.starts_with("of pl") || text.substr(here).starts_with("pl");
    if (!plates) return true;
  }
  return false;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
