// SPDX-License-Identifier: MIT
/// A number with its noun, as every sentence of the library and of its programs has it: 1 leaf, 2 leaves, 0 leaves.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>
#include <string>

namespace bifolium {
inline namespace v0 {

/// Returns a number and the noun that it has, one for a single thing and one for any other number of them.
/// Example: `number_of(1, "leaf", "leaves") == "1 leaf"`.
[[nodiscard]] inline std::string number_of(std::int64_t number, char const* one, char const* many) {
  return std::to_string(number).append(" ").append(number == 1 ? one : many);
}

} // namespace v0
} // namespace bifolium
