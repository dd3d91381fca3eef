// SPDX-License-Identifier: MIT
// Statements of date against the worked examples of the rules for cataloguing. Rule numbers are those of DCRMR (RDA
// edition of the rules for rare materials, 2023), in brackets those of DCRM(B).
#include <bifolium/core/message.hpp>
#include <bifolium/core/read_date.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {
struct Example {
  char const* text;
  YearRange years;                    // the answer
  char const* what{""};               // s supplied, c corrected, ? probable, a approximate, d double dating, o open end
  std::optional<YearRange> printed{}; // what the book has, where the statement tells it apart
};
std::string flags(StatedDate const& date) {
  std::string text;
  for (auto const& [is, letter] :
       {std::pair{date.supplied, 's'}, std::pair{date.corrected, 'c'}, std::pair{date.probable, '?'},
        std::pair{date.approximate, 'a'}, std::pair{date.double_dated, 'd'}, std::pair{date.open, 'o'}})
    if (is) text += letter;
  return text;
}
void check(std::initializer_list<Example> examples) {
  for (auto const& example : examples) {
    INFO(example.text);
    auto const date = read_date(example.text);
    REQUIRE(date);
    REQUIRE(date->years);
    CHECK(date->years->from == example.years.from);
    CHECK(date->years->to == example.years.to);
    CHECK(flags(*date) == example.what);
    CHECK(date->printed == example.printed);
    CHECK(date->warnings().empty());
  }
}
} // namespace

TEST_CASE("a date as printed, with its year in arabic figures supplied") {
  check({
      // DCRMR 5.23.3.1, 5.23.31.1 (4D1, 4D2.1)
      {"MDCCXXXIII [1733]", 1733, "s", 1733},
      {"anno Dom. MDC.LXXVIII [1678]", 1678, "s", 1678},
      {"M.D.CC.XLIV [1744]", 1744, "s", 1744},
      {"anno Domini MDCXIV [1614]", 1614, "s", 1614},
      // DCRMR 5.23.3
      {"July 29, 1642", 1642},
      {"13. Decembris, anno 1616", 1616},
      {"im Jahr Christi 1705", 1705},
      {"printed 1590, reprinted 1641",
       1641}, // 5.23.3.1: the later is the date of this edition; the other is told below
      // DCRMR 5.23.31.1, .3.3, .31.3
      {"MCCCCLXXXII le XV jour de decembre [15 December 1482]", 1482, "s", 1482},
      {"[1 May 1795]", 1795, "s"},
      {"[21 February 1476]", 1476, "s"},
      // ISBD 4.3.4 (consolidated edition, draft of 2010)
      {"M.DC.IIII. [1604]", 1604, "s", 1604},
      {"die natalis Christi 1498 [25 Dec. 1498]", 1498, "s", 1498},
      // DCRMR 5.23.31.65: a Roman day
      {"an. M.D.XXI. quarto idus Iulij [12 July 1521]", 1521, "s", 1521},
      // DCRMR 5.23.31.2 (4D2.2): chronograms
      {"Anno QVI seqVItVr VICtorIae ... [1744]", 1744, "s"},
      {"[1758]", 1758, "s"},
      // two records: field 264 of the Biblioteca de Catalunya's guide, field 260 of a posting to Code4Lib
      {"M. DC. XVI. [1616]", 1616, "s", 1616},
      {"anno D[omi]ni 1508 vltimo Octobris [31 Oct. 1508]", 1508, "s", 1508},
  });
}

TEST_CASE("a correction is the date, and what is printed is kept") {
  check({
      // DCRMR 5.23.31.4 (4D2.4)
      {"1785 [that is, 1795]", 1795, "c", 1785},
      {"1703 [that is, 1730]", 1730, "c", 1703},
      {"anno Dom. 1683 [that is, 1693]", 1693, "c", 1683},
      {"Octr. 42 [that is, 24], 1799", 1799}, // the correction is of the day
      // a record of Yale, in the words of the older rules; a doubted year is five wider at either end, our convention
      {"1774 [i.e. 1779?]", {1774, 1784}, "c?", 1774},
      // DCRMR 5.23.31.7 (4D2.7)
      {"MDCXIII [1613, that is, 1693]", 1693, "c", 1613},
      {"anno Domini MCCCCCXXIX [1529, that is, 1539]", 1539, "c", 1529},
      // DCRMR 5.23.31.5, .7 (4D2.5): the year began in March
      {"1743 [that is, 1744]", 1744, "c", 1743},
      {"Februar. 8. anno 1588 [that is, 1589]", 1589, "c", 1588},
      {"M.DC.XXV [1625, that is, 1626]", 1626, "c", 1625},
      {"1690/1 [that is, 1691]", 1691, "c", YearRange{1690, 1691}},
      {"1690/1691 [that is, 1691]", 1691, "c", YearRange{1690, 1691}},
      {"1690/1691 [1691]", 1691, "s", YearRange{1690, 1691}}, // ISBD 4.3.4
      // coded 1983 in an example of MARC 21 field 008 (itsmarc.com)
      {"744 i.e. 1983 or 1984", {1983, 1984}, "c"},
      // words of the older catalogues and of other languages; common practice, no source
      {"1640 [vere 1650]", 1650, "c", 1640},
      {"1640 [really 1650]", 1650, "c", 1640},
      {"1640 [misprint for 1650]", 1650, "c", 1640},
      {"1640 [d. h. 1650]", 1650, "c", 1640},
  });
}

