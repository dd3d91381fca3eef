// SPDX-License-Identifier: MIT
/// One sheet drawn four times, as the teaching of imposition has always needed it: above, the type as it lies on the
/// stone; below, the printed paper, which is its mirror, with the lines along which it is cut and folded. Confusing the
/// two is the classic mistake, so every panel says which it is.
///
/// The marks: a frame is a page of type; its figure lies the way the page lies, with a rule at its foot, since 6 and 9 or
/// 8 and 11 do not show which way up they are. A broken line is a crease, a heavy one a cut; the figure in a circle is
/// its turn in the work. Nothing is told by colour.
#pragma once

#include <bifolium/drawing/creases.hpp>
#include <bifolium/drawing/explain.hpp>
#include <bifolium/drawing/svg.hpp>

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
inline void draw_page_number(Svg& svg, Panel const& panel, int row, int column, Standing standing) {
  auto const middle = panel.at(row + 0.5, column + 0.5);
  auto const number = std::to_string(standing.page);
  auto const by_width = panel.cell_width() * 0.56 / (Svg::figure_width * static_cast<double>(number.size()));
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
inline void draw_marks(Svg& svg, Panel const& panel, std::vector<SheetMark> const& marks, int sheet, bool from_outer) {
  for (auto const& mark : marks) {
    if (mark.sheet != sheet) continue;
    bool const upright = mark.along == Axis::far_near;
    auto const place = [&](double along) {
      auto const column = upright ? double(mark.line) : along, row = upright ? along : double(mark.line);
      return panel.at(row, from_outer ? panel.columns - column : column);
    };
    bool const hollow = mark.hollow_on_inner != from_outer;
    if (mark.kind == Step::Kind::cut)
      svg.line(place(mark.from), place(mark.to), {.width = 0.9}, "cut");
    else
      svg.line(place(mark.from), place(mark.to), {.width = 0.35, .breaks = hollow ? "2.4 1.2" : "2.4 1 0.5 1"},
               "crease");
  }
  auto const radius = panel.least() * 0.12 < 2.4 ? panel.least() * 0.12 : 2.4;
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

enum class Seen : std::uint8_t { type, outer_paper, inner_paper };

/// One panel: `standing(row, column)` is the page there as drawn.
template <class Standings>
void draw_panel(Svg& svg, Panel const& panel, char const* kind, Seen seen, std::vector<SheetMark> const& marks,
                int sheet, Standings const& standing) {
  svg.open(kind);
  svg.rectangle(panel.corner, panel.width, panel.height, {.width = seen == Seen::type ? 0.6 : 0.3}, "sheet");
  for (int r = 0; r < panel.rows; ++r)
    for (int c = 0; c < panel.columns; ++c) {
      if (seen == Seen::type) draw_type(svg, panel, r, c);
      draw_page_number(svg, panel, r, c, standing(r, c));
    }
  if (seen != Seen::type) draw_marks(svg, panel, marks, sheet, seen == Seen::outer_paper);
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

/// The formes of one sheet and both its printed sides, on an A4 page. Sheets count from 0. error: as `fold`.
/// pre: a sheet of the scheme.
inline Expected<std::string> forme_svg(Scheme const& scheme, int sheet = 0) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const formes = impose(*folded);
  auto const& lay = formes.sheet(sheet);
  auto const marks = sheet_marks(scheme);
  bool const wide = detail::proportion(lay) > 1;
  double const page_width = wide ? 297 : 210, page_height = wide ? 210 : 297;
  double const side = 12, top = 28, between = 10, words = 8, bottom = 20;
  double const width = (page_width - 2 * side - between) / 2, height = (page_height - top - bottom - 2 * words) / 2 - 3;

  auto const steps = explain_steps(scheme);
  Svg svg{
      page_width, page_height, "Formes of " + detail::drawing_title(scheme, sheet),
      "Above: the type as it lies on the stone, far edge up. Below: the printed paper, with its cuts and creases.\n" +
          *steps};
  svg.text({side, 13}, detail::drawing_title(scheme, sheet), {.size = 6, .anchor = Anchor::start, .bold = true});
  svg.text({side, 21}, "Above: type on the stone. Below: printed paper.", {.size = 3.6, .anchor = Anchor::start});

  auto const slot = [&](int right, int lower) {
    return Spot{side + right * (width + between), top + lower * (height + words + 3) + words};
  };
  auto const panel = [&](int right, int lower, char const* name, char const* what) {
    auto const corner = slot(right, lower);
    svg.text({corner.x + width / 2, corner.y - 5.4}, name, {.size = 3.8, .bold = true});
    svg.text({corner.x + width / 2, corner.y - 1.9}, what, {.size = 2.6, .italic = true});
    return detail::panel_within({corner.x, corner.y + 0.5}, width, height - 1, lay);
  };
  auto const outer = [&](int r, int c) { return formes.outer(r, c, sheet); };
  auto const paper = [&](int r, int c) {
    return formes.printed(lay.one_forme ? Side::only : Side::outer, r, c, sheet);
  };
  using detail::Seen;
  if (lay.one_forme) {
    bool const sideways = lay.turned_about == Axis::far_near;
    detail::draw_panel(svg, panel(0, 0, "The one forme", "type on the stone, the compositor at the lower edge"),
                       "one-forme", Seen::type, marks, sheet, outer);
    auto const note = slot(1, 0);
    double line = note.y + 12;
    for (char const* words_of_turning : {"One forme prints both sides of the sheet.",
                                         sideways ? "After the first impression the sheet is turned"
                                                  : "After the first impression the sheet is turned",
                                         sideways ? "about its far-near middle line, left for right,"
                                                  : "about its left-right middle line, far for near,",
                                         "and printed again on its other side.",
                                         "Cut along the heavy line it gives two copies", "of the same pages."}) {
      svg.text({note.x + 6, line}, words_of_turning, {.size = 4, .anchor = Anchor::start});
      line += 6.5;
    }
    detail::draw_panel(svg, panel(0, 1, "First impression", "printed paper, outer side of the sheet up"), "outer",
                       Seen::outer_paper, marks, sheet, paper);
    // As the sheet lies to be folded, outer side down; the mirror of what lies on the type in the second impression.
    detail::draw_panel(svg, panel(1, 1, "Second impression, after turning", "printed paper, as it lies to be folded"),
                       "inner", Seen::inner_paper, marks, sheet, [&](int r, int c) {
                         if (sideways) return formes.outer(r, lay.columns - 1 - c, sheet);
                         auto standing = formes.outer(lay.rows - 1 - r, c, sheet);
                         standing.head = standing.head == Head::far ? Head::near : Head::far;
                         return standing;
                       });
  } else {
    auto const inner = [&](int r, int c) { return formes.inner(r, c, sheet); };
    auto const inner_paper = [&](int r, int c) { return formes.printed(Side::inner, r, c, sheet); };
    detail::draw_panel(svg, panel(0, 0, "Outer forme", "type on the stone, the compositor at the lower edge"),
                       "outer-type", Seen::type, marks, sheet, outer);
    detail::draw_panel(svg, panel(1, 0, "Inner forme", "type on the stone, the compositor at the lower edge"),
                       "inner-type", Seen::type, marks, sheet, inner);
    detail::draw_panel(svg, panel(0, 1, "Outer side", "printed paper, this side up"), "outer", Seen::outer_paper, marks,
                       sheet, paper);
    detail::draw_panel(svg, panel(1, 1, "Inner side", "printed paper, as it lies to be folded"), "inner",
                       Seen::inner_paper, marks, sheet, inner_paper);
  }
  svg.text({side, page_height - 12},
           "Broken line: crease, hollow on this side. Broken line with points: crease, ridge on this side. "
           "Heavy line: cut.",
           {.size = 2.8, .anchor = Anchor::start});
  svg.text({side, page_height - 7.5},
           "The figure in a circle is the step. The rule under a page number is at its foot.",
           {.size = 2.8, .anchor = Anchor::start});
  return static_cast<Svg&&>(svg).finish();
}

} // namespace v0
} // namespace bifolium
