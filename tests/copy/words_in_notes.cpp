// SPDX-License-Identifier: MIT
// How notes name leaves in words: their number before the names, the ends of the book, its quires and pairs, what else is said of
// the copy. Common practice, no source; the notes are made here, and their leaves counted by hand or by their making.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <string>
#include <vector>

using namespace bifolium;

namespace {

struct Outcome {
  std::string wanting, doubts;
  Outcome(std::string lacks, std::string of = {}) : wanting{std::move(lacks)}, doubts{std::move(of)} {}
  friend bool operator==(Outcome const&, Outcome const&) = default;
  friend std::ostream& operator<<(std::ostream& out, Outcome const& one) {
    return out << one.wanting << " | " << one.doubts;
  }
};
Outcome outcome(IdealCopy const& book, std::string const& text) {
  auto const read = read_leaves_present(book, text);
  if (!read) return {"refused", std::string{identifier(read.error().problem)}};
  Outcome result{wants(book, check_copy(book, read->spans))};
  for (auto const& doubt : read->warnings())
    result.doubts.append(result.doubts.empty() ? "" : ", ").append(identifier(doubt.problem));
  return result;
}
IdealCopy ten_quires() { return IdealCopy{*read_formula("8°: π² A-K⁸ L⁴")}; }
std::string last_leaves(int number) { // of L⁴ and K⁸
  if (number == 1) return "wants L4";
  if (number == 2) return "wants L3, L4";
  if (number == 3) return "wants L2-4";
  return number == 4 ? "wants L" : number == 5 ? "wants K8, L" : "wants K7, K8, L";
}
std::string first_leaves(int number) {
  if (number == 1) return "wants π1";
  if (number == 2) return "wants π";
  if (number == 3) return "wants π, A1";
  if (number == 4) return "wants π, A1, A2";
  return "wants π, A1-" + std::to_string(number - 2);
}

} // namespace

TEST_CASE("the number of leaves stands before their names") {
  auto const book = ten_quires();
  for (std::string const number : {"two", "2", "zwei", "deux", "due", "dos", "twee"})
    for (std::string const leaves : {"leaves", "ff.", "Bl.", "Blätter", "feuillets", "cc.", "carte", "hojas", "bladen"})
      for (std::string const between : {" ", ": ", " : ", ", "})
        for (std::string const lacks : {"lacks ", "Es fehlen ", "manquent ", "mancano ", "faltan "}) {
          auto const text = lacks + number + ' ' + leaves + between;
          CAPTURE(text);
          CHECK(outcome(book, text + "A1 and B3") == Outcome{"wants A1, B3"});
          CHECK(outcome(book, text + "A1, B3.") == Outcome{"wants A1, B3"});
          CHECK(outcome(book, text + "A1.8") == Outcome{"wants A1.8"});
          CHECK(outcome(book, text + "A1-3") == Outcome{"wants A1-3", "leaves_miscounted"});
          if (between != " ") continue;
          CHECK(outcome(book, text + "(A1 and B3)") == Outcome{"wants A1, B3"});
          CHECK(outcome(book, text + "(A1 and B3), K8") == Outcome{"wants A1, B3, K8"});
          CHECK(outcome(book, text + "(A1-3), K8") == Outcome{"wants A1-3, K8", "leaves_miscounted"});
          CHECK(outcome(book, text.substr(0, text.size() - 1)).wanting == "refused"); // which?
        }
  CHECK(outcome(book, "Lacks one leaf (A1)") == Outcome{"wants A1"});
  CHECK(outcome(book, "lacking 4 leaves: A1, A8, B4.5") == Outcome{"wants A1.8, B4.5"});
  CHECK(outcome(book, "(lacks two leaves (A1 and B3))") == Outcome{"wants A1, B3"});
  CHECK(outcome(book, "lacks two quires (B and C)") == Outcome{"wants B-C"});
  CHECK(outcome(book, "lacks the first and last leaves (π1 and L4)") == Outcome{"wants π1, L4"});
  auto const read = read_leaves_present(book, "lacks three leaves (A1 and B3)");
  REQUIRE(read);
  REQUIRE(read->warnings().size() == 1);
  CHECK(read->warnings()[0].problem == Problem::leaves_miscounted);
  CHECK(read->warnings()[0].limit == 2);
  CHECK(read->warnings()[0].place->column == 7);
  CHECK(read->warnings()[0].found_text() == "three");
}

