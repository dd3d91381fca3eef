// SPDX-License-Identifier: MIT
/// A text as somebody else would type it.
#pragma once

#include <bifolium/core/utf8.hpp>

#include <string>
#include <string_view>

/// The text with `to` in every place of `from`.
inline std::string with(std::string text, std::string_view from, std::string_view to) {
  for (std::size_t at = 0; (at = text.find(from, at)) != text.npos; at += to.size()) text.replace(at, from.size(), to);
  return text;
}

/// The text with character references of HTML: for all characters that `which(character)` names, except the sign & and
/// angle brackets, in the way that `write(number)` says.
template <class Which, class Write> std::string with_references(std::string_view text, Which which, Write write) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    auto const c = bifolium::decode(text, i);
    bool const escape = c.value == '&' || c.value == '<' || c.value == '>';
    if (!escape && !c.malformed && which(c.value))
      out.append(write(static_cast<std::uint32_t>(c.value)));
    else
      out.append(text.substr(i, c.bytes));
    i += c.bytes;
  }
  return out;
}
