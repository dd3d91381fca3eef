// SPDX-License-Identifier: MIT
// Numbers of pages as old books have them: sequences that go on in other numerals, as in the examples of Bowers, Principles
// of Bibliographical Description; numbers repeated with a mark; numerals that subtract two; corrections in other languages;
// the unit before the numbers of each volume. Where nothing else is said: common practice, no source.
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/write_extent.hpp>
#include <bifolium/record/write_pagination.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("a number in brackets goes on from Roman to arabic numerals") {
  for (int roman = 5; roman <= 40; ++roman) {
    std::string const i{small_roman(roman).view()};
    auto const n = [&](int more) { return std::to_string(roman + more); };
    for (auto const& text :
         {"pp. [i-iii] iv-" + i + " [" + n(1) + "] " + n(2) + "-320", "pp. i-" + i + " [" + n(1) + "] " + n(2) + "-320",
          "pp. i-" + i + ", [" + n(1) + "], " + n(2) + "-320", i + ", [" + n(1) + "], " + n(2) + "-320 p.",
          n(0) + ", [" + n(1) + "], " + n(2) + "-320 p.", "1-" + n(0) + ", [" + n(1) + "], " + n(2) + "-320 p."}) {
      CAPTURE(text);
      auto const read = read_extent(text);
      REQUIRE(read);
      CHECK(read->pages() == 320);
      CHECK(read->warnings().empty());
      CHECK((*read_pagination(write_pagination(read->pagination))).pages() == 320);
      CHECK((*read_extent(extent_line(*read))).pages() == 320);
    }
  }
  struct Other {
    std::string text;
    int pages;
  };
  for (auto const& [text, pages] :
       {Other{"xv, [2], 18-328 p.", 328 - 17 + 15 + 2}, // DCRMR 6.21.424.1: 328 pages
        Other{"xii, [8], 320 p.", 340}, Other{"pp. i-xii [14] 1-320", 346}, Other{"xii, [1], 2-320 p.", 332},
        Other{"pp. i-xi [12] 1-320", 343}, Other{"12, [13] p.", 25}}) {
    CAPTURE(text);
    CHECK((*read_extent(text)).pages() == pages);
  }
  auto const last = read_pagination("pp. i-xii [13]"); // leaves without numbers have an even number of pages
  CHECK(last->pages() == 13);
  CHECK(last->warnings().size() == 1);
}

TEST_CASE("numbers repeated with a mark") {
  for (std::string const mark : {"*", "a", "b", "bis", "ter"})
    for (std::string const& last_mark : {mark, std::string{}}) {
      if (last_mark.empty() && mark != "*") continue;
      auto const again = "321" + mark + "-328" + last_mark;
      for (auto const& [text, pages] : {std::pair{"320, " + again + " p.", 328},
                                        {"1-328, " + again + ", 329-400 p.", 408},
                                        {"pp. 1-328 " + again + " 329-400", 408},
                                        {"320, " + again + ", 329-400 p.", 400}}) {
        CAPTURE(text);
        auto const read = read_extent(text);
        REQUIRE(read);
        CHECK(read->pages() == pages);
        CHECK(read->unread.empty());
        CHECK((*read_pagination(write_pagination(read->pagination))).pages() == pages);
      }
    }
  CHECK((*read_extent("168, ²161-²168 p.")).pages() == 176);
  CHECK((*read_pagination("pp. 1-168 ²161-²168 169-200")).pages() == 208);
  CHECK_FALSE(read_pagination("pp. 1-168 ²161-³168 169-200"));
  CHECK((*read_extent("320, 320*, 321-400 p.")).pages() == 401); // one page
  CHECK(read_extent("120 b. 20 s."));                            // a unit
}

