// SPDX-License-Identifier: MIT
/// The habits of a catalogue that the text of a formula cannot show. Notes derived from STC leave out the leaf count if
/// it is eight. BMC and GW leave it out if the next count applies to the gathering as well. The text alone does not
/// distinguish the two habits, so the caller states the habit, and the reader reports every count that it supplies.
#pragma once

#include <bifolium/leaf/alphabet.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// The meaning of a gathering without a leaf count.
enum class Omitted : std::uint8_t {
  error, ///< a mistake
  next,  ///< the next count applies: a b⁸ is a⁸ b⁸ (BMC, GW)
  eight  ///< eight leaves (notes derived from STC); each supplied count is a warning
};

/// The notation of a formula.
struct Dialect {
  Omitted omitted{};      ///< the meaning of a gathering without a leaf count
  Letters letters{};      ///< the letters used in addition to the 23
  bool flat_counts{true}; ///< true if counts may be on the line (A8)
  friend constexpr bool operator==(Dialect, Dialect) = default;
};

/// The habits of well-known catalogues.
namespace dialects {
/// Every gathering has its leaf count.
inline constexpr Dialect strict{};
/// The habit of BMC and GW.
inline constexpr Dialect bmc{Omitted::next, {}, true};
/// The habit of notes derived from STC.
inline constexpr Dialect stc{Omitted::eight, {}, true};
} // namespace dialects

} // namespace v0
} // namespace bifolium
