// SPDX-License-Identifier: MIT
// What contradicts, and the likely slip, case by case. Formulas and extents are constructed unless a source is named;
// what is right was worked out by hand.
#include <bifolium/evidence/infer.hpp>
#include <bifolium/evidence/signs_against.hpp>
#include <bifolium/evidence/words.hpp>
#include <bifolium/record/read_size.hpp>

#include "book_of.hpp"

#include <algorithm>

using namespace book;

namespace {

Finding found(Audit const& audit, FindingId id) {
  for (auto const& one : audit.findings)
    if (one.id == id) return one;
  FAIL("the finding is missing: " << identifier(id));
  return {};
}
std::string first_formula(Texts const& texts, Omitted omitted = Omitted::eight) {
  auto const audit = examined(texts, omitted);
  return audit.repairs.empty() ? "" : audit.repairs[0].formula.value_or("");
}
std::string first_pagination(Texts const& texts) {
  auto const audit = examined(texts);
  return audit.repairs.empty() ? "" : audit.repairs[0].pagination.value_or("");
}
Audit of_fields(FieldTexts const& fields) { return examine(read_description(fields)); }

} // namespace

TEST_CASE("two digits were exchanged") {
  auto const audit = examined({"A-H⁸ I⁶", "[12], 182 p.", ""});
  auto const finding = found(audit, FindingId::pages_contradict);
  CHECK(finding.level == Severity::error);
  CHECK(finding.delta == 54);
  CHECK(finding.fields == (FieldSet{Field::formula} | Field::pagination));
  CHECK(finding.says == "the formula has 70 leaves (140 pages); the pagination has 12 + 182 = 194 pages, 54 too many");
  REQUIRE(!audit.repairs.empty());
  auto const& repair = audit.repairs[0];
  REQUIRE(repair.edits.size() == 1);
  CHECK(repair.edits[0].kind == SlipKind::transposed);
  CHECK(repair.edits[0].at.column == 7);
  CHECK(repair.edits[0].old == "182");
  CHECK(repair.edits[0].put == "128");
  CHECK(repair.pagination == "[12], 128 p.");
  CHECK(repair.leaves == 70);
  CHECK(repair.share > .8);
  CHECK(repair.says == "182 should be 128 (two digits were exchanged)");
  CHECK(!audit.agrees());
}

TEST_CASE("a gathering is missing where a letter is skipped") {
  auto const audit = examined({"A-G⁸ I⁴", "136 p.", "68"});
  CHECK(has(audit, FindingId::pages_contradict));
  CHECK(has(audit, FindingId::leaves_contradict));
  CHECK(has(audit, FindingId::letters_skip));
  REQUIRE(!audit.repairs.empty());
  CHECK(audit.repairs[0].formula == "A-G⁸ H⁸ I⁴");
  CHECK(audit.repairs[0].edits[0].old.empty());
  CHECK(audit.repairs[0].edits[0].put == " H⁸");
  CHECK(audit.repairs[0].edits[0].at.column == 5);
}

TEST_CASE("the catalogue's own way of writing stays") {
  CHECK(first_formula({"A4 B-G8 H4", "[8], 112 p.", "60"}) == "A4 B-G8 H8");
  CHECK(first_formula({"8°: [A]⁴ B-G⁸ H⁴", "[8], 112 p.", "60"}) == "8°: [A]⁴ B-G⁸ H⁸");
  CHECK(first_formula({"B-K⁸ L⁴", "[8], 152 p.", "80"}) == "A⁴ B-K⁸ L⁴");
  CHECK(first_formula({"A⁸ A⁸ B-F⁸", "96 p.", "48"}) == "A⁸ B-F⁸");
  CHECK(first_pagination({"A-K⁸", "xii, 138 p.", "80"}) == "xxii, 138 p.");
  CHECK(first_pagination({"A-K⁸", "80 p.", "80"}) == "80 leaves");
  CHECK(first_pagination({"A-K⁸", "160 leaves", "80"}) == "160 p.");
}

// Rows whose source leaves them contradictory (tests/data/contradicting_descriptions.tsv); what is right was judged by
// hand, and agrees to the page.
TEST_CASE("contradictions of a catalogue") {
  CHECK(first_pagination({"A-K6 L4.", "[148] p.", ""}) == "[128] p.");
  CHECK(first_formula({"A B4", "24 leaves", ""}, Omitted::eight) != "");
  CHECK(first_formula({"[A]2 B-G4 H2", "[64] p.", ""}) == "[A]2 B-H4 I2");
}

