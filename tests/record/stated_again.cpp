// SPDX-License-Identifier: MIT
// An extent that counts the same pages twice, in two units: dealers write 120 leaves (240 p.). Common practice, no source;
// a leaf has two pages and a page two columns.
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/write_extent.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {
bool doubts(Pagination const& pagination, Problem problem) {
  for (auto const& doubt : pagination.warnings())
    if (doubt.problem == problem) return true;
  return false;
}
} // namespace

TEST_CASE("the same pages in parentheses, in another unit, are not added") {
  std::vector<std::string> const leaves{"leaves", "ff.", "Bl.", "cc.", "ll."}, pages{"p.", "pages", "S.", "pp."},
      columns{"columns", "cols.", "Sp."};
  for (int n : {4, 37, 120, 500})
    for (auto const& [open, close] : {std::pair{"(", ")"}, std::pair{"[", "]"}})
      for (auto const& of_pages : pages) {
        std::string const p = std::to_string(2 * n), before_last = std::to_string(2 * n - 1);
        std::vector<std::string> texts;
        for (auto const& of_leaves : leaves) {
          auto const l = std::to_string(n);
          texts.push_back(l + " " + of_leaves + " " + open + p + " " + of_pages + close);
          texts.push_back(p + " " + of_pages + " " + open + l + " " + of_leaves + close);
          texts.push_back("[8], " + std::to_string(2 * n - 8 > 0 ? 2 * n - 8 : 2 * n) + " " + of_pages + " " + open +
                          std::to_string(2 * n - 8 > 0 ? n : n + 4) + " " + of_leaves + close);
        }
        for (auto const& of_columns : columns)
          texts.push_back(std::to_string(4 * n) + " " + of_columns + " " + open + p + " " + of_pages + close);
        for (auto const& text : texts) {
          CAPTURE(text);
          auto const read = read_extent(text);
          REQUIRE(read);
          CHECK((read->pages() == 2 * n || (n == 4 && read->pages() == 16)));
          CHECK(read->warnings().empty());
          REQUIRE(read->unread.size() == 1); // said, and not lost
          CHECK(read->unread[0].of(text).starts_with(open));
        }
        // the blank verso of the last page is not always counted
        auto const verso = std::to_string(n) + " leaves (" + before_last + " " + of_pages + ")";
        CHECK((*read_extent(verso)).pages() == 2 * n);
      }
  for (std::string const text : {"ff. 1-120 (240 p.)", "pp. 1-240 (120 leaves)", "pp. [8] 1-232 (120 ff.)"}) {
    CAPTURE(text);
    CHECK((*read_pagination(text)).pages() == 240);
  }
}

TEST_CASE("other pages in parentheses are added, and told where they may be the same") {
  struct Added {
    std::string text;
    int pages;
    bool doubt;
  };
  for (auto const& [text, pages, doubt] :
       {Added{"240 p. (4 ff.)", 248, false}, Added{"[8], 240 p. (4 leaves)", 256, false},
        Added{"240 p., (4 ff.), 20 p.", 268, false}, Added{"(4 ff.), 240 p.", 248, false},
        Added{"[2] leaves, 4 p.", 8, false}, Added{"240 p. (118 leaves)", 240, true},
        Added{"4 v. ([8], 240 p. (124 leaves))", 248, false}, Added{"120 leaves (250 p.)", 240, true},
        Added{"120 leaves, 240 p.", 480, true}, Added{"240 p., 120 leaves", 480, true},
        Added{"240 p., [120 leaves]", 480, true}, Added{"2 v. (240 p.; 120 leaves)", 480, false},
        Added{"240 p. (12 p.)", 252, false}}) {
    CAPTURE(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    CHECK(read->pages() == pages);
    CHECK(doubts(read->pagination, Problem::pages_stated_again) == doubt);
  }
}

TEST_CASE("the same pages in parentheses may be stated in several runs or units") {
  for (int leaves : {20, 37, 124, 500})
    for (int before : {2, 8, 16})
      for (std::string const unit : {"p.", "pp.", "S.", "pages"})
        for (std::string const of_leaves : {"leaves", "ff.", "Bl."}) {
          auto const whole = std::to_string(leaves) + ' ' + of_leaves;
          auto const runs = '[' + std::to_string(before) + "], " + std::to_string(2 * leaves - before) + ' ' + unit;
          for (std::string const rest : {"", ", [4] p.", " : ill."}) {
            auto const text = whole + " (" + runs + ")" + rest;
            CAPTURE(text);
            auto const read = read_extent(text);
            REQUIRE(read);
            CHECK(read->pages() == 2 * leaves + (rest == ", [4] p." ? 4 : 0));
            CHECK(read->warnings().empty());
            REQUIRE(!read->unread.empty());
            CHECK(read->unread[0].of(text) == '(' + runs + ')'); // said, and not lost
          }
          auto const turned = '[' + std::to_string(before) + "], " + std::to_string(2 * leaves - before) +
                              " p. ([1], " + std::to_string(leaves - 1) + ' ' + of_leaves + ")";
          CAPTURE(turned);
          CHECK((*read_extent(turned)).pages() == 2 * leaves);
          CHECK((*read_extent(turned)).warnings().empty());
          // another number of pages is told
          auto const other = whole + " ([8], " + std::to_string(2 * leaves) + ' ' + unit + ")";
          CAPTURE(other);
          CHECK((*read_extent(other)).pages() == 2 * leaves);
          CHECK(doubts((*read_extent(other)).pagination, Problem::pages_stated_again));
        }
  struct Units {
    std::string text;
    int pages;
    bool doubt;
  };
  for (auto const& [text, pages, doubt] :
       {Units{"960 columns (480 p., 240 leaves)", 480, false}, Units{"960 cols. (480 p., 200 leaves)", 480, true},
        Units{"240 leaves (480 p., 960 columns)", 480, false},
        Units{"2 v. (124 leaves ([8], 240 p.); 100 p.)", 348, false},
        Units{"2 v. (124 leaves ([8], 240 p.); 50 leaves ([2], 98 p.))", 348, false},
        Units{"240 p. (some, 4 leaves)", 240, false}}) {
    CAPTURE(text);
    auto const read = read_extent(text);
    REQUIRE(read);
    CHECK(read->pages() == pages);
    CHECK(doubts(read->pagination, Problem::pages_stated_again) == doubt);
  }
  auto const told = read_extent("124 leaves ([8], 250 p.)");
  REQUIRE(told);
  CHECK(told->warnings()[0].found_text() == "([8], 250 p.)");
  CHECK(told->warnings()[0].place->column == 12);
  CHECK(told->warnings()[0].limit == 248);
}
