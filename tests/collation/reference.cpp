// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>
#include <bifolium/fold.hpp>
#include <bifolium/imposition.hpp>

#include "check.hpp"

using namespace bifolium;

namespace {
IdealCopy book_of(char const* text) {
  auto const formula = read_formula(text, dialects::bmc);
  REQUIRE(formula);
  return *formula;
}
} // namespace

TEST_CASE(
    "C7 verso stands on the inner forme of an octavo") { // W. B. Todd, Studies in Bibliography 3: press figure C7v(i)
  auto const book = book_of("8°: A-K⁸");
  auto const page = read_reference(book, "C7v");
  REQUIRE(page);
  auto const place = place_of(book, *page, impose<schemes::octavo>());
  REQUIRE(place);
  CHECK(place->side == Side::inner);
  CHECK(page_of_book(book, *page) == 2 * (16 + 7)); // arithmetic
  // a gathering of four was not printed by that scheme
  auto const short_book = book_of("8°: A⁴ B⁸");
  CHECK(!place_of(short_book, *read_reference(short_book, "A1r"), impose<schemes::octavo>()));
}

TEST_CASE("A leaf is the same in every form of reference") {
  auto const book = book_of("π² A-Z⁸ 2A-2C⁸");
  auto const leaf = *read_reference(book, "sig. 2B3v");
  for (auto text : {"2B3v", "BB3v", "Bb3v", "2B3ᵛ", "2B3 verso", "2Biijv", "2B iij verso"}) {
    INFO(text);
    auto const read = read_reference(book, text);
    REQUIRE(read);
    CHECK(*read == leaf);
  }
  CHECK(write_reference(book, leaf) == "2B3v");
  CHECK(book.leaf_number(leaf.leaf) == 2 + 23 * 8 + 8 + 3);
  CHECK(*read_reference(book, "f. 197v") == leaf);
  CHECK(*read_reference(book, "197b") == leaf);
  // Glasgow and Morgan records write 36/10 and [2]/1r
  auto const unsigned_book = book_of("Fol. [1-2¹⁰ 3¹² 4-10¹⁰]");
  CHECK(unsigned_book.leaf_number(read_reference(unsigned_book, "[2]/1r")->leaf) == 11);
  CHECK(unsigned_book.leaf_number(read_reference(unsigned_book, "3/12")->leaf) == 32);
}

TEST_CASE(
    "Every form of reference is read and written") { // forms: BMC and PI 10b, 30ᵃ; Bodleian a2r; GLA and MOR 36/10
  auto const book = book_of("π² A-Z⁸ 2A-2C⁸");
  auto const leaf = *read_reference(book, "B3v");
  CHECK(write_reference(book, leaf) == "B3v");
  CHECK(write_reference(book, leaf, ReferenceForm::raised_side) == "B3ᵛ");
  CHECK(write_reference(book, leaf, ReferenceForm::roman) == "Biij verso");
  CHECK(write_reference(book, leaf, ReferenceForm::leaf_number) == "f. 13v");
  CHECK(write_reference(book, leaf, ReferenceForm::leaf_letter) == "13b");
  for (auto text : {"sig. B3v", "B3ᵛ", "Biijv", "Biiiv", "Biiiᵛ", "B.iii.v.", "B. iij. verso", "f. 13v", "fol. 13b",
                    "Bl. 13ᵇ", "13ᵇ", "ff. 13v", "leaf 13v"}) {
    INFO(text);
    CHECK(*read_reference(book, text) == leaf);
  }
  CHECK(read_reference(book, "Biv")->leaf.leaf == 4);
  CHECK(read_reference(book, "Bviiv")->leaf.leaf == 7);
  CHECK(read_reference(book, "Bv").error().problem == Problem::not_a_reference); // the verso of what?
  CHECK(book.conjugate(leaf.leaf) == read_reference(book, "B6")->leaf);
}

