// SPDX-License-Identifier: MIT
// Marks and names as printers and cataloguers have them beside the letters: accented letters of French, Spanish and German
// preliminaries, leaves added with a star, gatherings cancelled as a whole, volumes by their numbers, marks of German
// printers, counts that alternate (common practice, no source). Leaves counted by hand.
#include "check.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("an accented letter is a signature, and within words a letter") {
  for (std::string const mark :
       {"á", "é", "í", "ó", "ú", "à", "è", "ì", "ò", "ù", "â", "ê", "î", "ô", "û", "ä", "ë", "ï",       "ö",      "ü",
        "ç", "æ", "œ", "ß", "å", "ø", "ã", "ñ", "õ", "Á", "É", "Ê", "Ô", "Ç", "Æ", "Œ", "Ü", "a\u0301", "e\u0302"}) {
    CAPTURE(mark);
    auto const formula = read_lawfully("4°: " + mark + "⁴ 2" + mark + "⁴(−2" + mark + "4) A-C⁴ D²");
    REQUIRE(formula);
    CHECK(formula->leaves() == 4 + 3 + 12 + 2);
    CHECK(formula->warnings().empty());
    CHECK(write_formula(*formula) == "4°: " + mark + "⁴ 2" + mark + "⁴(−2" + mark + "4) A-C⁴ D²");
    IdealCopy const book{*formula};
    auto const leaf = read_reference(book, mark + "3v");
    REQUIRE(leaf);
    CHECK(book.leaf_number(leaf->leaf) == 3);
    CHECK((*read_formula("4°: " + mark + "4 A4")).leaves() == 8); // counts on the line
    CHECK((*read_formula("4°: " + mark + mark + "⁴ A⁴")).leaves() == 8);
    CHECK_FALSE(read_formula("4°: " + mark + "tat⁴ A⁴"));
    for (auto const dialect : {dialects::strict, dialects::bmc, dialects::stc})
      for (auto const& words : {"A-K⁸ (" + mark + " la fin)", "A-K⁸ (K8, " + mark + " la fin)", "A-K⁸ (n" + mark + "t)",
                                "A-K⁸ (−K8, " + mark + " blank)"}) {
        CAPTURE(words);
        CHECK(broken_law(words, dialect) == "");
        auto const read = read_formula(words, dialect);
        CHECK((!read || read->leaves() == 80 || words.find("−K8") != words.npos));
      }
    CHECK((*read_formula("4°: " + mark + "-2" + mark + "⁴ A⁴")).leaves() == 12);
    CHECK(broken_law(mark + "01e5", {}) == "");
  }
  CHECK(read_formula("4°: á-í⁴").error().problem == Problem::order_not_known);
}

TEST_CASE("a leaf added with a star after its number is one leaf, whatever the place") {
  for (std::string const star : {"*", "†", "‡"})
    for (std::string const place : {"C2+", "C4+", "A1+", "+"})
      for (std::string const name : {"C3", "C2", "B1", "2A3", "χ1", "¶2"}) {
        auto const text = "4°: A-B⁴ C⁴(" + place + name + star + ") D⁴";
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 17);
        CHECK(formula->warnings().empty() == (place != "+")); // where it is put in is not stated
        auto const filled = read_lawfully("4°: A-B⁴ C⁴(−C3+" + name + star + ") D⁴");
        REQUIRE(filled);
        CHECK(filled->leaves() == 16);
      }
  CHECK(write_formula(*read_formula("C⁴(C2+C3*)")) == "C⁴(C2+\"C3*\")"); // as it is printed; *C3 is another mark
  CHECK((*read_formula("C⁴(C2+*C3)")).leaves() == 5);
  CHECK((*read_formula("C⁴(C2+2*)")).leaves() == 5);
  auto const twice = read_formula("A-C⁴(C2+C3*) D⁴(D2+C3*)");
  REQUIRE(twice);
  CHECK(twice->warnings().back().problem == Problem::inserted_name_taken);
}

TEST_CASE("a gathering with ± before it was cancelled as a whole") {
  for (std::string const mark : {"H", "h", "2A", "²A", "*", "χ", "[H]", "α"})
    for (std::string const after : {"", " K⁴", "; A⁴", "(H4 blank)"}) {
      auto const text = "4°: A-G⁴ ±" + mark + "⁴" + after;
      CAPTURE(text);
      auto const formula = read_lawfully(text);
      REQUIRE(formula);
      CHECK(formula->leaves() == (after.empty() || after[0] == '(' ? 32 : 36));
      long told = 0;
      for (auto const& doubt : formula->warnings())
        told += doubt.problem == Problem::change_outside_parentheses ? 1 : 0;
      CHECK(told == 1);
      REQUIRE(!formula->changes().empty());
      auto const* const cancel = formula->changes()[0].cancel();
      REQUIRE(cancel != nullptr);
      CHECK(cancel->leaves.are_every());
      CHECK(cancel->of_fold);
    }
  CHECK_FALSE(read_formula("4°: A-G⁴ ±H-K⁴"));
  CHECK_FALSE(read_formula("4°: A-G⁴ ±H4"));
}