TEST_CASE("other calendars") {
  check({
      {"627 [1866 or 1867]", {1866, 1867}, "s"},                           // DCRMR 5.23.31.6 (4D2.6)
      {"an VII [1798 or 1799]", {1798, 1799}, "s", YearRange{1798, 1799}}, // the same rule
      {"an VII", {1798, 1799}},    // from the example before: year 1 of the Republic began in September 1792
      {"1725/6", 1726, "d"},       // from memory: the year is that of the reckoning from January
      {"1450/1500", {1450, 1500}}, // constructed: years that do not follow each other are a range
  });
}

TEST_CASE("a year in brackets is that of another era, or of a year that begins in January") { // from memory
  check({
      {"5521 [1760 or 1761]", {1760, 1761}, "s"}, // the Jewish year from autumn 1760 to autumn 1761
      {"[5]521 [1760/61]", {1760, 1761}, "s"},    // as above, and no year that begins in spring
      {"7101 [1593]", 1593, "s"},                 // Byzantine: from September 1592
      {"AH 1221 [1806]", 1806, "s", 1221},        // Hijra: from March 1806
      {"1235 [1820]", 1820, "s", 1235},
      // the year began on 25 March, in France at Easter
      {"28 Jan. 1648 [1649]", 1649, "s", 1648},
      {"12 Martii 1588 [1589]", 1589, "s", 1588},
      {"10 avril 1546 [1547]", 1547, "s", 1546},
      {"1588 [1589 n.s.]", 1589, "s", 1588},
  });
  for (auto text : {"28 May 1648 [1649]", "28 Jan. 1648 [1650]", "S. Martin, 1648 [1649]", "1221 [1860]"}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    REQUIRE(date);
    REQUIRE(date->warnings().size() == 1);
    CHECK(date->warnings()[0].problem == Problem::date_numerals_differ);
  }
  auto const alone = read_date("5521"); // no year of our era
  CHECK(*alone->years == YearRange{1760, 1761});
  REQUIRE(alone->warnings().size() == 1);
  CHECK(alone->warnings()[0].problem == Problem::year_clipped);
  CHECK(read_date("2640").error().problem == Problem::not_years);
}

TEST_CASE("a year of another era is refused, unless one of ours is beside it") { // common practice, no source
  struct Wrong {
    std::string text, found;
    std::uint32_t column = 1;
  };
  std::vector<Wrong> wrong;
  for (std::string const era : {"BC",
                                "B.C.",
                                "B. C.",
                                "BCE",
                                "B.C.E.",
                                "v. Chr.",
                                "v.Chr.",
                                "vor Chr.",
                                "vor Christus",
                                "vor Christi Geburt",
                                "av. J.-C.",
                                "avant J.-C.",
                                "avant Jésus-Christ",
                                "a.C.",
                                "a. C.",
                                "a. Chr.",
                                "ante Christum",
                                "ante Christum natum",
                                "avanti Cristo",
                                "antes de Cristo",
                                "voor Christus",
                                "v.C.",
                                "AH",
                                "A.H.",
                                "A. H.",
                                "hijri",
                                "Hegira",
                                "anno Hegirae",
                                "de l'hégire",
                                "A.M.",
                                "anno mundi",
                                "A.U.C.",
                                "ab urbe condita",
                                "Saka",
                                "Śaka",
                                "śaka",
                                "Samvat",
                                "Vikram Samvat"})
    for (std::string const year : {"1725", "1221", "1220-1221", "MDCCXXV", "725"}) {
      if (era[0] == '\xC5' && era[1] == '\x9A') continue; // a capital that is no letter of ASCII
      if (year[0] == 'M' && era[0] == 'v') continue;      // the v would be a five of the numeral
      auto const text = year + " " + era;
      wrong.push_back({text, text});
      wrong.push_back({"[" + text + "]", text, 2});
      wrong.push_back({"Bulaq, " + text + ", 2 v.", text, 8});
    }
  for (std::string const era : {"AH", "A.H.", "A. H.", "ah", "anno Hegirae", "Hijra", "AM", "A.M.", "anno mundi",
                                "A.U.C.", "Saka", "śaka", "Samvat"})
    for (std::string const year : {"1221", "1220-1221", "725"}) wrong.push_back({era + " " + year, era + " " + year});
  for (std::string const minus : {"-", "\u2212", "\u2013", "\u2014"}) {
    wrong.push_back({minus + "1725", minus + "1725"});
    wrong.push_back({"[" + minus + "1725]", minus + "1725", 2});
    wrong.push_back({minus + "MDCCXXV", minus + "MDCCXXV"});
  }
  wrong.push_back({"-0044", "-0044"});
  wrong.push_back({"1221 h.", "1221 h."});
  wrong.push_back({"1725BC", "1725BC"});
  wrong.push_back({"1st century BC", "1st century BC"});
  wrong.push_back({"2nd cent. B.C.", "2nd cent. B.C."});
  for (auto const& [text, found, column] : wrong) {
    CAPTURE(text);
    auto const date = read_date(text);
    REQUIRE_FALSE(date);
    CHECK(date.error().problem == Problem::other_era);
    CHECK(date.error().place->column == column);
    auto const quoted = std::string{date.error().found_text()};
    CHECK(found.starts_with(quoted)); // cut where it is long
    CHECK((quoted == found || quoted.size() >= 20));
  }
  check({{"AH 1221 [1806]", 1806, "s", 1221},
         {"1221 AH [1806]", 1806, "s", 1221},
         {"1221 H. (1806)", 1806, "s", 1221},
         {"1221 AH = 1806", 1806, "c", 1221},
         {"1221 AH, 1806", 1806},
         {"1806, 1221 AH", 1806},
         {"Saka 1647 [1725]", 1725, "s", 1647},
         // our era, and what only looks like another
         {"1725 AD", 1725},
         {"A.D. 1725", 1725},
         {"1725 CE", 1725},
         {"1725 n. Chr.", 1725},
         {"1725 d.C.", 1725},
         {"printed for A.H. 1725", 1725},
         {"printed for A. M., 1725", 1725},
         {"1725 A. H. Smith", 1725},
         {"1725. B.C.", 1725},
         {"1725 H.", 1725},
         {"London - 1725", 1725},
         {"1640 -1645", {1640, 1645}},
         {"1789 [-1792]", {1789, 1792}, "s"}});
}