TEST_CASE("the pagination alone is no contradiction, and what agrees has no repair") {
  CHECK(examined({"", "[12], 182 p.", ""}).findings.empty());
  for (Texts const& texts : {Texts{"A-H⁸ I⁶", "[12], 128 p.", "70"}, Texts{"A-H⁸ I⁶", "[12], 127 p.", "70"},
                             Texts{"A-H⁸ I⁶ (I6 blank)", "[12], 126 p.", "70"}, Texts{"A-H⁸ I⁶", "", "70"}}) {
    auto const audit = examined(texts);
    CHECK(audit.agrees());
    CHECK(audit.repairs.empty());
    CHECK(audit.leaves == 70);
  }
}

TEST_CASE("a blank leaf that is not counted is a note, unless the catalogue counts blanks") {
  auto const audit = examined({"A-H⁸ I⁶", "[12], 126 p.", ""});
  CHECK(found(audit, FindingId::last_blank_not_counted).level == Severity::note);
  CHECK(audit.agrees());
  REQUIRE(!audit.repairs.empty());
  CHECK(audit.repairs[0].edits.empty());
  CHECK(audit.repairs[0].says == "as it reads");
  FieldTexts fields;
  fields.formula = "A-H⁸ I⁶", fields.pagination = "[12], 126 p.";
  Conventions counted;
  counted.blanks = BlankLeaves::counted;
  CHECK(has(examine(read_description(fields, counted)), FindingId::pages_contradict));
}

TEST_CASE("plates counted among the leaves") {
  auto const audit = examined({"A-H⁸", "", "68"}, Omitted::error, "4");
  CHECK(found(audit, FindingId::plates_in_leaves).delta == 4);
  REQUIRE(!audit.repairs.empty());
  CHECK(audit.repairs[0].leaves_text == "64");
}

TEST_CASE("extents as catalogues write them") {
  CHECK(examined({"A-K⁸", "4 p. l., 152 p.", ""}).agrees()); // 160 pages
  CHECK(examined({"A-K⁸", "4 p. l., 160 p.", ""}).agrees()); // the numbers count the preliminary leaves again
  CHECK(!examined({"A-K⁸", "4 p. l., 170 p.", ""}).agrees());
  CHECK(examined({"π⁴ A-K⁸", "[4] leaves, 160 p.", ""}).agrees()); // units govern back to the unit before
  CHECK(examined({"A-K⁸", "142+ p.", ""}).agrees());               // the copy lacks the end: nothing is known
  auto const plates = examined({"A-H⁸", "128 p., [4] leaves of plates", "68"});
  CHECK(found(plates, FindingId::plates_in_leaves).delta == 4);
}

TEST_CASE("J, U and W may be letters of the book") {
  auto const audit = examined({"A-Z⁸", "416 p.", "208"});
  auto const with_letters =
      std::find_if(audit.repairs.begin(), audit.repairs.end(), [](auto const& one) { return one.letters.has_value(); });
  REQUIRE(with_letters != audit.repairs.end());
  CHECK(with_letters->letters == Letters{true, true, true});
  CHECK(with_letters->leaves == 208);
  // where one is printed it is a reading and no repair: A-W has 23 letters and W
  CHECK(examined({"A-V⁸ W⁸", "336 p.", ""}).agrees());
}

TEST_CASE("odd page numbers are on rectos") {
  auto const audit = examined({"A-K⁸ L²", "[9], 154 p.", ""});
  CHECK(found(audit, FindingId::numbers_begin_on_verso).level == Severity::doubt);
  REQUIRE(audit.repairs.size() > 1);
  CHECK(audit.repairs[0].edits.empty()); // it agrees, so as it reads comes first
  CHECK(audit.repairs[1].pagination == "[10], 154 p.");
}

TEST_CASE("a change of a gathering that is missing is left out, and told") {
  auto const audit = examined({"B-G⁸ H⁷ (-A1)", "[6], 109 p.", "58"});
  CHECK(found(audit, FindingId::part_unread).level == Severity::doubt);
  REQUIRE(!audit.repairs.empty());
  CHECK(audit.repairs[0].formula == "A⁴ B-G⁸ H⁷ (-A1)");
}

TEST_CASE("a number of leaves that is not written is written out") {
  auto const audit = examined({"A-D E⁶", "[76] p.", "38"});
  CHECK(audit.agrees());
  auto const note = found(audit, FindingId::exponent_omitted);
  REQUIRE(note.edits.size() == 1);
  CHECK(note.edits[0].old == "A-D");
  CHECK(note.edits[0].put == "A-D⁸");
}

