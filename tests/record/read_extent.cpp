// SPDX-License-Identifier: MIT
// Extents against the worked examples of the rules for cataloguing. Rule numbers are those of DCRMR (RDA edition of the
// rules for rare materials, 2023), in brackets those of DCRM(B). The examples are the rules'; the sums are arithmetic, done
// by hand.
#include <bifolium/collation.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/write_extent.hpp>

#include "check.hpp"

#include <string>
#include <tuple>

using namespace bifolium;

namespace {
Extent extent(std::string const& text) {
  auto const read = read_extent(text);
  REQUIRE_MESSAGE(read, text);
  return *read;
}
struct Example {
  char const* text;
  std::int64_t pages;
};
void check(std::initializer_list<Example> examples) {
  for (auto const& example : examples) {
    INFO(example.text);
    auto const read = extent(example.text);
    CHECK(read.pages() == example.pages);
    CHECK(read.unread.empty());
    CHECK(read.warnings().empty());
  }
}
} // namespace

TEST_CASE("sequences add up, with their pages without numbers") {
  check({
      {"viii, 256 pages", 264},         // DCRMR 6.21.421
      {"87, [1] pages", 88},            // .4225
      {"[4], 73, [3] pages", 80},       // .4225
      {"iv, [40], 328 pages", 372},     // .4225
      {"[2], 40 pages", 42},            // .4225.2
      {"[2], 5-40 pages", 38},          // .4225.2: a range begins where its first number is printed
      {"200, [8], 201-232 pages", 240}, // .4225.3
      {"42, [2], 43-145, [3], 147-161, [3], 163-180, [6] pages", 192}, // .4225.3
      {"[94] pages", 94},                                              // .425 (5B8)
      {"xvi, 17-328 pages", 328},          // .424.1 (5B6.1): the numerals change within one run
      {"xv, [2], 18-328 pages", 328},      // the same
      {"xii, [1], 35, 35, [1] pages", 84}, // .424.2: duplicate paging
      {"[3], 2-11, 2-11, 12 pages, 13-19, 21 leaves, 22-44, [1] pages", 64},
      {"1, [3] pages", 4}, // .422: a single fold
  });
}

TEST_CASE("a unit governs the numbers back to the unit before it") {
  check({
      // DCRMR 6.21.4225.1
      {"[12], 112 pages, 113-120 leaves, 121-568 pages, 569-604 leaves, 605-913, [15] pages",
       12 + 112 + 2 * 8 + 448 + 2 * 36 + 309 + 15},
      // .424.6: columns are taken as two to a page, by our convention
      {"xiv pages, xv-xlii, 496 columns, [1], 498-534, [2] pages", 14 + 14 + 248 + 1 + 37 + 2},
      // .424.6, shortened: the number 200 comes twice
      {"[14], 196 pages, 197-200 leaves, 200, [8], 201-569 pages", 14 + 196 + 8 + 1 + 8 + 369},
      {"48 leaves", 96},              // .421
      {"[1], 13 leaves", 28},         // .421
      {"[4], CXXII leaves", 2 * 126}, // .421; the formula a4 A-O8 P10 of a record of 2016 has 126 leaves
      // constructed; what is right is arithmetic
      {"4 p.l., 205 p.", 213},
      {"[4] leaves, 205 p.", 213},
      {"xii p., 205 leaves", 422},
      {"xii p., 1 l., 340 p.", 354},
      {"pp. 1-64, ff. 65-100", 136},
      {"[8], 332, [64] carte", 808}, // antiqua.unime.it, 8°; *8, A-Z8, Aa-Ss8, Tt4, a-h8
      {"205 S.", 205},
      {"50 Bl.", 100},
  });
  CHECK(extent("[4], CXXII leaves").pagination.runs[1].numerals == Numerals::roman);
  CHECK(extent("pp. 1-64, ff. 65-100").pagination.runs[1].unit == PageUnit::leaves);
  // the leaves of *8, A-Z8, Aa-Ss8, Tt4, a-h8
  CHECK((*compare_extent(*read_formula("*8, A-Z8, Aa-Ss8, Tt4, a-h8"), extent("[8], 332, [64] carte"))).verdict ==
        ExtentAgrees::agrees);
}

