// SPDX-License-Identifier: MIT
// Every word for pages, leaves, plates and volumes that cataloguers use, and what it counts. The words of DCRMR 6.21 and those
// of other languages are common knowledge of any dictionary; where one is an abbreviation: common practice, no source.
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_pagination.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {

Extent read(std::string const& text) {
  auto const extent = read_extent(text);
  REQUIRE_MESSAGE(extent, text);
  CHECK_MESSAGE(extent->unread.empty(), text);
  return *extent;
}

} // namespace

TEST_CASE("each word for pages, leaves and columns counts what it says, after a number and before one") {
  auto const each = [](std::initializer_list<char const*> words, int pages, bool before_numbers = true) {
    for (std::string const word : words) {
      CAPTURE(word);
      auto const after = read("[2], 3-6 " + word);
      CHECK(after.pages() == 6 * pages / 2);
      CHECK(after.pagination.runs.size() == 2);
      CHECK_FALSE(after.pagination.runs[0].preliminary);
      if (before_numbers) CHECK(read(word + " 1-6").pages() == 6 * pages / 2);
    }
  };
  each({"pages", "pp.", "pp", "p.", "p", "pag.", "pagg.", "págs.", "pág.", "páginas", "pagine", "Seiten", "Seite", "S.",
        "sidor", "blz."},
       2);
  each({"leaves", "lvs.", "ll.", "ll", "l.", "ℓ.",      "feuillets", "folios", "foliis", "folia", "foll.",
        "fols.",  "fol.", "ff.", "ff", "f.", "Blätter", "Bll.",      "Bl.",    "carte",  "cc.",   "hojas"},
       4);
  each({"columns", "column", "cols.", "col."}, 1);
  // before a number these mean something else: c. 300 p. is about 300
  each({"s."}, 2, false);
  each({"folio", "c.", "h.", "k."}, 4, false);
  // of one
  for (std::string const word : {"leaf", "feuillet", "folio", "Blatt", "carta", "hoja"})
    CHECK_MESSAGE(read("1 " + word + ", 4 p.").pages() == 2 + 4, word);
  CHECK(read("1 page").pages() == 1);
  CHECK(read("1 column").pages() == 1); // two to a page
  CHECK(read("5 columns").pages() == 3);
  for (std::string const word : {"panels", "panel"}) {
    CHECK_MESSAGE(read("6 " + word).pages() == 6, word);
    CHECK_MESSAGE(read("6 " + word).pagination.runs[0].unit == PageUnit::panels, word);
  }
}

TEST_CASE(
    "each word for preliminary leaves says that the numbers may count them again") { // from memory: catalogue cards
  for (std::string const word : {"preliminary leaves", "prelim. leaves", "p. leaves", "p. ll.", "p. l.", "p.l.",
                                 "p. ℓ.", "p.ℓ.", "p. l", "preliminary leaf"}) {
    CAPTURE(word);
    auto const extent = read("3 " + word + ", 7-205 p.");
    REQUIRE(extent.pagination.runs.size() == 2);
    CHECK(extent.pagination.runs[0].preliminary);
    CHECK(extent.pagination.runs[0].unit == PageUnit::leaves);
    CHECK(extent.pagination.runs[0].numbering == Numbering::none);
    CHECK(extent.pages() == 6 + 199);
    CHECK(extent.pagination.total().low == 199);
  }
}

TEST_CASE("each word for plates counts leaves, unless they are pages of plates") {
  for (std::string const word : {"leaves of plates", "plates", "leaves of pl.", "planches", "pls.", "pl.",
                                 "Kupfertafeln", "Tafeln", "Taf.", "tavole", "tav.", "c. di tav.", "láminas", "lám."}) {
    CAPTURE(word);
    auto const extent = read("120 p., 5 " + word);
    CHECK(extent.pages() == 120);
    CHECK(extent.leaves_of_plates() == 5);
    CHECK_FALSE(extent.plates[0].folded);
    for (std::string const kind : {"folded", "folding"})
      CHECK(read("120 p., 5 " + kind + " " + word).plates[0].folded == 5);
    for (std::string const kind : {"engraved", "unnumbered", "numbered", "double"})
      CHECK_FALSE(read("120 p., 5 " + kind + " " + word).plates[0].folded);
  }
  for (std::string const word : {"pages of plates", "p. of plates", "p. di tav."}) // both sides are counted
    CHECK_MESSAGE(read("120 p., 5 " + word).leaves_of_plates() == 3, word);
  for (std::string const word : {"leaf of plates", "plate"})
    CHECK_MESSAGE(read("120 p., 1 " + word).leaves_of_plates() == 1, word);
  CHECK(read("120 p., 1 page of plates").leaves_of_plates() == 1);
}

