// SPDX-License-Identifier: MIT
// Descriptions as catalogues write them, field by field: what is read, what fills an empty field, and that no text is
// dropped without a word. The forms are common practice where no source is named; what is right of them is arithmetic.
#include <bifolium/paper/read_place.hpp>
#include <bifolium/record/read_physical_description.hpp>

#include "book_of.hpp"

using namespace book;

namespace {

Description described(FieldTexts const& texts) { return read_description(texts); }
std::string rests(FieldTexts const& texts) {
  std::string all;
  for (auto const& one : described(texts).unread)
    if (one.rest) all += (all.empty() ? "" : " | ") + std::string{identifier(one.field)} + ": " + one.text;
  return all;
}
Finding finding(Audit const& audit, FindingId id) {
  for (auto const& one : audit.findings)
    if (one.id == id) return one;
  FAIL(identifier(id) << " is not among the findings");
  return {};
}

} // namespace

TEST_CASE("a note of signatures is a formula with what is stated after it") {
  // DCRMR 6.215.44.9 (7B9.12)
  auto const note = described(
      {.formula = "Collation: 8vo: A-H⁴; 32 leaves: p. [1-2] 3-62 [63-64]; $3(-H3) signed. H4 blank", .leaves = "32"});
  REQUIRE(note.formula);
  CHECK(note.formula->value.leaves() == 32);
  REQUIRE(note.pagination);
  CHECK(note.pagination->value.pages() == 64);
  CHECK(note.pagination->at.column == 34);
  CHECK(note.pagination->text.starts_with("p. [1-2]"));
  REQUIRE(note.signing);
  CHECK(note.signing->value.first == 3);
  CHECK(examine(note).agrees());
  // a field of its own counts more than the note
  CHECK(described({.formula = "A-H⁴; p. [1-2] 3-62 [63-64]", .pagination = "[4] p."}).pagination->value.pages() == 4);
  // other first words: 6.215.44.1, .44.6; shortened ones are common practice
  for (auto text : {"Signatures: A-C⁸ D⁴.", "Sigs.: A-C⁸ D⁴", "Sig.: A-C8 D4", "Signature statement: A-C⁸ D⁴",
                    "Signatures (in Greek): A-C⁸ D⁴", "Collation: A-C⁸ D⁴", "[superscript pi]A⁴ A-C⁸"}) {
    INFO(text);
    REQUIRE(described({.formula = text}).formula);
    CHECK(described({.formula = text}).formula->value.leaves() == 28);
  }
}

TEST_CASE("what a note states twice is compared") {
  auto const audit = examine(described({.formula = "Signatures: A-H⁴; 34 leaves; p. [1-2] 3-62 [63-64]"}));
  CHECK(finding(audit, FindingId::leaves_contradict).delta == 2);
  REQUIRE(!audit.repairs.empty());
  CHECK(audit.repairs[0].edits[0].field == Field::formula);
  CHECK(audit.repairs[0].edits[0].corrects == Field::leaves);
  CHECK(audit.repairs[0].edits[0].put == "32");
  auto const pages = examine(described({.formula = "Signatures: A-H⁴; pp. [1-2] 3-26 [27-28]"}));
  CHECK(finding(pages, FindingId::pages_contradict).delta == -36);
  // a repair of a note leaves its words as they are
  auto const repaired = examine(described({.formula = "Signatures: A-G⁸ I⁴.", .pagination = "136 p."}));
  REQUIRE(!repaired.repairs.empty());
  CHECK(repaired.repairs[0].formula == "Signatures: A-G⁸ H⁸ I⁴.");
  CHECK(repaired.repairs[0].edits[0].at.column == 17);
  auto const script = examine(described({.formula = "Signatures (in Greek): A-G⁸ I⁴.", .pagination = "136 p."}));
  REQUIRE(!script.repairs.empty());
  CHECK(script.repairs[0].formula == "Signatures (in Greek): A-G⁸ H⁸ I⁴.");
}

TEST_CASE("a physical description in one cell fills height and format") { // ISBD 0.3, DCRMR 0.2.6.1: the punctuation
  auto const book = described({.pagination = "[8], 205, [3] p., [2] leaves of plates : ill., maps ; 20 x 12 cm (4to)"});
  REQUIRE(book.pagination);
  CHECK(book.pagination->value.pages() == 216);
  CHECK(book.plates->value == 2);
  CHECK(book.height->value == SizeRange{190, 200});
  CHECK(book.width->value == SizeRange{110, 120});
  CHECK(book.format->value == Format::of(4));
  CHECK(book.height->at.column == 54);
  CHECK(book.unread.empty());
  auto const own = described({.pagination = "205 p. ; 20 cm (4to)", .format = "8vo", .height = "187 mm"});
  CHECK(own.format->value == Format::of(8));
  CHECK(own.height->value == SizeRange{186.5, 187.5});
}