TEST_CASE("paper, covers, measures and dates") {
  CHECK(found(of_fields({.material = "wove", .year = "1690"}), FindingId::year_before_paper).level == Severity::error);
  CHECK(of_fields({.material = "wove", .year = "1790"}).findings.empty());
  CHECK(of_fields({.material = "laid", .year = "1690"}).findings.empty());
  CHECK(found(of_fields({.height = "190 mm", .binding = "150 mm"}), FindingId::cover_below_leaf).level ==
        Severity::error);
  CHECK(of_fields({.height = "190 mm", .binding = "19 cm"}).findings.empty());
  CHECK(has(of_fields({.height = "19"}), FindingId::height_unit));
  CHECK(has(of_fields({.height = "187 cm"}), FindingId::height_unit));
  CHECK(has(of_fields({.height = "100", .width = "150"}), FindingId::height_below_width));
  CHECK(!has(of_fields({.format = "oblong 4to", .height = "100", .width = "150"}), FindingId::height_below_width));
  CHECK(has(of_fields({.year = "1400"}), FindingId::year_impossible));
  CHECK(of_fields({.year = "1455"}).findings.empty());
}

TEST_CASE("the format against the paper") {
  // chain lines are vertical in folio and octavo, horizontal in quarto (Gaskell, A New Introduction to Bibliography)
  auto const quarto =
      of_fields({.formula = "8°: A-K⁴", .height = "210", .width = "160", .chain_lines = "horizontal", .year = "1600"});
  CHECK(found(quarto, FindingId::format_against_chain_lines).level == Severity::doubt);
  CHECK(!has(
      of_fields({.formula = "4°: A-K⁴", .height = "210", .width = "160", .chain_lines = "horizontal", .year = "1600"}),
      FindingId::format_against_chain_lines));
  CHECK(found(of_fields({.formula = "4°: A-K⁸", .format = "8vo"}), FindingId::format_differs).level == Severity::error);
  // size alone accuses nobody
  auto const small = of_fields({.format = "fol.", .height = "150", .width = "95"});
  for (auto const& finding : small.findings) CHECK(finding.level == Severity::note);
}

TEST_CASE("the watermark against the format") {
  // in the middle of the leaf in folio, in the gutter in quarto, at the head of the gutter in octavo (Aldis, The Printed
  // Book, 1916), at the fore-edge in duodecimo (letter to R. B. McKerrow, 17 Aug 1924, Trinity College, Cambridge). The
  // others, but for the corners and edges of oblong and half-sheet schemes, have no leaf with it.
  struct Row {
    std::string_view format, height, width, chain_lines, right;
  };
  constexpr Row rows[]{{"fol.", "300", "200", "vertical", "centre"},
                       {"4to", "200", "150", "horizontal", "gutter"},
                       {"8vo", "165", "105", "vertical", "head-of-gutter"},
                       {"12mo", "140", "80", "horizontal", "fore-edge"}};
  for (auto const& row : rows)
    for (std::string_view const place : {"centre", "gutter", "head-of-gutter", "fore-edge", "absent", "unknown", ""}) {
      CAPTURE(row.format);
      CAPTURE(place);
      FieldTexts const texts{.format = row.format,
                             .height = row.height,
                             .width = row.width,
                             .chain_lines = row.chain_lines,
                             .watermark = place,
                             .year = "1650"};
      auto const audit = of_fields(texts);
      bool const wrong = place != row.right && place != "absent" && place != "unknown" && !place.empty();
      CHECK(has(audit, FindingId::format_against_watermark) == wrong);
      CHECK(audit.agrees() == !(wrong && found(audit, FindingId::format_against_watermark).level == Severity::doubt));
      if (!wrong) continue;
      auto const& finding = found(audit, FindingId::format_against_watermark);
      CHECK(finding.fields.has(Field::watermark));
      CHECK(finding.fields.has(Field::format));
      CHECK(finding.says.find("as a rule, but it is stated to be") != std::string::npos);
    }
  // after the act of 1794 British moulds had their marks elsewhere (McMullin, Studies in Bibliography 56)
  CHECK(!has(of_fields({.format = "8vo",
                        .height = "213",
                        .width = "130",
                        .watermark = "head-or-tail-edge",
                        .year = "1805",
                        .place = "London"}),
             FindingId::format_against_watermark));
}

