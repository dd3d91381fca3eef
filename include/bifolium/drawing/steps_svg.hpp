// SPDX-License-Identifier: MIT
/// Draws the steps of a scheme, each with the paper before and after it, on pages to print or one by one. The paper is
/// seen from above as it lies before the folder, with the far edge up. The part that moves is shaded. An arrow points
/// to its new place; its line is broken if the part is folded underneath. Thin edges at the right and below are layers
/// of paper that lie underneath.
#pragma once

#include <bifolium/drawing/detail/pile.hpp>
#include <bifolium/drawing/foldable.hpp>
#include <bifolium/explain/explain_scheme.hpp>

#include <string>
#include <vector>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// The data for the pictures of the steps of one scheme.
class StepsDrawn {
  Scheme const& scheme_;
  Fold<> const& fold_;
  std::vector<WalkedStep> const& steps_;
  Imposition<> formes_{fold_};
  std::vector<SheetMark> marks_{};

  [[nodiscard]] DrawnSheet sheet(int number) const { return {scheme_, fold_, formes_, marks_, number}; }
  [[nodiscard]] TableView view(WalkedStep const& walked, double width, double height) const {
    TableView view;
    auto const& step = walked.step;
    bool const cut = step.kind == Step::Kind::cut;
    view.take_in(walked.before, step.piece);
    if (!cut) view.take_in(walked.after, step.piece);
    auto const& lay = scheme_.sheet(walked.before.pile(step.piece).front().sheet);
    auto const ratio = proportion(lay) * lay.rows / lay.columns; // width over height of a leaf
    auto const columns = view.end_column - view.first_column, rows = view.end_row - view.first_row;
    auto const by_width = width / columns, by_height = height / rows * ratio;
    view.cell_width = by_width < by_height ? by_width : by_height;
    view.cell_height = view.cell_width / ratio;
    if (cut) view.gap_along = step.along, view.gap_line = step.line;
    return view;
  }

public:
  StepsDrawn(Scheme const& scheme, Fold<> const& fold, std::vector<WalkedStep> const& steps)
      : scheme_{scheme}, fold_{fold}, steps_{steps} {}

  /// Draws one step in a frame: its number and words, the paper before it on the left, the paper after it on the right.
  void draw(Svg& svg, WalkedStep const& walked, Spot corner, double width, double height) const {
    auto const& step = walked.step;
    auto const number = std::to_string(walked.number + 1);
    svg.open("step");
    svg.circle({corner.x + 4.5, corner.y + 4.5}, 4, {.width = 0.4}, "white");
    svg.text({corner.x + 4.5, corner.y + 4.5}, number,
             {.size = number.size() > 1 ? 4.4 : 5.4, .bold = true, .kind = "turn"});
    auto const words = broken_into_lines(step_words(scheme_, fold_, walked), 3.6, width - 14);
    double y = corner.y + 3;
    for (auto const& line : words) {
      svg.text({corner.x + 12, y}, line, {.size = 3.6, .anchor = Anchor::start, .kind = "words"});
      y += 5;
    }
    auto const top = corner.y + 13 + (words.size() > 2 ? 5.0 * static_cast<double>(words.size() - 2) : 0);
    auto const half = width / 2, left = 8.0;
    auto before = view(walked, half - left - 7, height - (top - corner.y) - 9);
    auto const drawn = sheet(walked.before.pile(step.piece).front().sheet);
    before.corner = {corner.x + left + (half - left - 7 - before.width()) / 2, top + 7};
    draw_pile(svg, before, drawn, walked.before, step.piece, &step);
    draw_step_line(svg, before, walked);
    auto after = before;
    after.corner.x += half;
    after.gap = 3;
    if (step.kind == Step::Kind::cut) {
      draw_pile(svg, after, drawn, walked.after, step.far_or_left_piece, nullptr);
      draw_pile(svg, after, drawn, walked.after, step.near_or_right_piece, nullptr);
    } else {
      after.gap = 0;
      draw_pile(svg, after, drawn, walked.after, step.piece, nullptr);
    }
    svg.close();
  }

  /// Describes what to do when every fold is made.
  [[nodiscard]] std::string last_words() const {
    std::string text;
    for (int g = 0; g < fold_.gatherings(); ++g) text.append(gathering_words(scheme_, fold_, g)).append(" ");
    text.append("Hold each gathering with its spine on the ");
    text.append(fold_.reads() == Reads::right_to_left ? "right" : "left");
    return text.append(" and slit the folds at head and fore-edge: the pages are upright and run on from ")
        .append(std::to_string(fold_.first_page(0)))
        .append(". A knife goes away from the body; never cut an original.");
  }

  [[nodiscard]] std::string page(std::size_t first, double width, double height) const {
    constexpr double side = 14, top = 22, between = 6;
    auto const tile_width = (width - 2 * side - between) / 2, tile_height = (height - top - 12) / 2;
    auto const title = title_of(scheme_);
    Svg svg{width, height, "The steps: " + title, "The paper before and after each step, seen from above."};
    svg.text({side, 12}, title,
             {.size = Svg::size_within(title, 6, width - 2 * side, true), .anchor = Anchor::start, .bold = true});
    for (std::size_t i = 0; i < 4; ++i) {
      auto const column = i % 2, row = i / 2;
      Spot const corner{side + static_cast<double>(column) * (tile_width + between),
                        top + static_cast<double>(row) * tile_height};
      if (first + i < steps_.size()) draw(svg, steps_[first + i], corner, tile_width, tile_height - 4);
      if (first + i != steps_.size()) continue;
      double y = corner.y + 3;
      for (auto const& line : broken_into_lines(last_words(), 3.6, tile_width - 4)) {
        if (y + 2 > corner.y + tile_height) break;
        svg.text({corner.x + 2, y}, line, {.size = 3.6, .anchor = Anchor::start, .kind = "words"});
        y += 5;
      }
    }
    return static_cast<Svg&&>(svg).finish();
  }
};

} // namespace detail

/// Draws one step as a picture of 130 x 76 mm. Steps count from 0. Errors: those of `fold`. Precondition: the scheme
/// has the step.
inline Expected<std::string> step_svg(Scheme const& scheme, int number) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const steps = walk(scheme);
  if (!steps) return steps.error();
  if (number < 0 || number >= scheme.steps()) broken("the scheme has no step with this number");
  auto const& walked = (*steps)[static_cast<std::size_t>(number)];
  constexpr double width = 130, height = 76;
  Svg svg{width, height, "Step " + std::to_string(number + 1) + ": " + title_of(scheme),
          "The paper before and after. " + detail::step_words(scheme, *folded, walked)};
  detail::StepsDrawn{scheme, *folded, *steps}.draw(svg, walked, {1, 1}, width - 2, height - 2);
  return static_cast<Svg&&>(svg).finish();
}

/// Draws all steps of a scheme on pages in landscape, four to a page, with what to do at the end last. A scheme without
/// steps gives one page. The function allocates memory. Errors: those of `fold`.
inline Expected<std::vector<std::string>> steps_svg(Scheme const& scheme, PageSize size = PageSize::a4) {
  auto const folded = fold(scheme);
  if (!folded) return folded.error();
  auto const steps = walk(scheme);
  if (!steps) return steps.error();
  detail::StepsDrawn const drawn{scheme, *folded, *steps};
  bool const a4 = size == PageSize::a4;
  std::vector<std::string> pages;
  for (std::size_t first = 0; first <= steps->size(); first += 4)
    pages.push_back(drawn.page(first, a4 ? 297 : 279.4, a4 ? 210 : 215.9));
  return pages;
}

} // namespace v0
} // namespace bifolium
