// SPDX-License-Identifier: MIT
// Formats as records state them: the terms of the RDA vocabulary of book formats (csv/termList/rdabf.csv), DCRM(B) 5D1.3,
// DCRMR 6.29; what dealers write is common practice, no source.
#include <bifolium/record/read_extent.hpp>
#include <bifolium/record/read_format_statement.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {
FormatStatement statement(std::string_view text) {
  auto const read = read_format_statement(text);
  REQUIRE_MESSAGE(read, text);
  return *read;
}
} // namespace

TEST_CASE("the terms of the vocabulary are read, and each is that fraction of the sheet") {
  struct Term {
    char const* text;
    int leaves;
  };
  for (auto const& term : {Term{"folio", 2},
                           {"2o", 2},
                           {"4to", 4},
                           {"quarto", 4},
                           {"8vo", 8},
                           {"octavo", 8},
                           {"12mo", 12},
                           {"duodecimo", 12},
                           {"twelvemo", 12},
                           {"16mo", 16},
                           {"decimo-sexto", 16},
                           {"sexto-decimo", 16},
                           {"sixteenmo", 16},
                           {"18mo", 18},
                           {"octodecimo", 18},
                           {"eighteenmo", 18},
                           {"24mo", 24},
                           {"vigesimo-quarto", 24},
                           {"vicesimo-quarto", 24},
                           {"twenty-fourmo", 24},
                           {"32mo", 32},
                           {"trigesimo-secundo", 32},
                           {"tricesimo-secundo", 32},
                           {"36mo", 36},
                           {"48mo", 48},
                           {"64mo", 64},
                           {"72mo", 72},
                           {"96mo", 96},
                           {"128mo", 128},
                           {"full-sheet", 1},
                           // dealers
                           {"in-8°", 8},
                           {"In-16°", 16},
                           {"8o", 8},
                           {"8o:", 8},
                           {"4º", 4},
                           {"in-fol.", 2},
                           {"in-12", 12},
                           {"6to", 6}}) {
    INFO(term.text);
    auto const read = statement(term.text);
    CHECK(read.formats == std::vector{Format::of(term.leaves)});
    CHECK(read.unread.empty());
    CHECK(read.paper.empty());
  }
  CHECK(statement("obl. 4to").formats == std::vector{Format::of(4, Shape::oblong)});
  CHECK(statement("1/2°").formats == std::vector{Format::part_of_sheet(2)});
}

TEST_CASE("words about the paper, gatherings, doubts and second formats") { // common practice, no source
  CHECK(statement("demy 8vo").paper == "demy");
  CHECK(statement("gr. in-8°").paper == "gr.");
  CHECK(statement("Gr.-8°").paper == "Gr.");
  CHECK(statement("small 8vo").formats == std::vector{Format::of(8)});
  CHECK(statement("4to in 8s").gatherings_of == 8);
  CHECK(statement("8° (4s)").gatherings_of == 4);
  CHECK(statement("8vo in half-sheets").gatherings_of == 4);
  CHECK(statement("12° in half sheets").gatherings_of == 6);
  CHECK(statement("24° in twelves").gatherings_of == 12);
  CHECK(statement("12mo in sixes").gatherings_of == 6);
  for (auto const& [words, leaves] : {std::pair{"in twos", 2},
                                      {"in fours", 4},
                                      {"in sixes", 6},
                                      {"in eights", 8},
                                      {"in tens", 10},
                                      {"in twelves", 12},
                                      {"in sixteens", 16},
                                      {"in 2s", 2},
                                      {"(16s)", 16}}) {
    INFO(std::string{words});
    CHECK(statement(std::string{"4to "} + words).gatherings_of == leaves);
  }
  CHECK(statement("8vo?").probable);
  CHECK(statement("4to and 8vo").formats == std::vector{Format::of(4), Format::of(8)}); // DCRM(B) 5D1.3
  constexpr std::string_view text = "8vo, uncut";
  CHECK(statement(text).unread.size() == 1);
  CHECK(read_format_statement("").error().problem == Problem::unknown_format);
  CHECK(read_format_statement("a handsome copy").error().problem == Problem::unknown_format);
}

TEST_CASE("two formats joined by a comma, a stroke or a word are both read") { // common practice, no source
  for (auto text : {"4° and 8°", "4° & 8°", "4°, 8°", "4°/8°", "4° / 8°", "4to et 8vo", "4° und 8°"}) {
    INFO(text);
    auto const read = read_format_statement(text);
    REQUIRE(read);
    REQUIRE(read->formats.size() == 2);
    CHECK(read->formats[0].leaves_to_sheet() == 4);
    CHECK(read->formats[1].leaves_to_sheet() == 8);
    CHECK(read->unread.empty());
  }
  CHECK((*read_format_statement("8vo, uncut")).formats.size() == 1);
  CHECK((*read_format_statement("12° (8/4)")).formats.size() == 1); // two sizes of gatherings
}

TEST_CASE("quer is oblong") { // German catalogues: common practice, no source
  for (auto text : {"quer-4°", "Quer-4°", "qu.-4°", "qu. 4°", "quer 4°", "obl. 4to", "oblong-4to"}) {
    INFO(text);
    auto const read = read_format_statement(text);
    REQUIRE(read);
    CHECK(read->formats[0].shape() == Shape::oblong);
    CHECK(read->formats[0].leaves_to_sheet() == 4);
    CHECK(read->paper.empty());
  }
}

