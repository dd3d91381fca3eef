// SPDX-License-Identifier: MIT
/// Draws the key below a picture of a sheet, with each mark beside its meaning.
#pragma once

#include <bifolium/drawing/detail/panel.hpp>

namespace bifolium {
inline namespace v0 {
namespace detail {

/// Draws marks and their meanings in a row from `at` to the right.
inline void draw_legend(Svg& svg, Spot at, double size = 3) {
  enum class Shown : std::uint8_t { cut, hollow, ridge, step, foot, catchword };
  struct Entry {
    Shown what;
    char const* words; // the length of a std::string_view would be computed while compiling
  };
  static constexpr Entry entries[]{
      {Shown::cut, "cut"},   {Shown::hollow, "fold, hollow here"}, {Shown::ridge, "fold, ridge here"},
      {Shown::step, "step"}, {Shown::foot, "foot of the page"},    {Shown::catchword, "catchword"}};
  svg.open("legend");
  for (auto const& entry : entries) {
    Spot const end{at.x + 12, at.y};
    switch (entry.what) {
    case Shown::cut:
      svg.line(at, end, {.width = 1.4}, "sample");
      break;
    case Shown::hollow:
    case Shown::ridge:
      svg.line(at, end, crease_stroke(entry.what == Shown::hollow, 1), "sample");
      break;
    case Shown::step:
      svg.circle({at.x + 10, at.y}, 1.8, {.width = 0.25}, "white");
      svg.text({at.x + 10, at.y}, "1", {.size = 2.6, .kind = "turn"});
      break;
    case Shown::foot:
      svg.text({at.x + 9, at.y - 0.6}, "8", {.size = 3, .kind = "sample"});
      svg.line({at.x + 8, at.y + 1.2}, {at.x + 10, at.y + 1.2}, {.width = 0.3}, "sample");
      break;
    case Shown::catchword:
      svg.line({at.x + 6, at.y}, end, {.width = 0.5, .colour = "#777"}, "sample");
      break;
    }
    svg.text({end.x + 1.5, at.y}, entry.words, {.size = size, .anchor = Anchor::start, .kind = "legend"});
    at.x = end.x + 1.5 + Svg::room(entry.words, size) + 1;
  }
  svg.close();
}

} // namespace detail
} // namespace v0
} // namespace bifolium
