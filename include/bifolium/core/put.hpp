// SPDX-License-Identifier: MIT
/// A value put among others that stand in order. The insert and erase of std::vector do the same and more, and a compiler
/// takes as long over the two for one type as over all the rest of the vector: who includes a header pays that whether
/// the function is called or not.
#pragma once

#include <bifolium/core/config.hpp>

#include <cstddef>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Puts `value` in the place of those that stand from `from` up to `to`; where the two are the same, before the one at
/// `from`. pre: from <= to <= all.size(), and `value` is none of `all`.
template <class Many> void put(Many& all, std::size_t from, std::size_t to, typename Many::value_type const& value) {
  if (from == to) {
    all.push_back(value);
    for (auto i = all.size() - 1; i > from; --i) {
      auto moved = static_cast<typename Many::value_type&&>(all[i]);
      all[i] = static_cast<typename Many::value_type&&>(all[i - 1]);
      all[i - 1] = static_cast<typename Many::value_type&&>(moved);
    }
    return;
  }
  all[from] = value;
  if (to == from + 1) return;
  for (auto i = to; i < all.size(); ++i) all[from + 1 + i - to] = static_cast<typename Many::value_type&&>(all[i]);
  for (auto gone = to - from - 1; gone > 0; --gone) all.pop_back();
}

} // namespace detail
} // namespace v0
} // namespace bifolium
