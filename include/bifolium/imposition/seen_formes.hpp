// SPDX-License-Identifier: MIT
/// Converts the formes of an imposition to the input of `find_foldings`, so that the folding can be found again from
/// its result.
#pragma once

#include <bifolium/fold/seen_forme.hpp>
#include <bifolium/imposition/imposition.hpp>

namespace bifolium {
inline namespace v0 {

/// Returns all formes of an imposition, sheet by sheet, the outer (or only) one first, with all pages and heads known.
/// The function allocates memory.
template <int N> constexpr std::vector<SeenForme> seen_formes(Imposition<N> const& formes) {
  std::vector<SeenForme> all;
  for (int sheet = 0; sheet < formes.sheets(); ++sheet)
    for (auto side : {formes.one_forme(sheet) ? Side::only : Side::outer, Side::inner}) {
      if (side == Side::inner && formes.one_forme(sheet)) continue;
      SeenForme forme{sheet, side, formes.rows(sheet), formes.columns(sheet), {}};
      for (auto const page : formes.forme(side, sheet)) forme.pages.push_back({page.page, page.head});
      all.push_back(static_cast<SeenForme&&>(forme));
    }
  return all;
}

} // namespace v0
} // namespace bifolium