TEST_CASE("conjectures of the rules in force") {
  check({
      {"[1723]", 1723, "s"}, // DCRMR 5.23.32 (4D3)
      // DCRMR 5.23.34.1 (4D5). Five years to either side is our convention; F. codes `circa 1580` as 1575-1585
      {"[1560?]", {1555, 1565}, "s?"},
      {"[approximately 1580]", {1575, 1585}, "sa"},
      {"[approximately 1580?]", {1575, 1585}, "s?a"},
      {"[not before 1479]", {1479, 1529}, "so"},
      {"[not after 21 August 1492]", {1442, 1492}, "so"},
      {"[1727 or 1728]", {1727, 1728}, "s"},
      {"[between 1711 and 1749]", {1711, 1749}, "s"},
      {"[between 1711 and 1749?]", {1706, 1754}, "s?"},
      {"[between 1670 and 1680]", {1670, 1680}, "s"},
      {"[between 1600 and 1700]", {1600, 1700}, "s"},
      // a research library's cataloguing pages (2014, 2016), coded there q 1575 1585, q 1814 1815, q 1618 1648
      {"circa 1580", {1575, 1585}, "a"},
      {"circa 1580?", {1575, 1585}, "?a"},
      {"1814 or 1815", {1814, 1815}},
      {"between 1618 and 1648", {1618, 1648}},
      {"1845? January 11", {1840, 1850}, "?"},
  });
}

TEST_CASE("conjectures of the older rules, where a dash holds the place of a figure") {
  check({
      // DCRM(B) 4D5 and AACR2, from memory; `[182–?]` with its dash is printed in Cutter (1891) 191
      {"[ca. 1580]", {1575, 1585}, "sa"},
      {"[ca. 1580?]", {1575, 1585}, "s?a"},
      {"[c. 1580]", {1575, 1585}, "sa"},
      {"[c 1580]", {1575, 1585}, "sa"},
      {"c1725", {1720, 1730}, "a"},
      {"[167-]", {1670, 1679}, "s"},
      {"[167-?]", {1670, 1679}, "s?"},
      {"[16--]", {1600, 1699}, "s"},
      {"[16--?]", {1600, 1699}, "s?"},
      {"[182–?]", {1820, 1829}, "s?"},
      // MARC 21 field 008: [198-] is 198u, [19--] is 19uu (itsmarc.com)
      {"[198-]", {1980, 1989}, "s"},
      {"198u", {1980, 1989}},
      {"[19--]", {1900, 1999}, "s"},
      {"19uu", {1900, 1999}},
      {"1980 [i.e. 1981]", 1981, "c", 1980},
      {"[1969?]", {1964, 1974}, "s?"},
      {"ca. 1946", {1941, 1951}, "a"},
      {"[1946 ca.]", {1941, 1951}, "sa"}, // Italian and Spanish catalogues; common practice, no source
      {"1946 c.", {1941, 1951}, "a"},
      {"[1946 circa?]", {1941, 1951}, "s?a"},
      {"178?", {1780, 1789}}, // constructed: a decade, never the year 178
      {"17??", {1700, 1799}},
      // ISO 8601-2, the extended date-time format: X is a digit that is not specified. From memory
      {"172X", {1720, 1729}},
      {"17XX", {1700, 1799}},
      {"172x", {1720, 1729}},
      {"[17XX?]", {1700, 1799}, "s?"},
      {"25 Xbris 1725", 1725}, // December; the X is no digit
  });
}

TEST_CASE("several years of one book") {
  check({
      // DCRMR 5.23.35.1 (4D7): the first and the last volume
      {"1715-1716", {1715, 1716}},
      {"M,DCC,LXXXIX-M,DCC,XCII [1789-1792]", {1789, 1792}, "s", YearRange{1789, 1792}},
      // constructed
      {"1715-16", {1715, 1716}},
      {"1715-6", {1715, 1716}},
      {"1450–1500", {1450, 1500}},
      {"not before 1479 and not after 1485", {1479, 1485}},
  });
}