TEST_CASE("first and last leaves and quires are counted in many languages") {
  auto const book = ten_quires();
  struct Language {
    std::string lacks, last, first, leaves, numbers[4];
  };
  for (auto const& one : std::initializer_list<Language>{
           {"lacks ", "the last", "the first", "leaves", {"two", "three", "four", "five"}},
           {"es fehlen ", "die letzten", "die ersten", "Blätter", {"zwei", "drei", "vier", "fünf"}},
           {"es fehlen ", "die letzten", "die ersten", "Bl.", {"beiden", "drei", "vier", "fünf"}},
           {"manquent ", "les derniers", "les premiers", "ff.", {"deux", "trois", "quatre", "cinq"}},
           {"manquent ", "les dernières", "les premières", "feuilles", {"deux", "trois", "quatre", "cinq"}},
           {"mancano ", "le ultime", "le prime", "carte", {"due", "tre", "quattro", "cinque"}},
           {"mancano ", "le ultime", "le prime", "cc.", {"due", "tre", "quattro", "cinque"}},
           {"faltan ", "las últimas", "las primeras", "hojas", {"dos", "tres", "cuatro", "cinco"}},
           {"ontbreken ", "de laatste", "de eerste", "bladen", {"twee", "drie", "vier", "vijf"}}})
    for (int number = 2; number <= 5; ++number)
      for (std::string const& word : {one.numbers[number - 2], std::to_string(number)}) {
        for (std::string const end : {"", ".", "; A1"}) {
          if (end == "." && one.leaves.ends_with('.')) continue;
          auto const last = one.lacks + one.last + ' ' + word + ' ' + one.leaves + end;
          CAPTURE(last);
          auto const a1 = end == "; A1";
          auto const wanting = last_leaves(number);
          CHECK(outcome(book, last) == Outcome{a1 ? "wants A1, " + wanting.substr(6) : wanting});
          if (a1) continue;
          CHECK(outcome(book, one.lacks + one.first + ' ' + word + ' ' + one.leaves + end) ==
                Outcome{first_leaves(number)});
        }
        // les deux derniers ff.
        auto const at = one.last.find(' ');
        if (one.lacks == "lacks ") continue;
        CHECK(outcome(book, one.lacks + one.last.substr(0, at + 1) + word + one.last.substr(at) + ' ' + one.leaves) ==
              Outcome{last_leaves(number)});
      }
  for (int first = 1; first <= 6; ++first)
    for (int last = 1; last <= 6; ++last) {
      auto const text = "lacks first " + std::to_string(first) + " and last " + std::to_string(last) + " leaves";
      CAPTURE(text);
      CHECK(outcome(book, text) == Outcome{first_leaves(first) + ", " + last_leaves(last).substr(6)});
    }
  for (std::string const quire : {"quire", "gathering", "signature"}) {
    CHECK(outcome(book, "lacks the first " + quire) == Outcome{"wants π"});
    CHECK(outcome(book, "lacks the last " + quire) == Outcome{"wants L"});
    CHECK(outcome(book, "the last " + quire + " wanting") == Outcome{"wants L"});
    CHECK(outcome(book, "lacks the last two " + quire + "s") == Outcome{"wants K, L"});
    CHECK(outcome(book, "lacks the first three " + quire + "s, L4") == Outcome{"wants π, A-B, L4"});
    CHECK(outcome(book, "lacks the last 40 " + quire + "s").wanting == "refused");
    CHECK(outcome(book, "lacks the last " + quire + " L") == Outcome{"wants L"});
  }
  CHECK(outcome(book, "es fehlt die letzte Lage") == Outcome{"wants L"});
  CHECK(outcome(book, "manque le premier cahier") == Outcome{"wants π"});
  CHECK(outcome(book, "mancano gli ultimi due fascicoli") == Outcome{"wants K, L"});
  CHECK(outcome(book, "deest fol. ultimum") == Outcome{"wants L4"});
  CHECK(outcome(book, "deest folium primum") == Outcome{"wants π1"});
}