TEST_CASE("lettered pages, by their first and last letter") { // DCRMR 6.21.421.3; the letters and sums are constructed
  check({{"a-d, 52 p.", 56}, {"A-D pages", 4}, {"a-h p., 48 p.", 56}, {"A-I leaves", 18}, {"pp. a-d 1-52", 56}});
  CHECK(extent("a-d, 52 p.").pagination.runs[0].numerals == Numerals::letters);
  CHECK(extent("a-d, 52 p.").pagination.runs[0].last == 4);
  // by the alphabet of 23 letters, unless the letters themselves are of a longer one; and it is told
  auto const long_run = extent("a-z p.");
  CHECK(long_run.pages() == 23);
  REQUIRE(long_run.warnings().size() == 1);
  CHECK(long_run.warnings()[0].problem == Problem::pages_lettered);
  CHECK(long_run.warnings()[0].limit == 26);
  CHECK(extent("a-j p.").pages() == 10);
  CHECK(extent("a-j p.").warnings().empty());
  CHECK(extent("i-x, 12 p.").pagination.runs[0].numerals == Numerals::roman); // never letters
  CHECK(!read_extent("d-a p."));
  CHECK(!read_extent("u-z p.")); // u and v are one letter, and v is a numeral
  CHECK(!read_extent("a-D p."));
}

TEST_CASE("words that say whether pages bear numbers") {
  check({
      // DCRMR 6.21.4225 has brackets; RDA's `unnumbered pages`, cards and other languages: common practice, no source
      {"8 unnumbered pages, 234 pages", 242},
      {"2 unnumbered leaves, xii, 234 pages", 250},
      {"12 unnumbered pages, 15-344 pages", 342},
      {"344 pages, 2 unnumbered pages", 346},
      {"168 unnumbered pages", 168},
      {"2 ff. n. ch., 52 pp.", 56},
      {"2 ff.n.ch., 52 pp.", 56},
      {"8 nn. ff., 400 pp.", 416},
      {"cc. 4 n. n., 52", 112},
      {"4 ungez. Bl., 120 S.", 128},
      {"[4], 120 numb. l.", 248},
      {"16 p. l., 414 numb. l., 1 l.", 862},
      {"[2], 398 pages, [1] blank leaf", 402},
      {"(8), 400, (4) p.", 412},
  });
  CHECK(extent("8 unnumbered pages, 234 pages").pagination.runs[0].numbering == Numbering::none);
  CHECK(!extent("8 unnumbered pages, 234 pages").pagination.unpaged);
  CHECK(extent("2 ff. n. ch., 52 pp.").pagination.runs[0].numbering == Numbering::none);
}

TEST_CASE("a unit inside brackets is that of its number alone") { // common practice of dealers, no source
  check({{"[4 leaves], 205 p.", 213},
         {"[4 ll.], 205 p.", 213},
         {"(4 ff.), 205 pp., (1 f.)", 215},
         {"(8 p.), 205 p.", 213},
         {"[4 pages], 205 leaves", 414},
         {"8, [4 ll.], 205 p.", 221},
         {"205 p., [4 ll.]", 213},
         {"[4 ll., blank], 205 p.", 213}});
  CHECK(extent_line(extent("[4 ll.], 205 p.")) == "[4] leaves, 205 p.");
}

TEST_CASE(
    "words for pages without numbers and for blanks, before the unit and after it") { // common practice, no source
  for (std::string const words :
       {"unn.",       "n. n.",   "nn.",    "n. ch.",  "n. c.",   "lim.", "liminaires", "prél.",
        "blank",      "bl.",     "blancs", "bianche", "weiße",   "w.",   "leere",      "ungez.",
        "unnumbered", "bianchi", "weiss",  "vakat",   "blancas", "leer"})
    for (auto const& text :
         {"4 " + words + " ff., 205 pp.", "4 ff. " + words + ", 205 pp.", "205 pp., 4 " + words + " ff."}) {
      INFO(text);
      auto const read = extent(text);
      CHECK(read.pages() == 213);
      CHECK(read.unread.empty());
      CHECK(read.pagination.runs[text[0] == '2'].numbering == Numbering::none);
    }
}

