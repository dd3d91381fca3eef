// SPDX-License-Identifier: MIT
/// What the text of a collation formula cannot say. Notes derived from STC leave out the count where it is eight; BMC and
/// GW leave it out where the next one holds for the gathering too. The two habits cannot be told apart from the text, so
/// the reader is told, and is never silent about it.
#pragma once

#include <bifolium/leaf/alphabet.hpp>

#include <cstdint>

namespace bifolium {
inline namespace v0 {

/// What a gathering without a leaf count means.
enum class Omitted : std::uint8_t {
  error, ///< it is a mistake
  next,  ///< the next count holds: a b⁸ is a⁸ b⁸ (BMC, GW)
  eight  ///< eight leaves (notes derived from STC); each one supplied is a warning
};

/// How a formula was written.
struct Dialect {
  Omitted omitted{};      ///< what a gathering without a count means
  Letters letters{};      ///< letters used beside the 23
  bool flat_counts{true}; ///< counts may be on the line (A8)
  friend constexpr bool operator==(Dialect, Dialect) = default;
};

/// The habits of well-known catalogues.
namespace dialects {
/// Every gathering has its count.
inline constexpr Dialect strict{};
/// As BMC and GW write.
inline constexpr Dialect bmc{Omitted::next, {}, true};
/// As notes derived from STC write.
inline constexpr Dialect stc{Omitted::eight, {}, true};
} // namespace dialects

} // namespace v0
} // namespace bifolium
