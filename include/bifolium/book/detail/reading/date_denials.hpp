// SPDX-License-Identifier: MIT
/// Words beside a date that deny it or leave it open: falsely dated 1725, 1725 or thereabouts. The reader of dates skips words that it
/// does not know, so without these a date that is denied would count as one that is stated. Common practice, no source.
#pragma once

#include <bifolium/record/read_format_statement.hpp>

#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {

inline constexpr char const* words_that_deny_date[]{
    "not", "false", "falsely", "wrongly", "incorrect", "fictitious", "spurious",    "nicht",
    "non", "or",    "oder",    "ou",      "vel",       "uncertain",  "thereabouts", "recte"};
/// Returns true for a word that says that a date is false, or that it may be another.
[[nodiscard]] constexpr bool denies_date(std::string_view word) noexcept {
  return is_word_of(words_that_deny_date, word);
}

} // namespace detail
} // namespace v0
} // namespace bifolium
