// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>
#include <bifolium/record.hpp>
#include <bifolium/record/read_signing.hpp>
#include <bifolium/record/write_signing.hpp>

#include "check.hpp"

using namespace bifolium;

namespace {
Signing signing(char const* text) {
  auto const read = read_signing(text);
  INFO(text);
  REQUIRE(read);
  return *read;
}
struct Book {
  Formula formula;
  Signing how;
  explicit Book(char const* text) : formula{*read_formula(text)}, how{*signing_of(formula)} {}
  [[nodiscard]] bool is_signed(char const* reference) const {
    return leaf_signed(formula, how, read_reference(formula, reference)->leaf)->is_signed;
  }
  [[nodiscard]] std::string as(char const* reference) const {
    return leaf_signed(formula, how, read_reference(formula, reference)->leaf)->as.value_or("");
  }
};
} // namespace

TEST_CASE("The statement of signing says of each leaf whether it is signed") {
  // Rare Book School, sample description by Noble and Whitesell
  Book const sample{"2°: a4 A-Z8, ²a-b8 c6 [$4(-a3,4, ²c4) signed]"};
  CHECK(sample.is_signed("A4"));
  CHECK(!sample.is_signed("A5"));
  CHECK(sample.is_signed("a2"));
  CHECK(!sample.is_signed("a3"));
  CHECK(!sample.is_signed("a4"));
  CHECK(!sample.is_signed("²c4"));
  CHECK(sample.is_signed("²a4"));
  CHECK(sample.as("A3") == "A3");
  CHECK(sample.how.warnings().empty());
  // Indiana Historical Society, report from Rare Book School
  Book const history{"8°: [A]2 B-R8 [$4(-P2,3) signed]"};
  CHECK(!history.is_signed("P2"));
  CHECK(history.is_signed("P4"));
  CHECK(!history.is_signed("A1")); // in brackets because it is unsigned
  // R. Noble, DCRM-L, 12 September 2008: the third leaf bears a star
  Book const stars{"1-9⁶ 10⁴ [$1,3 signed; signing $3 as $*]"};
  CHECK(stars.is_signed("4/1"));
  CHECK(!stars.is_signed("4/2"));
  CHECK(stars.as("4/3") == "4*");
  CHECK(leaf_signed(stars.formula, stars.how, read_reference(stars.formula, "4/3")->leaf)->missigned);
  // Pryor-Johnson Rare Books, catalogue II, the Macklin Bible (1800), volume I
  Book const macklin{"π-2π2 A-7E2 [$1; +D2; -2M]"};
  CHECK(macklin.is_signed("D2"));
  CHECK(!macklin.is_signed("E2"));
  CHECK(!macklin.is_signed("2M1"));
  CHECK(macklin.is_signed("2N1"));
  CHECK(!macklin.is_signed("2π1"));
}

TEST_CASE(
    "All ways of writing the rule") { // constructed, but for $1,3 (DCRM-L 2008) and $½ (common practice, no source)
  CHECK(signing("$1-3") == signing("[$3 signed]"));
  CHECK(signing("$1,3").listed == std::vector{1, 3});
  CHECK(signing("$4 signed (-A1, B3; +C5)") == signing("[$4 (−A1, −B3, +C5) signed]"));
  CHECK(signing("[$4 signed; A1 unsigned, B3 unsigned, C5 signed]") == signing("$4 signed (-A1, B3; +C5)"));
  CHECK(signing("[$4 signed; missigning V4 as U4]") == signing("$4 signed; V4 as 'U4'"));
  CHECK(signing("$4 (-A3-4)") == signing("$4(-A3,4)"));
  auto const half = signing("[$½+1 signed]");
  CHECK(half.by_rule(5, 8));
  CHECK(!half.by_rule(6, 8));
  CHECK(half.by_rule(3, 4));
  CHECK(!half.by_rule(4, 4));
}

TEST_CASE("A missigned leaf is signed, with the wrong mark") { // constructed
  Book const book{"8°: A-C⁸ [$4 signed; missigning C2 as C3]"};
  auto const leaf = read_reference(book.formula, "C2")->leaf;
  CHECK(to_words(book.formula, leaf, *leaf_signed(book.formula, book.how, leaf)) == "C2 is missigned C3");
}

