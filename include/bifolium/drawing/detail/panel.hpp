// SPDX-License-Identifier: MIT
/// What all drawings of a sheet share: a grid of leaves with page numbers, cuts, creases and the names of the pieces.
///
/// The marks: a frame is a page of type; its figure lies the way the page lies, with a rule at its foot, since 6 and 9 or
/// 8 and 11 do not show which way up they are. A broken line is a crease, a heavy one a cut; the figure in a circle is
/// its turn in the work. Nothing is told by colour, and no figure is ever mirrored.
#pragma once

#include <bifolium/drawing/detail/creases.hpp>
#include <bifolium/drawing/svg.hpp>
#include <bifolium/imposition/imposition.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// The rectangle in which a sheet is drawn.
struct Panel {
  Spot corner{};
  double width{}, height{};
  int rows{}, columns{};
  [[nodiscard]] double cell_width() const { return width / columns; }
  [[nodiscard]] double cell_height() const { return height / rows; }
  [[nodiscard]] double least() const { return cell_width() < cell_height() ? cell_width() : cell_height(); }
  [[nodiscard]] Spot at(double row, double column) const {
    return {corner.x + column * cell_width(), corner.y + row * cell_height()};
  }
};

/// Width over height of what goes to press, of paper of the proportion 1 : 1.43 (the Bologna stone's chancery sheet is
/// 315 x 450 mm, the median of the four).
inline double proportion(SheetLine const& lay) {
  double const long_side = lay.part == PaperPart::whole ? 1.43 : 1.43 / 2;
  double const short_side = lay.part == PaperPart::quarter ? 0.5 : 1;
  return lay.long_side == Axis::left_right ? long_side / short_side : short_side / long_side;
}

/// The largest panel of that proportion in the middle of a frame.
inline Panel panel_within(Spot corner, double width, double height, SheetLine const& lay) {
  auto const wanted = proportion(lay);
  double const w = width / height > wanted ? height * wanted : width, h = w / wanted;
  return {{corner.x + (width - w) / 2, corner.y + (height - h) / 2}, w, h, lay.rows, lay.columns};
}

/// The figure of a page, lying the way its type lies, with the rule at its foot.
/// All figures of a panel are of one size, that of the longest number, `digits` long.
inline void draw_page_number(Svg& svg, Panel const& panel, int row, int column, ImposedPage standing,
                             std::size_t digits) {
  auto const middle = panel.at(row + 0.5, column + 0.5);
  auto const number = std::to_string(standing.page);
  auto const by_width = panel.cell_width() * 0.48 / (Svg::figure_width * static_cast<double>(digits));
  auto const by_height = panel.cell_height() * 0.4;
  auto const size = by_width < by_height ? (by_width < 12 ? by_width : 12) : by_height < 12 ? by_height : 12;
  bool const down = standing.head == Head::near;
  svg.text(middle, number, {.size = size, .turned = down ? 180 : 0, .kind = "page"});
  auto const foot = middle.y + (down ? -1 : 1) * size * (Svg::figure_height / 2 + 0.16);
  auto const half = size * Svg::figure_width * static_cast<double>(number.size()) / 2;
  svg.line({middle.x - half, foot}, {middle.x + half, foot}, {.width = size / 20}, "foot");
}

inline void draw_type(Svg& svg, Panel const& panel, int row, int column) {
  auto const margin = panel.least() * 0.11;
  auto const corner = panel.at(row, column);
  svg.rectangle({corner.x + margin, corner.y + margin}, panel.cell_width() - 2 * margin,
                panel.cell_height() - 2 * margin, {.width = 0.2, .colour = "#777"}, "type");
}

/// Cuts and creases of one sheet; seen from its outer side the columns run the other way and hollows are ridges.
/// Where the leaves are too small for figures that can be read, the turns are left to the words.
inline void draw_marks(Svg& svg, Panel const& panel, std::vector<SheetMark> const& marks, int sheet, bool from_outer) {
  auto const scale = panel.least() < 16 ? panel.least() / 16 : 1;
  auto const breaks = [&](double a, double b, double c, double d) {
    return svg_number(a * scale)
        .append(" ")
        .append(svg_number(b * scale))
        .append(" ")
        .append(svg_number(c * scale))
        .append(" ")
        .append(svg_number(d * scale));
  };
  auto const hollows = breaks(2.4, 1.2, 2.4, 1.2), ridges = breaks(2.4, 1, 0.5, 1);
  for (auto const& mark : marks) {
    if (mark.sheet != sheet) continue;
    bool const upright = mark.along == Axis::far_near;
    auto const place = [&](double along) {
      auto const column = upright ? double(mark.line) : along, row = upright ? along : double(mark.line);
      return panel.at(row, from_outer ? panel.columns - column : column);
    };
    bool const hollow = mark.hollow_on_inner != from_outer;
    if (mark.kind == Step::Kind::cut)
      svg.line(place(mark.from), place(mark.to), {.width = 0.9 * scale}, "cut");
    else
      svg.line(place(mark.from), place(mark.to), {.width = 0.35 * scale, .breaks = hollow ? hollows : ridges},
               "crease");
  }
  auto const radius = panel.least() * 0.12 < 2.4 ? panel.least() * 0.12 : 2.4;
  if (radius < 1.1) return;
  for (auto const& mark : marks) {
    if (mark.sheet != sheet) continue;
    bool const upright = mark.along == Axis::far_near;
    auto const column = upright ? double(mark.line) : mark.from + 0.5,
               row = upright ? mark.from + 0.5 : double(mark.line);
    auto const middle = panel.at(row, from_outer ? panel.columns - column : column);
    auto const number = std::to_string(mark.step + 1);
    svg.circle(middle, radius, {.width = 0.2}, "white");
    svg.text(middle, number, {.size = radius * (number.size() > 1 ? 1.15 : 1.5), .kind = "turn"});
  }
}