TEST_CASE("character references in the fields are characters, in what is read and in what is repaired") {
  // HTML Living Standard, 13.5; the book is constructed
  auto const read = described({.formula = "8&deg;: A-C&#8312; D&#x2074;",
                               .pagination = "50&nbsp;p. : ill. ; 18&#160;cm (8&ordm;)",
                               .leaves = "28&thinsp;leaves",
                               .year = "1600&ndash;1610",
                               .place = "M&uuml;nchen"});
  CHECK(read.unread.empty());
  REQUIRE(read.formula);
  CHECK(read.formula->value.leaves() == 28);
  CHECK(read.formula->text == "8\u00b0: A-C\u2078 D\u2074");
  REQUIRE((read.pagination && read.height && read.leaves && read.year && read.place));
  CHECK(read.year->value.to == 1610);
  CHECK(read.place->value == Region::germany);
  auto const audit = examine(read);
  REQUIRE(!audit.repairs.empty());
  for (auto const& repair : audit.repairs)
    for (auto const& edit : repair.edits)
      if (edit.field == Field::pagination)
        CHECK(read.pagination->text.substr(edit.from, edit.to - edit.from) == edit.old);
  FieldTexts texts;
  for (auto const field :
       {&FieldTexts::formula,     &FieldTexts::pagination,  &FieldTexts::leaves,      &FieldTexts::plates,
        &FieldTexts::format,      &FieldTexts::signing,     &FieldTexts::gatherings,  &FieldTexts::height,
        &FieldTexts::width,       &FieldTexts::binding,     &FieldTexts::chain_lines, &FieldTexts::watermark,
        &FieldTexts::countermark, &FieldTexts::head_edge,   &FieldTexts::tail_edge,   &FieldTexts::fore_edge,
        &FieldTexts::point_hole,  &FieldTexts::leaves_seen, &FieldTexts::material,    &FieldTexts::year,
        &FieldTexts::coded_year,  &FieldTexts::place,       &FieldTexts::coded_place})
    texts.*field = "8 &#8312 B";
  auto const refused = described(texts);
  CHECK(refused.unread.size() == field_count);
  for (auto const& one : refused.unread) {
    CHECK(one.error.problem == Problem::bad_character_reference);
    CHECK(one.error.place->column == 3);
    CHECK(!one.rest);
  }
}

TEST_CASE("a format stands before a size, after the pages, or alone") { // common practice, no source
  struct Format8 {
    char const* format;
    int leaves;
  };
  for (auto const& [name, leaves] : {Format8{"8°", 8},
                                     {"Oktav", 8},
                                     {"in ottavo", 8},
                                     {"in-quarto", 4},
                                     {"Quart", 4},
                                     {"8vo", 8},
                                     {"fol.", 2},
                                     {"in-12", 12},
                                     {"4to", 4}}) {
    std::string const format{name};
    struct Line {
      std::string text;
      int pages, height;
    };
    for (auto const& [text, pages, height] : {Line{format, 0, 0},
                                              {format + " ; 22 cm", 0, 220},
                                              {format + ", 22 cm", 0, 220},
                                              {"22 cm, " + format, 0, 220},
                                              {"22 cm (" + format + ")", 0, 220},
                                              {"205 p. ; " + format, 205, 0},
                                              {"205 p. " + format, 205, 0},
                                              {"205 p., " + format, 205, 0},
                                              {"205 p. ; " + format + " ; 22 cm", 205, 220},
                                              {"205 p. ; " + format + ", 22 cm", 205, 220},
                                              {"205 p. : ill. ; " + format + " ; 22 cm", 205, 220},
                                              {"2 v. (100, 105 p.) ; " + format, 205, 0},
                                              {"2 vols. " + format, 0, 0},
                                              {"2 vol. (205 p.) " + format, 205, 0}}) {
      CAPTURE(text);
      auto const line = read_physical_description(text);
      REQUIRE(line);
      REQUIRE(line->size);
      CHECK(line->size->formats == std::vector{Format::of(leaves)});
      CHECK((line->size->height ? line->size->height->to : 0) == height);
      CHECK((line->extent ? line->extent->pages() : 0) == pages);
      CHECK((!line->extent || line->extent->unread.empty()));
      auto const read = described({.pagination = text});
      REQUIRE(read.format);
      CHECK(read.format->value == Format::of(leaves));
      CHECK((read.height ? read.height->value.to : 0) == height);
      CHECK((read.pagination ? read.pagination->value.pages() : 0) == pages);
      for (auto const& one : read.unread) CHECK(one.text == "ill.");
    }
  }
}

TEST_CASE("a size says more than a height") {
  auto const book = described({.height = "19 x 12 cm (8vo)"});
  CHECK(book.height->value == SizeRange{180, 190});
  CHECK(book.width->value == SizeRange{110, 120});
  CHECK(book.format->value == Format::of(8));
  CHECK(described({.height = "12 cm bound to 20 cm"}).binding->value == SizeRange{190, 200});  // DCRM(B) 5D1
  CHECK(rests({.height = "33 cm, in box 34 x 25 x 6 cm"}) == "height: in box 34 x 25 x 6 cm"); // DCRMR 6.24.37
}

TEST_CASE("numbers of leaves and plates in words") {
  auto const leaves = [](char const* text) { return described({.leaves = text}).leaves->value; };
  CHECK(leaves("84") == 84);
  CHECK(leaves("84 leaves") == 84);
  CHECK(leaves("[84] ll.") == 84);
  CHECK(leaves("[4], 80 leaves") == 84);
  CHECK(leaves("80 [i.e. 84] leaves") == 84);
  CHECK(described({.plates = "[4] leaves of plates (2 folded)"}).plates->value == 4);
  CHECK(described({.plates = "4"}).plates->value == 4);
  CHECK(described({.plates = "2 pl., 3 folded plates"}).plates->value == 5);
}

TEST_CASE("text beside a value is told as a note") {
  struct Row {
    FieldTexts texts;
    char const* rests;
  };
  for (auto const& [texts, left] :
       {Row{{.pagination = "[8], 160 p. see note"}, "pagination: see note"},
        Row{{.pagination = "205 p. incl. 2 maps"}, "pagination: incl. 2 maps"},
        Row{{.pagination = "[124] p., [2] folded woodcut maps"}, "pagination: [2] folded woodcut maps"},
        Row{{.pagination = "205 p. + 1 map"}, "pagination: 1 map"},
        Row{{.pagination = "205 p. : ill. ; 20 cm + 1 map"},
            ""}, // parts of a physical description, by their punctuation
        Row{{.leaves = "84 leaves, the last blank"}, "leaves: the last blank"},
        Row{{.format = "8vo, uncut"}, "format: uncut"}, Row{{.height = "187 mm, cropped"}, "height: cropped"},
        Row{{.width = "110 mm, cropped"}, "width: cropped"},
        Row{{.binding = "190 mm (rebacked)"}, "binding: (rebacked)"},
        Row{{.formula = "A-C⁸ D⁴; the last leaf blank"}, "formula: the last leaf blank"},
        // words of a title page are usual around date and place; figures may be another date
        Row{{.year = "anno Domini MDCXIV [1614]"}, ""}, Row{{.place = "Printed at London"}, ""}}) {
    INFO(texts.pagination);
    CHECK(rests(texts) == left);
    auto const audit = examine(described(texts));
    CHECK(has(audit, FindingId::part_unread) == (*left != '\0'));
    CHECK(audit.agrees());
  }
}

