// SPDX-License-Identifier: MIT
/// Makes a fold of a scheme. The steps are carried out one by one, each packet is read as a book is held, and packets
/// are set one inside another. The result is checked: leaves are joined to their conjugates, copies are equal, and no
/// page is twice in a forme. A mistake is an error with the line of the scheme that caused it.
#pragma once

#include <bifolium/fold/fold.hpp>
#include <bifolium/fold/layers.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Carries out a scheme and builds the fold, or finds the reason why it is not one.
class Folder {
  Scheme const& scheme_;
  Layers layers_;
  Fold<> fold_{};
  Error error_{};
  std::array<std::uint8_t, Scheme::most_pieces> spine_line_{}, spine_step_{}; // of the last far-near crease

  constexpr bool fail(Problem problem, SourcePlace place, std::string_view found = {}, std::int64_t limit = 0) {
    error_ = error_in_scheme(problem, place, found, limit);
    return false;
  }

  constexpr bool take_steps() {
    for (int i = 0; i < scheme_.steps(); ++i) {
      auto const& step = scheme_.step(i);
      if (!layers_.take(step)) return error_ = crease_misses(step), false;
      if (step.kind == Step::Kind::fold && step.along == Axis::far_near) {
        spine_line_[step.piece] = step.line;
        spine_step_[step.piece] = static_cast<std::uint8_t>(i + 1);
      }
    }
    return true;
  }

  /// Sets `turned_over` to true if the packet must be turned over to be read.
  constexpr bool packet(Placed const& placed, bool& turned_over) {
    auto const name = scheme_.piece_name(placed.piece).view();
    auto const leaves = layers_.count(placed.piece);
    auto const& bottom = layers_.layer(placed.piece, 0);
    int most_apart = 0;
    for (int i = 1; i < leaves; ++i) {
      auto const& layer = layers_.layer(placed.piece, i);
      for (auto apart : {layer.row - bottom.row, layer.column - bottom.column}) {
        apart = apart < 0 ? -apart : apart;
        most_apart = apart > most_apart ? apart : most_apart;
      }
    }
    if (most_apart != 0) return fail(Problem::not_folded_up, placed.place, name, most_apart + 1);
    if (leaves == 1) return turned_over = !placed.recto_inner, true;
    if (spine_step_[placed.piece] == 0) return fail(Problem::no_spine, placed.place, name);
    bool const spine_right = bottom.column < spine_line_[placed.piece];
    bool const spine_at_hand = spine_right == (scheme_.reads() == Reads::right_to_left);
    turned_over = spine_at_hand == placed.heads_near;
    return true;
  }

  constexpr void lay_down(int leaf, Placed const& placed, Layer const& layer, bool turned_over) {
    // If the packet is turned over, the reader meets the undersides first.
    bool const recto_down = turned_over != layer.outer_up;
    bool const head_far = placed.heads_near == layer.end_for_end;
    auto const at = static_cast<std::size_t>(leaf);
    fold_.cells_[at] = {layer.sheet, layer.home_row, layer.home_column, placed.piece, recto_down, head_far};
    auto const cell =
        fold_.first_cell_[layer.sheet] + layer.home_row * fold_.sheets_[layer.sheet].columns + layer.home_column;
    fold_.leaf_of_[static_cast<std::size_t>(cell)] = static_cast<std::uint8_t>(leaf);
  }

  /// Returns true if two cells are joined at the gutter of both.
  [[nodiscard]] constexpr bool joined(Cell a, Cell b) const {
    auto const right = [&](Cell c) { return (c.recto_down == c.head_far) == (fold_.reads_ == Reads::left_to_right); };
    auto const& left_one = a.column < b.column ? a : b;
    auto const& right_one = a.column < b.column ? b : a;
    return a.sheet == b.sheet && a.piece == b.piece && a.row == b.row && left_one.column + 1 == right_one.column &&
           right(left_one) && !right(right_one);
  }

  constexpr bool gather(GatheringLine const& line) {
    int leaves = 0;
    for (int i = 0; i < line.count; ++i) leaves += layers_.count(scheme_.placed(line.first + i).piece);
    int front = fold_.leaf_count_, back = front + leaves;
    std::size_t const number = fold_.gathering_count_;
    int first_page = line.first_page.value_or(0);
    if (!line.first_page) {
      auto const above = number == 0 ? FoldedGathering{0, 0, 1} : fold_.gatherings_[number - 1];
      first_page = above.first_page + 2 * above.leaves;
    }
    fold_.gatherings_[number] = {fold_.leaf_count_, static_cast<std::uint8_t>(leaves),
                                 static_cast<std::uint16_t>(first_page)};
    fold_.leaf_count_ = static_cast<std::uint8_t>(fold_.leaf_count_ + leaves);
    ++fold_.gathering_count_;

    bool goes_after = false;
    for (int i = 0; i < line.count; ++i) {
      auto const& placed = scheme_.placed(line.first + i);
      bool turned_over{};
      if (!packet(placed, turned_over)) return false;
      auto const n = layers_.count(placed.piece);
      auto const after = goes_after ? 1 : n / 2; // the others go before the pieces inside
      back -= after;
      auto const position = [&](int k) { return k < n - after ? front + k : back + k - (n - after); };
      for (int k = 0; k < n; ++k)
        lay_down(position(k), placed, layers_.layer(placed.piece, turned_over ? k : n - 1 - k), turned_over);
      for (int k = 0; n > 1 && k < n / 2; ++k)
        if (!joined(cell(position(k)), cell(position(n - 1 - k))))
          return fail(Problem::leaves_not_conjugate, scheme_.step(spine_step_[placed.piece] - 1).place,
                      scheme_.piece_name(placed.piece).view(), k + 1);
      front += n - after;
      goes_after = placed.opens_pair;
    }
    return true;
  }
  [[nodiscard]] constexpr Cell cell(int leaf) const { return fold_.cells_[static_cast<std::size_t>(leaf)]; }

