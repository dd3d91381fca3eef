// SPDX-License-Identifier: MIT
// What is told of foldings and misprints, to the letter. The acts are counted by hand from what the manuals have the binder do:
// a half-sheet is cut in two and each half folded, and worked from one forme the second half is folded the other way.
#include <bifolium/explain/explain_foldings.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/foldings_showing.hpp>
#include <bifolium/fold/read_formes.hpp>
#include <bifolium/fold/read_seen_leaves.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/seen_formes.hpp>

#include "check.hpp"

#include <string>
#include <utility>

using namespace bifolium;

namespace {

/// Explains the foldings that give the pages of an attested scheme.
std::string foldings_of(Attested scheme) {
  return explain_foldings(*find_foldings(seen_formes(impose(*fold(scheme.scheme())))));
}
/// The acts and gatherings told of an attested scheme: what stands between its name and the sources for it.
std::string acts_of(Attested scheme) {
  auto const text = folding_words({scheme.scheme(), folding_work(scheme.scheme()), 0, 0, scheme});
  auto const from = text.find("): ") + 3;
  return text.substr(from, text.find("; attested as") - from);
}
std::string misprints_in(char const* formes) { return explain_misprints(*find_misprints(*read_formes(formes))); }
bool has(std::string const& text, std::string_view words) { return text.find(words) != std::string::npos; }

} // namespace

TEST_CASE("the acts of a folding are those of the binder") {
  std::pair<Attested, char const*> const all[]{
      {schemes::broadside, "not cut, 0 folds; one gathering of 1 leaf"},
      {schemes::folio, "not cut, 1 fold; one gathering of 2 leaves"},
      {schemes::folio_in_sixes, "3 sheets, not cut, 3 folds; one gathering of 6 leaves"}, // each sheet is folded once
      {schemes::quarto_in_eights, "2 sheets, not cut, 4 folds; one gathering of 8 leaves"},
      // cut in two, each half folded twice; both folds of the copy go underneath
      {schemes::octavo_half_sheet,
       "1 cut into 2 pieces, 4 folds, 2 turned underneath; one gathering of 4 leaves, in 2 copies"},
      // twelves: the off-cut is folded twice, the eight leaves three times
      {schemes::duodecimo, "1 cut into 2 pieces, 5 folds; one gathering of 12 leaves"},
      {*Attested::find("12_8_plus_4"), "1 cut into 2 pieces, 5 folds; 2 gatherings of 8, 4 leaves"},
      {*Attested::find("32_four_8s"), "3 cuts into 4 pieces, 12 folds; 4 gatherings of 8 leaves"},
      // the half with four single leaves is cut off and then cut three times; the other half is folded twice
      {*Attested::find("8_half_sheet_plus_singles"),
       "4 cuts into 5 pieces, 4 of them single leaves, 2 folds; 5 gatherings of 4, 1, 1, 1, 1 leaves"},
      // long twelves: three columns rolled - one of the folds is beside the middle - and then in half twice
      {*Attested::find("12_long_rolled"), "not cut, 4 folds, 1 beside the middle; one gathering of 12 leaves"},
      {*Attested::find("18_one_rolled"), "not cut, 5 folds, 2 beside the middle; one gathering of 18 leaves"}};
  for (auto const& [scheme, words] : all) {
    CAPTURE(scheme.id());
    CHECK(acts_of(scheme) == words);
  }
  // a leaf cut from the end of a folio, constructed
  CHECK(detail::work_words(schemes::folio.scheme(), {2, 1, 0, 0, 0, 1}) ==
        "1 cut into 2 pieces, 1 of them a single leaf, 0 folds");
}

