// SPDX-License-Identifier: MIT
#include <bifolium/fold/static_fold.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/static_impose.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

template <auto const& S> void keeps_every_place() {
  constexpr auto const& made = impose<S>();
  Imposition<> const moved = made;
  auto const again = impose(*fold(S.scheme()));
  CHECK(moved == again);
  for (int page = 0; page <= 200; ++page) {
    CAPTURE(page);
    CHECK(moved.find_place(page) == again.find_place(page));
    if (!made.find_place(page)) continue;
    CHECK(moved.find_place(page) == made.find_place(page));
    CHECK(moved.second_place(page) == made.second_place(page));
    auto const at = moved.place(page);
    CHECK((at.side == Side::inner ? moved.inner(at.row, at.column, at.sheet) : moved.outer(at.row, at.column, at.sheet))
              .page == page);
  }
}

} // namespace

TEST_CASE("an imposition known while compiling keeps every place when it becomes one known when run") {
  keeps_every_place<schemes::folio>();
  keeps_every_place<schemes::quarto>();
  keeps_every_place<schemes::octavo>();
  keeps_every_place<schemes::octavo_half_sheet>();
}

namespace {

struct Places {
  int in_two{}, across_sheets{};
};
/// Compares the places of each page with those found by looking through all formes.
void places_of(Scheme const& scheme, Places& found) {
  auto const formes = impose(*fold(scheme));
  // where each page is, by looking through all formes
  std::vector<std::vector<FormePosition>> places(600);
  for (int sheet = 0; sheet < formes.sheets(); ++sheet)
    for (auto side : {formes.one_forme(sheet) ? Side::only : Side::outer, Side::inner}) {
      if (side == Side::inner && formes.one_forme(sheet)) continue;
      for (int row = 0; row < formes.rows(sheet); ++row)
        for (int column = 0; column < formes.columns(sheet); ++column) {
          auto const imposed =
              side == Side::inner ? formes.inner(row, column, sheet) : formes.outer(row, column, sheet);
          places[static_cast<std::size_t>(imposed.page)].push_back(
              {static_cast<std::uint8_t>(sheet), static_cast<std::uint8_t>(row), static_cast<std::uint8_t>(column),
               side, imposed.head});
        }
    }
  for (int page = 1; page < 600; ++page) {
    auto const& there = places[static_cast<std::size_t>(page)];
    CAPTURE(page);
    CHECK(formes.find_place(page).has_value() == !there.empty());
    if (there.empty()) continue;
    REQUIRE(there.size() <= 2);
    CHECK(formes.place(page) == there[0]);
    CHECK(formes.second_place(page).has_value() == (there.size() == 2));
    if (there.size() < 2) continue;
    CHECK(*formes.second_place(page) == there[1]);
    ++found.in_two;
    found.across_sheets += there[0].sheet != there[1].sheet;
  }
}

} // namespace

TEST_CASE("every place of a page is told, the second one too, in any scheme") {
  Places attested;
  for (auto const scheme : Attested::all()) {
    CAPTURE(scheme.id());
    places_of(scheme.scheme(), attested);
  }
  CHECK(attested.in_two > 0);
  // two sheets with the same pages, each in the outer forme of both or in the inner one of both (constructed)
  auto const two = read_scheme("scheme two 2°\n"
                               "sheet S rows 1 columns 2 long-side left-right\n"
                               "sheet T rows 1 columns 2 long-side left-right\n"
                               "fold S right-over-left 1\n"
                               "fold T right-over-left 1\n"
                               "gathering A S page 1\n"
                               "gathering B T page 1\n");
  REQUIRE(two);
  REQUIRE(fold(*two));
  Places own;
  places_of(*two, own);
  CHECK(own.in_two == 4);
  CHECK(own.across_sheets == 4);
}

TEST_CASE("pages that leave gaps are found in every run of them, in whatever order the sheets have them") {
  // three sheets of a folio (constructed): touching, with gaps, with the last pages on the first sheet
  for (int const one : {1, 5, 301})
    for (int const two : {1, 5, 9, 13, 305, 501})
      for (int const three : {1, 7, 9, 401, 595}) {
        auto const apart = [](int a, int b) { return a - b >= 4 || b - a >= 4; };
        if (!apart(one, two) || !apart(two, three) || !apart(one, three)) continue;
        CAPTURE(one);
        CAPTURE(two);
        CAPTURE(three);
        auto const scheme = read_scheme("scheme three 2°\n"
                                        "sheet S rows 1 columns 2 long-side left-right\n"
                                        "sheet T rows 1 columns 2 long-side left-right\n"
                                        "sheet U rows 1 columns 2 long-side left-right\n"
                                        "fold S right-over-left 1\n"
                                        "fold T right-over-left 1\n"
                                        "fold U right-over-left 1\n"
                                        "gathering A S page " +
                                        std::to_string(one) + "\ngathering B T page " + std::to_string(two) +
                                        "\ngathering C U page " + std::to_string(three) + "\n");
        REQUIRE(scheme);
        REQUIRE(fold(*scheme));
        auto const formes = impose(*fold(*scheme));
        CHECK(formes.pages() == 12);
        Places places;
        places_of(*scheme, places);
        CHECK(places.in_two == 0);
      }
}
