// SPDX-License-Identifier: MIT
// The steps of a folding one by one: what lies where, which pages meet, and what a fold is as a range of leaves.
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include "check.hpp"

#include <algorithm>
#include <ranges>
#include <set>
#include <string>
#include <utility>
#include <vector>

using namespace bifolium;

namespace {

using MeetingPages = std::pair<int, int>;

std::vector<MeetingPages> met(Fold<> const& fold, WalkedStep const& step) {
  std::vector<MeetingPages> pages;
  for (auto const& meeting : step.meetings())
    pages.emplace_back(page_on(fold, meeting.moved), page_on(fold, meeting.kept));
  return pages;
}

std::size_t layers_on_table(Layers const& paper, Scheme const& scheme) {
  std::size_t all = 0;
  for (int piece = 0; piece < scheme.pieces(); ++piece) all += paper.pile(piece).size();
  return all;
}

static_assert(std::ranges::forward_range<Fold<>>);
static_assert(std::ranges::forward_range<Fold<8>>);
static_assert((*walk(schemes::octavo.scheme())).size() == 3);

} // namespace

TEST_CASE("the first fold of an octavo lays 3 on 2 and 6 on 7, as the rows the folder sees say") {
  // Nicholson, A Manual of the Art of Bookbinding (1856), and Bosquet, Guide manuel de l'ouvrier relieur (1903): before
  // the folder lie 2 15 14 3 below and 7 10 11 6 above; the right half goes over on the left.
  auto const scheme = schemes::octavo.scheme();
  auto const folded = *fold(scheme);
  auto const steps = *walk(scheme);
  REQUIRE(steps.size() == 3);
  CHECK(steps[0].halves());
  CHECK(steps[0].far_or_left_extent() == 2);
  CHECK(met(folded, steps[0]) == std::vector<MeetingPages>{{6, 7}, {11, 10}, {3, 2}, {14, 15}});
  CHECK(met(folded, steps[1]).size() == 2);
  CHECK(met(folded, steps[2]).size() == 1);
}

TEST_CASE("the off-cut of a twelve is a third of the sheet") {
  // Bosquet (1903): the far row is cut off and folded by itself.
  auto const scheme = schemes::duodecimo.scheme();
  auto const steps = *walk(scheme);
  REQUIRE(steps.front().step.kind == Step::Kind::cut);
  CHECK(steps.front().far_or_left_extent() == 1);
  CHECK(steps.front().near_or_right_extent() == 2);
  CHECK_FALSE(steps.front().halves());
  CHECK(steps.front().meetings().empty());
  CHECK(steps.front().after.pile(steps.front().step.piece).empty());
}

TEST_CASE(
    "each step begins where the last one ended, no layer is lost, and pages that met are read one after the other") {
  // A law of folding, no source: what lies together stays together, so the layers of a packet meet once each, and the
  // pages that met face one another in the book unless something is set between them.
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const scheme = attested.scheme();
    auto const folded = *fold(scheme);
    auto const steps = *walk(scheme);
    CHECK(steps.size() == static_cast<std::size_t>(scheme.steps()));
    Layers paper{scheme};
    std::vector<int> meetings(static_cast<std::size_t>(scheme.pieces()));
    int apart = 0;
    for (auto const& step : steps) {
      CHECK(step.before == paper);
      paper = step.after;
      CHECK(layers_on_table(paper, scheme) == static_cast<std::size_t>(scheme.cells()));
      for (auto const& [one, other] : met(folded, step)) {
        ++meetings[step.step.piece];
        apart += std::max(one, other) != std::min(one, other) + 1 || std::min(one, other) % 2 != 0;
      }
    }
    int inset = 0;
    for (int g = 0; g < scheme.gatherings(); ++g) inset += scheme.gathering(g).count - 1;
    CHECK(apart <= inset);
    for (int piece = 0; piece < scheme.pieces(); ++piece)
      if (auto const layers = paper.pile(piece).size(); layers > 0)
        CHECK(meetings[static_cast<std::size_t>(piece)] + 1 == static_cast<int>(layers));
  }
}

TEST_CASE("a layer is found by the cell it came from") {
  Layers const paper{schemes::octavo.scheme()};
  auto const found = paper.find(0, 1, 3);
  REQUIRE(found);
  CHECK(found->piece == 0);
  CHECK(found->layer.row == 1);
  CHECK(found->layer.column == 3);
  CHECK_FALSE(found->layer.outer_up);
  CHECK_FALSE(paper.find(0, 2, 0));
  CHECK_FALSE(paper.find(1, 0, 0));
}

TEST_CASE("a crease beside the paper is named with all its digits") {
  for (int line : {2, 12, 127}) {
    auto const text = "scheme s 2°\nsheet S rows 1 columns 2 long-side left-right\nfold S right-over-left " +
                      std::to_string(line) + "\ngathering A S page 1\n";
    auto const scheme = read_scheme(text);
    REQUIRE(scheme);
    for (auto const& error : {walk(*scheme).error(), fold(*scheme).error()}) {
      CHECK(error.problem == Problem::line_outside_piece);
      CHECK(error.place->line == 3);
      CHECK(std::string{error.found} == std::to_string(line));
    }
  }
}

TEST_CASE("the leaves of a fold are a range, each with its two pages") {
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const folded = *fold(attested.scheme());
    int leaves = 0, copies = 0;
    std::set<int> once; // pages of gatherings that are not copies
    for (auto const at : folded) {
      ++leaves;
      auto const pages = folded.pages_of(at);
      auto const cell = folded.cell(at);
      CHECK(folded.leaf_at(cell.sheet, cell.row, cell.column) == at);
      CHECK(pages.recto + 1 == pages.verso());
      CHECK(std::minmax(pages.outer(), pages.inner()) == std::minmax(pages.recto, pages.verso()));
      CHECK((pages.outer() == pages.recto) == cell.recto_down);
      if (folded.is_copy(at.gathering)) {
        ++copies;
      } else {
        CHECK(once.insert(pages.recto).second);
      }
    }
    CHECK(leaves == folded.leaves());
    CHECK(2 * (leaves - copies) == impose(folded).pages());
  }
}
