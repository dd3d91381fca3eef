// SPDX-License-Identifier: MIT
/// The sheet as paper: what was in it before a letter was printed. Above, the sheet as the mould made it, to scale; below,
/// the same paper in each leaf once folded, as it would be seen against the light in the order of the book.
///
/// The marks: long thin lines are chain lines; the close ones, drawn in one corner only so as not to blacken the sheet,
/// are wire lines; a ring is the watermark, a ring with a cross the countermark; the uneven edge is the deckle. In a
/// leaf the gutter is the heavy side, and an edge that is neither deckle nor fold was cut.
#pragma once

#include <bifolium/drawing/panel.hpp>
#include <bifolium/fold/leaf_size.hpp>
#include <bifolium/fold/shows.hpp>

namespace bifolium {
inline namespace v0 {

/// Distance of chain lines, in mm. Laid paper has them 18 to 30 mm apart (common practice, no source); measure.
inline constexpr double usual_chain_interval = 25;

namespace detail {

inline void draw_watermark(Svg& svg, Spot at, double radius, bool countermark) {
  svg.open(countermark ? "countermark" : "watermark");
  svg.circle(at, radius, {.width = 0.4});
  if (countermark) {
    svg.line({at.x - radius, at.y}, {at.x + radius, at.y}, {.width = 0.4});
    svg.line({at.x, at.y - radius}, {at.x, at.y + radius}, {.width = 0.4});
  }
  svg.close();
}

/// An edge as the mould leaves it: uneven, but the same in every drawing.
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

inline void draw_edge(Svg& svg, Edge const& edge, Spot from, Spot to) {
  if (edge.kind == Edge::Kind::deckle || edge.kind == Edge::Kind::deckle_or_cut)
    draw_deckle(svg, from, to);
  else if (edge.kind == Edge::Kind::gutter)
    svg.line(from, to, {.width = 0.9}, "gutter");
  else if (edge.kind == Edge::Kind::bolt)
    svg.line(from, to, {.width = 0.3, .breaks = "1.2 0.8"}, "bolt");
  else
    svg.line(from, to, {.width = 0.3}, "cut");
}

/// Chain lines across a panel of `long_side` x `short_side` mm of paper. They count from the middle of the sheet, so a
/// leaf shows those that crossed it.
inline void draw_chains(Svg& svg, Spot corner, double width, double height, bool upright, double from, double to,
                        double interval) {
  // `from` and `to`: where the panel begins and ends across the chain lines, in mm from the sheet's middle.
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

} // namespace detail

/// One sheet of a scheme as paper, and its leaves. `lie` says which way the sheet was laid on the press. Sheets count
/// from 0. error: as `fold`. pre: a sheet of the scheme.
inline Expected<std::string> sheet_svg(Scheme const& scheme, Sheet<millimetres> const& paper,
                                       Mould const& mould = hand_mould, int sheet = 0, Lie lie = Lie::as_given) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const& lay = folded->sheet(sheet);
  auto const leaf = leaf_size(lay, paper);
  double const paper_width = leaf.width.count() * lay.columns, paper_height = leaf.height.count() * lay.rows;
  double const page_width = 210, side = 14;
  auto const scale_by_width = (page_width - 2 * side) / paper_width, scale_by_height = 110 / paper_height;
  auto const scale = scale_by_width < scale_by_height ? scale_by_width : scale_by_height;
  double const width = paper_width * scale, height = paper_height * scale;
  double const leaf_width = leaf.width.count() * scale, leaf_height = leaf.height.count() * scale;

  auto const across = [&] { // leaves to a row of the lower part
    auto const fit = static_cast<int>((page_width - 2 * side + 5) / (leaf_width + 5));
    return fit < 1 ? 1 : fit;
  }();
  std::vector<LeafAt> leaves;
  for (int g = 0; g < folded->gatherings(); ++g)
    for (int k = 1; k <= folded->gathering(g).leaves(); ++k)
      if (LeafAt const at{g, folded->gathering(g).leaf(k)}; folded->cell(at).sheet == sheet) leaves.push_back(at);
  auto const lines = (static_cast<int>(leaves.size()) + across - 1) / across;
  double const sheet_top = 30, leaves_top = sheet_top + height + 18;
  auto const page_height = leaves_top + lines * (leaf_height + 9) + 12;

  auto const figures =
      svg_number(paper.short_side().count()).append(" x ").append(svg_number(paper.long_side().count()));
  Svg svg{page_width, page_height, "The paper of " + detail::drawing_title(scheme, sheet),
          "Paper seen against the light, nothing printed on it. A sheet of " + figures +
              " mm; above as it lies on the type, outer side down, below its leaves in the order of the book."};
  svg.text({side, 12}, "The paper of " + detail::drawing_title(scheme, sheet),
           {.size = 5, .anchor = Anchor::start, .bold = true});
  svg.text({side, 19},
           "Paper seen against the light, not type. Sheet of " + figures + " mm, drawn 1 : " + svg_number(1 / scale),
           {.size = 3.2, .anchor = Anchor::start});
  svg.text({side, 24.5},
           "Above: the sheet as it lies on the type, outer side down. Below: its leaves, recto up, heads up.",
           {.size = 3.2, .anchor = Anchor::start});

  bool const long_level = lay.long_side == Axis::left_right;
  bool const chained =
      mould.chains == ChainRun::parallel_to_short_side || mould.chains == ChainRun::parallel_to_long_side;
  bool const upright = long_level == (mould.chains == ChainRun::parallel_to_short_side);
  Spot const corner{(page_width - width) / 2, sheet_top};
  svg.open("paper");
  auto const half_across = (upright ? paper_width : paper_height) / 2;
  if (chained) {
    detail::draw_chains(svg, corner, width, height, upright, -half_across, half_across, usual_chain_interval);
    for (int i = 1; i < 12; ++i) // wire lines, some ten to the centimetre on paper; a patch is enough
      if (upright)
        svg.line({corner.x + 1, corner.y + 1 + i}, {corner.x + 14, corner.y + 1 + i}, {.width = 0.08}, "wire");
      else
        svg.line({corner.x + 1 + i, corner.y + 1}, {corner.x + 1 + i, corner.y + 14}, {.width = 0.08}, "wire");
  }
  detail::Panel const panel{corner, width, height, lay.rows, lay.columns};
  auto const radius = 18 * scale < panel.least() * 0.4 ? 18 * scale : panel.least() * 0.4;
  for (bool countermark : {false, true})
    if (auto const& mark = countermark ? mould.countermark : mould.watermark)
      if (auto const at = detail::in_grid(lay, *mark, lie))
        detail::draw_watermark(svg, panel.at(at->row, at->column), radius, countermark);
  Spot const ne{corner.x + width, corner.y}, sw{corner.x, corner.y + height}, se{corner.x + width, corner.y + height};
  detail::draw_deckle(svg, corner, ne), detail::draw_deckle(svg, sw, se);
  detail::draw_deckle(svg, corner, sw), detail::draw_deckle(svg, ne, se);
  for (int r = 1; r < lay.rows; ++r)
    svg.line(panel.at(r, 0), panel.at(r, lay.columns), {.width = 0.1, .breaks = "0.6 1.4"}, "line");
  for (int c = 1; c < lay.columns; ++c)
    svg.line(panel.at(0, c), panel.at(lay.rows, c), {.width = 0.1, .breaks = "0.6 1.4"}, "line");
  svg.close();

  bool const rtl = folded->reads() == Reads::right_to_left;
  for (std::size_t i = 0; i < leaves.size(); ++i) {
    auto const at = leaves[i];
    auto const cell = folded->cell(at);
    auto const shown = shows(*folded, at, mould);
    auto const n = static_cast<int>(i);
    int const row = n / across, column = n % across;
    Spot const head_left{side + column * (leaf_width + 5), leaves_top + row * (leaf_height + 9)};
    Spot const tail_left{head_left.x, head_left.y + leaf_height}, head_right{head_left.x + leaf_width, head_left.y},
        tail_right{head_left.x + leaf_width, head_left.y + leaf_height};
    svg.open("leaf");
    if (shown.chain_lines) {
      bool const vertical = *shown.chain_lines == ChainLines::vertical;
      auto const size = vertical ? leaf.width.count() : leaf.height.count();
      auto from = (vertical ? cell.column : cell.row) * size - half_across;
      // Recto up and head up the leaf may lie the other way about than on the sheet.
      bool const other_way = vertical ? folded->gutter_right(at) != rtl : !cell.head_far;
      if (other_way) from = -from - size;
      detail::draw_chains(svg, head_left, leaf_width, leaf_height, vertical, from, from + size, usual_chain_interval);
    }
    auto const draw_mark = [&](std::optional<PointOfLeaf> const& mark, bool countermark) {
      if (!mark) return;
      auto const x = (rtl ? 1 - mark->from_gutter : mark->from_gutter) * leaf_width;
      detail::draw_watermark(svg, {head_left.x + x, head_left.y + mark->from_head * leaf_height}, radius, countermark);
    };
    // A mark on a fold is divided: each leaf has the part that fell to it.
    svg.open_window(head_left, leaf_width, leaf_height);
    draw_mark(shown.watermark_lying(lie), false);
    draw_mark(shown.countermark[static_cast<std::size_t>(lie)], true);
    svg.close_window();
    detail::draw_edge(svg, shown.head, head_left, head_right);
    detail::draw_edge(svg, shown.tail, tail_left, tail_right);
    detail::draw_edge(svg, shown.gutter, rtl ? head_right : head_left, rtl ? tail_right : tail_left);
    detail::draw_edge(svg, shown.fore_edge, rtl ? head_left : head_right, rtl ? tail_left : tail_right);
    std::string name{scheme.gathering(at.gathering).name.view()};
    svg.text({head_left.x + leaf_width / 2, tail_left.y + 3.5}, name.append(std::to_string(at.leaf.number())),
             {.size = 3, .kind = "label"});
    svg.close();
  }
  svg.text({side, page_height - 5},
           "Heavy side: gutter. Broken: bolt. Uneven: deckle. Ring: watermark; ring with cross: countermark.",
           {.size = 2.8, .anchor = Anchor::start});
  return static_cast<Svg&&>(svg).finish();
}

} // namespace v0
} // namespace bifolium
