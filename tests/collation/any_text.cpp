// SPDX-License-Identifier: MIT
// Texts that nobody wrote as formulas: random ones, and what a coverage-guided fuzzer started from or found. Those that
// are short: every_short_formula.cpp.
#include "check.hpp"
#include "collation/formula_laws.hpp"

#include <fstream>
#include <iterator>
#include <random>
#include <string>

using namespace bifolium;

namespace {

constexpr Dialect every_dialect[]{
    dialects::strict, dialects::bmc, dialects::stc, {Omitted::next, {true, true, true}, false}};

} // namespace

TEST_CASE("the seeds of the fuzzer, and what it found") {
  std::ifstream in{std::string{BIFOLIUM_TEST_DATA} + "/../fuzz/seeds/formula.txt"};
  REQUIRE(in);
  int seeds = 0, read = 0;
  for (std::string line; std::getline(in, line);) {
    if (line.empty()) continue;
    auto const text = line.substr(1); // the first character is the fuzzer's choice of dialect
    for (auto const& dialect : every_dialect) {
      CHECK(broken_law(text, dialect) == "");
      read += read_formula(text, dialect) ? 1 : 0;
    }
    ++seeds;
  }
  CHECK(seeds > 200);
  MESSAGE(read << " of " << seeds << " seeds are read, each in four dialects");
  CHECK(read > seeds);
}

TEST_CASE("random formulas and random scraps of them") {
  std::mt19937 random{1623};
  char const* const scraps[]{"A",  "B",     "-",      "K",      "⁸",       "⁴",     "8",     "4",  "/",
                             "(",  ")",     "[",      "]",      "−",       "±",     "+",     "=",  "π",
                             "χ",  "2",     "²",      "*",      "¶",       "†",     ",",     ";",  " ",
                             " ",  ":",     "$",      "?",      "1",       ".",     "z",     "&",  "'",
                             "α",  "8°",    "fol.",   "a-z⁸ ",  "A-K⁸ L⁴", "(-A1)", "[=B2]", "^2", "<sup>8</sup>",
                             "ij", "[2nd]", "[par.]", " blank", "1-28 36", " = "};
  int read = 0;
  for (int i = 0; i < 30000; ++i) {
    std::string text;
    for (auto n = random() % 12; n-- > 0;) text += scraps[random() % std::size(scraps)];
    auto const& dialect = every_dialect[static_cast<std::size_t>(i) % 4];
    CHECK(broken_law(text, dialect) == "");
    read += read_formula(text, dialect) ? 1 : 0;
  }
  MESSAGE(read << " of 30000 are formulas");
  CHECK(read > 600); // of texts that cannot be read the laws say little
}

TEST_CASE("random words about leaves in parentheses") {
  std::mt19937 random{1709};
  char const* const inside[]{"A1",
                             "A8",
                             "B8",
                             "K8",
                             "A1.8",
                             "A1,2",
                             "7,8",
                             "A3-5",
                             " a cancel",
                             " cancels",
                             " canceled",
                             " blank",
                             " blanks",
                             " wanting",
                             "lacks ",
                             " are",
                             " both",
                             " probably",
                             " and ",
                             " & ",
                             ", ",
                             "; ",
                             ": ",
                             " ",
                             "-",
                             "−",
                             "±",
                             "+",
                             "+1",
                             "+χ1",
                             "+a⁴",
                             "(−a4)",
                             "=",
                             "[=B2]",
                             "?",
                             "(blank)",
                             "[blank]",
                             "the ",
                             " last ",
                             " leaf",
                             "with ",
                             "cancel ",
                             " title",
                             " omitted",
                             "no ",
                             "no E",
                             "<sup>r</sup>",
                             "&nbsp;",
                             "&amp;",
                             "²A2",
                             "*",
                             "without ",
                             "A1v",
                             "E7+8",
                             " but for signature A"};
  char const* const outside[]{"",        "B-K⁸",      "π²",          "[ ]²",        "+1",     "; ",
                              ". ",      "K8 blank",  "K8 a cancel", "K8 wanting",  " −K8",   "[A]⁴",
                              " = A-K⁸", "80 leaves", "²A⁸",         "[E omitted]", "(=a-b)", "M<sup>r</sup>s X"};
  int read = 0;
  for (int i = 0; i < 20000; ++i) {
    std::string text{"A-K⁸"};
    for (auto parentheses = 1 + random() % 2; parentheses-- > 0;) {
      text += outside[random() % std::size(outside)];
      text += " (";
      for (auto n = 1 + random() % 6; n-- > 0;) text += inside[random() % std::size(inside)];
      text += ')';
    }
    auto const& dialect = every_dialect[static_cast<std::size_t>(i) % 4];
    CHECK(broken_law(text, dialect) == "");
    read += read_formula(text, dialect) ? 1 : 0;
  }
  MESSAGE(read << " of 20000 are formulas");
  CHECK(read > 4000);
}
