// SPDX-License-Identifier: MIT
/// Finds what a block of a sheet can be cut into and in which order the pieces can be set one inside another.
#pragma once

#include <bifolium/core/insertion_sort.hpp>
#include <bifolium/fold/detail/piece_finder.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Ways of cutting a block into pieces, in every order of setting them one inside another.
inline std::vector<std::vector<GridRect>> nestings(GridRect const& block, int most_pieces) {
  std::vector<std::vector<GridRect>> sets{{block}}, all;
  for (std::size_t i = 0; i < sets.size(); ++i) {
    if (static_cast<int>(sets[i].size()) >= most_pieces) continue;
    for (std::size_t part = 0; part < sets[i].size(); ++part)
      for (auto along : {Axis::left_right, Axis::far_near})
        for (int line = 1; line < sets[i][part].across(along); ++line) {
          auto pieces = sets[i];
          pieces[part] = sets[i][part].before(along, line);
          pieces.push_back(sets[i][part].beyond(along, line));
          insertion_sort(
              pieces, [](GridRect const& a, GridRect const& b) { return a.top * 256 + a.left < b.top * 256 + b.left; });
          bool known = false;
          for (auto const& other : sets) known = known || other == pieces;
          if (!known) sets.push_back(static_cast<std::vector<GridRect>&&>(pieces));
        }
  }
  for (auto const& set : sets) {
    bool folds = true;
    for (auto const& r : set)
      folds = folds && (r.cells() == 1 || (r.columns() > 1 && (r.columns() % 2 == 0 || r.rows() == 1)));
    if (!folds) continue;
    std::vector<std::size_t> order;
    auto const arrange = [&](auto const& self) -> void {
      if (order.size() == set.size()) {
        std::vector<GridRect> arranged;
        arranged.reserve(order.size());
        for (auto const i : order) arranged.push_back(set[i]);
        all.push_back(static_cast<std::vector<GridRect>&&>(arranged));
      }
      for (std::size_t i = 0; i < set.size(); ++i) {
        bool used = false;
        for (auto const k : order) used = used || k == i;
        if (used) continue;
        order.push_back(i);
        self(self);
        order.pop_back();
      }
    };
    arrange(arrange);
  }
  return all;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
