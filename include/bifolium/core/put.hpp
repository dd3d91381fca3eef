// SPDX-License-Identifier: MIT
/// A value put among others that stand in order. The insert and erase of std::vector do the same and more, and a compiler
/// takes as long over the two for one type as over all the rest of the vector: who includes a header pays that whether
/// the function is called or not.
#pragma once

#include <cstddef>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Puts `value` in the place of those that stand from `from` up to `to`; where the two are the same, before the one at
/// `from`. pre: from <= to <= all.size(), and `value` is none of `all`.
template <class T> void put(std::vector<T>& all, std::size_t from, std::size_t to, T const& value) {
  if (from == to) {
    all.push_back(value);
    for (auto i = all.size() - 1; i > from; --i) {
      auto moved = static_cast<T&&>(all[i]);
      all[i] = static_cast<T&&>(all[i - 1]);
      all[i - 1] = static_cast<T&&>(moved);
    }
    return;
  }
  all[from] = value;
  if (to == from + 1) return;
  for (auto i = to; i < all.size(); ++i) all[from + 1 + i - to] = static_cast<T&&>(all[i]);
  for (auto gone = to - from - 1; gone > 0; --gone) all.pop_back();
}

} // namespace detail
} // namespace v0
} // namespace bifolium
