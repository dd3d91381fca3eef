// SPDX-License-Identifier: MIT
// Roman numerals of title pages in all their spellings, made by rules. The spellings: CCCC, XXXX, XXC, LXXXX, VIX, IC and
// the apostrophus are listed at cool.culturalheritage.org and in Spofford, A Book for All Readers (1900); IIIIXX for 80 is
// French quatre-vingts (common practice, no source), as in M iiii c iiii xx V iij for 1488
// (tasacionyvaloracionlibros.com).
#include <bifolium/core/printed_numeral.hpp>
#include <bifolium/core/read_date.hpp>

#include "check.hpp"

#include <map>
#include <string>
#include <vector>

using namespace bifolium;

namespace {
std::string repeated(std::string const& letter, int times) {
  std::string all;
  for (int i = 0; i < times; ++i) all += letter;
  return all;
}
/// The usual spelling of the tens and units, with four of a letter or with one taken away.
std::string below_hundred(int number, bool fours) {
  std::string text;
  for (auto const& [one, five, ten, worth] : {std::tuple{"X", "L", "C", 10}, std::tuple{"I", "V", "X", 1}}) {
    int const digit = number / worth % 10;
    if (digit % 5 == 4 && !fours)
      text += std::string{one} + (digit == 9 ? ten : five);
    else
      text += (digit >= 5 ? five : "") + repeated(one, digit % 5);
  }
  return text;
}
/// What can stand after the hundreds, with its value.
std::map<std::string, int> spellings() {
  std::map<std::string, int> tens, units, all;
  for (int n = 0; n < 10; ++n)
    for (bool const fours : {false, true}) {
      tens[below_hundred(10 * n, fours)] = 10 * n;
      units[below_hundred(n, fours)] = n;
    }
  tens["XXL"] = 30, tens["XXC"] = 80, tens["IIIIXX"] = 80;
  units["IIX"] = 8, units["IIV"] = 3;
  for (auto const& [ten, a] : tens)
    for (auto const& [unit, b] : units) all[ten + unit] = a + b;
  // the Latin sedecim, septemdecim, undeviginti
  for (auto const& [ten, a] : tens) {
    if (a < 50 && a % 10 == 0 && ten.find('L') == ten.npos) {
      all[ten + "VIX"] = a + 16, all[ten + "VIIX"] = a + 17, all[ten + "VIIIX"] = a + 18;
      all[ten + "IXX"] = a + 19, all[ten + "IIXX"] = a + 18;
    }
    if (ten.starts_with('L') && a < 80) all[ten + "VIX"] = a + 16, all[ten + "VIIX"] = a + 17;
  }
  return all;
}
std::optional<int> year_of(std::string const& text) {
  auto const date = read_date(text);
  if (!date || !date->years || !date->years->is_one_year()) return std::nullopt;
  return date->years->from;
}
} // namespace

TEST_CASE("every year in the spellings of title pages, with points and blanks") {
  for (int year = 1450; year < 2000; ++year) {
    int const hundreds = year / 100 % 10, rest = year % 100;
    for (bool const fours : {false, true}) {
      std::vector<std::string> const heads =
          hundreds == 4 ? std::vector<std::string>{"M.CCCC", "MCCCC", "MCD", "M. iiii c"}
          : hundreds == 9
              ? std::vector<std::string>{"MCM", "M.CM", "MDCCCC"}
              : std::vector<std::string>{"M.D" + repeated(".C", hundreds - 5), "MD" + repeated("C", hundreds - 5)};
      for (auto const& head : heads)
        for (std::string const between : {"", ".", ". ", " "}) {
          if (head.back() == 'c' && between.empty()) continue;
          auto const tail = below_hundred(rest, fours);
          auto const text = tail.empty() ? head : head + between + tail;
          CAPTURE(text);
          CHECK(year_of(text) == year);
        }
      if (rest >= 80) {
        auto const tail = below_hundred(rest - 80, fours);
        for (auto const& head : heads)
          if (head.back() != 'c')
            for (auto const& score : {head + ".IIIIXX." + tail, head + "IIIIXX" + tail, head + ". iiij xx " + tail,
                                      head + ".iiij.xx." + tail, head + ". IIII. XX. " + tail}) {
              CAPTURE(score);
              CHECK(year_of(score) == year);
            }
      }
    }
  }
}

