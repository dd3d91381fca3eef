// SPDX-License-Identifier: MIT
/// How much is read from one text, and how much is drawn or told, before a reader says that it is too much. Text that strangers
/// send to a service may be of any size, and a few characters of a formula may name thousands of leaves. The defaults
/// are far above any book; a service sets its own. Within the limits what is kept of a text is at most 1200 bytes for
/// each byte of it, whatever it says; a formula takes some 50 (tests/growth). A limit that is reached is an error which
/// names it and says its number; no reader stops without a word. Examining a description is no error: a finding says so.
#pragma once

#include <bifolium/core/config.hpp>
#include <bifolium/core/error.hpp>

#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The most that is read, drawn or told. Errors: text_too_long, too_many_runs, too_many_changes, too_many_leaves_drawn.
struct Limits {
  std::uint32_t text_bytes{1U << 26U}; ///< bytes of one text: 64 MiB; places in a text are kept in 32 bits
  std::uint32_t runs{1U << 20U};       ///< runs of gatherings, of pages, of the leaves that a copy has
  std::uint32_t changes{1U << 20U};    ///< changes of leaves, exceptions in signing, faults of pagination, joints
  std::uint32_t leaves_drawn{8192};    ///< leaves in one drawing or page
  std::uint32_t findings{1U << 20U};   ///< findings in the answer about one description, the most severe of them
  friend constexpr bool operator==(Limits const&, Limits const&) = default;
};

namespace detail {
/// Returns true if the text is longer than the limit. The error has no place in the text, because it is not read.
[[nodiscard]] constexpr bool is_too_long(std::string_view text, Limits const& limits) noexcept {
  return text.size() > limits.text_bytes;
}
[[nodiscard]] constexpr Error too_long(Limits const& limits) {
  return error_in_field(Problem::text_too_long, "text_bytes", limits.text_bytes);
}
} // namespace detail

} // namespace v0
} // namespace bifolium
