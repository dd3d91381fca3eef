// SPDX-License-Identifier: MIT
/// One sheet drawn four times, as the teaching of imposition has always needed it: above, the type as it lies on the
/// stone; below, the printed paper, which is its mirror, with the lines along which it is cut and folded. Confusing the
/// two is the classic mistake, so every panel says which it is.
#pragma once

#include <bifolium/drawing/detail/panel.hpp>
#include <bifolium/explain/explain_scheme.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// One forme prints both sides: what happens between the impressions, in words, where the inner forme would stand.
inline void tell_of_turning(Svg& svg, Spot at, Axis about, int copies) {
  auto const result = "Cut apart it gives " + counted(copies, "copy", "copies");
  std::string_view const lines[]{"One forme prints both sides of the sheet.",
                                 "After the first impression the sheet is turned",
                                 about == Axis::far_near ? "about its far-near middle line, left for right,"
                                                         : "about its left-right middle line, far for near,",
                                 "and printed again on its other side.",
                                 result,
                                 "of the same pages."};
  at = {at.x + 6, at.y + 12};
  for (auto words : lines) {
    svg.text(at, words, {.size = 3.5, .anchor = Anchor::start});
    at.y += 6;
  }
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
  auto const title = detail::drawing_title(scheme, sheet);
  svg.text({side, 13}, title,
           {.size = Svg::size_within(title, 6, page_width - 2 * side, true), .anchor = Anchor::start, .bold = true});
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
  using detail::Facing;
  detail::DrawnSheet const drawn{scheme, *folded, formes, marks, sheet};
  auto const on_stone = "type on the stone, the compositor at the lower edge",
             to_fold = "printed paper as it lies before the binder, to be folded";
  detail::draw_panel(svg, panel(0, 0, lay.one_forme ? "The one forme" : "Outer forme", on_stone), "outer-type",
                     Facing::outer_type, drawn);
  if (lay.one_forme)
    detail::tell_of_turning(svg, slot(1, 0), lay.turned_about, folded->copies());
  else
    detail::draw_panel(svg, panel(1, 0, "Inner forme", on_stone), "inner-type", Facing::inner_type, drawn);
  detail::draw_panel(
      svg,
      panel(0, 1, lay.one_forme ? "First impression" : "Outer side", "printed paper, the binder turns this side down"),
      "outer", Facing::outer_paper, drawn);
  detail::draw_panel(svg, panel(1, 1, lay.one_forme ? "Second impression, after turning" : "Inner side", to_fold),
                     "inner", Facing::inner_paper, drawn);
  svg.text({side, page_height - 12},
           "Broken line: crease, hollow on this side. Broken line with points: crease, ridge on this side. "
           "Heavy line: cut.",
           {.size = 2.8, .anchor = Anchor::start});
  svg.text({side, page_height - 7.5},
           "The figure in a circle is the step (left out where it could not be read). The rule under a page number is "
           "at its foot.",
           {.size = 2.8, .anchor = Anchor::start});
  return static_cast<Svg&&>(svg).finish();
}

} // namespace v0
} // namespace bifolium