TEST_CASE("A reference is read in every form of words, brackets and sides") { // common practice, no source
  auto const book = book_of("8°: π² A-K⁸ L⁴ χ1");
  auto const leaf = *read_reference(book, "A3");
  CHECK(book.leaf_number(leaf.leaf) == 5);
  for (auto text :
       {"sig A3",   "SIG. A3", "signature A3", "Signatures A3", "sigs. A3", "sign. A3", "leaf A3", "fol. A3",
        "[A3]",     "A₃",      "f. 5",         "folio 5",       "Fol. 5",   "fo. 5",    "fols. 5", "folios 5",
        "leaves 5", "Blatt 5", "Bl. A3",       "c. 5",          "c. A3",    "A. iii"}) {
    INFO(text);
    auto const read = read_reference(book, text);
    REQUIRE(read);
    CHECK(*read == leaf);
  }
  for (auto const& [recto, verso] : {std::pair{"A3 rect.", "A3 vers."},
                                     {"A3 r°", "A3 v°"},
                                     {"A3r°", "A3v°"},
                                     {"A3 ro", "A3 vo"},
                                     {"A3, recto", "A3, verso"},
                                     {"A3 (recto)", "A3 (verso)"},
                                     {"A3(r)", "A3(v)"},
                                     {"A3^r", "A3^v"},
                                     {"A3<sup>r</sup>", "A3<sup>v</sup>"},
                                     {"recto of A3", "verso of A3"},
                                     {"Recto of leaf A3", "Verso of leaf A3"},
                                     {"recto of f. 5", "verso of f. 5"},
                                     {"[A3]r", "[A3]v"},
                                     {"[A3r]", "[A3v]"},
                                     {"[A]3r", "[A]3v"},
                                     {"A₃r", "A₃v"},
                                     {"fol. 5, recto", "fol. 5, verso"},
                                     {"Bl. A3a", "Bl. A3b"},
                                     {"leaf A3 recto", "leaf A3 verso"},
                                     {"A3ra", "A3vb"},
                                     {"A3rb", "A3va"},
                                     {"A3<sup>ra</sup>", "A3<sup>vb</sup>"},
                                     {"A3ʳᵃ", "A3ᵛᵇ"},
                                     {"f. 5rb", "f. 5va"},
                                     {"c. 5r", "c. 5v"}}) {
    INFO(recto, " ", verso);
    auto const front = read_reference(book, recto), back = read_reference(book, verso);
    REQUIRE(front);
    REQUIRE(back);
    CHECK(*front == Reference{leaf.leaf, LeafSide::recto});
    CHECK(*back == Reference{leaf.leaf, LeafSide::verso});
  }
  CHECK(*read_reference(book_of("[1-12⁸]"), "[3/4]r") == *read_reference(book_of("[1-12⁸]"), "3/4r"));
  CHECK(*read_reference(book_of("[1-12⁸]"), "3₄") == *read_reference(book_of("[1-12⁸]"), "3/4"));
  // c. is a leaf of gathering c where there is one
  auto const small = book_of("a-d⁸");
  CHECK(*read_reference(small, "c. 5v") == *read_reference(small, "c5v"));
  CHECK(*read_reference(book, "F. 3") == *read_reference(book, "F3")); // f. is a folio, and F. a gathering
  for (auto text : {"p. 17", "pp. 17-18", "page 17", "P. 5"}) {
    INFO(text);
    CHECK(read_reference(book, text).error().problem == Problem::leaves_not_named);
  }
  for (auto text : {"A3r-B2v", "A3rv", "verso of A3r", "verso of", "[A3", "A3(r", "A3rc", "A3rab", "A3ab", "A3r col. 2",
                    "A3<sup>r", "leaf", "f.", "f. iij"}) {
    INFO(text);
    CHECK(read_reference(book, text).error().problem == Problem::not_a_reference);
  }
}

TEST_CASE("What was written as a reference is read as the same leaf") { // a law, over marks of all kinds
  for (auto text : {"π² ²π² A-K⁸ L⁴(−L4)", "A⁸(A3+χ1.2; -A8) B-C⁶/⁴ D⁸ E⁴(+2*)", "1-3¹⁰ 4⁸(4/8+χ1)", "[A]2 B-2C4 a-c8",
                    "a-z¹² 2a-2z¹² Aa4", "*⁸ 2*⁸ †A-†C⁸ H*-K*⁴ [par.]⁴ )(⁴", "α-ω¹⁰ ²A-C⁸ πA⁴ χB⁴"}) {
    auto const book = book_of(text);
    for (std::int64_t n = 1; n <= book.leaves(); ++n)
      for (auto side : {LeafSide::not_said, LeafSide::recto, LeafSide::verso})
        for (auto form : {ReferenceForm::signature, ReferenceForm::raised_side, ReferenceForm::roman,
                          ReferenceForm::leaf_number, ReferenceForm::leaf_letter}) {
          Reference const reference{*book.leaf_of_number(n), side};
          auto const written = write_reference(book, reference, form);
          INFO(text, " ", written);
          CHECK(read_reference(book, written) == Expected{reference});
        }
  }
}

