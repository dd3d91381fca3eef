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
  capital,       ///< A to Z
  small_letter,  ///< a to z
  greek,         ///< α to ω
  greek_capital, ///< Α to Ω
  number,        ///< 1, 2, 3: a printed number, or the count of a gathering in an unsigned book
  symbol,        ///< * † ¶ )( & and other symbols
  name,          ///< a symbol that type cannot show, by its name: [pointing hand]
  printed,       ///< a mark quoted as it was printed: "G&H"
  pi,            ///< π: a gathering without a mark, before the first signed one
  chi            ///< χ: a gathering without a mark, anywhere else
};
/// A π or χ before another mark. The gathering repeats the mark of another one.
enum class Duplicate : std::uint8_t { none, pi, chi };
/// The place of a symbol that is printed as part of every signature of a series: before the letter (†A) or after it
/// (H*).
enum class Beside : std::uint8_t { none, before, after };

} // namespace v0
} // namespace bifolium
