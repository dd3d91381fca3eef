// SPDX-License-Identifier: MIT
/// What can be the measurement of a book at all. Everything in evidence/ that is given a length asks this one question, so
/// that a slip of the keyboard is refused everywhere or nowhere.
#pragma once

#include <bifolium/paper/length.hpp>

#include <optional>

namespace bifolium {
inline namespace v0 {

/// More than nothing and less than a kilometre; no other bound, since posters and finger-nail bibles are books too. Not a
/// number is no measurement.
[[nodiscard]] constexpr bool is_measure(millimetres length) { return length > 0_mm && length < 1'000'000_mm; }
/// What was not measured is not wrong.
[[nodiscard]] constexpr bool is_measure(std::optional<millimetres> length) { return !length || is_measure(*length); }

} // namespace v0
} // namespace bifolium