TEST_CASE("each word for pages without numbers says so, and each for numbers does not") {
  for (std::string const words :
       {"unnumbered",   "unnumb.",      "unnum.",       "unn.",          "unpaged",        "unpaginated", "unfoliated",
        "unsigned",     "not numbered", "non chiffrés", "non chiffrées", "non ch.",        "n. ch.",      "n.ch.",
        "non numerate", "non num.",     "n. num.",      "n. n.",         "n.n.",           "nn.",         "s. num.",
        "sin numerar",  "sin num.",     "s. n.",        "s.n.",          "nicht gezählte", "nicht gez.",  "ungezählte",
        "ungez.",       "unbezifferte", "blank"}) {
    CAPTURE(words);
    auto const extent = read("4 " + words + " ff., 52 pp.");
    CHECK(extent.pages() == 8 + 52);
    CHECK(extent.pagination.runs[0].numbering == Numbering::none);
  }
  for (std::string const words : {"numbered", "numb.", "num.", "numerate", "chiffrés", "chiffrées", "ch.", "gezählte",
                                  "gez.", "folded", "double"}) {
    CAPTURE(words);
    auto const extent = read("4 " + words + " ff., 52 pp.");
    CHECK(extent.pages() == 8 + 52);
    CHECK(extent.pagination.runs[0].numbering == Numbering::printed);
  }
}

TEST_CASE("each word for volumes and for sheets counts them") {
  for (std::string const word :
       {"volumes", "volume", "vols.", "vol.",  "vols", "vol",   "v.",        "v",         "tomes",
        "tome",    "tomos",  "tomo",  "tomi",  "t.",   "Bände", "Bde.",      "Bd.",       "Teile",
        "Tle.",    "delen",  "dl.",   "parts", "pts.", "pt.",   "portfolio", "portfolios"}) {
    CAPTURE(word);
    CHECK(read("3 " + word).volumes == 3);
    CHECK_FALSE(read("3 " + word).sheets);
  }
  for (std::string const word :
       {"folded sheets", "folded sheet", "sheets", "sheet", "broadsides", "broadside", "broadsheet"}) {
    CAPTURE(word);
    CHECK(read("3 " + word).sheets == 3);
    CHECK_FALSE(read("3 " + word).volumes);
  }
}

TEST_CASE("each word for a volume stands before its pages, with a number of either kind") {
  for (std::string const word : {"volume", "vol.", "v.", "tome", "tomo", "tom.", "t.", "Bd.", "Band", "Teil", "Tl.",
                                 "deel", "dl.", "part", "pt."})
    for (std::string const number : {"2", "II"}) {
      CAPTURE(word + " " + number);
      auto const extent = read("2 v. (v. 1: 120 p.; " + word + " " + number + ": 60 p.)");
      CHECK(extent.pages() == 180);
      CHECK(extent.pagination.parts() == 2);
    }
}

TEST_CASE(
    "each word before a correction gives the right number") { // DCRMR 6.21.423 has i.e.; the others: common practice
  for (std::string const words : {"=", "i.e.", "i. e.", "that is", "recte", "rectius", "i.e.,", "recte,"})
    CHECK_MESSAGE(read("1-21 [" + words + " 17] p.").pages() == 17, words);
  for (std::string const words : {"sic, for", "sic for", "sic, for,"})
    CHECK_MESSAGE(read("1-21 [" + words + " 17] p.").pages() == 17, words);
}
