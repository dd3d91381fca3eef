// SPDX-License-Identifier: MIT
// The layer of input and output that the example programs share.
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/write_formula.hpp>
#include <bifolium/leaf/write_signature.hpp>

#include "support/answers.hpp"
#include "support/arguments.hpp"
#include "support/decimal.hpp"
#include "support/input.hpp"
#include "support/leaf_told.hpp"
#include "support/looked_at.hpp"
#include "support/observed.hpp"
#include "support/shown.hpp"
#include "support/tsv.hpp"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <cstdlib>
#include <doctest/doctest.h>
#include <map>
#include <new>
#include <optional>
#include <random>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

using namespace support;

namespace {
thread_local std::optional<int> pieces_left; // of memory that this thread still gets; no value: as many as it asks for
}

void* operator new(std::size_t size) {
  if (pieces_left && (*pieces_left)-- <= 0) throw std::bad_alloc{};
  auto* const place = std::malloc(size == 0 ? 1 : size);
  if (place == nullptr) throw std::bad_alloc{};
  return place;
}
void operator delete(void* at) noexcept { std::free(at); }
void operator delete(void* at, std::size_t) noexcept { std::free(at); }

namespace {

/// A text in pieces as a pipe may give them.
class Pieces : public Source {
  std::string text_;
  std::size_t at_{};
  std::mt19937 draw_;
  std::size_t most_;

public:
  Pieces(std::string text, std::uint32_t seed, std::size_t most) : text_{std::move(text)}, draw_{seed}, most_{most} {}
  std::size_t read(char* to, std::size_t room) override {
    auto const taken = text_.substr(at_).copy(to, std::min(room, 1 + draw_() % most_));
    at_ += taken;
    return taken;
  }
};
std::vector<std::string> lines_of(Source& source, InputLimits limits = {}) {
  std::vector<std::string> all;
  for (Lines lines{source, limits}; lines.next();) {
    all.push_back(lines.too_long() ? "(too long)" : lines.text());
    CHECK(lines.number() == all.size());
  }
  return all;
}
std::vector<std::string> lines_of(std::string_view text, InputLimits limits = {}) {
  TextSource source{text};
  return lines_of(source, limits);
}
using Texts = std::vector<std::string>;

} // namespace

TEST_CASE("lines end as on any system, and a mark of byte order is no text") {
  CHECK(lines_of("").empty());
  CHECK(lines_of("a") == Texts{"a"});
  CHECK(lines_of("a\nb\n") == Texts{"a", "b"});
  CHECK(lines_of("a\n\nb") == Texts{"a", "", "b"});
  CHECK(lines_of("a\r\nb\r\n") == Texts{"a", "b"});
  CHECK(lines_of("a\rb\r") == Texts{"a", "b"});
  CHECK(lines_of("a\r\rb") == Texts{"a", "", "b"});
  CHECK(lines_of("a\nb\rc\n") == Texts{"a", "b\rc"}); // the first line decides: this CR is a character
  CHECK(lines_of("a\rb\nc\r\nd") == Texts{"a", "b", "c", "d"});
  CHECK(lines_of("\xEF\xBB\xBF"
                 "a\n") == Texts{"a"});
  CHECK(lines_of("a\n\xEF\xBB\xBF"
                 "b") == Texts{"a", "\xEF\xBB\xBF"
                                    "b"}); // only before the first
}

TEST_CASE("lines are the same however their bytes come") {
  std::mt19937 draw{2024};
  for (int round = 0; round < 2000; ++round) {
    std::string text;
    auto const* const ends = round % 3 == 0 ? "\r\n" : round % 3 == 1 ? "\n" : "\r";
    for (auto lines = draw() % 6; lines > 0; --lines) {
      for (auto letters = draw() % 9; letters > 0; --letters) text += static_cast<char>('a' + draw() % 3);
      text += ends;
    }
    CAPTURE(text);
    InputLimits const limits{draw() % 2 == 0 ? std::size_t{5} : std::size_t{100}};
    auto const whole = lines_of(text, limits);
    for (std::size_t most : {1U, 2U, 7U}) {
      Pieces pieces{text, static_cast<std::uint32_t>(round), most};
      CHECK(lines_of(pieces, limits) == whole);
    }
  }
}

