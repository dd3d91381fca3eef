// SPDX-License-Identifier: MIT
// What is kept of the leaves of schemes is what their folds show (tests/fold compares the folds with published
// sources).
#include <bifolium/evidence/scheme_facts.hpp>

#include "../../bench/leaf_rows/folded.hpp"
#include "check.hpp"

#include <algorithm>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

bool shows_the_same(LeafFacts const& a, LeafFacts const& b) {
  return a.sheet == b.sheet && a.chain_lines == b.chain_lines && a.watermark == b.watermark &&
         a.countermark == b.countermark && a.central == b.central && a.edges == b.edges && a.holes == b.holes;
}

} // namespace

TEST_CASE("leaf_rows.hpp is what bench/write_leaf_rows.cpp writes: run it again if schemes have changed") {
  std::size_t leaves = 0;
  REQUIRE(std::size(detail::leaf_rows::schemes) == scheme_facts().size());
  for (auto const scheme : Attested::all()) {
    CAPTURE(std::string{scheme.id()});
    auto const folded = leaf_rows_of_folds::folded(scheme);
    auto const& kept = scheme_facts()[static_cast<std::size_t>(scheme.row())];
    CHECK(kept.scheme.row() == scheme.row());
    CHECK(kept.format == folded.format);
    CHECK(kept.lay.rows == folded.lay.rows);
    CHECK(kept.lay.columns == folded.lay.columns);
    CHECK(kept.lay.long_side == folded.lay.long_side);
    CHECK(kept.lay.part == folded.lay.part);
    CHECK(kept.lay.one_forme == folded.lay.one_forme);
    CHECK(kept.lay.turned_about == folded.lay.turned_about);
    CHECK(kept.sheets == folded.sheets);
    REQUIRE(kept.gatherings == static_cast<int>(folded.gatherings.size()));
    for (int g = 0; g < kept.gatherings; ++g) {
      auto const& gathering = folded.gatherings[static_cast<std::size_t>(g)];
      REQUIRE(kept.gathering(g).size() == gathering.size());
      CHECK(kept.gathers(static_cast<int>(gathering.size())));
      for (std::size_t k = 0; k < gathering.size(); ++k) CHECK(shows_the_same(kept.gathering(g)[k], gathering[k]));
    }
    double share = 0;
    for (auto const& look : kept.looks) share += look.share;
    CHECK(share == doctest::Approx(1));
    leaves += kept.leaves.size();
    for (auto const& look : kept.looks) // each once
      CHECK(std::count_if(kept.looks.begin(), kept.looks.end(), [&](auto const& o) { return o.edges == look.edges; }) ==
            1);
  }
  CHECK(leaves == detail::leaf_rows::leaves);
}

TEST_CASE("the same edges have the same number in all schemes, and others another, from 0") { // a law
  std::vector<EdgeLook> first;
  for (auto const& scheme : scheme_facts())
    for (auto const& look : scheme.looks) {
      if (look.number == first.size()) first.push_back(look);
      REQUIRE(look.number < first.size());
      for (auto const& other : first) CHECK((other.edges == look.edges) == (other.number == look.number));
    }
  CHECK(first.size() > 1);
}