/// The name of each piece that the knife makes, small in its far left corner; an off-cut that is inset says so.
inline void draw_piece_names(Svg& svg, Panel const& panel, Scheme const& scheme, Fold<> const& fold, int sheet,
                             bool from_outer) {
  if (scheme.pieces() == scheme.sheets()) return;
  for (int g = 0; g < scheme.gatherings(); ++g)
    for (int k = 0; k < scheme.gathering(g).count; ++k) {
      auto const piece = scheme.placed(scheme.gathering(g).first + k).piece;
      int row = Scheme::most_cells, column = from_outer ? -1 : Scheme::most_cells;
      for (int r = 0; r < panel.rows; ++r)
        for (int c = 0; c < panel.columns; ++c)
          if (fold.cell(fold.leaf_at(sheet, r, c)).piece == piece) {
            row = r < row ? r : row;
            column = (c < column) != from_outer ? c : column;
          }
      if (row == Scheme::most_cells) continue;
      auto const corner = panel.at(row, from_outer ? panel.columns - 1 - column : column);
      auto const size = panel.least() * 0.09 < 2.6 ? panel.least() * 0.09 : 2.6;
      if (size < 1.1) return;
      std::string name{scheme.piece_name(piece).view()};
      // Half a leaf is free before the circle of the line above.
      auto const room = panel.cell_width() / 2 - panel.least() * 0.12 - size;
      if (k > 0 && static_cast<double>(name.size() + 7) * size * 0.56 < room) name += ", inset";
      svg.text({corner.x + size * 0.6, corner.y + size * 0.9}, name,
               {.size = size, .anchor = Anchor::start, .italic = true, .kind = "piece"});
    }
}

/// How a panel is seen: type on the stone, paper from its outer side, paper from its inner side as it lies to be folded.
enum class Facing : std::uint8_t { outer_type, inner_type, outer_paper, inner_paper };

/// One sheet of a scheme with all that is drawn of it.
struct DrawnSheet {
  Scheme const& scheme;
  Fold<> const& fold;
  Imposition<> const& formes;
  std::vector<SheetMark> const& marks;
  int sheet{};

  /// Figures of the longest page number.
  [[nodiscard]] std::size_t digits() const {
    int last = 0;
    for (int g = 0; g < fold.gatherings(); ++g) {
      auto const end = fold.first_page(g) + fold.gathering(g).pages() - 1;
      last = end > last ? end : last;
    }
    return std::to_string(last).size();
  }
  [[nodiscard]] SheetLine const& lay() const { return formes.sheet(sheet); }
  /// The page at a place of the panel. In one-forme work the second impression is the first after turning the sheet.
  [[nodiscard]] ImposedPage standing(Facing seen, int row, int column) const {
    auto const mirrored = lay().columns - 1 - column;
    switch (seen) {
    case Facing::outer_type:
      return formes.outer(row, column, sheet);
    case Facing::inner_type:
      return formes.inner(row, column, sheet);
    case Facing::outer_paper:
      return formes.outer(row, mirrored, sheet);
    case Facing::inner_paper:
      break;
    }
    if (!lay().one_forme) return formes.inner(row, mirrored, sheet);
    if (lay().turned_about == Axis::far_near) return formes.outer(row, mirrored, sheet);
    auto turned = formes.outer(lay().rows - 1 - row, column, sheet);
    turned.head = turned.head == Head::far ? Head::near : Head::far;
    return turned;
  }
};

inline void draw_panel(Svg& svg, Panel const& panel, char const* kind, Facing seen, DrawnSheet const& drawn) {
  bool const type = seen == Facing::outer_type || seen == Facing::inner_type, from_outer = seen == Facing::outer_paper;
  svg.open(kind);
  svg.rectangle(panel.corner, panel.width, panel.height, {.width = type ? 0.6 : 0.3}, "sheet");
  for (int r = 0; r < panel.rows; ++r)
    for (int c = 0; c < panel.columns; ++c) {
      if (type) draw_type(svg, panel, r, c);
      draw_page_number(svg, panel, r, c, drawn.standing(seen, r, c), drawn.digits());
    }
  if (!type) draw_marks(svg, panel, drawn.marks, drawn.sheet, from_outer);
  if (!type) draw_piece_names(svg, panel, drawn.scheme, drawn.fold, drawn.sheet, from_outer);
  svg.close();
}

inline std::string drawing_title(Scheme const& scheme, int sheet) {
  std::string text{scheme.id()};
  text.append(", ").append(scheme.format().symbol().view());
  if (scheme.sheets() > 1)
    text.append(", sheet ").append(std::to_string(sheet + 1)).append(" of ").append(std::to_string(scheme.sheets()));
  if (scheme.reads() == Reads::right_to_left) text.append(", read from right to left");
  return text;
}

} // namespace detail

} // namespace v0
} // namespace bifolium
