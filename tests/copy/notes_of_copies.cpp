// SPDX-License-Identifier: MIT
// Notes in which catalogues say what a copy lacks: common practice, no source. The notes are invented, and their leaves are
// counted by hand.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <string>

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
  for (std::string const what : {"manuscript", "ms.", "MS", "photostat", "photocopy", "typescript", "facsimile",
                                 "manuscript facsimile", "ms. facsimile", "photographic facsimile", "facs."}) {
    CAPTURE(what);
    for (auto const& text : {std::string{"lacks A1, supplied in "} + what, "lacks A1 (supplied in " + what + ")",
                             "lacks A1 in " + what, "π-L, A1 supplied in " + what}) {
      CAPTURE(text);
      auto const read = read_leaves_present(book, text);
      REQUIRE(read);
      auto const copy = check_copy(book, read->spans);
      CHECK(wants(book, copy) == "wants A1");
      CHECK(noted(book, copy) == "A1 in facsimile");
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
               {"Lacks ff. 3 and 10", "wants A1.8"},
               {"Lacks leaves 3, 10 and 86", "wants A1.8, L4"},
               {"complete except A1 and lacking B2", "wants A1, B2"}});
}