TEST_CASE("what is said of a number stands beside it, and the numbers go on") { // common practice, no source
  struct Said {
    std::string_view text;
    std::int64_t pages;
    std::string_view unread; // empty where nothing is
  };
  for (auto const& [text, pages, unread] :
       {Said{"[8], 205, [1, blank] p.", 214, ""}, Said{"[8], 205, [1 blank] p.", 214, ""},
        Said{"[8], 205, [1] (errata), [2] p.", 216, "(errata)"},
        Said{"[8], 205, [1 (errata)], [2] p.", 216, "(errata)"}, Said{"[8], 205, [2, ads] p.", 215, ", ads"},
        Said{"[8], 205 [sic], [1] p.", 214, "[sic]"},
        Said{"[8], 205 (misnumbered 502), [1] p.", 214, "(misnumbered 502)"},
        Said{"205 p. (port.), 4 p.", 209, "(port.)"}, Said{"205 p., 1 map, 4 p.", 209, "1 map"},
        Said{"205 p., errata, [2], 12 leaves", 233, "errata"},
        // BMC: the numbers that the leaves bear
        Said{"80 leaves, 2-79 numbered", 160, "2-79 numbered"},
        Said{"80 leaves, 3-78 numbered I-LXXVI", 160, "3-78 numbered I-LXXVI"}}) {
    INFO(std::string{text});
    auto const read = read_extent(text);
    REQUIRE(read);
    CHECK(read->pages() == pages);
    CHECK(read->warnings().empty());
    REQUIRE(read->unread.size() == (unread.empty() ? 0 : 1));
    if (!unread.empty()) CHECK(read->unread[0].of(text) == unread);
  }
  check(
      {{"viii+205 p.", 213}, {"viii+205+[3] p.", 216}, {"pp. viii+205", 213}, {"1-96, 81-112 [i.e. 97-128] p.", 128}});
  for (auto text : {"[4], 183, [1] p. ; [1 v.]", "183, [1] p., [1 map]", "183, [1] p., [3 leaves of plates]"}) {
    INFO(text);
    CHECK(extent(text).pages() == (text[0] == '[' ? 188 : 184)); // no pages
  }
  CHECK(extent("142+ l.").pagination.incomplete);
  CHECK_FALSE(extent("viii+205 p.").pagination.incomplete);
  CHECK_FALSE(read_extent("81-112 [i.e. 97-120] p.")); // not as many pages
  for (auto text : {"205 p., imperfect", "205 p. (imperfect)", "205 p., defective", "205 p., Imperfect",
                    "205 p. (unvollständig)", "205 p., mutilo"})
    CHECK(extent(text).pagination.incomplete);
}

TEST_CASE("volumes may be named by their numbers alone") { // common practice, no source
  for (auto text :
       {"v. 1: [8], 205 p.; v. 2: [4], 300 p.", "1: [8], 205 p.; 2: [4], 300 p.", "I: [8], 205 p.; II: [4], 300 p.",
        "1) [8], 205 p. 2) [4], 300 p.", "2 v. (I: [8], 205 p.; II: [4], 300 p.)"}) {
    INFO(text);
    auto const read = extent(text);
    CHECK(read.pages() == 517);
    CHECK(read.volumes == 2);
    CHECK(read.pagination.parts() == 2);
  }
}

TEST_CASE("units in the languages of catalogues, and without their points") { // common practice, no source
  check({{"[8], 120 c.", 256},
         {"[8], 120 carte", 256},
         {"1 carta, 120 p.", 122},
         {"[4], 120 h.", 248},
         {"[4], 120 hojas", 248},
         {"232 páginas", 232},
         {"[8] k., 120 s.", 136},
         {"4 p. ℓ., 205 p.", 213},
         {"3 p.ℓ., 9-304 p.", 302},
         {"244p", 244},
         {"244 pp", 244},
         {"[4], 52 ff", 112},
         {"12 feuillets, 40 p.", 64},
         {"foliis 120", 240},
         {"8 Bll., 320 SS., 4 Bll.", 344},
         {"[1] Bl., 16 Sp.", 10},
         {"496 Spalten", 248},
         {"P. 205-320", 116},
         {"Pp. xii, 320", 332},
         {"4 hs., 320 pp.", 328},
         {"4 hh., 320 pp.", 328},
         {"[16], 320 str.", 336},
         {"320 stron", 320},
         {"[4] bl., 320 p.", 328}, // bladen; blank only beside a unit
         {"pp. XII, 320, 2 b.", 334},
         {"[8] Bl., 234 S., [1] Bl.", 252}});
  CHECK(extent("c. 300 p.").pages() == 300);
  CHECK(extent("c. 300 p.").pagination.approximate); // before a number `c.` is about, after it leaves
  CHECK(extent("16 p. l., 414 numb. l., 1 l.").pagination.runs[0].preliminary);
  CHECK(extent("[4], 52 S., 3 Taf.").leaves_of_plates() == 3);
  CHECK(extent("[8], 120 c., [3] c. di tav.").leaves_of_plates() == 3);
  CHECK(extent("viii, 256 p., front., 12 pl.").leaves_of_plates() == 12); // what is between is left unread
  CHECK(extent("viii, 256 p., front., 12 pl.").unread.size() == 1);
}

