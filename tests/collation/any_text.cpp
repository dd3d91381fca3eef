// SPDX-License-Identifier: MIT
// Texts that nobody wrote as formulas: all short ones, random ones, and what a coverage-guided fuzzer started from or found.
#include "check.hpp"
#include "collation/formula_laws.hpp"

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <random>
#include <string>

using namespace bifolium;

namespace {

constexpr Dialect every_dialect[]{
    dialects::strict, dialects::bmc, dialects::stc, {Omitted::next, {true, true, true}, false}};

} // namespace

TEST_CASE("all short texts of the characters of formulas") {
  // BIFOLIUM_FORMULA_LENGTH asks for longer ones: each character more takes eleven times as long
  char const* const asked = std::getenv("BIFOLIUM_FORMULA_LENGTH");
  std::size_t const longest = asked != nullptr ? std::strtoul(asked, nullptr, 10) : 5;
  std::string const characters = "AB2-^(,)+[]";
  long texts = 0, read = 0;
  for (std::size_t length = 0; length <= longest; ++length) {
    std::string text(length, characters[0]);
    std::string place(length, '\0');
    for (bool more = true; more;) {
      auto const dialect = texts % 2 == 0 ? dialects::strict : dialects::stc;
      auto const broken = broken_law(text, dialect);
      if (!broken.empty()) FAIL(broken);
      ++texts;
      read += count_formula(text, dialect).has_value();
      more = false;
      for (std::size_t i = length; i-- > 0 && !more;) {
        auto const next = static_cast<std::size_t>(place[i]) + 1;
        more = next < characters.size();
        place[i] = static_cast<char>(more ? next : 0);
        text[i] = characters[more ? next : 0];
      }
    }
  }
  MESSAGE(read << " of " << texts << " texts of at most " << longest << " characters are formulas");
  CHECK(read > 0);
}

TEST_CASE("the seeds of the fuzzer, and what it found") {
  std::ifstream in{std::string{BIFOLIUM_TEST_DATA} + "/../fuzz/seeds/formula.txt"};
  REQUIRE(in);
  int seeds = 0;
  for (std::string line; std::getline(in, line);) {
    if (line.empty()) continue;
    auto const text = line.substr(1); // the first character is the fuzzer's choice of dialect
    for (auto const& dialect : every_dialect) CHECK(broken_law(text, dialect) == "");
    ++seeds;
  }
  CHECK(seeds > 200);
}

TEST_CASE("random formulas and random scraps of them") {
  std::mt19937 random{1623};
  char const* const scraps[]{"A",  "B",     "-",      "K",      "⁸",       "⁴",     "8",     "4",  "/",
                             "(",  ")",     "[",      "]",      "−",       "±",     "+",     "=",  "π",
                             "χ",  "2",     "²",      "*",      "¶",       "†",     ",",     ";",  " ",
                             " ",  ":",     "$",      "?",      "1",       ".",     "z",     "&",  "'",
                             "α",  "8°",    "fol.",   "a-z⁸ ",  "A-K⁸ L⁴", "(-A1)", "[=B2]", "^2", "<sup>8</sup>",
                             "ij", "[2nd]", "[par.]", " blank", "1-28 36", " = "};
  for (int i = 0; i < 30000; ++i) {
    std::string text;
    for (auto n = random() % 12; n-- > 0;) text += scraps[random() % std::size(scraps)];
    CHECK(broken_law(text, every_dialect[static_cast<std::size_t>(i) % 4]) == "");
  }
}
