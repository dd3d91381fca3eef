// SPDX-License-Identifier: MIT
/// The kinds of signature mark by which gatherings are known, and what may be printed beside the mark itself.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// What kind of mark a gathering is known by. Small letters and capitals are two series; roman, italic and black letter
/// are not (ICCU).
enum class Mark : std::uint8_t {
  capital,       ///< A to Z
  small_letter,  ///< a to z
  greek,         ///< α to ω
  greek_capital, ///< Α to Ω
  number,        ///< 1, 2, 3: a printed number, or the count of a gathering in an unsigned book
  symbol,        ///< * † ¶ )( & and the like
  name,          ///< a symbol that cannot be set, by name: [pointing hand]
  printed,       ///< whatever was printed, in quotation marks: "G&H"
  pi,            ///< no mark, before the first signed gathering
  chi            ///< no mark, elsewhere
};
/// π or χ before another mark: a gathering that repeats the mark of another one.
enum class Duplicate : std::uint8_t { none, pi, chi };
/// A symbol printed as part of every signature of a series: before the letter (†A) or after it (H*).
enum class Beside : std::uint8_t { nothing, before, behind };

} // namespace v0
} // namespace bifolium