TEST_CASE("what the leaf shows against the stated format is a finding") {
  // a folio has one fold, at the spine; a quarto has bolts at the head only, an octavo at head and fore-edge: Gaskell, A New
  // Introduction to Bibliography (1972), pp. 84-107 (from memory)
  struct Row {
    FieldTexts texts;
    FindingId id;
    FieldSet fields;
  };
  FieldSet const format = Field::format;
  for (auto const& [texts, id, fields] :
       {Row{{.format = "2°", .head_edge = "bolt"}, FindingId::format_against_edges, format | Field::head_edge},
        Row{{.format = "4°", .fore_edge = "bolt"}, FindingId::format_against_edges, format | Field::fore_edge},
        Row{{.format = "8°", .head_edge = "deckle", .tail_edge = "bolt"},
            FindingId::format_against_edges,
            format | Field::head_edge | Field::tail_edge},
        Row{{.formula = "2°: A-K⁶", .head_edge = "bolt"},
            FindingId::format_against_edges,
            FieldSet{Field::formula} | Field::head_edge},
        Row{{.format = "8°", .countermark = "gutter", .year = "1480"},
            FindingId::format_against_countermark,
            format | Field::countermark},
        Row{{.format = "8°",
        .gatherings = "8",
        .leaves_seen = "1 head-of-gutter; 2 absent; 3 centre; 4 head-of-gutter; 5 head-of-gutter; 6 absent; 7 absent; "
                       "8 head-of-gutter"},
            FindingId::format_against_leaves,
            format | Field::leaves_seen}}) {
    auto const audit = of_fields(texts);
    CAPTURE(std::string{identifier(id)});
    REQUIRE(has(audit, id));
    auto const finding = found(audit, id);
    CHECK(finding.fields == fields);
    CHECK(finding.level == Severity::doubt);
    CHECK(finding.settle);
    CHECK(!audit.agrees());
  }
  CHECK(found(of_fields({.format = "2°", .head_edge = "bolt"}), FindingId::format_against_edges).says ==
        "no leaf of 2° has its edges so");
  // every sign that a format does not show is a finding, and no other is
  auto const edges = [](std::string_view text) {
    return text.empty() ? EdgeSeen::unknown : *read_word<EdgeSeen>(text);
  };
  for (auto const leaves : {2, 4, 8, 12})
    for (std::string_view const head : {"", "bolt", "deckle"})
      for (std::string_view const fore_edge : {"", "bolt", "deckle"})
        for (std::string_view const hole : {"", "inside", "spine-fold", "fore-edge"})
          for (std::string_view const mark : {"", "centre", "gutter", "fore-edge"}) {
            auto const name = std::to_string(leaves) + "°";
            FieldTexts const texts{
                .format = name, .countermark = mark, .head_edge = head, .fore_edge = fore_edge, .point_hole = hole};
            CAPTURE(name);
            CAPTURE(head);
            CAPTURE(fore_edge);
            CAPTURE(hole);
            CAPTURE(mark);
            LeafEvidence seen{.head = edges(head), .fore_edge = edges(fore_edge)};
            if (!hole.empty()) seen.point_hole = *read_word<HolePlace>(hole);
            if (!mark.empty()) seen.countermark = *read_word<MarkPlace>(mark);
            auto const observation = observe(seen);
            REQUIRE(observation);
            auto const inference = infer_format(*observation);
            auto const audit = of_fields(texts);
            if (inference.mixed) continue;
            for (auto const& sign : signs_against(*observation, Format::of(leaves))) {
              auto const says = to_words(sign, Format::of(leaves));
              CHECK(std::any_of(audit.findings.begin(), audit.findings.end(),
                                [&](Finding const& one) { return one.says == says; }));
            }
            for (auto const& one : audit.findings) CHECK(one.level != Severity::error);
          }
  // leaves of a gathering say nothing unless it is known how many leaves it has
  auto const alone = read_description({.format = "8°", .leaves_seen = "1 gutter; 2 absent"});
  REQUIRE(alone.unread.size() == 1);
  CHECK(alone.unread[0].error.problem == Problem::gathering_size_needed);
  CHECK(alone.unread[0].field == Field::leaves_seen);
  CHECK(!alone.leaves_seen);
  CHECK(read_description({.gatherings = "4", .leaves_seen = "5 gutter"}).unread.size() == 1);
  CHECK(read_description({.formula = "8°: A-K⁸", .leaves_seen = "5 gutter"}).leaves_seen);
}

TEST_CASE("chain lines and marks of vellum are a contradiction") { // made of skins, not in a mould
  for (std::string_view const chains : {"vertical", "horizontal", "both", "unknown", ""})
    for (std::string_view const mark : {"gutter", "absent", "unknown", ""})
      for (std::string_view const material : {"vellum", "laid", ""}) {
        bool const of_paper = (!chains.empty() && chains != "unknown") || mark == "gutter";
        auto const audit = of_fields({.format = "4to", .chain_lines = chains, .watermark = mark, .material = material});
        CHECK(has(audit, FindingId::paper_signs_in_vellum) == (of_paper && material == "vellum"));
        if (of_paper && material == "vellum") CHECK(audit.contradicts());
      }
}

TEST_CASE("the division of a 24° is not held against it, and an unfolded sheet is printed either way") {
  // chain lines of 24° run either way (Cim, Le Livre III, 1907, pp. 89-90): two twelves have them vertical
  for (std::string_view const chains : {"vertical", "horizontal"})
    for (std::string_view const formula : {"24°: A-H¹²", "24°: A-H⁸"})
      CHECK(of_fields({.formula = formula, .height = "113", .width = "54", .chain_lines = chains, .year = "1650"})
                .agrees());
  CHECK(!has(
      of_fields({.formula = "24°: A-H¹²", .height = "113", .width = "54", .chain_lines = "vertical", .year = "1650"}),
      FindingId::format_against_chain_lines));
  for (std::string_view const format : {"1°", "broadside", "single sheet", "1/2°"})
    CHECK(of_fields({.format = format, .height = "310", .width = "430", .chain_lines = "vertical", .year = "1650"})
              .agrees());
  CHECK(has(of_fields({.format = "8vo", .height = "100", .width = "150"}), FindingId::height_below_width));
}

