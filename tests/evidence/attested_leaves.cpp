// SPDX-License-Identifier: MIT
// Leaves made by every attested scheme, and leaves of all sizes: what is told of their paper and printing must be what
// such a leaf can have. The schemes and the division of sheets are the source; names and sizes of sheets are published.
#include <bifolium/evidence.hpp>
#include <bifolium/explain/inference_words.hpp>

#include "inference_of.hpp"

#include <doctest/doctest.h>
#include <string>
#include <string_view>

using namespace bifolium;

namespace {

FormatCandidate const& candidate_for(Inference const& inference, Format format) {
  for (auto const& one : inference)
    if (one.format == format) return one;
  FAIL("the format is not ranked");
  return inference.front();
}
/// Whether it can be cut from the sheet, within what sheets of one name differ by.
bool may_come_from(LeafSize<millimetres> uncut, double height, double width) {
  return uncut.height.count() * 1.0451 >= height && uncut.width.count() * 1.0451 >= width;
}

} // namespace

TEST_CASE("no leaf is told off for the chain lines that an attested scheme gives it") {
  // Cim, Le Livre III (1907), pp. 89-90: 24° has its chain lines either way; the others as the schemes fold
  for (auto const& scheme : scheme_facts())
    for (int g = 0; g < scheme.gatherings; ++g)
      for (auto const sheet : {Sheet<millimetres>{340_mm, 430_mm}, Sheet<millimetres>{445_mm, 570_mm}}) {
        auto const leaf = leaf_size(scheme.lay, sheet);
        auto const inference = of({.height = leaf.height,
                                   .width = leaf.width,
                                   .chain_lines = scheme.gathering(g)[0].chain_lines,
                                   .gathering_leaves = scheme.gathered[static_cast<std::size_t>(g)],
                                   .state = LeafState::uncut,
                                   .year = 1650});
        CAPTURE(std::string{scheme.scheme.id()});
        auto const& candidate = candidate_for(inference, scheme.format);
        CHECK(candidate.reason(EvidenceKind::chain_lines).weight > -weight_that_counts);
        CHECK(candidate.kind->chain_lines == scheme.gathering(g)[0].chain_lines);
        CHECK(candidate.twofold < 0.5);
      }
}

TEST_CASE("half-sheets are told of gatherings of half a sheet, unless manuals make two such gatherings of a sheet") {
  struct Row {
    int leaves, gathering;
    bool two_to_sheet;
  };
  // Two to the sheet: sixteens in eights in MacKellar, The American Printer (1893), Cim, Le Livre III (1907), and
  // Lenormand, Manuel du relieur (1900); twenty-fours in twelves in Luckombe (1771), pp. 419-420, Lenormand and
  // MacKellar; thirty-twos in sixteens from memory. Fours, sixes and nines are half-sheets by name: Tanselle, Studies in
  // Bibliography 53, note 65; Savage (1841), s.v. Imposing.
  for (auto const [leaves, gathering, two] : {Row{16, 8, true},
                                              {24, 12, true},
                                              {32, 16, true},
                                              {4, 2, false},
                                              {8, 4, false},
                                              {12, 6, false},
                                              {18, 9, false},
                                              {20, 10, false}})
    for (auto const chains : {ChainLines::unknown, ChainLines::vertical, ChainLines::horizontal}) {
      auto const inference = of({.chain_lines = chains, .gathering_leaves = gathering, .year = 1700});
      for (auto const& candidate : inference) {
        if (candidate.format.leaves_to_sheet() != leaves) continue;
        CAPTURE(leaves);
        CHECK(candidate.by_half_sheets() == !two);
        CHECK(candidate.half_sheets_or_two() == two);
        CHECK(candidate.half_sheets + candidate.two_to_sheet() > 0.9);
        CHECK((printing_words(candidate).find("by half-sheets or two gatherings to the sheet") != std::string::npos) ==
              two);
      }
    }
  // whole sheets in one gathering, and in three
  for (auto const& [leaves, gathering] : {std::pair{16, 16}, {24, 8}, {24, 24}, {32, 8}, {18, 6}, {8, 8}, {12, 12}}) {
    auto const inference = of({.gathering_leaves = gathering, .year = 1700});
    for (auto const& candidate : inference)
      if (candidate.format.leaves_to_sheet() == leaves) {
        CHECK_FALSE(candidate.by_half_sheets());
        CHECK_FALSE(candidate.half_sheets_or_two());
      }
  }
}

