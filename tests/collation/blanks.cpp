// SPDX-License-Identifier: MIT
// Blank leaves in the words of descriptions (common practice, no source); which leaves they mean is plain from the
// words.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

namespace {

struct BlankLeaves {
  char const* text;
  char const* blanks; ///< the leaves, with a blank between them
  bool doubted = false;
};
std::size_t blanks_told(Formula const& formula) {
  IdealCopy const book{formula};
  return book.blanks().size();
}

} // namespace

TEST_CASE("blank leaves are known in every form of words, or it is told that the words were not read") {
  for (auto const& one : std::initializer_list<BlankLeaves>{
           {"A-K⁸ (K8 blank)", "K8"},
           {"A-K⁸ (K8 blank?)", "K8"},
           {"A-K⁸ (K8, blank)", "K8"},
           {"A-K⁸ (K8 bl.)", "K8"},
           {"A-K⁸ (K8 probably blank)", "K8"},
           {"A-K⁸ (A1 and K8 are blank)", "A1 K8"},
           {"A-K⁸ (A1, K7-8 blank)", "A1 K7 K8"},
           {"A-K⁸ (K7 & 8 blanks)", "K7 K8"},
           {"A-K⁸ (A1 blank, K8 blank)", "A1 K8"},
           {"A-K⁸ (A1 blank; K8 blank?)", "A1 K8"},
           {"A-K⁸ (last two leaves blank)", "K7 K8"},
           {"A-K⁸ (with the final blank K8)", "K8"},
           {"A-K⁸ (with the first blank A1)", "A1"},
           {"A-K⁸ (with the final blank leaf K8)", "K8"},
           {"A-K⁸ (with the last two blanks K7 and K8)", "K7 K8"},
           {"A-K⁸ (first and last blanks A1 and K8)", "A1 K8"},
           {"A-K⁸ (the final blank K8, A1 missigned)", "K8"},
           {"A-K⁸ (Blank leaves K7, K8)", "K7 K8"},
           {"A⁸ (first and last leaf blank)", "A1 A8"},
           {"A⁸ (first leaf, last leaf, first leaf, last leaf, last two leaves blank)", "A1 A7 A8"},
           {"A-K¹² (last twelve leaves blank)", "K1 K2 K3 K4 K5 K6 K7 K8 K9 K10 K11 K12"},
           {"A-K⁸ (-K8, bl.)", "K8"},
           {"K²(-K, blank)", "K1 K2"},
           {"A-K⁸ (-K8; A1v blank)", ""},
           {"A-K⁸ (including the final blank)", "K8"},
           {"A-K⁸ (blank leaves A1, K8)", "A1 K8"},
           {"A-K⁸ (-K8 blank)", "K8"},
           {"A-K⁸ (-K8, blank)", "K8"},
           {"A⁸ B⁸(first leaf blank)", "B1"},
           {"A-K⁸ (K8v blank)", ""}, // a page, and not the leaf
           {"A-K⁸ (A1r, K8 blank)", "K8"},
           {"A-K⁸ (first leaf blank)", "", true}, // of the gathering, or of the book
           {"A-K⁸ (verso of K8 blank)", "", true},
           {"A-K⁸ (K8 blank, not seen)", "K8"},
           {"A-K⁸ (K7 verso, K8 blank)", "K8"},
           {"A-K⁸ (K8 recto blank)", ""},
           {"A-K⁸ (K8 blank; K2,3 missigned I2,3)", "K8"},
           {"A-K⁸ (A1 blank, B2 torn)", "A1"},
           {"A-K⁸ (K9 blank)", "", true},
           {"A-K⁸ (K9 blanks)", "", true},
           {"A-K⁸ (K9 bl.)", "", true},
           {"A-K⁸ (L1 blank)", "", true},
           {"A-K⁸ (-K8; L1 blank)", "", true},
           {"A-K⁸ (blank)", "", true}, // of which leaf?
           {"A-K⁸ (bl.)", "", true},
           {"A-K⁸ (A3+χ1, blank)", "", true},
           {"A-K⁸ (±K8, blank)", "", true},
           {"A-K⁸ (-A1, -K8, blank)", "", true}, // A1 too?
           {"A-K⁸ (-K7,8, blank)", "", true},
           {"A-K⁸ (-K7-8, blank)", "K7 K8"},  // one deletion of two leaves
           {"A-K⁸ (K8, L1 blank)", "", true}, // the book has no L, so the words may mean another leaf than K8
           {"A-K⁸ (K8, K9 blank)", "", true},
           {"A-K⁸ (K8 blank, first leaf blank)", "", true},
           {"A-K⁸ (K8 BLANK)", "K8"},
           {"A-K⁸ (-K8, BLANK)", "K8"},
           {"A-K⁸ (K8 BL.)", "K8"},
           {"A-K⁸ (K7, K8 ARE BLANK)", "K7 K8"},
           {"A-K⁸ (WITH THE FINAL BLANK K8)", "K8"},
           {"A-K⁸ (Including the final blank)", "K8"},
           {"A-K⁸ (K8 MISSING)", "", true},
           {"A-K⁸ (L1 BLANK)", "", true},
           {"A² (last four leaves blank)", "", true},
           {"A⁴ (first six leaves blank)", "", true},
           {"A-K⁸ (last two four leaves blank)", "", true},
           {"A-K⁸ (last two blanks K7)", "", true},
           {"A-K⁸ (with the final blank K8v)", "", true},
           {"A-K⁸ (A1 blank K8)", "", true},
           {"A-K⁸ (K6v-8r blank)", "", true},
           {"A-K⁸ (K8 blank but for a line)", "", true},
           {"A-K⁸ (A1 blank but for signature)", "A1"},
           {"A-K⁸ (A1 blank except for signature A)", "A1"},
           {"A-K⁸ (A1 blank except for the signature 'A1'; K8 blank)", "A1 K8"},
           {"A-K⁸ (A1 blank except for signature and a woodcut)", "", true},
           {"A-K⁸ (K8: blank)", "K8"},
           {"A-K⁸ (K8 prob. blank)", "K8"},
           {"A-K⁸ (-K8, prob. blank)", "K8"},
           {"A-K⁸ (K8 (blank))", "K8"},
           {"A-K⁸ (K8 [blank])", "K8"},
           {"A-K⁸ (K8 (probably blank))", "K8"},
           {"A-K⁸ (A1 (blank), K8 (blank))", "A1 K8"},
           {"A-K⁸ (-K8: blank)", "K8"},
           {"A-K⁸ (-K8 (blank))", "K8"},
           {"A-K⁸ (-K8 [blank])", "K8"},
           {"A-K⁸ (-K7,8, blanks)", "K7 K8"},
           {"A-K⁸ (-K7,8: blank leaves)", "K7 K8"},
           {"A-K⁸ (-K8, blanks)", "", true},
           {"A-K⁸ (A1 title, A1v blank)", ""},
           {"A-K⁸ (A1r title, A1v blank, K8 blank)", "K8"},
           {"A-K⁸ (A1 title; A8 woodcut; K8 blank)", "K8"},
           {"A-K⁸ (A1 title, blank)", "", true},
           {"A-K⁸ (K6 to 8 blank)", "K6 K7 K8"},
           {"A-K⁸ (A1 blank, and so the last page of K8, blank)", "", true}}) {
    std::string const text{one.text};
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    IdealCopy const book{*formula};
    std::string blanks;
    for (auto const& leaf : book.blanks())
      blanks.append(blanks.empty() ? "" : " ").append(write_reference(book, Reference{leaf}));
    CHECK(blanks == one.blanks);
    CHECK(formula->warnings().empty() != one.doubted);
    if (one.doubted) CHECK(formula->warnings()[0].problem == Problem::text_not_read);
  }
}

