// SPDX-License-Identifier: MIT
// Signs that no leaf of a format shows. Folds, bolts and marks of folio, quarto, octavo and duodecimo are those of the manuals:
// Gaskell, A New Introduction to Bibliography (1972), pp. 84-107 (from memory); the leaves of an octavo gathering with the mark,
// and the exceptions, are from the pages named beside them.
#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/signs_against.hpp>

#include <algorithm>
#include <doctest/doctest.h>

using namespace bifolium;

namespace {
using EdgeSeen::bolt, EdgeSeen::deckle;
using MarkPlace::absent, MarkPlace::centre, MarkPlace::corner, MarkPlace::gutter, MarkPlace::head_of_gutter;

std::vector<SignAgainst> against(LeafEvidence const& seen, int format) {
  return signs_against(*observe(seen), Format::of(format));
}
bool has(std::vector<SignAgainst> const& signs, std::string_view field) {
  return std::any_of(signs.begin(), signs.end(), [&](SignAgainst const& one) { return one.field == field; });
}
} // namespace

TEST_CASE("edges that the folds of a format do not leave") {
  struct Edges {
    EdgeSeen head, tail, fore_edge;
    bool in_2, in_4, in_8;
  };
  constexpr auto none = EdgeSeen::unknown;
  // a folio has one fold, at the spine; a quarto has bolts at the head only, an octavo at head and fore-edge
  for (auto const& row :
       {Edges{bolt, none, none, false, true, true}, Edges{none, bolt, none, false, false, false},
        Edges{none, none, bolt, false, false, true}, Edges{deckle, deckle, deckle, true, false, false},
        Edges{bolt, deckle, none, false, true, true}, Edges{deckle, bolt, none, false, false, false},
        Edges{bolt, deckle, deckle, false, true, true}, Edges{none, none, deckle, true, true, true},
        Edges{none, none, none, true, true, true}}) {
    LeafEvidence const seen{.head = row.head, .tail = row.tail, .fore_edge = row.fore_edge};
    CAPTURE(static_cast<int>(row.head));
    CAPTURE(static_cast<int>(row.tail));
    CAPTURE(static_cast<int>(row.fore_edge));
    CHECK(has(against(seen, 2), "edges") == !row.in_2);
    CHECK(has(against(seen, 4), "edges") == !row.in_4);
    CHECK(has(against(seen, 8), "edges") == !row.in_8);
  }
}

TEST_CASE("marks in leaves where the folds do not put them") {
  struct Mark {
    MarkPlace place;
    bool in_2, in_4, in_8;
  };
  for (auto const& [place, in_2, in_4, in_8] :
       {Mark{centre, true, false, false}, Mark{gutter, false, true, false}, Mark{head_of_gutter, false, false, true}}) {
    for (auto const year : {1480, 1550, 1650}) {
      LeafEvidence const first{.watermark = place, .year = year}, second{.countermark = place, .year = year};
      CHECK(has(against(first, 2), "watermark") == !in_2);
      CHECK(has(against(first, 4), "watermark") == !in_4);
      CHECK(has(against(first, 8), "watermark") == !in_8);
      CHECK(has(against(second, 2), "countermark") == !in_2);
      CHECK(has(against(second, 4), "countermark") == !in_4);
      CHECK(has(against(second, 8), "countermark") == !in_8);
    }
    // the act of 1794 moved marks (McMullin, Studies in Bibliography 56)
    LeafEvidence const british{.watermark = place, .year = 1805, .place = Region::britain};
    for (auto const format : {2, 4, 8}) CHECK(against(british, format).empty());
  }
  // countermarks in the corner of the sheet, Italy from about 1480: common practice, no source
  CHECK(against({.countermark = corner, .year = 1490}, 2).empty());
  CHECK(against({.watermark = absent, .countermark = absent, .year = 1490}, 4).empty());
}

TEST_CASE("the leaves with the mark in an octavo gathering of eight: of a sheet, or of two half-sheets one inside the "
          "other") {
  // one sheet: 1 4 5 8 or 2 3 6 7 (common practice; Vander Meulen, Studies in Bibliography 37); half-sheets inset: 1 2 7 8 or
  // 3 4 5 6, by folding paper. Of each, the leaves that were looked at show it, or all lack it; every set of four leaves or fewer
  int looked_at = 0, possible = 0;
  for (unsigned seen = 1; seen < 256; ++seen)
    for (unsigned marked = seen;; marked = (marked - 1) & seen) {
      EvidenceOfLeaves leaves{};
      int count = 0;
      for (int k = 0; k < 8; ++k)
        if ((seen >> k & 1U) != 0)
          leaves[static_cast<std::size_t>(count++)] = {k + 1, (marked >> k & 1U) != 0 ? head_of_gutter : absent, {}};
      if (count <= 4) {
        bool shown = marked == 0;
        for (unsigned const with : {0b10011001U, 0b01100110U, 0b11000011U, 0b00111100U})
          shown = shown || marked == (seen & with);
        CAPTURE(seen);
        CAPTURE(marked);
        auto const signs = against({.gathering_leaves = 8, .leaves = leaves, .year = 1550}, 8);
        ++looked_at, possible += shown ? 1 : 0;
        CHECK(has(signs, "leaves") == !shown);
      }
      if (marked == 0) break;
    }
  CHECK(looked_at > 1000);
  CHECK(possible > 300);
}

