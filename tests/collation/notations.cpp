// SPDX-License-Identifier: MIT
// Formulas as people wrote them, written in every notation and read again: the same formula each time.
#include <bifolium/collation.hpp>

#include "check.hpp"
#include "data.hpp"

using namespace bifolium;

namespace {

constexpr Notation notations[]{Notation::unicode, Notation::caret, Notation::flat, Notation::html, Notation::tei};

/// How many of the formulas could be read at all.
int written_and_read(std::vector<std::string> const& formulas, Dialect dialect) {
  int read = 0;
  for (auto const& text : formulas) {
    auto const formula = read_formula(text, dialect);
    if (!formula) continue;
    ++read;
    for (auto notation : notations) {
      auto const written = write_formula(*formula, notation);
      auto const again = read_formula(written, dialect);
      INFO(text << " written " << written);
      REQUIRE(again);
      CHECK(*again == *formula);
      CHECK(write_formula(*again, notation) == written);
    }
  }
  return read;
}
std::vector<std::string> column(std::string const& file, std::size_t columns, std::size_t which) {
  std::vector<std::string> all;
  for (auto const& row : data::rows(file, columns)) all.push_back(row[which]);
  return all;
}

} // namespace

TEST_CASE("formulas of catalogues read back from every notation") {
  CHECK(written_and_read(column("bmc_formulas.tsv", 4, 2), dialects::bmc) > 400);
  CHECK(written_and_read(column("bmc_formulas_ocr.tsv", 3, 0), dialects::bmc) > 500);
  CHECK(written_and_read(column("tcp_formulas.tsv", 4, 1), dialects::stc) > 300);
  CHECK(written_and_read(column("collation_examples.tsv", 7, 5), dialects::strict) > 60);
}

TEST_CASE("series, duplicates, symbols and changes read back from every notation") { // constructed
  std::vector<std::string> const formulas{
      "8°: ²A⁸ ³2B⁴",      "8°: πA⁸ ²χB⁴ χ2",       "8°: †A⁸ H*⁴ )(⁸", "8°: 2[par.]⁸ [b]⁴",
      "8°: 2α⁸ 2Γ⁴",       "8°: A⁸(A4+χ1.2)",       "8°: A⁸(A4+χ1,2)", "8°: A⁸(A4+2)",
      "8°: A⁸(A4+χ²)",     "8°: A⁸(±A4 −A5 +/-A6)", "4°: a⁴/² b-d⁴/²", "4°: A-D⁴ E⁴(−E2-4)",
      "4°: A² B⁴(−B4=A2)", "4°: [A]⁴ [par.]⁴ '1'⁴", "4°: A⁴ &⁴ *⁴",    "4°: A-B⁴ [C]²[=A4]",
      "8°: A⁸(−A2.7)",     "8°: A⁸(A8+χ1-4) B⁴",    "8°: 1-12⁸ 13(4)",
  };
  CHECK(written_and_read(formulas, dialects::strict) == static_cast<int>(formulas.size()));
}

TEST_CASE("each word for a part, with a full stop and without one") {
  for (std::string const word : {"vol", "volume", "tome", "tom", "tomo", "tomus", "bd", "band", "teil", "theil", "pt",
                                 "part", "parte", "pars", "partie", "Vol", "PART", "v", "t"})
    for (std::string const stop : {".", ""}) {
      auto const name = word + stop;
      CAPTURE(name);
      auto const formula = read_formula(name + " 1: A-B⁸; " + name + " 2: A-C⁸");
      if (name.size() <= 2 && stop.empty()) { // so short a word may be a signature
        CHECK_FALSE(formula);
        continue;
      }
      REQUIRE(formula);
      CHECK(formula->leaves() == 40);
      REQUIRE(formula->parts().size() == 2);
      CHECK(formula->parts()[0].label == name + " 1");
      CHECK(formula->parts()[1].label == name + " 2");
      CHECK(formula->parts()[1].leaves == 24);
      CHECK(formula->warnings().empty());
    }
  CHECK_FALSE(read_formula("book 1: A-B⁸; book 2: A-C⁸"));
}

TEST_CASE("a figure of a format before the first gathering is a part, with a doubt") {
  for (int figure = 1; figure <= 70; ++figure) {
    auto const text = std::to_string(figure) + ": A-K⁸";
    CAPTURE(text);
    auto const formula = read_formula(text);
    REQUIRE(formula);
    bool doubted = false;
    for (auto const& one : formula->warnings()) doubted = doubted || one.problem == Problem::figure_read_as_part;
    CHECK(!formula->format());
    CHECK(formula->parts().front().label == std::to_string(figure));
    CHECK(doubted == (figure == 2 || figure == 4 || figure == 6 || figure == 8 || figure == 12 || figure == 16 ||
                      figure == 18 || figure == 24 || figure == 32 || figure == 48 || figure == 64));
  }
  auto const two = read_formula("1: A-B⁸; 2: A-C⁸"); // begun with 1: parts, beyond doubt
  REQUIRE(two);
  CHECK(two->parts().size() == 2);
  CHECK(two->warnings().empty());
  CHECK((*read_formula("8. Teil: A⁸")).warnings().empty());
}

TEST_CASE("two letters side by side are two gatherings where the alphabet has them in this order, and nowhere else") {
  // the rule of the grammar, asked of every pair of letters: the next letter, or the first of the other series (zA)
  for (int choice = 0; choice < 8; ++choice) {
    Letters const letters{(choice & 1) != 0, (choice & 2) != 0, (choice & 4) != 0};
    Alphabet const alphabet{letters};
    Dialect const dialect{Omitted::next, letters, true};
    for (char const a : std::string_view{"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"})
      for (char const b : std::string_view{"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"}) {
        auto const first = *letter_rank(a), second = *letter_rank(b);
        bool const same_series = is_small(a) == is_small(b);
        bool const pi = small_letter(a) == 'p' && b == 'i';
        if (first == second || pi || a == 'J' || !alphabet.has(first) || !alphabet.has(second)) continue;
        std::string const text{a, b, '8'};
        bool const in_order =
            same_series ? alphabet.place(second) == alphabet.place(first) + 1 : alphabet.place(second) == 1;
        auto const count = count_formula(text, dialect);
        CAPTURE(text);
        CHECK(count.has_value() == in_order);
        if (count) CHECK(count->gatherings == 2);
      }
  }
}
