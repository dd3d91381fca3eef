// SPDX-License-Identifier: MIT
/// Makes the leaves of flat sheets from the formes that print them. A page determines its leaf: rectos are odd, so
/// pages 2k-1 and 2k are one leaf, and the recto lies down if its odd page is in the outer forme. So one forme gives
/// the whole sheet; if both are given, each cell has its leaf from both, and the two must agree.
#pragma once

#include <bifolium/core/expected.hpp>
#include <bifolium/core/partition_point.hpp>
#include <bifolium/fold/scheme.hpp>
#include <bifolium/fold/seen_forme.hpp>

#include <span>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// One cell of a flat sheet that lies with its outer side down.
struct GridCell {
  int recto{};       ///< the first page of its leaf; 0 if it is unknown
  bool recto_down{}; ///< true if the recto is on the outer side
  std::optional<Head> head{};
  /// number of the leaf among all leaves of the sheets: consecutive leaves of the book have consecutive numbers
  int key{};
};

/// One flat sheet.
struct SheetGrid {
  int rows{}, columns{};
  bool one_forme{}, both_formes{};
  Axis turned_about{};
  std::vector<GridCell> cells{};

  [[nodiscard]] constexpr GridCell const& at(int row, int column) const {
    return cells[static_cast<std::size_t>(row * columns + column)];
  }
  [[nodiscard]] constexpr GridCell& at(int row, int column) {
    return cells[static_cast<std::size_t>(row * columns + column)];
  }
};

/// Combines formes to sheets.
class GridMaker {
  std::span<SeenForme const> formes_;
  std::vector<SheetGrid> sheets_{};
  Error error_{};

  constexpr bool fail(Problem problem, int limit) {
    error_ = error_in_field(problem, "formes", limit);
    return false;
  }
  [[nodiscard]] constexpr SeenForme const* find(int sheet, bool inner) const {
    for (auto const& forme : formes_)
      if (forme.sheet == sheet && (forme.side == Side::inner) == inner) return &forme;
    return nullptr;
  }
  static constexpr SeenPage page_of(SeenForme const& forme, int row, int column) {
    return forme.pages[static_cast<std::size_t>(row * forme.columns + column)];
  }

  /// Checks that each sheet has at least one forme, none twice, and that its formes have one size.
  constexpr bool shapes_agree() {
    int cells = 0;
    for (auto const& forme : formes_) {
      bool const whole =
          forme.rows >= 1 && forme.columns >= 1 &&
          forme.pages.size() == static_cast<std::size_t>(forme.rows) * static_cast<std::size_t>(forme.columns);
      if (!whole || forme.sheet < 0) return fail(Problem::forme_not_whole, 0);
      if (forme.sheet >= Scheme::most_sheets) return fail(Problem::too_many_sheets, Scheme::most_sheets);
      int same = 0;
      for (auto const& other : formes_) {
        if (other.sheet != forme.sheet) continue;
        if (other.rows != forme.rows || other.columns != forme.columns) return fail(Problem::formes_unlike, 0);
        same += (other.side == Side::inner) == (forme.side == Side::inner) ? 1 : 0;
        if (other.side == Side::only && forme.side == Side::inner) return fail(Problem::formes_unlike, 0);
      }
      if (same > 1) return fail(Problem::forme_given_twice, 0);
      if (forme.side != Side::inner || find(forme.sheet, false) == nullptr) cells += forme.rows * forme.columns;
      if (cells > Scheme::most_cells) return fail(Problem::too_many_cells, Scheme::most_cells);
      while (static_cast<int>(sheets_.size()) <= forme.sheet) sheets_.push_back({});
      sheets_[static_cast<std::size_t>(forme.sheet)].rows = forme.rows;
      sheets_[static_cast<std::size_t>(forme.sheet)].columns = forme.columns;
    }
    for (auto const& sheet : sheets_)
      if (sheet.rows == 0) return fail(Problem::forme_not_whole, 0);
    return !sheets_.empty() || fail(Problem::forme_not_whole, 0);
  }