TEST_CASE("Sheets that make two gatherings place the pages of both") {
  // the structure: Lenormand (Roret, 1900) and others, twelves as eight and four; that 8 stands with 1 in the outer forme
  // of the eight is the conjugate law (Savage 1841); so is that B1 and B4 share a forme
  auto const book = book_of("12°: A-F⁸/⁴");
  auto const folded = *fold(Attested::find("12_8_plus_4")->scheme());
  auto const at = [&](char const* reference) { return place_of(book, *read_reference(book, reference), folded); };
  REQUIRE(at("A1r"));
  REQUIRE(at("B4v"));
  CHECK(at("A1r")->side == at("A8v")->side);
  CHECK(at("A1r")->side != at("A1v")->side);
  CHECK(at("B1r")->side == at("B4v")->side);
  CHECK(at("F1r") == at("B1r"));
  CHECK(!place_of(book_of("12°: A-C⁸"), *read_reference(book, "A1r"), folded)); // no four beside the eight
  auto const half = book_of("8°: A-C⁴");
  CHECK(place_of(half, *read_reference(half, "C1r"), *fold(Attested::find("8_half_sheet")->scheme()))->side ==
        Side::only);
}

TEST_CASE("References to leaves that are not there say so") {
  auto const book = book_of("A⁸(-A8) B⁸");
  CHECK(read_reference(book, "A9r").error().limit == 8);
  CHECK(read_reference(book, "A8r").error().problem == Problem::reference_not_in_book);
  CHECK(read_reference(book, "C1").error().problem == Problem::gathering_not_in_book);
  CHECK(read_reference(book, "f. 16").error().problem == Problem::reference_not_in_book);
  CHECK(read_reference(book, "").error().problem == Problem::not_a_reference);
}

TEST_CASE(
    "A reference says whether the leaf or the gathering is not in the book") { // every kind of gathering and of insertion
  auto const book = book_of("A⁸(-A8) ²B⁸ C⁴(C1+d⁶(-d2), C2+χ3.4, C3+e1, ±C4) 5⁴(+4*) D²(D1+f-g⁴, D2+h⁴) E²(E1+h²)");
  struct Missing {
    char const* text;
    Problem problem;
    std::int64_t limit;
  };
  for (auto const& one : std::initializer_list<Missing>{{"A9", Problem::no_such_leaf, 8},
                                                        {"²B9", Problem::no_such_leaf, 8},
                                                        {"B9", Problem::no_such_leaf, 8},
                                                        {"5/5", Problem::no_such_leaf, 4},
                                                        {"C5", Problem::no_such_leaf, 4},
                                                        {"C5+1", Problem::no_such_leaf, 4},
                                                        {"d7", Problem::no_such_leaf, 6},
                                                        {"f5v", Problem::no_such_leaf, 4},
                                                        {"g5", Problem::no_such_leaf, 4},
                                                        {"e2", Problem::no_such_leaf, 1},
                                                        {"A8", Problem::reference_not_in_book, 0},
                                                        {"d2", Problem::reference_not_in_book, 0},
                                                        {"χ1", Problem::reference_not_in_book, 0},
                                                        {"χ5", Problem::reference_not_in_book, 0},
                                                        {"h5", Problem::reference_not_in_book, 0}, // of two insertions
                                                        {"C1+9", Problem::reference_not_in_book, 0},
                                                        {"5/3*", Problem::reference_not_in_book, 0},
                                                        {"f. 99", Problem::reference_not_in_book, 0},
                                                        {"Z1", Problem::gathering_not_in_book, 0},
                                                        {"Z1+1", Problem::gathering_not_in_book, 0},
                                                        {"³B1", Problem::gathering_not_in_book, 0},
                                                        {"π1", Problem::gathering_not_in_book, 0},
                                                        {"6/1", Problem::gathering_not_in_book, 0},
                                                        {"i1", Problem::gathering_not_in_book, 0}}) {
    CAPTURE(std::string{one.text});
    auto const wrong = read_reference(book, one.text);
    REQUIRE(!wrong);
    CHECK(wrong.error().problem == one.problem);
    CHECK(wrong.error().limit == one.limit);
  }
}

