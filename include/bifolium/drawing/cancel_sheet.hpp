// SPDX-License-Identifier: MIT
/// A cancel to make with one's own hands: a folio sheet whose third page has a mistake, and the leaf that was printed to
/// take its place. The wrong leaf is cut out but for a stub, the new one pasted to it; then the pupil sees why the
/// bibliographer looks for stubs, and why a cancel is joined to nothing. Both sides register like a sheet to fold.
///
/// The marks: the heavy line is the cut that leaves the stub; the hatched strip on the back of the new leaf takes the
/// paste. It is as wide as the stub, so that nothing sticks where the book must open.
#pragma once

#include <bifolium/drawing/foldable.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// How the page with the cancel is laid out, in mm; seen from the front.
struct CancelLayout {
  static constexpr double leaf_width = 75, leaf_height = 105, stub = 9, sheet_top = 24, cancel_top = 148;
  double width{}, height{};
  [[nodiscard]] double fold() const { return width / 2; }
  [[nodiscard]] double cancel_left() const { return width / 2 - leaf_width; }
};

inline void draw_leaf_page(Svg& svg, Spot corner, std::uint16_t page, std::string_view below) {
  Panel const panel{corner, CancelLayout::leaf_width, CancelLayout::leaf_height, 1, 1};
  draw_page_number(svg, panel, 0, 0, {page, Head::far_edge}, 1);
  svg.text(panel.at(0.66, 0.5), below, {.size = 3.2, .italic = true, .kind = "what"});
  if (page == 1 || page == 3) svg.text(panel.at(0.9, 0.5), page == 1 ? "A" : "A2", {.size = 4, .kind = "signature"});
}

inline std::string cancel_side(CancelLayout const& page, bool back, bool turned) {
  auto const side = back ? "back" : "front";
  Svg svg{
      page.width, page.height, std::string{"A cancel to cut and paste, "} + side,
      back ? "Printed paper. The outer side of a folio sheet, pages 4 and 1, and the back of a cancel, page 4, with a "
             "hatched strip to be pasted to a stub."
           : "Printed paper. The inner side of a folio sheet, pages 2 and 3, page 3 with a mistake, and the front of "
             "the "
             "cancel, page 3 set anew."};
  draw_register_marks(svg, page.width, page.height);
  if (turned) svg.open_upside_down("turned", {page.width / 2, page.height / 2});
  auto const w = CancelLayout::leaf_width, h = CancelLayout::leaf_height;
  auto const x = [&](double from_left) { return back ? page.width - from_left : from_left; };
  Spot const sheet{page.fold() - w, CancelLayout::sheet_top}, cancel{page.cancel_left(), CancelLayout::cancel_top};
  svg.text({page.width / 2, 13},
           back ? "printed paper, back: a sheet and its cancel" : "printed paper, front: a sheet and its cancel",
           {.size = 4, .bold = true});
  svg.open(back ? "outer" : "inner");
  svg.rectangle(sheet, 2 * w, h, {.width = 0.5}, "sheet");
  draw_leaf_page(svg, sheet, back ? 4 : 2, back ? "leaf A2, to be cut away" : "leaf A1, stays");
  draw_leaf_page(svg, {page.fold(), sheet.y}, back ? 1 : 3, back ? "leaf A1, stays" : "leaf A2, with a mistake");
  svg.line({page.fold(), sheet.y}, {page.fold(), sheet.y + h},
           {.width = 0.35, .breaks = back ? "2.4 1 0.5 1" : "2.4 1.2"}, "crease");
  auto const cut = x(page.fold() + CancelLayout::stub);
  svg.line({cut, sheet.y}, {cut, sheet.y + h}, {.width = 0.9}, "cut");
  svg.text({x(page.fold() + CancelLayout::stub / 2), sheet.y + h / 2}, "stub",
           {.size = 3, .italic = true, .kind = "stub"});
  svg.close();

  svg.open("cancel");
  Spot const corner{back ? page.width - cancel.x - w : cancel.x, cancel.y};
  svg.rectangle(corner, w, h, {.width = 0.5}, "frame");
  draw_leaf_page(svg, corner, back ? 4 : 3, back ? "the cancel, its back" : "the cancel, the mistake mended");
  if (back) { // its gutter is on the right as seen here
    auto const right = corner.x + w, left = right - CancelLayout::stub;
    svg.line({left, corner.y}, {left, corner.y + h}, {.width = 0.2}, "paste");
    for (double y = corner.y; y + CancelLayout::stub <= corner.y + h + 0.01; y += 3)
      svg.line({left, y + CancelLayout::stub}, {right, y}, {.width = 0.15, .colour = "#555"}, "paste");
  }
  svg.close();

  static constexpr char const* steps[]{"1. Cut sheet and cancel out along their frames.",
                                       "2. Fold the sheet along the broken line, front",
                                       "  inside. It reads 1, 2, 3, 4, but 3 is wrong.",
                                       "3. Cut along the heavy line. Leaf A2 goes;",
                                       "  its stub stays, joined to A1.",
                                       "4. Paste the hatched strip of the cancel on",
                                       "  the stub, page 3 up, edge to the fold.",
                                       "5. Look at the gutter from the head: the",
                                       "  cancel is joined to no leaf.",
                                       "Knives: a steel rule, a board, the hand",
                                       "behind the blade; children use scissors.",
                                       "Never cut or paste anything in an original."};
  if (!back) {
    double y = cancel.y + 8;
    for (std::string_view words : steps) {
      bool const goes_on = words.starts_with("  ");
      if (words.starts_with("Knives")) y += 4;
      svg.text({page.fold() + (goes_on ? 11 : 6), y}, goes_on ? words.substr(2) : words,
               {.size = 3, .anchor = Anchor::start});
      y += 7;
    }
  } else {
    svg.text({page.fold() - 6, cancel.y + 8}, "The hatched strip takes the paste.", {.size = 3, .anchor = Anchor::end});
  }
  if (turned) svg.close();
  return static_cast<Svg&&>(svg).finish();
}

} // namespace detail

/// The two sides of a page to print, cut and paste: A² with leaf A2 cancelled, A²(±A2).
inline SheetToFold cancel_to_paste(PageSize size = PageSize::a4, Duplex duplex = Duplex::long_edge) {
  bool const a4 = size == PageSize::a4;
  detail::CancelLayout const page{a4 ? 210 : 215.9, a4 ? 297 : 279.4};
  return {detail::cancel_side(page, false, false), detail::cancel_side(page, true, duplex == Duplex::short_edge)};
}

} // namespace v0
} // namespace bifolium