TEST_CASE("a line over the limit is told with its bytes, and not kept") {
  std::string const text = "abc\n" + std::string(100'000, 'x') + "\nabc\n";
  CHECK(lines_of(text, {3}) == Texts{"abc", "(too long)", "abc"});
  CHECK(lines_of("abcd\nabc", {3}) == Texts{"(too long)", "abc"});
  CHECK(lines_of("abc\r\nabcd\r\n", {4})[0] == "abc");
  TextSource source{text};
  Lines lines{source, {10}};
  REQUIRE(lines.next());
  REQUIRE(lines.next());
  CHECK(lines.length_told() == "line 2 has 100000 bytes, more than the limit of 10 (--longest-line)");
  CHECK(lines.text().capacity() < 100);
}

TEST_CASE("UTF-16 and UTF-32 are named and refused") {
  auto const refused = [](std::string const& text) -> std::string {
    try {
      lines_of(text);
    } catch (Failure const& failure) {
      return failure.what();
    }
    return "";
  };
  using namespace std::string_literals;
  CHECK(refused("\xFF\xFE"
                "a\0"s) == "the input is UTF-16: give it as UTF-8");
  CHECK(refused("\xFE\xFF\0a"s) == "the input is UTF-16: give it as UTF-8");
  CHECK(refused("a\0b\0"s) == "the input is UTF-16: give it as UTF-8");
  CHECK(refused("\0a\0b"s) == "the input is UTF-16: give it as UTF-8");
  CHECK(refused("\xFF\xFE\0\0a\0\0\0"s) == "the input is UTF-32: give it as UTF-8");
  CHECK(refused("\0\0\xFE\xFF\0\0\0a"s) == "the input is UTF-32: give it as UTF-8");
  CHECK(refused("a\0\0\0b\0\0\0"s) == "the input is UTF-32: give it as UTF-8");
  CHECK(refused("\xC3\xA9 a").empty());
  CHECK(refused("a").empty());
}

TEST_CASE("cells are those of the line, as many as the header has and one more") {
  Header const header{" a \tb\tc"};
  CHECK(header.names() == Cells{"a", "b", "c"});
  CHECK(header.cells("1\t2\t3") == Cells{"1", "2", "3"});
  CHECK(header.cells("1") == Cells{"1"});
  CHECK(header.cells("") == Cells{""});
  CHECK(header.cells("\t\t") == Cells{"", "", ""});
  CHECK(header.cells("1\t2\t3\t4\t5") == Cells{"1", "2", "3", "4\t5"});
  CHECK(too_wide(header.cells("1\t2\t3\t4\t5"), 3) == "the row has 5 cells and the header 3");
  CHECK(too_wide(header.cells("1\t2\t3"), 3).empty());
  CHECK(fitted(header.cells("1\t2\t3\t4"), 3) == "1\t2\t3");
  CHECK(fitted(header.cells("1"), 3) == "1\t\t");
  CHECK_THROWS_AS(Header{std::string(most_columns + 1, '\t')}, Failure);
  // a gigabyte of tabs is no gigabyte of cells
  CHECK(header.cells(std::string(100'000, '\t')).size() == 4);
}

TEST_CASE("a column that is added has a name of its own") {
  // every subset of some names in the table, and the same names added
  Cells const names{"format", "format_2", "sheet", "why"};
  for (unsigned set = 0; set < 16; ++set) {
    std::string line = "shelfmark";
    for (std::size_t i = 0; i < names.size(); ++i)
      if (set & 1U << i) line += "\t" + names[i];
    Header const header{line};
    auto const added = split(added_columns(header, "format\tsheet\twhy"));
    REQUIRE(added.size() == 3);
    auto all = header.names();
    all.insert(all.end(), added.begin(), added.end());
    std::sort(all.begin(), all.end());
    CHECK(std::adjacent_find(all.begin(), all.end()) == all.end());
    CHECK(added[0] == (!(set & 1U) ? "format" : set & 2U ? "format_3" : "format_2"));
    CHECK(added[1] == (set & 4U ? "sheet_2" : "sheet"));
    CHECK(added[2] == (set & 8U ? "why_2" : "why"));
  }
}

TEST_CASE("a table without a column that is read is refused") {
  Cells const known{"height_mm", "year"};
  CHECK_NOTHROW(tell_columns(Header{"x\tyear"}, known));
  for (auto const* header : {"", "x", "x\ty", "height_mm,year", "height_mm;year", "height_mm|year", "Height_mm\tYear"})
    CHECK_THROWS_AS(tell_columns(Header{header}, known), Failure);
  CHECK(other_separator(Header{"height_mm,year"}) == ",");
  CHECK(other_separator(Header{"height_mm;year"}) == ";");
  CHECK(other_separator(Header{"height_mm|year"}) == "|");
  CHECK(other_separator(Header{"height_mm"}).empty());
  CHECK(other_separator(Header{"a,b\tc"}).empty());
}

TEST_CASE("a measure with its unit is the same evidence as the number in a column of that unit") {
  using Row = std::map<std::string, std::string>;
  struct Measures { // in thousandths of a millimetre; -1 where there is none
    long height, width, type_height, rounded_up_to;
    bifolium::MeasureOf of;
    bool operator==(Measures const&) const = default;
  };
  auto const read = [](Row const& row) {
    Wrong wrong, doubts;
    auto const seen = read_seen(
        [&](std::string_view name) {
          auto const at = row.find(std::string{name});
          return at == row.end() ? std::string{} : at->second;
        },
        wrong, doubts);
    CHECK(wrong.empty());
    auto const exact = [](bifolium::OptionalLength const& length) {
      return length ? std::lround(length->count() * 1000) : -1;
    };
    return Measures{exact(seen.height), exact(seen.width), exact(seen.type_height), exact(seen.rounded_up_to), seen.of};
  };
  for (int mm = 60; mm < 500; mm += 7)
    for (char const* other : {"", "width"}) { // the height alone, or with a width in the same unit
      auto const rows = [&](std::string const& number, std::string const& unit) {
        Row told{{"height", number + " " + unit}}, plain{{"height_" + unit, number}};
        if (*other) told["width"] = number + unit, plain["width_" + unit] = number;
        CHECK(read(told) == read(plain));
        auto both = told; // the column of the unit is read first
        both["height_mm"] = "201", plain = {{"height_mm", "201"}};
        if (*other) plain["width"] = both["width"];
        CHECK(read(both) == read(plain));
      };
      rows(std::to_string(mm), "mm");
      rows(std::to_string(mm / 10), "cm");
      rows(std::to_string(mm / 10) + "." + std::to_string(mm % 9 + 1), "cm");
    }
  CHECK(read({{"type_height", "14.5 cm"}}) == read({{"type_height_mm", "145"}}));
  CHECK(read({{"height", "7 1/2 in"}}) == read({{"height_mm", "190.5"}}));
  CHECK(read({{"height", "20 cm"}}) == Measures{200'000, -1, -1, 10'000, bifolium::MeasureOf::either});
  CHECK(read({{"height", "200 mm"}}) == Measures{200'000, -1, -1, 0, bifolium::MeasureOf::leaf});
}

TEST_CASE("under 10 cm a size is recorded in millimetres only where it was measured so") {
  using bifolium::millimetres;
  for (int mm = 50; mm < 100; ++mm) {
    bifolium::LeafEvidence seen{.height = millimetres{static_cast<double>(mm)}};
    CHECK(recorded(seen, std::nullopt, std::nullopt) == std::to_string(mm) + " mm");
    if (mm % 10 != 0) continue;
    seen.rounded_up_to = millimetres{10};
    CHECK(recorded(seen, std::nullopt, std::nullopt) == std::to_string(mm / 10) + " cm");
    seen.width = millimetres{static_cast<double>(mm + 20)}; // broader than high
    CHECK(recorded(seen, std::nullopt, std::nullopt) ==
          std::to_string(mm / 10) + " x " + std::to_string(mm / 10 + 2) + " cm");
  }
}

TEST_CASE("a fraction in a cell is exact, or has a point") {
  CHECK(in_cell({39, 4}, false) == "9 3/4");
  CHECK(in_cell({39, 4}, true) == "9.75");
  CHECK(in_cell({5, 3}, true) == "1.666667");
  CHECK(in_cell(12, true) == "12");
  CHECK(in_cell(0, true) == "0");
  CHECK(in_cell({1, 10'000'000}, true) == "0");
  CHECK(in_cell({19'999'999, 10'000'000}, true) == "2");
  CHECK(in_cell(1200, true) == "1200");
}

TEST_CASE("an empty line is a row of a table of one column only") {
  for (bool wide : {false, true}) {
    std::string const text = wide ? "a\tb\n1\t2\n\n\t\n \n3\t4\n" : "a\n1\n\n2\n";
    TextSource source{text};
    Lines lines{source};
    Header const header{header_line(lines)};
    Texts rows;
    while (next_row(lines, header)) rows.push_back(lines.text());
    CHECK(rows == (wide ? Texts{"1\t2", "\t", " ", "3\t4"} : Texts{"1", "", "2"}));
  }
  TextSource none{"\n\n"};
  Lines lines{none};
  CHECK_THROWS_AS(header_line(lines), Failure);
}

TEST_CASE("a name almost known is recognised, and others are not") {
  Cells const known{"height_mm", "width_mm", "year", "overs_percent", "chain_lines", "place"};
  auto const meant = [&](char const* name) { return name_meant(name, known).value_or("-"); };
  CHECK(meant("Height_mm") == "height_mm");
  CHECK(meant("height mm") == "height_mm");
  CHECK(meant("HEIGHT-MM") == "height_mm");
  CHECK(meant("heigth_mm") == "height_mm");
  CHECK(meant("height") == "height_mm");
  CHECK(meant("overs") == "overs_percent");
  CHECK(meant("chainlines") == "chain_lines");
  CHECK(meant("h\xD0\xB5ight_mm") == "height_mm"); // a Cyrillic letter
  CHECK(meant("years") == "year");
  CHECK(meant("yaer") == "year"); // two letters exchanged
  CHECK(meant("date") == "year"); // another word for it
  CHECK(meant("Place of publication") == "place");
  CHECK(meant("collation") == "-"); // a formula is not among these
  for (auto const* other : {"title", "note", "shelfmark", "author", "id", "", "text", "copies"})
    CHECK(meant(other) == "-");
}

TEST_CASE("what a terminal would obey or hide is named by its code point") {
  CHECK(shown("plain text, A\xE2\x81\xB8 \xCF\x80") == "plain text, A\xE2\x81\xB8 \xCF\x80");
  CHECK(shown("\x1B[2J") == "<U+001B>[2J");
  CHECK(shown("a\tb\nc\r") == "a<U+0009>b<U+000A>c<U+000D>");
  CHECK(shown(std::string_view{"\0", 1}) == "<U+0000>");
  CHECK(shown("\x7F") == "<U+007F>");
  CHECK(shown("\xC2\x9B") == "<U+009B>");     // a control character of one code point and two bytes
  CHECK(shown("\xE2\x80\xAE") == "<U+202E>"); // text runs from right to left after it
  CHECK(shown("\xE2\x80\x8B") == "<U+200B>"); // no width
  CHECK(shown("\xEF\xBB\xBF") == "<U+FEFF>");
  CHECK(shown("h\xD0\xB5ight") == "h\xD0\xB5<U+0435>ight"); // looks like e
  CHECK(shown("\xEF\xBC\xA1"
              "bc \xEF\xBC\xA1") == "\xEF\xBC\xA1<U+FF21>bc \xEF\xBC\xA1");
  CHECK(shown("А⁸, аз и буки") == "А⁸, аз и буки"); // letters of one alphabet are no others in disguise
  CHECK(shown("\xFF\xFE") == "<byte FF><byte FE>");
  CHECK(shown("\xC3") == "<byte C3>");
  CHECK(shown("\xED\xA0\x80") == "<byte ED><byte A0><byte 80>"); // a surrogate is no character
  CHECK(shown("\xF4\x90\x80\x80") == "<byte F4><byte 90><byte 80><byte 80>");
  // whatever is in it, no control character comes through
  std::mt19937 draw{7};
  for (int round = 0; round < 500; ++round) {
    std::string text;
    for (int i = 0; i < 30; ++i) text += static_cast<char>(draw() % 256);
    for (char c : shown(text)) CHECK_FALSE((static_cast<unsigned char>(c) < 0x20 || c == 0x7F));
  }
}

TEST_CASE("a formula in any alphabet is an answer that is read again") {
  std::vector<bifolium::Signature> all{bifolium::Signature::pi(), bifolium::Signature::chi()};
  bifolium::Letters const every{true, true, true};
  for (std::uint32_t multiple = 1; multiple <= 2; ++multiple) {
    for (char letter = 'A'; letter <= 'Z'; ++letter)
      for (char const one : {letter, static_cast<char>(letter - 'A' + 'a')})
        all.push_back(bifolium::Signature::letter(one, multiple, every));
    for (bool const capital : {false, true}) {
      for (int place = 1; place <= bifolium::greek_letters; ++place)
        if (capital || (place != 16 && place != 22)) // π and χ mean gatherings without a mark
          all.push_back(bifolium::Signature::greek(place, capital, multiple));
      for (int place = 1; place <= bifolium::cyrillic_letters; ++place)
        all.push_back(bifolium::Signature::cyrillic(place, capital, multiple));
    }
  }
  for (std::uint32_t figure = 1; figure <= bifolium::highest_hebrew; ++figure)
    all.push_back(bifolium::Signature::hebrew(figure));
  bifolium::Dialect dialect;
  dialect.letters = every;
  for (auto const& one : all) {
    std::string const name{to_text(one).view()};
    auto const text = "8°: " + name + "⁸ " + name + "²";
    CAPTURE(text);
    auto const formula = bifolium::read_formula(text, dialect);
    REQUIRE(formula);
    CHECK((formula->leaves() == 10 && formula->runs()[0].first == one));
    auto const cell = data_cell(bifolium::write_formula(*formula));
    CHECK(cell.find('<') == cell.npos);
    auto const again = bifolium::read_formula(cell, dialect);
    REQUIRE(again);
    CHECK((again->runs() == formula->runs() && again->leaves() == 10));
  }
  CHECK(data_cell("A⁸(a\tb\x1B[2J\xE2\x80\xAE) ב\xE2\x80\x8E⁸") == "A⁸(a b<U+001B>[2J<U+202E>) ב\xE2\x80\x8E⁸");
}

TEST_CASE("options take numbers in their range, and nothing else") {
  auto const asked = [](std::vector<std::string> words) {
    std::vector<char*> pointers{words[0].data()};
    for (auto& word : words) pointers.push_back(word.data());
    Arguments given{static_cast<int>(pointers.size()), pointers.data(), {"--flag"}, {"--longest-line"}};
    return given.input_limits().line_bytes;
  };
  CHECK(asked({"--flag"}) == std::size_t{16} * 1024 * 1024);
  CHECK(asked({"--longest-line", "7"}) == 7);
  CHECK(asked({"--longest-line", "7", "--longest-line", "8"}) == 8);
  CHECK(asked({"--longest-line=7"}) == 7);
  CHECK(asked({"--longest-line=7=8"}) == std::size_t{16} * 1024 * 1024);
  for (auto const* wrong : {"0", "-1", "7x", "", "99999999999999999999", "1e3"})
    CHECK(asked({"--longest-line", wrong}) == std::size_t{16} * 1024 * 1024);
}

TEST_CASE("work is done once each, on however many threads, and what a thread throws is thrown to its caller") {
  for (std::size_t threads : {1U, 2U, 5U}) {
    std::vector<std::atomic<int>> done(1000);
    share_out(done.size(), threads, [&](std::size_t i) { ++done[i]; });
    for (auto const& one : done) CHECK(one == 1);
    CHECK_THROWS_AS(share_out(1000, threads,
                              [](std::size_t i) {
                                if (i == 700) throw std::runtime_error{"no"};
                              }),
                    std::runtime_error);
  }
}

TEST_CASE("work is done, or memory is told to be missing, wherever it ends while threads are started") {
  for (std::size_t threads : {1U, 2U, 5U}) {
    int failures = 0;
    for (int pieces = 0; pieces < 20; ++pieces) {
      CAPTURE(threads);
      CAPTURE(pieces);
      std::vector<std::atomic<int>> done(1000);
      bool told = false;
      try {
        pieces_left = pieces;
        share_out(done.size(), threads, [&](std::size_t i) { ++done[i]; });
        pieces_left.reset();
      } catch (std::bad_alloc const&) {
        pieces_left.reset();
        told = true, ++failures;
      }
      bool const whole = std::all_of(done.begin(), done.end(), [](auto const& one) { return one == 1; });
      CHECK(whole != told);
    }
    CHECK(failures <= 1); // a place for the threads is all that it needs
  }
}

TEST_CASE("the form of an input is recognised after any blanks, however its bytes come, and no byte is lost") {
  struct Form {
    std::string text;
    bool xml, exchange;
  };
  // the leader of a record of MARC 21, as the Library of Congress describes it (MARC 21 Record Structure)
  Form const forms[]{{"formula\tpagination\nA8\t16 p.\n", false, false},
                     {"\tformula\n1\tA8\n", false, false},
                     {"1\n2\n", false, false},
                     {"<?xml version='1.0'?><collection/>", true, false},
                     {"<record/>", true, false},
                     {"00286nam a2200085 i 4500001000700000", false, true},
                     {"00286nam a2200085 i 4500", false, true},
                     {"00286nam a2200085 i", false, false}, // no whole leader
                     {"", false, false}};
  std::string const blanks[]{"", "\n", "\r\n", "\r", " ", "\t", " \t\n\n  ", std::string(5000, '\n')};
  for (auto const& form : forms)
    for (std::string const mark : {"", "\xEF\xBB\xBF"})
      for (auto const& blank : blanks)
        for (std::size_t most : {1U, 2U, 7U, 100'000U}) {
          auto const before = mark + blank;
          auto const text = before + form.text;
          CAPTURE(text);
          CAPTURE(most);
          for (bool const passed_over : {false, true}) {
            Pieces pieces{text, 7, most};
            LookedAt source{pieces};
            CHECK(source.is_xml() == form.xml);
            CHECK(source.is_exchange() == form.exchange);
            auto given = text;
            if (passed_over) {
              source.pass_over_blanks();
              auto const start = text.find_first_not_of(" \t\r\n", mark.size());
              given = start == text.npos ? "" : text.substr(start);
            }
            std::string read;
            char room[64];
            while (auto const taken = source.read(room, sizeof room)) read.append(room, taken);
            CHECK(read == given);
          }
        }
  for (std::string const unit : {"\n", "\r\n", " ", "\t", " \t\r\n"})
    for (auto const& form : forms) {
      std::string text;
      while (text.size() < (std::size_t{2} << 20U)) text += unit;
      text += form.text;
      TextSource source{text};
      CHECK_THROWS_WITH_AS(LookedAt{source},
                           "the input begins with more than 1048576 blanks, so its form cannot be recognised", Failure);
    }
}

TEST_CASE("questions asked before are answered alike, whatever was forgotten in between") {
  std::string text = "key\ta\n";
  std::string expected;
  for (int i = 0; i < 30'000; ++i) {
    auto const cell = std::to_string(i * 7919 % 4001) + std::string(static_cast<std::size_t>(i % 50), 'x');
    text += std::to_string(i) + "\t" + cell + "\n";
    expected += std::to_string(i) + "\t" + cell + "\t<" + cell + ">\n";
  }
  TextSource source{text};
  Lines lines{source};
  Header const header{header_line(lines)};
  std::ostringstream out;
  Answers answers{header, {"a"}, 2, [](Question const& question) { return "<" + question.cell("a") + ">"; }};
  answers.write(lines, out);
  CHECK(out.str() == expected);
}