TEST_CASE(
    "a range is one whether brackets are round one of its years or none") { // DCRM(B) 4D7 from memory, constructed
  for (auto const& [text, years] : {std::pair{"1640-1645", YearRange{1640, 1645}},
                                    {"[1640]-1645", {1640, 1645}},
                                    {"1640-[1645]", {1640, 1645}},
                                    {"[1640]-[1645]", {1640, 1645}},
                                    {"[1640]-45", {1640, 1645}},
                                    {"1640-[45]", {1640, 1645}},
                                    {"[1640-1645]", {1640, 1645}},
                                    {"[1640?]-1645", {1635, 1650}},
                                    {"1640-[1645?]", {1635, 1650}},
                                    {"[1640 or 45]", {1640, 1645}},
                                    {"MDCXL-XLV", {1640, 1645}}, // the hundreds left out
                                    {"M.DC.XL-XLV. [1640-1645]", {1640, 1645}}}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(*date->years == years);
    CHECK(date->warnings().empty());
    CHECK(date->unread.empty());
  }
  CHECK(*(*read_date("MDCX - XII Kal. Maii")).years == YearRange{1610}); // a day
}

TEST_CASE("one end of a range may be open, in words of all languages") { // common practice, no source
  for (auto text : {"not before 1640", "after 1640", "nicht vor 1640", "nach 1640", "pas avant 1640", "après 1640",
                    "non prima del 1640", "dopo il 1640", "no antes de 1640", "después de 1640", "post 1640",
                    "1640 or later", "[1640 or after]", "1640 oder später", "after May 1640", "1640-", "[1640-]"}) {
    INFO(std::string{text});
    CHECK(*(*read_date(text)).years == YearRange{1640, 1690});
    CHECK((*read_date(text)).open);
  }
  for (auto text : {"not after 1640", "before 1640", "nicht nach 1640", "vor 1640", "pas après 1640", "avant 1640",
                    "non dopo il 1640", "prima del 1640", "no después de 1640", "antes de 1640", "ante 1640",
                    "1640 or earlier", "[1640 or before]", "1640 oder früher"}) {
    INFO(std::string{text});
    CHECK(*(*read_date(text)).years == YearRange{1590, 1640});
    CHECK((*read_date(text)).open);
  }
  check({{"nach Christi Geburt 1543", 1543}, // words of the imprint
         {"anno post Christum natum 1543", 1543},
         {"anno post partum Virginis MDXLIII", 1543},
         {"vor Martini 1543", 1543}});
}

TEST_CASE("decades and centuries in words") { // common practice, no source
  check({
      {"1490s", {1490, 1499}},
      {"1490's", {1490, 1499}},
      {"[1490’s]", {1490, 1499}, "s"},
      {"1700s", {1700, 1799}},
      {"18th century", {1701, 1800}},
      {"early 18th century", {1701, 1750}},
      {"late 15th c.", {1451, 1500}},
      {"second half of the 16th century", {1551, 1600}},
      {"mid 17th century", {1626, 1675}},
      {"XVIIIe siècle", {1701, 1800}},
      {"18. Jahrhundert", {1701, 1800}},
      {"s. XV", {1401, 1500}},
      {"saec. XV", {1401, 1500}},
  });
}

TEST_CASE("where a decade, a century and a range of years begin and end") { // constructed
  check({
      {"1500s", {1500, 1599}},
      {"1510s", {1510, 1519}},
      {"first half of the 16th century", {1501, 1550}},
      {"1st century", {1, 100}},
      {"21st century", {2001, 2100}},
      {"1799-1800", {1799, 1800}},
      {"1715-1715", {1715, 1715}}, // the same year twice
      {"1699/1700", 1700, "d"},
      {"1725/7", {1725, 1727}}, // not years that follow each other
      {"1725/6-1730", {1725, 1730}},
      {"an XIV", {1805, 1806}}, // the last year of the Republic
      {"an I", {1792, 1793}},
      {"[1490-1495?]", {1485, 1500}, "s?"},
      {"ca. 1490-1495", {1485, 1500}, "a"},
      {"[149-?]", {1490, 1499}, "s?"}, // a decade is not made wider
      {"not before 1490", {1490, 1540}, "o"},
      {"not after 1490", {1440, 1490}, "o"},
  });
  CHECK(*(*read_date("450")).years == YearRange{1450}); // printing with types began about 1450: 450 is 1450
  CHECK(read_date("449").error().problem == Problem::not_years);
  CHECK(read_date("22nd century").error().problem == Problem::not_years);
  CHECK(read_date("1789. c1790").value().warnings().size() == 2); // two dates, and c of copyright
  CHECK((*read_date("c1789"))
            .warnings()
            .empty()); // before the law of 1790 on copyright in the United States (from memory)
}

TEST_CASE("a word about a year is about that year alone") { // constructed
  check({
      {"between March 1711 and May 1749", {1711, 1749}},
      {"MDCCXXV?", {1720, 1730}, "?"},
  });
  auto const two = read_date("ca. 1580, 1585"); // a second date, which is certain
  CHECK(*two->years == YearRange{1575, 1585});
  CHECK(two->warnings().size() == 1);
  CHECK(*(*read_date("not before 1479, not before 1490")).years == YearRange{1479, 1540});
  CHECK((*read_date("c.1890")).warnings().empty()); // with a point it is an abbreviation of circa
  constexpr std::string_view text = "Printed at York, circa 1580";
  auto const circa = read_date(text);
  REQUIRE(circa->unread.size() == 1);
  CHECK(circa->unread[0].of(text) == "Printed at York");
}