TEST_CASE("signing and gatherings against the formula") {
  CHECK(found(of_fields({.formula = "A-K⁴", .signing = "$5 signed"}), FindingId::signing_beyond_gathering).delta == 1);
  CHECK(!has(of_fields({.formula = "A-K⁸", .signing = "$5 signed"}), FindingId::signing_beyond_gathering));
  CHECK(has(of_fields({.formula = "A-K⁸", .gatherings = "in fours"}), FindingId::gatherings_differ));
  for (int leaves = 1; leaves <= 70; ++leaves) {
    auto const formula = "A-K" + std::to_string(leaves), said = std::to_string(leaves);
    CHECK_FALSE(has(of_fields({.formula = formula, .gatherings = said}), FindingId::gatherings_differ));
  }
  CHECK(of_fields({.formula = "A² B-K⁴ L²", .gatherings = "in fours"}).findings.empty());
  for (std::string const formula : {"A8 B4 C8 D4", "A-D⁸/⁴", "π² A-K⁸/⁴ L²", "A⁴ B⁸ C⁴ D⁸"})
    for (std::string const said : {"8.4", "8/4", "8 and 4", "4.8", "in eights and fours"}) {
      CAPTURE(formula);
      CAPTURE(said);
      CHECK_FALSE(has(of_fields({.formula = formula, .gatherings = said}), FindingId::gatherings_differ));
    }
  for (std::string const formula : {"A8 B8", "A-K⁸ L⁴", "A-K⁴", "A-D¹²/⁶", "A-E⁸ F-K⁴"}) {
    CAPTURE(formula);
    CHECK(has(of_fields({.formula = formula, .gatherings = "8.4"}), FindingId::gatherings_differ));
  }
}

TEST_CASE("formats as catalogues state them") {
  CHECK(has(of_fields({.formula = "A-K⁴", .format = "4to in 8s"}), FindingId::gatherings_differ));
  CHECK(of_fields({.formula = "4°: A-K⁸", .format = "4to in 8s"}).findings.empty());
  CHECK(!has(of_fields({.formula = "4°: A-K⁸", .format = "4to and 8vo"}), FindingId::format_differs));
}

TEST_CASE("what cannot be read is told, and the rest is examined") {
  auto const audit = of_fields(
      {.formula = "A-", .pagination = "17 x", .leaves = "many", .format = "zz", .material = "wove", .year = "1690"});
  CHECK(std::count_if(audit.findings.begin(), audit.findings.end(),
                      [](auto const& one) { return one.id == FindingId::part_unread; }) == 4);
  CHECK(has(audit, FindingId::year_before_paper));
}

TEST_CASE("fields imply numbers of leaves and years") {
  auto const audit = examined({"A-H⁸ I⁶", "[12], 128 p.", "70"});
  REQUIRE(audit.implied.size() == 3);
  CHECK(audit.implied[0] == Implied{Field::formula, Implied::Quantity::leaves, 70, 70});
  CHECK(audit.implied[1] == Implied{Field::pagination, Implied::Quantity::leaves, 70, 71});
  CHECK(audit.implied[2] == Implied{Field::leaves, Implied::Quantity::leaves, 70, 70});
}

TEST_CASE("parts are examined in whatever way their raised characters are written") { // DCRMR 6.215.44.3 for the words
  auto const same = examined({"πA⁴ A-P⁸; χA⁴ A-Q⁸ R⁴", "[8], 240; 290 p.", ""});
  REQUIRE(same.repairs.size() > 1);
  CHECK(same.repairs[0].says.starts_with("part 2: "));
  for (std::string const text : {"[superscript pi]A⁴ A-P⁸; [superscript chi]A⁴ A-Q⁸ R⁴",
                                 "[Superscript pi]A[superscript 4] A-P[superscript 8]; [superscript chi]A^4 A-Q⁸ R⁴",
                                 "Signatures: [superscript pi]A⁴ A-P⁸; [superscript chi]A⁴ A-Q⁸ R⁴.",
                                 "<sup>π</sup>A<sup>4</sup> A-P⁸; <sup>χ</sup>A⁴ A-Q⁸ R⁴"}) {
    CAPTURE(text);
    auto const audit = examined({text, "[8], 240; 290 p.", ""});
    REQUIRE(audit.findings.size() == same.findings.size());
    for (std::size_t i = 0; i < audit.findings.size(); ++i) CHECK(audit.findings[i].says == same.findings[i].says);
    REQUIRE(!audit.repairs.empty());
    CHECK(audit.repairs[0].leaves == same.repairs[0].leaves);
    CHECK(audit.repairs[0].pagination == same.repairs[0].pagination);
  }
}