TEST_CASE("a numeral of which nobody knows the reading is not a year") {
  auto const known = spellings();
  std::string const letters = "IVXLC";
  std::vector<std::string> row{""};
  for (std::size_t from = 0, length = 1; length <= 5; ++length) {
    auto const to = row.size();
    for (; from < to; ++from)
      for (char const letter : letters) row.push_back(row[from] + letter);
  }
  for (auto const& tail : row) {
    auto const text = "MD" + tail;
    auto const read = year_of(text);
    auto const at = known.find(tail);
    CAPTURE(text);
    if (at != known.end()) CHECK(read == 1500 + at->second);
    // four of a letter are never taken away, letters of five never stand twice, and none is taken from its double
    for (std::string const never : {"IIIIV", "IIIIL", "IIIV", "IIIL", "XXXL", "XXXXL", "XXXC", "VV",  "LL",  "VX",
                                    "VIL",   "VIIL",  "XVL",  "XIL",  "XIIL", "LXC",   "IVI",  "IXI", "XCX", "XLX"})
      if (tail.find(never) != tail.npos) CHECK_FALSE(read);
  }
  for (std::string const text : {"MDCXXXVIIL", "MDCXVIIL", "M.D.C.XVIIL", "M. D. IIIX", "MDLC", "MDDC", "M.D.IIIXX"}) {
    CAPTURE(text);
    CHECK_FALSE(read_date(text));
  }
}

TEST_CASE("the turned C is typed in many ways") { // CIƆ IƆ: Spofford; the typed forms: common practice, no source
  struct Typed {
    std::string thousand, five_hundred;
  };
  for (int year = 1501; year < 1800; ++year) {
    int const hundreds = year / 100 % 10 - 5;
    for (auto const& [thousand, five_hundred] :
         {Typed{"CIƆ", "IƆ"}, Typed{"cIɔ", "Iɔ"}, Typed{"CI)", "I)"}, Typed{"CIO", "IO"}, Typed{"cIo", "Io"},
          Typed{"cio", "io"}, Typed{"CIC", "IC"}, Typed{"clɔ", "lɔ"}, Typed{"C|Ɔ", "|Ɔ"}, Typed{"(I)", "I)"},
          Typed{"∞", "D"}, Typed{"ↀ", "D"}})
      for (std::string const between : {".", " ", ". "}) {
        bool const small = thousand[0] == 'c';
        auto const head = thousand + between + five_hundred;
        auto const hundred = repeated(small ? "c" : "C", hundreds);
        for (auto const& text :
             {head + between + hundred + (hundreds > 0 ? between : "") + below_hundred(year % 100, true),
              head + hundred + between + below_hundred(year % 100, false)}) {
          CAPTURE(text);
          CHECK(year_of(text) == year);
        }
      }
  }
  CHECK(year_of("MDIC") == 1599); // no turned C: the numeral does not begin with one
  for (std::string const text : {"CIO", "IO C VII", "Io.C", "CIC", "IOC VII"}) {
    CAPTURE(text);
    CHECK_FALSE(read_date(text));
  }
}

