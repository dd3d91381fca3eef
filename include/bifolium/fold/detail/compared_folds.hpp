// SPDX-License-Identifier: MIT
/// Compares two folds: different schemes may make the same sheets.
#pragma once

#include <bifolium/fold/fold.hpp>

#include <array>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Returns true if two folds make the same sheets: each cell has the same leaf of the same gathering, the same way up,
/// in the same piece.
constexpr bool same_sheets(Fold<> const& one, Fold<> const& other) {
  if (one.sheets() != other.sheets() || one.reads() != other.reads() || one.leaves() != other.leaves()) return false;
  std::array<int, Scheme::most_pieces> piece_of{}, piece_back{};
  for (int s = 0; s < one.sheets(); ++s) {
    auto const &a = one.sheet(s), &b = other.sheet(s);
    if (a.rows != b.rows || a.columns != b.columns || a.one_forme != b.one_forme || a.part != b.part) return false;
    for (int r = 0; r < a.rows; ++r)
      for (int c = 0; c < a.columns; ++c) {
        auto const p = one.leaf_at(s, r, c), q = other.leaf_at(s, r, c);
        if (one.pages_of(p) != other.pages_of(q) || p.leaf != q.leaf) return false;
        auto const x = one.cell(p), y = other.cell(q);
        if (x.head_far != y.head_far) return false;
        auto& there = piece_of[x.piece];
        auto& back = piece_back[y.piece];
        if (there == 0 && back == 0) there = y.piece + 1, back = x.piece + 1;
        if (there != y.piece + 1 || back != x.piece + 1) return false;
      }
  }
  return true;
}

} // namespace detail

} // namespace v0
} // namespace bifolium
