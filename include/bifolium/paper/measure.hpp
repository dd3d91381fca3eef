// SPDX-License-Identifier: MIT
/// Decides which lengths can be measurements of a book. Every function that takes a measured length uses this test, so
/// that all of them refuse the same typing mistakes.
#pragma once

#include <bifolium/paper/length.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// Returns true if the length is more than zero and less than a kilometre. The upper bound is high because posters are
/// measured too. Returns false for NaN.
[[nodiscard]] constexpr bool is_measure(millimetres length) { return length > 0_mm && length < 1'000'000_mm; }
/// Returns true if there is no length, because it was not measured, or if the length can be a measurement.
[[nodiscard]] constexpr bool is_measure(std::optional<millimetres> length) { return !length || is_measure(*length); }

} // namespace v0
} // namespace bifolium