TEST_CASE("a repair that adds something says what it comes after, or before: no two say the same") {
  struct Added {
    char const *formula, *pages, *says;
  };
  for (auto const& one : std::initializer_list<Added>{
           {"A-P⁸; A-Q⁸ R⁴", "240; 252 p.", "part 2: [12] is missing before 252 (pages without numbers are missing)"},
           {"A-P⁸; A-Q⁸ R⁴", "240; 252 p.", "part 2: [12] is missing after 252 (pages without numbers are missing)"},
           {"A² B-D⁴; A² B-D⁴; A² B-D⁴", "[88] p.",
            "A² (number 2 of 3) should be A⁴ (another number of leaves was written)"},
           {"A-G⁸ I-R⁸", "[8], 264 p.", "H⁸ is missing after A-G⁸ (a gathering is missing where a letter is skipped)"},
           {"A-P⁸", "[8], 244, [3] p.", "pi⁸ is missing before A-P⁸ (the preliminaries are missing)"},
           {"A-P⁸", "[8], 232 [2] p.",
            "(P8+1) is missing after A-P⁸ (a leaf that was cut away or inserted is not stated)"}}) {
    CAPTURE(std::string{one.says});
    auto const repairs = examined({one.formula, one.pages, ""}).repairs;
    CHECK(std::any_of(repairs.begin(), repairs.end(), [&](Repair const& repair) { return repair.says == one.says; }));
    for (std::size_t i = 0; i < repairs.size(); ++i)
      for (std::size_t k = 0; k < i; ++k) CHECK(repairs[i].says != repairs[k].says);
  }
}

TEST_CASE("parts are examined one by one") {
  CHECK(examined({"A-P⁸; A-Q⁸ R⁴", "240; 264 p.", ""}).agrees());
  CHECK(examined({"A-P⁸ A-Q⁸ R⁴", "240; 264 p.", ""}).leaves == 252); // the letters begin again
  auto const audit = examined({"A-P⁸; A-Q⁸ R⁴", "240; 246 p.", ""});
  auto const finding = found(audit, FindingId::pages_contradict);
  CHECK(finding.says == "part 2: the formula has 132 leaves (264 pages); the pagination has 246 pages, 18 too few");
  REQUIRE(!audit.repairs.empty());
  CHECK(audit.repairs[0].pagination == "240; 264 p.");
  CHECK(audit.repairs[0].leaves == 252);
  REQUIRE(audit.repairs[0].edits.size() == 1);
  CHECK(audit.repairs[0].edits[0].at.column == 6);
  auto const dropped = examined({"A-K⁴; ²A-²K⁴ ²L²", "[8], 6, 49-62, [2]; [84] p.", ""}).repairs;
  CHECK(std::any_of(dropped.begin(), dropped.end(),
                    [](auto const& one) { return one.pagination == "[8], 56, 49-62, [2]; [84] p."; }));
  // what is wrong in both parts and makes no difference in the sum
  auto const both = examined({"A-P⁸; A-Q⁸ R⁴", "264; 240 p.", ""});
  CHECK(both.findings.size() == 2);
  for (auto const& repair : both.repairs) { // each part by itself
    CHECK(repair.edits.size() >= 2);
    CHECK(repair.says.starts_with("part 1: "));
    CHECK(repair.says.find("; part 2: ") != std::string::npos);
  }
  // a slip in each of two parts, and one in the number of leaves of both; hand-counted
  auto const each = examined({"A-P⁸; A-Q⁸ R⁴", "204; 246 p.", ""});
  REQUIRE(!each.repairs.empty());
  CHECK(each.repairs[0].pagination == "240; 264 p.");
  CHECK(each.repairs[0].edits.size() == 2);
  CHECK(each.repairs[0].says.starts_with("part 1: 204 should be 240 (two digits were exchanged); part 2: "));
  CHECK(each.repairs[0].leaves == 252);
  auto const stated = examined({"A-P⁸; A-Q⁸ R⁴", "240; 246 p.", "252"});
  REQUIRE(!stated.repairs.empty());
  CHECK(stated.repairs[0].pagination == "240; 264 p.");
  CHECK(stated.repairs[0].share >= audit.repairs[0].share); // the leaves of the whole speak for it
  auto const leaves = examined({"A-P⁸; A-Q⁸ R⁴", "240; 264 p.", "225"});
  REQUIRE(!leaves.repairs.empty());
  CHECK(leaves.repairs[0].leaves_text == "252");
  CHECK(leaves.repairs[0].share > .8);
  // a row of EEBO-TCP (A00602) whose parts agree
  CHECK(examined({"[par.]⁴ *⁴ A-G⁴ H*-N*⁴ O*⁴ (-O*4) O**⁴ P*-Z*⁴ 2A-2S⁴ 2T² ; [par.]⁴ *² A-F⁴ G¹ H-2B⁴",
                  "[24], 46, [106], 176; [12], 50, 49-191 [i.e. 190], [2] p.", ""})
            .findings.size() < 3);
}