TEST_CASE("only the leaves that are named are there") {
  auto const book = ten_quires();
  for (std::string const only : {"only", "nur", "seul", "solo", "seulement", "soltanto", "alleen", "tantum"}) {
    CAPTURE(only);
    CHECK(outcome(book, "B " + only) == Outcome{"wants π, A, C-K, L"});
    CHECK(outcome(book, "B and C " + only) == Outcome{"wants π, A, D-K, L"});
    CHECK(outcome(book, only + " B2-7") == Outcome{"wants π, A, B1.8, C-K, L"});
    CHECK(outcome(book, "fragment: B2-7 " + only) == Outcome{"wants π, A, B1.8, C-K, L"});
    CHECK(outcome(book, "Fragment: " + only + " B2-7") == Outcome{"wants π, A, B1.8, C-K, L"});
  }
  CHECK(outcome(book, "quires B and C only") == Outcome{"wants π, A, D-K, L"});
  CHECK(outcome(book, "nur A1-C4 vorhanden") == Outcome{"wants π, C5-8, D-K, L"});
  CHECK(outcome(book, "solo le cc. A1-C4") == Outcome{"wants π, C5-8, D-K, L"});
  CHECK(outcome(book, "seulement les ff. A1-C4") == Outcome{"wants π, C5-8, D-K, L"});
  CHECK(outcome(book, "fragment: B2-7").wanting == "refused"); // there, or wanting?
}

TEST_CASE("what else a note says of the copy changes no leaf") {
  auto const book = ten_quires();
  for (std::string const rest :
       {"otherwise complete", "otherwise perfect", "sonst vollständig", "sinon complet", "otherwise Complete"})
    for (std::string const list :
         {"A1 wanting, ", "lacks A1; ", "lacks A1, ", "fehlt A1, ", "wants A1 ", "(A1 wanting), "}) {
      CAPTURE(list + rest);
      CHECK(outcome(book, list + rest) == Outcome{"wants A1"});
    }
  for (std::string const blanks :
       {"with the blanks", "with the blank", "including blanks", "with the final blank", "with both blanks",
        "with the two blank leaves", "avec les ff. blancs", "mit den leeren Blättern"}) {
    CAPTURE(blanks);
    auto const read = outcome(book, "Complete, " + blanks);
    if (read.wanting != "refused") CHECK(read == Outcome{""});
  }
  CHECK(outcome(book, "Complete, with the blanks") == Outcome{""});
  CHECK(outcome(book, "Complete, with the final blank") == Outcome{""});
  for (std::string const part : {"lower corner", "upper margin", "fore-edge", "part of text", "blank lower margin"})
    for (std::string const lacks : {"lacks", "lacking", "wanting"}) {
      auto const text = "complete, B4 " + lacks + ' ' + part;
      CAPTURE(text);
      CHECK(outcome(book, text) == Outcome{""});
      CHECK(noted(book, check_copy(book, (*read_leaves_present(book, text)).spans)) == "B4 damaged");
      CHECK(outcome(book, "wants A1; B4 " + lacks + ' ' + part) == Outcome{"wants A1"});
      CHECK(outcome(book, "A1 " + lacks + ' ' + part + "; lacks L4") == Outcome{"wants L4"});
    }
  for (std::string const text :
       {"lacks part of B", "A-D, lacks lower margin", "A-D lacks second half", "lacks lower corner", "B lacks part"})
    CHECK(outcome(book, text).wanting == "refused");
}