TEST_CASE(
    "a dash between numbers of two kinds parts two sequences") { // common practice of French catalogues, no source
  check({{"XII-400 p.", 412},
         {"[XII]-400 p.", 412},
         {"[4]-XII-400-[3] p.", 419},
         {"400-[3] p.", 403},
         {"[209]-256 p.", 48}});
}

TEST_CASE("each sequence has its dash, also after a unit, a correction and a range") { // the same practice
  struct Dashes {
    char const* text;
    std::int64_t pages;
  };
  for (auto const& [text, pages] : {Dashes{"[4]-319 [i.e. 321]-[3] p.", 328},
                                    {"[8] p.-320 p.-[4] p.", 332},
                                    {"[8] f.-320 p.-[4] f.", 344},
                                    {"XII-320 p.-[2] f. de pl.", 332},
                                    {"[8]-XII-320-[4] p.-[2] f. de pl.", 344},
                                    {"[1-2]-120-[1] f.", 246},
                                    {"pp. [8]-320-[4]", 332},
                                    {"P. [8]-320-[4]", 332}}) {
    INFO(text);
    auto const read = extent(text);
    CHECK(read.pages() == pages);
    CHECK(read.unread.empty());
  }
  CHECK(extent("XII-320 p.-[2] f. de pl.").leaves_of_plates() == 2);
  CHECK(extent("205 p. - 20 cm").pages() == 205); // a size is not a sequence
}

TEST_CASE("a number in brackets after a range that is written in full can be the next page") {
  // Bowers, Principles, writes 2-205 [206] (p. 327 and elsewhere, from memory); the unit after it is common practice
  check({{"[i-iii] iv-xii, [1] 2-205 [206] p.", 218},
         {"[8], 1-205, [206] p.", 214},
         {"[8], 1-205, [1] p.", 214},
         {"[8], 1-205, [206 unnumbered] p.", 419},
         {"[8], 205, [3] p.", 216},
         {"[8], 3, [4] p.", 15}});                // the short form: four pages
  auto const high = extent("[8], 205, [206] p."); // the short form would have [1]
  CHECK(high.pages() == 214);
  REQUIRE(high.warnings().size() == 1);
  CHECK(high.warnings()[0].problem == Problem::bracket_read_as_number);
  CHECK(extent_line(extent("205, [206 unnumbered] p.")) == "205, [206 unnumbered] p.");
}

TEST_CASE("full stops and pluses between numbers") { // common practice of dealers and old catalogues, no source
  check({{"pp. xii. 320", 332},
         {"pp. 320. [2]", 322},
         {"pp. xii. 320.", 332},
         {"viii., 320. p.", 328},
         {"ix., 320 p.", 329},
         {"(8)+205+(3) p.", 216},
         {"(8) + 205 + (3) p.", 216}});
  CHECK_FALSE(extent("(8)+205+(3) p.").pagination.incomplete);
  auto const wrong = read_pagination("pp. 1-205 [20]+ [misprinting 45 as 54]"); // found by a fuzzer
  REQUIRE(wrong);
  CHECK(wrong->incomplete);
  CHECK(wrong->misprints.size() == 1);
}