TEST_CASE("an extent that was read in part counts nothing") {
  for (auto text : {"[8], 160 p., followed by 24 pages of music", "8 p., then 16 ff. ruled"}) {
    INFO(text);
    auto const book = described({.formula = "A-K⁸ L⁴", .pagination = text});
    CHECK(!book.pagination);
    auto const audit = examine(book);
    CHECK(finding(audit, FindingId::part_unread).level == Severity::doubt);
    CHECK(!has(audit, FindingId::pages_contradict));
    CHECK(audit.repairs.empty());
  }
}

TEST_CASE("a format after the pages is the format, with a size and without") { // ISBD area 5, common practice
  for (auto text : {"[8]-320 p. ; in-8", "[8], 320 p. : ill. ; 8°", "[8], 320 p. ; 8vo.", "[8], 320 p. ; (8vo)",
                    "[8], 320 p. ; 20 cm (8vo)", "[8], 320 p. ; 8° ; 20 cm"}) {
    INFO(text);
    auto const book = described({.pagination = text});
    REQUIRE(book.pagination);
    CHECK(book.pagination->value.pages() == 328);
    REQUIRE(book.format);
    CHECK(book.format->value.leaves_to_sheet() == 8);
    CHECK(book.unread.empty());
  }
  auto const in_fours = described({.height = "20 cm (8vo in 4s)"});
  REQUIRE(in_fours.gatherings);
  CHECK(in_fours.gatherings->value == 4);
}

TEST_CASE("what is read with a doubt is told as a note") {
  auto const doubt = [](FieldTexts const& texts) {
    auto const audit = examine(described(texts));
    CHECK(audit.agrees());
    return finding(audit, FindingId::read_with_doubt).says;
  };
  CHECK(doubt({.pagination = "[8], 205"}).starts_with("pagination: '[8], 205' does not say what it counts"));
  CHECK(doubt({.pagination = "a-z p."}).starts_with("pagination: 'a-z' was counted by the alphabet of 23"));
  CHECK(doubt({.year = "742"}).starts_with("year: '742' was read as 1742"));
  CHECK(doubt({.place = "Lugduni"}).starts_with("place: 'Lugduni' is the name of"));
  struct Doubted {
    FieldTexts texts;
    Problem problem;
    std::uint32_t line, column;
  };
  for (auto const& one : {Doubted{{.pagination = "[8], 205"}, Problem::pages_taken, 1, 1},
                          Doubted{{.pagination = "[8],\n205"}, Problem::pages_taken, 1, 1},
                          Doubted{{.pagination = "[4], a-z p."}, Problem::pages_lettered, 1, 6},
                          Doubted{{.year = "in\n742"}, Problem::year_clipped, 2, 1},
                          Doubted{{.place = "printed at\nLugduni"}, Problem::ambiguous_place, 2, 1}}) {
    auto const book = described(one.texts);
    CAPTURE(identifier(one.problem));
    REQUIRE(book.doubts.size() == 1);
    CHECK(identifier(book.doubts[0].doubt.problem) == identifier(one.problem));
    CHECK(book.doubts[0].doubt.place->line == one.line);
    CHECK(book.doubts[0].doubt.place->column == one.column);
  }
  CHECK(!described({.pagination = "17 x"}).pagination); // neither a pagination nor a number
}

TEST_CASE("a number of leaves after the formula is the stated one, unless there is a field for it") { // constructed
  for (auto const* formula :
       {"8°: A-H⁸; 63 leaves", "8°: A-H⁸; [63] leaves", "8°: A-H⁸ = 63 leaves", "8°: A-H⁸ 63 ff."}) {
    INFO(std::string{formula});
    auto const book = described({.formula = formula});
    REQUIRE(book.leaves);
    CHECK(book.leaves->value == 63);
    CHECK(has(examine(book), FindingId::leaves_contradict));
    auto const stated = described({.formula = formula, .leaves = "64"});
    REQUIRE(stated.leaves);
    CHECK(stated.leaves->value == 64);
    CHECK(!has(examine(stated), FindingId::leaves_contradict));
    REQUIRE(stated.doubts.size() == 1);
    CHECK(stated.doubts[0].doubt.problem == Problem::total_contradicts);
  }
  // another doubt of a formula is no number of leaves
  CHECK(!described({.formula = "8°: A-H⁸ A-C⁸"}).leaves);
}