TEST_CASE("a leaf is named with a blank before its figure, by a Roman number, or with its mate") {
  auto const book = ten_quires();
  for (char const mark : std::string_view{"ABCDEFGHIK"})
    for (int leaf = 1; leaf <= 8; ++leaf) {
      std::string const name{mark};
      auto const figure = std::to_string(leaf);
      CAPTURE(name + figure);
      CHECK(outcome(book, "wants " + name + ' ' + figure) == outcome(book, "wants " + name + figure));
      CHECK(outcome(book, "wants " + name + ' ' + figure + ", L 4") ==
            outcome(book, "wants " + name + figure + ", L4"));
      CHECK(outcome(book, "A-L, wants " + name + ' ' + figure + "-8") ==
            outcome(book, "A-L, wants " + name + figure + "-8"));
    }
  CHECK(outcome(book, "wants A 1, A 2 and B 4") == Outcome{"wants A1, A2, B4"});
  CHECK(outcome(book, "wants A 2 leaves").wanting == "refused");
  CHECK(outcome(book, "wants A 9").wanting == "refused");
  IdealCopy const numbered{*read_formula("8°: A⁸ 1-20⁸")};
  CHECK(outcome(numbered, "wants A 1") == Outcome{"wants A, 1"});
  constexpr char const* numerals[]{"i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii"};
  for (int leaf = 1; leaf <= 12; ++leaf) {
    CAPTURE(leaf);
    for (std::string const word : {"f. ", "fol. ", "leaf ", "folio "})
      CHECK(outcome(book, "wants " + word + numerals[leaf - 1]) == outcome(book, "wants f. " + std::to_string(leaf)));
  }
  CHECK(outcome(book, "wants ff. v-vii") == Outcome{"wants A3-5"});
  CHECK(outcome(book, "wants f. cc").wanting == "refused");
  IdealCopy const letters{*read_formula("8°: a-z⁸")};
  CHECK(outcome(letters, "wants f. xii") == Outcome{"wants b4", "leaf_or_word"}); // or x2
  CHECK(outcome(letters, "wants ff. xi-xii") == Outcome{"wants b3, b4", "leaf_or_word"});
  CHECK(outcome(letters, "wants leaf cij") == Outcome{"wants c2"});
  CHECK(outcome(book, "lacks the inner bifolium of quire B, K8") == Outcome{"wants B4.5, K8"});
  CHECK(outcome(book, "lacks the outer bifolium of L") == Outcome{"wants L1.4"});
  CHECK(outcome(book, "lacks the outer sheet of B").wanting == "refused"); // one pair or two, by the format
  CHECK(outcome(book, "ll. A1 and A8 wanting") == Outcome{"wants A1.8"});
  CHECK(outcome(book, "blanks A1 and L4 wanting") == Outcome{"wants A1, L4"});
  CHECK(outcome(book, "sans les ff. blancs A1 et L4") == Outcome{"wants A1, L4"});
  CHECK(outcome(book, "mancano i fasc. B e C") == Outcome{"wants B-C"});
  CHECK(outcome(book, "manca il fasc. B") == Outcome{"wants B"});
  CHECK(outcome(book, "acefalo, mancano A1-2") == Outcome{"wants A1, A2"});
  CHECK(outcome(book, "desiderantur A1, A8") == Outcome{"wants A1.8"});
  CHECK(outcome(book, "wants cancel D3") == Outcome{"wants D3"});
  IdealCopy const with_i{*read_formula("8°: a-z⁸")};
  CHECK(outcome(with_i, "wants h, i") == Outcome{"wants h-i"});
  CHECK(outcome(with_i, "wants i fasc") == Outcome{"refused", "not_a_reference"});
}

