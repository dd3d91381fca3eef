// SPDX-License-Identifier: MIT
/// The common parts of all drawings of a sheet: a grid of leaves with page numbers, signatures, cuts, creases and the
/// names of the pieces.
///
/// The number of a page lies the way the page lies, with a line at its foot, since 6 and 9 or 8 and 11 do not show
/// which way up they are. A heavy line is a cut, a line of dashes a crease that is hollow on this side, a line of dots
/// a crease that is a ridge. The number in a circle gives the order of the step. No information depends on colour, and
/// no number is ever mirrored.
#pragma once

#include <bifolium/drawing/detail/creases.hpp>
#include <bifolium/drawing/detail/drawn_sheet.hpp>
#include <bifolium/drawing/svg.hpp>
#include <bifolium/explain/trade_words.hpp>
#include <bifolium/imposition/imposition.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// The least size of a label in mm, which can be read on a sheet of paper in the hand. A label that does not fit at
/// this size is left out.
inline constexpr double least_label = 2.5;

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

/// Returns the width over the height of the paper that goes to press, for paper of the proportion 1 : 1.43 (the
/// chancery sheet of the Bologna stone is 315 x 450 mm, the median of the four).
inline double proportion(SheetLine const& lay) {
  double const long_side = lay.part == PaperPart::whole ? 1.43 : 1.43 / 2;
  double const short_side = lay.part == PaperPart::quarter ? 0.5 : 1;
  return lay.long_side == Axis::left_right ? long_side / short_side : short_side / long_side;
}

/// Returns the largest panel with this proportion in the middle of a frame.
inline Panel panel_within(Spot corner, double width, double height, SheetLine const& lay) {
  auto const wanted = proportion(lay);
  double const w = width / height > wanted ? height * wanted : width, h = w / wanted;
  return {{corner.x + (width - w) / 2, corner.y + (height - h) / 2}, w, h, lay.rows, lay.columns};
}

/// Draws the number of a page the way its type lies, with a line at its foot. All numbers of a panel have the size that
/// fits the longest, which has `digits` digits.
inline void draw_page_number(Svg& svg, Panel const& panel, int row, int column, ImposedPage standing,
                             std::size_t digits) {
  auto const middle = panel.at(row + 0.5, column + 0.5);
  auto const number = std::to_string(standing.page);
  auto const by_width = panel.cell_width() * 0.58 / (Svg::figure_width * static_cast<double>(digits > 1 ? digits : 2));
  auto const by_height = panel.cell_height() * 0.4;
  auto size = by_width < by_height ? by_width : by_height;
  size = size < 16 ? size : 16;
  bool const down = standing.head == Head::near_edge;
  svg.text(middle, number, {.size = size, .turned = down ? 180 : 0, .kind = "page"});
  auto const foot = middle.y + (down ? -1 : 1) * size * (Svg::figure_height / 2 + 0.16);
  auto const half = size * Svg::figure_width * static_cast<double>(number.size()) / 2;
  svg.line({middle.x - half, foot}, {middle.x + half, foot}, {.width = size / 16}, "foot");
}

inline void draw_type(Svg& svg, Panel const& panel, int row, int column, bool heavy) {
  auto const margin = panel.least() * 0.08;
  auto const corner = panel.at(row, column);
  svg.rectangle({corner.x + margin, corner.y + margin}, panel.cell_width() - 2 * margin,
                panel.cell_height() - 2 * margin, {.width = heavy ? 0.9 : 0.2, .colour = heavy ? "black" : "#777"},
                heavy ? "exchanged" : "type");
}

/// Returns the line of a crease: dashes if it is hollow on this side, dots if it is a ridge.
inline Stroke crease_stroke(bool hollow, double scale) {
  return hollow ? Stroke{.width = 0.6 * scale, .breaks = scale < 1 ? "2 1.2" : "4 2.2"}
                : Stroke{.width = 0.95 * scale, .breaks = scale < 1 ? "0 1.3" : "0 2.2", .round = true};
}

