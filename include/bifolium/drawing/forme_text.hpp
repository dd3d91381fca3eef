// SPDX-License-Identifier: MIT
/// Formes in plain text, as the type lies on the stone: far row first, page numbers in columns, an arrow pointing down
/// behind a page whose head lies towards the compositor. (The trade's own star would mislead: it marks inset off-cuts.)
/// The first word says which forme it is; printed paper shows the left-right mirror of it.
#pragma once

#include <bifolium/imposition/imposition.hpp>

#include <string>

namespace bifolium {
inline namespace v0 {

namespace detail {

inline void append_forme(std::string& text, Imposition<> const& formes, int sheet, Side side) {
  text += side == Side::outer ? "outer\n" : side == Side::inner ? "inner\n" : "forme\n";
  std::size_t widest = 1;
  auto const standing = [&](int row, int column) {
    return side == Side::inner ? formes.inner(row, column, sheet) : formes.outer(row, column, sheet);
  };
  for (int r = 0; r < formes.rows(sheet); ++r)
    for (int c = 0; c < formes.columns(sheet); ++c) {
      auto const digits = std::to_string(standing(r, c).page).size();
      widest = digits > widest ? digits : widest;
    }
  for (int r = 0; r < formes.rows(sheet); ++r) {
    std::string line;
    for (int c = 0; c < formes.columns(sheet); ++c) {
      auto const here = standing(r, c);
      auto const number = std::to_string(here.page);
      if (c > 0) line += ' ';
      line.append(widest - number.size(), ' ').append(number).append(here.head == Head::near ? "↓" : " ");
    }
    while (line.back() == ' ') line.pop_back();
    text.append(line).append("\n");
  }
}

} // namespace detail

/// The formes of all sheets: `outer` and `inner`, or `forme` where one prints both sides; several sheets are headed
/// `sheet 1`, `sheet 2`. Allocates the text.
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

} // namespace v0
} // namespace bifolium