TEST_CASE("two statements of the date") {
  // a reading of the numeral that differs: DCRMR 5.23.31.1 has the form, the slip is constructed
  CHECK(finding(examine(described({.year = "MDCCXXV [1752]"})), FindingId::date_numerals_differ).level ==
        Severity::doubt);
  CHECK(examine(described({.year = "MDCCXXV [1725]"})).findings.empty());
  auto const apart = examine(described({.year = "1725", .coded_year = "1752"}));
  CHECK(finding(apart, FindingId::dates_contradict).level == Severity::error);
  CHECK(finding(apart, FindingId::dates_contradict).delta == 27);
  // codings of MARC 21 field 008 (itsmarc.com; a research library's cataloguing pages), with a date that they agree
  // with
  for (auto const& [year, coded] :
       {std::pair{"1980 [i.e. 1981]", "1981"}, std::pair{"ca. 1946", "1946"}, std::pair{"[198-]", "198u"},
        std::pair{"[19--]", "19uu"}, std::pair{"744 i.e. 1983 or 1984", "1983"}, std::pair{"1560?", "1560"},
        std::pair{"circa 1580", "1575-1585"}, std::pair{"1814 or 1815", "1814-1815"},
        std::pair{"between 1618 and 1648", "1618-1648"}, std::pair{"[17--?]", "1700-1799"},
        std::pair{"[172-?]", "1720-1729"}, std::pair{"between 1720 and 1730", "1720-1729"}}) {
    INFO(year);
    CHECK(!has(examine(described({.year = year, .coded_year = coded})), FindingId::dates_contradict));
  }
  // Lady Day years lie a year apart
  CHECK(finding(examine(described({.year = "1743", .coded_year = "1744"})), FindingId::dates_contradict).level ==
        Severity::doubt);
}

TEST_CASE("two statements of the place") {
  // codes and countries as in the Latin Place Names file of RBMS; the imprints are of the same file, DCRMR 5.21 or
  // constructed
  auto const of = [](std::string_view place, std::string_view code) {
    return examine(described({.place = place, .coded_place = code}));
  };
  auto const apart = of("Venetiis", "enk");
  CHECK(finding(apart, FindingId::places_contradict).level == Severity::doubt);
  CHECK(finding(apart, FindingId::places_contradict).says ==
        "the place is stated as 'Venetiis' and coded as enk, which is England");
  for (auto const& [place, code] : {std::pair{"Londini", "it"},
                                    {"Lipsiae", "fr"},
                                    {"Parisiis", "gw"},
                                    {"Basileae", "ne"},
                                    {"Edinburgi", "fr"},
                                    {"Impressum fuit hoc opus Venetiis", "gw "}}) {
    INFO(std::string{place});
    CHECK(has(of(place, code), FindingId::places_contradict));
  }
  for (auto const& [place, code] : {std::pair{"Venetiis", "it"},
                                    {"Londini", "enk"},
                                    {"Edinburgi", "stk"},
                                    {"Lipsiae", "gw"},
                                    {"Antverpiae", "be"},
                                    {"Lugduni", "fr"},
                                    {"Lugduni", "ne"}, // Lyon or Leiden
                                    {"Argentorati", "fr"},
                                    {"Argentorati", "gw"}, // Strasbourg, then and today
                                    {"Regiomonti", "ru"},
                                    {"Regiomonti", "gw"}, // Kaliningrad, then Königsberg
                                    {"London ; York", "enk"},
                                    {"A Londres", "enk"},
                                    {"Venetiis ; Londini", "enk"},
                                    {"Venetiis ; Londini", "it"}, // either may be coded
                                    {"Philadelphia [that is, Frankfurt]", "enk"},
                                    {"A Cantorbery [that is, Amsterdam]", "fr"}, // false places
                                    {"Cosmopoli", "fr"},
                                    {"[S.l.]", "fr"},
                                    {"[S.l.], Venetiis", "enk"}, // the place is not known, and a name stands beside it
                                    {"[Amsterdam?]", "ne"},
                                    {"Venetiis", "xx "},
                                    {"Venetiis", "vp "},
                                    {"Venetiis", "|||"},
                                    {"Venetiis", "zzz"},
                                    {"Venetiis", ""},
                                    {"", "it"},
                                    {"Venetiis", "sp"},
                                    {"Venetiis", "mau"}}) { // codes from memory accuse nobody
    INFO(std::string{place});
    INFO(std::string{code});
    CHECK(!has(of(place, code), FindingId::places_contradict));
  }
}

TEST_CASE("every code of a country is read as a place") {
  for (auto const& row : detail::country_rows) {
    INFO(row.code);
    CHECK(country_of_code(row.code)->country == row.country);
    auto const place = read_place(row.country);
    REQUIRE(place);
    CHECK(!place->places().empty());
  }
  CHECK(!country_of_code(""));
}

TEST_CASE("a description has each place once, and none if one of them may be false") {
  auto const names = [](std::string_view place) {
    std::string all;
    for (auto const& one : described({.place = place}).places) all.append(all.empty() ? "" : ", ").append(one.name);
    return all;
  };
  CHECK(names("Venetiis") == "Venice");
  CHECK(names("Venetiis ; Londini") == "Venice, London, Lund"); // both at once; the second is ambiguous
  CHECK(names("Venetiis ; Venetia") == "Venice");
  CHECK(names("Lugduni") == "Lyon, Leiden"); // either: tests/data/places.tsv
  CHECK(names("Londres [i.e. Paris]").empty());
  CHECK(names("Venetiis ; Cosmopoli").empty());
  CHECK(names("Cosmopoli ; Venetiis").empty());
  for (auto const unknown : {"[S.l.], Venetiis", "[S.l.] Venetiis", "s.l. ; Londini", "[S.l.]"}) {
    INFO(unknown);
    auto const book = described({.place = unknown});
    CHECK(!book.place);
    CHECK(book.places.empty());
    for (auto const& row : detail::country_rows)
      CHECK(!has(examine(described({.place = unknown, .coded_place = row.code})), FindingId::places_contradict));
  }
}

