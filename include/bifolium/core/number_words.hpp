// SPDX-License-Identifier: MIT
/// Numbers that are written as words, as the trade uses them for leaves, gatherings and formats: three leaves, in
/// eights, twelves. All readers ask this table, so all of them know the same words.
#pragma once

#include <bifolium/core/ascii.hpp>

#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

namespace detail {
using namespace std::string_view_literals;

struct NumberWord {
  std::string_view word; ///< with the letters that its plural has before the s: sixe and twentie too
  std::uint8_t number;
};
inline constexpr NumberWord number_words[]{
    {"one"sv, 1},          {"two"sv, 2},          {"three"sv, 3},        {"four"sv, 4},         {"five"sv, 5},
    {"six"sv, 6},          {"sixe"sv, 6},         {"seven"sv, 7},        {"eight"sv, 8},        {"nine"sv, 9},
    {"ten"sv, 10},         {"eleven"sv, 11},      {"twelve"sv, 12},      {"thirteen"sv, 13},    {"fourteen"sv, 14},
    {"fifteen"sv, 15},     {"sixteen"sv, 16},     {"seventeen"sv, 17},   {"eighteen"sv, 18},    {"nineteen"sv, 19},
    {"twenty"sv, 20},      {"twentie"sv, 20},     {"twenty-four"sv, 24}, {"thirty-two"sv, 32},  {"thirty-six"sv, 36},
    {"thirty-sixe"sv, 36}, {"forty-eight"sv, 48}, {"sixty-four"sv, 64},  {"seventy-two"sv, 72}, {"ninety-six"sv, 96},
};
} // namespace detail

/// Returns the number that a word means, in capitals or small letters, or no value if it means none: 8 for "eight".
[[nodiscard]] constexpr std::optional<int> number_of_word(std::string_view word) noexcept {
  auto const initial = word.size() < 3 ? '\0' : small_letter(word[0]);
  switch (initial) {
  case 'e':
  case 'f':
  case 'n':
  case 'o':
  case 's':
  case 't':
    break;
  default:
    return std::nullopt; // most words begin otherwise
  }
  for (auto const& row : detail::number_words)
    if (row.word[0] == initial && equal_in_any_case(word, row.word)) return int{row.number};
  return std::nullopt;
}
/// Returns the number that a plural means, or no value if it means none: 8 for "eights", 6 for "sixes".
/// Example: `number_of_plural("twelves") == 12`.
[[nodiscard]] constexpr std::optional<int> number_of_plural(std::string_view word) noexcept {
  if (word.empty() || small_letter(word.back()) != 's') return std::nullopt;
  return number_of_word(word.substr(0, word.size() - 1));
}

} // namespace v0
} // namespace bifolium
