// SPDX-License-Identifier: MIT
/// A number that depends on assumptions, as a range: what it is at least, as stated, and at most. Each function that gives
/// one says what its three assumptions are.
#pragma once

#include <bifolium/core/config.hpp>

namespace bifolium {
inline namespace v0 {

/// low <= stated <= high, in the unit of `T`.
template <class T> struct Range {
  T low{};    ///< under the assumption that makes it least
  T stated{}; ///< as it was described or asked for, without another assumption
  T high{};   ///< under the assumption that makes it most

  /// True where no assumption changes the number.
  [[nodiscard]] constexpr bool is_exact() const { return low == stated && stated == high; }
  friend constexpr bool operator==(Range const&, Range const&) = default;
};

} // namespace v0
} // namespace bifolium
