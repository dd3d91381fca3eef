// SPDX-License-Identifier: MIT
/// Words in the text around a formula.
#pragma once

#include <bifolium/core/text_cursor.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns the word that begins at byte `from`, or an empty text if no Latin letter is there.
[[nodiscard]] constexpr std::string_view word_at(std::string_view text, std::size_t from) noexcept {
  return TextCursor{text, from}.take_letters();
}

} // namespace detail
} // namespace v0
} // namespace bifolium
