// SPDX-License-Identifier: MIT
/// Sorts the short rows of the library: some dozens of formats, sheets or leaves. The sort is stable and works in
/// constant expressions. <algorithm> is not used, because including it costs more than the rest of a folder's header.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <utility>

namespace bifolium {
inline namespace v0 {

/// Sorts the values of a row (any type with `size()` and `[]`). Afterwards `before(b, a)` is false for any two
/// neighbours a, b. Values keep their order if neither comes before the other. The number of comparisons grows with the
/// square of the size, so use it for at most a few hundred values.
template <class Row, class Before> constexpr void insertion_sort(Row&& row, Before before) {
  for (std::size_t i = 1; i < row.size(); ++i) {
    auto value = std::move(row[i]);
    auto at = i;
    for (; at > 0 && before(value, row[at - 1]); --at) row[at] = std::move(row[at - 1]);
    row[at] = std::move(value);
  }
}

} // namespace v0
} // namespace bifolium