TEST_CASE("The number of a leaf is never cut short") { // arithmetic: 2 x 23 x 9999 gatherings of 510
  auto const book = book_of("8°: A-9999Z⁵¹⁰ ²A-9999Z⁵¹⁰");
  REQUIRE(book.leaves() == 234'576'540);
  CHECK(book.leaf_number(read_reference(book, "f. 123456789")->leaf) == 123'456'789);
  for (auto const* text : {"f. 1234567890", "f. 12345678900", "f. 99999999999999999999", "1234567890v"}) {
    INFO(text);
    CHECK(read_reference(book, text).error().problem == Problem::reference_not_in_book);
  }
}

// The Unicode Standard, General Punctuation and Latin-1 Supplement: U+00A0, U+2009, U+202F are spaces.
TEST_CASE("Every kind of blank may be in a reference") {
  auto const book = book_of("8°: A-K⁸");
  for (std::string const blank : {" ", "  ", "\t", "\u00A0", "\u2009", "\u202F"}) {
    INFO(blank);
    CHECK(*read_reference(book, blank + "sig." + blank + "B" + blank + "iij" + blank + "verso" + blank) ==
          *read_reference(book, "B3v"));
    CHECK(*read_reference(book, "f." + blank + "12" + blank + "v") == *read_reference(book, "B4v"));
  }
}

TEST_CASE("Every leaf of a book has one number, and every number one leaf") { // a law, over formulas of all kinds
  for (auto text : {"π² A-K⁸ L⁴(−L4)", "A⁸(A3+χ1.2; -A8) B-C⁶/⁴ D⁸(-D)  E⁴(+2*)", "1-3¹⁰ 4⁸(4/8+χ1)", "[A]2 B-2C4 a-c8",
                    "A⁸(−A1,2) B⁸(B8+χ1) C⁷"}) {
    INFO(text);
    auto const book = book_of(text);
    std::int64_t seen = 0;
    for (auto const gathering : book.gatherings()) {
      CHECK(gathering.first_leaf == seen + 1);
      seen += gathering.leaves;
    }
    CHECK(seen == book.leaves());
    LeafOfBook previous{};
    for (std::int64_t n = 1; n <= book.leaves(); ++n) {
      auto const leaf = book.leaf_of_number(n);
      REQUIRE(leaf);
      CHECK(book.leaf_number(*leaf) == n);
      if (n > 1) CHECK(previous < *leaf);
      previous = *leaf;
      auto const page = reference_of_page(book, 2 * n);
      REQUIRE(page);
      CHECK(page_of_book(book, *page) == 2 * n);
      if (auto const mate = book.conjugate(*leaf)) CHECK(book.conjugate(*mate) == leaf);
    }
    CHECK(!book.leaf_of_number(book.leaves() + 1));
  }
}

TEST_CASE("A name that several leaves have is read as the first, with a doubt") {
  auto const parts = book_of("A-B⁸; A-B⁸");
  CHECK(read_reference(parts, "B3")->doubtful);
  CHECK(read_reference(parts, "B3")->leaf == LeafOfBook{{0, 1}, 3});
  auto const stray = book_of("πA⁴ B-C⁸");
  CHECK(read_reference(stray, "A4")->doubtful); // the formula has πA and no A
  CHECK(!read_reference(stray, "πA4")->doubtful);
  CHECK(!read_reference(stray, "B4")->doubtful);
}

