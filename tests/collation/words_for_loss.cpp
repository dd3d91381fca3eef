// SPDX-License-Identifier: MIT
// Ranges of leaves in words, and words in a parenthesis that say that a leaf is not there, or that another one is. What is read
// gives the right number of leaves, and what is not read is told. (common practice, no source)
#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>

using namespace bifolium;

TEST_CASE("a range of leaves in words ends with a figure or with a leaf of its gathering") {
  for (std::string const word : {"to", "through", "thru", "until", "till", "bis", "tot", "hasta"})
    for (int first = 1; first < 8; ++first)
      for (int last = first + 1; last <= 8; ++last)
        for (std::string const name : {"E", ""}) {
          auto const range = "E" + std::to_string(first) + " " + word + " " + name + std::to_string(last);
          auto const left = 40 - (last - first + 1);
          for (auto const& [sign, leaves] : {std::pair{"−", left}, {"less ", left}, {"wants ", left}, {"±", 40}}) {
            auto const text = "8°: A-D⁸ E⁸(" + (sign + range) + ")";
            CAPTURE(text);
            auto const formula = read_formula(text);
            REQUIRE(formula);
            CHECK(formula->leaves() == leaves);
            CHECK(formula->changes().size() == 1);
            if (first == 3) CHECK(broken_law(text, {}) == "");
          }
          CHECK((*read_formula("8°: A-D⁸ E⁸ (" + range + " blank)")).blanks().size() ==
                static_cast<std::size_t>(last - first + 1));
          CHECK((*read_formula("8°: A-D⁸ E⁸ (" + range + " wanting)")).leaves() == left);
        }
}

TEST_CASE("a range that ends in another gathering is not a single leaf") {
  for (std::string const word : {"to", "through", "bis"})
    for (std::string const sign : {"−", "±", "less ", "wants "}) {
      auto const text = "8°: A-D⁸ E-F⁸(" + sign + "E7 " + word + " F2)";
      CAPTURE(text);
      auto const formula = read_formula(text);
      CHECK((!formula || formula->leaves() == 44 || !formula->warnings().empty()));
      CHECK(broken_law(text, {}) == "");
    }
  CHECK(read_formula("8°: A-D⁸ E-F⁸(−E7 to F2)").error().problem == Problem::change_not_understood);
}

TEST_CASE("words for a loss or an addition are told in every language and in any place of the parenthesis") {
  for (std::string const words : {"ohne H4",
                                  "sans H4",
                                  "senza H4",
                                  "sin H4",
                                  "sine H4",
                                  "zonder H4",
                                  "caret H4",
                                  "saknar H4",
                                  "mangler H4",
                                  "fehlt H4",
                                  "manque H4",
                                  "manca H4",
                                  "falta H4",
                                  "deest H4",
                                  "missing H4",
                                  "utan H4",
                                  "uten H4",
                                  "bez H4",
                                  "hiányzik H4",
                                  "sem H4",
                                  "del. H4",
                                  "delete H4",
                                  "deleatur H4",
                                  "not H4",
                                  "only H1-3",
                                  "nur H1-3",
                                  "seulement H1-3",
                                  "H1-3 only",
                                  "H4 no",
                                  "H4 gone",
                                  "H4 torn out",
                                  "H4 lost",
                                  "H4 saknas",
                                  "H4 nicht vorhanden",
                                  "H4 bis",
                                  "dopo H2 una c.",
                                  "dopo H2 una carta",
                                  "tra H2 e H3 una carta",
                                  "avec 1 f. ajouté après H2",
                                  "après H2 1 f.",
                                  "zwischen H2 und H3 1 Bl.",
                                  "H2 ajouté",
                                  "1 leaf inserted after H2",
                                  "one leaf after H2",
                                  "tussen H2 en H3 een blad",
                                  "entre H2 y H3 una hoja"})
    for (auto const& [open, close] : {std::pair{"", ""}, std::pair{"G1 title, ", ""}, std::pair{"", ", G2 misprinted"},
                                      std::pair{"G1 title; ", ""}}) {
      auto const text = "4°: A-G⁴ H⁴ (" + (open + words) + close + ")";
      CAPTURE(text);
      auto const formula = read_formula(text);
      REQUIRE(formula);
      CHECK((formula->leaves() != 32 || !formula->warnings().empty()));
      CHECK(broken_law(text, {}) == "");
    }
}

TEST_CASE("remarks on a leaf that is there are no doubt") {
  for (std::string const words :
       {"A1 title", "H4 colophon", "title A1, colophon H4", "G4 signed F4", "A1 with portrait", "C1 missigned D1",
        "errata on H4", "H4v blank", "A1r: title", "map facing B2", "B2 and B3 misprinted", "errata H4",
        "A2 dedication", "dedication A2-3", "plate after H2", "A3 missigned \"A4\"", "H1 recto printed in red"}) {
    auto const text = "4°: A-G⁴ H⁴ (" + words + ")";
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == 32);
    CHECK(formula->warnings().empty());
  }
}

