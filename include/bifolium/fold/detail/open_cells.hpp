// SPDX-License-Identifier: MIT
/// Cells whose pages are illegible on every forme. The leaves of the sheets are consecutive, each as often as there are
/// copies. So the missing leaves are known, and only their order and the side that lay down are open. A sheet printed
/// from one forme tells more: the page on the back of an illegible page may be legible.
#pragma once

#include <bifolium/fold/detail/page_grid.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The greatest number of cells that are supplied, since the number of orders grows as the factorial.
inline constexpr int most_open_cells = 5;

/// Supplies the missing leaves in a set of grids, in all ways.
class OpenCells {
  std::vector<SheetGrid>& grids_;
  std::vector<GridCell*> open_{};
  std::vector<std::array<bool, 2>> sides_{}; // for each open cell: may its verso, its recto lie down
  std::vector<int> missing_{};               // the missing rectos
  bool mixed_{};                             // true if there are sheets with one forme and sheets with two
  int copies_{1};

  /// Fills a cell from the other page of its leaf, which the same forme printed beside it.
  static constexpr void fill_from_back(SheetGrid& grid) {
    for (int r = 0; r < grid.rows; ++r)
      for (int c = 0; c < grid.columns; ++c) {
        auto& here = grid.at(r, c);
        bool const sideways = grid.turned_about == Axis::far_near;
        auto const& back = sideways ? grid.at(r, grid.columns - 1 - c) : grid.at(grid.rows - 1 - r, c);
        if (here.recto == 0 && back.recto != 0) here.recto = back.recto, here.recto_down = !back.recto_down;
      }
  }
  /// Rectos alternate like a chessboard inside a piece. If all neighbours agree, the cell is assumed to agree with
  /// them.
  constexpr void collect(SheetGrid& grid) {
    for (int r = 0; r < grid.rows; ++r)
      for (int c = 0; c < grid.columns; ++c) {
        if (grid.at(r, c).recto != 0) continue;
        std::array<bool, 2> seen{};
        auto const look = [&](int row, int column) {
          if (row < 0 || row >= grid.rows || column < 0 || column >= grid.columns) return;
          if (auto const& near_cell = grid.at(row, column); near_cell.recto != 0)
            seen[near_cell.recto_down ? 0 : 1] = true;
        };
        look(r - 1, c), look(r + 1, c), look(r, c - 1), look(r, c + 1);
        open_.push_back(&grid.at(r, c));
        sides_.push_back(seen[0] == seen[1] ? std::array{true, true} : seen);
      }
  }
  [[nodiscard]] constexpr int times(int recto) const {
    int n = 0;
    for (auto const& grid : grids_)
      for (auto const& cell : grid.cells) n += cell.recto == recto ? 1 : 0;
    return n;
  }
  /// Returns how often a leaf occurs. In half-sheet work each leaf occurs twice; in a quire of sheets and half-sheets,
  /// some leaves occur twice and some once.
  [[nodiscard]] constexpr int copies_of(int recto) const {
    if (!mixed_) return copies_;
    for (auto const& grid : grids_)
      for (auto const& cell : grid.cells)
        if (grid.one_forme && cell.recto == recto) return 2;
    return 1;
  }
  [[nodiscard]] constexpr int distinct_leaves() const {
    int leaves = 0;
    for (auto const& grid : grids_) {
      auto const cells = static_cast<int>(grid.cells.size());
      leaves += (mixed_ ? grid.one_forme : copies_ == 2) ? cells / 2 : cells;
    }
    return leaves;
  }
  constexpr void find_copies() {
    int twice = 0, once = 0, one_forme = 0;
    for (auto const& grid : grids_) {
      one_forme += grid.one_forme ? 1 : 0;
      for (auto const& cell : grid.cells)
        if (cell.recto != 0) (times(cell.recto) > 1 ? twice : once) += 1;
    }
    mixed_ = one_forme > 0 && one_forme < static_cast<int>(grids_.size());
    copies_ = twice > once ? 2 : 1;
  }
  template <class Act> constexpr void assign(std::size_t cell, Act& act) {
    if (cell == open_.size()) return act();
    for (std::size_t i = 0; i < missing_.size(); ++i) {
      auto const recto = missing_[i];
      bool tried = recto == 0; // already used
      for (std::size_t k = 0; k < i; ++k) tried = tried || missing_[k] == recto;
      if (tried) continue;
      missing_[i] = 0;
      for (std::size_t down = 0; down < 2; ++down) {
        if (!sides_[cell][down]) continue;
        open_[cell]->recto = recto;
        open_[cell]->recto_down = down == 1;
        assign(cell + 1, act);
      }
      open_[cell]->recto = 0;
      missing_[i] = recto;
    }
  }

public:
  constexpr explicit OpenCells(std::vector<SheetGrid>& grids) : grids_{grids} {
    for (auto& grid : grids_) {
      if (grid.one_forme) fill_from_back(grid);
      collect(grid);
    }
    find_copies();
  }
  /// Returns true if all cells are known, or if the open cells can be supplied.
  [[nodiscard]] constexpr bool can_supply() const {
    if (mixed_) // it cannot be known which of the missing leaves occur twice
      for (auto const& grid : grids_)
        for (auto const& cell : grid.cells)
          if (grid.one_forme && cell.recto == 0) return false;
    return open_.size() <= most_open_cells;
  }

  /// Calls `act()` for each way of supplying the cells, with the grids filled.
  template <class Act> constexpr void each(Act act) {
    if (open_.empty()) return act();
    int const leaves = distinct_leaves();
    int least = 1 << 20, most = 0;
    for (auto const& grid : grids_)
      for (auto const& cell : grid.cells) {
        if (cell.recto == 0) continue;
        least = cell.recto < least ? cell.recto : least;
        most = cell.recto > most ? cell.recto : most;
      }
    if (most == 0) return; // there is no page at all
    // Every run of this many leaves that includes all legible ones.
    for (int first = most - 2 * (leaves - 1); first <= least; first += 2) {
      if (first < 1) continue;
      missing_.clear();
      bool fits = true;
      for (int recto = first; recto < first + 2 * leaves; recto += 2) {
        auto const there = times(recto), wanted = copies_of(recto);
        fits = fits && there <= wanted;
        for (int i = there; i < wanted; ++i) missing_.push_back(recto);
      }
      if (fits && missing_.size() == open_.size()) assign(0, act);
    }
  }
};

} // namespace detail
} // namespace v0
} // namespace bifolium
