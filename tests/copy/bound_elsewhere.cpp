// SPDX-License-Identifier: MIT
// Leaves that a list says are bound in another place than the formula has them. The words are common practice, no source; the
// copies are invented, and where the leaves stand is worked out here leaf by leaf.
#include <bifolium/collation.hpp>
#include <bifolium/copy.hpp>

#include "check.hpp"

#include <random>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// The numbers of the leaves of a copy, one by one.
std::vector<std::int64_t> numbers_of_copy(std::vector<LeafSpan> const& spans) {
  std::vector<std::int64_t> numbers;
  for (auto const& one : spans)
    for (auto n = one.from; n <= one.to; ++n) numbers.push_back(n);
  return numbers;
}
/// Takes leaves out of the order of the book and puts them after leaf `after`, or first if it is 0.
std::vector<std::int64_t> moved(std::int64_t leaves, std::int64_t from, std::int64_t to, std::int64_t after) {
  std::vector<std::int64_t> numbers;
  auto const add = [&] {
    for (auto n = from; n <= to; ++n) numbers.push_back(n);
  };
  if (after == 0) add();
  for (std::int64_t n = 1; n <= leaves; ++n) {
    if (n < from || n > to) numbers.push_back(n);
    if (n == after) add();
  }
  return numbers;
}
bool has_doubt(LeavesPresent const& read, Problem problem) {
  for (auto const& doubt : read.warnings())
    if (doubt.problem == problem) return true;
  return false;
}

} // namespace

TEST_CASE("leaves bound elsewhere stand where the list says, with every pair of leaves and gatherings") {
  IdealCopy const book{*read_formula("4°: π² A-C⁴ D²")};
  struct Named {
    std::string name;
    std::int64_t from, to;
  };
  std::vector<Named> const all{{"π", 1, 2},    {"π1", 1, 1},  {"A", 3, 6},    {"A2", 4, 4},
                               {"A3-4", 5, 6}, {"B", 7, 10},  {"B4", 10, 10}, {"C", 11, 14},
                               {"C1", 11, 11}, {"D", 15, 16}, {"D2", 16, 16}};
  for (auto const& what : all)
    for (auto const& beside : all) {
      if (beside.to >= what.from && beside.from <= what.to) continue; // a leaf is not beside itself
      if (beside.name.find('-') != std::string::npos) continue;
      for (std::string const word : {"bound", "misbound", "is bound", "wrongly bound", "relié", "legato"})
        for (std::string const before : {"", "π-D, ", "wants nothing; ", "complete, "}) {
          auto const after_text = before + what.name + " " + word + " after " + beside.name;
          CAPTURE(after_text);
          auto const after = read_leaves_present(book, after_text);
          REQUIRE(after);
          CHECK(numbers_of_copy(after->spans) == moved(16, what.from, what.to, beside.to));
          CHECK_FALSE(has_doubt(*after, Problem::bound_elsewhere));
          auto const front = read_leaves_present(book, before + what.name + " " + word + " before " + beside.name);
          REQUIRE(front);
          CHECK(numbers_of_copy(front->spans) == moved(16, what.from, what.to, beside.from - 1));
        }
    }
}

TEST_CASE("where the words for leaves that are out of order come from check_copy, they read back") {
  for (char const* const formula : {"8°: A-D⁸", "4°: π² A-C⁴ χ1 D²", "2°: A-B⁶ C⁸"}) {
    IdealCopy const book{*read_formula(formula)};
    for (std::int64_t from = 1; from <= book.leaves(); from += 3)
      for (auto to = from; to <= book.leaves() && to < from + 9; to += 4)
        for (std::int64_t after = 0; after <= book.leaves(); after += 2) {
          if (after >= from && after <= to) continue;
          std::vector<LeafSpan> spans;
          for (auto const n : moved(book.leaves(), from, to, after)) spans.push_back(span_of_numbers(book, n, n));
          auto const copy = check_copy(book, spans);
          auto const words = misbound(book, copy);
          if (words.find(',') != std::string::npos) continue; // of which leaves before a comma it is said, is not clear
          CAPTURE(words);
          auto const read = read_leaves_present(book, words.empty() ? "complete" : words);
          REQUIRE(read);
          CHECK(misbound(book, check_copy(book, read->spans)) == words);
          CHECK(check_copy(book, read->spans).complete());
        }
  }
}