TEST_CASE("leaves that are listed after a formula are read as in parentheses") {
  for (std::string const loss : {"wanting", "lacking", "wants", "minus", "less", "−"})
    for (auto const& [leaves, lost] : {std::pair{"E7", 1},
                                       {"E7 & 8", 2},
                                       {"E7 and 8", 2},
                                       {"E7-8", 2},
                                       {"E7–8", 2},
                                       {"E3 to E6", 4},
                                       {"E3 to 6", 4},
                                       {"E7, E8", 2},
                                       {"E7,8", 2},
                                       {"E7.8", 2},
                                       {"E7 and E8", 2},
                                       {"D8, E7-8", 3},
                                       {"A1, B2-4 and C1", 5}})
      for (std::string const join : {" ", ", ", "; "}) {
        auto const text = "8°: A-D⁸ E⁸" + join + loss + (loss == "−" ? "" : " ") + leaves;
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 40 - lost);
        CHECK(formula->gatherings() == 5);
        CHECK(!formula->warnings().empty());
      }
  for (auto const& [leaves, lost] : {std::pair{"E7-8", 2}, {"E3 to E6", 4}, {"E7 and 8", 2}, {"A1 and E8", 2}}) {
    auto const formula = read_lawfully(std::string{"8°: A-D⁸ E⁸, "} + leaves + " wanting");
    REQUIRE(formula);
    CHECK(formula->leaves() == 40 - lost);
  }
  for (std::string const text : {"8°: A-D⁸ E⁸ −E7, F⁸", "8°: A-D8 E8 −E7, F8"}) {
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == 47);
  }
}

TEST_CASE("a loss that is said twice is counted once, and told") { // as ESTC notes have it, constructed
  for (std::string const change : {"(-A1)", "(−A1.4)", "(−A1, A4)"})
    for (std::string const said : {"lacking A1", "wanting A1", "lacks A1", "A1 wanting", "A1 lacking"})
      for (std::string const more : {"", ", presumably blank", ", blank", "."})
        for (auto const& [open, close] : {std::pair{"; ", ""}, {", ", ""}, {" ", ""}, {" (", ")"}}) {
          auto const text = "Signatures: A⁴ " + change + " B-C⁴" + open + said + more + close;
          CAPTURE(text);
          auto const formula = read_lawfully(text);
          REQUIRE(formula);
          CHECK(formula->leaves() == (change == "(-A1)" ? 11 : 10));
          CHECK(!formula->warnings().empty());
        }
  CHECK(read_formula("A⁴ (±A1) B-C⁴; lacking A1").error().problem == Problem::leaf_changed_twice);
}

TEST_CASE("a list of leaves after the formula is one statement, in whatever way it is written") {
  // the leaves that the words name are the only ones that are out (counted by hand; common practice, no source)
  struct List {
    char const* text;
    int leaves;
  };
  for (std::string const first : {"8°: A-K⁸", "8°: A-K8", "8°: π² A-I⁸ K⁸"})
    for (std::string const between : {"; ", ", ", ". "})
      for (List const list : {List{"K7, 8", 2},
                              {"K7, K8", 2},
                              {"K6, 7, 8", 3},
                              {"A1, K8", 2},
                              {"A1, B2, K8", 3},
                              {"K5-6, 8", 3},
                              {"K8, A1", 2},
                              {"A1, 8, K8", 3},
                              {"A1, 2 and K8", 3},
                              {"A2, B2-3, K1", 4},
                              {"D8, E8", 2},
                              {"D8, 7", 2},
                              {"K7 & K8", 2},
                              {"A1, K7-8", 3},
                              {"A8, B8, C8", 3}})
        for (std::string const words :
             {" wanting", " lacking", " are wanting", " wanting and blank", " blank and wanting"}) {
          auto const text = first + between + list.text + words;
          CAPTURE(text);
          auto const formula = read_lawfully(text), whole = read_formula(first);
          REQUIRE(formula);
          CHECK(formula->leaves() == (*whole).leaves() - list.leaves);
          CHECK(formula->gatherings() == (*whole).gatherings());
          CHECK(formula->warnings()[0].problem == Problem::wanting_read_as_deletion);
        }
  for (std::string const list : {"K7, 8 blank", "K7, K8 blank", "A1, K8 blank", "D8, E8 blank"}) {
    auto const formula = read_lawfully("8°: A-K⁸; " + list);
    REQUIRE(formula);
    CHECK(formula->leaves() == 80);
    CHECK(formula->blanks().size() == 2);
  }
  // gatherings are gatherings where no words say what is with leaves
  CHECK((*read_lawfully("8°: A-D8; A8, B8; C8")).leaves() == 56);
  CHECK((*read_lawfully("8°: A-D8; A8, B8")).leaves() == 48);
  CHECK((*read_lawfully("8°: A-K⁸; K8, 2 blank leaves")).leaves() == 90);
}
