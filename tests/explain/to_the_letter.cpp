// SPDX-License-Identifier: MIT
// What is told of schemes, formes and bills, to the letter. The facts in it are those of handbooks and of arithmetic: pages that
// meet in a fold follow one another, pages beside each other across the gutter add up to one more than the pages of the
// gathering, and the figures of the bill are worked out in the comments.
#include <bifolium/core/message.hpp>
#include <bifolium/edition.hpp>
#include <bifolium/explain.hpp>
#include <bifolium/explain/explain_foldings.hpp>
#include <bifolium/explain/forme_text.hpp>
#include <bifolium/explain/hundredths.hpp>
#include <bifolium/explain/trade_words.hpp>
#include <bifolium/explain/working.hpp>
#include <bifolium/fold/find_misprints.hpp>
#include <bifolium/fold/foldings_showing.hpp>
#include <bifolium/fold/read_formes.hpp>
#include <bifolium/fold/read_seen_leaves.hpp>
#include <bifolium/fold/walk.hpp>
#include <bifolium/imposition.hpp>
#include <bifolium/imposition/misread.hpp>
#include <bifolium/imposition/seen_formes.hpp>

#include "check.hpp"

#include <algorithm>
#include <climits>
#include <limits>
#include <sstream>
#include <string>
#include <vector>

using namespace bifolium;

TEST_CASE("the steps of a scheme, told in order") {
  CHECK(*explain_steps(schemes::quarto.scheme()) ==
        "1. Fold the far half of the sheet over on the near: page 3 meets 2, 6 meets 7.\n"
        "2. Fold the right half of the sheet over on the left: page 5 meets 4.\n"
        "Gathering A, 4 leaves, pages 1 to 8.\n");
  // twelves: the off-cut of four leaves lies inside the eight others, so pages 9 to 16 are on it
  CHECK(*explain_steps(schemes::duodecimo.scheme()) ==
        "1. Cut the sheet between rows 1 and 2, counted from the far edge: the far part is the off-cut, the near part "
        "is the "
        "main part.\n"
        "2. Fold the right half of the main part over on the left: page 3 meets 2, 6 meets 7, and 2 more pairs meet.\n"
        "3. Fold the far half of the main part over on the near: page 5 meets 4, 20 meets 21.\n"
        "4. Fold the right half of the main part over on the left: page 17 meets 8.\n"
        "5. Fold the left half of the off-cut over on the right: page 11 meets 10, 14 meets 15.\n"
        "6. Fold the right half of the off-cut over on the left: page 12 meets 13.\n"
        "Gathering A, 12 leaves, pages 1 to 24: the main part, inside it the off-cut.\n");
}