TEST_CASE("rules of cataloguing say whether pages without numbers are counted") {
  CHECK(conventions_of("dcrmb").pages == PagesWithoutNumbers::counted);
  CHECK(conventions_of("rda dcrmr").pages == PagesWithoutNumbers::counted); // DCRMR A6: in that order
  CHECK(conventions_of("rda").pages == PagesWithoutNumbers::left_out);
  CHECK(conventions_of("").pages == PagesWithoutNumbers::counted);
  CHECK(conventions_of("xyz", {.pages = PagesWithoutNumbers::left_out}).pages == PagesWithoutNumbers::left_out);
  FieldTexts const texts{.formula = "π⁴ A-K⁸", .pagination = "160 p."};
  CHECK(has(examine(read_description(texts, conventions_of("dcrmb"))), FindingId::pages_contradict));
  auto const of_all_books = examine(read_description(texts, conventions_of("rda")));
  CHECK(of_all_books.agrees());
  CHECK(finding(of_all_books, FindingId::pages_uncounted).delta == -8);
  CHECK(of_all_books.repairs.empty());
  // too many pages are too many by any rules
  CHECK(has(examine(read_description({.formula = "A-K⁸", .pagination = "170 p."}, conventions_of("rda"))),
            FindingId::pages_contradict));
}

TEST_CASE("where the format and the rest contradict, the likelier slip is named") { // constructed; sizes as in BMC
  auto const doubted = [](FieldTexts const& texts, FindingId id) {
    auto const one = finding(examine(described(texts)), id);
    REQUIRE(one.doubted);
    return *one.doubted;
  };
  // a leaf of quarto size and shape with a quarto's chain lines: the statement is alone
  CHECK(doubted({.format = "8vo", .height = "210", .width = "160", .chain_lines = "horizontal", .year = "1600"},
                FindingId::format_against_chain_lines) == Field::format);
  CHECK(doubted({.formula = "8°: A-K⁴", .height = "210", .width = "160", .chain_lines = "horizontal", .year = "1600"},
                FindingId::format_against_chain_lines) == Field::formula);
  // everything is an octavo's but the chain lines
  CHECK(doubted({.formula = "8°: A-K⁸", .height = "165", .width = "105", .chain_lines = "horizontal", .year = "1600"},
                FindingId::format_against_chain_lines) == Field::chain_lines);
  // two statements, of which the leaf agrees with one
  CHECK(doubted({.formula = "8°: A-K⁸",
                 .format = "4to",
                 .height = "165",
                 .width = "105",
                 .chain_lines = "vertical",
                 .year = "1600"},
                FindingId::format_differs) == Field::format);
  CHECK(doubted({.formula = "8°: A-K⁸",
                 .format = "4to",
                 .height = "200",
                 .width = "140",
                 .chain_lines = "horizontal",
                 .year = "1490"},
                FindingId::format_differs) == Field::formula);
  // whole centimetres may be of the binding, and accuse nobody alone unless they are far off
  CHECK(examine(described({.format = "fol.", .height = "25 cm"})).findings.empty());
}

TEST_CASE("the evidence of a description") {
  auto const seen = evidence_of(described(
      {.formula = "8°: A-K⁸", .height = "19 cm", .chain_lines = "vertical", .year = "[172-]", .place = "Lipsiae"}));
  CHECK(seen.height == 190_mm);
  CHECK(seen.rounded_up_to == 10_mm);
  CHECK(seen.of == MeasureOf::either);
  CHECK(seen.gathering_leaves == 8);
  CHECK(seen.year == YearRange{1720, 1729});
  CHECK(seen.place == Region::germany);
  CHECK(evidence_of(described({.height = "19 cm", .binding = "21 cm"})).of == MeasureOf::leaf);
  auto const measured = evidence_of(described({.gatherings = "in fours", .height = "187 mm", .width = "12 cm"}));
  CHECK(measured.rounded_up_to == 0_mm);
  CHECK(measured.height == 187_mm);
  CHECK(!measured.width); // not measured as the height is
  CHECK(measured.gathering_leaves == 4);
}

TEST_CASE("gatherings are read in the words in which they follow a format") { // common practice, no source
  auto const leaves = [](char const* text, char const* format = "") {
    auto const book = described({.format = format, .gatherings = text});
    return book.gatherings ? book.gatherings->value : 0;
  };
  for (auto const& [text, number] : {std::pair{"8", 8},
                                     {"8s", 8},
                                     {"in fours", 4},
                                     {"in twenty-fours", 24},
                                     {"Thirty-twos", 32},
                                     {"gathered in 12's", 12},
                                     {"mostly in sixes", 6}}) {
    CAPTURE(text);
    CHECK(leaves(text) == number);
  }
  CHECK(leaves("in half-sheets", "8vo") == 4);
  CHECK(leaves("in half-sheets") == 0); // of what
  CHECK(leaves("in twenties-fours") == 20);
  CHECK(leaves("0") == 0);
  CHECK(leaves("quires") == 0);
  CHECK(rests({.gatherings = "in eights, the last in four"}) == "gatherings: the last in four");
  CHECK(described({.format = "24mo in twenty-fours"}).gatherings->value == 24);
}

TEST_CASE(
    "leaves noted as blank are those that the ideal copy has blank") { // constructed; the formula is of tests/data
  auto const agree = [](char const* formula, char const* pages) {
    return examine(described({.formula = formula, .pagination = pages})).agrees();
  };
  CHECK(agree("A-K⁸ (K8 blank)", "158 p."));
  CHECK(agree("A-K⁸ (K7-8 blank)", "156 p."));
  CHECK_FALSE(agree("A-K⁸ (K7-8 missigned)", "154 p."));
  // what is after the semicolon is no leaf that is blank: EEBO-TCP
  CHECK_FALSE(agree("A-L⁶ (L6 blank; K2,3 missigned I2,3)", "128 p."));
}

