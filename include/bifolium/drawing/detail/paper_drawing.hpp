// SPDX-License-Identifier: MIT
/// Draws paper without print: the sheet with its chain lines, marks and edges, and each leaf of it.
/// drawing/sheet_svg.hpp says what the lines mean.
#pragma once

#include <bifolium/drawing/detail/panel.hpp>
#include <bifolium/fold/leaf_size.hpp>
#include <bifolium/fold/shows.hpp>
#include <bifolium/paper/sheet_size.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

inline void draw_watermark(Svg& svg, Spot at, double radius, bool countermark) {
  svg.open(countermark ? "countermark" : "watermark");
  svg.circle(at, radius, {.width = 0.4});
  if (countermark) {
    auto const arm = radius * 0.7071;
    svg.line({at.x - arm, at.y - arm}, {at.x + arm, at.y + arm}, {.width = 0.4});
    svg.line({at.x - arm, at.y + arm}, {at.x + arm, at.y - arm}, {.width = 0.4});
  }
  svg.close();
}

/// Draws an edge as the mould leaves it: uneven, but the same in every drawing.
inline void draw_deckle(Svg& svg, Spot from, Spot to) {
  static constexpr double uneven[]{0, 0.4, -0.2, 0.3, 0.1, -0.4, 0.2, -0.1, 0.4, -0.3};
  double const dx = to.x - from.x, dy = to.y - from.y;
  double const length = (dx < 0 ? -dx : dx) + (dy < 0 ? -dy : dy); // edges are level or upright
  int const parts = length < 2 ? 1 : static_cast<int>(length / 1.5);
  std::string d = "M";
  for (int i = 0; i <= parts; ++i) {
    auto const off = i == 0 || i == parts ? 0 : uneven[i % 10];
    auto const t = static_cast<double>(i) / parts;
    d.append(i == 0 ? " " : " L ").append(svg_number(from.x + dx * t + (dx == 0 ? off : 0))).append(" ");
    d.append(svg_number(from.y + dy * t + (dy == 0 ? off : 0)));
  }
  svg.path(d, {.width = 0.3}, "deckle");
}

/// Returns the kind of an edge of the sheet when paper was cut before printing. In the drawing its near and right sides
/// are the ones that were cut.
constexpr Edge::Kind edge_in_drawing(Edge const& edge, bool near_or_right) noexcept {
  if (edge.kind != Edge::Kind::deckle_or_cut) return edge.kind;
  return near_or_right ? Edge::Kind::cut : Edge::Kind::deckle;
}
inline void draw_edge(Svg& svg, Edge::Kind kind, Spot from, Spot to) {
  if (kind == Edge::Kind::deckle || kind == Edge::Kind::deckle_or_cut)
    draw_deckle(svg, from, to);
  else if (kind == Edge::Kind::gutter)
    svg.line(from, to, {.width = 0.9}, "gutter");
  else if (kind == Edge::Kind::bolt)
    svg.line(from, to, {.width = 0.3, .breaks = "1.2 0.8"}, "bolt");
  else
    svg.line(from, to, {.width = 0.3}, "cut");
}

/// Draws chain lines across a panel of paper. They count from the middle of the whole sheet, so a leaf shows those that
/// crossed it.
inline void draw_chains(Svg& svg, Spot corner, double width, double height, bool upright, double from, double to,
                        double interval) {
  // `from` and `to`: the beginning and the end of the panel across the chain lines, in mm from the middle of the sheet.
  for (auto i = static_cast<int>(from / interval) - 1; i * interval < to; ++i) {
    auto const at = i * interval + interval / 2;
    if (at <= from || at >= to) continue;
    auto const t = (at - from) / (to - from);
    if (upright)
      svg.line({corner.x + t * width, corner.y}, {corner.x + t * width, corner.y + height},
               {.width = 0.15, .colour = "#555"}, "chain");
    else
      svg.line({corner.x, corner.y + t * height}, {corner.x + width, corner.y + t * height},
               {.width = 0.15, .colour = "#555"}, "chain");
  }
}

/// The data for a drawing of paper.
struct PaperDrawn {
  Scheme const& scheme;
  Fold<> const& fold;
  Sheet<millimetres> paper;
  Mould const& mould;
  int sheet{};
  Lie lie{};

