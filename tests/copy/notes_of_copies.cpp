// SPDX-License-Identifier: MIT
// Notes in which catalogues say what a copy lacks: common practice, no source. The notes are invented, and their leaves are
// counted by hand.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

struct NoteOfCopy {
  char const *text, *wanting, *noted = "";
  std::size_t doubts = 0;
};
void check_notes(IdealCopy const& book, std::initializer_list<NoteOfCopy> notes) {
  for (auto const& one : notes) {
    CAPTURE(std::string{one.text});
    auto const read = read_leaves_present(book, one.text);
    REQUIRE(read);
    auto const copy = check_copy(book, read->spans);
    CHECK(wants(book, copy) == one.wanting);
    CHECK(noted(book, copy) == one.noted);
    CHECK(read->warnings().size() == one.doubts);
  }
}

} // namespace

TEST_CASE("leaves excepted from those that are wanting are there") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  for (std::string const except :
       {"except", "Except", "except:", "excepting", "save", "save for", "but", "but for", "except for"}) {
    CAPTURE(except);
    auto const wanting = [&](std::string const& text) {
      CAPTURE(text);
      auto const read = read_leaves_present(book, text);
      REQUIRE(read);
      CHECK(read->warnings().empty());
      return wants(book, check_copy(book, read->spans));
    };
    CHECK(wanting("wants A-C " + except + " B4") == "wants A, B1-3, B5-8, C");
    CHECK(wanting("wants A-C, " + except + " B4.") == "wants A, B1-3, B5-8, C");
    CHECK(wanting("wants A-C (" + except + " B4), K8") == "wants A, B1-3, B5-8, C, K8");
    CHECK(wanting("wants all of A " + except + " A1") == "wants A2-8");
    CHECK(wanting("lacks all " + except + " C-D") == "wants π, A-B, E-K, L");
    CHECK(wanting("lacks everything " + except + " C, L4") == "wants π, A-B, D-K, L1-3");
    CHECK(wanting("A-C wanting " + except + " B4") == "wants A, B1-3, B5-8, C");
    CHECK(wanting("A-C wanting, " + except + " B4") == "wants A, B1-3, B5-8, C");
    CHECK(wanting("π-L (A missing), " + except + " A1") == "wants A2-8");
    CHECK(wanting("lacks all after K4 " + except + " L1") == "wants K5-8, L2-4");
    CHECK(wanting("A-L, wants A " + except + " A1.8") == "wants π, A2-7");
    CHECK(wanting("π-L (wants A " + except + " A2), K8 torn") == "wants A1, A3-8");
    // of nothing, and of what is there, it is what is wanting
    CHECK(wanting("lacks nothing " + except + " A1") == "wants A1");
    CHECK(wanting("complete " + except + " A1") == "wants A1");
    CHECK(wanting("π-L, " + except + " A1") == "wants A1");
    for (std::string const text : {" D1", " B, D", ""}) {
      CAPTURE(text);
      auto const refused = read_leaves_present(book, "wants A-C " + except + text);
      REQUIRE_FALSE(refused);
      CHECK(refused.error().problem == (text.empty() ? Problem::not_a_reference : Problem::exception_of_nothing));
    }
  }
  CHECK(read_leaves_present(book, "wants A-C except D1").error().place->column == 18);
  CHECK(read_leaves_present(book, "lacks all").error().problem == Problem::not_a_reference);
}

