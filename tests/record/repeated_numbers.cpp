// SPDX-License-Identifier: MIT
// Pages that repeat a number and are told apart by letters, 24a to 24d. Invented books; common practice, no source.
#include <bifolium/book/examine.hpp>
#include <bifolium/book/read_description.hpp>
#include <bifolium/record/read_pagination.hpp>
#include <bifolium/record/write_extent.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("the letters after a repeated number count its pages, in every form") {
  for (int const number : {8, 24, 96, 320})
    for (char last = 'b'; last <= 'm'; ++last) {
      auto const figures = std::to_string(number);
      auto const begin = figures + "a", end = std::string{last};
      for (auto const& pages : {begin + "-" + figures + end, begin + "-" + end, begin + "–" + figures + end,
                                "[" + begin + "-" + figures + end + "]", "[" + begin + "-" + end + "]"})
        for (auto const& before : {"1-" + figures, figures}) {
          auto const all = before + ", " + pages + ", " + std::to_string(number + 1) + "-400";
          auto const extent = read_extent(all + " p.");
          INFO(all);
          REQUIRE(extent);
          CHECK(extent->pages() == 400 + (last - 'a' + 1));
          CHECK(extent->warnings().empty());
          auto const statement = read_pagination("pp. 1" + all.substr(before == figures ? 0 : 1));
          if (before != figures) {
            REQUIRE(statement);
            CHECK(statement->pages() == extent->pages());
            CHECK(*read_pagination(write_pagination(*statement)) == *statement);
          }
          CHECK((*read_extent(extent_line(*extent))).pages() == extent->pages());
          CHECK(extent_line(*extent).find(", d,") == std::string::npos);
        }
    }
  CHECK(extent_line(*read_extent("1-24, 24a-24d, 25-60 p.")) == "24, 24a-24d, 25-60 p.");
  CHECK(write_pagination(*read_pagination("pp. 1-24 24a-d 25-60")) == "pp. 1-24 24a-24d 25-60");
  CHECK(extent_line(*read_extent("1-24, 24bis, 25-60 p.")) == "24, 24a, 25-60 p.");
}

TEST_CASE("a letter directly after a number is not a numeral") {
  for (std::string const letter : {"c", "d", "i", "x", "m", "cd"})
    for (auto const& text : {"1-24, 24a-25" + letter + ", 26-60 p.", "1-24, 24" + letter + ", 25-60 p."}) {
      INFO(text);
      auto const read = read_extent(text);
      CHECK_FALSE(read);
    }
}

TEST_CASE("numbers put in after an even number stand on rectos by intention") {
  for (std::string const inserted : {"24a-24d", "24a-24b", "24a", "24bis", "*24-*27", "24*", "24a-d"}) {
    INFO(inserted);
    auto const audit = examine(read_description({.pagination = "1-24, " + inserted + ", 25-60 p."}));
    for (auto const& one : audit.findings) CHECK(one.id != FindingId::numbers_begin_on_verso);
  }
  auto const leaves = [](std::string const& pages) {
    return examine(read_description({.formula = "8°: A-D⁸", .pagination = pages})).contradicts();
  };
  CHECK_FALSE(leaves("1-24, 24a-24d, 25-60 p."));
  CHECK(leaves("1-24, 24a-24h, 25-60 p."));
}