TEST_CASE("words for leaves bound elsewhere, in several languages and places") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  struct Note {
    char const *text, *wanting, *misbound, *noted = "";
  };
  for (auto const& [text, wanting, where, note] :
       {Note{"B3 bound after B6, wants K8", "wants K8", "B3 bound after B6"},
        Note{"wants K8, B3 bound after B6", "wants K8", "B3 bound after B6"},
        Note{"wants K8 (B3 misbound after B6)", "wants K8", "B3 bound after B6"},
        Note{"π-L (B3 misbound after B6)", "", "B3 bound after B6"},
        Note{"π-L; B3 (bound after B6)", "", "B3 bound after B6"},
        Note{"wants K8; B3 and B4 bound after C8", "wants K8", "B3-4 bound after C8"},
        Note{"wants K8; gatherings C and D bound after F", "wants K8", "C-D bound after F8"},
        Note{"wants K8; B1.8 bound after C8", "wants K8", "B1, B8 bound after C8"},
        Note{"wants K8; B3 bound between B6 and B7", "wants K8", "B3 bound after B6"},
        Note{"wants K8; B3 bound after B6, B4 bound after B3", "wants K8", "B3-4 bound after B6"},
        Note{"wants K8; L4 bound at the front", "wants K8", "L4 bound at the front"},
        Note{"wants K8; π1 bound at the end", "wants K8", "π1 bound after L4"},
        Note{"es fehlt K8; B3 nach B6 gebunden", "wants K8", "B3 bound after B6"},
        Note{"es fehlt K8; B3 falsch nach B6 eingebunden", "wants K8", "B3 bound after B6"},
        Note{"manque K8; cahier B relié après C", "wants K8", "B bound after C8"},
        Note{"manque K8; B3 mal relié après le cahier C", "wants K8", "B3 bound after C8"},
        Note{"manca K8; B3 legata dopo la carta B6", "wants K8", "B3 bound after B6"},
        Note{"falta K8; B3 encuadernada después de B6", "wants K8", "B3 bound after B6"},
        Note{"ontbreekt K8; B3 ingebonden na B6", "wants K8", "B3 bound after B6"},
        Note{"wants K8; B3 torn, bound after B6", "wants K8", "B3 bound after B6", "B3 damaged"},
        Note{"wants K8; B3 bound after B6, torn", "wants K8", "B3 bound after B6", "B3 damaged"},
        Note{"wants K8; B3 bound upside down", "wants K8", ""},
        Note{"wants B3; K8 in facsimile, bound after B6", "wants B3, K8", "", "K8 in facsimile"}}) {
    CAPTURE(std::string{text});
    auto const read = read_leaves_present(book, text);
    REQUIRE(read);
    auto const copy = check_copy(book, read->spans);
    CHECK(wants(book, copy) == wanting);
    CHECK(misbound(book, copy) == where);
    CHECK(noted(book, copy) == note);
    CHECK(read->warnings().empty());
  }
}

TEST_CASE("leaves bound elsewhere are there, with a doubt where the list does not say at which place") {
  IdealCopy const book{*read_formula("8°: π² A-K⁸ L⁴")};
  for (std::string const text : {"wants K8; B3 misbound", "wants K8; B3 (misbound)", "wants K8; B3 bound out of order",
                                 "wants K8; B3 falsch gebunden", "wants K8; B3 verbunden", "wants K8; B3 mal relié",
                                 "wants K8; B3 bound in the wrong place", "wants K8, B3 bound after K8",
                                 "wants K8; B3 bound after B4, B4 bound after B3"}) {
    CAPTURE(text);
    auto const read = read_leaves_present(book, text);
    REQUIRE(read);
    auto const copy = check_copy(book, read->spans);
    CHECK(wants(book, copy) == "wants K8");
    CHECK(copy.misplaced.empty());
    CHECK(has_doubt(*read, Problem::bound_elsewhere));
  }
  auto const misbound_leaf = read_leaves_present(book, "wants K8; B3 misbound");
  REQUIRE(misbound_leaf);
  CHECK(misbound_leaf->warnings()[0].place->column == 14);
  // of a copy of which nothing else is said, the rest is taken to be there
  CHECK(has_doubt(*read_leaves_present(book, "B3 bound after B6"), Problem::only_states_of_leaves));
  // the place is not a leaf of the book, and the words are of the binding
  CHECK(read_leaves_present(book, "B3 bound after M2").error().problem == Problem::gathering_not_in_book);
  CHECK_FALSE(read_leaves_present(book, "B3 bound in vellum"));
  CHECK_FALSE(read_leaves_present(book, "π-L, bound in 1750"));
}

TEST_CASE("whatever leaves are bound beside whichever, each is in the copy once") {
  IdealCopy const book{*read_formula("8°: A-M⁸")};
  std::string const names = "ABCDEFGHIKLM";
  std::mt19937 random{20};
  auto const any = [&](std::size_t size) -> std::size_t { return random() % size; };
  for (int round = 0; round < 2000; ++round) {
    std::string text = round % 2 == 0 ? "complete; " : "";
    for (std::size_t i = 0; i < names.size(); ++i) {
      if (any(2) == 0) continue;
      bool const whole = any(2) == 0;
      auto beside = names.substr(any(names.size()), 1);
      if (any(2) == 0) beside += std::to_string(1 + any(8));
      text += names.substr(i, 1) + (whole ? "" : std::to_string(1 + any(8)));
      text += any(8) == 0   ? " misbound; "
              : any(8) == 0 ? " bound at the end; "
              : any(2) == 0 ? " bound before " + beside + "; "
                            : " bound after " + beside + "; ";
    }
    CAPTURE(text);
    if (text.empty()) continue;
    auto const read = read_leaves_present(book, text);
    REQUIRE(read);
    auto const copy = check_copy(book, read->spans);
    CHECK(copy.complete());
    CHECK(copy.repeated.empty());
    CHECK(copy.leaves_present == book.leaves());
  }
}