  /// Fills a cell from the page below it, the page above it, or both. `even`: rectos have even numbers.
  constexpr bool fill(GridCell& cell, SeenPage below, SeenPage above, bool even) {
    if (below.page && above.page) {
      auto const low = *below.page < *above.page ? *below.page : *above.page;
      if (*below.page + *above.page != 2 * low + 1) return fail(Problem::pages_not_backed, *below.page);
      cell.recto = low;
      cell.recto_down = *below.page == low;
    } else if (below.page || above.page) {
      auto const page = below.page ? *below.page : *above.page;
      bool const is_recto = (page % 2 == 0) == even;
      cell.recto = is_recto ? page : page - 1;
      cell.recto_down = is_recto == below.page.has_value();
    }
    cell.head = below.head ? below.head : above.head;
    return !below.head || !above.head || below.head == above.head || head_to_tail(below.page, above.page);
  }
  /// Tells of a page and the page on its back whose heads differ, by the number that is known.
  constexpr bool head_to_tail(std::optional<std::uint16_t> page, std::optional<std::uint16_t> back) {
    if (!page && !back) return fail(Problem::illegible_head_to_tail, 0);
    return fail(Problem::heads_not_backed, page ? *page : *back);
  }
  constexpr bool fill(SheetGrid& grid, int number, bool even) {
    auto const* const outer = find(number, false);
    auto const* const inner = find(number, true);
    grid.both_formes = outer != nullptr && inner != nullptr;
    grid.one_forme = outer != nullptr && outer->side == Side::only;
    for (int r = 0; r < grid.rows; ++r)
      for (int c = 0; c < grid.columns; ++c) {
        GridCell cell;
        auto const below = outer != nullptr ? page_of(*outer, r, c) : SeenPage{};
        auto const above = inner != nullptr ? page_of(*inner, r, grid.columns - 1 - c) : SeenPage{};
        if (!fill(cell, below, above, even)) return false;
        grid.cells.push_back(cell);
      }
    return true;
  }

  /// Returns true if the sheet of a single forme can have been turned about this axis: the other page of its leaf is on
  /// the back of each page, with its head at the same edge of the paper.
  constexpr bool is_backed(SheetGrid const& grid, Axis axis) {
    auto const page = [](GridCell const& cell) -> std::optional<std::uint16_t> {
      if (cell.recto == 0) return std::nullopt;
      return static_cast<std::uint16_t>(cell.recto + (cell.recto_down ? 0 : 1));
    };
    for (int r = 0; r < grid.rows; ++r)
      for (int c = 0; c < grid.columns; ++c) {
        auto const& here = grid.at(r, c);
        auto const& there = axis == Axis::far_near ? grid.at(r, grid.columns - 1 - c) : grid.at(grid.rows - 1 - r, c);
        bool const known = here.recto != 0 && there.recto != 0;
        if (known && (here.recto != there.recto || here.recto_down == there.recto_down))
          return fail(Problem::pages_not_backed, *page(here));
        if (here.head && there.head && (here.head == there.head) != (axis == Axis::far_near))
          return head_to_tail(page(here), page(there));
      }
    return true;
  }
  constexpr bool find_axis(SheetGrid& grid) {
    for (auto axis : {Axis::far_near, Axis::left_right})
      if (is_backed(grid, axis)) return grid.turned_about = axis, true;
    return false;
  }

  constexpr bool make(bool even) {
    for (std::size_t s = 0; s < sheets_.size(); ++s) {
      sheets_[s].cells.clear();
      if (!fill(sheets_[s], static_cast<int>(s), even)) return false;
      if (sheets_[s].one_forme && !find_axis(sheets_[s])) return false;
    }
    return true;
  }

public:
  constexpr explicit GridMaker(std::span<SeenForme const> formes) : formes_{formes} {}
  /// Returns the sheets. `even`: rectos have even numbers, which only matters for formes whose other forme is not
  /// given.
  constexpr Expected<std::vector<SheetGrid>> result(bool even = false) {
    if (shapes_agree() && make(even)) return static_cast<std::vector<SheetGrid>&&>(sheets_);
    return error_;
  }
};

/// Numbers the leaves of all sheets. Consecutive leaves of the book get consecutive numbers; between other leaves a
/// number is left out. Cells without a page are skipped.
constexpr int number_leaves(std::vector<SheetGrid>& sheets) {
  std::vector<int> rectos;
  for (auto const& sheet : sheets)
    for (auto const& cell : sheet.cells) {
      if (cell.recto == 0) continue;
      std::size_t at = 0; // at most a few hundred, mostly in runs
      while (at < rectos.size() && rectos[at] < cell.recto) ++at;
      if (at == rectos.size() || rectos[at] != cell.recto)
        rectos.insert(rectos.begin() + static_cast<std::ptrdiff_t>(at), cell.recto);
    }
  std::vector<int> keys;
  int key = 0;
  for (std::size_t i = 0; i < rectos.size(); ++i) {
    if (i > 0) key += rectos[i] == rectos[i - 1] + 2 ? 1 : 2;
    keys.push_back(key);
  }
  for (auto& sheet : sheets)
    for (auto& cell : sheet.cells) {
      auto const i = partition_point(rectos.size(), [&](std::size_t k) { return rectos[k] < cell.recto; });
      cell.key = cell.recto == 0 ? -1 : keys[i];
    }
  return key + 1;
}

/// Exchanges left and right of all sheets, as for a book that is read in the other direction.
constexpr void mirror(std::vector<SheetGrid>& sheets) {
  for (auto& sheet : sheets)
    for (int r = 0; r < sheet.rows; ++r)
      for (int c = 0; 2 * c + 1 < sheet.columns; ++c) {
        auto const kept = sheet.at(r, c);
        sheet.at(r, c) = sheet.at(r, sheet.columns - 1 - c);
        sheet.at(r, sheet.columns - 1 - c) = kept;
      }
}

} // namespace detail
} // namespace v0
} // namespace bifolium
