// SPDX-License-Identifier: MIT
// The library's folding against a simulator that turns plates in space: the attested schemes, their mirrors, and schemes
// made up at random. BIFOLIUM_RANDOM_SCHEMES=100000 tries more of them. All constructed; no source.
#include <bifolium/core/message.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include "check.hpp"
#include "fold/inventor.hpp"
#include "fold/simulator.hpp"

#include <map>
#include <string>
#include <utility>
#include <vector>

using namespace bifolium;
using simulator::simulate;

namespace {

/// What the library says, in the simulator's plain tables.
simulator::Formes formes_of(Fold<> const& fold) {
  simulator::Formes plain;
  auto const formes = impose(fold);
  for (int s = 0; s < formes.sheets(); ++s) {
    auto const table = [&](Side side) {
      simulator::Grid grid;
      for (int r = 0; r < formes.rows(s); ++r) {
        grid.emplace_back();
        for (int c = 0; c < formes.columns(s); ++c)
          grid.back().push_back(side == Side::outer ? formes.outer(r, c, s) : formes.inner(r, c, s));
      }
      return grid;
    };
    plain.outer.push_back(table(Side::outer));
    plain.inner.push_back(formes.one_forme(s) ? simulator::Grid{} : table(Side::inner));
    for (int r = 0; r < formes.rows(s); ++r)
      for (int c = 0; c < formes.columns(s); ++c) {
        plain.conjugates.emplace_back();
        if (auto const mate = fold.conjugate(fold.leaf_at(s, r, c))) {
          auto const cell = fold.cell(*mate);
          plain.conjugates.back() = {cell.sheet, cell.row, cell.column};
        }
      }
  }
  return plain;
}

} // namespace

TEST_CASE("plates turned in space give the formes and conjugates of all attested schemes and their mirrors") {
  for (int row = 0; row < Attested::count; ++row) {
    Attested const attested{static_cast<SchemeRow>(row)};
    CAPTURE(attested.id());
    for (auto const& scheme : {attested.scheme(), mirrored(attested.scheme())}) {
      auto const simulated = simulate(scheme);
      REQUIRE(simulated.refused == "");
      CHECK(simulated.formes == formes_of(*fold(scheme)));
    }
  }
}

TEST_CASE("plates turned in space and the library agree on schemes made up at random, the refused ones too") {
  int const tries = random_schemes(4000);
  Inventor inventor{1791};
  int folded = 0, refused = 0, one_forme = 0, several_sheets = 0;
  std::map<std::string, int> reasons;
  for (int i = 0; i < tries; ++i) {
    auto const text = inventor.scheme();
    CAPTURE(text);
    auto const scheme = read_scheme(text);
    if (!scheme) FAIL("the invented text is not in the language: " << message(scheme.error()));
    auto const simulated = simulate(*scheme);
    auto const ours = fold(*scheme);
    CAPTURE(simulated.refused);
    REQUIRE(ours.has_value() == simulated.refused.empty());
    if (!ours) {
      ++refused, ++reasons[simulated.refused];
      continue;
    }
    ++folded;
    one_forme += scheme->sheet(0).one_forme ? 1 : 0;
    several_sheets += scheme->sheets() > 1 ? 1 : 0;
    REQUIRE(simulated.formes == formes_of(*ours));
  }
  MESSAGE(folded << " folded (" << one_forme << " from one forme, " << several_sheets << " of several sheets), "
                 << refused << " refused");
  for (auto const& [reason, times] : reasons) MESSAGE(times << " refused: " << reason);
  CHECK(folded >= tries / 10);
  CHECK(refused >= tries / 10);
  CHECK(one_forme >= tries / 200);
  CHECK(several_sheets >= tries / 100);
}

TEST_CASE("the comparison with the simulator notices two pages exchanged, a head turned, a pair parted") {
  auto const scheme = schemes::duodecimo.scheme();
  auto const right = simulate(scheme).formes;
  auto const grid = formes_of(*fold(scheme));
  REQUIRE(right == grid);
  auto wrong = grid;
  std::swap(wrong.inner[0][0][0].page, wrong.inner[0][1][1].page);
  CHECK_FALSE(right == wrong);
  wrong = grid;
  auto& head = wrong.outer[0][2][3].head;
  head = head == Head::far_edge ? Head::near_edge : Head::far_edge;
  CHECK_FALSE(right == wrong);
  wrong = grid;
  wrong.conjugates[5].reset();
  CHECK_FALSE(right == wrong);
}