TEST_CASE("Inserted leaves bear the name they have") {
  // EEBO-TCP A01909 (CC0): a leaf signed c3 after C8; the statement of signing is constructed
  Book const book{"A⁸ B⁴; ²A-B⁸ C⁸ (C8+\"c3\") D⁴ [$4 signed]"};
  auto const after = LeafOfBook{IdealCopy{book.formula}.find(*read_signature("C"))->gathering, 8, 1};
  CHECK(leaf_signed(book.formula, book.how, after)->as == "c3");
  Book const nameless{"A⁸(A3+χ1.2; -A8) [$4 signed]"};
  CHECK(!leaf_signed(nameless.formula, nameless.how, {{0, 0}, 3, 1})->is_signed);
  CHECK(!leaf_signed(nameless.formula, nameless.how, {{0, 0}, 8})); // the ideal copy has no A8
}

TEST_CASE("Exceptions that are none are warned of") { // constructed
  CHECK(Book{"A-C⁸ [$4 (-A5) signed]"}.how.warnings().at(0).problem == Problem::exception_changes_nothing);
  auto const absent = Book{"A-C⁸ [$4 (-A4, D1) signed]"}.how.warnings().at(0);
  CHECK(absent.problem == Problem::signing_of_no_leaf);
  CHECK(absent.place->column == 11);
  CHECK(Book{"A-C⁸ [$4 (-A9) signed]"}.how.warnings().at(0).problem == Problem::signing_of_no_leaf);
  // a range is doubted once, where the doubt begins and as far as it goes
  auto const range = Book{"A-C⁸ [$4 (-A3-64, B9, B10) signed]"}.how.warnings();
  REQUIRE(range.size() == 4);
  CHECK(range[0].problem == Problem::exception_changes_nothing);
  CHECK(range[0].found_text() == "A5-8");
  CHECK(range[1].problem == Problem::signing_of_no_leaf);
  CHECK(range[1].found_text() == "A9-64");
  CHECK(range[2].found_text() == "B9"); // named by themselves
  CHECK(range[3].found_text() == "B10");
  CHECK(signing_of(*read_formula("A-C⁸")).error().problem == Problem::not_stated);
  CHECK(read_signing("[$ signed]").error().place->column == 2);
  CHECK(read_signing("[$4 signed; handsomely]").error().place->column == 13);
  CHECK(!read_signing(""));
}

TEST_CASE("Statements of signing are written in one way, and formulas keep theirs") { // a law
  for (auto text : {"[$4(-a3,4, ²c4) signed]", "[$2 signed]", "[$4(-P2,3) signed]", "[$1; +D2; -2M]",
                    "[$1,3 signed; signing $3 as $*]", "$½+1", "$½", "$1-3",
                    "[$4 (-A1, B3; +C5, $6) signed; missigning V4 as U4]", "[$3 (+36/4,5, *4) signed]"}) {
    INFO(text);
    auto const once = signing(text);
    auto const written = write_signing(once);
    INFO(written);
    CHECK(signing(written.c_str()) == once);
    CHECK(write_signing(signing(written.c_str())) == written);
    auto const formula = read_formula(std::string{"A-Z⁸ "} + (text[0] == '[' ? text : "[" + std::string{text} + "]"));
    REQUIRE(formula);
    CHECK(read_formula(write_formula(*formula)) == *formula);
    CHECK(signing_of(*formula) == once);
  }
  auto const named = signing("[$3 (−[par.]2) signed]");
  CHECK(signing(write_signing(named).c_str()) == named);
  CHECK(write_signing(signing("$4 signed (-A1, B3; +C5)")) == "[$4 (−A1, B3; +C5) signed]");
}

TEST_CASE(
    "A gathering named by a figure, and a misprint with a quotation mark in it, are written so that they read back") {
  CHECK(read_signing(std::string_view{"$1[$1mis-signed as \0'", 21}).error().place->column ==
        20); // regression: found by fuzzing
  // regression: found by fuzzing
  for (std::string_view text :
       {"[$1; +D2;2/-2M]", "[$1 (+D, :, )]", "[$1 $4 as D\"E]", "[$3 (-C2, 2/); missigning C1 as 'B']", "$1;-42:-",
        "$1; missigning 'G&H'4 as D2, '1'/3 as '4'", "$2+¹(:", "[$4 signed, C5 signed as as½5’]", "$1-'2²'/", "$1+^1)(",
        "[$4 (-A1)(+B5); +)(2, )(3]", "$3 (-(*)2, (:)3)", "$1;'d` 2+t'4missigned\",,4;"}) {
    auto const read = read_signing(text);
    REQUIRE(read);
    auto const written = write_signing(*read);
    auto const again = read_signing(written);
    REQUIRE(again);
    CHECK(write_signing(*again) == written);
    CHECK(again->missigned == read->missigned);
    CHECK(again->exceptions.size() == read->exceptions.size());
    CHECK(again->missigned.size() == read->missigned.size());
  }
}

