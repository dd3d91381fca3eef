// SPDX-License-Identifier: MIT
/// Roman numerals as books print them: i to iiij, viij, xl or xxxx, CCxxv, with a j for the last i. Subtraction and
/// four equal digits are both old practice, and the reader accepts both; the writer uses the modern form. A numeral
/// ends at the first letter that does not belong to it: the numeral in "iiiv" is iii, and the caller decides what the v
/// means (the verso of leaf three).
#pragma once

#include <bifolium/core/ascii.hpp>
#include <bifolium/core/broken.hpp>
#include <bifolium/core/short_text.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// A numeral found at the beginning of a text.
struct RomanNumeral {
  std::int64_t value{}; ///< the value, from 1
  std::size_t bytes{};  ///< number of bytes of the numeral
  friend constexpr bool operator==(RomanNumeral const&, RomanNumeral const&) = default;
};

/// Returns the longest Roman numeral at the beginning of `text`, in capitals, small letters or both, or no value if
/// there is none.
[[nodiscard]] constexpr std::optional<RomanNumeral> roman_numeral(std::string_view text) noexcept {
  // one decimal place after another: its unit, its five, its ten
  constexpr char const* places[]{"mmm", "cdm", "xlc", "ivx"};
  constexpr int worth[]{1000, 100, 10, 1};
  std::size_t at = 0;
  auto const small_at = [&](std::size_t i) {
    char const c = i < text.size() ? text[i] : '\0';
    return small_letter(c);
  };
  RomanNumeral found;
  for (std::size_t p = 0; p < 4; ++p) {
    char const one = places[p][0], five = places[p][1], ten = places[p][2];
    bool const thousands = p == 0, ones = p == 3;
    std::int64_t digit = 0;
    auto const is_one = [&](std::size_t i) { return small_at(i) == one; };
    if (!thousands && is_one(at) && (small_at(at + 1) == five || small_at(at + 1) == ten)) {
      digit = small_at(at + 1) == five ? 4 : 9;
      at += 2;
    } else {
      if (!thousands && small_at(at) == five) digit = 5, ++at;
      for (int n = 0; n < 4 && is_one(at); ++n) ++digit, ++at;
      if (ones && digit % 5 < 4 && small_at(at) == 'j') ++digit, ++at;
    }
    found.value += digit * worth[p];
    found.bytes = at;
  }
  if (found.bytes == 0) return std::nullopt;
  return found;
}
/// Returns true if the whole text is a Roman numeral.
[[nodiscard]] constexpr bool is_roman_numeral(std::string_view text) noexcept {
  auto const found = roman_numeral(text);
  return found && found->bytes == text.size();
}

/// Writes a number as a small Roman numeral: xlviii. Precondition: 1 to 4999.
[[nodiscard]] constexpr ShortText<24> small_roman(std::int64_t number) {
  if (number < 1 || number > 4999) broken("a Roman numeral can be written for 1 to 4999");
  struct RomanLetters {
    int worth;
    char const* letters;
  };
  constexpr RomanLetters steps[]{{1000, "m"}, {900, "cm"}, {500, "d"}, {400, "cd"}, {100, "c"}, {90, "xc"}, {50, "l"},
                                 {40, "xl"},  {10, "x"},   {9, "ix"},  {5, "v"},    {4, "iv"},  {1, "i"}};
  ShortText<24> text;
  for (auto const& step : steps)
    for (; number >= step.worth; number -= step.worth) text.append(step.letters);
  return text;
}

} // namespace v0
} // namespace bifolium
