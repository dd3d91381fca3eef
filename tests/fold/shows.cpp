// SPDX-License-Identifier: MIT
// What leaves show: published physical facts, then the recorded facts of tests/data/leaf_evidence.tsv.
#include <bifolium/fold/shows.hpp>
#include <bifolium/fold/static_fold.hpp>

#include "check.hpp"
#include "data.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

constexpr LeafAt leaf(auto const& fold, int number, int gathering = 0) {
  return {gathering, fold.gathering(gathering).leaf(number)};
}

/// The leaves of a gathering in which the watermark falls when the sheet lies so, and where.
template <int N> std::map<int, PointOfLeaf> marks(Fold<N> const& fold, int gathering, Lie lie) {
  std::map<int, PointOfLeaf> found;
  for (int k = 1; k <= fold.gathering(gathering).leaves(); ++k)
    if (auto const at = shows(fold, leaf(fold, k, gathering)).watermark_lying(lie)) found[k] = *at;
  return found;
}
std::vector<int> leaves(std::map<int, PointOfLeaf> const& found) {
  std::vector<int> numbers;
  for (auto const& [number, at] : found) numbers.push_back(number);
  return numbers;
}
Fold<> folded(char const* id) { return *fold(Attested::find(id)->scheme()); }

} // namespace

TEST_CASE("folio, quarto and octavo as the handbooks describe their leaves") {
  // Aldis, The Printed Book (1916), 'Construction of a Book': folio, chains vertical and mark mid-leaf; quarto, chains
  // horizontal and mark in the inner fold; octavo, chains vertical and mark at the head of the inner fold
  constexpr auto const& folio = fold<schemes::folio>();
  STATIC_CHECK(shows(folio, leaf(folio, 1)).chain_lines == ChainLines::vertical);
  STATIC_CHECK(shows(folio, leaf(folio, 1)).watermark_lying(Lie::as_given) == PointOfLeaf{0.5, 0.5});
  STATIC_CHECK(shows(folio, leaf(folio, 2)).watermark_lying(Lie::end_for_end) == PointOfLeaf{0.5, 0.5});
  STATIC_CHECK(!shows(folio, leaf(folio, 2)).watermark_lying(Lie::as_given));
  constexpr auto const& quarto = fold<schemes::quarto>();
  STATIC_CHECK(shows(quarto, leaf(quarto, 1)).chain_lines == ChainLines::horizontal);
  STATIC_CHECK(shows(quarto, leaf(quarto, 1)).watermark_lying(Lie::end_for_end) == PointOfLeaf{0.5, 0});
  CHECK(leaves(marks(quarto, 0, Lie::as_given)) == std::vector{2, 3});
  CHECK(leaves(marks(quarto, 0, Lie::end_for_end)) == std::vector{1, 4});
  constexpr auto const& octavo = fold<schemes::octavo>();
  STATIC_CHECK(shows(octavo, leaf(octavo, 1)).chain_lines == ChainLines::vertical);
  STATIC_CHECK(shows(octavo, leaf(octavo, 1)).watermark_lying(Lie::as_given) == PointOfLeaf{0, 0});
  CHECK(leaves(marks(octavo, 0, Lie::as_given)) == std::vector{1, 4, 5, 8});
  CHECK(leaves(marks(octavo, 0, Lie::end_for_end)) == std::vector{2, 3, 6, 7});
}

TEST_CASE("twelves imposed for cutting have their mark in leaves 7 and 8 or 11 and 12, at the fore-edge") {
  // R. W. Chapman to R. B. McKerrow, 17 Aug 1924 (Trinity College, Cambridge). Goucher College, format table: outer
  // edge, about a third from the head; the geometry of the mould gives a quarter.
  auto const twelves = folded("12_common");
  CHECK(leaves(marks(twelves, 0, Lie::as_given)) == std::vector{7, 8});
  CHECK(leaves(marks(twelves, 0, Lie::end_for_end)) == std::vector{11, 12});
  for (auto lie : {Lie::as_given, Lie::end_for_end})
    for (auto const& [number, at] : marks(twelves, 0, lie)) {
      CHECK(at.from_gutter == 1);
      CHECK(at.from_head >= 0.20);
      CHECK(at.from_head <= 0.35);
    }
  CHECK(shows(twelves, leaf(twelves, 1)).chain_lines == ChainLines::horizontal);
}

