// SPDX-License-Identifier: MIT
// How common foldings were, and what comes of it where leaves alone leave many.
#include <bifolium/evidence/folding_weights.hpp>
#include <bifolium/evidence/read_seen.hpp>
#include <bifolium/fold/foldings_showing.hpp>
#include <bifolium/fold/read_seen_leaves.hpp>

#include "check.hpp"

#include <algorithm>
#include <string_view>

using namespace bifolium;

namespace {

FoldingWeights weights(LeafEvidence const& seen) { return folding_weights(*observe(seen)); }
/// The first group of foldings, those of the book ranked as it would have been folded.
FoldingGroup first(std::string_view leaves, LeafEvidence const& book) {
  auto const gatherings = read_seen_leaves(leaves);
  REQUIRE(gatherings);
  return (*foldings_showing(*gatherings, {}, weights(book))).groups.front();
}
bool names(FoldingGroup const& group, Attested scheme) {
  return std::find(group.attested.begin(), group.attested.end(), scheme) != group.attested.end();
}

} // namespace

TEST_CASE("the weights are the probabilities of the formats, shared out among their schemes") {
  LeafEvidence const book{.height = 201_mm, .width = 139_mm, .gathering_leaves = 8, .year = 1490};
  auto const all = weights(book);
  auto const inference = infer_format(*observe(book));
  for (auto const& candidate : inference) {
    double sum = 0;
    for (auto const scheme : Attested::all())
      if (format_of(*fold(scheme.scheme()), FormatReading::paper_fraction).leaves_to_sheet() ==
          candidate.format.leaves_to_sheet())
        sum += all.of(scheme);
    double other_shapes = 0;
    for (auto const& other : inference)
      if (other.format.leaves_to_sheet() == candidate.format.leaves_to_sheet()) other_shapes += other.probability;
    CAPTURE(candidate.format.name());
    CHECK(sum == doctest::Approx(other_shapes));
  }
  CHECK(all.of(schemes::quarto) == 0); // it gathers in fours
  CHECK(all.of(schemes::quarto_in_eights) > 0.9);
}

TEST_CASE("what the leaves show is not counted twice") {
  LeafEvidence book{.gathering_leaves = 8, .year = 1671};
  auto const before = weights(book);
  book.chain_lines = ChainLines::horizontal;
  book.watermark = MarkPlace::gutter;
  book.head = EdgeSeen::bolt;
  book.point_hole = HolePlace::head;
  book.leaves = *read_leaves_seen("1 gutter horizontal; 2 absent");
  CHECK(weights(book) == before);
  book.year = 1490;
  CHECK_FALSE(weights(book) == before);
}

TEST_CASE("eights with horizontal chain lines, by the year") {
  // Of quartos in the British Museum's catalogue of incunables most are in eights; an octavo has vertical chain lines
  auto const* const leaves = "gathering of 8; 1 horizontal";
  CHECK(names(first(leaves, {.gathering_leaves = 8, .year = 1490}), schemes::quarto_in_eights));
  // Buhler, Studies in Bibliography 7: an uncut 24° of 1671, 4 3/4 x 2 1/2 in., in eights
  auto const elzevier = first(leaves, {.height = 120.7_mm,
                                       .width = 63.5_mm,
                                       .gathering_leaves = 8,
                                       .state = LeafState::uncut,
                                       .year = 1671,
                                       .place = Region::netherlands});
  CHECK(elzevier.format == Format::of(24));
  CHECK(names(elzevier, "24_three_8s_1671"_scheme));
  CHECK(elzevier.probability > 0.5);
}

TEST_CASE("fours are told by the chain lines, whatever was common") {
  // Aldis, The Printed Book (1916): a quarto has horizontal chain lines, folios and octavos vertical ones
  for (int const year : {1490, 1600, 1750}) {
    auto const upright = first("gathering of 4; 1 vertical", {.gathering_leaves = 4, .year = year}).format;
    CHECK((upright == Format::of(2) || upright == Format::of(8)));
    CHECK(first("gathering of 4; 1 horizontal", {.gathering_leaves = 4, .year = year}).format == Format::of(4));
  }
}