  /// Checks that gatherings with common pages are copies of each other, and that no forme has a page twice.
  constexpr bool copies_agree() {
    for (std::size_t g = 1; g < fold_.gathering_count_; ++g)
      for (std::size_t h = 0; h < g; ++h) {
        auto const &a = fold_.gatherings_[g], &b = fold_.gatherings_[h];
        auto const first = a.first_page > b.first_page ? a.first_page : b.first_page;
        auto const end_a = a.first_page + 2 * a.leaves, end_b = b.first_page + 2 * b.leaves;
        auto const end = end_a < end_b ? end_a : end_b;
        if (first >= end) continue;
        auto const& line = scheme_.gathering(static_cast<int>(g));
        bool const other_make = a.first_page == b.first_page && a.leaves != b.leaves;
        if (other_make || (a.first_page - b.first_page) % 2 != 0)
          return fail(Problem::copies_differ, line.place, line.name.view(), first);
        for (auto page = first; page < end; page = page + 2) {
          auto const one = cell(a.first + (page - a.first_page) / 2), other = cell(b.first + (page - b.first_page) / 2);
          if (one.sheet == other.sheet && one.recto_down == other.recto_down)
            return fail(Problem::page_twice_in_forme, line.place, {}, page);
        }
      }
    return true;
  }

  [[nodiscard]] constexpr LeafPages pages(int leaf) const {
    std::size_t g = 0;
    while (leaf >= fold_.gatherings_[g].first + fold_.gatherings_[g].leaves) ++g;
    return {fold_.gatherings_[g].first_page + 2 * (leaf - fold_.gatherings_[g].first), cell(leaf).recto_down};
  }

  /// If one forme prints both sides, checks that the second impression puts the other page of each leaf on its back.
  constexpr bool second_impressions_agree() {
    for (std::size_t s = 0; s < fold_.sheet_count_; ++s) {
      auto const& lay = fold_.sheets_[s];
      if (!lay.one_forme) continue;
      bool const sideways = lay.turned_about == Axis::far_near;
      for (int r = 0; r < lay.rows; ++r)
        for (int c = 0; c < lay.columns; ++c) {
          auto const at = [&](int row, int column) {
            return int{fold_.leaf_of_[static_cast<std::size_t>(fold_.first_cell_[s] + row * lay.columns + column)]};
          };
          auto const here = at(r, c);
          auto const there = sideways ? at(r, lay.columns - 1 - c) : at(lay.rows - 1 - r, c);
          auto const page = pages(here).inner();
          if (pages(there).outer() != page)
            return fail(Problem::backed_by_other_leaf, lay.place, {}, pages(here).outer());
          // turned sideways, the heads keep their direction; turned end over end, they exchange it
          if ((cell(there).head_far == cell(here).head_far) != sideways)
            return fail(Problem::backed_head_to_tail, lay.place, {}, pages(here).outer());
        }
    }
    return true;
  }

  constexpr bool whole() {
    fold_.reads_ = scheme_.reads();
    fold_.format_ = scheme_.format();
    int cells = 0;
    for (int s = 0; s < scheme_.sheets(); ++s) {
      auto const& sheet = scheme_.sheet(s);
      fold_.sheets_[fold_.sheet_count_] = sheet;
      fold_.first_cell_[fold_.sheet_count_++] = static_cast<std::uint8_t>(cells);
      cells += sheet.rows * sheet.columns;
    }
    if (!take_steps()) return false;
    for (int g = 0; g < scheme_.gatherings(); ++g)
      if (!gather(scheme_.gathering(g))) return false;
    return copies_agree() && second_impressions_agree();
  }

public:
  constexpr explicit Folder(Scheme const& scheme) : scheme_{scheme}, layers_{scheme} {}
  constexpr Expected<Fold<>> result() {
    if (whole()) return fold_;
    return error_;
  }
};

namespace compiled {
Expected<Fold<>> fold(Scheme const& scheme);
}
} // namespace detail

constexpr Expected<Fold<>> fold(Scheme const& scheme) {
  BIFOLIUM_WHEN_RUN(detail::compiled::fold(scheme));
  return detail::Folder{scheme}.result();
}

} // namespace v0
} // namespace bifolium