TEST_CASE("a sheet that is told is one from which the leaf can have been cut") {
  for (auto const year : {1480, 1550, 1700, 1790})
    for (double height = 60; height <= 640; height += 20)
      for (auto const ratio : {0.48, 0.6, 0.7, 0.8, 1.3}) {
        auto const width = height * ratio;
        auto const inference = of({.height = millimetres{height}, .width = millimetres{width}, .year = year});
        for (auto const& candidate : inference) {
          CAPTURE(height);
          CAPTURE(ratio);
          CAPTURE(candidate.format.leaves_to_sheet().value_or(0));
          CHECK(candidate.fits(candidate.sheet));
          CHECK(may_come_from(candidate.uncut, height, width));
          if (auto const like = named_like(candidate, YearRange{year}, Region::anywhere))
            CHECK(may_come_from(leaf_size(candidate.kind->lay, like->sheet()), height, width));
        }
      }
  // of a height alone, which may be that of a binding or rounded up
  for (auto const measured : {MeasureOf::leaf, MeasureOf::binding, MeasureOf::either})
    for (double height = 60; height <= 640; height += 10) {
      auto const inference =
          of({.height = millimetres{height}, .rounded_up_to = 10_mm, .of = measured, .year = YearRange{1600, 1650}});
      auto const least = height - 10 - (measured == MeasureOf::leaf ? 0 : 6);
      for (auto const& candidate : inference) CHECK(candidate.uncut.height.count() * 1.0451 >= least);
    }
}

TEST_CASE("imperial folios are told to be of imperial paper") {
  // imperial is 500 x 740 mm on the stone of Bologna of 1389 (Museo Civico Medievale), 490 x 740 mm by the mean of
  // Needham, IPH Yearbook 7 (1988); royal 445 x 610 and 430 x 620. Uncut folios: 490-500 x 370 and 430-445 x 305-310 mm
  auto const told = [](double height, double width, int year) {
    auto const inference = of({.height = millimetres{height},
                               .width = millimetres{width},
                               .material = Material::laid,
                               .chain_lines = ChainLines::vertical,
                               .watermark = MarkPlace::centre,
                               .gathering_leaves = 8,
                               .year = year,
                               .place = Region::venice});
    CHECK(inference.front().format == Format::of(2));
    auto const like = named_like(inference.front(), YearRange{year}, Region::venice);
    return like ? std::string{like->name} : "";
  };
  CHECK(told(480, 340, 1480) == "imperial");
  CHECK(told(490, 350, 1480) == "imperial");
  CHECK(told(500, 360, 1480) == "imperial");
  CHECK(told(480, 340, 1550) == "imperial");
  CHECK(told(500, 360, 1550) == "imperial");
  CHECK(told(460, 325, 1480) == "imperial");
  CHECK(told(410, 285, 1480) == "royal");
  CHECK(told(300, 210, 1480) == "chancery");
}

TEST_CASE("a broadside is one whichever way up it is printed") {
  // chain lines run along the short side of the sheet (Tanselle, Studies in Bibliography 24; Roberts & Etherington s.v.
  // chain lines). Sheets: foolscap 330 x 420 mm of 1794 (Austen manuscripts), the others in English trade lists
  for (auto const& [short_side, long_side] : {std::pair{310, 430}, {330, 420}, {380, 500}, {445, 570}, {500, 630}})
    for (bool const landscape : {false, true}) {
      auto const height = landscape ? short_side : long_side, width = landscape ? long_side : short_side;
      LeafEvidence const seen{.height = millimetres(height),
                              .width = millimetres(width),
                              .material = Material::laid,
                              .chain_lines = landscape ? ChainLines::vertical : ChainLines::horizontal,
                              .year = 1650,
                              .place = Region::britain};
      CAPTURE(height);
      CAPTURE(width);
      auto const right = of(seen);
      CHECK(right.front().format == Format::of(1));
      CHECK(right.none_of_these < 0.5);
      CHECK(right.front().kind->chain_lines == seen.chain_lines);
      CHECK((right.front().uncut.width > right.front().uncut.height) == landscape);
      CHECK(right.front().reason(EvidenceKind::chain_lines).weight > -weight_that_counts);
      CHECK(predicted(right.front(), EvidenceKind::chain_lines) == to_words(seen.chain_lines));
      bool named = false;
      for (auto const& origin :
           leaf_origins({*seen.height, *seen.width}, usable_for({1650, 1650}, Region::britain), loss_limits({})))
        named = named || (origin.shape->leaves == 1 && !origin.named.empty());
      CHECK(named);
    }
}

TEST_CASE("a leaf too narrow for the formats with schemes is told for what it may be") {
  // agenda: at least three times as high as wide (Roberts & Etherington); the sheets and chain lines are worked out by
  // hand: a folio folded lengthwise is as high as the long side, a quarto folded twice so as high as the short side
  for (auto const chains : {ChainLines::vertical, ChainLines::horizontal}) {
    auto const told =
        why(of({.height = 420_mm, .width = 150_mm, .chain_lines = chains, .year = 1650, .place = Region::britain}));
    CHECK(told.find("a folio folded lengthwise (a sheet of 300 x 420 mm or more, chain lines horizontal)") !=
          std::string::npos);
    CHECK(told.find("a narrow quarto folded twice that way (a sheet of 420 x 600 mm or more, chain lines vertical)") !=
          std::string::npos);
  }
  // leaves of the usual shapes, and a height alone, are not told so
  for (auto const& seen :
       {LeafEvidence{.height = 420_mm, .width = 280_mm, .year = 1650},
        LeafEvidence{.height = 900_mm, .width = 600_mm, .year = 1490}, LeafEvidence{.height = 900_mm}})
    CHECK(why(of(seen)).find("narrow") == std::string::npos);
}