TEST_CASE("a dash after an even number in brackets parts two sequences, unless the numbers go on") {
  struct Parted {
    char const* text;
    std::int64_t pages;
    std::size_t runs;
    std::uint32_t column; // of the doubt
  };
  // common practice of French catalogues, no source; hand-counted
  for (auto const& [text, pages, runs, column] : {
           Parted{"[8]-320 p.", 328, 2, 1},
           {"[4]-319-[1] p.", 324, 3, 1},
           {"[2], [6]-96 p.", 104, 3, 6}, // after two pages the next page is 3 or, on its back, 4
           {"[4]-96 p. ; [8]-120 p.", 228, 4, 1},
           {"xii, [8]-320 p.", 340, 3, 6},
           {"[8]–320 pages", 328, 2, 1},
           {"[4]-120 f.", 248, 2, 1},
       }) {
    INFO(text);
    auto const read = extent(text);
    CHECK(read.pages() == pages);
    CHECK(read.pagination.runs.size() == runs);
    REQUIRE(!read.warnings().empty());
    CHECK(read.warnings()[0].problem == Problem::bracket_read_as_count);
    CHECK(read.warnings()[0].place->column == column);
  }
  auto const read = extent("[8]-320 p.");
  CHECK(read.pagination.runs[0].numbering == Numbering::none);
  CHECK(read.pagination.runs[0].count == 8);
  CHECK(read.pagination.runs[1].first == 1);
  CHECK(read.pagination.runs[1].last == 320);
  CHECK(message(read.warnings()[0]) == "line 1, column 1: '[8]' was read as 8 pages without numbers before the "
                                       "numbers, not as the number of the first page");
  check({{"[1]-320 p.", 320},
         {"[3]-40 p.", 38},
         {"vi, [7]-263 p.", 263},
         {"vi, [8]-263 p.", 262},                          // page 7 is a plate, or bears no text
         {"xv, [16]-328 p.", 328},                         // 15 + 313
         {"x, [2], [14]-246 p.", 245},                     // 10 + 2 + 233
         {"[8] p., [10]-40 p.", 39}});                     // the pages without numbers are counted by the numbers
  CHECK((*read_pagination("pp. [8]-320")).pages() == 313); // there the dash is always a range
}

TEST_CASE("a correction wins over the number that is printed") {
  check({
      {"564 [that is, 56] leaves", 112}, // DCRMR 6.21.4245.2 (5B7.2)
      {"100 [i.e. 104] p.", 104},        // the same in the older words
      {"[12 i.e. 14], 30 p.", 44},       // constructed
      // common practice, no source
      {"[16], 414 (i.e. 416), [16] p.", 448},
      {"[16], 414 i.e. 416, [16] p.", 448},
      {"[16], 414 [recte 416], [16] p.", 448},
      {"[16], 414 [sic, for 416], [16] p.", 448},
  });
  auto const plates = extent("[10], 199 [that is, 203], [33] pages, [3] folded leaves of plates"); // .4245.2
  CHECK(plates.pages() == 246);
  CHECK(plates.leaves_of_plates() == 3);
  CHECK(plates.pagination.runs[1].last == 199);
  CHECK(plates.pagination.runs[1].true_last == 203);
  CHECK_FALSE(plates.pagination.runs[0].true_last); // it is not corrected
}

TEST_CASE("parts of a book alone, and books whose paging is not given") {
  check({{"pages 713-797, [1]", 86}, {"[1], 432-488 pages", 58}}); // DCRMR 6.21.424.5
  // .424.6, .425 (5B8), and the older words from memory
  for (auto text : {"384 pages in various pagings", "416 pages, 98 pages in various pagings",
                    "1 volume (various pagings)", "1 v. (various pagings)"}) {
    INFO(text);
    CHECK(extent(text).various_pagings);
  }
  for (auto text : {"1 volume (unpaged)", "1 v. (unpaged)"}) {
    INFO(text);
    CHECK(extent(text).pagination.unpaged);
    CHECK(extent(text).volumes == 1);
    CHECK(compare_extent(*read_formula("A-B⁸"), extent(text)).error().problem == Problem::not_stated);
  }
  // .428 (5B12), and the older sign from memory
  for (auto text : {"142 pages (incomplete)", "142+ p."}) {
    INFO(text);
    auto const read = extent(text);
    CHECK(read.pages() == 142);
    CHECK(read.pagination.incomplete);
    CHECK(read.pagination.total().high == Pagination::no_limit);
    // a copy that lacks leaves agrees with a longer book, not with a shorter one
    CHECK((*compare_extent(*read_formula("A-K⁸"), read)).verdict == ExtentAgrees::agrees);
    CHECK((*compare_extent(*read_formula("A-H⁸"), read)).verdict == ExtentAgrees::contradicts);
  }
}