// As German catalogues and those of incunabula write them. (common practice, no source) The answer is made with the words.
TEST_CASE("leaves joined by a plus or a stroke and called blank are two leaves of the gathering") {
  int rows = 0;
  for (int leaves = 2; leaves <= 16; leaves += 2)
    for (int first = 1; first < leaves; ++first)
      for (int second = first + 1; second <= leaves; ++second)
        for (std::string const joint : {"+", " + ", "+F", " + F", "/", "&", " & ", " and ", ",", ", F"})
          for (std::string const blank :
               {" blank", " bl.", " blank?", " leer", " are blank", " [blank]", " both blank"}) {
            auto const one = std::to_string(first), other = std::to_string(second);
            auto const text = "A-F" + std::to_string(leaves) + " (F" + one + joint + other + blank + ")";
            CAPTURE(text);
            auto const formula = read_lawfully(text);
            REQUIRE(formula);
            CHECK(formula->leaves() == 6 * leaves); // nothing is inserted
            bool const may_be_inserted = joint.find('+') != joint.npos && joint.find('F') == joint.npos && second <= 2;
            CHECK(formula->warnings().empty() != may_be_inserted);
            std::string blanks;
            IdealCopy const book{*formula};
            for (auto const& leaf : book.blanks()) blanks += write_reference(book, Reference{leaf}) + " ";
            CHECK(blanks == (may_be_inserted ? "" : "F" + one + " F" + other + " "));
            ++rows;
          }
  CHECK(rows > 10000);
  for (auto const& [text, leaves] : {std::pair{"A-F⁸ (F8+2 blank leaves)", 50},
                                     {"A-F⁸ (F8+χ1, blank)", 49},
                                     {"A-F⁸ (F8+χ² blank)", 50},
                                     {"A-F⁸ (F8+χ1 blank)", 49},
                                     {"A-F⁸ (−F1, F7+8 blank)", 47},
                                     {"A-F⁸ (A1 blank, F7+8 blank)", 48},
                                     {"A-F⁸ (A1 + F8 blank)", 48},
                                     {"A-F⁸ (F7+9 blank)", 48}}) { // kept as words, with a warning
    CAPTURE(std::string{text});
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == leaves);
  }
  CHECK(!(*read_formula("A-F⁸ (F7+9 blank)")).warnings().empty());
  CHECK(blanks_told(*read_formula("A-F⁸ (A1 blank, F7+8 blank)")) == 3);
  CHECK(blanks_told(*read_formula("A-F⁸ (last 2 leaves blank)")) == 2);
}