TEST_CASE("printers' numerals") {
  check({
      // Spofford, A Book for All Readers (1900), on dates in Roman numerals
      {"MDCVC", 1695},
      {"MDXLIIX", 1548},
      {"CIƆ IƆ CXXVI", 1626},
      // tasacionyvaloracionlibros.com
      {"CIƆ.IƆ.CC.XLIII", 1743},
      {"M.CCCC.XC.viij", 1498},
      {"M.D.C.II", 1602},
      {"M iiii c iiii xx V iij", 1488},
      // cool.culturalheritage.org; ansteorra.org: the turned C as it is typed
      {"CI) I) CXXVI", 1626},
      {"C|Ɔ|ƆC", 1600},
      {"MDXVIX", 1526}, // VIX is 16
      {"MDXXC", 1580},  // XXC is 80
      {"MDIC", 1599},
      {"(MDCCXXII)", 1722, "s"},
      {"Im M.D.XLIII. Jar", 1543}, // German title pages; `Im` is a word, and I is not taken from M
  });
  CHECK(!read_date("mil")); // Italian for thousand
  CHECK(!read_date("M. Dom. I."));
}

TEST_CASE(
    "the date of an earlier printing is told, and is not the date") { // the form of DCRMR 5.23.3.1, others constructed
  for (auto const& [text, unread] :
       {std::pair{"printed 1590, reprinted 1641", "printed 1590"},
        {"1590, re-printed 1641", "1590"},
        {"1590; repr. 1641", "1590"},
        {"first printed at Paris in 1590, reprinted 1641", "first printed at Paris in 1590"}}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1641});
    REQUIRE(date->unread.size() == 1);
    CHECK(date->unread[0].of(text) == unread);
    CHECK(date->warnings().empty());
  }
}

TEST_CASE("no date, and no date known") {
  for (auto text : {"n.d.", "[n.d.]", "n. d.", "[s.a.]", "s. a.", "[s. d.]", "o. J.", "undated", "uuuu",
                    "[date of publication not identified]"}) { // the last: DCRMR 5.23.34; others common practice
    INFO(text);
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(!date->years);
  }
  CHECK(read_date("").error().problem == Problem::not_years);
  auto const prose = read_date("a handsome copy");
  CHECK(prose.error().problem == Problem::not_years);
  CHECK(read_date("16 S. Martin").error().problem == Problem::not_years); // neither a year nor the 16th century
  auto const backwards = read_date("in 1650-1640");
  CHECK(backwards.error().problem == Problem::impossible_years);
  CHECK(backwards.error().place->column == 4);
}

TEST_CASE("parts of a year may be supplied") { // constructed
  check({
      {"17[25]", 1725, "s"},
      {"[17]25", 1725, "s"},
      {"1[7]25", 1725, "s"},
      {"172[5?]", {1720, 1730}, "s?"},
      // parts of a numeral, wherever it is torn
      {"MDXL[III]", 1543, "s"},
      {"MD[XLIII]", 1543, "s"},
      {"M.D.[XLIII]", 1543, "s"},
      {"M. D. XL[III]", 1543, "s"},
      {"[M]DXLIII", 1543, "s"},
      {"[M.D.]XLIII", 1543, "s"},
      {"M[D]XLIII", 1543, "s"},
      {"MDXL[III?]", {1538, 1548}, "s?"},
      // brackets that do not touch the numeral, or hold something else
      {"MDXL [i.e. 1541]", 1541, "c", 1540},
      {"MDXL[i.e. 1541]", 1541, "c", 1540},
      {"M.D.C. [C. Barker]", 1600},
  });
}

TEST_CASE("what is doubtful is told with its place") {
  auto const doubt = [](char const* text) {
    auto const date = read_date(text);
    REQUIRE(date);
    REQUIRE(date->warnings().size() == 1);
    return date->warnings()[0];
  };
  // constructed
  CHECK(doubt("MDCCXXV [1752]").problem == Problem::date_numerals_differ);
  CHECK(doubt("MDCCXXV [1752]").place->column == 10);
  CHECK(doubt("MDCCXXV [1752]").limit == 1725);
  CHECK(doubt("1765, 1770").problem == Problem::several_dates);
  CHECK(doubt("c1890").problem == Problem::circa_or_copyright);
  // Cutter (1891) 191: German catalogues leave the thousand out
  CHECK(doubt("742").problem == Problem::year_clipped);
  CHECK(*(*read_date("742")).years == YearRange{1742});
  for (auto text : {"MDCCXXV [1752]", "1765, 1770", "c1890", "742"})
    CHECK(message(doubt(text)).find("unknown problem") == std::string::npos);
}

TEST_CASE("what is left unread is named") {
  constexpr std::string_view text = "In Venetia, 13. Decembris, anno 1616 [1616] per Salis";
  auto const date = read_date(text);
  REQUIRE(date);
  REQUIRE(date->unread.size() == 2);
  CHECK(date->unread[0].of(text) == "In Venetia, 13. Decembris, anno");
  CHECK(date->unread[1].of(text) == "per Salis");
  CHECK(date->read.of(text) == "1616 [1616");
  CHECK((*read_date("[1725?].")).unread.empty());
}