TEST_CASE("A figure is a leaf of the gathering before, unless it belongs to a mark") {
  // constructed; )( is a signature in a record of 1598 at the University of Pennsylvania
  auto const places = [](char const* text) { return signing(text).exceptions; };
  auto const exception = [](Signature const& mark, int leaf) { return SigningException{false, {false, mark, leaf}}; };
  auto const a = Signature::letter('A'), twice = *read_signature("2)(");
  CHECK(places("[$4 (-A3,4) signed]") == std::vector{exception(a, 3), exception(a, 4)});
  CHECK(places("[$4 signed; A3-4 not signed]") == std::vector{exception(a, 3), exception(a, 4)});
  CHECK(!read_signing("[$4 signed; missigning \"A3 as B3]")); // a quotation mark that is not closed
  CHECK(!read_signing("[$4 signed; A3-4 signed as B3]"));     // which of the two is signed so?
  CHECK(places("[$4 (-A1, 2)(3) signed]") == std::vector{exception(a, 1), exception(twice, 3)});
  CHECK(places("[$4 (-A1, 36/10) signed]") == std::vector{exception(a, 1), exception(Signature::number(36), 10)});
  CHECK(places("[$4 (-A1, '2'3) signed]") ==
        std::vector{exception(a, 1), exception(Signature::number(2).in_quotation_marks(), 3)});
  auto const closed = places("[$4 (-A3,4)(+B5) signed]"); // these parentheses are not a mark
  REQUIRE(closed.size() == 3);
  CHECK(closed[1] == exception(a, 4));
  CHECK(closed[2] == SigningException{true, {false, Signature::letter('B'), 5}});
  CHECK(read_signing("[$4 (-A3,0) signed]").error().place->column == 10);
  auto const late = signing("[$4 signed; 2)(3 as B; -A1]"); // written after A1
  CHECK(signing(write_signing(late).c_str()) == late);
}

TEST_CASE("each exception is weighed against what was said of its leaf before") { // constructed; a later one overrules
  auto const doubts = [](std::string const& statement) {
    auto const how = signing_of(*read_formula("A-Z⁸ " + statement));
    REQUIRE(how);
    std::string columns;
    for (auto const& doubt : how->warnings()) {
      CHECK(doubt.problem == Problem::exception_changes_nothing);
      columns += std::to_string(doubt.place->column) + ' ';
    }
    return columns;
  };
  CHECK(doubts("[$4 (−A3, +A3, −A3) signed]").empty());
  CHECK(doubts("[$4 (−A3; −A3) signed]") == "12 ");
  CHECK(doubts("[$4 (−B; +B2) signed]").empty());
  CHECK(doubts("[$4 (−B; −B2) signed]") == "11 ");
  CHECK(doubts("[$4 (−$3; −C3; +D3) signed]") == "12 ");
  CHECK(doubts("[$4 (−$; +C3; −C3; −C4) signed]") == "21 ");
  CHECK(doubts("[$4 (+C3) signed]") == "7 ");
}

TEST_CASE("what is no statement of signing is quoted") { // constructed
  auto const wrong = [](std::string const& statement) { return read_signing(statement).error(); };
  CHECK(wrong("[$4 blah]").problem == Problem::not_a_signing);
  CHECK(found_in(wrong("[$4 blah]")) == "blah]");
  CHECK(found_in(wrong("")) == "");
  CHECK(wrong(std::string{"[$4\0]", 5}).problem == Problem::not_a_signing); // a zero byte does not end the text
  // A1 to A64 are 64 leaves and can be named one by one, A1 to A65 cannot
  CHECK(signing("[$4 (-A1-64) signed]").exceptions.size() == 64);
  auto const long_range = wrong("[$4 (-A1-65) signed]");
  CHECK(long_range.problem == Problem::signing_range_too_long);
  CHECK(long_range.found_text() == "A1-65");
  CHECK(long_range.limit == 64);
}

