// SPDX-License-Identifier: MIT
/// Which lengths can be measurements of a book. Every function that is given a measured length asks this one question, so
/// that all of them refuse the same typing mistakes.
#pragma once

#include <bifolium/paper/length.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// True for a length more than zero and less than a kilometre. There is no other bound, because posters and miniature
/// bibles are books too. False for NaN.
[[nodiscard]] constexpr bool is_measure(millimetres length) { return length > 0_mm && length < 1'000'000_mm; }
/// True also for a length that is missing: it was not measured.
[[nodiscard]] constexpr bool is_measure(std::optional<millimetres> length) { return !length || is_measure(*length); }

} // namespace v0
} // namespace bifolium