TEST_CASE("dates are read in constant expressions") {
  STATIC_CHECK(*(*read_date("[172-?]")).years == YearRange{1720, 1729});
  STATIC_CHECK(*(*read_date("MDCCXXV [1725]")).years == YearRange{1725});
  STATIC_CHECK(!(*read_date("undated")).years);
}

TEST_CASE("centuries that share their word, in words and in both kinds of numerals") { // common practice, no source
  for (auto text : {"16th or 17th century", "16th-17th century", "16th/17th cent.", "16th and 17th centuries",
                    "16th to 17th century", "16.-17. Jh.", "16./17. Jahrhundert", "16. oder 17. Jh.", "16. bis 17. Jh.",
                    "XVI-XVII sec.", "sec. XVI-XVII", "s. XVI-XVII", "saec. XVI/XVII", "sec. XVI o XVII",
                    "XVIe-XVIIe siècle", "XVIe ou XVIIe siècle", "[16th or 17th cent.]"}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1501, 1700});
    CHECK(date->unread.empty());
  }
  // a day after an initial, or after the year, is not a century
  for (auto text : {"J. S. 16 Maii 1641", "printed by J. S. 16 May 1641", "S. XVI. Maii 1641", "an. 7 Maii 1641"}) {
    INFO(std::string{text});
    CHECK((*read_date(text)).years == YearRange{1641});
  }
  // other ordinals are not centuries
  for (auto text : {"17th Nov. 1641", "the 16th or 17th of March 1641", "3rd ed., 1641", "16. oder 17. Mai 1641"}) {
    INFO(std::string{text});
    CHECK((*read_date(text)).years == YearRange{1641});
  }
  CHECK((*read_date("an IX-XI")).years == YearRange{1800, 1803}); // two years of the Republic are no century
}

TEST_CASE("words that open a range at one end") { // common practice, no source
  for (auto text :
       {"[in or before 1641]", "[by 1641]", "[until 1641]", "[bis 1641]", "[spätestens 1641]", "[not after 1641]"}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1591, 1641});
    CHECK(date->open);
  }
  for (auto text :
       {"[in or after 1641]", "[since 1641]", "[seit 1641]", "[frühestens 1641]", "[not before 1641]", "<1641->"}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1641, 1691});
    CHECK(date->open);
  }
  for (auto text : {"1641 by J. Smith", "printed by J. Smith, 1641"}) CHECK_FALSE((*read_date(text)).open);
}

TEST_CASE("a question mark in its own brackets, or before the year, is of the year") { // common practice, no source
  for (auto text : {"1641[?]", "1641 [?]", "1641 (?)", "1641(?)", "?1641", "[?1641]", "[1641?]"}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->probable);
    CHECK(date->years == YearRange{1636, 1646});
  }
  CHECK((*read_date("1641 (?)-1645")).written == YearRange{1641, 1645});
}

TEST_CASE("two years joined in other languages and over brackets") { // common practice, no source
  for (auto text : {"1641 y 1645", "1641 e 1645", "1641 o 1645", "1641 & 1645", "1641 à 1645", "1641 al 1645",
                    "[tra il 1641 e il 1645]", "[fra 1641 e 1645]", "[entre 1641 y 1645]", "1641 [-1645]", "1641[-45]",
                    "1641-[16]45", "1641-<1645>", "1641-<45>", "1641-45 [v. 1, 1645]", "1641-45 [v. 5, 1641]"}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1641, 1645});
    CHECK(date->warnings().empty());
  }
  CHECK((*read_date("[ca. 1499-ca. 1502]")).written == YearRange{1499, 1502});
  CHECK((*read_date("1641-45 [v. 1, 1645]")).unread.size() == 1); // what is in brackets is told
  CHECK((*read_date("1648-49 [1649]")).years == YearRange{1649}); // two calendars
}

TEST_CASE("words that correct a year, in German and Spanish and with reasons") { // common practice, no source
  for (auto text :
       {"1641 [d.i. 1614]", "1641 [d. i. 1614]", "1641 [vielm. 1614]", "1641 [vielmehr 1614]", "1641 [eigentlich 1614]",
        "1641 [sic, for 1614]", "1641 [erroneously for 1614]", "1641 [es decir 1614]"}) {
    INFO(std::string{text});
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1614});
    CHECK(date->corrected);
    CHECK(date->printed == YearRange{1641});
    CHECK(date->warnings().empty());
  }
}

TEST_CASE("numerals whose letters are parted by full stops, or have their units after a word for and") {
  // constructed after title pages; the values are arithmetic
  CHECK((*read_date("M.D.C.X.L.I.")).years == YearRange{1641});
  CHECK((*read_date("M.D.X.C.")).years == YearRange{1590});
  CHECK((*read_date("M.D.C.X. L. Zetzner")).years == YearRange{1610}); // a name, after a blank
  CHECK((*read_date("M.CCCC.LXXXX & IX")).years == YearRange{1499});
  CHECK((*read_date("M.CCCC.LXXXX. et IX.")).years == YearRange{1499});
  CHECK((*read_date("M.CCCC.LXXXX & V Maii")).years == YearRange{1490}); // a day
  CHECK((*read_date("[16__]")).years == YearRange{1600, 1699});
}

