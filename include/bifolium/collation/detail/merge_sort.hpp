// SPDX-License-Identifier: MIT
/// A stable sort in a few lines of code. Changes and runs come almost in order, and are many only in formulas of
/// extreme size; including <algorithm> would cost every unit with a formula more than the sort itself.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Sorts a vector or list so that no value is `less` than the one before it; equal values keep their order. At most n log n steps,
/// n where the values are in order already.
template <class Many, class Less> constexpr void merge_sort(Many& all, Less less) {
  auto const size = all.size();
  std::size_t fall = 1;
  while (fall < size && !less(all[fall], all[fall - 1])) ++fall;
  if (fall >= size) return;
  Many room;
  for (std::size_t i = 0; i < size; ++i) room.push_back(all[i]);
  for (std::size_t width = 1; width < size; width *= 2) {
    for (std::size_t from = 0; from < size; from += 2 * width) {
      auto const middle = from + width < size ? from + width : size;
      auto const end = middle + width < size ? middle + width : size;
      auto left = from, right = middle;
      for (auto to = from; to < end; ++to)
        room[to] = left < middle && (right == end || !less(all[right], all[left])) ? all[left++] : all[right++];
    }
    auto other = static_cast<Many&&>(all);
    all = static_cast<Many&&>(room);
    room = static_cast<Many&&>(other);
  }
}

} // namespace detail
} // namespace v0
} // namespace bifolium
