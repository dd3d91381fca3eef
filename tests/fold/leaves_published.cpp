// SPDX-License-Identifier: MIT
// From leaves that somebody described in print to the foldings that show them.
#include <bifolium/fold.hpp>

#include "check.hpp"
#include "fold/foldings_left.hpp"

#include <algorithm>
#include <string>
#include <string_view>

using namespace foldings;

namespace {

int formats(FoldingsLeft const& all) {
  std::vector<Format> found;
  for (auto const& group : all.groups)
    if (std::find(found.begin(), found.end(), group.format) == found.end()) found.push_back(group.format);
  return static_cast<int>(found.size());
}

} // namespace

TEST_CASE("the uncut 24° of 1671: eights with horizontal chain lines, the mark at the head of the squares") {
  // Buhler, Studies in Bibliography 7: Valerius Maximus, Elzevier 1671, an uncut copy: eights, chain lines horizontal, the
  // middle of the mark at the head of the leaves of one gathering of three, every third gathering of two strips cut off.
  // Povey, Studies in Bibliography 9: so are twenty-fours in three eights.
  auto const eights = [](std::string_view mark_leaves) {
    std::string text = "gathering of 8\n";
    for (char leaf = '1'; leaf <= '8'; ++leaf)
      text.append(1, leaf).append(mark_leaves.find(leaf) == mark_leaves.npos ? " absent horizontal\n"
                                                                             : " head-of-gutter horizontal\n");
    return text;
  };
  // its middle at the head is where four leaves meet: 2 3 6 7 or 1 4 5 8 by the folding
  auto const first = eights("2367"), second = eights("1458"), strips = eights("");
  CHECK(has_scheme(left(first), "24_three_8s_1671"_scheme));
  CHECK(has_scheme(left(second), "24_three_8s_1671"_scheme));
  CHECK(has_scheme(left(strips), "24_three_8s_1671"_scheme));
  // all three of one sheet: the sheet has its mark in one gathering
  CHECK(has_scheme(left(first + strips + strips), "24_three_8s_1671"_scheme));
  CHECK_FALSE(has_scheme(left(first + second + strips), "24_three_8s_1671"_scheme));
  // such books were recorded as 16° (Povey): in a 16° in eights the mark meets other leaves
  CHECK_FALSE(has_scheme(left(first), schemes::sextodecimo_in_eights));
}

TEST_CASE("a sheet of 32 leaves worked as two quires twice has its rough edges in other leaves, quire by quire") {
  // Steele, Studies in Bibliography 15: quires of eight from one forme of 32 pages, odd and even quires told apart by their
  // edges. That they differ is published; in which leaves follows from the fold.
  auto const scheme = "m32_work_and_turn_two_quires"_scheme;
  auto const folded = *fold(scheme.scheme());
  auto const text = [&](int gathering) {
    std::string all = "gathering of 8\n";
    for (int k = 1; k <= 8; ++k) {
      auto const shown = shows(folded, {gathering, folded.gathering(gathering).leaf(k)});
      auto const edge = [&](Edge const& there, char const* name) {
        auto const* const kind = there.kind == Edge::Kind::bolt  ? " bolt "
                                 : there.kind == Edge::Kind::cut ? " cut "
                                                                 : " deckle ";
        all.append(std::to_string(k)).append(kind).append(name).append("\n");
      };
      edge(shown.head, "head"), edge(shown.tail, "tail"), edge(shown.fore_edge, "fore-edge");
    }
    return all;
  };
  auto const odd = text(0), even = text(1);
  CHECK(odd != even);
  CHECK(text(2) == odd); // the other half of the sheet is a copy
  CHECK(text(3) == even);
  CHECK(has_scheme(left(odd), scheme));
  CHECK(has_scheme(left(even), scheme));
  CHECK(has_scheme(left(odd + even), scheme));
  CHECK(has_scheme(left(odd + even + odd + even), scheme));
  CHECK_FALSE(has_scheme(left(odd + odd + odd), scheme)); // there are two of each
}

