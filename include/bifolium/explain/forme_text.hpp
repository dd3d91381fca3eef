// SPDX-License-Identifier: MIT
/// Writes formes as plain text, as the type lies on the stone: the far row first, page numbers in columns, and a down
/// arrow after a page whose head points to the compositor. (The star that printers' manuals use would mislead: there it
/// marks inset off-cuts.) The first word names the forme. Printed paper shows the left-right mirror.
#pragma once

#include <bifolium/core/utf8.hpp>
#include <bifolium/fold/attested.hpp>
#include <bifolium/imposition/imposition.hpp>

#include <concepts>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace bifolium {
inline namespace v0 {

namespace detail {

/// Returns the lines of a forme, of which the first is its name. `on_paper` gives the printed side, which is the
/// left-right mirror.
inline std::vector<std::string> forme_lines(Imposition<> const& formes, int sheet, Side side, bool on_paper = false) {
  std::size_t widest = 1;
  auto const page_at = [&](int row, int column) {
    auto const c = on_paper ? formes.columns(sheet) - 1 - column : column;
    return side == Side::inner ? formes.inner(row, c, sheet) : formes.outer(row, c, sheet);
  };
  for (int r = 0; r < formes.rows(sheet); ++r)
    for (int c = 0; c < formes.columns(sheet); ++c) {
      auto const digits = std::to_string(page_at(r, c).page).size();
      widest = digits > widest ? digits : widest;
    }
  std::vector<std::string> lines;
  lines.push_back(side == Side::outer ? "outer" : side == Side::inner ? "inner" : "forme");
  for (int r = 0; r < formes.rows(sheet); ++r) {
    std::string line;
    for (int c = 0; c < formes.columns(sheet); ++c) {
      auto const here = page_at(r, c);
      auto const number = std::to_string(here.page);
      if (c > 0) line += ' ';
      line.append(widest - number.size(), ' ').append(number).append(here.head == Head::near_edge ? "↓" : " ");
    }
    while (line.back() == ' ') line.pop_back();
    lines.push_back(line);
  }
  return lines;
}
inline void append_forme(std::string& text, Imposition<> const& formes, int sheet, Side side) {
  for (auto const& line : forme_lines(formes, sheet, side)) text.append(line).append("\n");
}
/// Writes one text on the left and one on the right, line by line.
inline void append_beside(std::string& text, std::string_view left, std::string_view right, std::size_t room) {
  std::size_t characters = 0;
  for (std::size_t at = 0; at < left.size(); at += decode(left, at).bytes) ++characters;
  text.append(left).append(room > characters ? room - characters : 0, ' ').append("| ").append(right).append("\n");
}
inline void append_views(std::string& text, Imposition<> const& formes, int sheet, Side side, std::size_t room) {
  auto const type = forme_lines(formes, sheet, side), paper = forme_lines(formes, sheet, side, true);
  for (std::size_t i = 0; i < type.size(); ++i) append_beside(text, type[i], paper[i], room);
}

} // namespace detail

/// Writes the formes of all sheets: `outer` and `inner`, or `forme` if one forme prints both sides. Several sheets have
/// headings `sheet 1`, `sheet 2`. The function allocates memory.
inline std::string forme_text(Imposition<> const& formes) {
  std::string text;
  for (int sheet = 0; sheet < formes.sheets(); ++sheet) {
    if (formes.sheets() > 1) text.append("sheet ").append(std::to_string(sheet + 1)).append("\n");
    if (formes.one_forme(sheet)) {
      detail::append_forme(text, formes, sheet, Side::only);
      continue;
    }
    detail::append_forme(text, formes, sheet, Side::outer);
    detail::append_forme(text, formes, sheet, Side::inner);
  }
  return text;
}
/// Writes the formes of an attested scheme, in the same way.
inline std::string forme_text(Attested scheme) { return forme_text(impose(fold(scheme.scheme()).value())); }

/// Writes the compositor's view beside the binder's: each forme as the type lies on the stone and, to the right of it,
/// the paper printed from it, which is its mirror. Page numbers are never mirrored. In half-sheet work the first
/// impression is shown. The function allocates memory.
inline std::string both_views_text(Imposition<> const& formes) {
  constexpr std::string_view compositor = "the compositor sees type";
  std::string text;
  for (int sheet = 0; sheet < formes.sheets(); ++sheet) {
    if (formes.sheets() > 1) text.append("sheet ").append(std::to_string(sheet + 1)).append("\n");
    auto const wide = static_cast<std::size_t>(formes.columns(sheet)) * (std::to_string(formes.pages()).size() + 2);
    auto const room = (wide < compositor.size() ? compositor.size() : wide) + 1;
    detail::append_beside(text, compositor, "the binder sees paper", room);
    for (auto side : {Side::outer, Side::inner})
      if (!formes.one_forme(sheet)) detail::append_views(text, formes, sheet, side, room);
    if (formes.one_forme(sheet)) detail::append_views(text, formes, sheet, Side::only, room);
  }
  return text;
}
/// Writes both views of an attested scheme, in the same way.
inline std::string both_views_text(Attested scheme) { return both_views_text(impose(fold(scheme.scheme()).value())); }

// clang-format off
/// Does not compile, because a scheme of your own may not fold.
template <std::same_as<Scheme> Own> std::string forme_text(Own const&) = delete; // it may not fold: look at fold(scheme) first, then write forme_text(impose(*folded))
/// Does not compile, because a scheme of your own may not fold.
template <std::same_as<Scheme> Own> std::string both_views_text(Own const&) = delete; // it may not fold: look at fold(scheme) first, then write both_views_text(impose(*folded))
// clang-format on

} // namespace v0
} // namespace bifolium