  [[nodiscard]] SheetLine const& lay() const { return fold.sheet(sheet); }
  [[nodiscard]] bool long_level() const { return lay().long_side == Axis::left_right; }
  /// Returns the width of the whole sheet as it lies on the type.
  [[nodiscard]] double width() const { return (long_level() ? paper.long_side() : paper.short_side()).count(); }
  [[nodiscard]] double height() const { return (long_level() ? paper.short_side() : paper.long_side()).count(); }
  [[nodiscard]] bool chained() const {
    return mould.chains == ChainRun::parallel_to_short_side || mould.chains == ChainRun::parallel_to_long_side;
  }
  [[nodiscard]] bool chains_upright() const {
    return long_level() == (mould.chains == ChainRun::parallel_to_short_side);
  }
  /// Returns the distance from the middle of the sheet to its edge, across the chain lines.
  [[nodiscard]] double half_across() const { return (chains_upright() ? width() : height()) / 2; }
  /// Returns the fraction of the width that went to press; the part to the right of it was cut away before printing.
  [[nodiscard]] double kept_width() const {
    return lay().part == PaperPart::quarter || (lay().part == PaperPart::half && long_level()) ? 0.5 : 1;
  }
  [[nodiscard]] double kept_height() const {
    return lay().part == PaperPart::quarter || (lay().part == PaperPart::half && !long_level()) ? 0.5 : 1;
  }
  /// Returns the place of a mark as fractions of the width and height of the sheet as it lies.
  [[nodiscard]] Spot place(PointOfSheet mark) const {
    bool const end = lie == Lie::end_for_end || lie == Lie::both_ways,
               side = lie == Lie::side_for_side || lie == Lie::both_ways;
    auto const along = end ? 1 - mark.along : mark.along, across = side ? 1 - mark.across : mark.across;
    return long_level() ? Spot{along, across} : Spot{across, along};
  }
  /// Calls `told` with every leaf of the sheet, in the order of the book.
  template <class Told> void each_leaf(Told&& told) const {
    for (int g = 0; g < fold.gatherings(); ++g)
      for (int k = 1; k <= fold.gathering(g).leaves(); ++k)
        if (LeafAt const at{g, fold.gathering(g).leaf(k)}; fold.cell(at).sheet == sheet) told(at);
  }
};

inline void draw_paper(Svg& svg, PaperDrawn const& drawn, Spot corner, double scale, double radius) {
  auto const width = drawn.width() * scale, height = drawn.height() * scale;
  auto const right = corner.x + width, below = corner.y + height;
  svg.open("paper");
  if (drawn.chained()) {
    bool const upright = drawn.chains_upright();
    draw_chains(svg, corner, width, height, upright, -drawn.half_across(), drawn.half_across(), usual_chain_interval);
    for (int i = 1; i < 12; ++i) // wire lines: about ten to the centimetre on paper; a patch of them is enough
      if (upright)
        svg.line({corner.x + 1, corner.y + 1 + i}, {corner.x + 14, corner.y + 1 + i}, {.width = 0.08}, "wire");
      else
        svg.line({corner.x + 1 + i, corner.y + 1}, {corner.x + 1 + i, corner.y + 14}, {.width = 0.08}, "wire");
  }
  for (bool countermark : {false, true})
    if (auto const& mark = countermark ? drawn.mould.countermark : drawn.mould.watermark) {
      auto const at = drawn.place(*mark);
      draw_watermark(svg, {corner.x + at.x * width, corner.y + at.y * height}, radius, countermark);
    }
  draw_deckle(svg, corner, {right, corner.y}), draw_deckle(svg, {corner.x, below}, {right, below});
  draw_deckle(svg, corner, {corner.x, below}), draw_deckle(svg, {right, corner.y}, {right, below});
  Panel const panel{corner, width * drawn.kept_width(), height * drawn.kept_height(), drawn.lay().rows,
                    drawn.lay().columns};
  for (int r = 1; r < panel.rows; ++r)
    svg.line(panel.at(r, 0), panel.at(r, panel.columns), {.width = 0.1, .breaks = "0.6 1.4"}, "line");
  for (int c = 1; c < panel.columns; ++c)
    svg.line(panel.at(0, c), panel.at(panel.rows, c), {.width = 0.1, .breaks = "0.6 1.4"}, "line");
  // The cut before printing; the part beyond it is not in this book.
  auto const middle_x = corner.x + panel.width, middle_y = corner.y + panel.height;
  if (drawn.kept_width() < 1) svg.line({middle_x, corner.y}, {middle_x, below}, {.width = 0.9}, "cut");
  if (drawn.kept_height() < 1) svg.line({corner.x, middle_y}, {right, middle_y}, {.width = 0.9}, "cut");
  svg.close();
}

