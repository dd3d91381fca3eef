// SPDX-License-Identifier: MIT
/// read_extent: a statement of pagination that begins with its numbers or with its unit.
#pragma once

#include <bifolium/record/detail/pagination_reader.hpp>
#include <bifolium/record/read_extent.hpp>

namespace bifolium {
inline namespace v0 {

BIFOLIUM_INLINE Expected<Extent> read_extent(std::string_view text, Limits const& limits) {
  return read_characters(text, [&](std::string_view plain) {
    return detail::PaginationReader{plain, true, limits}.read();
  });
}

} // namespace v0
} // namespace bifolium