TEST_CASE("sheets inside one another, and two copies on a sheet") {
  // a folio in sixes: the pages of a sheet are 1 2 11 12, then 3 4 9 10, then 5 6 7 8
  CHECK(*explain_steps(schemes::folio_in_sixes.scheme()) ==
        "1. Fold the right half of sheet 1 over on the left: page 11 meets 2.\n"
        "2. Fold the right half of sheet 2 over on the left: page 9 meets 4.\n"
        "3. Fold the right half of sheet 3 over on the left: page 7 meets 6.\n"
        "Gathering A, 6 leaves, pages 1 to 12: sheet 1, inside it sheet 2, inside it sheet 3.\n");
  CHECK(*explain_page(schemes::folio_in_sixes.scheme(), 5) ==
        "Page 5 is imposed upright in the outer forme of sheet 3, in the only row, first from the left. No fold turns "
        "its leaf end "
        "for end. On its back is page 6; beside it across the gutter, page 8, since the two add up to 13.");
  CHECK(*explain_count(schemes::folio_in_sixes.scheme(), 1000) ==
        "3 sheets give 6 leaves, 12 pages. 1000 copies take 3000 sheets, and 6000 impressions: every sheet goes "
        "through the press "
        "twice, once on each forme.");
  CHECK(*explain_steps(schemes::quarto_in_eights.scheme()) ==
        "1. Fold the far half of sheet 1 over on the near: page 3 meets 2, 14 meets 15.\n"
        "2. Fold the right half of sheet 1 over on the left: page 13 meets 4.\n"
        "3. Fold the far half of sheet 2 over on the near: page 7 meets 6, 10 meets 11.\n"
        "4. Fold the right half of sheet 2 over on the left: page 9 meets 8.\n"
        "Gathering A, 8 leaves, pages 1 to 16: sheet 1, inside it sheet 2.\n");
  // worked from one forme: each half of the sheet is cut and folded into a copy of its own
  CHECK(
      *explain_steps(schemes::duodecimo_half_sheet.scheme()) ==
      "1. Cut the sheet between columns 2 and 3, counted from the left: the left part is the first copy, the right "
      "part is the "
      "second copy.\n"
      "2. Cut the first copy between rows 1 and 2, counted from the far edge: the far part is the off-cut of the first "
      "copy, the "
      "near part is the main part of the first copy.\n"
      "3. Fold the far half of the main part of the first copy over on the near: page 3 meets 2, 10 meets 11.\n"
      "4. Fold the right half of the main part of the first copy over on the left: page 9 meets 4.\n"
      "5. Fold the right half of the off-cut of the first copy over on the left: page 6 meets 7.\n"
      "6. Cut the second copy between rows 1 and 2, counted from the far edge: the far part is the off-cut of the "
      "second copy, "
      "the near part is the main part of the second copy.\n"
      "7. Fold the far half of the main part of the second copy underneath the near: page 3 meets 2, 10 meets 11.\n"
      "8. Fold the left half of the main part of the second copy underneath the right: page 9 meets 4.\n"
      "9. Fold the left half of the off-cut of the second copy underneath the right: page 6 meets 7.\n"
      "First copy, 6 leaves, pages 1 to 12: the main part of the first copy, inside it the off-cut of the first copy.\n"
      "Second copy, 6 leaves, pages 1 to 12: the main part of the second copy, inside it the off-cut of the second "
      "copy.\n");
  CHECK(*explain_page(schemes::duodecimo_half_sheet.scheme(), 5) ==
        "Page 5 is imposed upside down in the one forme, in the far row, second from the left. No fold turns its leaf "
        "end for end. "
        "The folded piece lies with its heads near, and is turned round to be read. On its back is page 6; beside it "
        "across the "
        "gutter, page 8, since the two add up to 13.");
}

TEST_CASE("a page of a scheme, and its sheets") {
  CHECK(*explain_page(schemes::quarto.scheme(), 3) == "Page 3 is imposed upside down in the inner forme, in the far "
                                                      "row, second from the left. Step 1 turns its leaf end for "
                                                      "end: the far part is folded over. On its back is page 4; beside "
                                                      "it across the gutter, page 6, since the two add up to "
                                                      "9.");
  CHECK(*explain_page(schemes::octavo.scheme(), 3) ==
        "Page 3 is imposed upright in the inner forme, in the near row, first from the left. No fold turns its leaf "
        "end for "
        "end. On its back is page 4; beside it across the gutter, page 14, since the two add up to 17.");
  CHECK(*explain_page(schemes::octavo_half_sheet.scheme(), 5) ==
        "Page 5 is imposed upside down in the one forme, in the far row, second from the left. Step 2 turns its leaf "
        "end for "
        "end: the far part is folded over. On its back is page 6; beside it across the gutter, page 4, since the two "
        "add up to "
        "9.");
  CHECK(*explain_count(schemes::octavo.scheme(), 1000) == "1 sheet gives 8 leaves, 16 pages. 1000 copies take 1000 "
                                                          "sheets, and 2000 impressions: every sheet goes through the "
                                                          "press twice, once on each forme.");
  CHECK(
      *explain_count(schemes::octavo_half_sheet.scheme(), 1000) ==
      "1 sheet gives 8 leaves, 16 pages; they are 2 copies of the same 8 pages. 1000 copies take 500 sheets, and 1000 "
      "impressions: every sheet goes through the press twice, both times on the same forme.");
}

TEST_CASE("formes as text: the quarto and the half-sheet of octavo as manuals set them") {
  // published grids, with their sources: tests/imposition/grids.inc
  CHECK(forme_text(impose<schemes::quarto>()) == "outer\n4↓ 5↓\n1  8\ninner\n6↓ 3↓\n7  2\n");
  CHECK(forme_text(impose<schemes::octavo_half_sheet>()) == "forme\n4↓ 5↓ 6↓ 3↓\n1  8  7  2\n");
}

