// SPDX-License-Identifier: MIT
/// A cancel to make by hand: a folio sheet whose third page has a mistake, and the leaf printed to replace it. The
/// wrong leaf is cut out except for a stub, and the new leaf is pasted to the stub. The exercise shows why a
/// bibliographer looks for stubs, and why a cancel is joined to no other leaf. Front and back of the printed page
/// match, as those of a sheet to fold.
///
/// The heavy line is the cut that leaves the stub. The hatched strip on the back of the new leaf takes the paste. It is
/// as wide as the stub, so that no paste gets into the fold where the book must open.
#pragma once

#include <bifolium/drawing/foldable.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// The layout of the page with the cancel, in mm, seen from the front.
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

/// One side of the page, with the sheet above and the cancel below.
class CancelSide {
  CancelLayout const& page_;
  bool back_;
  static constexpr double w = CancelLayout::leaf_width, h = CancelLayout::leaf_height;

  /// Returns the distance from the left edge of this side for a distance on the front.
  [[nodiscard]] double x(double from_left) const { return back_ ? page_.width - from_left : from_left; }

  void sheet(Svg& svg) const {
    Spot const corner{page_.fold() - w, CancelLayout::sheet_top};
    svg.open(back_ ? "outer" : "inner");
    svg.rectangle(corner, 2 * w, h, {.width = 0.5}, "sheet");
    draw_leaf_page(svg, corner, back_ ? 4 : 2, back_ ? "leaf A2, to be cut away" : "leaf A1, stays");
    draw_leaf_page(svg, {page_.fold(), corner.y}, back_ ? 1 : 3, back_ ? "leaf A1, stays" : "leaf A2, with a mistake");
    svg.line({page_.fold(), corner.y}, {page_.fold(), corner.y + h}, crease_stroke(!back_, 1), "crease");
    auto const cut = x(page_.fold() + CancelLayout::stub);
    svg.line({cut, corner.y}, {cut, corner.y + h}, {.width = 1.4}, "cut");
    svg.text({x(page_.fold() + CancelLayout::stub / 2), corner.y + h / 2}, "stub",
             {.size = 3, .italic = true, .kind = "stub"});
    svg.close();
  }
  void cancel(Svg& svg) const {
    auto const left = page_.cancel_left();
    svg.open("cancel");
    Spot const corner{back_ ? page_.width - left - w : left, CancelLayout::cancel_top};
    svg.rectangle(corner, w, h, {.width = 0.5}, "frame");
    draw_leaf_page(svg, corner, back_ ? 4 : 3, back_ ? "the cancel, its back" : "the cancel, without the mistake");
    if (back_) { // the gutter is on the right on this side
      auto const right = corner.x + w, strip = right - CancelLayout::stub;
      svg.line({strip, corner.y}, {strip, corner.y + h}, {.width = 0.2}, "paste");
      for (double y = corner.y; y + CancelLayout::stub <= corner.y + h + 0.01; y += 3)
        svg.line({strip, y + CancelLayout::stub}, {right, y}, {.width = 0.15, .colour = "#555"}, "paste");
    }
    svg.close();
  }
  void words(Svg& svg) const {
    auto const top = CancelLayout::cancel_top + 8;
    if (back_)
      return svg.text({page_.fold() - 6, top}, "The hatched strip takes the paste.",
                      {.size = 3, .anchor = Anchor::end});
    static constexpr char const* steps[]{"1. Cut sheet and cancel out along their frames.",
                                         "2. Fold the sheet along the dashes, front",
                                         "  inside. It reads 1, 2, 3, 4, but 3 is wrong.",
                                         "3. Cut along the heavy line. Leaf A2 goes;",
                                         "  its stub stays, joined to A1.",
                                         "4. Put paste on the hatched strip at the",
                                         "  back of the cancel, and lay it on the stub,",
                                         "  page 3 up, its edge to the fold.",
                                         "5. Look at the gutter from the head: the",
                                         "  cancel is joined to no leaf.",
                                         "Knives: a steel rule, a board, fingers away",
                                         "from the blade; children use scissors.",
                                         "Never cut or paste anything in an original."};
    double y = top;
    for (std::string_view line : steps) {
      bool const continued = line.starts_with("  ");
      if (line.starts_with("Knives")) y += 4;
      svg.text({page_.fold() + (continued ? 11 : 6), y}, continued ? line.substr(2) : line,
               {.size = 3, .anchor = Anchor::start});
      y += 7;
    }
  }

public:
  CancelSide(CancelLayout const& page, bool back) : page_{page}, back_{back} {}

  [[nodiscard]] std::string draw(bool turned) const {
    Svg svg{page_.width, page_.height, std::string{"A cancel to cut and paste, "} + (back_ ? "back" : "front"),
            back_ ? "Printed paper. The outer side of a folio sheet, pages 4 and 1, and the back of a cancel, page 4, "
                    "with a hatched strip to be pasted to a stub."
                  : "Printed paper. The inner side of a folio sheet, pages 2 and 3, page 3 with a mistake, and the "
                    "front of the cancel, page 3 set anew."};
    draw_register_marks(svg, page_.width, page_.height);
    if (turned) svg.open_upside_down("turned", {page_.width / 2, page_.height / 2});
    svg.text({page_.width / 2, 13},
             back_ ? "printed paper, back: a sheet and its cancel" : "printed paper, front: a sheet and its cancel",
             {.size = 4, .bold = true});
    sheet(svg), cancel(svg), words(svg);
    if (turned) svg.close();
    return static_cast<Svg&&>(svg).finish();
  }
};

} // namespace detail

/// Draws the two sides of a page to print, cut and paste: A² with leaf A2 cancelled, A²(±A2).
inline SheetToFold cancel_to_paste(PageSize size = PageSize::a4, Duplex duplex = Duplex::long_edge) {
  bool const a4 = size == PageSize::a4;
  detail::CancelLayout const page{a4 ? 210 : 215.9, a4 ? 297 : 279.4};
  return {detail::CancelSide{page, false}.draw(false),
          detail::CancelSide{page, true}.draw(duplex == Duplex::short_edge)};
}

} // namespace v0
} // namespace bifolium
