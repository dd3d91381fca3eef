// SPDX-License-Identifier: MIT
// Numbers beside a year that are not part of it: the day before `die` and the month, and the year of another calendar before
// the two of ours. The dates are invented; common practice, no source, where none is named.
#include <bifolium/core/read_date.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {
StatedDate date_of(std::string const& text) {
  auto const date = read_date(text);
  REQUIRE_MESSAGE(date, text);
  return *date;
}
struct Numeral {
  std::string text;
  int year;
};
/// The year is the answer, or one end of it with the doubt that names both.
void check_year_before_day(std::string const& text, int year) {
  INFO(text);
  auto const date = read_date(text);
  REQUIRE(date);
  REQUIRE(date->years);
  CHECK(date->years->from == year);
  bool told = false;
  for (auto const& doubt : date->warnings()) told = told || doubt.problem == Problem::year_with_day;
  CHECK((date->years->to == year || told));
}
} // namespace

TEST_CASE("a day before die, mensis and the month is not a part of the year") {
  Numeral const years[]{{"MDXX", 1520},       {"M.D.XX", 1520},       {"M. D. XX", 1520},  {"M D XX", 1520},
                        {"MCCCC.LXXX", 1480}, {"M.CCCC.XC", 1490},    {"M.cccc.xc", 1490}, {"MCCCCLXXXX", 1490},
                        {"Mccccxc", 1490},    {"M.CCCC.LXXXX", 1490}, {"M.D.L", 1550},     {"CIƆ IƆ XX", 1520}};
  for (auto const& [numeral, year] : years)
    for (std::string const day : {"I", "II", "iij", "IIII", "V", "VI", "vij", "IX", "X", "XII", "xx", "XXX"})
      for (std::string const word : {"die ", "die mensis ", "mensis ", "dies ", "day of ", "de ", "giorno di "})
        for (std::string const month : {"Maii", "Iunii", "Iulii", "Nouembris", "Martij"})
          for (std::string const stop : {". ", " "})
            check_year_before_day(numeral + stop + day + ". " + word + month, year);
  for (auto const& [numeral, year] : years) // words shortened with a full stop, and those of other languages
    for (std::string const day : {"V", "X"})
      for (std::string const word :
           {"mens. ", "mens ", "die mens. ", "dies mens. ", "jour de ", "jour du mois de ", "Tag des ", "di "})
        for (std::string const stop : {". ", " "})
          check_year_before_day(numeral + stop + day + ". " + word + "Maii", year);
  // full stops alone part the day as they part the numeral
  for (std::string const day : {"I", "II", "V", "IX"})
    for (std::string const word : {"die ", "die mensis ", "mensis "})
      check_year_before_day("M.CCCC.XXXX." + day + ". " + word + "Maii", 1440);
}

TEST_CASE("a numeral before die is the year where the day comes after") {
  for (std::string const text : {"M.CCCC.XC.V. die V. Maii", "M.CCCC.XC. V. die quinta Maii", "MCCCCXCV die XX Maii",
                                 "M.CCCC.XC. V. mensis Maii die XX", "M.CCCC.XC. V. die mensis Maii 20"}) {
    INFO(text);
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1495});
    CHECK(date->warnings().empty());
  }
}

TEST_CASE("before die without a month the last number may be the day") {
  for (std::string const end : {"", ".", ",", " "})
    for (std::string const word : {"die", "dies", "mensis", "die mensis"})
      for (std::string const stop : {". ", " "}) {
        auto const text = "MDXX" + stop + "V. " + word + end;
        INFO(text);
        auto const date = read_date(text);
        REQUIRE(date);
        CHECK(date->years == YearRange{1520, 1525});
        REQUIRE(date->warnings().size() == 1);
        CHECK(date->warnings()[0].problem == Problem::year_with_day);
        CHECK(date->warnings()[0].limit == 1520);
      }
  for (std::string const text : {"MDXXV die", "MDXXV. die", "MDXXV die Iovis", "MDXX. V. die Iovis"}) {
    INFO(text);
    CHECK(date_of(text).years == YearRange{1525});
    CHECK(date_of(text).warnings().empty());
  }
}