TEST_CASE(
    "the number after a blank is the day, if a month follows a numeral without blanks") { // common practice, no source
  struct Day {
    std::string text;
    int year;
  };
  for (auto const& [text, year] :
       {Day{"MDL. XII. Maii", 1550}, Day{"MDL. XII Maii", 1550}, Day{"M.D.C.V. XX Maii", 1605},
        Day{"MDX. V. Kal. Maii", 1510}, Day{"MDXC. VI. Idus Martias", 1590}, Day{"MDCC. VI. id. Julii", 1700},
        Day{"MDLXXX. IIII. Non. Aprilis", 1580}, Day{"die XII. Maii MDL", 1550}, Day{"MDL Maii XII", 1550},
        // the blank divides the year itself
        Day{"M D L XX. Venetiis", 1570}, Day{"MDC LXXII. Amstelodami", 1672}, Day{"M. DC. LXVII. Aug.", 1667}}) {
    CAPTURE(text);
    CHECK(year_of(text) == year);
  }
  // where all parts stand apart alike, the last can be the day, and nobody can tell: both years are given, with a doubt. Days
  // before the Kalends go to XIX, before the Nones to VI, before the Ides to VIII (the calendar of the Romans), of a month
  // to 31
  struct DayOrYear {
    std::string text;
    YearRange years;
  };
  for (auto const& [text, years] : {DayOrYear{"M. D. X. V. Kal. Maii", {1510, 1515}},
                                    DayOrYear{"M.D.X.V. Kal. Maii", {1510, 1515}},
                                    DayOrYear{"M D X V Kal. Maii", {1510, 1515}},
                                    DayOrYear{"M. D. X. V. Non. Maii", {1510, 1515}},
                                    DayOrYear{"M. D. X. V. Id. Maii", {1510, 1515}},
                                    DayOrYear{"M. D. X. V. Idus Maii", {1510, 1515}},
                                    DayOrYear{"M. D. X. V. Maii", {1510, 1515}},
                                    DayOrYear{"M. D. X. X. V. Kal. Maii", {1520, 1525}},
                                    DayOrYear{"M. D. XV. Kal. Maii", {1500, 1515}},
                                    DayOrYear{"M. D. XV. Non. Maii", 1515},
                                    DayOrYear{"M. D. XX. VIII. Idus Maii", {1520, 1528}},
                                    DayOrYear{"M. D. XX. VIII. Non. Maii", 1528},
                                    DayOrYear{"M. D. XXV. Kal. Maii", 1525},
                                    DayOrYear{"M. D. XXV. Maii", {1500, 1525}},
                                    DayOrYear{"M. D. XL. Maii", 1540},
                                    DayOrYear{"M D X L Maii", 1540},
                                    DayOrYear{"M.D.X.V. Maii", 1515},
                                    DayOrYear{"MDXV. Kal. Maii", 1515},
                                    DayOrYear{"M. D. X. V. Venetiis", 1515},
                                    DayOrYear{"M. D. X. V.", 1515}}) {
    CAPTURE(text);
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == years);
    REQUIRE(date->warnings().size() == (years.is_one_year() ? 0U : 1U));
    if (!years.is_one_year()) CHECK(date->warnings()[0].problem == Problem::year_with_day);
  }
  for (int year = 1501; year < 1900; ++year) // letters that stand apart
    for (bool const fours : {false, true}) {
      std::string apart;
      for (char const c : "MD" + repeated("C", year / 100 % 10 - 5) + below_hundred(year % 100, fours))
        apart.append(apart.empty() ? "" : " ").push_back(c);
      CAPTURE(apart);
      CHECK(year_of(apart) == year);
    }
  for (std::string const text : {"MDC. L. Torrentinus", "M.D.C. C. Barker"}) { // a number, or the initial of a name
    CAPTURE(text);
    auto const date = read_date(text);
    REQUIRE(date);
    REQUIRE(date->warnings().size() == 1);
    CHECK(date->warnings()[0].problem == Problem::year_clipped);
  }
}

TEST_CASE("numerals of printers alone, without a year") { // the spellings of the list above
  STATIC_CHECK(printed_numeral("XIIX") == PrintedNumeral{18, 4});
  STATIC_CHECK(printed_numeral("xiiij, 2").value == 14);
  STATIC_CHECK(printed_numeral("IIIIXXXII").value == 92);
  STATIC_CHECK(printed_numeral("VX").value == 0);
  STATIC_CHECK(printed_numeral("").bytes == 0);
  for (auto const& [text, value] : spellings()) {
    CAPTURE(text);
    CHECK(printed_numeral(text) == PrintedNumeral{value, text.size()});
  }
}

TEST_CASE("hundreds that a number before c multiplies, as French printers set them") { // common practice, no source
  struct Hundreds {
    std::string number;
    int value;
  };
  for (auto const& [number, value] : {Hundreds{"iiii", 400}, Hundreds{"iiij", 400}, Hundreds{"v", 500},
                                      Hundreds{"vi", 600}, Hundreds{"vj", 600}, Hundreds{"vii", 700}})
    for (bool const capitals : {false, true}) {
      if (capitals && number.back() == 'j') continue;
      auto small = number;
      for (auto& c : small) c = capitals ? capital_letter(c) : c;
      for (std::string const head : {"M", "m.", "M. ", "Mil ", "mil."})
        for (std::string const c : {"c", "^c", "ᶜ", "C"})
          for (std::string const between : {"", ".", " ", ". ", " et ", " & "})
            for (int const rest : {0, 4, 7, 34, 99}) {
              if (rest == 0 && !between.empty()) continue;
              auto const text = head + small + c + between + below_hundred(rest, true);
              CAPTURE(text);
              CHECK(year_of(text) == 1000 + value + rest);
            }
    }
  for (std::string const text :
       {"M.Vcter", "Mil", "mil quatre", "Mil D. Pedro", "mil C", "MXVc", "MIIIc", "MVcC", "Vc et vii"}) {
    CAPTURE(text);
    CHECK_FALSE(read_date(text));
  }
  // after a D the letters have their usual meaning
  CHECK(year_of("MDVC") == 1595);
  CHECK(year_of("M.D.VC") == 1595);
  // a thousand in words before hundreds
  for (std::string const word : {"Mil", "mil", "Mille", "mille", "Mill", "Millesimo", "millesimo"})
    for (int const year : {1401, 1482, 1499, 1533})
      for (std::string const between : {" ", ".", ". "}) {
        auto const hundred = year < 1500 ? "CCCC" : "D";
        auto const tail = below_hundred(year % 100, true);
        auto const text = word + between + hundred + tail;
        CAPTURE(text);
        CHECK(year_of(text) == year);
      }
}

