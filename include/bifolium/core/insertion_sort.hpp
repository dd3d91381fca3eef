// SPDX-License-Identifier: MIT
/// Sorting for the short rows that the library sorts: some dozens of formats, sheets or leaves. It is stable, it works in
/// constant expressions, and it does without <algorithm>, which costs a unit more than the rest of a folder's header.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <utility>

namespace bifolium {
inline namespace v0 {

/// Sorts the values of a row (anything with `size()` and `[]`) so that `before(b, a)` holds of no two neighbours a, b.
/// Values of which neither comes before the other keep their order. The number of comparisons grows with the square of
/// the size: at most a few hundred values.
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