/// Draws the cuts and creases of one sheet. Seen from its outer side, columns run in the other direction and hollows
/// are ridges.
inline void draw_marks(Svg& svg, Panel const& panel, std::vector<SheetMark> const& marks, int sheet, bool from_outer) {
  auto const scale = panel.least() < 16 ? 0.6 : 1;
  for (auto const& mark : marks) {
    if (mark.sheet != sheet) continue;
    bool const upright = mark.along == Axis::far_near;
    auto const place = [&](double along) {
      auto const column = upright ? double(mark.line) : along, row = upright ? along : double(mark.line);
      return panel.at(row, from_outer ? panel.columns - column : column);
    };
    if (mark.kind == Step::Kind::cut)
      svg.line(place(mark.from), place(mark.to), {.width = 1.4 * scale}, "cut");
    else
      svg.line(place(mark.from), place(mark.to), crease_stroke(mark.hollow_on_inner != from_outer, scale), "crease");
  }
  auto const radius = panel.least() * 0.11 < 3.4 ? panel.least() * 0.11 : 3.4;
  if (radius * 1.5 < least_label) return;
  for (auto const& mark : marks) {
    if (mark.sheet != sheet) continue;
    bool const upright = mark.along == Axis::far_near;
    // A level line has its number at its right end, away from the names of pieces.
    auto const column = upright ? double(from_outer ? panel.columns - mark.line : mark.line)
                                : (from_outer ? panel.columns - mark.from : mark.to) - 0.22;
    auto const middle = panel.at(upright ? mark.from + 0.5 : double(mark.line), column);
    auto const number = std::to_string(mark.step + 1);
    svg.circle(middle, radius, {.width = 0.25}, "white");
    svg.text(middle, number,
             {.size = number.size() == 1 ? radius * 1.5
                      : radius < 2.2     ? least_label
                                         : radius * 1.15,
              .kind = "turn"});
  }
}

/// The far left corner of a piece, in which its name is drawn. `of` has the row and the column.
struct PieceCorner {
  int piece{}, row{}, column{};
  std::string label{};
  double size{};
};
/// Returns a short name of a gathering: "B", or "1st" for the first of two copies.
inline std::string short_name(Scheme const& scheme, Fold<> const& fold, int gathering) {
  auto const full = gathering_name(scheme, fold, gathering);
  if (full.find("copy") == full.npos) return signature_of(scheme, gathering);
  auto const copy = full.find("second") == full.npos ? "1st" : "2nd";
  return full.find(',') == full.npos ? copy : signature_of(scheme, gathering) + " " + copy;
}
inline std::vector<PieceCorner> piece_corners(Panel const& panel, DrawnSheet const& drawn, Facing seen) {
  std::vector<PieceCorner> corners;
  auto const& scheme = drawn.scheme;
  if (scheme.pieces() == scheme.sheets()) return corners;
  for (int piece = 0; piece < scheme.pieces(); ++piece) {
    if (!set_in(scheme, piece)) continue;
    PieceCorner corner{piece, Scheme::most_cells, Scheme::most_cells};
    int end = 0;
    for (int r = 0; r < panel.rows; ++r)
      for (int c = 0; c < panel.columns; ++c)
        if (drawn.fold.cell(drawn.leaf(seen, r, c)).piece == piece) {
          corner.row = r < corner.row ? r : corner.row;
          corner.column = c < corner.column ? c : corner.column;
          end = c + 1 > end ? c + 1 : end;
        }
    if (end == 0) continue; // a piece of another sheet
    auto const gathering = set_in(scheme, piece)->gathering;
    auto const room = panel.cell_width() - 2.4; // space between a name and the creases
    corner.size = panel.least() * 0.1 < 4 ? panel.least() * 0.1 : 4;
    corner.size = corner.size < least_label ? least_label : corner.size;
    auto const label = piece_label(scheme, drawn.fold, piece);
    for (auto const& words :
         {label, label.substr(0, label.find(", inset")), gathering_name(scheme, drawn.fold, gathering),
          short_name(scheme, drawn.fold, gathering)}) {
      corner.label = capitalised(words);
      if (!words.empty() && Svg::room(corner.label, corner.size) <= room) break;
    }
    if (panel.cell_height() > 4 * corner.size) corners.push_back(corner);
  }
  return corners;
}
inline void draw_piece_names(Svg& svg, Panel const& panel, std::vector<PieceCorner> const& corners) {
  for (auto const& one : corners) {
    auto const corner = panel.at(one.row, one.column);
    svg.text({corner.x + 1.2, corner.y + 0.9 * one.size}, one.label,
             {.size = one.size, .anchor = Anchor::start, .italic = true, .kind = "piece"});
  }
}

