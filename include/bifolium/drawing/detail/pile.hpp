// SPDX-License-Identifier: MIT
/// Draws the paper on the table at one moment, from above: the pages that are on top, the edges of the layers below
/// them, and - before a step - the part that will move, its crease or cut, and its new place.
#pragma once

#include <bifolium/drawing/detail/arrow.hpp>
#include <bifolium/drawing/detail/panel.hpp>

#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// The part of the table that is shown, in cells of the flat sheet, and its scale.
struct TableView {
  int first_row{Scheme::most_cells}, end_row{-Scheme::most_cells};
  int first_column{Scheme::most_cells}, end_column{-Scheme::most_cells};
  Spot corner{};
  double cell_width{}, cell_height{}, gap{}; ///< gap: the gap in mm that a cut has just opened
  Axis gap_along{};
  int gap_line{};

  void take_in(Layers const& paper, int piece) {
    for (auto const& layer : paper.pile(piece)) {
      first_row = layer.row < first_row ? layer.row : first_row,
      end_row = layer.row >= end_row ? layer.row + 1 : end_row;
      first_column = layer.column < first_column ? layer.column : first_column;
      end_column = layer.column >= end_column ? layer.column + 1 : end_column;
    }
  }
  [[nodiscard]] double width() const { return (end_column - first_column) * cell_width; }
  [[nodiscard]] double height() const { return (end_row - first_row) * cell_height; }
  [[nodiscard]] Spot at(double row, double column) const {
    auto const apart = [&](Axis along, double place) { return gap_along == along && place >= gap_line ? gap : 0; };
    return {corner.x + (column - first_column) * cell_width + apart(Axis::far_near, column),
            corner.y + (row - first_row) * cell_height + apart(Axis::left_right, row)};
  }
};

/// Returns one side of a layer as a page: the number, and whether it lies upside down for the viewer.
inline ImposedPage page_up(Fold<> const& fold, Layer const& layer) {
  auto const side = upper_side(layer);
  bool const head_far = fold.cell(fold.leaf_at(side.sheet, side.row, side.column)).head_far;
  return {static_cast<std::uint16_t>(page_on(fold, side)),
          head_far != layer.end_for_end ? Head::far_edge : Head::near_edge};
}

/// Draws a piece as it lies. The part that the step `next` will move is shaded.
inline void draw_pile(Svg& svg, TableView const& view, DrawnSheet const& drawn, Layers const& paper, int piece,
                      Step const* next) {
  auto const pile = paper.pile(piece);
  constexpr int edges_shown = 4;
  constexpr double edge = 0.55;
  auto const count_at = [&](Layer const& place) {
    int count = 0;
    for (auto const& layer : pile) count += layer.row == place.row && layer.column == place.column ? 1 : 0;
    return count;
  };
  for (auto const& layer : pile) {
    auto const below = count_at(layer) - 1;
    for (int i = below < edges_shown ? below : edges_shown; i > 0; --i) {
      auto const corner = view.at(layer.row, layer.column);
      svg.rectangle({corner.x + i * edge, corner.y + i * edge}, view.cell_width, view.cell_height, {.width = 0.15},
                    "edge", "white");
    }
  }
  for (std::size_t i = 0; i < pile.size(); ++i) {
    auto const& layer = pile[i];
    bool covered = false;
    for (auto above = i + 1; above < pile.size(); ++above)
      covered = covered || (pile[above].row == layer.row && pile[above].column == layer.column);
    if (covered) continue;
    bool const moves = next != nullptr && next->kind == Step::Kind::fold && next->moves(layer.across(next->along));
    auto const page = page_up(drawn.fold, layer);
    auto const leaf = drawn.leaf_name(drawn.fold.leaf_at(layer.sheet, layer.home_row, layer.home_column));
    auto const place = drawn.place_name(page.page);
    svg.open("cell", {page.page, leaf, place});
    svg.rectangle(view.at(layer.row, layer.column), view.cell_width, view.cell_height, {.width = 0.3},
                  moves ? "moving" : "up", moves ? "#dcdcdc" : "white");
    Panel const cell{view.at(layer.row, layer.column), view.cell_width, view.cell_height, 1, 1};
    if (cell.least() > 5) draw_page_number(svg, cell, 0, 0, page, drawn.digits());
    svg.close();
  }
}

/// Draws the line of a step over its piece, and the arrow beside it.
inline void draw_step_line(Svg& svg, TableView const& view, WalkedStep const& walked) {
  auto const& step = walked.step;
  bool const upright = step.along == Axis::far_near;
  auto const from = upright ? view.at(view.first_row, step.line) : view.at(step.line, view.first_column);
  auto const to = upright ? view.at(view.end_row, step.line) : view.at(step.line, view.end_column);
  if (step.kind == Step::Kind::cut) return svg.line(from, to, {.width = 1.4}, "cut");
  svg.line(from, to, {.width = 0.7, .breaks = "3 1.8"}, "crease");
  auto const wide = step.far_or_left_moves ? walked.far_or_left_extent() : walked.near_or_right_extent();
  auto const middle = step.line + (step.far_or_left_moves ? -0.5 : 0.5) * wide, other = 2 * step.line - middle;
  constexpr double off = 1.5, high = 4;
  if (upright)
    draw_bow(svg, {view.at(0, middle).x, view.at(view.first_row, 0).y - off},
             {view.at(0, other).x, view.at(view.first_row, 0).y - off}, high, step.under);
  else
    draw_bow(svg, {view.at(0, view.first_column).x - off, view.at(middle, 0).y},
             {view.at(0, view.first_column).x - off, view.at(other, 0).y}, high, step.under);
}

} // namespace detail
} // namespace v0
} // namespace bifolium