TEST_CASE("a word for blank in another language says what the English word says") { // common practice, no source
  auto const told = [](std::string const& text) {
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    IdealCopy const book{*formula};
    std::string all = formula->warnings().empty() ? "" : "doubted ";
    for (auto const& leaf : book.blanks()) all += write_reference(book, Reference{leaf}) + " ";
    return all;
  };
  for (std::string const word : {"leer",    "leere", "leeres", "weiß",  "weiss",    "weiße",       "weisse",   "weißes",
                                 "weisses", "vakat", "vacat",  "blanc", "blanche",  "bianca",      "bianco",   "blanca",
                                 "blanco",  "leeg",  "Bianca", "WEISS", "ist leer", "est blanche", "en blanco"}) {
    CAPTURE(word);
    CHECK(told("A-H⁸ (H8 " + word + ")") == told("A-H⁸ (H8 blank)"));
    CHECK(told("A-H⁸ (A1, H7-8 " + word + ")") == told("A-H⁸ (A1, H7-8 blank)"));
    CHECK(told("A-H⁸ (−H8, " + word + ")") == told("A-H⁸ (−H8, blank)"));
    CHECK(told("2A-2B⁸ (2A8 " + word + ")") == told("2A-2B⁸ (2A8 blank)"));
    CHECK(told("A-H⁸ (" + word + ")") == told("A-H⁸ (blank)"));
    CHECK(told("A-H⁸ (H8 " + word + ", wanting)") == told("A-H⁸ (H8 blank, wanting)"));
  }
  for (std::string const words : {"is blank", "ist leer", "ist weiß", "est blanc", "est blanche", "è bianca",
                                  "e\u0300 bianca", "è bianco", "è  bianca", "es blanca", "está blanca",
                                  "esta\u0301 en blanco", "está en blanco", "is leeg", "est vacat", "è\u00a0bianca"}) {
    CAPTURE(words);
    CHECK(told("A-H⁸ (H8 " + words + ")") == told("A-H⁸ (H8 is blank)"));
    CHECK(told("A-H⁸ (−H8, " + words + ")") == told("A-H⁸ (−H8, is blank)"));
    CHECK(told("A-H⁸ (A1 " + words + ", H8 " + words + ")") == told("A-H⁸ (A1 is blank, H8 is blank)"));
    CHECK(told("A-H⁸ (H8 " + words + "?)") == told("A-H⁸ (H8 is blank?)"));
  }
  CHECK(told("A-H⁸ (H8 è bianca)") == "H8 ");
  for (std::string const words :
       {"are blank", "sind leer", "sont blancs", "sont blanches", "sono bianche", "sono bianchi", "son blancas",
        "están en blanco", "esta\u0301n blancos", "zijn leeg", "sunt vacat"}) {
    CAPTURE(words);
    CHECK(told("A-H⁸ (H7,8 " + words + ")") == told("A-H⁸ (H7,8 are blank)"));
    CHECK(told("A-H⁸ (A1, H8 " + words + ")") == "A1 H8 ");
  }
  for (std::string const words : {"é bianca", "ë bianca", "eè bianca", "esté blanca", "e bianca", "è\u0301 bianca"}) {
    CAPTURE(words); // another word than the verb
    CHECK(told("A-H⁸ (H8 " + words + ")") == "doubted ");
  }
  for (std::string const word : {"blancs", "blanches", "bianche", "bianchi", "blancas", "blancos"}) {
    CAPTURE(word);
    CHECK(told("A-H⁸ (H7,8 " + word + ")") == told("A-H⁸ (H7,8 blanks)"));
    CHECK(told("A-H⁸ (−H7,8, " + word + ")") == told("A-H⁸ (−H7,8, blanks)"));
    CHECK(told("A-H⁸ (−H8, " + word + ")") == told("A-H⁸ (−H8, blanks)"));
  }
}