TEST_CASE("what the pages of a sheet leave open is told of every attested scheme") {
  // a half-sheet can be folded as two different gatherings are, with nothing turned underneath: cheaper than its own scheme
  CHECK(foldings_of(schemes::octavo_half_sheet) ==
        "Half-sheet of octavo (8°): 1 cut into 2 pieces, 4 folds, 2 turned underneath; one gathering of 4 leaves, in 2 "
        "copies; attested as 8_half_sheet, grid published\n"
        "The same sheet can be folded more simply than the attested scheme does it.\n"
        "1 other folding gives the same pages: the pages alone do not show which leaves were cut apart.\n");
  // twelves with the off-cut head up can also be folded without a cut. Prices by the table: the folds 40, one beside the
  // middle and one underneath are dearer by 20 together; five folds and a cut are 65
  auto const& price = folding_prices;
  auto const uncut = 4 * price.fold + price.uneven + price.under, cut = 5 * price.fold + price.cut;
  CHECK(foldings_of(*Attested::find("12_common_upright_offcut")) ==
        "Duodecimo (12°): not cut, 4 folds, 1 beside the middle, 1 turned underneath; one gathering of 12 leaves; not "
        "attested\n"
        "An attested folding gives the same pages, but is not the simplest (price " +
            std::to_string(cut) + ", not " + std::to_string(uncut) +
            "): Common twelves with the off-cut row head up (12°): 1 cut into 2 pieces, 5 folds; one gathering of 12 "
            "leaves; attested as 12_common_upright_offcut, no source for the grid, derived by folding\n"
            "2 other foldings give the same pages: the pages alone do not show which leaves were cut apart.\n");
  for (auto const scheme : Attested::all()) {
    if (scheme.scheme().cells() > 24) continue;
    CAPTURE(scheme.id());
    auto const found = *find_foldings(seen_formes(impose(*fold(scheme.scheme()))));
    auto const text = explain_foldings(found);
    auto const& first = found[0];
    CHECK(text.starts_with(folding_words(first) + "\n"));
    CHECK(has(text, "The same sheet can") == (first.attested && first.work.price() > first.price));
    CHECK(has(text, "with the long side the other way") == first.attested_turned.has_value());
    CHECK(has(text, " the same pages: the pages alone") == (found.size() > 1));
    CHECK(has(text, "right to left") == (scheme.scheme().reads() == Reads::right_to_left));
    if (found.size() > 2) CHECK(has(text, std::to_string(found.size() - 1) + " other foldings give the same pages"));
  }
  // the mirror of a quarto is one read from right to left
  CHECK(explain_foldings(*find_foldings(*read_formes("outer\n5↓ 4↓\n8 1\ninner\n3↓ 6↓\n2 7\n"))) ==
        "Common quarto (4°), read from right to left: not cut, 2 folds; one gathering of 4 leaves; attested as "
        "4_quarto, grid published\n"
        "The book is read from right to left; or these are printed sides, the mirrors of their formes.\n"
        "The pages do not show how the paper lay: 4_oblong gives the same pages, with the long side the other way.\n");
  CHECK_THROWS(explain_foldings({}));
}

TEST_CASE("each kind of misprint is told with its place") {
  // published formes of quarto and octavo (tests/imposition/grids.inc), with one mistake made in each
  CHECK(misprints_in("outer\n8↓ 9↓ 12↓ 5↓\n1 16 4 13\ninner\n6↓ 11↓ 10↓ 7↓\n3 14 15 2\n") ==
        "misprint: pages 4 (row 2, column 3) and 13 (row 2, column 4) of the outer forme are exchanged; corrected: "
        "Common octavo (8°): not cut, 3 folds; one gathering of 8 leaves; attested as 8_octavo, grid published\n");
  CHECK(misprints_in("outer\n4↓ 5↓\n1 8\ninner\n6↓ 3\n7 2\n") ==
        "misprint: page 3 of the inner forme (row 1, column 2) lies with its head the wrong way; corrected: Common "
        "quarto (4°): not cut, 2 folds; one gathering of 4 leaves; attested as 4_quarto, grid published\n");
  auto const mirrored = misprints_in("outer\n5↓ 4↓\n8 1\ninner\n3↓ 6↓\n2 7\n");
  CHECK(mirrored.starts_with("misprint: these are printed sides, the mirrors of their formes, or the book is read the "
                             "other way; corrected: Common quarto (4°), read from right to left: not cut, 2 folds;"));
  // by their numbers alone the mirrored pages do not meet in a fold: four single leaves, three cuts
  CHECK(mirrored.ends_with("as printed: Quarto (4°): 3 cuts into 4 pieces, 4 of them single leaves, 0 folds; 4 "
                           "gatherings of 1 leaf; not attested\n"));
  // the second sheet of a folio in fours: 3 and 6 are on one forme, 4 and 5 on the other; here 5 is printed 6
  CHECK(has(misprints_in("sheet 1\nouter\n1 8\ninner\n7 2\nsheet 2\nouter\n3 6\ninner\n6 4\n"),
            "page 6 of the inner forme of sheet 2 (row 1, column 1) should be 5; corrected: Two folio sheets, one in "
            "the other (2°): 2 sheets, not cut, 2 folds;"));
  // a forme of which the half-sheet is printed both times has no side
  CHECK(has(misprints_in("forme\n4↓ 5↓ 6↓ 3↓\n8 1 7 2\n"), "of the forme are exchanged; corrected: "));
}