TEST_CASE("each piece of a sheet has a label, and a name in a sentence") {
  struct Named {
    char const* scheme;
    std::vector<std::string> labels; // of the pieces, in the order in which they are cut
  };
  // what is inside what is as the text of each scheme sets it; rows and columns are counted in its sheet
  Named const all[]{
      {"4_quarto", {"sheet"}},
      {"2_quired_6s", {"sheet 1", "sheet 2", "sheet 3"}},
      {"12_common", {"sheet", "off-cut, inset", "main part"}},
      {"8_in_8s_two_half_sheets_inset", {"sheet", "main part", "inner part, inset"}}, // as large as the other
      {"12_8_plus_4", {"sheet", "gathering B", "gathering A"}},
      {"8_half_sheet", {"sheet", "first copy", "second copy"}},
      {"4_quarto_in_6s", {"sheet 1", "sheet 2", "half-sheet of another copy", "inner part, inset"}},
      {"8_half_sheet_plus_singles",
       {"sheet", "gathering A", "columns 3 to 4", "row 1, columns 3 to 4", "row 2, columns 3 to 4", "gathering B",
        "gathering C", "gathering D", "gathering E"}},
      {"18_12_plus_6",
       {"sheet", "gathering A", "gathering B", "gathering A, off-cut, inset", "gathering A, main part",
        "gathering B, off-cut, inset", "gathering B, main part"}},
      // twenties by half-sheets: of each copy, a row that is innermost, and two pieces of the other rows
      {"20_half_sheet_10",
       {"sheet", "first copy", "second copy", "first copy, innermost part", "rows 2 to 5, columns 1 to 2",
        "first copy, second part from outside", "first copy, outermost part", "second copy, innermost part",
        "rows 2 to 5, columns 3 to 4", "second copy, second part from outside", "second copy, outermost part"}}};
  for (auto const& [id, labels] : all) {
    CAPTURE(id);
    auto const scheme = Attested::find(id)->scheme();
    auto const folded = *fold(scheme);
    REQUIRE(scheme.pieces() == static_cast<int>(labels.size()));
    for (int piece = 0; piece < scheme.pieces(); ++piece)
      CHECK(piece_label(scheme, folded, piece) == labels[static_cast<std::size_t>(piece)]);
  }
  auto const words = [](char const* id, int piece) {
    auto const scheme = Attested::find(id)->scheme();
    return piece_words(scheme, *fold(scheme), piece);
  };
  CHECK(words("4_quarto", 0) == "the sheet");
  CHECK(words("2_quired_6s", 1) == "sheet 2");
  CHECK(words("12_common", 1) == "the off-cut");
  CHECK(words("12_8_plus_4", 1) == "gathering B");
  CHECK(words("8_half_sheet", 2) == "the second copy");
  CHECK(words("18_12_plus_6", 3) == "the off-cut of gathering A");
  CHECK(words("20_half_sheet_10", 4) == "rows 2 to 5, columns 1 to 2");
  CHECK(words("20_half_sheet_10", 3) == "the innermost part of the first copy");
  CHECK(words("18_half_sheet_9_transposed", 1) == "row 1"); // of all columns
  CHECK(words("18_half_sheet_9_transposed", 2) == "rows 2 to 3");
  // nines by half-sheets have a single leaf inside four pairs
  auto const nines = *explain_steps(Attested::find("18_half_sheet_9_transposed")->scheme());
  CHECK(
      nines.find("First copy, 9 leaves, pages 1 to 18: the outermost part of the first copy, inside it the second part "
                 "from outside of the first copy, inside it the third part from outside of the first copy, inside it "
                 "the fourth part from outside of the first copy, inside it the single leaf of the first copy.\n") !=
      std::string::npos);
}

