// SPDX-License-Identifier: MIT
#include <bifolium/fold/read_format.hpp>

#include "check.hpp"

#include <sstream>

using namespace bifolium;

TEST_CASE("each format has a symbol, an abbreviation and a name, and is read back from all three") {
  // Names and abbreviations: Roberts & Etherington, Bookbinding and the Conservation of Books, s.v. book sizes, for
  // 2 to 64; above that De Vinne, Modern Methods of Book Composition (1904), names the schemes. Spelling of the
  // ordinals above 64: from memory.
  STATIC_CHECK(Format::of(8).symbol() == "8°" && Format::of(8).abbreviation() == "8vo");
  STATIC_CHECK(Format::of(2).abbreviation() == "fol." && Format::of(4).name() == "quarto");
  STATIC_CHECK(Format::of(12).name() == "duodecimo" && Format::of(24).name() == "vicesimo-quarto");
  for (int n = 1; n <= 128; ++n) {
    auto const format = Format::of(n);
    CHECK(*read_format(format.symbol()) == format);
    CHECK(*read_format(format.abbreviation()) == format);
    CHECK(*read_format(format.name()) == format);
  }
}

TEST_CASE("records write formats in many ways") {
  for (auto text :
       {"8°", "8º", "8⁰", "8o", "8vo", "8vo.", "octavo", "Octavo", "(8vo)", " 8° ", "in-8", "in-octavo", "8mo"})
    CHECK_MESSAGE(*read_format(text) == Format::of(8), text);
  for (auto text : {"2°", "fol.", "fol", "folio", "Fo.", "in-folio", "2o"})
    CHECK_MESSAGE(*read_format(text) == Format::of(2), text);
  CHECK(*read_format("vigesimo-quarto") == Format::of(24));
  CHECK(*read_format("trigesimo-secundo") == Format::of(32));
}

TEST_CASE("formats have names in other languages, with in and without it") { // common practice, no source
  struct Named {
    char const* name;
    int leaves;
  };
  for (auto const& [name, leaves] : {Named{"Folio", 2},
                                     {"Quart", 4},
                                     {"Oktav", 8},
                                     {"Duodez", 12},
                                     {"Sedez", 16},
                                     {"quarto", 4},
                                     {"ottavo", 8},
                                     {"dodicesimo", 12},
                                     {"sedicesimo", 16},
                                     {"diciottesimo", 18},
                                     {"ventiquattresimo", 24},
                                     {"trentaduesimo", 32},
                                     {"sessantaquattresimo", 64},
                                     {"octavo", 8},
                                     {"douze", 12},
                                     {"seize", 16},
                                     {"dix-huit", 18},
                                     {"vingt-quatre", 24},
                                     {"trente-deux", 32},
                                     {"cuarto", 4},
                                     {"dozavo", 12},
                                     {"dieciseisavo", 16},
                                     {"kwarto", 4},
                                     {"octaaf", 8},
                                     {"8vo", 8},
                                     {"4°", 4}})
    for (std::string const before : {"", "in ", "In ", "in-", "in\u2010", "en "}) {
      auto const text = before + name;
      CAPTURE(text);
      CHECK(read_format(text) == Format::of(leaves));
      CHECK(format_at_start(text + " ; 22 cm")->bytes == text.size());
    }
  CHECK(read_format("in 8") == Format::of(8)); // so Italian records have it
  CHECK(!read_format("in 8s"));
  CHECK(!read_format("in 2"));
  CHECK(!read_format("Quarta"));
  CHECK(read_format("Quer-Quart") == Format::of(4).with(Shape::oblong));
}

TEST_CASE("the shape of the leaf is an attribute, before or after") {
  STATIC_CHECK(*read_format("oblong 4°") == Format::of(4, Shape::oblong));
  STATIC_CHECK(*read_format("4to obl.") == Format::of(4, Shape::oblong));
  STATIC_CHECK(*read_format("12° long") == Format::of(12, Shape::longer));
  STATIC_CHECK(*read_format("agenda 2°") == Format::of(2, Shape::agenda));
  STATIC_CHECK(Format::of(4, Shape::oblong).abbreviation() == "oblong 4to");
  CHECK(Format::of(4) != Format::of(4, Shape::oblong));
}

TEST_CASE("a part of a sheet, a single sheet and an undetermined format are formats too") {
  STATIC_CHECK(*read_format("1/2°") == Format::part_of_sheet(2));
  STATIC_CHECK(*read_format("½°") == Format::part_of_sheet(2));
  STATIC_CHECK(*read_format("1/12⁰") == Format::part_of_sheet(12));
  STATIC_CHECK(Format::part_of_sheet(4).symbol() == "1/4°" && Format::part_of_sheet(2).leaves_to_sheet() == 2);
  // Cowley's "S.s." is half a sheet (Studies in Bibliography 53, notes): the words do not prove 1°
  STATIC_CHECK(*read_format("bdsde") == Format::single_sheet() && *read_format("s.sh.") == Format::single_sheet());
  STATIC_CHECK(!Format::single_sheet().leaves_to_sheet());
  STATIC_CHECK(*read_format("not determined") == Format{} && !Format{}.leaves_to_sheet());
  CHECK(*read_format(Format{}.name()) == Format{});
}

TEST_CASE("what is no format says where") {
  CHECK(read_format("8").error().problem == Problem::unknown_format);
  CHECK(read_format("129°").error().problem == Problem::unknown_format);
  CHECK(read_format("").error().problem == Problem::unknown_format);
  CHECK(read_format("1/0°").error().problem == Problem::unknown_format);
  auto const error = read_format("8° quarto").error();
  CHECK(error.problem == Problem::trailing_text);
  CHECK(error.place->column == 4);
  CHECK_FALSE(read_format("(4to"));
  CHECK_FALSE(format_at_start("octavos"));
  CHECK(format_at_start("8°: A⁸")->bytes == 3);
  CHECK_THROWS_AS((void)Format::of(129), BrokenPrecondition);
  CHECK_THROWS_AS((void)Format::part_of_sheet(1), BrokenPrecondition);
}

TEST_CASE("a format is three bytes") {
  STATIC_CHECK(sizeof(Format) == 3);
  std::ostringstream out;
  out << Format::of(8);
  CHECK(out.str() == "8°");
}
