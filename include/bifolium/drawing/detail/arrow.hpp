// SPDX-License-Identifier: MIT
/// Arrows that show how paper moves, as arcs of short straight lines, and text broken into lines.
#pragma once

#include <bifolium/drawing/svg.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Draws an arrow from one point to another along a curve that is up to `high` mm away from the straight line: above a
/// level line, to the left of an upright one. If `under` is true, the line is broken.
inline void draw_bow(Svg& svg, Spot from, Spot to, double high, bool under) {
  bool const level = from.y == to.y;
  Spot const top{(from.x + to.x) / 2 - (level ? 0 : 2 * high), (from.y + to.y) / 2 - (level ? 2 * high : 0)};
  auto const at = [&](double t) {
    auto const u = 1 - t;
    return Spot{u * u * from.x + 2 * u * t * top.x + t * t * to.x, u * u * from.y + 2 * u * t * top.y + t * t * to.y};
  };
  auto const written = [](Spot spot) { return svg_number(spot.x) + " " + svg_number(spot.y); };
  // The head: 3.6 mm along the last stretch, which is nearly straight.
  auto const neck = at(0.85);
  auto const dx = to.x - neck.x, dy = to.y - neck.y;
  auto const tall = dy < 0 ? -dy : dy, wide = dx < 0 ? -dx : dx;
  auto const length = (tall > wide ? 0.96 * tall + 0.4 * wide : 0.96 * wide + 0.4 * tall) + 1e-6;
  auto const back_x = dx / length * 3.6, back_y = dy / length * 3.6;
  Spot const one{to.x - back_x - back_y * 0.4, to.y - back_y + back_x * 0.4},
      other{to.x - back_x + back_y * 0.4, to.y - back_y - back_x * 0.4};
  std::string d = "M " + written(from);
  constexpr int parts = 14;
  for (int i = 1; i < parts - 1; ++i) d.append(" L ").append(written(at(static_cast<double>(i) / parts)));
  d.append(" L ").append(written({to.x - back_x * 0.8, to.y - back_y * 0.8}));
  svg.path(d, {.width = 0.6, .breaks = under ? "1.6 1.2" : ""}, "arrow");
  svg.path("M " + written(to) + " L " + written(one) + " L " + written(other) + " Z", {.width = 0.2}, "arrow", "black");
}

/// Divides a text into lines of at most `width` mm, at blanks.
inline std::vector<std::string> broken_into_lines(std::string_view text, double size, double width) {
  std::vector<std::string> lines;
  while (!text.empty()) {
    std::size_t end = 0;
    for (auto next = text.find(' ');; next = text.find(' ', next + 1)) {
      auto const stop = next == text.npos ? text.size() : next;
      if (end > 0 && Svg::room(text.substr(0, stop), size) > width) break;
      end = stop;
      if (next == text.npos) break;
    }
    lines.emplace_back(text.substr(0, end));
    text.remove_prefix(end < text.size() ? end + 1 : end);
  }
  return lines;
}

} // namespace detail
} // namespace v0
} // namespace bifolium
