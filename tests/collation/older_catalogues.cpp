// SPDX-License-Identifier: MIT
// Ways in which older catalogues, and texts that were typed from them, write runs and their counts. The book is made first, so its
// leaves are known. (common practice, no source)
#include "check.hpp"
#include "collation/formula_laws.hpp"
#include "collation/read_lawfully.hpp"

#include <string>
#include <tuple>

using namespace bifolium;

namespace {

std::string const letters_of_books{"ABCDEFGHIKLMNOPQRSTVXYZ"};

std::string nth_letter(int place) { return {letters_of_books[static_cast<std::size_t>(place)]}; }
/// A run from one letter to another with its count.
using Wording = std::string (*)(int first, int last, int leaves);

std::string ends(int first, int last) {
  return first == last ? nth_letter(first) : nth_letter(first) + "-" + nth_letter(last);
}

} // namespace

TEST_CASE("counts that are written in words after each run are counts of its gatherings") {
  Wording const forms[]{
      [](int a, int b, int n) { return ends(a, b) + " " + std::to_string(n) + " leaves"; },
      [](int a, int b, int n) { return ends(a, b) + ", " + std::to_string(n) + " leaves"; },
      [](int a, int b, int n) { return ends(a, b) + " (" + std::to_string(n) + " leaves)"; },
      [](int a, int b, int n) { return ends(a, b) + " of " + std::to_string(n); },
      [](int a, int b, int n) { return ends(a, b) + " of " + std::to_string(n) + " leaves"; },
      [](int a, int b, int n) { return ends(a, b) + " par " + std::to_string(n); },
      [](int a, int b, int n) { return ends(a, b) + " in " + std::to_string(n) + "s"; },
  };
  for (auto const form : forms)
    for (int last = 5; last < 22; ++last)
      for (int const leaves : {4, 6, 8})
        for (int const at_end : {2, 4}) {
          auto const text = "8°: " + form(0, last, leaves) + ", " + form(last + 1, last + 1, at_end);
          CAPTURE(text);
          auto const formula = read_formula(text);
          REQUIRE(formula);
          CHECK(formula->leaves() == leaves * (last + 1) + at_end);
          CHECK(formula->gatherings() == last + 2);
          if (last % 6 == 0) CHECK(broken_law(text, {}) == "");
        }
  // 80 leaves are a total, and 8 leaves of 4 gatherings may be one
  for (std::string const text : {"8°: A-K 80 leaves", "8°: A-D 8 leaves", "8°: A-D (8 leaves)", "8°: A-K, 20 leaves"}) {
    CAPTURE(text);
    CHECK(!read_lawfully(text));
  }
}

TEST_CASE("a minus between two marks is a dash, and in a parenthesis or after a count takes leaves away") {
  for (int last = 1; last < 23; ++last)
    for (std::string const count : {"⁸", "^8", "8"})
      for (std::string const dash : {"−", "‒", "–", "—", "-"}) {
        auto const name = nth_letter(last);
        auto const run = "8°: A" + dash + name + count;
        CAPTURE(run);
        CHECK((*read_lawfully(run)).leaves() == 8 * (last + 1));
        CHECK((*read_lawfully(run)).warnings().empty());
        CHECK((*read_lawfully(run + "(−" + name + "8)")).leaves() == 8 * (last + 1) - 1);
        CHECK((*read_lawfully(run + " −" + name + "8")).leaves() == 8 * (last + 1) - 1);
      }
}

TEST_CASE("a stroke between gatherings only separates them") {
  for (std::string const stroke : {" | ", "|", " / ", " // ", "; "})
    for (auto const& [before, after, leaves] :
         {std::tuple{"A-K⁸", "L⁴", 84}, {"A-K⁸", "a-b⁸", 96}, {"π² A-F⁸/⁴", "G⁸", 46}, {"A-K⁸(−K8)", "²A-B⁴", 87}}) {
      auto const text = std::string{"8°: "} + before + stroke + after;
      CAPTURE(text);
      auto const formula = read_lawfully(text);
      REQUIRE(formula);
      CHECK(formula->leaves() == leaves);
    }
  CHECK((*read_formula("8°: A-F8/4")).leaves() == 36);
}

