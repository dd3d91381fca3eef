// SPDX-License-Identifier: MIT
/// Words in the text around a formula, and the numbers that are written as words: in eights; last two leaves blank; three
/// leaves. Everything that reads a number word asks this table, so all of them know the same words.
#pragma once

#include <bifolium/core/ascii.hpp>

#include <cstddef>
#include <string_view>

namespace bifolium {
inline namespace v0 {
namespace detail {
using namespace std::string_view_literals;

/// Returns the word that begins at byte `from`, or an empty text if no Latin letter is there.
[[nodiscard]] constexpr std::string_view word_at(std::string_view text, std::size_t from) noexcept {
  auto end = from;
  while (end < text.size() && is_latin_letter(text[end])) ++end;
  return text.substr(from, end - from);
}

/// The number with which a word begins, and the rest of the word: 8 and "s" for "eights". The value is 0 if the word begins
/// with no number.
struct NumberInWord {
  int value{};
  std::string_view ending{};
};
/// Finds the number, from one to twenty, with which a word begins. The first letter may be a capital.
[[nodiscard]] constexpr NumberInWord number_in(std::string_view word) noexcept {
  constexpr std::string_view numbers[]{"one"sv,     "two"sv,       "three"sv,    "four"sv,     "five"sv,
                                       "six"sv,     "seven"sv,     "eight"sv,    "nine"sv,     "ten"sv,
                                       "eleven"sv,  "twelve"sv,    "thirteen"sv, "fourteen"sv, "fifteen"sv,
                                       "sixteen"sv, "seventeen"sv, "eighteen"sv, "nineteen"sv, "twenty"sv};
  if (word.size() < 3) return {};
  for (int n = 20; n > 0; --n) // from the end, since "sixteen" begins with "six"
    if (auto const one = numbers[n - 1]; small_letter(word[0]) == one[0] && word.substr(1).starts_with(one.substr(1)))
      return {n, word.substr(one.size())};
  return {};
}
/// Returns the number, from 1 to 20, that a whole word means, or 0 if it means none.
[[nodiscard]] constexpr int number_of(std::string_view word) noexcept {
  auto const found = number_in(word);
  return found.ending.empty() ? found.value : 0;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