TEST_CASE("a word for wanting after leaves and before a comma is said of the leaves") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  for (std::string const word :
       {"wanting", "lacking", "missing", "absent", "fehlt", "manque", "manca", "falta", "ontbreekt", "deest"}) {
    CAPTURE(word);
    auto const wanting = [&](std::string const& text) {
      CAPTURE(text);
      auto const read = read_leaves_present(book, text);
      REQUIRE(read);
      CHECK(read->warnings().empty());
      auto const copy = check_copy(book, read->spans);
      return wants(book, copy) + "; " + noted(book, copy);
    };
    CHECK(wanting("A1 " + word + ", A8 " + word) == "wants A1.8; ");
    CHECK(wanting("A1 " + word + ", A8 " + word + ", K8 " + word + ".") == "wants A1.8, K8; ");
    CHECK(wanting("A1 " + word + ", K8 torn") == "wants A1; K8 damaged");
    CHECK(wanting("A1 " + word + "; K8 torn") == "wants A1; K8 damaged");
    CHECK(wanting("K8 torn, A1 " + word) == "wants A1; K8 damaged");
    CHECK(wanting("A1 and K8 " + word + ", B3 torn") == "wants A1, K8; B3 damaged");
    CHECK(wanting("π-L, A1 " + word + ", K8 torn") == "wants A1; K8 damaged");
    // which leaves it means is not clear where others are only named
    CHECK(read_leaves_present(book, "A1-7, A8 " + word + ", B").error().problem == Problem::wanting_after_leaves);
  }
}

TEST_CASE("a leaf supplied in manuscript or in a photograph is not the leaf") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  struct Substitute {
    std::string what, noted;
  };
  for (auto const& [what, noted_as] :
       std::initializer_list<Substitute>{{"photostat", "A1 in facsimile"},
                                         {"photocopy", "A1 in facsimile"},
                                         {"facsimile", "A1 in facsimile"},
                                         {"manuscript facsimile", "A1 in facsimile"}, // drawn by hand after a leaf
                                         {"ms. facsimile", "A1 in facsimile"},
                                         {"photographic facsimile", "A1 in facsimile"},
                                         {"facs.", "A1 in facsimile"},
                                         {"facsimile, mounted", "A1 in facsimile"},
                                         {"Faksimile", "A1 in facsimile"},
                                         {"fac-similé", "A1 in facsimile"},
                                         {"fotocopia", "A1 in facsimile"},
                                         {"facsímil", "A1 in facsimile"},
                                         {"manuscript", "A1 in manuscript"}, // only the text was written again
                                         {"ms.", "A1 in manuscript"},
                                         {"MS", "A1 in manuscript"},
                                         {"manoscritto", "A1 in manuscript"},
                                         {"manuscrit", "A1 in manuscript"},
                                         {"typescript", "A1 in typescript"}}) {
    CAPTURE(what);
    for (auto const& text : {std::string{"lacks A1, supplied in "} + what, "lacks A1 (supplied in " + what + ")",
                             "lacks A1 in " + what, "π-L, A1 supplied in " + what}) {
      CAPTURE(text);
      auto const read = read_leaves_present(book, text);
      REQUIRE(read);
      auto const copy = check_copy(book, read->spans);
      CHECK(wants(book, copy) == "wants A1");
      CHECK(noted(book, copy) == noted_as);
      // what is written of the copy is read back
      auto const again = read_leaves_present(book, wants(book, copy) + "; " + noted(book, copy));
      REQUIRE(again);
      CHECK(check_copy(book, again->spans).noted == copy.noted);
    }
  }
}

TEST_CASE("notes in English say what is wanting") {
  check_notes(IdealCopy{*read_formula("8°: π² A-K⁸ L⁴")},
              {{"Wanting leaves B3 and B6", "wants B3.6"},
               {"Imperfect; lacks A1 (title page) and K8", "wants A1, K8"},
               {"Lacks all after K4.", "wants K5-8, L"},
               {"lacks leaves A1-B2 and the blank L4", "wants A, B1, B2, L4"},
               {"lacks all before B1 and all after K8", "wants π, A, L"},
               {"Lacks quires C and D", "wants C-D"},
               {"Lacks the last two leaves (L3-4)", "wants L3, L4"},
               {"lacks A1. K8 torn.", "wants A1", "K8 damaged"},
               {"Lacks A1. Lacks K8.", "wants A1, K8"},
               {"lacks A1; lacks also K8", "wants A1, K8"},
               {"A1 torn, lacks K8", "wants K8", "A1 damaged"},
               {"wants A1; A2 and A3 supplied from another copy", "wants A1",
                "A2 supplied from another copy; A3 supplied from another copy"},
               {"A1 blank and wanting", "wants A1"},
               {"A1 to A4 wanting", "wants A1-4"},
               {"only A1-4", "wants π, A5-8, B-K, L"},
               {"Lacks ff. 3 and 10", "wants A1.8"},
               {"Lacks leaves 3, 10 and 86", "wants A1.8, L4"},
               {"complete except A1 and lacking B2", "wants A1, B2"}});
}