TEST_CASE("a fact that the text of another field states again, and otherwise, is a doubt") { // constructed
  struct Twice {
    FieldTexts texts;
    Field field, in;
    char const* says;
  };
  for (auto const& [texts, field, in, says] :
       {Twice{{.pagination = "80 p., 2 folding plates", .plates = "3"},
              Field::plates,
              Field::pagination,
              "plates: stated as '3', and in the pagination as '2 folding plates'"},
        {{.formula = "A-E⁸ [$4 signed]", .signing = "$5 signed"},
         Field::signing,
         Field::formula,
         "signing: stated as '$5 signed', and in the formula as '[$4 signed]'"},
        {{.formula = "A-E⁸ [$4 (−A3) signed]", .signing = "$4 (−B3) signed"},
         Field::signing,
         Field::formula,
         "signing: stated as '$4 (−B3) signed', and in the formula as '[$4 (−A3) signed]'"},
        {{.formula = "A-E⁸; pp. 80", .pagination = "[8], 64, [4] p."},
         Field::pagination,
         Field::formula,
         "pagination: stated as '[8], 64, [4] p.', and in the formula as 'pp. 80'"},
        {{.format = "4to", .height = "20 cm (8vo)"},
         Field::format,
         Field::height,
         "format: stated as '4to', and in the height as '20 cm (8vo)'"},
        {{.pagination = "80 p. ; 20 cm (8vo)", .format = "4to"},
         Field::format,
         Field::pagination,
         "format: stated as '4to', and in the pagination as '20 cm (8vo)'"},
        {{.pagination = "160 p. ; 17 cm", .height = "21 cm"},
         Field::height,
         Field::pagination,
         "height: stated as '21 cm', and in the pagination as '17 cm'"},
        {{.pagination = "160 p. ; 31 cm (8vo)", .format = "8vo", .height = "168 mm"},
         Field::height,
         Field::pagination,
         "height: stated as '168 mm', and in the pagination as '31 cm (8vo)'"},
        {{.pagination = "160 p. ; 17 x 11 cm", .height = "17 cm", .width = "15 cm"},
         Field::width,
         Field::pagination,
         "width: stated as '15 cm', and in the pagination as '17 x 11 cm'"},
        {{.pagination = "160 p. ; 17 cm (8vo)", .format = "4to", .height = "17 cm"},
         Field::format,
         Field::pagination,
         "format: stated as '4to', and in the pagination as '17 cm (8vo)'"},
        {{.formula = "8°: A-K⁸; pp. [4] 1-156", .pagination = "[8], 152 p."},
         Field::pagination,
         Field::formula,
         "pagination: stated as '[8], 152 p.', and in the formula as 'pp. [4] 1-156'"},
        {{.height = "187 x 114 mm", .width = "120 mm"},
         Field::width,
         Field::height,
         "width: stated as '120 mm', and in the height as '187 x 114 mm'"},
        {{.height = "24 cm, bound to 28 cm", .binding = "27 cm"},
         Field::binding,
         Field::height,
         "binding: stated as '27 cm', and in the height as '24 cm, bound to 28 cm'"},
        {{.format = "8vo in 4s", .gatherings = "8"},
         Field::gatherings,
         Field::format,
         "gatherings: stated as '8', and in the format as '8vo in 4s'"}}) {
    INFO(says);
    auto const audit = examine(described(texts));
    auto const twice = finding(audit, FindingId::stated_twice);
    CHECK(twice.level == Severity::doubt);
    CHECK(twice.fields == (FieldSet{field} | in));
    CHECK(twice.says == says);
  }
  // the same, or what catalogues count in two ways
  for (auto const& texts : {FieldTexts{.pagination = "80 p., [3] leaves of plates", .plates = "3"},
                            {.formula = "A-E⁸ [$5 signed]", .signing = "$5 signed"},
                            {.formula = "A-E⁸; pp. 80", .pagination = "78, [2] p."},
                            {.formula = "A-E⁸; pp. 78", .pagination = "78, [2] p."}, // a blank leaf at the end
                            {.formula = "A-E⁸ [$4 (−A3, B2) signed]", .signing = "$4 (−B2, A3) signed"},
                            {.format = "8vo", .height = "20 cm (8vo)"},
                            {.height = "19 x 12 cm", .width = "114 mm"},
                            {.format = "8vo in 4s", .gatherings = "in fours"}})
    CHECK(!has(examine(described(texts)), FindingId::stated_twice));
}

TEST_CASE("a size after the pages and a height of its own are of one book") {
  // of a bound book the rules state the height of the binding in whole centimetres, rounded up (DCRM(B) 5D), and a cover
  // is up to 3 cm higher by them
  auto const twice = [](FieldTexts const& texts) { return has(examine(described(texts)), FindingId::stated_twice); };
  for (int cm = 11; cm < 40; ++cm) {
    auto const pages = "160 p. ; " + std::to_string(cm) + " cm";
    CAPTURE(pages);
    for (int own = 11; own < 45; ++own)
      CHECK_MESSAGE(twice({.pagination = pages, .height = std::to_string(own) + " cm"}) == (own != cm), own);
    for (int leaf = 80; leaf < 450; leaf += 7) {
      bool const higher_cover = leaf <= 10 * cm && leaf > 10 * (cm - 1) - 31;
      bool const on_the_edge = leaf == 10 * cm || leaf / 10 == cm - 4; // to the millimetre nobody measures a book
      if (!on_the_edge)
        CHECK_MESSAGE(twice({.pagination = pages, .height = std::to_string(leaf) + " mm"}) == !higher_cover, leaf);
    }
    // the cover has a field of its own
    auto const cover = std::to_string(cm) + " cm", leaf = std::to_string(cm - 4) + " cm";
    CHECK(!twice({.pagination = pages, .height = leaf, .binding = cover}));
  }
  // the width after the pages is that of the book, if no other is stated
  auto const broad = described({.pagination = "160 p. ; 17 x 11 cm", .height = "17 cm"});
  REQUIRE(broad.width);
  CHECK(broad.width->value == SizeRange{100, 110});
  CHECK(broad.width->in == Field::pagination);
  CHECK(broad.height->in == std::nullopt);
}