TEST_CASE("chain lines of the larger formats") {
  // Cim, Le Livre III (1907), pp. 89-90: 16° horizontal, 18° vertical, 24° either, 32° vertical; Povey, Studies in
  // Bibliography 9: 24° in three eights horizontal
  auto const of = [](char const* id) {
    auto const f = folded(id);
    return shows(f, leaf(f, 1)).chain_lines;
  };
  CHECK(of("16_one_gathering") == ChainLines::horizontal);
  CHECK(of("18_12_plus_6") == ChainLines::vertical);
  CHECK(of("18_three_6s") == ChainLines::vertical);
  CHECK(of("24_two_12s") == ChainLines::vertical);
  CHECK(of("24_three_8s_french") == ChainLines::horizontal);
  CHECK(of("32_four_8s") == ChainLines::vertical);
}

TEST_CASE("leaf upright on the short side of the sheet has vertical chains, and turned chains turn them") {
  for (int row = 0; row < Attested::count; ++row) {
    Attested const attested{static_cast<SchemeRow>(row)};
    auto const f = *fold(attested.scheme());
    for (int g = 0; g < f.gatherings(); ++g)
      for (int k = 1; k <= f.gathering(g).leaves(); ++k) {
        auto const at = leaf(f, k, g);
        bool const along_short = f.sheet(f.cell(at).sheet).long_side == Axis::left_right;
        CHECK((shows(f, at).chain_lines == ChainLines::vertical) == along_short);
        CHECK((shows(f, at, turned_chain_mould).chain_lines == ChainLines::horizontal) == along_short);
        CHECK_FALSE(shows(f, at, wove_mould).chain_lines);
        CHECK_FALSE(shows(f, at, machine_laid_mould).chain_lines);
      }
  }
}

TEST_CASE("a half-sheet cut before printing turns the chain lines of a folio") {
  // Buhler, Studies in Bibliography 23; Noble, DCRM-L, 1 Dec 2009: folio shape, horizontal chains, on cut royal sheets
  auto const half = *fold(*read_scheme("scheme folio_on_half_sheets 2°\n"
                                       "sheet S rows 1 columns 2 half long-side far-near\n"
                                       "fold S right-over-left 1\ngathering A S\n"));
  CHECK(shows(half, leaf(half, 1)).chain_lines == ChainLines::horizontal);
  // Bowers counts the sheet of paper, Tanselle the piece that went to press (Studies in Bibliography 53)
  CHECK(format_of(half, FormatReading::paper_fraction) == Format::of(4));
  CHECK(format_of(half, FormatReading::pages_per_forme_side) == Format::of(2));
  // the half with the mark has it in the middle of the piece, the other half has none
  CHECK(shows(half, leaf(half, 1)).watermark_lying(Lie::as_given) == PointOfLeaf{0.5, 0});
  CHECK_FALSE(shows(half, leaf(half, 1)).watermark_lying(Lie::end_for_end));
  CHECK(shows(half, leaf(half, 1)).head.kind == Edge::Kind::deckle_or_cut);
  CHECK(shows(half, leaf(half, 1)).fore_edge.kind == Edge::Kind::deckle);
}

TEST_CASE("point-holes fall where the dictionary says") {
  // Roberts & Etherington s.v. pinholes: 2° in the fold of the spine; 4° at or near the head bolt; 8° at the lower
  // fore-edge of the last four leaves, of the first four when imposed from the centre
  auto const holes = [](Fold<> const& f, auto inside) {
    std::set<int> found;
    for (int k = 1; k <= f.gathering(0).leaves(); ++k)
      for (auto const& hole : shows(f, leaf(f, k)).point_holes)
        if (hole) {
          found.insert(k);
          CHECK(inside(*hole));
        }
    return found;
  };
  CHECK(holes(folded("2_folio"), [](PointOfLeaf p) { return p.from_gutter == 0; }) == std::set{1, 2});
  CHECK(holes(folded("4_quarto"), [](PointOfLeaf p) { return p.from_head == 0; }).size() == 4);
  auto const lower_fore_edge = [](PointOfLeaf p) { return p.from_gutter == 1 && p.from_head > 0.8; };
  CHECK(holes(folded("8_octavo"), lower_fore_edge) == std::set{5, 6, 7, 8});
  CHECK(holes(folded("8_from_centre"), lower_fore_edge) == std::set{1, 2, 3, 4});
}

TEST_CASE("half-sheet octavo leaves half of its gatherings without a mark, with a countermark none") {
  // Vander Meulen, Studies in Bibliography 37, p. 72
  auto const f = folded("8_half_sheet");
  auto const bare = [&](int g, Mould const& mould, Lie lie) {
    for (int k = 1; k <= 4; ++k) {
      auto const s = shows(f, leaf(f, k, g), mould);
      if (s.watermark_lying(lie) || s.countermark[static_cast<std::size_t>(lie)]) return false;
    }
    return true;
  };
  for (auto lie : {Lie::as_given, Lie::end_for_end}) {
    CHECK(bare(0, hand_mould, lie) != bare(1, hand_mould, lie));
    CHECK_FALSE(bare(0, countermark_mould, lie));
    CHECK_FALSE(bare(1, countermark_mould, lie));
  }
}