TEST_CASE("the compositor's view beside the binder's: paper is the mirror of type") {
  // the published grids of above, and each row the other way round
  CHECK(both_views_text(impose<schemes::quarto>()) == "the compositor sees type | the binder sees paper\n"
                                                      "outer                    | outer\n"
                                                      "4↓ 5↓                    | 5↓ 4↓\n"
                                                      "1  8                     | 8  1\n"
                                                      "inner                    | inner\n"
                                                      "6↓ 3↓                    | 3↓ 6↓\n"
                                                      "7  2                     | 2  7\n");
  CHECK(both_views_text(impose<schemes::octavo_half_sheet>()) == "the compositor sees type | the binder sees paper\n"
                                                                 "forme                    | forme\n"
                                                                 "4↓ 5↓ 6↓ 3↓              | 3↓ 6↓ 5↓ 4↓\n"
                                                                 "1  8  7  2               | 2  7  8  1\n");
  // two sheets of a folio, 1 2 7 8 and 3 4 5 6
  auto const fours = impose(*fold(Attested::find("2_quired_4s")->scheme()));
  CHECK(forme_text(fours) == "sheet 1\nouter\n1  8\ninner\n7  2\nsheet 2\nouter\n3  6\ninner\n5  4\n");
  CHECK(both_views_text(fours).find("sheet 2\nthe compositor sees type | the binder sees paper\n"
                                    "outer                    | outer\n"
                                    "3  6                     | 6  3\n") != std::string::npos);
  // a forme wider than its heading: the bar between type and paper is in one column of characters
  std::istringstream wide{both_views_text(impose(*fold(Attested::find("128_sixteen_8s")->scheme())))};
  std::ptrdiff_t bar = 0;
  for (std::string line; std::getline(wide, line);) {
    auto const before = line.substr(0, line.find('|'));
    auto const characters = std::count_if(before.begin(), before.end(), [](char c) { return (c & 0xC0) != 0x80; });
    CHECK(characters == (bar == 0 ? bar = characters : bar));
  }
  CHECK(bar > 25);
}

TEST_CASE("foldings found, and a page misprinted") {
  auto const formes = seen_formes(impose<schemes::quarto>());
  CHECK(explain_foldings(*find_foldings(formes, {.most = 2})) ==
        "Common quarto (4°): not cut, 2 folds; one gathering of 4 leaves; attested as 4_quarto, grid published\n"
        "The pages do not show how the paper lay: 4_oblong gives the same pages, with the long side the other way.\n");
  CHECK(explain_misprints(*find_misprints(formes)) ==
        "no misprint is likely: no single correction makes a simpler folding\n"
        "as printed: Common quarto (4°): not cut, 2 folds; one gathering of 4 leaves; attested as 4_quarto, grid "
        "published\n");
  // 8 is there twice, and 7 nowhere
  auto const misprinted = read_formes("outer\n 4 5\n 1 8\ninner\n 6 3\n 8 2\n");
  REQUIRE(misprinted);
  CHECK(explain_misprints(*find_misprints(*misprinted)) ==
        "misprint: page 8 of the inner forme (row 2, column 1) should be 7; corrected: Common quarto (4°): not cut, 2 "
        "folds; one "
        "gathering of 4 leaves; attested as 4_quarto, grid published\n");
}

TEST_CASE("foldings that leaves leave open") {
  // chain lines and the mark of a quarto (Roberts & Etherington 1982, s.v. chain lines); the numbers of foldings: regression
  auto const seen = read_seen_leaves("gathering of 4\n1 gutter horizontal");
  REQUIRE(seen);
  CHECK(explain_foldings_left(*foldings_showing(*seen), 1, 2) ==
        "4°, one sheet, not cut: 2 foldings, price 20; attested as 4_quarto (probability 1.00 among the attested)\n"
        "4°, one sheet, cut: 208 foldings, price 35\n"
        "59 groups more\n");
  // the hole and the joined leaf cannot both be of one folded sheet
  CHECK(explain_foldings_left(*foldings_showing(*read_seen_leaves("gathering of 8\n1 gutter hole at tail bolt head 3")),
                              1) == "no folding agrees with all of this\n"
                                    "leaf 1 does not agree: without it a folding shows the rest (price 60 with the "
                                    "leaf set aside); it may be of another "
                                    "sheet, or was misread\n");
}

TEST_CASE("a bill shown in full") {
  // 166 pages are 83 leaves, and a blank one: 10 sheets of 8 and half a sheet of 4. 500 copies and 20 over: 10 1/2 · 520 = 5460;
  // 10 1/2 · 500 = 5250; 11 · 520 = 5720. 10920 / 250 = 43.68 tokens or hours; / 10 = 4.368 days; / 12 = 3.64 days of pay
  auto const bill = reckon({.scheme = schemes::octavo, .pages = 166, .copies = 500, .overs_percent = 4});
  REQUIRE(bill);
  CHECK(working(*bill) == "84 leaves (2 pages blank) in 11 gatherings, 8 leaves to the sheet: 10 1/2 sheets a copy\n"
                          "  10 sheets of two formes\n"
                          "  1 x 4 leaves from one forme, 2 copies to the sheet\n"
                          "21 formes\n"
                          "500 copies and 20 over: 5460 sheets (5250 without overs and without an odd half-sheet; 5720 "
                          "if every part of a sheet takes a whole one)\n"
                          "10920 impressions, one side of one sheet each (5460 perfected): about 43.68 tokens of 250; "
                          "about 43.68 hours by the clock at 250 impressions an hour\n"
                          "  about 4.37 days of 10 hours on 1 press; about 3.64 days of pay at 12 tokens a day\n");
}

