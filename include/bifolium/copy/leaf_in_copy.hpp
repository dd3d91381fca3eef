// SPDX-License-Identifier: MIT
/// What a leaf of a copy is, where it is not simply the leaf that was printed for it.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// How a leaf comes to be in a copy.
enum class LeafInCopy : std::uint8_t {
  original, ///< nothing is said: the leaf as printed
  blank,    ///< the leaf is there and is blank
  mounted,  ///< the leaf as printed, laid down on or set into other paper
  supplied, ///< from another copy
  facsimile ///< not the leaf but a likeness of it: the copy lacks the leaf
};

/// The word for it, as a list of leaves has it; empty for an original leaf.
[[nodiscard]] constexpr std::string_view to_words(LeafInCopy state) noexcept {
  switch (state) {
  case LeafInCopy::original:
    break;
  case LeafInCopy::blank:
    return "blank";
  case LeafInCopy::mounted:
    return "mounted";
  case LeafInCopy::supplied:
    return "supplied";
  case LeafInCopy::facsimile:
    return "facsimile";
  }
  return {};
}

} // namespace v0
} // namespace bifolium
