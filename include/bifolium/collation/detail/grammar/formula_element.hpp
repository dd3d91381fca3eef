// SPDX-License-Identifier: MIT
/// The element `formula` of TEI, in which a manuscript or book description has its collation formula. It is often copied
/// with its tags.
#pragma once

#include <bifolium/core/text_span.hpp>
#include <bifolium/leaf/token_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the place of the contents of the element, if the text is one, and otherwise of the whole text.
constexpr TextSpan formula_element(std::string_view text) noexcept {
  TextSpan const all{0, text.size()};
  if (!text.empty() && (is_latin_letter(text[0]) || is_digit(text[0]))) return all; // most begin with a signature
  auto const first = Lexer{text}.next();
  auto const open = first.from;
  if (!first.is(TokenKind::other) || !text.substr(open).starts_with("<formula")) return all;
  auto const end = text.rfind("</formula>"), from = text.find('>', open) + 1;
  if (end == std::string_view::npos || !TokenCursor{text, end + 10}.ended() || from > end) return all;
  return {from, end};
}

} // namespace detail
} // namespace v0
} // namespace bifolium
