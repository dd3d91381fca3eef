// SPDX-License-Identifier: MIT
/// Searches sorted rows (runs by their first leaf, blanks by their place in the book), and removes the repeated ones.
/// Both functions are for rows of any kind. <algorithm> is not used, for the reason given in core/merge_sort.hpp.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>

namespace bifolium {
inline namespace v0 {

/// Returns how many of `size` rows come first in the sense of `is_first`, which is asked about the number of a row,
/// from 0. It must be true for some rows at the beginning and false for all others. It is asked log n times.
template <class IsFirst> constexpr std::size_t partition_point(std::size_t size, IsFirst is_first) {
  std::size_t low = 0, high = size;
  while (low < high)
    if (auto const middle = low + (high - low) / 2; is_first(middle))
      low = middle + 1;
    else
      high = middle;
  return low;
}
/// Removes all but the first of equal rows. Precondition: equal rows are next to each other, as in sorted rows.
template <class Rows> void keep_each_once(Rows& rows) {
  std::size_t kept = 0;
  for (std::size_t i = 0; i < rows.size(); ++i)
    if (kept == 0 || rows[kept - 1] != rows[i]) rows[kept++] = rows[i];
  rows.resize(kept);
}

} // namespace v0
} // namespace bifolium