TEST_CASE("words for plates, long and short") { // common practice, no source
  for (std::string const words : {"leaves of plates",
                                  "leaves of pl.",
                                  "ll. of plates",
                                  "l. of plates",
                                  "plates",
                                  "pl.",
                                  "ff. de planches",
                                  "f. de pl.",
                                  "Taf.",
                                  "c. di tav.",
                                  "h. de lám.",
                                  "carte di tav.",
                                  "carte di tavole",
                                  "hojas de láminas",
                                  "f. de pl. dépl.",
                                  "c. di tav. ripieg.",
                                  "h. de lám. pleg.",
                                  "gef. Taf.",
                                  "tav. f.t.",
                                  "planches hors texte",
                                  "Kupfertafeln",
                                  "Kupfertaf.",
                                  "Kupfert.",
                                  "Falttaf.",
                                  "Bl. Kupfert.",
                                  "Bl. Taf.",
                                  "k. tabl.",
                                  "engr. plates",
                                  "fold. plates",
                                  "plates (4 folded)"}) {
    INFO(words);
    CHECK(extent("205 p., [4] " + words).leaves_of_plates() == 4);
    CHECK(extent("205 p., [4] " + words).pages() == 205);
  }
  CHECK(extent("205 p., [4] p. of pl.").leaves_of_plates() == 2);
  CHECK(extent("[1] sheet").sheets == 1);
}

TEST_CASE("plates are counted apart") { // DCRMR 6.21.426-.427 (5B9)
  struct WithPlates {
    char const* text;
    std::int64_t pages, leaves_of_plates;
  };
  for (auto const& example : {
           WithPlates{"xii, 277, [11] pages, 48 pages of plates", 300, 24},
           WithPlates{"x, 32, [2] pages, xxii leaves of plates", 44, 22},
           WithPlates{"[8], 4 pages, [1] leaf of plates", 12, 1}, // the pages are constructed, here and next
           WithPlates{"[8], 4 pages, [9] leaves of plates (7 folded)", 12, 9},
           WithPlates{"[12] pages, [24] pages of plates, [2] leaves of plates", 12, 14},
           WithPlates{"20 pages, approximately 55 leaves of plates", 20, 55},
           WithPlates{"12 plates, 100 p.", 100, 12}, // constructed
           // a number of plates is corrected as one of pages is (DCRMR 6.21.4245.2); constructed
           WithPlates{"128 pages, 16 [that is, 18] leaves of plates", 128, 18},
           WithPlates{"128 pages, 16 (i.e. 18) leaves of plates", 128, 18},
           WithPlates{"128 pages, [16] [i.e. 18] leaves of plates", 128, 18},
           WithPlates{"128 pages, 2 [i.e. 1] leaf of plates", 128, 1},
           WithPlates{"128 pages, xvi [i.e. xviii] pages of plates", 128, 9},
       }) {
    INFO(example.text);
    auto const read = extent(example.text);
    CHECK(read.pages() == example.pages);
    CHECK(read.leaves_of_plates() == example.leaves_of_plates);
    CHECK(read.unread.empty());
  }
  CHECK(extent("[8], 4 pages, [9] leaves of plates (7 folded)").plates[0].folded == 7);
  CHECK(extent("20 pages, approximately 55 leaves of plates").plates[0].approximate);
  CHECK(!extent("[8], 4 pages").leaves_of_plates());
}

TEST_CASE("volumes, sheets and their parts") {
  CHECK(extent("5 volumes").volumes == 5); // DCRMR 6.21.431
  CHECK(extent("5 volumes").pagination.runs.empty());
  CHECK(extent("3 v. in 2").bound_in == 2);                                        // from memory
  auto const two = extent("2 volumes (vi, 200, [4] pages, CCC leaves of plates)"); // .433
  CHECK(two.volumes == 2);
  CHECK(two.pages() == 210);
  CHECK(two.leaves_of_plates() == 300);
  auto const continuous = extent("4 volumes ([4], 30, 32-33, 848, 835-1643, [1] pages, [1] leaf of plates)"); // .434
  CHECK(continuous.pages() == 4 + 30 + 2 + 848 + 809 + 1);
  CHECK(continuous.leaves_of_plates() == 1);
  auto const four = extent("4 volumes ([4], 527, [1]; 12, 548; 8, 533, [3]; 4, 499, [1] pages)"); // .436
  CHECK(four.pagination.parts() == 4);
  CHECK(four.pages() == 4 + 527 + 1 + 12 + 548 + 8 + 533 + 3 + 4 + 499 + 1);
  CHECK(four.pagination.runs[3].part == 1);
  CHECK(extent("1 sheet (2 pages)").sheets == 1); // .4285-.429
  CHECK(extent("1 sheet (2 pages)").pages() == 2);
  CHECK(extent("1 sheet ([1] page)").pages() == 1);
  CHECK(extent("1 folded sheet ([18] panels)").pagination.runs[0].unit == PageUnit::panels);
  CHECK(extent("1 portfolio (34 pages, 25 folded sheets)").sheets == 25);
  // common practice, no source
  auto const named = extent("v. 1: xii, 400 p.; v. 2: viii, 388 p.");
  CHECK(named.volumes == 2);
  CHECK(named.pages() == 808);
  CHECK(named.pagination.parts() == 2);
  CHECK(extent("Bd. I: xii, 400 S. Bd. II: 388 S.").pagination.parts() == 2);
  for (auto text : {"2 t. en 1 v.", "2 parts in 1 volume", "2 pts. in 1", "2 Teile in 1 Bd."}) {
    INFO(text);
    CHECK(extent(text).volumes == 2);
    CHECK(extent(text).bound_in == 1);
    CHECK(extent(text).unread.empty());
  }
  CHECK(extent("1 broadside ([1] p.)").sheets == 1);
}