TEST_CASE("halves of centuries in German, French and Italian") { // common practice, no source
  for (auto text : {"1. Hälfte 17. Jh.", "erste Hälfte 17. Jh.", "Anfang 17. Jh.", "début du XVIIe siècle"}) {
    INFO(std::string{text});
    CHECK((*read_date(text)).years == YearRange{1601, 1650});
  }
  for (auto text : {"2. Hälfte 17. Jh.", "Ende 17. Jh.", "fin du XVIIe siècle", "seconde moitié du XVIIe siècle"}) {
    INFO(std::string{text});
    CHECK((*read_date(text)).years == YearRange{1651, 1700});
  }
  CHECK((*read_date("siglo XVII")).years == YearRange{1601, 1700});
}

TEST_CASE("a decade or a century after the last year that is read is not one") {
  for (auto const* text : {"72--", "1?72-?", "21--", "99uu", "725-", "210?", "5500s", "2100s", "2110's"}) {
    CAPTURE(std::string{text});
    auto const read = read_date(text);
    CHECK((!read || !read->years || read->years->to < 2100));
  }
  // every other one, written as its first and last year, reads back
  auto const years_of = [](int from, int to) {
    return (*read_date(std::to_string(from) + "-" + std::to_string(to))).years;
  };
  int decades = 0, centuries = 0;
  for (int figures = 100; figures < 1000; ++figures) {
    auto const read = read_date(std::to_string(figures) + "-");
    if (!read || !read->years) continue;
    ++decades;
    CHECK(read->years == YearRange{figures * 10, figures * 10 + 9});
    CHECK(years_of(figures * 10, figures * 10 + 9) == read->years);
  }
  for (int figures = 10; figures < 100; ++figures) {
    auto const read = read_date(std::to_string(figures) + "--");
    if (!read || !read->years) continue;
    ++centuries;
    CHECK(read->years == YearRange{figures * 100, figures * 100 + 99});
    CHECK(years_of(figures * 100, figures * 100 + 99) == read->years);
  }
  CHECK(decades == 110); // 1000 to 2099
  CHECK(centuries == 11);
}

TEST_CASE("years that are not the answer are told in the order of the text") { // found by a fuzzer
  constexpr std::string_view text = "printed 1590 by John Smith, reprinted 1641";
  auto const date = read_date(text);
  REQUIRE(date);
  CHECK(date->years == YearRange{1641});
  REQUIRE(date->unread.size() == 2);
  CHECK(date->unread[0].of(text) == "printed 1590");
  CHECK(date->unread[1].of(text) == "by John Smith");
}

TEST_CASE("unread text is listed in its order, the year of an earlier printing too") {
  struct Left {
    std::string text;
    std::vector<std::string> unread;
  };
  for (auto const& one : {Left{"printed 1590, reprinted 1641", {"printed 1590"}},
                          Left{"printed 1590, repr%inted 1641", {"printed 1590", "inted"}},
                          Left{"Londini 1590, repr. by Smith 1641, sold", {"Londini 1590", "by Smith", "sold"}}}) {
    CAPTURE(one.text);
    auto const read = read_date(one.text);
    REQUIRE(read);
    CHECK(read->years == YearRange{1641, 1641});
    std::vector<std::string> unread;
    for (auto const span : read->unread) unread.emplace_back(span.of(one.text));
    CHECK(unread == one.unread);
  }
}

TEST_CASE("digits that are not known, in points") { // the French and Italian form of [17--]; common practice, no source
  check({{"[17..]", {1700, 1799}, "s"},
         {"16..", {1600, 1699}},
         {"17..-18..", {1700, 1899}},
         {"[17..-18..]", {1700, 1899}, "s"},
         {"[178.]", {1780, 1789}, "s"},
         {"[178.?]", {1780, 1789}, "s?"},
         {"[17..?]", {1700, 1799}, "s?"},
         {"[17\u2026]", {1700, 1799}, "s"}});
  CHECK_FALSE(read_date("178.")); // a full stop
  CHECK_FALSE(read_date("17."));
  CHECK((*read_date("13. Maii 1640")).years == YearRange{1640});
}

TEST_CASE("a hyphen after a word about the year is not a minus") { // common practice, no source
  for (std::string const word : {"mid", "early", "late"})
    for (std::string const century : {"17th century", "17th cent.", "XVIIth century", "XVIIe siècle"}) {
      CAPTURE(word);
      CAPTURE(century);
      auto const parted = read_date(word + " " + century), joined = read_date(word + "-" + century);
      REQUIRE(parted);
      REQUIRE(joined);
      CHECK(parted->years == joined->years);
      CHECK(joined->years->to - joined->years->from == 49);
    }
  check({{"mid-1640s", {1640, 1649}}, {"post-1640", {1640, 1690}, "o"}, {"pre-1640", {1590, 1640}, "o"}});
  CHECK_FALSE(read_date("-1640"));
}

