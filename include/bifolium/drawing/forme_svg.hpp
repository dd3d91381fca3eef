// SPDX-License-Identifier: MIT
/// Draws one sheet four times, as the teaching of imposition needs it: above, the type as it lies on the stone; below,
/// the printed paper, which is its mirror, with the lines of cuts and folds. Confusing the two is the classic mistake,
/// so every panel says which it is.
#pragma once

#include <bifolium/drawing/detail/arrow.hpp>
#include <bifolium/drawing/detail/legend.hpp>
#include <bifolium/explain/explain_scheme.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Describes how the sheet is turned between the impressions if one forme prints both sides. So the sheet has every page
/// of the forme twice, even where only one half of it is for this book.
inline std::string words_of_turning(Axis about) {
  return std::string{"One forme prints both sides of the sheet. After the first impression the sheet is turned about "
                     "its "}
      .append(about == Axis::far_near ? "far-near middle line, left for right,"
                                      : "left-right middle line, far for near,")
      .append(" and printed again on its other side. Cut apart it gives 2 copies of the same pages.");
}
/// Writes these words in the place of the inner forme.
inline void tell_of_turning(Svg& svg, Spot at, double width, Axis about) {
  at = {at.x + 4, at.y + 12};
  for (auto const& line : broken_into_lines(words_of_turning(about), 4.2, width - 8)) {
    svg.text(at, line, {.size = 4.2, .anchor = Anchor::start});
    at.y += 7;
  }
}

/// Returns true if both formes of a sheet have the same pages, some of them exchanged between the impressions.
inline bool is_transposed(DrawnSheet const& drawn) { return !drawn.lay().one_forme && drawn.fold.copies() > 1; }

/// Lists the pages that change places between the impressions: "pages 7, 8, 11 and 12".
inline std::string exchanged_pages(DrawnSheet const& drawn) {
  std::vector<int> pages;
  for (int r = 0; r < drawn.lay().rows; ++r)
    for (int c = 0; c < drawn.lay().columns; ++c) {
      auto const page = int{drawn.formes.outer(r, c, drawn.sheet).page};
      if (page == drawn.formes.inner(r, c, drawn.sheet).page) continue;
      auto at = pages.begin();
      while (at != pages.end() && *at < page) ++at;
      pages.insert(at, page);
    }
  std::string text = "pages ";
  for (std::size_t i = 0; i < pages.size(); ++i)
    text.append(i == 0 ? "" : i + 1 == pages.size() ? " and " : ", ").append(std::to_string(pages[i]));
  return text;
}

/// The headings of the four panels.
struct FormeHeadings {
  std::string outer_type, inner_type, outer, inner;
};
inline FormeHeadings headings_of(DrawnSheet const& drawn) {
  if (drawn.lay().one_forme) return {"The one forme", "", "First impression", "Second impression, after turning"};
  if (!is_transposed(drawn)) return {"Outer forme", "Inner forme", "Outer side", "Inner side"};
  return {"The one forme, first impression", "The same forme, " + exchanged_pages(drawn) + " exchanged",
          "First impression", "Second impression"};
}

} // namespace detail

/// Draws the formes of one sheet and both printed sides, on an A4 page. Sheets count from 0. Errors: those of `fold`.
/// Precondition: the scheme has the sheet.
inline Expected<std::string> forme_svg(Scheme const& scheme, int sheet = 0) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const formes = impose(*folded);
  auto const& lay = formes.sheet(sheet);
  auto const marks = detail::sheet_marks(scheme, *walk(scheme));
  detail::DrawnSheet const drawn{scheme, *folded, formes, marks, sheet};
  bool const wide = detail::proportion(lay) > 1;
  double const page_width = wide ? 297 : 210, page_height = wide ? 210 : 297;
  double const side = 12, top = 18, between = 8, words = 10, bottom = 13;
  double const width = (page_width - 2 * side - between) / 2, height = (page_height - top - bottom) / 2 - words - 2;

  auto const title = detail::drawing_title(scheme, sheet);
  Svg svg{page_width, page_height, "Formes: " + title,
          "Above: the type as it lies on the stone, far edge up. Below: the printed paper, with its cuts and folds.\n" +
              *explain_steps(scheme)};
  svg.text({side, 12}, title,
           {.size = Svg::size_within(title, 7, page_width - 2 * side, true), .anchor = Anchor::start, .bold = true});

  auto const slot = [&](int right, int lower) {
    return Spot{side + right * (width + between), top + lower * (height + words + 2) + words};
  };
  auto const panel = [&](int right, int lower, std::string const& name, std::string_view what) {
    auto const corner = slot(right, lower);
    svg.text({corner.x + width / 2, corner.y - 7}, name,
             {.size = Svg::size_within(name, 4.6, width, true), .bold = true});
    svg.text({corner.x + width / 2, corner.y - 2.4}, what,
             {.size = Svg::size_within(what, 3.2, width), .italic = true});
    return detail::panel_within({corner.x, corner.y + 0.5}, width, height - 1, lay);
  };
  using detail::Facing;
  auto const headings = detail::headings_of(drawn);
  auto const on_stone = "type on the stone, the compositor at the lower edge";
  detail::draw_panel(svg, panel(0, 0, headings.outer_type, on_stone), "outer-type", Facing::outer_type, drawn);
  if (lay.one_forme)
    detail::tell_of_turning(svg, slot(1, 0), width, lay.turned_about);
  else
    detail::draw_panel(svg, panel(1, 0, headings.inner_type, on_stone), "inner-type", Facing::inner_type, drawn);
  detail::draw_panel(svg, panel(0, 1, headings.outer, "printed paper, turned down before it is folded"), "outer",
                     Facing::outer_paper, drawn);
  detail::draw_panel(svg, panel(1, 1, headings.inner, "printed paper, up before the binder, to be folded"), "inner",
                     Facing::inner_paper, drawn);
  detail::draw_legend(svg, {side, page_height - 7}, wide ? 3.2 : 2.6);
  return static_cast<Svg&&>(svg).finish();
}

} // namespace v0
} // namespace bifolium