TEST_CASE("first and last leaves or quires are named with one noun, each with its number") {
  auto const book = ten_quires(); // 12 gatherings, the first π of two leaves, the last L of four
  struct Number {
    std::string words;
    int number;
  };
  std::vector<Number> const numbers{{"first", 1}, {"first two", 2}, {"first 3", 3}},
      at_end{{"last", 1}, {"last two", 2}};
  for (auto const& [first, before] : numbers)
    for (auto const& [last, after] : at_end)
      for (std::string const the : {"", "the "}) {
        auto const leaves = "wants " + the + first + " and " + the + last + " leaves";
        CAPTURE(leaves);
        CHECK(outcome(book, leaves).wanting == first_leaves(before) + last_leaves(after).substr(5).insert(0, ","));
        for (std::string const noun : {"quires", "gatherings", "signatures"}) {
          auto const quires = "lacks " + the + first + " and " + the + last + ' ' + noun;
          CAPTURE(quires);
          std::string const begin = before == 1 ? "π" : before == 2 ? "π, A" : "π, A-B";
          CHECK(outcome(book, quires) == Outcome{"wants " + begin + (after == 1 ? ", L" : ", K, L")});
        }
      }
  CHECK(outcome(book, "es fehlen die erste und letzte Lage") == Outcome{"wants π, L"});
  CHECK(outcome(book, "manquent les premier et dernier cahiers") == Outcome{"wants π, L"});
  CHECK(outcome(book, "mancano il primo e ultimo fascicolo") == Outcome{"wants π, L"});
  CHECK(outcome(book, "wants the first leaf and the last quire") == Outcome{"wants π1, L"});
  // another item after them
  CHECK(outcome(book, "wants the last quire and B4") == Outcome{"wants B4, L"});
  CHECK(outcome(book, "wants the last quire, and B4") == Outcome{"wants B4, L"});
  CHECK(outcome(book, "wants first and last quires and B4") == Outcome{"wants π, B4, L"});
  CHECK(outcome(book, "wants first and last leaves, supplied in facsimile") == Outcome{"wants π1, L4"});
  CHECK(outcome(book, "wants the final blank L4") == Outcome{"wants L4"});
}

TEST_CASE("the first and the last leaves of a gathering are named by their place") {
  auto const book = ten_quires();
  for (std::string const gathering : {"of B", "of gathering B", "in quire B", "of sig. B", "of the quire B"}) {
    CAPTURE(gathering);
    CHECK(outcome(book, "lacks last leaf " + gathering) == Outcome{"wants B8"});
    CHECK(outcome(book, "lacks the first two leaves " + gathering + ", K8") == Outcome{"wants B1, B2, K8"});
    CHECK(outcome(book, "lacks first and last leaves " + gathering) == Outcome{"wants B1.8"});
    CHECK(outcome(book, "lacks last 9 leaves " + gathering).wanting == "refused");
  }
  CHECK(outcome(book, "fehlt das letzte Blatt der Lage B") == Outcome{"wants B8"});
  CHECK(outcome(book, "manque le dernier feuillet du cahier B") == Outcome{"wants B8"});
  CHECK(outcome(book, "wants the last leaf of B and A1") == Outcome{"wants A1, B8"});
  CHECK(outcome(book, "wants the last leaf of M").wanting == "refused");
}

TEST_CASE("a pair of leaves by its place is read, and a sheet is refused because it has no certain leaves") {
  auto const book = ten_quires();
  for (std::string const noun : {"bifolium", "Doppelblatt", "bifolio"})
    for (std::string const of :
         {" of B", " of gathering B", " of the quire B", " von B", " der Lage B", " du cahier B"}) {
      for (std::string const inner : {"inner", "the innermost", "central", "inneres", "das innere"}) {
        CAPTURE(inner + ' ' + noun + of);
        CHECK(outcome(book, "lacks " + inner + ' ' + noun + of) == Outcome{"wants B4.5"});
      }
      for (std::string const outer : {"outer", "the outermost", "äußeres", "das äußere"})
        CHECK(outcome(book, "lacks " + outer + ' ' + noun + of + ", K8") == Outcome{"wants B1.8, K8"});
    }
  CHECK(outcome(book, "manque le bifolium intérieur du cahier B") == Outcome{"wants B4.5"});
  CHECK(outcome(book, "manca il bifolio esterno del fascicolo B") == Outcome{"wants B1.8"});
  for (std::string const sheet :
       {"outer sheet of B", "inner sheet of B", "the outer sheet of gathering B", "inner half-sheet of B",
        "äußerer Bogen der Lage B", "feuille extérieure du cahier B"}) {
    CAPTURE(sheet);
    CHECK(outcome(book, "lacks " + sheet) == Outcome{"refused", "sheet_of_gathering"});
    CHECK(outcome(book, "lacks K8 and " + sheet) == Outcome{"refused", "sheet_of_gathering"});
  }
  auto const refused = read_leaves_present(book, "lacks K8, outer sheet of B");
  REQUIRE_FALSE(refused);
  CHECK(refused.error().problem == Problem::sheet_of_gathering);
  CHECK(refused.error().place->column == 11);
  CHECK(refused.error().found_text() == "outer sheet of B");
}

