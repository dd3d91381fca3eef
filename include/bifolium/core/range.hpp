// SPDX-License-Identifier: MIT
/// A number that depends on assumptions, as a range: its least value, its value as stated, and its greatest value. Each
/// function that returns a range says which assumptions it makes.
#pragma once

#include <bifolium/core/config.hpp>

namespace bifolium {
inline namespace v0 {

/// Three values of one quantity, low <= stated <= high, in the unit of `T`.
template <class T> struct Range {
  T low{};    ///< the value under the assumption that makes it least
  T stated{}; ///< the value as described or asked for, without a further assumption
  T high{};   ///< the value under the assumption that makes it greatest

  /// Returns true if all three values are equal, so that no assumption changes the number.
  [[nodiscard]] constexpr bool is_exact() const { return low == stated && stated == high; }
  friend constexpr bool operator==(Range const&, Range const&) = default;
};

} // namespace v0
} // namespace bifolium