inline void draw_paper_leaf(Svg& svg, PaperDrawn const& drawn, LeafAt at, Spot head_left, double scale, double radius) {
  auto const& fold = drawn.fold;
  auto const cell = fold.cell(at);
  auto const shown = shows(fold, at, drawn.mould);
  auto const leaf = leaf_size(drawn.lay(), drawn.paper);
  auto const width = leaf.width.count() * scale, height = leaf.height.count() * scale;
  bool const rtl = fold.reads() == Reads::right_to_left, gutter_right = fold.gutter_right(at);
  Spot const tail_left{head_left.x, head_left.y + height}, head_right{head_left.x + width, head_left.y},
      tail_right{head_left.x + width, head_left.y + height};
  if (shown.chain_lines) {
    bool const vertical = *shown.chain_lines == ChainLines::vertical;
    auto const size = vertical ? leaf.width.count() : leaf.height.count();
    auto from = (vertical ? cell.column : cell.row) * size - drawn.half_across();
    // With recto and head up, the leaf may lie the other way round than on the sheet.
    bool const other_way = vertical ? gutter_right != rtl : !cell.head_far;
    if (other_way) from = -from - size;
    draw_chains(svg, head_left, width, height, vertical, from, from + size, usual_chain_interval);
  }
  auto const draw_mark = [&](std::optional<PointOfLeaf> const& mark, bool countermark) {
    if (!mark) return;
    auto const x = (rtl ? 1 - mark->from_gutter : mark->from_gutter) * width;
    draw_watermark(svg, {head_left.x + x, head_left.y + mark->from_head * height}, radius, countermark);
  };
  // A mark on a fold is divided: each leaf has a part of it.
  svg.open_window(head_left, width, height);
  draw_mark(shown.watermark_lying(drawn.lie), false);
  draw_mark(shown.countermark[static_cast<std::size_t>(drawn.lie)], true);
  svg.close_window();
  draw_edge(svg, edge_in_drawing(shown.head, !cell.head_far), head_left, head_right);
  draw_edge(svg, edge_in_drawing(shown.tail, cell.head_far), tail_left, tail_right);
  draw_edge(svg, edge_in_drawing(shown.gutter, gutter_right), rtl ? head_right : head_left,
            rtl ? tail_right : tail_left);
  draw_edge(svg, edge_in_drawing(shown.fore_edge, !gutter_right), rtl ? head_left : head_right,
            rtl ? tail_left : tail_right);
  auto name = signature_of(drawn.scheme, at.gathering) + std::to_string(at.leaf.number());
  if (auto const copy = copy_number(fold, at.gathering)) name += ", copy " + std::to_string(*copy);
  svg.text({head_left.x + width / 2, tail_left.y + 3.5}, name,
           {.size = Svg::size_within(name, 3, width + 4), .kind = "label"});
}

/// The layout of the sheet and its leaves at one scale, so that all of it fits on A4. Lengths are in mm.
struct PaperLies {
  double scale{}, leaf_width{}, leaf_height{};
  int across{}, lines{};
  static constexpr double beside = 5, below = 7.5;
};
inline PaperLies paper_lies(PaperDrawn const& drawn, double room) {
  auto const by_width = room / drawn.width(), by_height = 110 / drawn.height();
  auto const leaf = leaf_size(drawn.lay(), drawn.paper);
  int leaves = 0;
  drawn.each_leaf([&](LeafAt) { ++leaves; });
  PaperLies lies{by_width < by_height ? by_width : by_height};
  for (;; lies.scale *= 0.97) {
    lies.leaf_width = leaf.width.count() * lies.scale, lies.leaf_height = leaf.height.count() * lies.scale;
    int const fit = static_cast<int>((room + PaperLies::beside) / (lies.leaf_width + PaperLies::beside));
    lies.across = fit < 1 ? 1 : fit;
    lies.lines = (leaves + lies.across - 1) / lies.across;
    if (drawn.height() * lies.scale + lies.lines * (lies.leaf_height + PaperLies::below) <= 297 - 30 - 8 - 20)
      return lies;
  }
}

