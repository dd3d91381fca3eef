// SPDX-License-Identifier: MIT
/// A text as somebody else would type it.
#pragma once

#include <string>
#include <string_view>

/// The text with `to` in every place of `from`.
inline std::string with(std::string text, std::string_view from, std::string_view to) {
  for (std::size_t at = 0; (at = text.find(from, at)) != text.npos; at += to.size()) text.replace(at, from.size(), to);
  return text;
}