TEST_CASE("a statement of signing after a formula needs no brackets") { // DCRMR 6.215.44.9 writes it so; constructed
  for (std::string const signing : {" [$5 (−A1) signed]", " [$5 signed (−A1)]", " $5 (−A1) signed", ", $5 signed (−A1)",
                                    "; $5 (−A1) signed; 40 leaves", ". $5 signed (−A1).", " ($5 signed, −A1)",
                                    ", $5 (−A1) signed, pp. 80", ", $5 (−A1) signed. A1 blank"}) {
    auto const text = "8°: A-E⁸" + signing;
    INFO(text);
    auto const formula = read_formula(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == 40);
    auto const read = signing_of(*formula);
    REQUIRE(read);
    CHECK(read->first == 5);
    REQUIRE(read->exceptions.size() == 1);
    CHECK(read->exceptions[0].place.leaf == 1);
    auto const again = read_formula(write_formula(*formula));
    REQUIRE(again);
    CHECK(*signing_of(*again) == *read);
  }
}

TEST_CASE("a mark that is one only before a leaf is not read without one") {
  CHECK(write_signing(*read_signing("[$3 (-(?)2)]")) == "[$3 (−(?)2) signed]");
  for (std::string const text : {"[$3- (?)- (?)2", "[$3 (-(?), A2)]", "[$3 (-A2, (?))]", "[$3 - (a)- (b)2"}) {
    CAPTURE(text);
    auto const read = read_signing(text);
    REQUIRE_FALSE(read);
    CHECK(read.error().problem == Problem::not_a_signing);
    CHECK(read.error().place->line == 1);
  }
  // a symbol in parentheses is a mark by itself
  auto const symbol = read_signing("[$3 (-(*), A2)]");
  REQUIRE(symbol);
  CHECK(*read_signing(write_signing(*symbol)) == *symbol);
}

TEST_CASE("The title leaf is named by words, and no letter of them is a gathering") {
  // constructed; that cataloguers write so of the title leaf is common practice, no source
  for (auto words : {"title", "Title", "title-page", "title page", "title–leaf", "title leaf", "t.p.", "t. p.", "tp",
                     "Titelblatt", "page de titre", "frontespizio"}) {
    INFO(words);
    Book const book{(std::string{"8°: A-H⁸ [$4 (−"} + words + ", B3) signed]").c_str()};
    CHECK(!book.is_signed("A1"));
    CHECK(book.is_signed("A2"));
    CHECK(!book.is_signed("B3"));
    CHECK(book.is_signed("B4"));
    REQUIRE(book.how.warnings().size() == 1);
    CHECK(book.how.warnings()[0].problem == Problem::title_leaf_taken);
    CHECK(write_signing(book.how) == "[$4 (−title, B3) signed]");
  }
  Book const blank{"8°: A-H⁸ (A1 blank) [$4 signed; title unsigned]"}; // a title does not stand on a blank leaf
  CHECK(!blank.is_signed("A2"));
  CHECK(blank.is_signed("A1"));
  Book const prelims{"8°: π² A-H⁸ [$4 (−title) signed]"}; // the title is in π, which has no signatures
  CHECK(prelims.is_signed("A1"));
  // other words are refused where they are, and not taken apart into letters
  for (auto words : {"half-title", "the title", "plate", "index", "Preface", "cancel"}) {
    INFO(words);
    auto const refused = read_signing(std::string{"[$4 (−A1, "} + words + ") signed]");
    REQUIRE(!refused);
    CHECK(refused.error().problem == Problem::not_a_signing);
    CHECK(refused.error().place->column == 11);
  }
}

