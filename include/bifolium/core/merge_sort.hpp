// SPDX-License-Identifier: MIT
/// Sorts rows that may be long. Most rows of the library come almost in order: changes of a formula, leaves of a copy.
/// <algorithm> is not used, because including it costs a unit more than all sorts of the library do.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>

namespace bifolium {
inline namespace v0 {

/// Sorts a vector. Afterwards no value is `less` than the one before it, and equal values keep their order. The number
/// of comparisons is at most n log n, and n if the values are in order already. The function allocates memory.
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

} // namespace v0
} // namespace bifolium
