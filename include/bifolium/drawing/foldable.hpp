// SPDX-License-Identifier: MIT
/// A sheet to print on both sides, cut and fold: the front shows the sheet as it lies before the folder, inner side up;
/// the back is its outer side, so turned that the two register. How a printer turns the page between the sides is told
/// by `Duplex`: about the page's long edge, or about its short edge, which shows the back the other way up.
///
/// Beside page numbers, creases and cuts it has what a sheet really carries: the signature at the foot of the first
/// leaves of a gathering, the place of the catchword, chain lines. Corner marks, the same on both sides, show against
/// the light whether the sides register.
#pragma once

#include <bifolium/drawing/detail/panel.hpp>

namespace bifolium {
inline namespace v0 {

/// The paper a printer takes: A4, or 8 1/2 x 11 inches.
enum class PageSize : std::uint8_t { a4, letter };
/// The edge of the page about which a printer turns it between front and back.
enum class Duplex : std::uint8_t { long_edge, short_edge };

/// The two sides of a page to print.
struct SheetToFold {
  std::string front, back; ///< the two sides, each a whole SVG
};

namespace detail {

/// Where one corner of a leaf is on the panel: the direction of its foot, and whether its fore-edge is on the right.
struct LeafOnPanel {
  LeafAt at;
  ImposedPage standing;
  bool recto{};
};

inline LeafOnPanel leaf_on_panel(DrawnSheet const& drawn, Facing seen, int row, int column) {
  auto const home = seen == Facing::outer_paper ? drawn.lay().columns - 1 - column : column;
  auto const at = drawn.fold.leaf_at(drawn.sheet, row, home);
  auto const standing = drawn.standing(seen, row, column);
  return {at, standing, (standing.page - drawn.fold.first_page(at.gathering)) % 2 == 0};
}

/// Signature and catchword at the foot of a page. Signed are the first leaves of a gathering up to its middle, the usual
/// way (common practice; printers signed one more, or fewer). The catchword stands under the last word of the page.
inline void draw_direction_line(Svg& svg, Panel const& panel, DrawnSheet const& drawn, Facing seen, int row,
                                int column) {
  auto const leaf = leaf_on_panel(drawn, seen, row, column);
  bool const down = leaf.standing.head == Head::near, rtl = drawn.fold.reads() == Reads::right_to_left;
  auto const size = panel.least() * 0.1 < 4 ? panel.least() * 0.1 : 4;
  auto const foot = panel.at(row + (down ? 0.17 : 0.83), column + 0.5);
  auto const number = leaf.at.leaf.number(), leaves = leaf.at.leaf.leaves();
  if (leaf.recto && number <= (leaves + 1) / 2) {
    std::string signature{drawn.scheme.gathering(leaf.at.gathering).name.view()};
    if (number > 1) signature += std::to_string(number);
    svg.text({foot.x, foot.y}, signature, {.size = size, .turned = down ? 180 : 0, .kind = "signature"});
  }
  // A rule stands for the catchword: at the end of the direction line, on the right of the page, left when read so.
  bool const right = down == rtl;
  auto const end = foot.x + (right ? 0.42 : -0.42) * panel.cell_width(), length = 0.16 * panel.cell_width();
  svg.line({end, foot.y}, {end + (right ? -length : length), foot.y}, {.width = 0.5, .colour = "#777"}, "catchword");
}

/// Chain lines, faint: they run across the long side of the sheet, so they show how the leaf lay in it. On the sheet they
/// are some 25 mm apart (common practice); here eighteen to the long side keeps that in proportion.
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

inline std::string side_to_print(DrawnSheet const& drawn, Facing seen, double width, double height, bool turned) {
  bool const outer = seen == Facing::outer_paper;
  auto const name = drawing_title(drawn.scheme, drawn.sheet);
  Svg svg{
      width, height, "A sheet to fold: " + name + (outer ? ", back" : ", front"),
      outer
          ? "Printed paper, the outer side of the sheet: it lies down on the table when the folding begins."
          : "Printed paper, the inner side of the sheet: it lies up when the folding begins, far edge away from you."};
  draw_register_marks(svg, width, height);
  if (turned) svg.open_upside_down("turned", {width / 2, height / 2});
  auto const panel = panel_within({10, 12}, width - 20, height - 24, drawn.lay());
  auto const heading = (outer ? "printed paper, outer side (down when you begin): "
                              : "printed paper, inner side (up when you begin; this edge away from you): ") +
                       name;
  svg.text({width / 2, 6}, heading, {.size = Svg::size_within(heading, 2.8, width - 26)});
  svg.open(outer ? "outer" : "inner");
  draw_chain_lines(svg, panel, drawn.lay());
  svg.rectangle(panel.corner, panel.width, panel.height, {.width = 0.5}, "sheet");
  for (int r = 0; r < panel.rows; ++r)
    for (int c = 0; c < panel.columns; ++c) {
      draw_page_number(svg, panel, r, c, drawn.standing(seen, r, c), drawn.digits());
      draw_direction_line(svg, panel, drawn, seen, r, c);
    }
  draw_marks(svg, panel, drawn.marks, drawn.sheet, outer);
  draw_piece_names(svg, panel, drawn.scheme, drawn.fold, drawn.sheet, outer);
  svg.close();
  svg.text({width / 2, height - 6},
           "heavy line: cut; broken line: fold, hollow here; with points: ridge here. First cut the sheet out along "
           "its frame.",
           {.size = 2.5});
  if (turned) svg.close();
  return static_cast<Svg&&>(svg).finish();
}

} // namespace detail

/// Front and back of one sheet of a scheme for paper of a size and a printer that turns it so. The page is laid the way
/// that makes the sheet largest. Sheets count from 0. error: as `fold`. pre: a sheet of the scheme.
inline Expected<SheetToFold> sheet_to_fold(Scheme const& scheme, int sheet = 0, PageSize size = PageSize::a4,
                                           Duplex duplex = Duplex::long_edge) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const formes = impose(*folded);
  auto const marks = sheet_marks(scheme);
  detail::DrawnSheet const drawn{scheme, *folded, formes, marks, sheet};
  bool const wide = detail::proportion(drawn.lay()) > 1;
  double const short_edge = size == PageSize::a4 ? 210 : 215.9, long_edge = size == PageSize::a4 ? 297 : 279.4;
  auto const width = wide ? long_edge : short_edge, height = wide ? short_edge : long_edge;
  // Turned about its upright edge a page shows its back the same way up, turned about the level edge upside down.
  bool const about_upright_edge = wide == (duplex == Duplex::short_edge);
  return SheetToFold{detail::side_to_print(drawn, detail::Facing::inner_paper, width, height, false),
                     detail::side_to_print(drawn, detail::Facing::outer_paper, width, height, !about_upright_edge)};
}

} // namespace v0
} // namespace bifolium