TEST_CASE("a bill says which pages are set again") {
  auto const told = [](Attested scheme, std::int64_t pages) {
    auto const bill = reckon({.scheme = scheme, .pages = pages, .copies = 1000});
    REQUIRE(bill);
    auto const text = working(*bill);
    auto const from = text.find('\n') + 1;
    return text.substr(from, text.find('\n', text.find('\n', from) + 1) + 1 - from);
  };
  // the places of a whole forme, divided by the pages that it has to hold (by arithmetic)
  CHECK(told(schemes::octavo, 4) ==
        "  1 x 2 leaves from one forme, 4 copies to the sheet, each page set twice\n1 forme\n");
  CHECK(told(schemes::duodecimo, 4) ==
        "  1 x 2 leaves from one forme, 6 copies to the sheet, each page set 3 times\n1 forme\n");
  CHECK(told(schemes::duodecimo, 8) ==
        "  1 x 4 leaves from two formes, 3 copies to the sheet, each page set 3 times\n2 formes\n");
  CHECK(told(schemes::duodecimo, 12) == "  1 x 6 leaves from one forme, 2 copies to the sheet\n1 forme\n");
}

TEST_CASE("a bill with shared sheets, cancels, reams and prices") {
  auto const told = [](Edition const& edition) {
    auto const bill = reckon(edition);
    REQUIRE(bill);
    return working(*bill);
  };
  // 86 leaves of text are 10 sheets of 8 and 6 leaves, and 2 of preliminaries fill the sheet; 11 · 1000 sheets are 22 reams
  CHECK(told({.scheme = schemes::octavo, .pages = 172, .prelim_pages = 4, .copies = 1000, .ream = reams::of_500}) ==
        "88 leaves (0 pages blank) in 12 gatherings, 8 leaves to the sheet: 11 sheets a copy\n"
        "  10 sheets of two formes\n"
        "  1 x 8 leaves, a sheet of two formes: 2 of preliminaries and 6 of text worked together: inferred, not "
        "observed\n"
        "22 formes\n"
        "1000 copies and 0 over: 11000 sheets (11000 without overs and without an odd half-sheet; 12000 if every part "
        "of a sheet takes a whole one)\n"
        "  22 reams, 0 quires, 0 sheets, by the ream of 500: 500 in quires of 25\n"
        "22000 impressions, one side of one sheet each (11000 perfected): 88 tokens of 250; 88 hours by the clock at "
        "250 impressions an hour\n"
        "  8 4/5 days of 10 hours on 1 press; 7 1/3 days of pay at 12 tokens a day\n");
  // parts cut before printing go through the press by themselves: 10 · 2000 + 2000 + 2000 impressions
  CHECK(told({.scheme = schemes::octavo,
              .pages = 160,
              .prelim_pages = 8,
              .cancel_leaves = 2,
              .copies = 1000,
              .arranging = {.sharing = Sharing::none, .parts = PartWork::cut_first}}) ==
        "84 leaves (0 pages blank) in 11 gatherings, 8 leaves to the sheet: 10 3/4 sheets a copy\n"
        "  10 sheets of two formes\n"
        "  1 x 4 leaves on paper cut before printing, two formes\n"
        "  1 x 2 leaves on paper cut before printing, two formes\n"
        "24 formes\n"
        "1000 copies and 0 over: 10750 sheets (10750 without overs and without an odd half-sheet; 12000 if every part "
        "of a sheet takes a whole one)\n"
        "  2 cancels counted as paper of its own, several to the sheet\n"
        "24000 impressions, one side of one sheet each (12000 perfected): 96 tokens of 250; 96 hours by the clock at "
        "250 impressions an hour\n"
        "  9 3/5 days of 10 hours on 1 press; 8 days of pay at 12 tokens a day\n");
  // 1000 = 2 · 480 + 24 + 16; 9 kg · 1000 / 480 = 18.75; 1500 · 1000 / 480 = 3125; 2 · 700; 8 · 30
  CHECK(told({.scheme = schemes::quarto,
              .pages = 8,
              .copies = 1000,
              .ream = reams::of_480,
              .weight_of_ream = Fraction{9000},
              .price_of_ream = 1500,
              .price_of_forme = 700,
              .price_of_token = 30}) ==
        "4 leaves (0 pages blank) in 1 gathering, 4 leaves to the sheet: 1 sheet a copy\n"
        "  1 sheet of two formes\n"
        "2 formes\n"
        "1000 copies and 0 over: 1000 sheets\n"
        "  2 reams, 1 quire, 16 sheets, by the short ream: 480 in quires of 24\n"
        "  weight 18 3/4 kg\n"
        "  paper costs 3125 in the smallest unit\n"
        "  formes cost 1400\n"
        "  presswork costs 240\n"
        "  together 4765\n"
        "2000 impressions, one side of one sheet each (1000 perfected): 8 tokens of 250; 8 hours by the clock at 250 "
        "impressions an hour\n"
        "  4/5 day of 10 hours on 1 press; 2/3 day of pay at 12 tokens a day\n");
}