TEST_CASE("the part of a century may stand after it") { // common practice, no source
  struct Part {
    std::string words;
    int from, to;
  };
  for (auto const& [words, from, to] :
       {Part{"first half", 1, 50}, Part{"second half", 51, 100}, Part{"2nd half", 51, 100}, Part{"2. Hälfte", 51, 100},
        Part{"2e moitié", 51, 100}, Part{"prima metà", 1, 50}, Part{"segunda mitad", 51, 100},
        Part{"first quarter", 1, 25}, Part{"second quarter", 26, 50}, Part{"3rd quarter", 51, 75},
        Part{"last quarter", 76, 100}, Part{"4. Viertel", 76, 100}, Part{"mid", 26, 75}, Part{"early", 1, 50}})
    for (std::string const century : {"15th cent.", "15th century", "XVe siècle", "15. Jh.", "sec. XV", "saec. XV"})
      for (auto const& text :
           {century + ", " + words, century + " (" + words + ")", "[" + century + ", " + words + "]"}) {
        CAPTURE(text);
        auto const date = read_date(text);
        REQUIRE(date);
        CHECK(date->years == YearRange{1400 + from, 1400 + to});
        CHECK(date->unread.empty());
      }
  check({{"saec. XV ex.", {1451, 1500}},
         {"s. XV in.", {1401, 1450}},
         {"saec. XV med.", {1426, 1475}},
         {"first quarter of the 18th century", {1701, 1725}},
         {"2e moitié du XVIIIe siècle", {1751, 1800}}});
  CHECK((*read_date("18th century, early 19th century")).years == YearRange{1701, 1850});
}

TEST_CASE("years in two calendars are one") { // year 1 of the Republic began in September 1792; the form: no source
  check({{"1786 (1201 H.)", 1786},
         {"[17]98, an VI", 1798, "s"},
         {"an XII-1804", 1804},
         {"An VII, 1799", 1799},
         {"1799, an VII", 1799},
         {"1799 (an VII)", 1799},
         {"an VII-1799", 1799},
         {"an IX-XI", {1800, 1803}}});
  auto const other = read_date("an VII, 1810"); // not the same year
  REQUIRE(other);
  REQUIRE(other->warnings().size() == 1);
  CHECK(other->warnings()[0].problem == Problem::several_dates);
}

TEST_CASE("the year of the colophon beside that of the title, and of a preface") { // common practice, no source
  for (std::string const place : {"colophon", "colophon:", "Kolophon", "col.", "at end:", "title-page", "half-title"})
    for (auto const& text : {"1607 (" + place + " 1608)", "1607 [" + place + " 1608]", "MDCVII (" + place + " MDCVIII)",
                             "1607, " + place + " 1608", "1607 (" + place + " [1608])", "1607 " + place + " (1608)"}) {
      CAPTURE(text);
      auto const date = read_date(text);
      REQUIRE(date);
      CHECK(date->years == YearRange{1607, 1608}); // both are stated
      CHECK(date->unread.empty());
      REQUIRE(date->warnings().size() == 1);
      CHECK(date->warnings()[0].problem == Problem::several_dates);
    }
  for (std::string const place : {"colophon", "in colophon", "in the colophon", "on title page", "at end", "in fine",
                                  "im Kolophon", "nel colophon", "en el colofón", "col."})
    for (auto const& text :
         {"1607 (1608 " + place + ")", "1607 (1608, " + place + ")", "1607 [1608 " + place + "]", "1607, 1608 " + place,
          "1607 (1608 (" + place + "))", "1607; 1608 (" + place + ")", "MDCVII (MDCVIII " + place + ")"}) {
      CAPTURE(text);
      auto const date = read_date(text);
      REQUIRE(date);
      CHECK(date->years == YearRange{1607, 1608});
      CHECK(date->unread.empty());
      REQUIRE(date->warnings().size() == 1);
      CHECK(date->warnings()[0].problem == Problem::several_dates);
    }
  for (std::string const text : {"1605 in preface, 1607", "1605 (preface), 1607", "1607, 1605 in preface",
                                 "preface 1605, title 1607", "1607 (1605 in the dedication)"}) {
    CAPTURE(text);
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1607});
    CHECK(date->warnings().empty());
  }
  // a correction corrects whatever stands before it
  for (std::string const text : {"1607 [i.e. 1670]", "1607 (i.e. 1670)", "1607 [= 1670]",
                                 "1607 (colophon: 1670) [i.e. 1670]", "1607 [i.e. 1670, in colophon]"}) {
    CAPTURE(text);
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1670});
    CHECK(date->corrected);
    CHECK(date->warnings().size() == (text.find("(colophon") == text.npos ? 0U : 1U));
  }
  for (std::string const part : {"preface", "dedication dated", "privilege", "Vorrede", "imprimatur"})
    for (auto const& text : {"1607 (" + part + " 1605)", "1607 [" + part + " 1605]", "1607, " + part + " 1605"}) {
      CAPTURE(text);
      auto const date = read_date(text);
      REQUIRE(date);
      CHECK(date->years == YearRange{1607});
      CHECK(date->warnings().empty());
      REQUIRE(date->unread.size() == 1);
      CHECK(date->unread[0].of(text) == part + " 1605");
    }
}

TEST_CASE("words for our era, and other ways of writing two years or a bound") { // common practice, no source
  for (std::string const text :
       {"A.D. 1607", "AD 1607", "A. D. 1607", "1607 A.D.", "1607 AD", "1607 CE", "1607 n. Chr."}) {
    CAPTURE(text);
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{1607});
    CHECK(date->unread.empty());
  }
  check({{"[1607 or 8]", {1607, 1608}, "s"},
         {"[1609 or 10]", {1609, 1610}, "s"},
         {"[not later than 1480]", {1430, 1480}, "so"},
         {"[not earlier than 1480]", {1480, 1530}, "so"},
         {"1607 o 8 maggio", 1607}});
}