TEST_CASE("Inserted leaves are found by the names the formula prints") {
  auto const at = [](IdealCopy const& book, char const* name) {
    return book.leaf_number(read_reference(book, name)->leaf);
  };
  auto const gathering = book_of("A⁸ (A3+a⁴) B⁸");
  CHECK(gathering.leaves() == 20);
  CHECK(at(gathering, "a1") == 4);
  CHECK(at(gathering, "a4v") == 7);
  CHECK(at(gathering, "A3+4") == 7);
  CHECK(at(gathering, "A4") == 8);
  CHECK(write_reference(gathering, *reference_of_page(gathering, 8)) == "a1v");
  CHECK(gathering.conjugate(read_reference(gathering, "a1")->leaf) == read_reference(gathering, "a4")->leaf);
  CHECK(read_reference(gathering, "a5").error().problem == Problem::no_such_leaf);
  CHECK(read_reference(gathering, "a5").error().limit == 4);
  auto const pair = book_of("A⁸ (A3+χ3.4) B⁸");
  CHECK(at(pair, "χ3") == 4);
  CHECK(at(pair, "χ4") == 5);
  CHECK(!read_reference(pair, "χ1"));
  auto const starred = book_of("3¹⁰(+8*) 4⁸"); // Morgan Library, incunables 135503: (+8*)
  CHECK(at(starred, "3/8*") == 9);
  CHECK(write_reference(starred, {*starred.leaf_of_number(9), LeafSide::recto}) == "3/8*r");
  // the same name twice: by the leaf before it
  auto const twice = book_of("A⁸(A3+χ1) B⁸(B4+χ1)");
  CHECK(read_reference(twice, "χ1")->doubtful);
  CHECK(write_reference(twice, {*twice.leaf_of_number(4), LeafSide::not_said}) == "χ1");
  CHECK(write_reference(twice, {*twice.leaf_of_number(14), LeafSide::not_said}) == "B4+1");
}

TEST_CASE("An insertion of many leaves costs what its text costs") {
  std::string text;
  for (int i = 0; i < 2000; ++i) text += "A⁸(A3+χ1-4096) ";
  auto const book = book_of(text.c_str());
  CHECK(book.leaves() == 2000 * (8 + 4096));
  CHECK(write_reference(book, {*book.leaf_of_number(book.leaves() - 5), LeafSide::not_said}) == "A3+4096");
}

TEST_CASE("A name is found in a long formula as in a short one") { // a law; constructed
  std::string text = "W⁸ X⁸; ²A-C⁸ πA⁴ χB² ";                      // W is not in the alphabet and comes before X
  for (int i = 0; i < 20; ++i) text += "; A-D⁸ [par.]-3[par.]⁴ α-δ⁶ 1-3¹⁰";
  auto const book = book_of(text.c_str());
  auto const found = [&](char const* name) { return book.find(*read_signature(name)); };
  CHECK(found("W")->gathering == GatheringAt{0, 0});
  CHECK(found("X")->gathering == GatheringAt{1, 0});
  CHECK(!found("V"));
  CHECK(found("²B")->gathering == GatheringAt{2, 1});
  CHECK(!found("²B")->doubtful());
  CHECK(found("D")->gathering == GatheringAt{5, 3});
  CHECK(found("D")->several);
  CHECK(found("2[par.]")->gathering == GatheringAt{6, 1});
  CHECK(found("γ")->gathering == GatheringAt{7, 2});
  CHECK(found("3")->gathering == GatheringAt{8, 2});
  CHECK(!found("4"));
  CHECK(!found("E"));
  auto const several = book_of("A-K⁸; F-M⁸; G⁸; A-B⁸; 1¹ 2¹ 3¹ 4¹ 5¹ 6¹ 7¹ 8¹ 9¹ 10¹ 11¹ 12¹ 13¹ 14¹");
  for (char const* name : {"A", "B", "F", "G", "K"}) CHECK(several.find(*read_signature(name))->several);
  for (char const* name : {"C", "E", "L", "M"}) CHECK(!several.find(*read_signature(name))->several);
  CHECK(several.find(*read_signature("G"))->gathering == GatheringAt{0, 6});
  CHECK(several.find(*read_signature("L"))->gathering == GatheringAt{1, 5});
}

TEST_CASE("A fold cancelled as one is conjugate, two cancels are not") {
  auto const fold = book_of("A⁸(±A4.5)"), two = book_of("A⁸(±A4,5)"), whole = book_of("A⁸(±A)");
  LeafOfBook const four{{0, 0}, 4}, five{{0, 0}, 5};
  CHECK(fold.conjugate(four) == five);
  CHECK(!two.conjugate(four));
  CHECK(whole.conjugate(four) == five);
  CHECK(fold.is_cancel(four));
  CHECK(!fold.is_cancel({{0, 0}, 3}));
}

TEST_CASE("A cancel is joined to nothing, and so is the leaf whose other half went") {
  auto const book = book_of("A⁸(±A3; -A8)");
  CHECK(!book.conjugate({{0, 0}, 3}));
  CHECK(!book.conjugate({{0, 0}, 6}));
  CHECK(!book.conjugate({{0, 0}, 1}));
  CHECK(book.conjugate({{0, 0}, 4}) == LeafOfBook{{0, 0}, 5});
}