TEST_CASE("A leaf of several gatherings is an exception in each of them") { // constructed
  auto const listed = signing("[$4 (−A2, B2, C2, D2) signed]");
  for (auto text : {"[$4(-$2 in A, B, C, D) signed]", "[$4 (−$2 in A-D) signed]", "[$4 (−$2 of A–C and D) signed]",
                    "[$4 (−$2 in quires A, B-D) signed]", "[$4 signed; $2 unsigned in A-D]"}) {
    INFO(text);
    CHECK(signing(text) == listed);
  }
  CHECK(signing("[$4 (-$2,3 in A, C; +$5 in D) signed]") == signing("[$4 (−A2,3, C2,3; +D5) signed]"));
  CHECK(signing("[$4 (-$2 in A-C, E3) signed]") == signing("[$4 (−A2, B2, C2, E3) signed]"));
  CHECK(signing("[$3 (-$2 in 2-4) signed]") == signing("[$3 (−2/2, 3/2, 4/2) signed]"));
  // a range of gatherings names all of them, also in the alphabet that the book has
  CHECK(signing("[$4 (−A-D, F2) signed]") == signing("[$4 (−A, B, C, D, F2) signed]"));
  CHECK(signing("[$4 (−H-K) signed]") == signing("[$4 (−H, I, K) signed]"));
  auto const with_j = read_signing("[$4 (−H-K) signed]", Letters{true, true, true});
  REQUIRE(with_j);
  CHECK(with_j->exceptions.size() == 4);
  CHECK(signing("[$4 (−Y-2B) signed]") == signing("[$4 (−Y, Z, 2A, 2B) signed]"));
  CHECK(Book{"8°: A-H⁸ [$4 (−C-E) signed]"}.is_signed("B2"));
  for (auto reference : {"C1", "D3", "E4"}) CHECK(!Book{"8°: A-H⁸ [$4 (−C-E) signed]"}.is_signed(reference));
  // A-D2 may be leaf 2 of each, or all of A and leaf 2 of D
  for (auto text : {"[$4 (−A-D2) signed]", "[$4 (−A3 in B) signed]", "[$4 (−$2 in 4 gatherings) signed]"}) {
    INFO(text);
    REQUIRE(!read_signing(text));
    CHECK(read_signing(text).error().problem == Problem::not_a_signing);
  }
  for (auto text : {"[$4 (−A-3Z) signed]", "[$4 (−$2 in A-3Z) signed]"}) {
    INFO(text);
    CHECK(read_signing(text).error().problem == Problem::signing_range_too_long);
  }
}

TEST_CASE("The numerals of the leaves are kept") { // constructed; both kinds are common practice, no source
  for (auto text : {"[$3 signed; roman numerals]", "[$3 signed; roman]", "[$3 signed (in Roman numerals)]",
                    "$3 signed, roman numerals"}) {
    INFO(text);
    CHECK(signing(text).numerals == SigningNumerals::roman);
    CHECK(write_signing(signing(text)) == "[$3 signed; roman numerals]");
  }
  CHECK(signing("[$3 signed; arabic figures]").numerals == SigningNumerals::arabic);
  CHECK(signing("[$3 signed; roman and arabic]").numerals == SigningNumerals::both);
  CHECK(signing("[$3 signed]").numerals == SigningNumerals::not_said);
  for (auto text :
       {"[$3 signed; arabic numerals; missigning B2 as B3]", "[$3 (−A1) signed; roman and arabic numerals]"})
    CHECK(signing(write_signing(signing(text)).c_str()) == signing(text));
  // leaves numbered as they are signed: a iij is the third
  CHECK(signing("[$4 (−aiij, Bii) signed]") == signing("[$4 (−a3, B2) signed]"));
}

TEST_CASE("The rule may say half and one more, Roman numerals, and of how many leaves") {
  // half and one more: Bowers, Principles of Bibliographical Description; the blanks, numerals and words: common practice, no source
  for (std::string const text :
       {"$½+1", "$½ + 1", "$½ +1", "[$½ + 1 signed]", "$1/2 + 1 signed", "$½ + 1 (-A3) signed"}) {
    CAPTURE(text);
    auto const read = read_signing(text);
    REQUIRE(read);
    CHECK(read->half);
    CHECK(read->beyond_half == 1);
    CHECK(read->by_rule(5, 8));
    CHECK_FALSE(read->by_rule(6, 8));
    CHECK(read->exceptions.size() == (text.find("A3") != text.npos ? 1 : 0));
  }
  for (int leaf = 1; leaf <= 12; ++leaf) {
    std::string const roman{small_roman(leaf).view()};
    for (auto const& text : {"$" + roman + " signed", "$i-" + roman, "$j-" + roman + " signed"}) {
      CAPTURE(text);
      auto const read = read_signing(text);
      REQUIRE(read);
      CHECK(read->first == leaf);
      CHECK(read->numerals == SigningNumerals::roman);
      CHECK(read_signing(write_signing(*read)) == *read);
    }
  }
  for (std::string const text : {"$2 (of 4) signed", "$2 of 4 signed", "$2 (of 4 leaves) signed"}) {
    CAPTURE(text);
    auto const read = read_signing(text);
    REQUIRE(read);
    CHECK(read->first == 2);
    CHECK(read->of == 4);
    CHECK(read->warnings().empty());
    CHECK(read_signing(write_signing(*read)) == *read);
    CHECK(*read != signing("$2 signed"));
  }
  CHECK(signing("$½ (of 8) signed").of == 8);
  CHECK(signing("$2 (of 4) (−A1) signed").exceptions.size() == 1);
  CHECK_FALSE(read_signing("$2 (of 4A) signed"));
  CHECK_FALSE(read_signing("$2 (of 0) signed"));
}

