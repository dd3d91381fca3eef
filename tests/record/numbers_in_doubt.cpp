// SPDX-License-Identifier: MIT
// Numbers of pages that are not exact, not complete or not printed, and a volume of a set that alone is described. The pages
// are known from how each statement is made; common practice, no source.
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/write_extent.hpp>
#include <bifolium/record/write_pagination.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {
Extent doubtful_extent(std::string const& text) {
  auto const read = read_extent(text);
  REQUIRE_MESSAGE(read, text);
  return *read;
}
/// What is written has the same pages and says the same of them.
void check_doubtful_written(Extent const& read) {
  auto const again = doubtful_extent(extent_line(read));
  CHECK(again.pages() == read.pages());
  CHECK(again.pagination.incomplete == read.pagination.incomplete);
  CHECK(again.pagination.approximate == read.pagination.approximate);
  CHECK(again.volumes == read.volumes);
  auto const pagination = read_pagination(write_pagination(read.pagination));
  REQUIRE(pagination);
  CHECK(pagination->runs == read.pagination.runs);
}
struct CountedUnit {
  std::string word;
  int pages;
};
CountedUnit const counted_units[]{{"p.", 1}, {"pp.", 1}, {"leaves", 2}, {"S.", 1}, {"ff.", 2}};
} // namespace

TEST_CASE("a number in brackets that is not exact, with its words on either side of it") {
  for (std::string const before : {"", "[8], ", "xii, "}) {
    int const first = before.empty() ? 0 : before == "xii, " ? 12 : 8;
    for (std::string const number :
         {"[ca. 240]", "[c. 240]", "[circa 240]", "[approximately 240]", "[about 240]", "[240?]", "[240 ?]",
          "[240 ca.]", "[240 approx.]", "[ ca. 240 ]", "[etwa 240]", "[environ 240]"})
      for (auto const& [unit, pages] : counted_units) {
        auto const text = before + number + ' ' + unit;
        INFO(text);
        auto const read = doubtful_extent(text);
        CHECK(read.pages() == (240 + first) * pages);
        CHECK(read.pagination.approximate);
        CHECK(read.unread.empty());
        REQUIRE(read.warnings().size() == 1);
        CHECK(read.warnings()[0].problem == Problem::pages_approximate);
        check_doubtful_written(read);
      }
  }
  for (std::string const text : {"[ca. 240 p.]", "[240 p.?]", "8 leaves, [ca. 224] p."}) {
    INFO(text);
    CHECK(doubtful_extent(text).pages() == 240);
    CHECK(doubtful_extent(text).pagination.approximate);
  }
  for (std::string const plates : {"[ca. 4] leaves of plates", "[4?] leaves of plates", "[about 4] plates"}) {
    auto const read = doubtful_extent("240 p., " + plates);
    INFO(plates);
    CHECK(read.leaves_of_plates() == 4);
    REQUIRE(read.plates.size() == 1);
    CHECK(read.plates[0].approximate);
    CHECK_FALSE(read.pagination.approximate);
    CHECK(read.unread.empty());
  }
  for (std::string const text : {"240 p. [ca. 1650]", "240 p., [ca. 1650]", "[240 c.]", "240 p. (about 1650)"}) {
    INFO(text); // a date after the unit, and leaves in the Italian way
    CHECK_FALSE(doubtful_extent(text).pagination.approximate);
  }
}

TEST_CASE("a plus after the last number or its unit is of a copy that lacks its end") {
  for (std::string const before : {"", "[8], ", "xii, "}) {
    int const first = before.empty() ? 0 : before == "xii, " ? 12 : 8;
    for (std::string const plus : {"+ ", " + ", " [+] ", "[+] ", " (+) ", " +"})
      for (auto const& [unit, pages] : counted_units) {
        auto text = before + "240" + plus;
        text += unit;
        INFO(text);
        auto const read = doubtful_extent(text);
        CHECK(read.pages() == (240 + first) * pages);
        CHECK(read.pagination.incomplete);
        CHECK(read.pagination.total().high == Pagination::no_limit);
        CHECK(read.unread.empty());
        check_doubtful_written(read);
      }
    for (std::string const plus : {"+", " +", " [+]", " (+)", "[+]"})
      for (auto const& [unit, pages] : counted_units) {
        auto const text = before + "240 " + unit + plus;
        INFO(text);
        auto const read = doubtful_extent(text);
        CHECK(read.pages() == (240 + first) * pages);
        CHECK(read.pagination.incomplete);
        CHECK(read.unread.empty());
      }
  }
  for (std::string const text :
       {"viii + 240 p.", "[8] + 240 p.", "240 p. + 1 map", "240 p. + 4 plates", "8 p. + 240 p."}) {
    INFO(text);
    CHECK_FALSE(doubtful_extent(text).pagination.incomplete);
  }
}