TEST_CASE("a leaf on a bolt only: three columns rolled") {
  auto const rolled = *fold(*read_scheme("scheme rolled 3°\nsheet S rows 1 columns 3 long-side left-right\n"
                                         "fold S right-over-left 2\nfold S right-over-left 1\ngathering A S\n"));
  auto const second = shows(rolled, leaf(rolled, 2));
  CHECK(second.gutter.kind == Edge::Kind::deckle);
  CHECK(second.fore_edge.kind == Edge::Kind::bolt);
  CHECK(second.fore_edge.mate == leaf(rolled, 3));
  CHECK_FALSE(rolled.conjugate(leaf(rolled, 2)));
  CHECK(rolled.conjugate(leaf(rolled, 1)) == leaf(rolled, 3));
}

TEST_CASE("bolts and gutters join in pairs") {
  for (int row = 0; row < Attested::count; ++row) {
    auto const f = *fold(Attested{static_cast<SchemeRow>(row)}.scheme());
    for (int g = 0; g < f.gatherings(); ++g)
      for (int k = 1; k <= f.gathering(g).leaves(); ++k) {
        auto const s = shows(f, leaf(f, k, g));
        auto const back = [&](Edge const& edge, Edge LeafShows::*same) {
          if (edge.mate) CHECK((shows(f, *edge.mate).*same).mate == leaf(f, k, g));
        };
        back(s.head, &LeafShows::head);
        back(s.tail, &LeafShows::tail);
        back(s.fore_edge, &LeafShows::fore_edge);
        back(s.gutter, &LeafShows::gutter);
        CHECK((s.gutter.kind == Edge::Kind::gutter) == f.conjugate(leaf(f, k, g)).has_value());
      }
  }
}

TEST_CASE("leaves show what an earlier simulation recorded (regression)") {
  int facts = 0;
  for (auto const& row : data::rows("leaf_evidence.tsv", 4)) {
    CAPTURE(row[0]);
    CAPTURE(row[1]);
    CAPTURE(row[2]);
    auto const f = folded(row[0].c_str());
    auto const g = std::stoi(row[1]);
    auto const& what = row[2];
    std::ostringstream seen;
    auto const space = [&] { seen << (seen.tellp() > 0 ? " " : ""); };
    if (what == "chain lines") {
      std::set<ChainLines> directions;
      for (int k = 1; k <= f.gathering(g).leaves(); ++k) directions.insert(*shows(f, leaf(f, k, g)).chain_lines);
      for (auto d : directions) seen << (d == ChainLines::vertical ? "vertical" : "horizontal");
    } else if (what == "single leaves") {
      for (int k = 1; k <= f.gathering(g).leaves(); ++k)
        if (!f.conjugate(leaf(f, k, g))) space(), seen << k;
    } else if (what.starts_with("watermark")) {
      auto const half = what[15] == '1' ? Lie::as_given : Lie::end_for_end;
      auto const sheet_number = what.back() >= '1' && what.back() <= '9' ? what.back() - '1' : 0;
      std::ostringstream numbers;
      std::string place;
      for (auto const& [number, at] : marks(f, g, half)) {
        if (f.cell(leaf(f, number, g)).sheet != sheet_number) continue;
        std::ostringstream here;
        here << at.from_head << ' ' << at.from_gutter << " :";
        place = here.str();
        // an earlier fact lists leaves by place; those at other places have a line of their own
        if (row[3].starts_with(place)) numbers << ' ' << number;
      }
      seen << row[3].substr(0, row[3].find(':') + 1) << numbers.str();
    } else {
      auto const blank = what.find(' ');
      auto const kind = what.substr(0, blank), edge = what.substr(blank + 1);
      for (int k = 1; k <= f.gathering(g).leaves(); ++k) {
        auto const s = shows(f, leaf(f, k, g));
        auto const& e = edge == "head" ? s.head : edge == "tail" ? s.tail : s.fore_edge;
        if (kind == "bolts" && e.kind == Edge::Kind::bolt && e.mate->leaf.number() > k)
          space(), seen << k << '~' << e.mate->leaf.number();
        if ((kind == "deckle" && e.kind == Edge::Kind::deckle) || (kind == "cut" && e.kind == Edge::Kind::cut))
          space(), seen << k;
      }
    }
    CHECK(seen.str() == row[3]);
    ++facts;
  }
  CHECK(facts == 1261);
}
