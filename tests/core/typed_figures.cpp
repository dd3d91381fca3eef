// SPDX-License-Identifier: MIT
// Years typed with letters for figures: typewriters without 1 and 0 had l and O in their places, and programs that read
// scanned cards take one for the other. Common practice, no source.
#include <bifolium/core/read_date.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("a year with letters for figures is read with a doubt that names both") {
  for (int year = 1450; year < 1900; ++year) {
    auto const figures = std::to_string(year);
    for (unsigned places = 1; places < 16; ++places) // which figures are typed as letters
      for (char const one : {'I', 'l', 'i'})
        for (char const zero : {'O', 'o'}) {
          auto typed = figures;
          int letters = 0;
          for (std::size_t i = 0; i < 4; ++i)
            if ((places >> i & 1U) != 0 && (figures[i] == '1' || figures[i] == '0'))
              typed[i] = figures[i] == '1' ? one : zero, ++letters;
          if (letters == 0 || letters > 2 || year % 7 != 0) continue;
          INFO(typed);
          auto const date = read_date(typed);
          REQUIRE(date);
          CHECK(date->years == YearRange{year});
          REQUIRE(date->warnings().size() == 1);
          auto const& doubt = date->warnings()[0];
          CHECK(doubt.problem == Problem::typed_figures);
          CHECK(doubt.found_text() == typed);
          CHECK(doubt.limit == year);
          CHECK(doubt.place == TextPlace{1, 1});
        }
  }
}

TEST_CASE("what stands about a year typed with letters is read as about any other") {
  struct Typed {
    std::string text;
    YearRange years;
    std::size_t doubts;
  };
  for (auto const& [text, years, doubts] :
       {Typed{"[l607]", 1607, 1}, Typed{"ca. 16o7", {1602, 1612}, 1}, Typed{"[I6o7?]", {1602, 1612}, 1},
        Typed{"16o7-16o9", {1607, 1609}, 2}, Typed{"not before I499", {1499, 1549}, 1},
        Typed{"16O7 [i.e. l608]", 1608, 2}, Typed{"Paris, 16o7, in 4°", 1607, 1}, Typed{"&Auml; l607", 1607, 1}}) {
    INFO(text);
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == years);
    REQUIRE(date->warnings().size() == doubts);
    for (auto const& doubt : date->warnings()) CHECK(doubt.problem == Problem::typed_figures);
  }
  CHECK((*read_date("Paris, 16o7")).warnings()[0].place == TextPlace{1, 8});
}

TEST_CASE("letters are taken for figures only where no other year is") {
  for (std::string const text : {"Wing I499, 1641", "1641 (Wing I499)", "MDCXLI, no. l607"}) {
    INFO(text);
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1641});
    CHECK(date->warnings().empty());
  }
  for (std::string const text : {"lo", "Olio", "16", "l6", "1oo", "I6O", "l607a", "16o75", "l6ol", "1S07", "9999 l",
                                 "l6 07", "16 o7", "i.i.1.1"}) {
    INFO(text);
    CHECK_FALSE(read_date(text));
  }
}
