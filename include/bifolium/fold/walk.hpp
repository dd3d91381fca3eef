// SPDX-License-Identifier: MIT
/// A scheme carried out step by step: for each step the paper before and after it, the two parts at the crease, and the
/// sides of leaves that come to lie against one another. Code that explains, draws or animates a folding uses these
/// values; `Fold` has only the result.
#pragma once

#include <bifolium/fold/fold.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {

/// One side of one cell of a flat sheet, on which a page is printed.
struct CellSide {
  std::uint8_t sheet{};  ///< the sheet, from 0
  std::uint8_t row{};    ///< from the far edge, from 0
  std::uint8_t column{}; ///< from the left as the sheet lies with its outer side down, from 0
  bool outer{};          ///< true for the side that lay on the type of the outer (or only) forme
  friend constexpr bool operator==(CellSide, CellSide) = default;
};

/// Returns the upper side of a layer as it lies.
constexpr CellSide upper_side(Layer const& layer) noexcept {
  return {layer.sheet, layer.home_row, layer.home_column, layer.outer_up};
}
/// Returns the lower side of a layer as it lies.
constexpr CellSide lower_side(Layer const& layer) noexcept {
  return {layer.sheet, layer.home_row, layer.home_column, !layer.outer_up};
}

/// Two sides that lie against each other because of one fold.
struct Meeting {
  CellSide moved; ///< the side on the part that was turned over
  CellSide kept;  ///< the side on the part that stayed
  friend constexpr bool operator==(Meeting, Meeting) = default;
};

/// One cut or fold, and the paper before and after it.
struct WalkedStep {
  int number{};  ///< the number of the step, from 0, as in `Scheme::step`
  Step step{};   ///< the step: the piece, the line, the part that moves, and whether it goes underneath
  Layers before; ///< the paper before the step
  Layers after;  ///< the paper after the step

  /// Returns the width of the far (or left) part in leaves, counted from the cut or crease.
  [[nodiscard]] constexpr int far_or_left_extent() const { return extent(true); }
  /// Returns the width of the near (or right) part in leaves, counted from the cut or crease.
  [[nodiscard]] constexpr int near_or_right_extent() const { return extent(false); }
  /// Returns true if the cut or crease runs through the middle of the piece as it lay.
  [[nodiscard]] constexpr bool halves() const { return extent(true) == extent(false); }
  /// Returns the pairs of sides that the fold brought together, in the order of the cells of the part that stayed. The
  /// result is empty for a cut. The function allocates memory.
  [[nodiscard]] constexpr std::vector<Meeting> meetings() const;

private:
  [[nodiscard]] constexpr int extent(bool far_or_left) const {
    int most = 0;
    for (auto const& layer : before.pile(step.piece)) {
      auto const at = layer.across(step.along);
      auto const wide = far_or_left ? step.line - at : at + 1 - step.line;
      most = wide > most ? wide : most;
    }
    return most;
  }
};

constexpr std::vector<Meeting> WalkedStep::meetings() const {
  std::vector<Meeting> met;
  if (step.kind == Step::Kind::cut) return met;
  auto const pile = after.pile(step.piece);
  auto const moved = [&](Layer const& layer) {
    auto const was = before.find(layer.sheet, layer.home_row, layer.home_column);
    return step.moves(was->layer.across(step.along));
  };
  auto const order = [](CellSide side) { return (side.sheet * 256 + side.row) * 256 + side.column; };
  for (std::size_t low = 0; low < pile.size(); ++low)
    for (auto high = low + 1; high < pile.size(); ++high) { // the next layer at the same place lies on this one
      auto const &lower = pile[low], &upper = pile[high];
      if (lower.row != upper.row || lower.column != upper.column) continue;
      bool const upper_moved = moved(upper);
      if (moved(lower) == upper_moved) break;
      Meeting const here =
          upper_moved ? Meeting{lower_side(upper), upper_side(lower)} : Meeting{upper_side(lower), lower_side(upper)};
      auto at = met.end();
      while (at != met.begin() && order(here.kept) < order((at - 1)->kept)) --at;
      met.insert(at, here);
      break;
    }
  return met;
}

/// Carries out a scheme. Returns one value for each step, in order; the result is empty for a scheme without steps. The
/// function allocates memory. Error: line_outside_piece, with the line of the scheme, if a crease is not inside the
/// piece in its present position.
constexpr Expected<std::vector<WalkedStep>> walk(Scheme const& scheme) {
  std::vector<WalkedStep> steps;
  Layers paper{scheme};
  for (int i = 0; i < scheme.steps(); ++i) {
    auto const before = paper;
    if (!paper.take(scheme.step(i))) return detail::crease_misses(scheme.step(i));
    steps.push_back({i, scheme.step(i), before, paper});
  }
  return steps;
}

/// Returns the page printed on one side of a cell, with its number in the scheme. Precondition: the fold has this cell.
template <int N> constexpr int page_on(Fold<N> const& fold, CellSide side) {
  auto const pages = fold.pages_of(fold.leaf_at(side.sheet, side.row, side.column));
  return side.outer ? pages.outer() : pages.inner();
}

} // namespace v0
} // namespace bifolium