TEST_CASE("numerals that are one character") {       // U+2160 to U+217F of the Unicode Standard: I to XII, L, C, D, M
  auto const character = [](int place, bool small) { // three bytes of UTF-8
    return std::string{"\xE2\x85"} + static_cast<char>((small ? 0xB0 : 0xA0) + place);
  };
  std::string const letters = "I...V....X..LCDM"; // the place of a letter in the row
  for (int year = 1450; year < 2000; ++year)
    for (bool const fours : {false, true})
      for (bool const small : {false, true}) {
        int const hundreds = year / 100 % 10, units = year % 10;
        auto const head = "M" + (hundreds == 4 ? std::string{"CCCC"} : "D" + repeated("C", hundreds - 5));
        std::string one, joined, apart;
        for (char const letter : head + below_hundred(year % 100, fours))
          one += character(static_cast<int>(letters.find(letter)), small);
        for (char const letter : head + below_hundred(year % 100 - units, fours)) {
          joined += character(static_cast<int>(letters.find(letter)), small);
          apart += character(static_cast<int>(letters.find(letter)), small) + " ";
        }
        if (units > 0) joined += character(units - 1, small), apart += character(units - 1, small); // Ⅷ
        CAPTURE(one);
        CHECK(year_of(one) == year);
        CHECK(year_of(joined) == year);
        CHECK(year_of(apart) == year);
        CHECK(year_of("[" + joined + "]") == year);
      }
  CHECK(year_of("ⅯⅮⅭⅫ") == 1612);
  CHECK(year_of("ↀ ⅾ ⅽ vii") == 1607);
  CHECK(year_of("ⅭⅠↃ.ⅠↃ.Ⅽ.ⅤⅡ") == 1607); // the turned C between them
  for (std::string const text : {"Ⅷ", "ⅯⅧⅤ", "ⅮⅮ"}) {
    CAPTURE(text);
    CHECK_FALSE(read_date(text));
  }
}

TEST_CASE("units taken from a hundred or from five hundred") { // constructed as MDIC and MDVC are
  CHECK(year_of("MID") == 1499);
  CHECK(year_of("MIID") == 1498);
  for (int const hundreds : {5, 6, 7})
    for (int units = 5; units <= 8; ++units) {
      auto const text = "MD" + repeated("C", hundreds - 5) + below_hundred(units, true) + "C";
      CAPTURE(text);
      CHECK(year_of(text) == 100 * hundreds + 1100 - units);
    }
  for (std::string const text : {"MIIID", "MIDI", "MXID", "Mid", "mid", "MDVICI", "MDXVIC", "ID", "Im M.D. Jar"}) {
    CAPTURE(text);
    auto const date = read_date(text);
    CHECK_FALSE((date && date->years && date->years->is_one_year() && date->years->from != 1500));
  }
}

TEST_CASE(
    "letters with full stops and blanks between take away as those with blanks do") { // common practice, no source
  for (int year = 1501; year < 1900; ++year)
    for (bool const fours : {false, true}) {
      std::string apart;
      for (char const c : "MD" + repeated("C", year / 100 % 10 - 5) + below_hundred(year % 100, fours))
        apart.append(apart.empty() ? "" : ". ").push_back(c);
      for (auto const& text : {apart, apart + ".", "[" + apart + ".]", apart + "., in 8vo"}) {
        CAPTURE(text);
        CHECK(year_of(text) == year);
      }
    }
  struct WithName {
    std::string text;
    int year;
  };
  for (auto const& [text, year] : {WithName{"M. D. X. L. Torrentinus", 1540}, WithName{"M. D. X. C. Barker", 1590}}) {
    CAPTURE(text);
    auto const date = read_date(text);
    REQUIRE(date);
    CHECK(date->years == YearRange{year});
    REQUIRE(date->warnings().size() == 1);
    CHECK(date->warnings()[0].problem == Problem::year_clipped);
  }
  CHECK(year_of("M. D. X. X. I. V. Kal. Maii") == 1521); // the fifth day, and not 24
}