/// Draws signature and catchword at the foot of a page. The first leaves of a gathering up to its middle are signed,
/// the usual way (common practice; printers signed one more, or fewer). A short line is the place of the catchword,
/// under the last word of the page. `taken` is the height in mm that a name takes at the top of the cell.
inline void draw_direction_line(Svg& svg, Panel const& panel, DrawnSheet const& drawn, Facing seen, int row, int column,
                                double taken) {
  auto const fit = panel.least() * 0.11;
  auto const size = fit < least_label ? least_label : fit < 5 ? fit : 5;
  auto const at = drawn.leaf(seen, row, column);
  auto const standing = drawn.standing(seen, row, column);
  bool const down = standing.head == Head::near_edge, rtl = drawn.fold.reads() == Reads::right_to_left;
  auto const foot = panel.at(row + (down ? 0.15 : 0.85), column + 0.5);
  if (panel.least() < 5 * least_label || (down && taken > 0 && 0.15 * panel.cell_height() - size / 2 < taken)) return;
  auto const number = at.leaf.number();
  bool const recto = (standing.page - drawn.fold.first_page(at.gathering)) % 2 == 0;
  if (recto && number <= (at.leaf.leaves() + 1) / 2) {
    auto const signature = number > 1 ? drawn.leaf_name(at) : signature_of(drawn.scheme, at.gathering);
    svg.text(foot, signature, {.size = size, .turned = down ? 180 : 0, .kind = "signature"});
  }
  bool const right = down == rtl;
  auto const end = foot.x + (right ? 0.4 : -0.4) * panel.cell_width(), length = 0.14 * panel.cell_width();
  svg.line({end, foot.y}, {end + (right ? -length : length), foot.y}, {.width = 0.5, .colour = "#777"}, "catchword");
}

/// Draws the pages of one side: their numbers, signatures and catchwords, each in a group that names page, leaf and
/// position.
inline void draw_pages(Svg& svg, Panel const& panel, Facing seen, DrawnSheet const& drawn,
                       std::vector<PieceCorner> const& corners) {
  for (int r = 0; r < panel.rows; ++r)
    for (int c = 0; c < panel.columns; ++c) {
      auto const standing = drawn.standing(seen, r, c);
      auto const leaf = drawn.leaf_name(drawn.leaf(seen, r, c)), place = drawn.place_name(standing.page);
      double taken = 0;
      for (auto const& corner : corners)
        if (corner.row == r && corner.column <= c &&
            panel.at(0, corner.column).x + Svg::room(corner.label, corner.size) + 2 > panel.at(0, c).x)
          taken = 1.3 * corner.size;
      svg.open("cell", {standing.page, leaf, place});
      svg.rectangle(panel.at(r, c), panel.cell_width(), panel.cell_height(), {.width = 0}, "spot");
      draw_page_number(svg, panel, r, c, standing, drawn.digits());
      draw_direction_line(svg, panel, drawn, seen, r, c, taken);
      svg.close();
    }
}

inline void draw_panel(Svg& svg, Panel const& panel, char const* kind, Facing seen, DrawnSheet const& drawn) {
  bool const type = seen == Facing::outer_type || seen == Facing::inner_type, from_outer = seen == Facing::outer_paper;
  svg.open(kind);
  svg.rectangle(panel.corner, panel.width, panel.height, {.width = type ? 0.8 : 0.3}, "sheet");
  for (int r = 0; r < panel.rows && type; ++r)
    for (int c = 0; c < panel.columns; ++c) {
      bool const exchanged = seen == Facing::inner_type && drawn.fold.copies() > 1 &&
                             drawn.standing(Facing::outer_type, r, c) != drawn.standing(seen, r, c);
      draw_type(svg, panel, r, c, exchanged);
    }
  auto const corners = type ? std::vector<PieceCorner>{} : piece_corners(panel, drawn, seen);
  draw_pages(svg, panel, seen, drawn, corners);
  if (!type) draw_marks(svg, panel, drawn.marks, drawn.sheet, from_outer);
  draw_piece_names(svg, panel, corners);
  svg.close();
}

inline std::string drawing_title(Scheme const& scheme, int sheet) {
  auto text = title_of(scheme);
  if (scheme.sheets() > 1)
    text.append(", sheet ").append(std::to_string(sheet + 1)).append(" of ").append(std::to_string(scheme.sheets()));
  return text;
}

} // namespace detail

} // namespace v0
} // namespace bifolium