TEST_CASE("a step names two pairs of pages that meet and counts the others") {
  for (auto const attested : Attested::all()) {
    CAPTURE(attested.id());
    auto const scheme = attested.scheme();
    auto const steps = walk(scheme).value();
    std::string const text = explain_steps(scheme).value();
    std::size_t at = 0;
    for (auto const& step : steps) {
      auto const line = text.substr(at, text.find('\n', at) - at);
      at += line.size() + 1;
      std::size_t named = 0;
      for (auto from = line.find(" meets "); from != line.npos; from = line.find(" meets ", from + 1)) ++named;
      auto const pairs = step.meetings().size();
      CHECK(named == std::min<std::size_t>(pairs, 2));
      auto const more = pairs == 3 ? std::string{", and 1 more pair meets."}
                                   : ", and " + std::to_string(pairs - 2) + " more pairs meet.";
      CHECK(line.ends_with(more) == (pairs > 2));
      CHECK((line.find(" more pair") != line.npos) == (pairs > 2));
    }
  }
}

TEST_CASE("what a scheme does not have is not explained") {
  auto const scheme = schemes::octavo.scheme();
  for (int const page : {0, -3, 17, INT_MIN, INT_MAX}) {
    auto const error = explain_page(scheme, page).error();
    CHECK(error.problem == Problem::no_such_page);
    CHECK(sentence_of(error) == "'page' must be a page of the scheme, the last of which is 16");
  }
  CHECK(explain_page(scheme, 16));
  for (std::int64_t const copies : {std::int64_t{0}, std::int64_t{-1}, INT64_MIN}) {
    CHECK(explain_count(scheme, copies).error().problem == Problem::not_positive);
    CHECK(found_in(explain_count(scheme, copies).error()) == "copies");
  }
  CHECK(explain_count(scheme, 1));
  CHECK(explain_count(scheme, INT64_MAX / 2));
  CHECK(explain_count(scheme, INT64_MAX / 2 + 1).error().problem == Problem::result_too_large);
  CHECK(explain_count(schemes::quarto_half_sheet.scheme(), INT64_MAX - 1)); // two copies to the sheet, two impressions
  CHECK(explain_count(schemes::folio_in_sixes.scheme(), INT64_MAX).error().problem == Problem::result_too_large);
}

TEST_CASE("pages exchanged with their heads are told as such") {
  auto const right = impose(*fold(schemes::octavo.scheme()));
  auto const told = [&](ExchangedHeads heads) {
    return explain_misprints(*find_misprints(seen_formes(*exchanged(right, 3, 6, heads))));
  };
  CHECK(told(ExchangedHeads::of_page).find(" are exchanged with their heads; corrected: ") != std::string::npos);
  CHECK(told(ExchangedHeads::of_place).find(" are exchanged; corrected: ") != std::string::npos);
}