TEST_CASE("preliminary leaves may be counted again by the numbers after them") { // from memory: old catalogue cards
  auto const read = extent("4 p. l., 3-120 p.");
  CHECK(read.pages() == 126);
  CHECK(read.pagination.total().low == 118);
  CHECK(read.pagination.runs[0].numbering == Numbering::none);
  CHECK(read.pagination.runs[0].preliminary);
  for (auto leaves : {59, 60, 61, 62, 63}) {
    INFO(leaves);
    Formula const book = *read_formula("1-" + std::to_string(leaves - 3) + "¹ a²(a1+χ1)");
    REQUIRE(book.leaves() == leaves);
    CHECK((*compare_extent(book, read)).verdict == ExtentAgrees::agrees);
  }
}

TEST_CASE("what a pagination says of itself agrees with its sum") { // constructed; hand-counted
  check({
      {"pp. [1–8] 9–96 89–128 [=136]", 136}, // 89-96 come twice, and the last page should be 136
      {"pp. 1-60 *57-*60 61-124", 128},
      {"1-60 *57-*60 61-124 p.", 128},
      {"8, *1-4, *[5] p.", 13},         // the bracket goes on with the numbers of its own series
      {"pp. 1-16 ²1-8 17-32[=33]", 41}, // the sequence of its own does not count for the first
      {"[3]-40 p.", 38},
      {"1-[206] p.", 206},
  });
}