TEST_CASE("A rule that is said of gatherings of some number of leaves is doubted where the formula has others") {
  // common practice, no source: a rule is stated of the usual gathering, and nobody knows whether the others follow it
  struct Others {
    char const* gatherings;
    int of_four; // gatherings with another number of leaves than four
  };
  for (auto const& [gatherings, others] : {Others{"A-C⁴", 0}, Others{"π² A-C⁴", 0}, // π bears no signatures
                                           Others{"A-C⁴ D²", 1}, Others{"A-C⁸", 3}, Others{"A-K⁸/⁴", 5},
                                           Others{"A-I⁸/⁴ K⁴", 5}, Others{"A-C⁴/⁸/⁴", 1}, Others{"a⁴ A-C⁶ D-E⁴", 3}})
    for (std::string const rule : {"$2 (of 4)", "$2 of 4", "$2 (of 4 leaves)"}) {
      auto const text = "4°: " + std::string{gatherings} + " [" + rule + " signed]";
      CAPTURE(text);
      auto const formula = read_formula(text);
      REQUIRE(formula);
      auto const read = signing_of(*formula);
      REQUIRE(read);
      REQUIRE(read->warnings().size() == (others > 0 ? 1 : 0));
      if (others == 0) continue;
      CHECK(read->warnings()[0].problem == Problem::signing_of_others);
      CHECK(read->warnings()[0].limit == others);
      CHECK(read->warnings()[0].found_text() == "of 4");
      CHECK(read->warnings()[0].place->column == rule.find("of") + 2); // after the bracket
    }
}

TEST_CASE("Words for an exception do what the signs do") { // common practice, no source
  auto const signs = read_signing("$4 (-A1, B3)");
  for (std::string const word : {"except", "except for", "excepting", "but not", "not", "omitting", "save", "less"})
    for (auto const& text :
         {"$4 signed, " + word + " A1, B3", "$4 signed (" + word + " A1, B3)", "$4 (" + word + " A1 and B3) signed",
          "$4 " + word + " A1 & B3", "$4 signed, " + word + " A1 unsigned, B3 unsigned"}) {
      CAPTURE(text);
      auto const read = read_signing(text);
      REQUIRE(read);
      CHECK(*read == *signs);
    }
  CHECK(*read_signing("$4 signed, except A5 signed") == *read_signing("$4 (+A5)"));
  CHECK(*read_signing("$4 signed, except $2 in A, B") == *read_signing("$4 (-$2 in A, B)"));
  for (std::string const what : {"title", "title-page", "t.p.", "blank", "half-title", "errata"}) { // which leaf it is
    CAPTURE(what);
    CHECK(*read_signing("$4 (−A1 " + what + ", B3)") == *signs);
    CHECK(*read_signing("$4 (−A1 " + what + ")") == *read_signing("$4 (−A1)"));
  }
  CHECK((*read_signing("$4 (−A1, title)")).exceptions.size() == 2); // two leaves
  for (std::string const word : {"missigned", "mis-signed", "missigned as", "as", "signed as"})
    for (auto const& text :
         {"$4 (-A1, G2 " + word + " F2)", "$4 (-A1; G2 " + word + " 'F2') signed", "$4 (−A1), G2 " + word + " F2"}) {
      CAPTURE(text);
      auto const read = read_signing(text);
      REQUIRE(read);
      CHECK(read->exceptions == std::vector{signs->exceptions[0]});
      REQUIRE(read->missigned.size() == 1);
      CHECK(read->missigned[0].as == "F2");
    }
}
