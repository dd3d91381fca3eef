// SPDX-License-Identifier: MIT
// Notes of signatures against the worked examples of the rules. Rule numbers are those of DCRMR (RDA edition of the rules
// for rare materials, 2023), in brackets those of DCRM(B). The totals of leaves are arithmetic on the alphabet of 23
// letters, done by hand.
#include <bifolium/collation.hpp>
#include <bifolium/record/compare_extent.hpp>
#include <bifolium/record/read_signature_note.hpp>
#include <bifolium/record/record_lines.hpp>

#include "check.hpp"

using namespace bifolium;

namespace {
SignatureNote note(std::string_view text) {
  auto const read = read_signature_note(text, dialects::stc);
  REQUIRE_MESSAGE(read, text);
  return *read;
}
} // namespace

TEST_CASE("signatures as the rules write them") {
  struct Example {
    char const* text;
    std::int64_t leaves;
  };
  for (auto const& example : {
           // DCRMR 6.215.44.1 (7B9.1)
           Example{"[A]⁴ B-C⁴ D² E-G⁴ H²", 28},
           Example{"pi⁴ a-i⁸ chi²", 78},
           Example{"[1-4⁸][5-6⁶][7⁸]", 52},
           Example{"1-30⁸ 31⁴ 32-35⁸ (31₄, 35₈ blank)", 276},
           // a research library's cataloguing pages (2014, 2016)
           Example{"A-C4 D4(-D3) E-F4", 23},
           Example{"A-2Z8, 2A-M8", 464},
           Example{"pi⁴(-pi4) A-B⁶ C⁴ a⁶ b⁸, ²A-S⁶ T-V⁴ 2A-2U⁶ 3A-3U⁶ 4A-4U⁶ 5A-5Z⁶ a⁶ 2a⁶ *⁶ **⁸", 673},
           // .44.2: symbols in words
           Example{"[dagger]⁸ a-q⁸", 136},
           Example{"*⁸ [double dagger]⁸ A-M⁸ N⁴", 116},
           Example{"[fist]⁴ A-D⁸ E⁸(±E2) F-G⁸ H⁴ I²", 66},
           Example{"[fleuron]⁸ A⁴ B-Y⁸", 180},
           Example{"[Maltese cross]⁶ A-X⁸ 2A-2P⁸ 2Q⁴", 298},
           Example{"[par.]⁸ A⁸(-A1) B-E⁸ F²", 49},
           Example{"[par.]⁴ 2[sec.]⁴ 3[sec.]² A-3P⁴", 254},
           Example{"A-F⁸ G⁶ a-z⁸ &⁸ [con]⁸ [rum]⁸ 2a-2y⁸", 438},
           // .44.3 (7B9.3)
           Example{"pi⁴ A-C⁴ chi² D-Z⁴", 98},
           Example{"[superscript pi]A⁴ A-D⁴ [superscript chi]D⁴ E-F⁴", 32},
           // .44.35
           Example{"[A]⁸ B-I⁸ J⁸ K-U⁸ V⁸ W⁸ X-Z⁸ ²A-B⁸ chi²", 226},
           Example{"A-C⁸ G-U⁴ W⁴ X-Y⁴", 92},
           // .44.4-.5: notes after the formula
           Example{"[A]⁴ B-2G⁴ ²2E-2G⁴. Gathered in twelves", 132},
           Example{"a⁴ e⁴ i⁴ A-P⁴ R-7A⁴ (gathering P also signed Q)", 564},
           Example{"A¹²; also signed [1]⁶ 2⁶", 12},
           Example{"[A]² B-2H². Gatherings B-2H also signed No. 2-No. 31", 62},
           // .44.6-.85: the script is named before the colon
           Example{"Signatures (in Hebrew numerals): 1-32⁴ 1-27⁶ 1-18⁶", 398},
           Example{"Signatures (right to left): ):(⁸ A-2Y⁸", 368},
           Example{"pi1 α-γ² Α-2Λ²", 77},
           // what the library writes itself
           Example{"Signatures: A⁸ B–O⁸ P⁴.", 116},
       }) {
    INFO(example.text);
    CHECK(note(example.text).formula.leaves() == example.leaves);
  }
  CHECK(note("Signatures (in Hebrew numerals): 1-32⁴").script == "in Hebrew numerals");
  CHECK_FALSE(note("Signatures: A⁸").script);
}

TEST_CASE("a full note has the formula, the pages and the signing") {
  // DCRMR 6.215.44.9 (7B9.12)
  auto const full = note("Collation: 8vo: A-H⁴; 32 leaves: p. [1-2] 3-62 [63-64]; $3(-H3) signed. H4 blank");
  CHECK(full.formula.leaves() == 32);
  CHECK(full.formula.format() == Format::of(8));
  REQUIRE(full.pages);
  CHECK(full.pages->pages() == 64);
  CHECK((*compare_extent(full.formula, *full.pages)).verdict == ExtentAgrees::agrees);
  REQUIRE(full.signing);
  CHECK(full.signing->first == 3);
  CHECK(full.signing->exceptions.size() == 1);
}

TEST_CASE("errors and doubts have their column in the note") {
  CHECK(read_signature_note("Signatures: A⁸ (B⁴").error().place->column >= 16);
  auto const doubtful = note("Signatures (Hebrew א): A⁸ A-B⁴");
  REQUIRE(!doubtful.formula.warnings().empty());
  CHECK(doubtful.formula.warnings()[0].place->column == 27);
  CHECK(!read_signature_note("Signatures: "));
  CHECK(!read_signature_note(""));
}