TEST_CASE("numerals of old printers, and words of cataloguers") {
  struct Page {
    std::string text;
    int pages;
  };
  for (auto const& [text, pages] : {Page{"XIIX, 200 p.", 218},
                                    Page{"xiix, 200 p.", 218},
                                    Page{"XXC, 200 p.", 280},
                                    Page{"IC, 200 p.", 299},
                                    Page{"XXIIX p.", 28},
                                    Page{"pp. i-xiix 1-200", 218},
                                    Page{"[XIIX], 200 p.", 218},
                                    Page{"LXXIIX, [2], 200 p.", 280},
                                    Page{"205 [vere 207] p.", 207},
                                    Page{"205 [d.i. 207] p.", 207},
                                    Page{"205 [d. h. 207] S.", 207},
                                    Page{"205 [ma 207] p.", 207},
                                    Page{"205 [cioè 207] p.", 207},
                                    Page{"205 [misprint for 207] p.", 207},
                                    Page{"205 [really 207] p.", 207},
                                    Page{"[8] lvs", 16},
                                    Page{"104 foliated leaves", 208},
                                    Page{"[1 bl., 2] p.", 3},
                                    Page{"[2, 1 blank] p.", 3},
                                    Page{"205, [1 blank, 2] p.", 208},
                                    Page{"[1, blank] p.", 1},
                                    Page{"8 unn. leaves, pp. 1-205, 3 unn. pages", 224}}) {
    CAPTURE(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    CHECK(read->pages() == pages);
    CHECK(read->unread.empty());
  }
  // what looks like them
  for (std::string const text :
       {"320 p., il.", "320 p. il.", "320 p. : il. ; 20 cm", "320 p., ill.", "320 p., [1 map]"}) {
    CAPTURE(text);
    CHECK((*read_extent(text)).pages() == 320);
  }
  CHECK_FALSE(read_extent("[1, 2] p.")); // one and two pages, or pages 1 and 2
  for (std::string const text :
       {"205 p., p. 24 misnumbered", "205 p., p. 24", "205 p., pp. 33-40 misnumbered", "205 p., pp. 33-40"}) {
    CAPTURE(text);
    CHECK((*read_extent(text)).pages() == 205); // remarks, which are told
    CHECK((*read_extent(text)).unread.size() == 1);
  }
}

TEST_CASE("the unit stands before the numbers of each volume") {
  for (std::string const unit : {"pp. ", "p. ", "S. "})
    for (auto const& text :
         {"Vol. I: " + unit + "[12], 320; Vol. II: " + unit + "[8], 240",
          "Vol. I, " + unit + "xii, 320; vol. II, " + unit + "viii, 240",
          "Vol. 1: " + unit + "xii, 320; vol. 2: " + unit + "viii, 240", "2 vols., " + unit + "xii, 320; viii, 240",
          "2 vols: " + unit + "xii, 320; viii, 240", "T. 1: " + unit + "xii, 320. T. 2: " + unit + "viii, 240",
          "Bd. I: " + unit + "xii, 320; Bd. II: " + unit + "viii, 240", "2 v. (" + unit + "xii, 320; viii, 240)"}) {
      CAPTURE(text);
      auto const read = read_extent(text);
      REQUIRE(read);
      CHECK(read->volumes == 2);
      CHECK(read->pages() == 580);
      CHECK(read->pagination.parts() == 2);
      CHECK(read->unread.empty());
      CHECK(read->warnings().empty());
      CHECK((*read_extent(extent_line(*read))).pages() == 580);
    }
  for (std::string const text : {"I. 320 p. II. 240 p.", "Vol. I. 320 p. Vol. II. 240 p.", "I: 320 p. II: 240 p.",
                                 "2 vols. Vol. I: pp. 320. Vol. II: pp. 240"}) {
    CAPTURE(text);
    CHECK((*read_extent(text)).pages() == 560);
    CHECK((*read_extent(text)).volumes == 2);
  }
  CHECK((*read_extent("4 ff., pp. 205, 2 ff.")).pages() == 217);
  CHECK((*read_extent("Vol. I: ff. 4, pp. 1-320; Vol. II: pp. 240, 3 unn. leaves")).pages() == 8 + 320 + 240 + 6);
  CHECK((*read_extent("3 v. : ill. ; 20 cm")).pages() == 0);
}