// A leaf that is torn is there, so a note that begins with a loss and ends with a tear says both: common practice, no source.
TEST_CASE("a state of the last leaf takes no other from what is wanting") {
  auto const book = ten_quires();
  auto const told = [&](std::string const& text) {
    CAPTURE(text);
    auto const read = read_leaves_present(book, text);
    REQUIRE(read);
    auto const check = check_copy(book, read->spans);
    return wants(book, check) + "; " + noted(book, check);
  };
  for (std::string const joining : {" and ", " & ", ", and ", " und ", " et "})
    for (std::string const state : {"torn", "stained", "mounted", "cropped", "damaged", "lacks lower corner"}) {
      auto const of = std::string{state == "mounted" ? " mounted" : " damaged"};
      CHECK(told("lacks A1" + joining + "B4 " + state) == "wants A1; B4" + of);
      CHECK(told("lacks A1, B3" + joining + "B4 " + state) == "wants A1, B3; B4" + of);
      CHECK(told("lacks A1 (title)" + joining + "B4 " + state) == "wants A1; B4" + of);
      CHECK(told("lacks A1; B3" + joining + "B4 " + state) == "wants A1; B3" + of + "; B4" + of);
      if (state[0] == 'l') continue; // both lacks lower corner
      CHECK(told("lacks A1; K8, B3" + joining + "B4 both " + state) == "wants A1, K8; B3" + of + "; B4" + of);
      CHECK(told("B3" + joining + "B4 " + state) == "; B3" + of + "; B4" + of);
    }
  // what stands in the place of a leaf leaves it wanting
  CHECK(told("lacks A1 and B4 in facsimile") == "wants A1, B4; A1 in facsimile; B4 in facsimile");
}

TEST_CASE("a state is said of the items before it, and not of others that have their own") {
  auto const book = ten_quires();
  auto const told = [&](std::string const& text) {
    CAPTURE(text);
    auto const read = read_leaves_present(book, text);
    REQUIRE(read);
    return noted(book, check_copy(book, read->spans));
  };
  CHECK(told("A1 mounted and B4 torn") == "A1 mounted; B4 damaged");
  CHECK(told("A1 and B4 mounted and C1 torn") == "A1 mounted; B4 mounted; C1 damaged");
  CHECK(told("A1 and B4 and C1 in facsimile") == "A1 in facsimile; B4 in facsimile; C1 in facsimile");
  CHECK(told("A1 and B4 in facsimile, mounted") == "A1 in facsimile; B4 in facsimile");
  CHECK(told("π-L (B3 torn)") == "B3 damaged");
  CHECK(told("A1, inner bifolium of B torn") == "B4 damaged; B5 damaged");
  CHECK(told("wants A1, first and last leaves in facsimile") == "π1 in facsimile; L4 in facsimile");
  CHECK(told("wants first leaf of B in facsimile, K8") == "B1 in facsimile");
  CHECK(told("A1.8 in facsimile, A2-7") == "A1 in facsimile; A8 in facsimile");
  CHECK(told("A1.8 A2.7 in facsimile, A3-6") == "A2 in facsimile; A7 in facsimile");
}