TEST_CASE("of two gatherings with one name the words mean the nearest before them, as a change does") {
  auto const formula = read_formula("A-C⁸; A-B⁸ (A8 blank) C⁴");
  REQUIRE(formula);
  REQUIRE(formula->blanks().size() == 1);
  CHECK(IdealCopy{*formula}.leaf_number(formula->blanks()[0]) == 32); // A of the second part
}

TEST_CASE("what a remark after a list of deleted leaves calls blank, one, both or some by name, is known") {
  struct Remark { // common practice, no source; which leaves are meant is read by hand
    char const *text, *blanks;
    bool doubted{};
  };
  for (auto const& one : std::initializer_list<Remark>{{"A-K⁸ (−K7,8; K7,8 blank)", "K7 K8"},
                                                       {"A-K⁸ (−K7,8; K8 blank)", "K8"},
                                                       {"A-K⁸ (−K1.8; K1, K8 blank)", "K1 K8"},
                                                       {"A-K⁸ (−A1, K8; A1, K8 blank)", "A1 K8"},
                                                       {"A-K⁸ (−K7,8; K7 and K8 blank; A2 missigned)", "K7 K8"},
                                                       {"A-K⁸ (−K7,8, both blank)", "K7 K8"},
                                                       {"A-K⁸ (−K7,8, K7 and K8 blank)", "K7 K8"},
                                                       {"A-K⁸ (−K7,8, K8 blank)", "K8"},
                                                       {"A-K⁸ (−K7-8, K7,8 blank)", "K7 K8"},
                                                       {"A-K⁸ (−A1, K8, K8 blank, −B2)", "K8"},
                                                       {"A-K⁸ (−K7,8; K7,8 blank, −A1)", "K7 K8"},
                                                       {"A-K⁸ (−K8, K7 blank)", "K7", true}, // is K7 deleted too?
                                                       {"A-K⁸ (−K7,8; both blank)", "K7 K8"},
                                                       {"A-K⁸ (−K7-8, both blank; A2 missigned)", "K7 K8"},
                                                       {"A-K⁸ (−A1, K8, both blanks)", "A1 K8"},
                                                       {"A-K⁸ (−K8, presumed blank)", "K8"},
                                                       {"A-K⁸ (K8 presumed blank)", "K8"},
                                                       {"A-K⁸ (K8 possibly blank)", "K8"},
                                                       {"A-K⁸ (−K6-8, both blank)", "", true},
                                                       {"A-K⁸ (−K6,7,8, both blank)", "", true},
                                                       {"A-K⁸ (−K8, both blank)", "", true},
                                                       {"A-K⁸ (±K7,8, both blank)", "", true},
                                                       {"A-K⁸ (both blank)", "", true}}) {
    std::string const text{one.text};
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    IdealCopy const book{*formula};
    std::string blanks;
    for (auto const& leaf : book.blanks())
      blanks += (blanks.empty() ? "" : " ") + write_reference(book, Reference{leaf});
    CHECK(blanks == one.blanks);
    CHECK(formula->warnings().empty() != one.doubted);
  }
  auto const wanting = read_lawfully("A-K⁸ (K7,8 wanting, both blank)");
  REQUIRE(wanting);
  CHECK(wanting->blanks().size() == 2);
}