TEST_CASE("notes in other languages say what is wanting") {
  check_notes(IdealCopy{*read_formula("8°: π² A-K⁸ L⁴")},
              {// German
               {"Es fehlt Bl. A1", "wants A1"},
               {"Bl. A1 fehlt", "wants A1"},
               {"Bl. A1 und K8 fehlen.", "wants A1, K8"},
               {"Es fehlen die Blätter A1 und A8", "wants A1.8"},
               {"Unvollständig: es fehlen A1-3", "wants A1-3"},
               {"Lage C fehlt", "wants C"},
               {"Es fehlen die Lagen C und D", "wants C-D"},
               {"Defekt: Bl. A1 und Lage C fehlen", "wants A1, C"},
               {"A1 bis A4 fehlen", "wants A1-4"},
               {"ohne Bl. L4", "wants L4"},
               {"Es fehlt das letzte Blatt", "wants L4"},
               {"Es fehlt das letzte leere Blatt", "wants L4"},
               {"Das letzte Blatt fehlt", "wants L4"},
               {"Es fehlt das erste Blatt", "wants π1"},
               {"Es fehlen Bl. 3 und 10", "wants A1.8"},
               {"Lage A fehlt außer A1", "wants A2-8"},
               {"vollständig", ""},
               // French
               {"Manque le f. A1", "wants A1"},
               {"Manquent les ff. A1 et K8", "wants A1, K8"},
               {"Il manque le feuillet A1", "wants A1"},
               {"Incomplet des feuillets A1 et A8", "wants A1.8"},
               {"Incomplet : manque le cahier C", "wants C"},
               {"Exemplaire incomplet du f. A1", "wants A1"},
               {"sans le feuillet L4, blanc", "wants L4"},
               {"Manque le dernier feuillet", "wants L4"},
               {"Manque le dernier feuillet blanc L4", "wants L4"},
               {"Manque le premier f.", "wants π1"},
               {"Manque A1 à A4", "wants A1-4"},
               {"Le feuillet A1 manque", "wants A1"},
               {"Manquent les feuillets 3 et 10", "wants A1.8"},
               {"Manquent les cahiers C et D, sauf D1", "wants C, D2-8"},
               {"complet", ""},
               // Italian
               {"Mancano le carte A1 e A8", "wants A1.8"},
               {"Manca la c. A1", "wants A1"},
               {"Mutilo delle cc. A1 e K8", "wants A1, K8"},
               {"Manca il fascicolo C", "wants C"},
               {"mancante della c. L4 bianca", "wants L4"},
               {"manca l'ultima carta", "wants L4"},
               {"priva dell’ultima c. bianca", "wants L4"},
               {"Mancano le cc. 3 e 10", "wants A1.8"},
               {"Mancano le carte A1, A8 ed L4", "wants A1.8, L4"},
               {"Esemplare privo delle carte A1-3", "wants A1-3"},
               {"completo", ""},
               // Spanish
               {"Falta la h. A1", "wants A1"},
               {"Faltan las h. A1 y A8", "wants A1.8"},
               {"Falto de la hoja A1", "wants A1"},
               {"Ejemplar falto de las hojas A1 y K8", "wants A1, K8"},
               {"Faltan las hojas A1 a A4", "wants A1-4"},
               {"Falta el cuaderno C", "wants C"},
               {"Falta la última hoja", "wants L4"},
               {"Falta la última hoja en blanco", "wants L4"},
               {"sin la h. L4", "wants L4"},
               {"completa", ""},
               // Dutch
               {"Ontbreekt: blad A1", "wants A1"},
               {"Katern C ontbreekt", "wants C"},
               {"De bladen A1 en A8 ontbreken", "wants A1.8"},
               {"Blad L4 (blanco) ontbreekt", "wants L4"},
               {"zonder L4", "wants L4"},
               {"het laatste blad ontbreekt", "wants L4"},
               // Latin
               {"desunt A1 et K8", "wants A1, K8"},
               {"deest fol. A1", "wants A1"},
               {"deest ultimum folium", "wants L4"},
               {"desunt folia A1 et A8", "wants A1.8"},
               {"caret foliis A1, A8", "wants A1.8"}});
}

