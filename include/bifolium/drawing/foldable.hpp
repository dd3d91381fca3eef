// SPDX-License-Identifier: MIT
/// A sheet to print on both sides, cut and fold. The front shows the sheet as it lies before the folder, with its inner
/// side up. The back shows its outer side, turned so that the two sides match. `Duplex` says how a printer turns the
/// page between the sides: about the long edge of the page, or about the short edge, for which the back is drawn the
/// other way up.
///
/// The front shows how to begin: the part that moves first is shaded, with an arrow to the place where it goes. Each
/// side shows what a real sheet has: the signature at the foot of the first leaves of a gathering, the place of the
/// catchword, chain lines, and a ring where a hand mould leaves its watermark. Crosses at the corners, the same on both
/// sides, show against the light whether the sides match.
#pragma once

#include <bifolium/drawing/detail/arrow.hpp>
#include <bifolium/drawing/detail/legend.hpp>
#include <bifolium/paper/mould.hpp>

namespace bifolium {
inline namespace v0 {

/// The paper of a printer: A4, or 8 1/2 x 11 inches.
enum class PageSize : std::uint8_t { a4, letter };
/// The edge of the page about which a printer turns it between front and back.
enum class Duplex : std::uint8_t { long_edge, short_edge };

/// The two sides of a page to print.
struct SheetToFold {
  std::string front, back; ///< front and back, each a whole SVG document
};

namespace detail {

/// Draws faint chain lines. They run across the long side of the sheet, so they show how the leaf lay in it. On a sheet
/// they are about 25 mm apart (common practice); eighteen lines on the long side keep this proportion.
inline void draw_chain_lines(Svg& svg, Panel const& panel, SheetLine const& lay) {
  int const lines = lay.part == PaperPart::whole ? 18 : 9;
  bool const far_near = lay.long_side == Axis::left_right;
  for (int i = 0; i < lines; ++i) {
    auto const along = (i + 0.5) / lines;
    if (far_near)
      svg.line(panel.at(0, along * panel.columns), panel.at(panel.rows, along * panel.columns),
               {.width = 0.1, .colour = "#aaa"}, "chain");
    else
      svg.line(panel.at(along * panel.rows, 0), panel.at(along * panel.rows, panel.columns),
               {.width = 0.1, .colour = "#aaa"}, "chain");
  }
}

inline void draw_register_marks(Svg& svg, double width, double height) {
  double const in = 6, arm = 2.5;
  for (double x : {in, width - in})
    for (double y : {in, height - in}) {
      svg.line({x - arm, y}, {x + arm, y}, {.width = 0.15}, "register");
      svg.line({x, y - arm}, {x, y + arm}, {.width = 0.15}, "register");
    }
}

/// Draws a faint ring at the watermark of a hand mould. If the paper was cut before printing, the watermark may be on
/// the other part.
inline void draw_mark_ring(Svg& svg, Panel const& panel, SheetLine const& lay, bool from_outer) {
  if (lay.part != PaperPart::whole || !hand_mould.watermark) return;
  bool const level = lay.long_side == Axis::left_right;
  auto const mark = *hand_mould.watermark;
  auto const x = level ? mark.along : mark.across, y = level ? mark.across : mark.along;
  Spot const at{panel.corner.x + (from_outer ? 1 - x : x) * panel.width, panel.corner.y + y * panel.height};
  auto const radius = (level ? panel.width : panel.height) * 0.04; // 18 mm on a sheet of 450 mm
  svg.open("watermark");
  svg.circle(at, radius, {.width = 0.3, .colour = "#aaa"});
  svg.close();
}

/// Draws the first fold of each piece, which is made on flat paper: the part that moves is shaded, and an arrow beside
/// the sheet points to its new place. The pictures of the steps show the later folds.
inline void draw_first_folds(Svg& svg, Panel const& panel, int sheet, std::vector<WalkedStep> const& steps) {
  std::vector<int> folded;
  for (auto const& walked : steps) {
    auto const& step = walked.step;
    bool seen = step.kind == Step::Kind::cut;
    for (int piece : folded) seen = seen || piece == step.piece;
    auto const pile = walked.before.pile(step.piece);
    if (seen || pile.front().sheet != sheet) continue;
    folded.push_back(step.piece);
    int near_row = 0, far_row = Scheme::most_cells, left = Scheme::most_cells, least = Scheme::most_cells, most = -1;
    for (auto const& layer : pile) {
      near_row = layer.row + 1 > near_row ? layer.row + 1 : near_row,
      far_row = layer.row < far_row ? layer.row : far_row;
      left = layer.column < left ? layer.column : left;
      if (!step.moves(layer.across(step.along))) continue;
      least = layer.across(step.along) < least ? layer.across(step.along) : least;
      most = layer.across(step.along) + 1 > most ? layer.across(step.along) + 1 : most;
      auto const corner = panel.at(layer.row, layer.column);
      svg.rectangle(corner, panel.cell_width(), panel.cell_height(), {.width = 0, .colour = "#e4e4e4"}, "moving",
                    "#e4e4e4");
    }
    bool const upright = step.along == Axis::far_near, at_far = far_row == 0, at_near = near_row == panel.rows;
    if (upright ? !at_far && !at_near : left != 0) continue; // no edge of the sheet is there for an arrow
    auto const middle = (least + most) / 2.0, other = 2.0 * step.line - middle;
    if (upright) {
      auto const y = at_near ? panel.corner.y + panel.height + 2 : panel.corner.y - 2;
      draw_bow(svg, {panel.at(0, middle).x, y}, {panel.at(0, other).x, y}, at_near ? -5 : 5, step.under);
    } else {
      auto const x = panel.corner.x - 2;
      draw_bow(svg, {x, panel.at(middle, 0).y}, {x, panel.at(other, 0).y}, 5, step.under);
    }
  }
}

/// Draws both sides of one sheet.
struct SheetToPrint {
  DrawnSheet const& drawn;
  std::vector<WalkedStep> const& steps;
  double width{}, height{};

  [[nodiscard]] std::string side(Facing seen, bool turned) const {
    bool const outer = seen == Facing::outer_paper;
    auto const name = drawing_title(drawn.scheme, drawn.sheet);
    Svg svg{width, height, "A sheet to fold: " + name + (outer ? ", back" : ", front"),
            outer ? "Printed paper, the outer side of the sheet: it lies down on the table when the folding begins."
                  : "Printed paper, the inner side of the sheet: it lies up when the folding begins, far edge away "
                    "from you."};
    draw_register_marks(svg, width, height);
    if (turned) svg.open_upside_down("turned", {width / 2, height / 2});
    auto const panel = panel_within({17, 23}, width - 34, height - 42, drawn.lay());
    std::string_view const side =
        outer ? "outer side: down when you begin" : "inner side: up when you begin, this edge away from you";
    svg.text({width / 2, 6.5}, name, {.size = Svg::size_within(name, 5, width - 34, true), .bold = true});
    svg.text({width / 2, 12.5}, side, {.size = Svg::size_within(side, 3.4, width - 34)});
    svg.open(outer ? "outer" : "inner");
    if (!outer) draw_first_folds(svg, panel, drawn.sheet, steps);
    draw_chain_lines(svg, panel, drawn.lay());
    draw_mark_ring(svg, panel, drawn.lay(), outer);
    svg.rectangle(panel.corner, panel.width, panel.height, {.width = 0.5}, "sheet");
    auto const corners = piece_corners(panel, drawn, seen);
    draw_pages(svg, panel, seen, drawn, corners);
    draw_marks(svg, panel, drawn.marks, drawn.sheet, outer);
    draw_piece_names(svg, panel, corners);
    svg.close();
    draw_legend(svg, {14, height - 9}, width > 250 ? 3.2 : 2.5);
    if (turned) svg.close();
    return static_cast<Svg&&>(svg).finish();
  }
};

} // namespace detail

/// Draws front and back of one sheet of a scheme, for a size of paper and a printer that turns the page as `duplex`
/// says. The page is laid so that the sheet is as large as possible. Sheets count from 0. Errors: those of `fold`.
/// Precondition: the scheme has the sheet.
inline Expected<SheetToFold> sheet_to_fold(Scheme const& scheme, int sheet = 0, PageSize size = PageSize::a4,
                                           Duplex duplex = Duplex::long_edge) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const formes = impose(*folded);
  auto const steps = walk(scheme);
  auto const marks = detail::sheet_marks(scheme, *steps);
  detail::DrawnSheet const drawn{scheme, *folded, formes, marks, sheet};
  bool const wide = detail::proportion(drawn.lay()) > 1;
  double const short_edge = size == PageSize::a4 ? 210 : 215.9, long_edge = size == PageSize::a4 ? 297 : 279.4;
  auto const width = wide ? long_edge : short_edge, height = wide ? short_edge : long_edge;
  // Turned about its upright edge, a page shows its back the same way up; turned about its level edge, upside down.
  bool const about_upright_edge = wide == (duplex == Duplex::short_edge);
  detail::SheetToPrint const printed{drawn, *steps, width, height};
  return SheetToFold{printed.side(detail::Facing::inner_paper, false),
                     printed.side(detail::Facing::outer_paper, !about_upright_edge)};
}

} // namespace v0
} // namespace bifolium