TEST_CASE("of several heights the tallest is compared, and it is told") { // DCRM(B) 5D: of several copies the tallest
  for (auto const& texts :
       {FieldTexts{.height = "18-19 cm"}, FieldTexts{.height = "185-190 mm"}, FieldTexts{.height = "18 to 19 cm"},
        FieldTexts{.pagination = "160 p. ; 17-19 cm"}, FieldTexts{.pagination = "3 v. ; 17-19 cm (8vo)"}}) {
    INFO(std::string{texts.height} << std::string{texts.pagination});
    auto const book = described(texts);
    REQUIRE(book.height);
    CHECK(book.height->value.contains(190_mm));
    CHECK(!book.height->value.contains(180_mm));
    CHECK(std::count_if(book.doubts.begin(), book.doubts.end(),
                        [](FieldDoubt const& one) { return one.doubt.problem == Problem::several_heights; }) == 1);
    CHECK(has(examine(book), FindingId::read_with_doubt));
  }
  CHECK(described({.width = "11-12 cm"}).width->value == SizeRange{110, 120});
  CHECK(described({.height = "18 cm"}).doubts.empty());
}

TEST_CASE("pages stated twice have the same numbers, however they are divided") { // common practice, no source
  struct Pages {
    char const *formula, *pagination;
    bool differ;
  };
  for (auto const& [formula, pagination, differ] :
       {Pages{"pp. [4] 1-156", "[8], 152 p.", true},
        {"pp. [4], 1-156", "[4], 156 p.", false},
        {"pp. [i-iv] 1-156", "[4], 156 p.", false},
        {"pp. [8] 1-152", "[8], 152 p.", false},
        {"pp. [8] 1-151 [152]", "[8], 151, [1] p.", false},
        {"pp. [8] 1-150 [151-152]", "[8], 150, [2] p.", false},
        {"pp. [8] 1-150 [151-152]", "[8], 152 p.", true}, // whether 152 is printed
        {"pp. i-viii 1-152", "viii, 152 p.", false},
        {"pp. i-viii 1-152", "vi, [2], 152 p.", true},
        {"pp. [8] 1-100 ²1-52", "[8], 100, 52 p.", false},
        {"pp. [8] 1-100 ²1-52", "[8], 100, 50 p.", true},
        {"pp. [8] 1-100 101-152", "[8], 152 p.", false},
        {"pp. [8] 1-152 [=152]", "[8], 152 p.", false},
        {"pp. [8] 1-125 [=152]", "[8], 125 [i.e. 152] p.", false},
        {"pp. [8] 1-125 [=152]", "[8], 152 p.", false},
        {"pp. 160", "[8], 152 p.", false}, // 160 may be the number of all
        {"pp. 1-160", "160 p.", false},
        {"pp. 1-160", "80 leaves", false}}) {
    CAPTURE(std::string{formula});
    CAPTURE(std::string{pagination});
    auto const with = std::string{"8°: A-K⁸; "} + formula;
    auto const book = described({.formula = with, .pagination = pagination});
    REQUIRE(book.pagination);
    CHECK(has(examine(book), FindingId::stated_twice) == differ);
  }
}

TEST_CASE("a statement of signing is examined wherever it is written") { // constructed
  for (auto const& texts : {FieldTexts{.formula = "A-E⁴", .signing = "$5 signed"},
                            {.formula = "A-E⁴ [$5 signed]"},
                            {.formula = "A-E⁴; $5 signed"},
                            {.formula = "A-E⁴; 20 leaves; $5 signed"}})
    CHECK(has(examine(described(texts)), FindingId::signing_beyond_gathering));
  for (auto const& texts : {FieldTexts{.formula = "A-E⁴", .signing = "$3 (-F1) signed"},
                            {.formula = "A-E⁴ [$3 (-F1) signed]"},
                            {.formula = "A-E⁴ [$3 (+B5) signed]"}}) {
    auto const audit = examine(described(texts));
    CHECK(finding(audit, FindingId::signing_of_no_leaf).level == Severity::doubt);
  }
  CHECK(finding(examine(described({.formula = "A-E⁴ [$3 (-F1) signed]"})), FindingId::signing_of_no_leaf).says ==
        "the statement of signing names F1, which the formula does not have");
  CHECK(!has(examine(described({.formula = "A-E⁴ [$3 (-A1, $2; +E4) signed]"})), FindingId::signing_of_no_leaf));
}

TEST_CASE("an oblong book is not higher than broad") { // by the word; constructed
  auto const audit = examine(described({.format = "oblong 4to", .height = "20 cm", .width = "15 cm"}));
  CHECK(finding(audit, FindingId::oblong_but_high).says ==
        "the format is stated as oblong 4°, but the leaf is 20 cm high and 15 cm broad");
  CHECK(!has(examine(described({.format = "oblong 4to", .height = "15 x 20 cm"})), FindingId::oblong_but_high));
  CHECK(!has(examine(described({.format = "4to", .height = "20 x 15 cm"})), FindingId::oblong_but_high));
}

TEST_CASE("words of a formula that are not read are kept whole, however long, and once") { // constructed
  for (std::string_view const words :
       {"lacks two leaves, B3 cancelled by a very long story", "with a very long tail of prose about maps and more",
        "B4 blank as far as anybody has been able to see", "Some words about the paper that nobody reads"})
    for (auto const& [before, after] :
         {std::pair{"8°: A-C⁸ (", ") D⁴"}, {"8°: A-C⁸ D⁴. ", ""}, {"A-C⁸ (−B3, ", ") D⁴"}}) {
      if (before[0] == 'A' && words.find(',') != words.npos) continue; // in a list, a comma ends what is said
      auto const text = before + std::string{words} + after;
      CAPTURE(text);
      auto const book = described({.formula = text});
      for (auto const& one : book.unread) {
        CHECK(one.text == words);
        CHECK(text.substr(one.from, one.text.size()) == words);
      }
      CHECK(book.unread.size() <= 1);
    }
  auto const prose = described({.formula = "8°: A-C⁸ D⁴. Some words about the paper that nobody reads"});
  REQUIRE(prose.unread.size() == 1);
  CHECK(prose.unread[0].text == "Some words about the paper that nobody reads");
}