/// Draws the key to the lines. `cut` says how the paper was cut before printing; it is empty if it was not.
inline void draw_paper_legend(Svg& svg, Spot at, std::string_view cut) {
  Lettering const how{.size = 2.8, .anchor = Anchor::start};
  svg.text(at, "Thin lines: chain lines. Close lines, in one corner only: wire lines. Dotted: folded or cut here.",
           how);
  svg.text({at.x, at.y + 4.5},
           "Ring: watermark. Ring with a cross: countermark. Uneven edge: deckle. "
           "Broken edge: bolt. Heavy edge: gutter. Plain edge: cut.",
           how);
  if (!cut.empty()) svg.text({at.x, at.y + 9}, std::string{cut.substr(1)} + " The heavy line is that cut.", how);
}

inline std::string paper_svg(PaperDrawn const& drawn, std::string_view sheet_name) {
  double const page_width = 210, side = 14, sheet_top = 30;
  auto const [scale, leaf_width, leaf_height, across, lines] = paper_lies(drawn, page_width - 2 * side);
  double const leaves_top = sheet_top + drawn.height() * scale + 8;
  auto const page_height = leaves_top + lines * (leaf_height + PaperLies::below) + 20;

  std::string figures{sheet_name};
  figures.append(figures.empty() ? "" : ", ").append(svg_number(drawn.paper.short_side().count()));
  figures.append(" x ").append(svg_number(drawn.paper.long_side().count())).append(" mm");
  auto const part = drawn.lay().part;
  std::string const cut = part == PaperPart::whole  ? ""
                          : part == PaperPart::half ? " Cut in half before printing; one half is followed."
                                                    : " Cut in quarters before printing; one quarter is followed.";
  auto const title = "Paper: " + drawing_title(drawn.scheme, drawn.sheet);
  Svg svg{page_width, page_height, title,
          "Paper seen against the light, without print. A sheet of " + figures +
              "; above as it lies on the type, outer side down, below its leaves in the order of the book." + cut};
  svg.text({side, 12}, title,
           {.size = Svg::size_within(title, 5, page_width - 2 * side, true), .anchor = Anchor::start, .bold = true});
  auto const what = "Paper seen against the light, not type: " + figures + ", drawn 1 : " + svg_number(1 / scale) + ".";
  svg.text({side, 19}, what, {.size = Svg::size_within(what, 3.2, page_width - 2 * side), .anchor = Anchor::start});
  svg.text({side, 24.5},
           "Above: the sheet as it lies on the type, outer side down. Below: its leaves, recto up, heads up.",
           {.size = 3.2, .anchor = Anchor::start});
  // As large as a mark is on paper, but never larger than most of a leaf.
  auto const narrow = leaf_width < leaf_height ? leaf_width : leaf_height;
  auto const radius = 18 * scale < narrow * 0.4 ? 18 * scale : narrow * 0.4;
  draw_paper(svg, drawn, {(page_width - drawn.width() * scale) / 2, sheet_top}, scale, radius);
  int place = 0;
  drawn.each_leaf([&](LeafAt leaf_at) {
    int const row = place / across, column = place % across;
    ++place;
    svg.open("leaf");
    draw_paper_leaf(
        svg, drawn, leaf_at,
        {side + column * (leaf_width + PaperLies::beside), leaves_top + row * (leaf_height + PaperLies::below)}, scale,
        radius);
    svg.close();
  });
  draw_paper_legend(svg, {side, page_height - 14.5}, cut);
  return static_cast<Svg&&>(svg).finish();
}

} // namespace detail

} // namespace v0
} // namespace bifolium
