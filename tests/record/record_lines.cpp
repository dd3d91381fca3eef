// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>
#include <bifolium/record.hpp>
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/record_lines.hpp>

#include "check.hpp"

using namespace bifolium;

TEST_CASE("The extent of a record is made of the statement of pages") {
  struct Stated {
    char const *pages, *extent;
  };
  for (auto const& [pages, extent] : {
           // extents as the sources give them; the statement written out from them is ours
           Stated{"ff. [14] 1-192 [4]", "[14], 192, [4] leaves"},                   // Goucher College, Bede of 1565
           Stated{"ff. [2] 1-152", "[2], 152 leaves"},                              // EEBO-TCP A01466 (CC0)
           Stated{"pp. [34] 1-747 [i.e. 759] [6]", "[34], 747 [i.e. 759], [6] p."}, // EEBO-TCP A01200 (CC0)
           Stated{"pp. [24] 1-46 [106] ²1-176", "[24], 46, [106], 176 p."}, // EEBO-TCP A00602 (CC0), its first part
           Stated{"pp. [2] i-viii 1-268", "[2], viii, 268 p."},             // Smithsonian Libraries (CC0)
           // statements as the sources give them; the extent follows DCRM(B) 5B
           Stated{"pp. [4] 1-32 35-154[=152] [16]", "[4], 154 [i.e. 152], [16] p."}, // Rare Book School
           Stated{"pp. [iv], [718], [8]", "[4], [718], [8] p."},                     // Pryor-Johnson, Macklin Bible V
           // constructed
           Stated{"pp. [i-iv] v-viii, [1] 2-205 [206-208]", "viii, 205, [3] p."},
           Stated{"pp. 1 [2] 3-10 [11] [2 unnumbered]", "10, [3] p."},
           Stated{"pp. 49-191", "49-191 p."},
           Stated{"ff. [1]", "[1] leaf"},
           Stated{"pp. [unpaged]", ""},
       }) {
    INFO(pages);
    auto const read = read_pagination(pages);
    REQUIRE(read);
    auto const line = extent_line(*read);
    CHECK(line == extent);
    if (line.empty()) continue;
    auto const again = read_extent(line); // a law: as many pages
    REQUIRE(again);
    CHECK(again->pages() == read->pages());
    CHECK(again->pagination.by_leaf() == read->by_leaf());
  }
}

TEST_CASE("Lines to paste into a record") {
  // Rare Book School, sample description; the lines are constructed from it
  auto const book = read_formula("2°: [A]2 B-Y4 [$2 signed]; 86 leaves, pp. [4] 1-32 35-154[=152] [16]");
  REQUIRE(book);
  CHECK(signatures_note(*book) == "Signatures: [A]² B-Y⁴.");
  CHECK(signatures_note(*book, Notation::caret) == "Signatures: [A]^2 B-Y^4.");
  CHECK(leaves_line(*book) == "86 leaves");
  CHECK(collation_line(*book) == "2°: [A]² B-Y⁴ [$2 signed]; 86 leaves, pp. [4] 1-32 35-154 [=152] [16]");
  CHECK(leaves_line(*read_formula("π1")) == "1 leaf");
  // DCRM(B) 5D, as bibliographers write it: size and format after the extent
  CHECK(physical_description(extent_line(*pagination_of(*book)), "32 cm (fol.)") ==
        "[4], 154 [i.e. 152], [16] p. ; 32 cm (fol.)");
  CHECK(physical_description("", "20 cm") == "20 cm");
}

TEST_CASE("A collation line reads as a formula again") { // a law
  for (auto text : {"2°: [A]2 B-Y4 [$2 signed]; 86 leaves, pp. [4] 1-32 35-154[=152] [16]",
                    "Royal 4°: π² A-K⁸ L⁴(−L4) [$4(-A1)]", "a-z⁸ [et]⁸", "8°: A-C⁸ pp. [48]"}) {
    INFO(text);
    auto const book = read_formula(text);
    REQUIRE(book);
    auto const line = collation_line(*book);
    INFO(line);
    auto const again = read_formula(line);
    REQUIRE(again);
    CHECK(again->runs() == book->runs());
    CHECK(again->changes() == book->changes());
    CHECK(again->warnings().size() <= book->warnings().size());
    CHECK(collation_line(*again) == line);
  }
}