TEST_CASE("corrections that are equally simple, and single formes that check too little") {
  // one forme of a quarto: several of its changes fold as simply
  auto const one = *read_formes("outer\n4↓ 1↓\n5 8\n");
  auto const found = *find_misprints(one);
  CHECK(explain_misprints(found).starts_with(
      "these formes alone do not show whether there is a misprint: " + std::to_string(found.as_simple) +
      " single changes would fold as simply; give both formes\nas printed: "));
  auto only = found;
  only.as_simple = 1;
  CHECK(has(explain_misprints(only), ": 1 single change would fold as simply"));
  // where nothing folds and nothing can be corrected
  CHECK(explain_misprints(Misprints{}) == "the pages do not fold, and no single correction changes that\n");
  // nor where not everything was tried
  std::string const rest = "There are too many ways to cut and nest these pages: not every correction was tried.\n";
  CHECK(explain_misprints(Misprints{.cut_short = true}) ==
        "no folding of these pages was found, and none of the likeliest single corrections gives one\n" + rest);
  auto partly = found;
  partly.as_simple = 0, partly.cut_short = true;
  CHECK(explain_misprints(partly).starts_with(
      "no misprint was found: none of the likeliest single corrections makes a simpler folding\n" + rest));
  // two corrections at one price do not show which is right; at two prices the cheaper stands out, and is not doubted
  auto const octavo = *find_misprints(*read_formes("outer\n4 5\n1 8\ninner\n6 3\n8 2\n"));
  REQUIRE(octavo.corrections.size() == 1);
  auto two = octavo;
  two.corrections.push_back(two.corrections[0]);
  auto const line = correction_words(two.corrections[0]) + "\n";
  CHECK(explain_misprints(two).starts_with(
      line + line + "These corrections are equally simple: these formes do not show which one is right.\n"));
  ++two.corrections[1].price;
  CHECK_FALSE(has(explain_misprints(two), "equally simple"));
  CHECK(detail::read_number({}) == "illegible");
}

TEST_CASE("a group of foldings in a line") {
  auto group = FoldingGroup{.format = Format::of(8), .price = 30};
  CHECK(folding_group_words(group) == "8°, one sheet, not cut: price 30"); // too many to be counted
  group.foldings = 1;
  CHECK(folding_group_words(group) == "8°, one sheet, not cut: 1 folding, price 30");
  group.foldings = 2;
  group.sheets = 2;
  group.cut = true;
  group.attested = {schemes::octavo, schemes::octavo_half_sheet};
  group.probability = .25;
  CHECK(folding_group_words(group) == "8°, 2 sheets to the gathering, cut: 2 foldings, price 30; attested as 8_octavo, "
                                      "8_half_sheet (probability 0.25 among the attested)");
  group.part = PaperPart::half;
  group.attested.pop_back();
  CHECK(folding_group_words(group) ==
        "8°, 2 sheets to the gathering, of paper cut in half before it was printed, cut: 2 foldings, price 30; "
        "attested as 8_octavo (probability 0.25 among the attested)");
  // what a reader would not read digit by digit is rounded
  group.attested.clear();
  group.foldings = 99'999;
  CHECK(has(folding_group_words(group), ": 99999 foldings, "));
  group.foldings = 100'000;
  CHECK(has(folding_group_words(group), ": more than 100000 foldings, "));
}

TEST_CASE("the leaves that do not agree, and what to look at next") {
  auto const group = FoldingGroup{.format = Format::of(4), .foldings = 1, .price = 20};
  auto const line = folding_group_words(group) + "\n";
  FoldingsLeft left{.groups = {group, group, group}};
  CHECK(explain_foldings_left(left, 1) == line + line + line);
  CHECK(explain_foldings_left(left, 1, 3) == line + line + line);
  CHECK(explain_foldings_left(left, 1, 2) == line + line + "1 group more\n");
  CHECK(explain_foldings_left(left, 1, 1) == line + "2 groups more\n");
  left.groups.assign(9, group); // eight are shown, where nothing else is asked for
  CHECK(explain_foldings_left(left, 1).ends_with(line + "1 group more\n"));

  // the two cheapest leaves, not the dearer one; the second gathering is named where there are two
  left.groups = {group};
  left.blamed = {{0, 3, 40}, {1, 2, 40}, {1, 1, 41}};
  CHECK(explain_foldings_left(left, 2) ==
        line + "leaf 3 of gathering 1 does not agree: without it a simpler folding shows the rest (price 40 with the "
               "leaf set aside); it may be of another sheet, or was misread\n"
               "leaf 2 of gathering 2 does not agree: without it a simpler folding shows the rest (price 40 with the "
               "leaf set aside); it may be of another sheet, or was misread\n");
  left = {};
  CHECK(explain_foldings_left(left, 1) == "no folding agrees with all of this, nor with all of it but one leaf\n");

  std::pair<LookNext::What, char const*> const looks[]{
      {LookNext::What::chain_lines, "how the chain lines run in leaf 2"},
      {LookNext::What::watermark, "whether leaf 2 has a watermark"},
      {LookNext::What::head, "the head of leaf 2: bolt, deckle or cut"},
      {LookNext::What::tail, "the tail of leaf 2: bolt, deckle or cut"},
      {LookNext::What::fore_edge, "the fore-edge of leaf 2: bolt, deckle or cut"},
      {LookNext::What::conjugate, "which leaf leaf 2 is joined to"}};
  for (auto const& [what, words] : looks) {
    left = {.groups = {group}, .look_next = LookNext{what, 0, 2}};
    CHECK(explain_foldings_left(left, 1) == line + "look next at " + words + "\n");
    left.look_next->gathering = 1;
    CHECK(has(explain_foldings_left(left, 2), "leaf 2 of gathering 2"));
  }
}