TEST_CASE("a format is not established on signs of which one is against it") {
  auto const leaf = [](int number, MarkPlace mark) { return EvidenceOfLeaf{number, mark, {}}; };
  LeafEvidence octavo{
      .height = 170_mm,
      .width = 105_mm,
      .chain_lines = ChainLines::vertical,
      .gathering_leaves = 8,
      .leaves = {leaf(1, head_of_gutter), leaf(2, head_of_gutter), leaf(3, head_of_gutter), leaf(4, absent)}};
  auto const inference = infer_format(*observe(octavo));
  CHECK(inference.front().format == Format::of(8));
  CHECK(inference.certainty < Certainty::established);
  octavo.year = 1550; // before second marks were common
  auto const signs = against(octavo, 8);
  REQUIRE(has(signs, "leaves"));
  CHECK(std::find(signs.begin(), signs.end(), SignAgainst{EvidenceKind::leaves, "leaves", {1, 3}}) != signs.end());
  octavo.leaves = {leaf(1, head_of_gutter), leaf(2, absent), leaf(3, absent), leaf(4, head_of_gutter)};
  CHECK(against(octavo, 8).empty());
  octavo.year = std::nullopt;
  CHECK(infer_format(*observe(octavo)).certainty == Certainty::established);
  // both leaves of a folio sheet show a mark only on paper with two
  LeafEvidence folio{.height = 300_mm,
                     .width = 210_mm,
                     .chain_lines = ChainLines::vertical,
                     .gathering_leaves = 2,
                     .leaves = {leaf(1, centre), leaf(2, centre)},
                     .year = 1480};
  CHECK(has(against(folio, 2), "leaves"));
  CHECK(infer_format(*observe(folio)).certainty < Certainty::established);
  folio.leaves = {leaf(1, centre), leaf(2, absent)};
  CHECK(against(folio, 2).empty());
  CHECK(infer_format(*observe(folio)).certainty == Certainty::established);
  // a countermark
  folio.leaves = {leaf(1, centre), leaf(2, centre)}, folio.year = 1700;
  CHECK(against(folio, 2).empty());
}

TEST_CASE("point-holes that the presses of a format do not make") { // Roberts & Etherington s.v. pinholes
  using HolePlace::fore_edge, HolePlace::head, HolePlace::spine_fold;
  CHECK(against({.point_hole = spine_fold}, 2).empty());
  CHECK(against({.point_hole = head}, 2).empty()); // of some very early books
  CHECK(against({.point_hole = head}, 4).empty());
  CHECK(against({.point_hole = fore_edge}, 8).empty());
  CHECK(has(against({.point_hole = fore_edge}, 2), "point_hole"));
  CHECK(has(against({.point_hole = fore_edge}, 4), "point_hole"));
}

TEST_CASE("no leaf of a scheme is against its own format") {
  for (auto const& scheme : scheme_facts())
    for (auto const& leaf : scheme.leaves)
      for (std::size_t lie = 0; lie < 2; ++lie) {
        CAPTURE(scheme.scheme.id());
        LeafEvidence seen{.watermark = leaf.watermark[lie], .countermark = leaf.countermark[lie], .year = 1700};
        auto const edge = [](EdgeFacts const& one) {
          return one.bolt ? bolt : one.deckle > 0 ? deckle : EdgeSeen::unknown;
        };
        seen.head = edge(leaf.edges[0]), seen.tail = edge(leaf.edges[1]), seen.fore_edge = edge(leaf.edges[2]);
        seen.point_hole = leaf.holes[lie];
        CHECK(signs_against(*observe(seen), scheme.format).empty());
      }
  CHECK(signs_against(*observe({.material = Material::vellum, .head = bolt}), Format::of(2)).empty());
}

TEST_CASE(
    "a leaf that was cropped keeps neither bolts nor deckle") { // by the words; a warning, as one edge may be left
  for (auto const state :
       {LeafState::unknown, LeafState::uncut, LeafState::trimmed, LeafState::rebound, LeafState::cropped})
    for (auto const edge : {EdgeSeen::unknown, bolt, deckle, EdgeSeen::tranchefile}) {
      auto const warned = [](LeafEvidence const& seen) {
        auto const observation = *observe(seen);
        return std::any_of(observation.warnings().begin(), observation.warnings().end(),
                           [](Error const& one) { return one.problem == Problem::edges_of_cropped_leaf; });
      };
      bool const odd = state == LeafState::cropped && edge != EdgeSeen::unknown;
      CHECK(warned({.head = edge, .state = state}) == odd);
      CHECK(warned({.tail = edge, .state = state}) == odd);
      CHECK(warned({.fore_edge = edge, .state = state}) == odd);
    }
}

TEST_CASE("a sign in words") {
  auto const octavo = Format::of(8);
  CHECK(to_words({EvidenceKind::edges, "edges", {}}, octavo) == "no leaf of 8° has its edges so");
  CHECK(to_words({EvidenceKind::point_hole, "point_hole", {}}, octavo) == "no leaf of 8° has a point-hole there");
  CHECK(to_words({EvidenceKind::watermark, "countermark", {}}, octavo) == "no leaf of 8° has its countermark there");
  CHECK(to_words({EvidenceKind::leaves, "leaves", {}}, octavo) ==
        "no gathering of 8° shows the marks and chain lines of these leaves");
  CHECK(
      to_words({EvidenceKind::leaves, "leaves", {3, 5}}, octavo) ==
      "no gathering of 8° shows the marks and chain lines of these leaves; they would agree without leaf 3 or without "
      "leaf 5");
}
