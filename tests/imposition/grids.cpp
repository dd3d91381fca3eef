// SPDX-License-Identifier: MIT
// Every grid of tests/imposition/grids.inc, cell for cell, while compiling and when run.
#include <bifolium/imposition.hpp>

#include "check.hpp"

#include <string_view>

using namespace bifolium;

namespace {

enum class Known { published, published_part, folded_before };

/// The forme reads as `grid` says: "4v 5v / 1 8".
template <int N> constexpr bool reads(Imposition<N> const& formes, int sheet, Side side, std::string_view grid) {
  std::size_t at = 0;
  for (int r = 0; r < formes.rows(sheet); ++r)
    for (int c = 0; c < formes.columns(sheet); ++c) {
      int page = 0;
      while (at < grid.size() && grid[at] >= '0' && grid[at] <= '9') page = page * 10 + (grid[at++] - '0');
      bool const down = at < grid.size() && grid[at] == 'v';
      if (down) ++at;
      auto const standing = side == Side::inner ? formes.inner(r, c, sheet) : formes.outer(r, c, sheet);
      if (standing != (down ? head_down(page) : head_up(page))) return false;
      bool const last_column = c + 1 == formes.columns(sheet);
      at += last_column ? 3 : 1;
    }
  return at == grid.size() + 3 && formes.one_forme(sheet) == (side == Side::only);
}

template <SchemeRow Row> inline constexpr Attested row{Row};

constexpr int count_grids(Known known) {
  int count = 0;
#define GRID(name, sheet, side, standing, text) count += Known::standing == known;
#include "imposition/grids.inc"
#undef GRID
  return count;
}

} // namespace

TEST_CASE("folding reproduces every known grid of pages, cell for cell") {
#define GRID(name, sheet, side, standing, text)                                                                        \
  STATIC_CHECK(reads(impose<row<SchemeRow::name>>(), sheet, Side::side, text));                                        \
  CHECK(reads(impose(*fold(row<SchemeRow::name>.scheme())), sheet, Side::side, text));
#include "imposition/grids.inc"
#undef GRID
  CHECK(count_grids(Known::published) == 15);
  CHECK(count_grids(Known::published_part) == 2);
  CHECK(count_grids(Known::folded_before) == 83);
}

TEST_CASE("the printed side is the mirror of its forme: what the folder sees") {
  auto const row_of = [](auto const& formes, Side side, int r, std::initializer_list<int> pages) {
    int c = 0;
    for (int page : pages)
      if (formes.printed(side, r, c++).page != page) return false;
    return c == formes.columns();
  };
  // Nicholson, A Manual of the Art of Bookbinding (1856), Folding: 2 15 14 3 below, 7 10 11 6 above reversed
  constexpr auto const& octavo = impose<schemes::octavo>();
  CHECK(row_of(octavo, Side::inner, 1, {2, 15, 14, 3}));
  CHECK(row_of(octavo, Side::inner, 0, {7, 10, 11, 6}));
  STATIC_CHECK(octavo.printed(Side::inner, 0, 0) == head_down(7));
  // Bosquet, Guide manuel de l'ouvrier relieur (1903): quarto 2 7 below, 3 6 above; off-cut of twelves 11 14 15 10,
  // of twelves in 8 and 4 19 22 23 18 (he reads both from the other end)
  constexpr auto const& quarto = impose<schemes::quarto>();
  CHECK(row_of(quarto, Side::inner, 1, {2, 7}));
  CHECK(row_of(quarto, Side::inner, 0, {3, 6}));
  CHECK(row_of(impose<schemes::duodecimo>(), Side::inner, 0, {11, 14, 15, 10}));
  constexpr auto const& in_eights_and_fours = impose<row<SchemeRow::duodecimo_in_eights_and_fours>>();
  CHECK(row_of(in_eights_and_fours, Side::inner, 0, {19, 22, 23, 18}));
  // Fertel, La science pratique de l'imprimerie (1723), reported by bibliomab (2011): the half-sheet of octavo as
  // printed has 8 1 below and 5 4 above in one half, 2 7 below and 3 6 above in the other
  constexpr auto const& half_sheet = impose<schemes::octavo_half_sheet>();
  CHECK(row_of(half_sheet, Side::only, 1, {2, 7, 8, 1}));
  CHECK(row_of(half_sheet, Side::only, 0, {3, 6, 5, 4}));
}

TEST_CASE("grids that English manuals and French ones name in words") {
  // from memory of the English manuals: half-sheet of sixteens 1 16 15 2 / 8 9 10 7 / 5 12 11 6 / 4 13 14 3, nearest first
  STATIC_CHECK(reads(impose<row<SchemeRow::sextodecimo_half_sheet_abreast>>(), 0, Side::only,
                     "4v 13v 14v 3v / 5 12 11 6 / 8v 9v 10v 7v / 1 16 15 2"));
  // Brossard, Le Correcteur typographe II (1934): rolled 24° has page 3 in the outer forme; in the 24° in three eights
  // page 17 is in the same forme as page 2
  constexpr auto const& rolled = impose<row<SchemeRow::vicesimo_quarto_rolled>>();
  for (int page : {3, 6, 7, 10}) CHECK(rolled.place(page).side == Side::outer);
  constexpr auto const& french = impose<row<SchemeRow::vicesimo_quarto_in_eights>>();
  STATIC_CHECK(french.place(17).side == Side::inner && french.place(2).side == Side::inner);
}

TEST_CASE("feet and heads meet across the rows as the manuals say") {
  // Brossard, Le Correcteur typographe II (1934), djvu 256: in the 16° feet lie together between 9 and 12, 24 and 21, 17 and
  // 20, 16 and 13 of the outer forme, 10 and 11, 23 and 22, 18 and 19, 15 and 14 of the inner
  constexpr auto const& sixteens = impose<schemes::sextodecimo>();
  int const foot_to_foot[][2]{{9, 12}, {24, 21}, {17, 20}, {16, 13}, {10, 11}, {23, 22}, {18, 19}, {15, 14}};
  for (auto const& [near_page, far_page] : foot_to_foot) {
    auto const below = sixteens.place(near_page), above = sixteens.place(far_page);
    CHECK(below.side == above.side);
    CHECK(below.column == above.column);
    CHECK(below.row == above.row + 1);
    CHECK(above.head == Head::far_edge);
    CHECK(below.head == Head::near_edge);
  }
  // djvu 282: the rolled 18° in one gathering has its third row foot to foot with the second
  constexpr auto const& eighteens = impose<row<SchemeRow::octodecimo_rolled>>();
  // djvu 256: in the 12° the third row has its heads against the feet of the second
  constexpr auto const& twelves = impose<schemes::duodecimo>();
  for (int c = 0; c < 6; ++c) {
    CHECK(eighteens.outer(0, c).head == Head::far_edge);
    CHECK(eighteens.outer(1, c).head == Head::near_edge);
  }
  for (int c = 0; c < 4; ++c) {
    CHECK(twelves.outer(0, c).head == Head::near_edge);
    CHECK(twelves.outer(1, c).head == Head::near_edge);
  }
}