TEST_CASE("eights with vertical chain lines and no mark stay undecided") {
  // R. W. Chapman to R. B. McKerrow, 17 August 1924 (Trinity College, Cambridge): Dodsley's Collection, vol. 4 (1755), in
  // eights, all chain lines vertical, no marks. He could not settle the format.
  std::string text = "gathering of 8\n";
  for (char leaf = '1'; leaf <= '8'; ++leaf) text.append(1, leaf).append(" absent vertical\n");
  auto const found = left(text);
  CHECK(formats(found) > 5);
  CHECK(found.blamed.empty());
  CHECK(found.look_next);
}

TEST_CASE("a half-sheet octavo has no mark in half of its gatherings") {
  // Vander Meulen, Studies in Bibliography 37, p. 72, of the Dunciad of 1728
  std::string const bare =
      "gathering of 4; 1 absent vertical; 2 absent vertical; 3 absent vertical; 4 absent vertical\n";
  std::string const marked =
      "gathering of 4; 1 head-of-gutter vertical; 2 head-of-gutter; 3 head-of-gutter; 4 head-of-gutter\n";
  CHECK(has_scheme(left(bare), schemes::octavo_half_sheet));
  // with both gatherings of the sheet: one has the mark, the other not
  CHECK(has_scheme(left(bare + marked), schemes::octavo_half_sheet));
  CHECK_FALSE(has_scheme(left(bare + bare), schemes::octavo_half_sheet));
  CHECK_FALSE(has_scheme(left(bare), schemes::quarto));
}

TEST_CASE("folios on half-sheets of larger paper have horizontal chain lines") {
  // Buhler, Studies in Bibliography 23; Noble, DCRM-L, 1 December 2009: quires of ten, folio shape, chain lines horizontal
  auto const found = left("gathering of 10; 1 horizontal; 1.10 conjugate; 2.9 conjugate; 3.8 conjugate; 4.7 conjugate; "
                          "5.6 conjugate; 1 deckle fore-edge; 10 deckle fore-edge");
  auto const folio_on_halves = std::any_of(found.groups.begin(), found.groups.end(), [](auto const& group) {
    return group.part == PaperPart::half && group.sheets == 5 && !group.cut && group.sheet.rows == 1 &&
           group.sheet.columns == 2;
  });
  CHECK(folio_on_halves);
}

TEST_CASE("point-holes tell how an octavo was imposed") {
  // Roberts & Etherington s.v. pinholes: octavo, lower fore-edge of the last four leaves, of the first four when imposed
  // from the centre; quarto, at or near the head bolt; folio, in the fold of the spine
  auto const last =
      left("gathering of 8; 1 no-hole; 2 no-hole; 3 no-hole; 4 no-hole vertical; 5 hole at tail fore-edge; "
           "6 hole at tail fore-edge; 7 hole at tail fore-edge; 8 hole at tail fore-edge");
  CHECK(has_scheme(last, schemes::octavo));
  CHECK_FALSE(has_scheme(last, "8_from_centre"_scheme));
  auto const first =
      left("gathering of 8; 5 no-hole; 6 no-hole; 7 no-hole; 8 no-hole vertical; 1 hole at tail fore-edge; "
           "2 hole at tail fore-edge; 3 hole at tail fore-edge; 4 hole at tail fore-edge");
  CHECK(has_scheme(first, "8_from_centre"_scheme));
  CHECK_FALSE(has_scheme(first, schemes::octavo));
  CHECK(has_scheme(left("gathering of 4; 1 hole at head horizontal; 2 hole at head"), schemes::quarto));
  CHECK_FALSE(has_scheme(left("gathering of 4; 1 hole at tail horizontal; 2 hole at tail"), schemes::quarto));
  CHECK(has_scheme(left("gathering of 2; 1 hole at gutter; 2 hole at gutter"), schemes::folio));
  CHECK_FALSE(has_scheme(left("gathering of 2; 1 hole at fore-edge; 2 hole at fore-edge"), schemes::folio));
}