TEST_CASE("a shape stands before a format or after it") { // common practice, no source
  for (auto text : {"oblong 8vo", "8vo oblong", "8vo, oblong", "8vo (oblong)", "8vo, obl.", "8° (oblong), uncut"}) {
    INFO(text);
    auto const read = read_format_statement(text);
    REQUIRE(read);
    CHECK(read->formats == std::vector{Format::of(8, Shape::oblong)});
    CHECK(read->unread.size() == (std::string_view{text}.ends_with("uncut") ? 1 : 0));
  }
  CHECK(statement("8vo, oblong leaves").unread.size() == 1);
}

TEST_CASE("words before a format that say more than its paper") { // common practice, no source
  for (auto text : {"not 8vo", "Not 8vo", "no 8vo", "neither 8vo", "kein Oktav", "nicht 8°", "non in-8°", "pas in-8"}) {
    INFO(text);
    auto const read = read_format_statement(text);
    REQUIRE(!read);
    CHECK(read.error() == error_at(Problem::format_denied, TextPlace{}, text));
  }
  for (auto text : {"8vo?", "perhaps 8vo", "probably 8vo", "prob. 8vo", "possibly small 8vo", "wohl 8°",
                    "peut-être in-8°", "vielleicht 8°", "forse in-8°", "? 8vo"}) {
    INFO(text);
    auto const read = read_format_statement(text);
    REQUIRE(read);
    CHECK(read->formats == std::vector{Format::of(8)});
    CHECK(read->probable);
    CHECK(read->unread.empty());
  }
  for (auto text : {"quart-octavo", "4to or 8vo", "octavo, quarto", "4to 8vo", "quarto octavo"}) {
    INFO(text);
    auto const read = read_format_statement(text);
    REQUIRE(read);
    CHECK(read->formats.size() + read->unread.size() == 2); // none is dropped
  }
  for (auto text : {"formerly 8vo", "called 8vo", "imitating 8vo", "formerly called 8vo", "so-called 8vo"}) {
    INFO(text);
    auto const read = read_format_statement(text);
    REQUIRE(read);
    CHECK(read->paper.empty());
    REQUIRE(read->unread.size() == 1);
    CHECK(std::string{text}.starts_with(read->unread[0].of(text)));
  }
  for (auto text :
       {"large post 8vo", "f'cap 8vo", "grand in-8°", "Lex.-8°", "kl. 8°", "p. in-8", "pott 8vo", "Demy 8vo"}) {
    INFO(text);
    auto const read = read_format_statement(text);
    REQUIRE(read);
    CHECK(!read->paper.empty());
    CHECK(read->unread.empty());
  }
}

TEST_CASE("Formats as catalogues of several countries write them") { // common practice, no source
  struct Written {
    std::string text, symbol;
  };
  std::vector<Written> rows{{"F°", "2°"},
                            {"Fº", "2°"},
                            {"f°", "2°"},
                            {"in-f°", "2°"},
                            {"in f.", "2°"},
                            {"in-f.", "2°"},
                            {"in-fol.", "2°"},
                            {"in-plano", "1°"},
                            {"half-sheet", "1/2°"},
                            {"half sheet", "1/2°"},
                            {"quarter-sheet", "1/4°"}};
  for (int const leaves : {4, 8, 12, 16, 18, 24, 32, 64}) {
    auto const n = std::to_string(leaves), symbol = n + "°";
    for (auto const& text :
         {"in " + n, "in-" + n, n + ".º", n + ".°", n + ":o", "[" + n + "°]", "[" + n + "mo]", "in " + n + "°"})
      if (text.find("mo") == text.npos || leaves > 8) rows.push_back({text, symbol});
  }
  rows.push_back({"[8vo]", "8°"}), rows.push_back({"[4to]", "4°"}), rows.push_back({"[fol.]", "2°"});
  for (auto const& [text, symbol] : rows) {
    CAPTURE(text);
    auto const read = read_format_statement(text);
    REQUIRE(read);
    REQUIRE(read->formats.size() == 1);
    CHECK(std::string{read->formats[0].symbol().view()} == symbol);
    CHECK(read->unread.empty());
  }
  CHECK((*read_format_statement("bs.")).formats[0] == Format::single_sheet());
  // words that say something else
  for (std::string const text :
       {"in 8s", "in 8 leaves", "in 4 v.", "in 1890", "in 2", "in 10", "f.", "F", "F. Smith", "[8vo", "8.", "8: o"}) {
    CAPTURE(text);
    CHECK_FALSE(read_format_statement(text));
  }
}

TEST_CASE(
    "A number of volumes is no format, and a format after one is no number of volumes") { // common practice, no source
  for (auto const& [text, bound] :
       {std::pair{"16 v. in 8", 8}, {"8 v. in 4", 4}, {"3 v. in 2", 2}, {"24 v. in 12 (300 p.)", 12}}) {
    CAPTURE(std::string{text});
    CHECK((*read_extent(text)).bound_in == bound);
  }
  CHECK_FALSE((*read_extent("2 vol. in 8°")).bound_in);
  CHECK_FALSE((*read_extent("2 vol. in-8")).bound_in);
}
