// SPDX-License-Identifier: MIT
/// The alphabets that number gatherings. The printer's Latin alphabet has 23 letters: I and J are one letter, U and V
/// are one, W is not used (ICCU, Guida SBN materiale antico, App. C; STCV manual, Collation formula). Later printers,
/// American ones above all, used more (Roberts & Etherington s.v. signature), so letters are added by name: "a 25-letter
/// alphabet" does not say which. Greek has 24.
#pragma once

#include <bifolium/core/broken.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// Letters used beside the 23. With `j` the letters I and J are two, with `u` the letters U and V are two.
struct Letters {
  bool j{}, u{}, w{}; ///< true where the letter was used
  friend constexpr bool operator==(Letters, Letters) = default;
};

/// The Latin letters of a series, in order. A letter is its number among the 26: A is 1, Z is 26, in either case.
class Alphabet {
  std::uint32_t has_; // bit n: letter n+1 is used

  static constexpr int ones(std::uint32_t bits) noexcept {
    int number = 0;
    for (; bits != 0; bits &= bits - 1) ++number;
    return number;
  }
  static constexpr std::uint32_t bit(int letter) noexcept {
    return std::uint32_t{1} << static_cast<unsigned>(letter - 1);
  }

public:
  /// Places of the doubtful letters among twenty-six, from 1.
  static constexpr int j = 10, u = 21, v = 22, w = 23;

  /// Twenty-three letters, and those that are added.
  constexpr explicit Alphabet(Letters added = {}) noexcept
      : has_{0x3FFFFFFU & ~((added.j ? 0U : bit(j)) | (added.u ? 0U : bit(u)) | (added.w ? 0U : bit(w)))} {}

  /// 23 to 26.
  [[nodiscard]] constexpr int size() const noexcept { return has_ == every23 ? 23 : ones(has_); }
  /// pre: 1 to 26.
  [[nodiscard]] constexpr bool has(int letter) const noexcept { return (has_ & bit(letter)) != 0; }
  /// The letter as this alphabet has it: J read as I and U as V where they are not letters of their own. W stays W.
  /// pre: 1 to 26.
  [[nodiscard]] constexpr int letter(int glyph) const noexcept {
    if (has(glyph)) return glyph;
    return glyph == j ? glyph - 1 : glyph == u ? v : glyph;
  }
  /// The position of a letter, from 1. For a W that the alphabet does not have, the position before X.
  /// pre: 1 to 26.
  [[nodiscard]] constexpr int place(int letter) const noexcept {
    if (has_ == every23) return letter - (letter > j ? 1 : 0) - (letter > u ? 1 : 0) - (letter > w ? 1 : 0);
    return ones(has_ & (bit(letter) - 1)) + 1;
  }
  /// The letter at a place. pre: 1 to size().
  [[nodiscard]] constexpr int at(int place) const {
    if (place < 1 || place > size()) broken("the alphabet has no letter at that place");
    auto bits = has_;
    while (--place > 0) bits &= bits - 1;
    int letter = 1;
    while ((bits & 1U) == 0) bits >>= 1U, ++letter;
    return letter;
  }
  friend constexpr bool operator==(Alphabet, Alphabet) = default;

private:
  static constexpr std::uint32_t every23 = 0x3FFFFFFU & ~((1U << 9U) | (1U << 20U) | (1U << 22U));
};

/// Letters of the Greek alphabet.
inline constexpr int greek_letters = 24;

} // namespace v0
} // namespace bifolium