TEST_CASE("a number that is not exact contradicts nothing, and no repair comes of it") { // constructed
  // 8°: A-M8 has 96 leaves
  for (auto const& texts :
       {FieldTexts{.pagination = "ca. 200 p."}, FieldTexts{.pagination = "about 200 p."},
        FieldTexts{.pagination = "circa 200 p."}, FieldTexts{.pagination = "etwa 200 S."},
        FieldTexts{.pagination = "env. 200 p."}, FieldTexts{.pagination = "approximately 200 pages"},
        FieldTexts{.pagination = "±200 p."}, FieldTexts{.pagination = "c200 p."}, FieldTexts{.pagination = "200 p.?"},
        FieldTexts{.pagination = "200 p. (approx.)"}, FieldTexts{.pagination = "pp. ca. 200"},
        FieldTexts{.pagination = "[8], ca. 200 p."}, FieldTexts{.pagination = "about 100 leaves"},
        FieldTexts{.leaves = "ca. 100"}, FieldTexts{.leaves = "about 100 leaves"},
        FieldTexts{.leaves = "100 leaves approx."}, FieldTexts{.leaves = "±100 ff."}, FieldTexts{.leaves = "100?"},
        FieldTexts{.leaves = "[ca. 100] leaves"}}) {
    auto given = texts;
    given.formula = "8°: A-M8";
    INFO(std::string{texts.pagination} << std::string{texts.leaves});
    auto const book = described(given);
    CHECK(!book.leaves);
    REQUIRE(book.doubts.size() == 1);
    CHECK(book.doubts[0].doubt.problem == Problem::pages_approximate);
    auto const audit = examine(book);
    CHECK(audit.agrees());
    CHECK(audit.repairs.empty());
    CHECK(audit.leaves == 96);
    CHECK(has(audit, FindingId::read_with_doubt));
    given.formula = "8°: A-M8; 96 leaves, 192 pages";
    CHECK(!has(examine(described(given)), FindingId::stated_twice));
  }
  CHECK(has(examine(described({.formula = "8°: A-M8", .pagination = "200 p."})), FindingId::pages_contradict));
  CHECK(has(examine(described({.formula = "8°: A-M8", .leaves = "100"})), FindingId::leaves_contradict));
  CHECK(has(examine(described({.formula = "8°: A-M8", .leaves = "100 c."})), FindingId::leaves_contradict));
  for (auto const* text : {"about 4", "approximately 4 leaves of plates", "ca. 4 plates"})
    CHECK_MESSAGE(!described({.plates = text}).plates, text);
  // words before the number are told
  auto const before = described({.leaves = "counting blanks 100"});
  REQUIRE(before.unread.size() == 1);
  CHECK(before.unread[0].text == "counting blanks");
}

TEST_CASE("no word of a format is dropped: several formats, denials and doubts") { // constructed
  for (auto const& texts :
       {FieldTexts{.format = "4to or 8vo"}, FieldTexts{.format = "octavo, quarto"}, FieldTexts{.format = "4to and 8vo"},
        FieldTexts{.format = "8vo/4to"}, FieldTexts{.format = "quart-octavo"}, FieldTexts{.height = "20 cm (4to, 8vo)"},
        FieldTexts{.height = "20 cm (4to and 8vo)"}, FieldTexts{.pagination = "205 p. ; 20 cm (4to, 8vo)"}}) {
    INFO(std::string{texts.format} << std::string{texts.height} << std::string{texts.pagination});
    auto const book = described(texts);
    CHECK(!book.format);
    REQUIRE(book.formats.size() == 2);
    REQUIRE(book.doubts.size() == 1);
    CHECK(book.doubts[0].doubt.problem == Problem::several_formats);
    CHECK(examine(book).agrees());
    CHECK(has(examine(book), FindingId::read_with_doubt));
    auto given = texts;
    given.formula = "8°: A-C8"; // one of them
    CHECK(!has(examine(described(given)), FindingId::format_differs));
    given.formula = "12°: A-C12"; // none of them
    CHECK(finding(examine(described(given)), FindingId::format_differs).level == Severity::error);
  }
  auto const denied = described({.format = "not 8vo"});
  CHECK(!denied.format);
  REQUIRE(denied.unread.size() == 1);
  CHECK(denied.unread[0].error.problem == Problem::format_denied);
  CHECK(!examine(denied).agrees());
  auto const doubted = described({.format = "8vo?"});
  REQUIRE(doubted.format);
  REQUIRE(doubted.doubts.size() == 1);
  CHECK(doubted.doubts[0].doubt.problem == Problem::format_doubted);
  for (auto const& texts : {FieldTexts{.format = "8vo (?)"}, FieldTexts{.format = "8vo, perhaps 4to"},
                            FieldTexts{.format = "formerly 8vo"}, FieldTexts{.format = "4to, 8vo, 12mo"},
                            FieldTexts{.height = "20 cm (8vo?)"}, FieldTexts{.height = "20 cm (not 8vo)"},
                            FieldTexts{.height = "20 cm (4to or 8vo)"}, FieldTexts{.pagination = "205 p. ; 4to or 8vo"},
                            FieldTexts{.pagination = "205 p. ; not 8vo"}, FieldTexts{.pagination = "205 p. ; 8vo?"}}) {
    INFO(std::string{texts.format} << std::string{texts.height} << std::string{texts.pagination});
    auto const book = described(texts);
    REQUIRE(book.unread.size() == 1);
    CHECK(book.unread[0].rest);
    CHECK(has(examine(book), FindingId::part_unread));
  }
}
