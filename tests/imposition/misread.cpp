// SPDX-License-Identifier: MIT
// Two pages in each other's place: what the reader meets. The orders are written down by hand, and the laws are those of
// any exchange.
#include <bifolium/fold/attested.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/misread.hpp>

#include "check.hpp"

#include <algorithm>
#include <random>
#include <string>
#include <vector>

using namespace bifolium;

TEST_CASE("the reader meets two pages in each other's place") {
  auto const folded = fold(schemes::octavo.scheme()).value();
  auto const right = impose(folded);
  auto const met = [&](int page, int other, ExchangedHeads heads) {
    return pages_text(pages_met(*exchanged(right, page, other, heads), folded));
  };
  using Heads = ExchangedHeads;
  CHECK(met(3, 6, Heads::of_place) == "1 2 6 4 5 3 7 8 9 10 11 12 13 14 15 16");
  CHECK(met(3, 6, Heads::of_page) == "1 2 6↓ 4 5 3↓ 7 8 9 10 11 12 13 14 15 16");
  CHECK(met(6, 3, Heads::of_page) == met(3, 6, Heads::of_page));
  CHECK(met(3, 14, Heads::of_page) == "1 2 14 4 5 6 7 8 9 10 11 12 13 3 15 16"); // their heads lie alike
  CHECK(met(1, 2, Heads::of_place) == "2 1 3 4 5 6 7 8 9 10 11 12 13 14 15 16"); // of two formes
  CHECK(met(5, 5, Heads::of_page) == "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16");
  // one forme of a half-sheet prints both sides, so the pages are exchanged in every copy
  auto const half = fold(schemes::octavo_half_sheet.scheme()).value();
  CHECK(pages_text(pages_met(*exchanged(impose(half), 2, 7), half)) == "1 7 3 4 5 6 2 8");
  // while compiling
  STATIC_CHECK(exchanged(impose<schemes::folio>(), 1, 4)->outer(0, 0).page ==
               impose<schemes::folio>().outer(0, 1).page);
}

TEST_CASE("an exchange changes two pages and nothing else, and is undone by another") {
  std::mt19937 random{1683};
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const folded = *fold(attested.scheme());
    auto const right = impose(folded);
    std::vector<int> pages;
    for (int page = 1; page <= right.last_page(); ++page)
      if (right.find_place(page)) pages.push_back(page);
    CHECK(static_cast<int>(pages.size()) == right.pages());
    CHECK_FALSE(right.find_place(right.last_page() + 1));
    for (int round = 0; round < 8; ++round) {
      auto const one = pages[random() % pages.size()], other = pages[random() % pages.size()];
      for (auto const heads : {ExchangedHeads::of_place, ExchangedHeads::of_page}) {
        auto const wrong = *exchanged(right, one, other, heads);
        CHECK(*exchanged(wrong, other, one, heads) == right);
        auto const was = right.place(one), is = wrong.place(one);
        CHECK((one == other || is != was));
        bool const twice = right.second_place(one) || right.second_place(other);
        bool const differ = right.place(one).head != right.place(other).head;
        for (int g = 0; g < folded.gatherings(); ++g) {
          auto const before = pages_met(right, folded, g), after = pages_met(wrong, folded, g);
          for (std::size_t i = 0; i < before.size(); ++i) {
            auto const page = before[i].page;
            bool const touched = one != other && (page == one || page == other);
            if (touched && twice) continue; // the other place of the page is as it was
            CHECK(after[i].page == (!touched ? page : page == one ? other : one));
            bool const turned = touched && differ && heads == ExchangedHeads::of_page;
            CHECK(after[i].upright == (before[i].upright != turned));
          }
        }
      }
    }
  }
}