TEST_CASE("a repair says what in the book decides about it, each kind of slip in its own field") {
  for (std::size_t kind = 0; kind < slip_count; ++kind) CHECK(what_settles(static_cast<SlipKind>(kind)).size() > 10);
  CHECK(what_settles(SlipKind::last_missing) == "the last gathering and its signature");
  // digits of a page number are on the last page; digits of a number of leaves are settled by counting
  auto const pages = examined({"A-H⁸", "182 p.", "64"});
  REQUIRE(!pages.repairs.empty());
  auto const leaves = examined({"A-H⁸", "128 p.", "46"});
  REQUIRE(!leaves.repairs.empty());
  CHECK(pages.repairs[0].says == "182 should be 128 (two digits were exchanged)");
  CHECK(what_settles(pages.repairs[0]) == "the number on the last page of this run");
  CHECK(leaves.repairs[0].edits[0].put == "64");
  CHECK(what_settles(leaves.repairs[0]) == "the leaves: count them");
  CHECK(!what_settles(Repair{}));
  Repair letters;
  letters.letters = Letters{};
  CHECK(what_settles(letters) == what_settles(SlipKind::alphabet));
}

TEST_CASE("a book that changes from fours to eights is repaired with its pages as without them") { // constructed
  // A-C⁴ D⁴ E-F⁸ G⁸ has 40 leaves: each missing count is that of the next gathering
  for (auto const& texts : {Texts{"A-C D4 E-F G8", "", "40"}, {"A-C D4 E-F G8", "80 p.", "40"}}) {
    auto const audit = examined(texts);
    REQUIRE(!audit.repairs.empty());
    CHECK(audit.repairs[0].formula == "A-C4 D4 E-F8 G8");
    CHECK(audit.repairs[0].share > .8);
  }
}

TEST_CASE(
    "what agrees is told first, however unlikely it is, and the repairs after it by their shares") { // constructed
  // 79 leaves and 158 pages, but a gathering has seven leaves, and nine pages are before page 1
  auto const audit = examined({"A-C⁸ D⁷ E-K⁸", "[9], 149 p.", ""});
  auto const& repairs = audit.repairs;
  REQUIRE(repairs.size() > 2);
  CHECK(repairs[0].says == "as it reads");
  CHECK(repairs[0].leaves == 79);
  CHECK(repairs[0].share < repairs[1].share);
  for (std::size_t i = 1; i < repairs.size(); ++i) {
    CAPTURE(i);
    CHECK(!repairs[i].edits.empty());
    CHECK(!repairs[i].says.empty());
    CHECK((i == 1 || repairs[i].share <= repairs[i - 1].share));
    for (std::size_t k = 0; k < i; ++k) CHECK(repairs[i].says != repairs[k].says);
  }
}

TEST_CASE("a limit is told") {
  std::string formula, pagination;
  for (int i = 0; i < 70; ++i) formula += "A" + std::string{i % 2 == 0 ? "⁸ " : "⁴ "};
  CHECK(has(examined({formula, "8 p.", ""}), FindingId::not_searched));
  for (int i = 0; i < 40; ++i) pagination += "[4], ";
  CHECK(has(examined({"A-B⁸", pagination + "7 p.", ""}), FindingId::not_searched));
  auto const told = [](Audit const& audit) {
    std::string all;
    for (auto const& finding : audit.findings)
      if (finding.id == FindingId::not_searched) all += finding.says;
    return all;
  };
  // pairs of slips: a formula of many runs, a pagination of more than twelve, each far from the stated leaves
  std::string runs, pages;
  for (char c : std::string{"ABCDEFGHIKLMNOPQRSTVXYZabcdefghiklmnopqrstvxyz"})
    runs += std::string{c} + (c % 2 == 0 ? "⁸ " : "⁴ ");
  CHECK(told(examined({runs, "", "999"})) ==
        "of two slips in the formula only a missing first and a missing last gathering are searched for: it has more "
        "than 600 possible single ones");
  CHECK(told(examined({"A-K⁸", "", "999"})).empty());
  for (int i = 0; i < 6; ++i) pages += "[4], " + std::to_string(17 + i) + ", ";
  CHECK(told(examined({"A-K⁸", pages + "[2] p.", "81"})) ==
        "two slips in the pagination are not searched for: it has more than 12 runs of pages");
  CHECK(told(examined({"A-K⁸", pages.substr(0, pages.size() - 2) + " p.", "81"})).empty());
  CHECK(told(examined({"", pages + "[2] p.", "999"})) ==
        "two slips in the pagination are not searched for: it has more than 12 runs of pages");
}

