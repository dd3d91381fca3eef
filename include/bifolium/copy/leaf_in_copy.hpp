// SPDX-License-Identifier: MIT
/// The state of a leaf in a copy, if it is not simply the leaf as printed.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstdint>
#include <string_view>

namespace bifolium {
inline namespace v0 {

/// The state of a leaf in a copy.
enum class LeafInCopy : std::uint8_t {
  original,   ///< the leaf as printed; the list says nothing else
  blank,      ///< the leaf is there and is blank
  damaged,    ///< the leaf as printed, torn, cropped, stained or mended
  mounted,    ///< the leaf as printed, pasted onto or set into other paper
  supplied,   ///< the leaf comes from another copy
  facsimile,  ///< a reproduction in place of the leaf, which the copy lacks
  manuscript, ///< the text written by hand in place of the leaf, which the copy lacks
  typescript  ///< the text typed in place of the leaf, which the copy lacks
};
/// Returns true for the state of something that stands in the place of a leaf and is not the leaf.
[[nodiscard]] constexpr bool is_substitute(LeafInCopy state) noexcept {
  return state == LeafInCopy::facsimile || state == LeafInCopy::manuscript || state == LeafInCopy::typescript;
}

/// Returns the word for the state, as in a list of leaves; a list does not need the word for an original leaf.
[[nodiscard]] constexpr std::string_view to_words(LeafInCopy state) noexcept {
  switch (state) {
  case LeafInCopy::original:
    return "original";
  case LeafInCopy::blank:
    return "blank";
  case LeafInCopy::damaged:
    return "damaged";
  case LeafInCopy::mounted:
    return "mounted";
  case LeafInCopy::supplied:
    return "supplied";
  case LeafInCopy::facsimile:
    return "facsimile";
  case LeafInCopy::manuscript:
    return "manuscript";
  case LeafInCopy::typescript:
    return "typescript";
  }
  return "in an unknown state";
}

} // namespace v0
} // namespace bifolium
