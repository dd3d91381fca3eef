// SPDX-License-Identifier: MIT
// Plates that the pages count: `84 p. incl. 2 plates`. A plate is a leaf that was printed apart and put in, so the
// gatherings have fewer pages than the statement: one or two fewer for each plate, or none if the "plate" is a page of
// the text. The words are common practice (`incl.` is that of old catalogue cards), no source; the sums are arithmetic.
#include <bifolium/book.hpp>
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/write_extent.hpp>
#include <bifolium/record/write_pagination.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {
struct PlatesIn {
  char const* text;
  std::int64_t low, stated, plates;
};
} // namespace

TEST_CASE("pages that include plates have a lower bound") {
  for (auto const& [text, low, stated, plates] : {
           PlatesIn{"84 p. incl. 2 plates", 80, 84, 2},
           {"84 p., incl. 2 plates", 80, 84, 2},
           {"84 pages including 2 plates", 80, 84, 2},
           {"84 p. (incl. 2 plates)", 80, 84, 2},
           {"84 p. (including 2 leaves of plates)", 80, 84, 2},
           {"[8], 76 p., inclusive of 2 plates", 80, 84, 2},
           {"84 p. incl. [2] leaves of plates", 80, 84, 2},
           {"84 p. incl. 2 pages of plates", 82, 84, 1},
           {"84 p. incl. approximately 2 plates", 80, 84, 2},
           {"84 p. incl. 2 folded plates", 80, 84, 2},
           {"84 p. incl. front.", 82, 84, 1},
           {"84 p. incl. front. (port.), 2 pl.", 78, 84, 3},
           {"84 p. incl. folding plate", 82, 84, 1},
           {"84 p. incl. front., illus., 2 pl.", 78, 84, 3},
           {"84 p. (incl. front. and 2 plates), [2] leaves of plates", 78, 84, 5},
           {"84 p. y compris 2 planches", 80, 84, 2},
           {"84 p., dont 2 f. de pl.", 80, 84, 2},
           {"84 p., 2 planches comprises dans la pagination", 80, 84, 2},
           {"84 S. inbegriffen 2 Tafeln", 80, 84, 2},
           {"84 S., einschl. 2 Kupfertafeln", 80, 84, 2},
           {"84 S., einschließlich 2 Taf.", 80, 84, 2},
           {"84 S., inkl. 2 Taf.", 80, 84, 2},
           {"84 S., davon 2 Taf.", 80, 84, 2},
           {"84 S., 2 Tafeln mitgezählt", 80, 84, 2},
           {"84 p., comprese 2 tavole", 80, 84, 2},
           {"84 p. con 2 tavole comprese nella paginazione", 80, 84, 2},
           {"84 p., inclusas 2 láminas", 80, 84, 2},
           {"84 p., 2 láminas incluidas en la paginación", 80, 84, 2},
           {"84 p., 2 plates included in the pagination", 80, 84, 2},
           {"84 p., 2 leaves of plates (included in the paging)", 80, 84, 2},
           {"42 leaves, including 2 leaves of plates", 80, 84, 2},
           {"4 p. l., 76 p. incl. 2 plates", 72, 84, 2}, // the leaves before may be counted again, too
       }) {
    INFO(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    auto const total = read->pagination.total();
    CHECK(total.low == low);
    CHECK(total.stated == stated);
    CHECK(total.high == stated);
    CHECK(read->leaves_of_plates() == plates);
    CHECK(read->warnings().empty());
    // written, it reads back
    auto const line = extent_line(*read);
    INFO(line);
    auto const again = read_extent(line);
    REQUIRE(again);
    CHECK(again->pagination.total() == total);
    CHECK(again->leaves_of_plates() == plates);
    auto const statement = write_pagination(read->pagination);
    INFO(statement);
    auto const pages = read_pagination(statement);
    REQUIRE(pages);
    CHECK(*pages == read->pagination);
  }
}

TEST_CASE("plates of which it is said that the pages do not count them are apart") {
  for (auto text : {"84 p., excluding 2 plates", "84 p., not including 2 plates", "84 p., 2 plates not included",
                    "84 p., 2 planches non comprises", "84 S., 2 Tafeln nicht mitgezählt", "84 p. with 2 plates",
                    "84 S. mit 2 Tafeln", "84 p. avec 2 planches", "84 p. et 2 planches", "84 S. und 2 Tafeln"}) {
    INFO(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    CHECK(read->pagination.total().is_exact());
    CHECK(read->pages() == 84);
    CHECK(read->leaves_of_plates() == 2);
    CHECK(read->unread.empty());
  }
}

TEST_CASE("of plates whose number is not stated, any of the pages can be one") {
  for (auto text : {"84 p. incl. plates", "84 p. (including plates)", "84 p., y compris les planches"}) {
    INFO(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    if (std::string_view{text}.find("les") != std::string_view::npos) {
      CHECK(read->unread.size() == 1); // no words for plates come next: they are left unread
      continue;
    }
    CHECK(read->pagination.total() == Range<std::int64_t>{0, 84, 84});
    CHECK(read_extent(extent_line(*read)) == *read);
  }
  for (auto text : {"84 p. incl. 2 maps", "84 p., incl. illus.", "84 p. incl. covers"}) { // these are no plates
    INFO(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    CHECK(read->pagination.total().is_exact());
    CHECK(read->unread.size() == 1);
  }
}

TEST_CASE(
    "folded leaves may be of the gatherings, or be put in as plates are") { // DCRMR 6.21.4225 counts them; our range
  for (auto text : {"[16], 144 p., [2] folded leaves", "[16], 144 p., [2] gef. Bl.", "[16], 144 p., [2] folding leaves",
                    "[2] folded leaves, [16], 144 p."}) {
    INFO(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    CHECK(read->pagination.total() == Range<std::int64_t>{160, 164, 164});
    auto const line = extent_line(*read);
    INFO(line);
    CHECK(read_extent(line) == *read);
    CHECK(read_pagination(write_pagination(read->pagination)) == read->pagination);
  }
  CHECK((*compare_extent(*read_formula("A-K⁸"), *read_extent("[16], 144 p., [2] folded leaves"))).verdict ==
        ExtentAgrees::agrees);
  auto const several = read_extent("12 folded leaves, [2] folded leaves, [1] folded leaf, 8 leaves");
  REQUIRE(several);
  CHECK(several->pagination.total() == Range<std::int64_t>{16, 46, 46});
  CHECK((*read_extent(extent_line(*several))).pagination.total() == several->pagination.total());
  auto const incomplete = read_pagination("ff. 1-8, 9-20+ folded"); // found by a fuzzer
  REQUIRE(incomplete);
  CHECK(incomplete->incomplete);
  CHECK(read_pagination(write_pagination(*incomplete)) == *incomplete);
  CHECK((*read_extent("[16], 144 p., [2] folded leaves of plates")).leaves_of_plates() == 2);
}

TEST_CASE("lettered pages that are starred read back") { // found by a fuzzer
  auto const read = read_pagination("pp. 1-6 *p-p");
  REQUIRE(read);
  CHECK(read_pagination(write_pagination(*read)) == *read);
}

TEST_CASE("letters that come twice are written twice in an extent") { // found by a fuzzer
  auto const read = read_pagination("pp. 1 b-b b-b");
  REQUIRE(read);
  CHECK(read->pages() == 3);
  CHECK((*read_extent(extent_line(*read))).pages() == 3);
}

TEST_CASE("a formula agrees with all numbers of pages that plates among them leave open") {
  struct Agreed {
    char const* formula;
    bool agrees;
  };
  // A-E⁸ has 80 pages
  for (auto const& [formula, agrees] :
       {Agreed{"A-E⁸", true}, {"A-E⁸ F²", true}, {"A-D⁸ E⁶ F¹", false}, {"A-D⁸ E⁶", false}, {"A-E⁸ F⁶", false}}) {
    INFO(formula);
    auto const compared = compare_extent(*read_formula(formula), *read_extent("84 p. incl. 2 plates"));
    REQUIRE(compared);
    CHECK((compared->verdict == ExtentAgrees::agrees) == agrees);
    auto const book = read_description({.formula = formula, .pagination = "84 p. incl. 2 plates"});
    auto const audit = examine(book);
    bool contradicts = false;
    for (auto const& finding : audit.findings) contradicts = contradicts || finding.id == FindingId::pages_contradict;
    CHECK(contradicts != agrees);
    if (agrees) CHECK(audit.repairs.empty());
  }
  auto const audit = examine(read_description({.formula = "A-D⁸ E⁶", .pagination = "84 p. incl. 2 plates"}));
  REQUIRE(!audit.findings.empty());
  CHECK(audit.findings[0].says == "the formula has 38 leaves (76 pages); the pagination has 84 pages, of which up to 4 "
                                  "can be plates, at least 4 too many");
}
