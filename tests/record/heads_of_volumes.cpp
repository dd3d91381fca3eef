// SPDX-License-Identifier: MIT
// A number of volumes before the pages changes no page. Invented books; common practice, no source.
#include <bifolium/book/examine.hpp>
#include <bifolium/book/read_description.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/read_physical_description.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {
std::string const heads[]{"2 vols.",
                          "2 vol.",
                          "2 v.",
                          "2 v. in 1",
                          "2 vols. in 1",
                          "2 pts. in 1 vol.",
                          "2 parts in 1 v.",
                          "2 parts",
                          "2 Tle. in 1 Bd.",
                          "2 Teile in 1 Band",
                          "2 Bde.",
                          "2 Bände in 1",
                          "2 tomes en 1 v.",
                          "2 t. en 1 vol.",
                          "2 tomi in 1 vol.",
                          "2 dl. in 1 bd.",
                          "2 vols. bound in 1",
                          "2 vols. bound in one",
                          "2 parties en 1 vol.",
                          "2 partes en 1 v.",
                          "2 parti in 1 vol."};
std::string const separators[]{": ", " : ", ", ", "; ", " ", ". ", ":\t"};
std::string const extents[]{"viii, 240; iv, 300 pp.",   "[8], 240; 96, [4] pp.",
                            "[8], 240; 96, [4] p.",     "240; 96 p.",
                            "4 Bl., 240 S.; 96 S.",     "VIII, 240; 96 S.",
                            "[4], 80, [2]; 77 leaves",  "[8], 240, 96, [4] p.",
                            "1-240; 1-96 p.",           "xii, 320 p., [2] leaves of plates; 280 p.",
                            "[4] ff., 240 pp.; 96 pp.", "pp. 320, 280"};
} // namespace

TEST_CASE("a number of volumes before the pages, with every sign between, changes no page") {
  for (auto const& pages : extents) {
    auto const alone = read_extent(pages);
    REQUIRE_MESSAGE(alone, pages);
    for (auto const& head : heads)
      for (auto const& separator : separators) {
        auto const text = head + (head.ends_with('.') && separator == ". " ? " " : separator) + pages;
        INFO(text);
        auto const read = read_extent(text);
        REQUIRE(read);
        CHECK(read->pages() == alone->pages());
        CHECK(read->leaves_of_plates() == alone->leaves_of_plates());
        CHECK(read->volumes == 2);
        CHECK(read->unread.empty());
        auto const line = read_physical_description(text + " : ill. ; 20 cm");
        REQUIRE(line);
        REQUIRE(line->extent);
        CHECK(line->extent->pages() == alone->pages());
        CHECK(line->details.of(text + " : ill. ; 20 cm") == "ill.");
      }
  }
}

TEST_CASE("a description with another number of leaves is contradicted, with every head of volumes") {
  for (auto const& head : heads)
    for (auto const& separator : separators) {
      auto const pages = head + (head.ends_with('.') && separator == ". " ? " " : separator) + "[8], 240; 96, [4] pp.";
      INFO(pages);
      FieldTexts texts;
      texts.formula = "8°: A-K⁸", texts.pagination = pages;
      CHECK(examine(read_description(texts)).contradicts());
      texts.formula = "8°: π⁴ A-P⁸; A-F⁸ G²"; // 124 leaves and 50
      CHECK_FALSE(examine(read_description(texts)).contradicts());
    }
}

TEST_CASE("after a colon that no pages follow, illustrations are details, and pages that cannot be read are told") {
  for (std::string const what : {"ill.", "3 maps", "12 leaves of plates", "ill., 2 maps", "20 plates"})
    for (auto const& head : heads) {
      auto const text = head + " : " + what + " ; 20 cm";
      INFO(text);
      auto const line = read_physical_description(text);
      REQUIRE(line);
      CHECK(line->details.of(text) == what);
      CHECK(line->extent->pages() == 0);
      FieldTexts texts;
      texts.pagination = text;
      CHECK(read_description(texts).unread.empty());
    }
  for (std::string const text :
       {"2 vols.: see note; iv, 300 pp.", "2 vols. : front., 240 p.", "2 v. : about the same, 96 p."}) {
    INFO(text);
    FieldTexts texts;
    texts.formula = "8°: A-K⁸", texts.pagination = text;
    auto const book = read_description(texts);
    CHECK_FALSE(book.pagination);
    REQUIRE(book.unread.size() == 1);
    CHECK(book.unread[0].field == bifolium::Field::pagination);
  }
}