TEST_CASE("half-sheets after the gatherings are those of the format") {
  for (int const sheet : {4, 8, 12, 16, 18, 24})
    for (int const leaves : {sheet / 2, sheet})
      for (std::string const words : {" in half-sheets", ", in half-sheets", " [in half sheets]", " in half sheets"}) {
        auto const text = std::to_string(sheet) + "°: A-C" + std::to_string(leaves) + words;
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 3 * leaves);
        bool told = false;
        for (auto const& one : formula->warnings()) told = told || one.problem == Problem::gathered_otherwise;
        CHECK(told == (leaves == sheet));
      }
}

TEST_CASE("runs with blanks between them share the count in words after the last") {
  for (std::string const join : {" ", ", "})
    for (auto const& [count, leaves] : {std::pair{"in fours", 4}, {"in 8s", 8}, {"in sixes", 6}})
      for (int runs = 2; runs <= 3; ++runs) {
        auto const text = "4°: A-Z" + join + "Aa-Zz" + (runs == 3 ? join + "Aaa-Ccc" : std::string{}) + " " + count;
        CAPTURE(text);
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == leaves * (runs == 3 ? 49 : 46));
      }
  CHECK(!read_formula("4°: A-Z Aa-Zz⁴"));
  // an exception is told, whether a comma stands before it or not
  for (std::string const join : {" ", ", "})
    CHECK((*read_lawfully("4°: A-K in fours" + join + "except K, which has two")).warnings().size() == 1);
}

TEST_CASE("extents in other units, with corrections and before the gatherings, are extents") {
  for (std::string const text :
       {"8°: A-Z⁸; cc. 184", "8°: A-Z⁸; 184 h.", "8°: A-Z⁸; 184 fol.", "8°: A-Z⁸, 192 [i.e. 184] leaves",
        "8°: A-Z⁸; 192 [i.e. 184] ff.", "8°: A-Z⁸ : 368p.", "8°: A-Z⁸, 368pp", "8°: A-Z⁸; 369 [i.e. 368] p.",
        "8°: A-Z⁸; [4], 365 [i.e. 364] p.", "8°. pp. [i-viii] 1-360: A-Z⁸", "pp. 368: A-Z⁸"}) {
    CAPTURE(text);
    auto const formula = read_lawfully(text);
    REQUIRE(formula);
    CHECK(formula->leaves() == 184);
    CHECK(formula->warnings().empty());
    CHECK(formula->passages().size() == 1);
  }
  for (std::string const text : {"8°: A-Z⁸; 183 h.", "8°: A-Z⁸; 183 fol.", "8°: A-Z⁸, 184 [i.e. 183] leaves"}) {
    CAPTURE(text);
    CHECK((*read_lawfully(text)).warnings().front().problem == Problem::total_contradicts);
  }
}

TEST_CASE("angle brackets and braces round a letter mean what square ones mean") {
  for (int place = 0; place < 23; ++place)
    for (auto const& [open, close] : {std::pair{"⟨", "⟩"}, {"{", "}"}, {"〈", "〉"}, {"[", "]"}})
      for (std::string const count : {"⁸", "^8", "8"}) {
        auto const mark = open + nth_letter(place) + close;
        auto const text = "8°: " + (place == 0 ? "" : "A-" + nth_letter(place - 1) + "⁸ ") + mark + count;
        CAPTURE(text);
        if (place == 1) continue; // A-A is no run
        auto const formula = read_lawfully(text);
        REQUIRE(formula);
        CHECK(formula->leaves() == 8 * (place + 1));
        CHECK(formula->runs().back().first_inferred);
        CHECK(formula->warnings().empty());
      }
}

TEST_CASE("round brackets round what an inserted leaf is the same as are square ones") {
  for (std::string const leaf : {"χ1", "*E3", "1"})
    for (std::string const same : {"H8", "D1"}) {
      auto const book = [&](char const* open, char const* close) {
        return read_lawfully("8°: A-D⁸ E⁸(E3+" + leaf + open + "=" + same + close + ") F-G⁸ H⁸");
      };
      auto const round = book("(", ")"), square = book("[", "]");
      CHECK(round.has_value() == square.has_value());
      REQUIRE(round);
      CHECK(*round == *square);
      CHECK(round->leaves() == 65);
    }
}
