// SPDX-License-Identifier: MIT
/// The kinds of signature mark that identify gatherings, and what may be printed beside the mark itself.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// The kind of mark that identifies a gathering. Small letters and capitals are two series; roman, italic and black
/// letter are not separate series (ICCU).
enum class Mark : std::uint8_t {
  capital,          ///< A to Z
  small_letter,     ///< a to z
  greek,            ///< α to ω
  greek_capital,    ///< Α to Ω
  cyrillic,         ///< а to я
  cyrillic_capital, ///< А to Я
  number,           ///< 1, 2, 3: a printed number, or the count of a gathering in an unsigned book
  hebrew,           ///< א, ב ... י, יא: a number in Hebrew letters, as Hebrew books are signed
  symbol,           ///< * † ¶ )( & and other symbols
  name,             ///< a symbol that type cannot show, by its name: [pointing hand]
  printed,          ///< a mark quoted as it was printed: "G&H"
  pi,               ///< π: a gathering without a mark, before the first signed one
  chi               ///< χ: a gathering without a mark, among or after the signed ones
};
/// A π or χ before another mark. The gathering repeats the mark of another one.
enum class Duplicate : std::uint8_t { none, pi, chi };
/// What is printed beside the letter in every signature of a series: a symbol before it (†A) or after it (H*), or the
/// Greek letter of the same place (aα, bβ ... zψ, as Aldus signed).
enum class Beside : std::uint8_t { none, before, after, greek };

} // namespace v0
} // namespace bifolium
