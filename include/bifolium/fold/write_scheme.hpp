// SPDX-License-Identifier: MIT
/// Writes a scheme in the language of folding, in the order sheets, cuts and folds, gatherings. Comments are lost; the
/// meaning is the same: `read_scheme(write_scheme(s)) == s`.
#pragma once

#include <bifolium/fold/scheme.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

namespace detail {
constexpr char const* word(Axis axis) noexcept { return axis == Axis::far_near ? "far-near" : "left-right"; }
constexpr char const* word(Step const& fold) noexcept {
  if (fold.along == Axis::far_near) return fold.far_or_left_moves ? "left-over-right" : "right-over-left";
  return fold.far_or_left_moves ? "far-over-near" : "near-over-far";
}
} // namespace detail

/// Writes the text of a scheme. The text ends with a line end.
inline std::string write_scheme(Scheme const& scheme) {
  std::string text;
  auto const put = [&](auto const&... parts) { ((text += parts), ...); };
  auto const name = [&](int piece) { return scheme.piece_name(piece).view(); };

  put("scheme ", scheme.id(), " ", scheme.format().symbol().view());
  put(scheme.reads() == Reads::right_to_left ? " reads right-to-left\n" : "\n");
  for (int i = 0; i < scheme.sheets(); ++i) {
    auto const& sheet = scheme.sheet(i);
    put("sheet ", name(i), " rows ", std::to_string(sheet.rows), " columns ", std::to_string(sheet.columns));
    put(sheet.part == PaperPart::half ? " half" : sheet.part == PaperPart::quarter ? " quarter" : "");
    put(" long-side ", detail::word(sheet.long_side));
    if (sheet.one_forme) put(" turned about ", detail::word(sheet.turned_about));
    put("\n");
  }
  for (int i = 0; i < scheme.steps(); ++i) {
    auto const& step = scheme.step(i);
    if (step.kind == Step::Kind::cut)
      put("cut ", name(step.piece), step.along == Axis::far_near ? " column " : " row ", std::to_string(step.line), " ",
          name(step.far_or_left_piece), " ", name(step.near_or_right_piece), "\n");
    else
      put("fold ", name(step.piece), " ", detail::word(step), " ", std::to_string(step.line),
          step.under ? " under\n" : "\n");
  }
  for (int i = 0; i < scheme.gatherings(); ++i) {
    auto const& gathering = scheme.gathering(i);
    put("gathering ", gathering.name.view());
    for (int k = 0; k < gathering.count; ++k) {
      auto const& placed = scheme.placed(gathering.first + k);
      bool const goes_behind = k > 0 && scheme.placed(gathering.first + k - 1).opens_pair;
      put(goes_behind ? "+" : " ", name(placed.piece), placed.heads_near ? ":near" : "",
          placed.recto_inner ? ":inner" : "");
    }
    if (gathering.first_page) put(" page ", std::to_string(*gathering.first_page));
    put("\n");
  }
  return text;
}

} // namespace v0
} // namespace bifolium