TEST_CASE("two slips in a pagination are found without a formula too") { // constructed
  // of 124 leaves, with 2, 12 and 234 pages: 21 and 324 were written
  auto const audit = examined({"", "[2], 21, 324 p.", "124"});
  bool found = false;
  for (auto const& repair : audit.repairs) found = found || repair.pagination == "[2], 12, 234 p.";
  CHECK(found);
}

TEST_CASE("arabic numbers above 4999 are repaired as smaller ones are") { // constructed
  auto const audit = examined({"1-334⁸ 335⁴", "5325 p.", "2676"});
  REQUIRE(!audit.repairs.empty());
  CHECK(audit.repairs[0].pagination == "5352 p.");
}

TEST_CASE("identifiers are words for machines, each its own") {
  for (int a = 601; a <= 628; ++a)
    for (int b = 601; b < a; ++b) CHECK(identifier(static_cast<FindingId>(a)) != identifier(static_cast<FindingId>(b)));
  for (std::size_t a = 0; a < slip_count; ++a)
    for (std::size_t b = 0; b < a; ++b)
      CHECK(identifier(static_cast<SlipKind>(a)) != identifier(static_cast<SlipKind>(b)));
  CHECK(identifier(FindingId::numbers_begin_on_verso) == "numbers_begin_on_verso");
  CHECK(identifier(Field::place) == "place");
  CHECK(identifier(SlipKind::pages_for_leaves) == "pages_for_leaves");
}

TEST_CASE("what contradicts, what could not be read, and what has nothing to compare are three things") { // constructed
  struct {
    FieldTexts texts;
    bool agrees, contradicts, left_unread;
  } const cases[]{
      {{}, true, false, false},
      {{.formula = "8°: A-C8", .pagination = "46, [2] p."}, true, false, false},
      {{.formula = "8°: A-C8", .pagination = "64 p."}, false, true, false},
      {{.format = "octavvo"}, false, false, true},
      {{.place = "Utopia"}, false, false, true},
      {{.formula = "8°: A-C8", .pagination = "64 p.", .format = "octavvo"}, false, true, true},
      {{.formula = "8°: A C8"}, false, false, true},
      {{.formula = "8°: A8 C8"}, false, false, false}, // a doubt: a letter is left out
      // words beside a value
      {{.formula = "8°: A-C8", .format = "8vo, uncut"}, true, false, true},
      {{.height = "19 cm, in boards"}, true, false, true},
      {{.height = "19 cm"}, true, false, false},
      {{.pagination = "340 p. (misnumbered 304)"}, true, false, true},
      {{.pagination = "[16], 1-300 p. (last 3 blank)"}, true, false, true},
      {{.leaves = "84 leaves, one torn"}, true, false, true},
      {{.gatherings = "in eights, the last in four"}, true, false, true},
  };
  for (auto const& one : cases) {
    INFO(std::string{one.texts.formula} << ' ' << std::string{one.texts.format});
    auto const audit = examine(read_description(one.texts));
    CHECK(audit.agrees() == one.agrees);
    CHECK(audit.contradicts() == one.contradicts);
    CHECK(audit.left_unread() == one.left_unread);
  }
}

TEST_CASE("a height that is very rare is told with a reason that can be") { // constructed
  auto const reason = [](char const* height) {
    for (auto const& one : examine(read_description({.height = height})).findings)
      if (one.id == FindingId::height_unit) return one.says;
    return std::string{};
  };
  for (char const* height : {"22", "22 mm", "187 cm", "9000 mm", "3 cm"}) {
    CAPTURE(height);
    CHECK(reason(height).ends_with("perhaps the unit or a figure is wrong"));
  }
  CHECK(reason("19 cm").empty());
  // `c.` after a number does not mean about, and is no unit
  auto const abbreviated = read_description({.height = "22 c."});
  CHECK(!abbreviated.height);
  REQUIRE(abbreviated.unread.size() == 1);
  CHECK(abbreviated.unread[0].error.problem == Problem::unknown_unit);
  CHECK(abbreviated.unread[0].error.found_text() == "c");
}

TEST_CASE("a doubt about c or circa quotes the c") { // constructed
  auto const book = read_description({.year = "in c1790"});
  REQUIRE(book.doubts.size() == 1);
  CHECK(book.doubts[0].doubt == error_at(Problem::circa_or_copyright, TextPlace{1, 4}, "c1790"));
}