TEST_CASE("volumes are numbered in figures or Roman numerals, with a full stop or in parentheses") {
  struct Numbers {
    char const *one, *two, *three;
  };
  for (Numbers const numbers : {Numbers{"I.", "II.", "III."},
                                {"I:", "II:", "III:"},
                                {"1.", "2.", "3."},
                                {"1:", "2:", "3:"},
                                {"(1)", "(2)", "(3)"},
                                {"(1):", "(2):", "(3):"},
                                {"Vol. I.", "Vol. II.", "Vol. III."}})
    for (std::string const between : {". ", "; ", " "})
      for (std::string const first : {"A⁶ B-K¹² L⁶", "π² A-K¹²", "B-K¹² L⁶", "[A]² B-K¹²", "a⁶ B-K¹²", "*² A-K¹²"}) {
        auto const text = std::string{"12°: "} + numbers.one + " " + first + between + numbers.two + " " + first +
                          between + numbers.three + " A² B-K¹²";
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 2 * read_formula("12°: " + first).value().leaves() + 110);
        CHECK(formula->parts().size() == 3);
        CHECK(formula->warnings().empty());
      }
  // elsewhere they are gatherings
  CHECK_FALSE(read_formula("12°: H⁸. I. K⁸"));
  CHECK((*read_formula("H⁸ I. K⁸", dialects::bmc)).leaves() == 24);
  CHECK((*read_formula("1⁸ 2⁸ 3⁴")).leaves() == 20);
  CHECK((*read_formula("1(8) 2(8)")).leaves() == 16);
}

TEST_CASE("marks of German printers") {
  for (std::string const mark : {"(:)", "(::)", "):(", ")::(", "))((", ")(", ")()(", "(*)", "(**)"}) {
    CAPTURE(mark);
    auto const formula = read_lawfully("4°: " + mark + "⁴ A⁴ B⁴");
    REQUIRE(formula);
    CHECK(formula->leaves() == 12);
    CHECK(formula->gatherings() == 3);
    CHECK(formula->warnings().empty());
  }
  CHECK_FALSE(read_formula("4°: A⁴(−A4))((a)⁴")); // the end of a parenthesis and the beginning of another
}

TEST_CASE("counts alternate in all the words for it") {
  for (char const* words : {"alternately 8 and 4", "alternately in 8s and 4s", "alternate 8s & 4s",
                            "alternate 8s and 4s", "in alternate 8s and 4s", "alternating eights and fours",
                            "in alternating eights & fours", "in eights and fours alternately"})
    for (std::string const joint : {" ", ", "}) {
      auto const text = "8°: A-F" + joint + words;
      CAPTURE(text);
      auto const formula = read_lawfully(text);
      REQUIRE(formula);
      CHECK(formula->leaves() == 36);
      CHECK(write_formula(*formula) == "8°: A-F⁸/⁴");
    }
}

TEST_CASE("a plus is a signature as often as it is set, and signs that no catalogue has are errors that name them") {
  // the plus beside * † ‡ ¶ § (STCV, ICCU); a sign set twice is of the second series (Modena, as 2* of **)
  std::string plus;
  for (int often = 1; often <= 9; ++often) {
    plus += '+';
    for (std::string const raise : {"^", ""})
      for (std::string const& text :
           {"8°: " + plus + raise + "8 A-K" + raise + "8", "8°: A-K" + raise + "8 " + plus + raise + "8"}) {
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 88);
        CHECK(formula->warnings().empty());
      }
    CHECK((*read_lawfully("8°: " + plus + "⁸ †⁴ " + plus + "+⁴ A-K⁸")).leaves() == 96);
  }
  for (std::string const sign : {"?", "!", "="})
    for (std::string const& text :
         {sign + "⁴", "8°: " + sign + "⁴ A-K⁸", "8°: A-K⁸ " + sign + "⁴", "A⁸ " + sign + "⁴ B⁸"}) {
      CAPTURE(text);
      auto const formula = read_formula(text);
      REQUIRE_FALSE(formula);
      CHECK(formula.error().problem == Problem::unknown_mark);
      CHECK(std::string{formula.error().found_text()}.starts_with(sign + "⁴"));
      CHECK(broken_law(text, {}) == "");
    }
}