TEST_CASE("lettered pages of which the first, the last or none bears its letter") {
  for (char const end : {'B', 'E', 'H', 'K', 'T'})
    for (bool const small : {false, true}) {
      auto const letter = [&](char c) { return std::string(1, small ? static_cast<char>(c - 'A' + 'a') : c); };
      auto const a = letter('A'), z = letter(end);
      int pages = end - 'A' + 1;
      if (end > 'J') --pages; // the alphabet of 23 letters has no j
      for (auto const& run :
           {a + '-' + z, '[' + a + "]-" + z, a + "-[" + z + ']', '[' + a + '-' + z + ']', '[' + a + "]-[" + z + ']'})
        for (std::string const rest : {", 96 p.", ", 1-96 p.", ", [96] p."}) {
          auto const text = run + rest;
          INFO(text);
          auto const read = doubtful_extent(text);
          CHECK(read.pages() == pages + 96);
          CHECK(read.unread.empty());
          auto const& runs = read.pagination.runs;
          std::int64_t lettered = 0, printed = 0;
          for (auto const& one : runs) {
            if (one.numerals != Numerals::letters || one.numbering == Numbering::none) continue;
            lettered += one.count;
            if (one.numbering == Numbering::printed) printed += one.count;
            CHECK(one.last - one.first + 1 == one.count);
          }
          CHECK(lettered == pages);
          int const open = run[0] == '[' && run[2] != ']' ? pages : (run[0] == '[') + (run.back() == ']');
          CHECK(printed == pages - open);
          check_doubtful_written(read);
          auto const statement = read_pagination("pp. " + run + " 1-96");
          REQUIRE(statement);
          CHECK(statement->pages() == pages + 96);
        }
    }
  CHECK(doubtful_extent("[i]-viii, 96 p.").pages() == 104); // a numeral
  CHECK(doubtful_extent("240 p. [A-K]").pages() == 240);    // gatherings
  for (std::string const text : {"[A]-A, 96 p.", "[H]-A, 96 p.", "[A-H, 96 p.", "[A]-h, 96 p.", "[A]H, 96 p."}) {
    INFO(text);
    CHECK_FALSE(read_extent(text));
  }
}

TEST_CASE("one volume of a set, which alone is described") {
  struct Pages {
    std::string text;
    int pages;
  };
  Pages const counted_extents[]{
      {"[8], 240 p.", 248}, {"xii, 320 p.", 332}, {"240 p.", 240}, {"[4] Bl., 240 S.", 248}, {"120 leaves", 240}};
  for (std::string const name :
       {"vol. 1 only", "Vol. I only", "v. 1 only", "vol. 2 only", "volume 1 only", "vol. 1 alone", "only vol. 1",
        "nur Bd. 1", "Bd. 1 allein", "Bd. II allein", "tome I seul", "t. 1 seul", "seulement t. 1", "tomo I solo",
        "solo tomo I", "part 1 only", "pt. 2 only"})
    for (auto const& [pages, count] : counted_extents)
      for (std::string const sign : {", ", ": ", ". ", " "}) {
        auto const text = name + sign + pages;
        INFO(text);
        auto const read = doubtful_extent(text);
        CHECK(read.pages() == count);
        CHECK(read.volumes == 1);
        REQUIRE(read.unread.size() == 1);
        CHECK(read.unread[0].of(text) == name);
        check_doubtful_written(read);
      }
  CHECK(doubtful_extent("v. 1 only (240 p.)").pages() == 240);
  // the name of a volume, with a comma after it
  for (std::string const name : {"vol. 1", "Vol. I", "v. 1", "t. 1", "Bd. 1", "tome I", "part 1"})
    for (auto const& [pages, count] : counted_extents) {
      auto const text = name + ", " + pages;
      INFO(text);
      auto const read = doubtful_extent(text);
      CHECK(read.pages() == count);
      CHECK(read.volumes == 1);
      CHECK(read.unread.empty());
    }
  CHECK(doubtful_extent("v. 320, [3] p.").pages() == 328); // v is a numeral
  CHECK(doubtful_extent("v, 320, [3] p.").pages() == 328);
}
