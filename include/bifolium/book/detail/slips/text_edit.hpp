// SPDX-License-Identifier: MIT
/// Edits of a text: a number of bytes is replaced by other text. Several edits of one text do not overlap.
#pragma once

#include <bifolium/core/insertion_sort.hpp>
#include <bifolium/core/text_span.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Replaces the bytes of a span by `put`.
struct TextEdit {
  TextSpan span{};
  std::string put{};
};

/// Returns the text after the edits, or an empty text if two of them overlap.
inline std::string edited(std::string_view text, std::vector<TextEdit> edits) {
  // from the last to the first, so that positions stay valid
  insertion_sort(edits, [](TextEdit const& a, TextEdit const& b) {
    return a.span.from != b.span.from ? a.span.from > b.span.from : a.span.to > b.span.to;
  });
  std::string result{text};
  auto end = text.size();
  for (auto const& edit : edits) {
    if (edit.span.to > end || edit.span.from > edit.span.to) return {};
    result.replace(edit.span.from, edit.span.to - edit.span.from, edit.put);
    end = edit.span.from;
  }
  return result;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