TEST_CASE("a bill of one thing each, and of paper from the mill") {
  // a sheet printed on one side: one of everything, and no plural
  auto bill = *reckon({.scheme = schemes::broadside,
                       .pages = 1,
                       .copies = 1,
                       .press = {.token = {1, ""}, .rate = {1, ""}, .hours_a_day = 1, .tokens_a_day = 1}});
  CHECK(working(bill) == "1 leaf (1 page blank) in 1 gathering, 1 leaf to the sheet: 1 sheet a copy\n"
                         "  1 sheet of one forme, the other side blank\n"
                         "1 forme\n"
                         "1 copy and 0 over: 1 sheet\n"
                         "1 impression, one side of one sheet each (0 perfected): 1 token of 1; 1 hour by the clock at "
                         "1 impression an hour\n"
                         "  1 day of 1 hour on 1 press; 1 day of pay at 1 token a day\n");
  // the same leaf as half a sheet that is cut before it is printed
  bill.plan = Plan{};
  bill.plan.leaves_to_sheet = 2;
  bill.plan.add({3, 1, Working::Kind::one_side, {}});
  CHECK(working(bill).find("\n  3 x 1 leaf on paper cut before printing, one forme, the other side blank\n") !=
        std::string::npos);
  // 432 of the 472 sheets of a ream from the mill are good (Savage 1841), so 432 sheets are a ream; 432 = 18 · 24. One man
  // takes twice as long: 864 / 125 = 6.912 hours; on two presses 6.912 / 20 = .3456 days; 864 / 250 = 3.456; / 12 = .288
  CHECK(
      working(*reckon({.scheme = schemes::quarto,
                       .pages = 8,
                       .copies = 432,
                       .ream = reams::from_mill,
                       .press = {.crew = Crew::half_press, .presses = 2}})) ==
      "4 leaves (0 pages blank) in 1 gathering, 4 leaves to the sheet: 1 sheet a copy\n"
      "  1 sheet of two formes\n"
      "2 formes\n"
      "432 copies and 0 over: 432 sheets\n"
      "  0 reams, 18 quires, 0 sheets, by the ream from the mill: 472 in quires of 24\n"
      "  of a ream 432 are good: 1 ream to be bought\n"
      "864 impressions, one side of one sheet each (432 perfected): about 3.46 tokens of 250; about 6.91 hours by the "
      "clock at 250 impressions an hour for two men; one man alone makes half as many\n"
      "  about 0.35 day of 10 hours on 2 presses; about 0.29 day of pay at 12 tokens a day\n");
  // 720 = 432 · 5/3
  CHECK(working(*reckon({.scheme = schemes::quarto, .pages = 8, .copies = 720, .ream = reams::from_mill}))
            .find("are good: 1 2/3 reams to be bought") != std::string::npos);
  // two half-sheets on one sheet where all may be shared; that they are equal asks for evidence (Bowers)
  CHECK(working(*reckon({.scheme = schemes::octavo,
                         .pages = 8,
                         .prelim_pages = 8,
                         .copies = 1,
                         .arranging = {.sharing = Sharing::freely}}))
            .find("4 of preliminaries and 4 of text worked together: inferred, not observed; equal shares need "
                  "positive evidence\n") != std::string::npos);
}

TEST_CASE("numbers in words") {
  CHECK(hundredths(0) == "0.00");
  CHECK(hundredths(.004) == "0.00");
  CHECK(hundredths(.006) == "0.01");
  CHECK(hundredths(.5) == "0.50");
  CHECK(hundredths(1) == "1.00");
  CHECK(hundredths(.0949) == "0.09");
  CHECK(hundredths(.096) == "0.10");
  CHECK(hundredths(.994) == "0.99");
  CHECK(hundredths(.996) == "1.00");
  CHECK(hundredths(1 + 1e-12) == "1.00"); // sums of doubles
  CHECK(hundredths(-1e-12) == "0.00");
  CHECK_THROWS(hundredths(1 + 2e-9));
  CHECK_THROWS(hundredths(-2e-9));
  CHECK_THROWS(hundredths(1.01));
  CHECK_THROWS(hundredths(-.01));
  CHECK_THROWS(hundredths(std::numeric_limits<double>::quiet_NaN()));
  CHECK(number_of(1, "leaf", "leaves") == "1 leaf");
  CHECK(number_of(2, "leaf", "leaves") == "2 leaves");
  for (auto const& [number, word] : {std::pair{1, "first"},
                                     {2, "second"},
                                     {3, "third"},
                                     {8, "eighth"},
                                     {9, "9th"},
                                     {10, "10th"},
                                     {11, "11th"},
                                     {12, "12th"},
                                     {13, "13th"},
                                     {14, "14th"},
                                     {21, "21st"},
                                     {22, "22nd"},
                                     {23, "23rd"},
                                     {24, "24th"},
                                     {111, "111th"},
                                     {101, "101st"},
                                     {113, "113th"}})
    CHECK(detail::ordinal(number) == word);
}