TEST_CASE("a word that joins leaves or stands before them is a gathering where the book has one of that name") {
  check_notes(IdealCopy{*read_formula("8°: A-C⁸ a-z⁸ 2a-2z⁸")},
              {{"mancano A1, e, A8", "wants A1.8, e"},
               {"mancano A1, e", "wants A1, e"},
               {"mancano e, A1", "wants A1, e"},
               {"mancano A1 e A8", "wants A1.8", "", 1}, // e or "and"?
               {"faltan A1 y A8", "wants A1.8", "", 1},
               {"faltan A1, y", "wants A1, y"},
               {"faltan y-z", "wants y-z"},
               {"A-C a-d e f-z 2a-2z", ""},
               {"A B C a-d e f g-z 2a-2z", ""},
               {"A-C a-x y z 2a-2z", ""},
               {"wants c, h", "wants c, h"},
               {"A-C, a-b, c, d-z 2a-2z", ""},
               {"A-C, a-g, h, i-z, 2a-2z, c wanting", "wants c"},
               {"A-C, a-z, 2a-2z, d and e wanting", "wants d-e"},
               {"A-C, a-z, 2a-2z, e wanting", "wants e"},
               {"A-C, a-z, 2a-2z (y missing)", "wants y"},
               {"wants f. 3", "wants A3"},
               {"wants ff, 2g", "wants 2f-2g"},
               {"wants A1 a1", "wants A1, a1"}});
  IdealCopy const without{
      *read_formula("8°: A-C⁸ a-d⁸")}; // e is not in this book, and is no word where it joins nothing
  for (auto const* const text :
       {"wants c, e", "wants e", "wants e, a", "wants d, e, a", "a b c d e", "wants y", "wants A1 y"}) {
    CAPTURE(std::string{text});
    CHECK_FALSE(read_leaves_present(without, text));
  }
  // a word before leaves is one only before their name
  for (auto const* const text : {"leaf", "the leaf", "wants le", "die", "A1 feuillets", "A1, le", "hojas", "Bl."}) {
    CAPTURE(std::string{text});
    CHECK_FALSE(read_leaves_present(without, text));
  }
}

TEST_CASE("of leaves that are said to be wanting, each that no copy has is doubted, and the others are wanting") {
  IdealCopy const book{*read_formula("8°: A⁸(−A1) B⁸ C⁸(−C8)")};
  std::vector<std::string> const gone{"A1", "C8"}, there{"B2", "C1", "A2"};
  for (auto const& none : gone)
    for (auto const& leaf : there)
      for (std::string const between : {", ", " and ", "; ", " "})
        for (bool const first : {true, false})
          for (std::string const begins : {"lacking ", "wants ", "A-C, lacking ", "A-C (wanting ", "−"}) {
            auto const text = begins + (first ? none : leaf) + between + (first ? leaf : none) +
                              (begins.find('(') == std::string::npos ? "" : ")");
            CAPTURE(text);
            auto const read = read_leaves_present(book, text);
            REQUIRE(read);
            CHECK(wants(book, check_copy(book, read->spans)) == "wants " + leaf);
            REQUIRE(read->warnings().size() == 1);
            CHECK(read->warnings()[0].problem == Problem::wanting_in_every_copy);
            CHECK(read->warnings()[0].found_text() == none);
          }
}