TEST_CASE("what is not of the extent is left unread, and named") {
  struct Left {
    std::string_view text, unread;
  };
  for (auto const& [text, unread] : {
           Left{"[14], 939 [i.e. 943], [29] p. : ill., coats of arms.",
                ": ill., coats of arms."}, // EEBO-TCP A13053 (CC0)
           Left{"[124] p., [2] folded woodcut maps", "[2] folded woodcut maps"},
           Left{"[8], 205, [3] p. ; 20 cm (4to)", "; 20 cm (4to)"},
           Left{"205 p. incl. 2 maps", "incl. 2 maps"},
       }) {
    INFO(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    REQUIRE(read->unread.size() == 1);
    CHECK(read->unread[0].of(text) == unread);
  }
  auto const open = extent("[8], 205 p., 31");
  CHECK(open.pages() == 244);
  REQUIRE(open.warnings().size() == 1);
  CHECK(open.warnings()[0].problem == Problem::pages_without_unit);
  for (auto const& [text, found] :
       {Left{"[8], 205", "[8], 205"}, Left{"[8], 205, [3]", "[8], 205, [3]"}, Left{"205", "205"},
        Left{"viii, 205 : ill.", "viii, 205"}, Left{"[8], 205 ; 20 cm", "[8], 205"},
        Left{"[8], 205, [2] leaves of plates", "[8], 205"}, Left{"2 v. ([8], 205; [4], 320)", "[8], 205; [4], 320"}}) {
    INFO(text);
    auto const read = read_extent(text);
    REQUIRE(!read);
    CHECK(read.error().problem == Problem::unit_of_pages_missing);
    CHECK(read.error().found_text() == found);
  }
  CHECK(message(read_extent("[8], 205, [3]").error()) ==
        "line 1, column 1: '[8], 205, [3]' does not say what it counts: write p. or leaves after it");
  for (auto const& [text, found] :
       {Left{"1 map", "map"}, Left{"320 plantas, [2] p.", "plantas"}, Left{"1 score (320 p.)", "score"}}) {
    INFO(text);
    auto const read = read_extent(text);
    REQUIRE(!read);
    CHECK(read.error().problem == Problem::not_a_unit_of_pages);
    CHECK(read.error().found_text() == found);
  }
  CHECK(read_extent("a handsome copy").error().problem == Problem::not_an_extent);
  CHECK(read_extent("").error().problem == Problem::not_an_extent);
}

TEST_CASE("each run keeps where in the text its numbers are") {
  constexpr std::string_view text = "[8], ²35-154 [i.e. 152], xii p.";
  auto const runs = (*read_extent(text)).pagination.runs;
  REQUIRE(runs.size() == 3);
  CHECK(runs[0].at.of(text) == "[8]");
  CHECK(runs[0].last_at->of(text) == "8");
  CHECK(runs[1].at.of(text) == "²35-154 [i.e. 152]");
  CHECK(runs[1].first_at->of(text) == "35");
  CHECK(runs[1].last_at->of(text) == "154");
  CHECK(runs[1].true_at->of(text) == "152");
  CHECK(runs[2].last_at->of(text) == "xii");
  CHECK_FALSE(runs[2].first_at);
}

TEST_CASE(
    "a title leaf is listed with its number or without") { // German and French catalogues: common practice, no source
  for (std::string const leaf :
       {"Titelbl.", "Titelblatt", "1 Titelbl.", "[1] Titelblatt", "title leaf", "title-leaf", "1 title leaf",
        "1 title-leaf", "[1] Titelblad", "feuillet de titre", "1 f. de titre", "1 feuillet de titre"})
    for (auto const& [text, pages] : {std::pair{leaf + ", 124 S.", 126},
                                      {leaf + ", [4], 124 S.", 130},
                                      {leaf + ", XII, 124 p., 2 ff.", 142},
                                      {"2 Bl., " + leaf + ", 124 S.", 130}}) {
      CAPTURE(text);
      auto const read = extent(text);
      CHECK(read.pages() == pages);
      CHECK(read.unread.empty());
      CHECK(read.warnings().empty());
    }
  CHECK(extent("[4], Titelbl., 124 S.").pages() == 130);
  CHECK(!read_extent("Titelblatt fehlt, 124 S."));
  CHECK(!read_extent("Titelblattes, 124 S."));
}

TEST_CASE(
    "a range of pages in the parenthesis of volumes is one run, as the rules have it, and may be meant otherwise") {
  // DCRMR 6.21.4225.2: a range begins where it is printed; that some catalogues write two volumes so: common practice
  for (auto const& [text, pages, doubted] : {std::tuple{"2 vol. (205-320 p.)", 116, true},
                                             {"2 v. (205-320 pages)", 116, true},
                                             {"1 vol. (205-320 p.)", 116, false},
                                             {"2 vol. (205 ; 320 p.)", 525, false},
                                             {"2 vol. (1-205 ; 206-320 p.)", 320, false},
                                             {"2 v. ([4], 205, 206-320 p.)", 324, false},
                                             {"1 v. (pp. 205-320)", 116, false},
                                             {"2 v. (pages 1-205, 206-320)", 320, false},
                                             {"1 v. (ff. [4], 80)", 168, false}}) {
    CAPTURE(std::string{text});
    auto const read = extent(text);
    CHECK(read.pages() == pages);
    CHECK(read.unread.empty());
    REQUIRE(read.warnings().size() == (doubted ? 1U : 0U));
    if (!doubted) continue;
    CHECK(read.warnings()[0].problem == Problem::range_or_volumes);
    CHECK(read.warnings()[0].found_text() == "205-320");
    CHECK(read.warnings()[0].limit == 116);
  }
  // the words of a format after "in" are no number of volumes
  CHECK(!extent("2 vol. in 8°").bound_in);
  CHECK(extent("3 v. in 2").bound_in == 2);
}

TEST_CASE("a number with a unit that is not known is left unread, wherever it stands") { // common practice, no source
  for (auto const& [text, left] : {std::pair{"205 p., 3 quux", "3 quux"},
                                   {"1 Bl., 124 S., 2 xyz", "2 xyz"},
                                   {"205 p., 12 plates, 3 foos", "3 foos"}}) {
    auto const read = extent(text);
    REQUIRE(read.unread.size() == 1);
    CHECK(read.unread[0].of(text) == left);
  }
}