TEST_CASE("leaves that are wanting and blank are deleted and told as blank; of several it is doubted which are blank") {
  for (auto const& one : std::initializer_list<BlankLeaves>{{"A-K⁸ (K8 wanting, blank)", "K8"},
                                                            {"A-K⁸ (K8 blank and wanting)", "K8"},
                                                            {"A-K⁸ (K8 bl. and wanting)", "K8"},
                                                            {"A-K⁸ (last leaf blank and wanting)", "K8"},
                                                            {"A-K⁸ (last two leaves blank and wanting)", "", true}}) {
    std::string const text{one.text};
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    IdealCopy const book{*formula};
    CHECK(book.blanks().size() == (one.doubted ? 0U : 1U));
    for (auto const& leaf : book.blanks()) CHECK(write_reference(book, Reference{leaf}) == one.blanks);
    REQUIRE(formula->warnings().size() == (one.doubted ? 2U : 1U));
    CHECK(formula->warnings()[0].problem == Problem::wanting_read_as_deletion);
    if (one.doubted) CHECK(formula->warnings()[1].problem == Problem::text_not_read);
  }
  // "blank" may come before the leaf that is wanting
  for (std::string const words : {"wanting blank K8", "wanting the blank K8", "lacks blank leaf K8", "without blank K8",
                                  "lacking blank last leaf", "lacking the final blank leaf", "lacks final blank",
                                  "lacking the final blank leaf K8", "wants the final blank, K8",
                                  "K8 wanting, prob. blank", "K8, presumably blank, lacking", "minus the blank K8"}) {
    auto const text = "A-K⁸ (" + words + ")";
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == 79);
    CHECK(formula->blanks().size() == 1);
    REQUIRE(formula->warnings().size() == 1);
    CHECK(formula->warnings()[0].problem == Problem::wanting_read_as_deletion);
  }
  CHECK((*read_lawfully("A-K⁸ (wanting blanks A1, K8)")).leaves() == 78);
  CHECK((*read_lawfully("A-K⁸ (K7-8 wanting)")).leaves() == 78);
  // as many as the words say
  for (auto const& [text, leaves] : {std::pair{"A-K¹² (last twelve leaves wanting)", 108},
                                     {"A-K¹² (K1, K2, K3, K4, K5, K6, K7, K8, K9 wanting)", 111},
                                     {"A-K¹² (last twenty leaves wanting)", 120}}) { // K has twelve
    CAPTURE(std::string{text});
    CHECK(broken_law(text, dialects::strict) == "");
    auto const many = read_formula(text);
    REQUIRE(many);
    CHECK(many->leaves() == leaves);
    REQUIRE(many->warnings().size() == 1);
    CHECK(many->warnings()[0].problem == (leaves == 120 ? Problem::text_not_read : Problem::wanting_read_as_deletion));
  }
}

TEST_CASE("a doubt tells of every word for blank, and of every number of leaves, that names no leaf") {
  char const* const numbers[]{"one",     "two",     "three",     "four",     "five",     "six",      "seven",
                              "eight",   "nine",    "ten",       "eleven",   "twelve",   "thirteen", "fourteen",
                              "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"};
  for (std::string const blank : {"blank", "blanks", "bl.", "Blank", "bl"}) {
    CAPTURE(blank);
    CHECK(blanks_told(*read_formula("A-K⁸ (K8 " + blank + ")")) == 1);
    CHECK((*read_formula("A-K⁸ (K8 " + blank + ")")).warnings().empty());
    for (std::string const nothing : {"K9 ", "L1 ", "leaf ", ""}) {
      CHECK(blanks_told(*read_formula("A-K⁸ (" + nothing + blank + ")")) == 0);
      CHECK((*read_formula("A-K⁸ (" + nothing + blank + ")")).warnings().size() == 1);
    }
    for (int n = 1; n <= 20; ++n) {
      auto const formula = read_formula("A¹⁰ (last " + std::string{numbers[n - 1]} + " leaves " + blank + ")");
      REQUIRE(formula);
      CHECK(blanks_told(*formula) == static_cast<std::size_t>(n <= 10 ? n : 0));
      CHECK(formula->warnings().empty() == (n <= 10));
    }
  }
}
