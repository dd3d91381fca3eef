// SPDX-License-Identifier: MIT
/// Draws a book as it is read, opening after opening, to show the result of a sheet that was printed or folded wrong.
/// Every page lies as the reader meets it. If a page is wrong or upside down, its frame is heavy and the correct number
/// is written below it, so that no second picture is needed.
#pragma once

#include <bifolium/drawing/detail/panel.hpp>
#include <bifolium/imposition/misread.hpp>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// The layout of the openings on a page of A4 in landscape. Lengths are in mm.
struct OpeningsLie {
  double page_width{30}, page_height{}, line{};
  int across{};
  static constexpr double side = 12, top = 32, between = 8;
};
inline OpeningsLie openings_lie(int openings) {
  OpeningsLie lie;
  for (;; lie.page_width -= 0.5) {
    lie.page_height = lie.page_width * 1.42;
    lie.line = lie.page_height + 9;
    lie.across = static_cast<int>((297 - 2 * lie.side + lie.between) / (2 * lie.page_width + lie.between));
    lie.across = lie.across < openings ? lie.across : openings;
    if (lie.across == 0) continue;
    int const lines = (openings + lie.across - 1) / lie.across;
    if (lie.top + lines * lie.line + 4 <= 210 || lie.page_width < 4) return lie;
  }
}

/// Returns true if there is no room for "should be" below a page.
constexpr bool is_narrow(double page_width) noexcept { return page_width < 22; }
/// Says how many pages are not as they should be.
inline std::string pages_found(int wrong) {
  return wrong == 0   ? std::string{"Every page is where it should be."}
         : wrong == 1 ? std::string{"One page is not as it should be."}
                      : std::to_string(wrong) + " pages are not as they should be.";
}
/// Draws one page of an opening. `should_be` is the page that should be there, and `widest` the most digits of a page.
inline void draw_met_page(Svg& svg, Panel const& panel, PageRead const& met, int should_be, std::size_t widest) {
  bool const narrow = is_narrow(panel.width), right = met.page == should_be && met.upright;
  svg.open(right ? "right" : "wrong", {.page = met.page});
  svg.rectangle({panel.corner.x + 0.6, panel.corner.y}, panel.width - 1.2, panel.height, {.width = right ? 0.25 : 0.9},
                "leaf");
  draw_page_number(svg, panel, 0, 0,
                   {static_cast<std::uint16_t>(met.page), met.upright ? Head::far_edge : Head::near_edge}, widest);
  if (!right)
    svg.text(Spot{panel.corner.x + panel.width / 2, panel.corner.y + panel.height + 3},
             (narrow ? "(" + std::to_string(should_be) + ")" : "should be " + std::to_string(should_be)),
             {.size = narrow ? 2.6 : 3.2, .kind = "should-be"});
  svg.close();
}

} // namespace detail

/// Draws the openings of a gathering. `pages` is in the order in which a reader meets them, as `pages_met` returns it;
/// the first opening is a single recto. `first_page` is the number of the page that should come first. Precondition: each
/// page is from 1 to 65535, whether met or expected.
inline std::string book_svg(std::vector<PageRead> const& pages, std::string_view title, int first_page = 1,
                            Reads reads = Reads::left_to_right) {
  for (auto const& met : pages) static_cast<void>(detail::page_number(met.page));
  static_cast<void>(detail::page_number(first_page));
  if (pages.size() > static_cast<std::size_t>(detail::highest_page + 1 - first_page))
    broken("a page of a scheme must be from 1 to 65535");
  int const openings = static_cast<int>(pages.size()) / 2 + 1;
  auto const lies = detail::openings_lie(openings);
  double const page_width = lies.page_width, page_height = lies.page_height, between = lies.between, side = lies.side,
               top = lies.top, line = lies.line;
  int const across = lies.across, lines = (openings + across - 1) / across;
  auto width = 2 * side + across * 2 * page_width + (across - 1) * between;
  auto const size = Svg::size_within(title, 5, 297 - 2 * side, true);
  auto const needed = 2 * side + Svg::room(title, size, true);
  width = needed > width ? needed : width;
  bool const rtl = reads == Reads::right_to_left;

  int wrong = 0, widest = 1;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    wrong += pages[i].page != first_page + static_cast<int>(i) || !pages[i].upright ? 1 : 0;
    auto const digits = static_cast<int>(std::to_string(pages[i].page).size());
    widest = digits > widest ? digits : widest;
  }
  auto found = detail::pages_found(wrong);
  if (detail::is_narrow(page_width) && wrong > 0) found += " In brackets: the page that should be there.";
  Svg svg{width, top + lines * line + 4, title,
          "Printed paper, folded: the openings of the book in the order in which they are read. " + found + "\n" +
              pages_text(pages)};
  svg.text({side, 12}, title, {.size = size, .anchor = Anchor::start, .bold = true});
  svg.text({side, 19.5},
           "printed paper, folded: the openings as they are read" + std::string{rtl ? ", from right to left" : ""},
           {.size = 3.2, .anchor = Anchor::start, .italic = true});
  svg.text({side, 25}, found, {.size = 3.2, .anchor = Anchor::start});

  for (std::size_t i = 0; i < pages.size(); ++i) {
    auto const opening = static_cast<int>(i + 1) / 2, row = opening / across, place = opening % across;
    bool const second = i % 2 == 0; // a recto is the second page of its opening
    auto const column = rtl ? across - 1 - place : place;
    auto const left = side + column * (2 * page_width + between) + (second != rtl ? page_width : 0);
    detail::Panel const panel{{left, top + row * line}, page_width, page_height, 1, 1};
    detail::draw_met_page(svg, panel, pages[i], first_page + static_cast<int>(i), static_cast<std::size_t>(widest));
  }
  return static_cast<Svg&&>(svg).finish();
}

} // namespace v0
} // namespace bifolium