TEST_CASE("a year of another calendar falls in two of ours") { // DCRMR 5.23.31.6: 627 [1866 or 1867]
  struct Other {
    std::string year;
    int first;
  };
  for (auto const& [year, first] :
       {Other{"5567", 1806}, Other{"567", 1806}, Other{"[5]567", 1806}, Other{"(5)567", 1806}, Other{"1222 H", 1807},
        Other{"1222 H.", 1807}, Other{"A.H. 1201", 1786}, Other{"AH 1201", 1786}, Other{"1222", 1807},
        Other{"an VII", 1798}})
    for (std::string const joint : {"/", " or "})
      for (int const figures : {1, 2, 4}) {
        auto const second = std::to_string(first + 1).substr(4 - static_cast<std::size_t>(figures));
        for (auto const& text : {year + " [" + std::to_string(first) + joint + second + "]",
                                 year + " (" + std::to_string(first) + joint + second + ")"}) {
          INFO(text);
          auto const date = read_date(text);
          REQUIRE(date);
          CHECK(date->years == YearRange{first, first + 1});
          CHECK_FALSE(date->double_dated);
          CHECK(date->warnings().empty());
        }
      }
  for (auto text : {"1786/87 (1201 H.)", "1786/7 [5547]"}) {
    INFO(std::string{text});
    CHECK(date_of(text).years == YearRange{1786, 1787});
  }
  // the year that begins in spring is still one
  for (auto text : {"1725/6", "[1725/6]", "1725 [1725/26]", "725 (1725/6)"}) {
    INFO(std::string{text});
    CHECK(date_of(text).years == YearRange{1726});
    CHECK(date_of(text).double_dated);
  }
}

TEST_CASE("the year on the book counts, and the one of the creation in brackets does not") {
  for (auto text : {"[5567] 1807", "1807 [5567]", "1807 (5567)"}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    CHECK(date->years == YearRange{1807});
    CHECK(date->warnings().empty());
    CHECK(date->unread.size() == 1);
  }
}

TEST_CASE("volumes that go on, ranges supplied end by end, and the year of a copyright") {
  for (std::string const end : {"-", "+", "—", "- ", "+ "})
    for (auto const& text : {"1607" + end, "[1607" + end + "]", "(1607" + end + ")"}) {
      INFO(text);
      CHECK(date_of(text).years == YearRange{1607, 1657});
      CHECK(date_of(text).open);
    }
  for (auto text : {"MDCL [1650]-MDCLII [1652]", "MDCL [1650]-MDCLI [1651]"}) { // the first: DCRMR 5.23.35.1
    INFO(std::string{text});
    auto const date = read_date(text);
    CHECK(date->years->from == 1650);
    CHECK(date->years->to == date->written->to);
    CHECK(date->years->to > 1650);
    CHECK(date->warnings().empty());
  }
  for (auto text : {"1650, c1649", "c1649, 1650"}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    CHECK(date->years == YearRange{1650});
    CHECK(date->warnings().empty());
    REQUIRE(date->unread.size() == 1);
    CHECK(date->unread[0].of(text).ends_with("1649"));
  }
  CHECK(date_of("c1649").years == YearRange{1644, 1654}); // alone it is circa
}

TEST_CASE("a bound that is not exact, and a long dash for two figures") {
  for (std::string const about : {"c. ", "ca. ", "circa ", "about "}) {
    INFO(about);
    CHECK(date_of("after " + about + "1607").years == YearRange{1602, 1657});
    CHECK(date_of("before " + about + "1607").years == YearRange{1557, 1612});
    CHECK(date_of("not after " + about + "1607").years == YearRange{1557, 1612});
  }
  for (auto text : {"[16—]", "16—", "[16--]", "[16—?]"}) {
    INFO(std::string{text});
    CHECK(date_of(text).years == YearRange{1600, 1699});
  }
}
