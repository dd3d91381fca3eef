// SPDX-License-Identifier: MIT
/// The alphabets that number gatherings. The printer's Latin alphabet has 23 letters: I and J are one letter, U and V
/// are one letter, and W is not used (ICCU, Guida SBN materiale antico, App. C; STCV manual, Collation formula). Later
/// printers, most of them American, used more letters (Roberts & Etherington s.v. signature). These are added by name,
/// because "a 25-letter alphabet" does not say which letters it has. The Greek alphabet has 24 letters.
#pragma once

#include <bifolium/core/broken.hpp>

#include <cstdint>
#include <optional>

namespace bifolium {
inline namespace v0 {

/// The letters used in addition to the 23 of the printer's Latin alphabet. With `j`, I and J are two letters; with `u`,
/// U and V are two letters.
struct Letters {
  bool j{}, u{}, w{}; ///< true if the letter is used
  friend constexpr bool operator==(Letters, Letters) = default;
};

/// The Latin letters of a series, in order. A letter is given by its number among the 26, in either case: A is 1, Z is
/// 26.
class Alphabet {
  std::uint32_t has_; // bit n: letter n+1 is used
  static constexpr std::uint32_t every23 = 0x3FFFFFFU & ~((1U << 9U) | (1U << 20U) | (1U << 22U));

  static constexpr int ones(std::uint32_t bits) noexcept {
    int number = 0;
    for (; bits != 0; bits &= bits - 1) ++number;
    return number;
  }
  static constexpr std::uint32_t bit(int letter) noexcept {
    return std::uint32_t{1} << static_cast<unsigned>(letter - 1);
  }
  static constexpr std::int8_t unused = 0;
  // the position of each letter among the 23, by its number; `unused` for J, U and W. Written out, because it is asked
  // for each letter of a formula
  static constexpr std::int8_t places_among_23[]{unused, 1,  2,  3,  4,  5,  6,  7,      8,  9,      unused, 10, 11, 12,
                                                 13,     14, 15, 16, 17, 18, 19, unused, 20, unused, 21,     22, 23};
  [[nodiscard]] constexpr int place_among_more(int letter) const noexcept {
    return (has_ & bit(letter)) == 0 ? unused : ones(has_ & (bit(letter) - 1)) + 1;
  }
  static constexpr void must_be_letter(int letter) {
    if (letter < 1 || letter > 26) broken("the number of a Latin letter must be from 1 to 26");
  }

public:
  /// Numbers of the letters J, U, V and W among the 26, from 1.
  static constexpr int j = 10, u = 21, v = 22, w = 23;

  /// Makes an alphabet of the 23 letters and the added ones.
  constexpr explicit Alphabet(Letters added = {}) noexcept
      : has_{added == Letters{}
                 ? every23
                 : 0x3FFFFFFU & ~((added.j ? 0U : bit(j)) | (added.u ? 0U : bit(u)) | (added.w ? 0U : bit(w)))} {}

  /// Returns the number of letters, 23 to 26.
  [[nodiscard]] constexpr int size() const noexcept { return has_ == every23 ? 23 : ones(has_); }
  /// Returns true if the alphabet has the letter. Precondition: 1 to 26.
  [[nodiscard]] constexpr bool has(int letter) const {
    must_be_letter(letter);
    return (has_ & bit(letter)) != 0;
  }
  /// Returns the letter that this alphabet has for a printed one: I for J and V for U if these are not separate
  /// letters. W stays W. Precondition: 1 to 26.
  [[nodiscard]] constexpr int letter(int glyph) const {
    if (has(glyph)) return glyph;
    return glyph == j ? glyph - 1 : glyph == u ? v : glyph;
  }
  /// Returns the position of a letter in this alphabet, from 1. A W that the alphabet does not have gets the position
  /// before X. Precondition: 1 to 26.
  [[nodiscard]] constexpr int place(int letter) const {
    must_be_letter(letter);
    if (has_ == every23) return letter - (letter > j ? 1 : 0) - (letter > u ? 1 : 0) - (letter > w ? 1 : 0);
    return ones(has_ & (bit(letter) - 1)) + 1;
  }
  /// Returns the position of a letter from 1, or no value if this alphabet does not have it. Precondition, which is not
  /// checked because this is asked for each letter of a formula: 1 to 26.
  [[nodiscard, gnu::always_inline]] constexpr std::optional<int> place_if_used(int letter) const noexcept {
    auto const place = has_ == every23 ? int{places_among_23[letter]} : place_among_more(letter);
    return place == unused ? std::nullopt : std::optional{place};
  }
  /// Returns the letter at a position. Precondition: 1 to size().
  [[nodiscard]] constexpr int at(int place) const {
    if (place < 1 || place > size()) broken("the alphabet has no letter at this position");
    auto bits = has_;
    while (--place > 0) bits &= bits - 1;
    int letter = 1;
    while ((bits & 1U) == 0) bits >>= 1U, ++letter;
    return letter;
  }
  friend constexpr bool operator==(Alphabet, Alphabet) = default;
};

/// The number of letters of the Greek alphabet.
inline constexpr int greek_letters = 24;
/// Letters of the Cyrillic alphabet: А to Я of the civil type without Ё, Й and those later given up (from memory).
inline constexpr int cyrillic_letters = 31;
/// The highest number that Hebrew letters can sign: תתקצט.
inline constexpr std::uint32_t highest_hebrew = 999;

} // namespace v0
} // namespace bifolium
