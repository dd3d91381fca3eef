// SPDX-License-Identifier: MIT
#include <bifolium/collation.hpp>

#include "check.hpp"

#include <random>
#include <string>

using namespace bifolium;

TEST_CASE("counting equals counting every gathering by its letter") { // constructed; the alphabet is ICCU's
  std::string const alphabet = "ABCDEFGHIKLMNOPQRSTVXYZ";
  std::mt19937 random{1623};
  auto const below = [&](std::size_t n) { return random() % n; };
  auto const name = [&](std::size_t gathering) {
    auto const multiple = gathering / alphabet.size() + 1;
    return (multiple > 1 ? std::to_string(multiple) : std::string{}) + alphabet[gathering % alphabet.size()];
  };
  for (int trial = 0; trial < 2000; ++trial) {
    std::string text;
    std::int64_t leaves = 0, gatherings = 0, skipped = 0;
    std::size_t at = below(5);
    bool early = false; // an alphabet begins at A or B
    for (auto runs = 1 + below(6); runs > 0; --runs) {
      auto const last = at + below(2) * below(40);
      auto const count = 2 * (1 + below(12));
      if (!text.empty()) text += ' ';
      text += name(at) + (last != at ? "-" + name(last) : std::string{});
      if (auto const notation = below(3); notation < 2)
        text += (notation == 0 ? "" : "^") + std::to_string(count);
      else
        for (char digit : std::to_string(count)) {
          char bytes[4]{};
          text.append(bytes, encode(superscript(digit - '0'), bytes));
        }
      early = early || at % alphabet.size() < 2 || last / alphabet.size() != at / alphabet.size();
      for (auto g = at; g <= last; ++g) leaves += static_cast<std::int64_t>(count), ++gatherings;
      if (below(4) == 0) {
        text += std::string{below(2) == 0 ? " " : ""} + "(-" + name(at + below(last - at + 1)) +
                std::to_string(1 + below(count)) + ")";
        --leaves;
      }
      auto const gap = runs > 1 ? below(2) : 0; // a letter that is skipped is doubted
      skipped += static_cast<std::int64_t>(gap);
      at = last + 1 + gap;
    }
    auto const count = count_formula(text);
    REQUIRE_MESSAGE(count, text);
    auto const late = gatherings > 1 && !early ? 1 : 0; // gatherings before C may be left out
    FormulaCount const expected{leaves, gatherings, skipped + late};
    CHECK_MESSAGE(*count == expected, text);
    // a bracket and a note take the long way
    CHECK(count_formula("[" + text + "] (seen)")->leaves == leaves);
    auto const formula = read_formula(text);
    REQUIRE_MESSAGE(formula, text);
    CHECK(formula->leaves() == leaves);
  }
}

TEST_CASE("what looks plain but is doubtful still gets its warning") { // constructed
  CHECK(count_formula("A7")->warning_count == 1);                      // odd
  CHECK(count_formula("A-A8")->warning_count == 1);                    // a run of one
  CHECK(count_formula("A-J8")->warning_count == 1);                    // J in 23 letters
  CHECK(count_formula("B8 A8")->warning_count == 1);                   // backwards
  CHECK(count_formula("A8. . .")->warning_count == 1);                 // more follows
  CHECK(count_formula("A8; A8")->warning_count == 0);                  // a new part
  CHECK(count_formula("A8(-A9)").error().problem == Problem::no_such_leaf);
  CHECK(count_formula("A8(-A1)(-A1)").error().problem == Problem::leaf_changed_twice);
  CHECK(count_formula("A8(-B1)").error().problem == Problem::no_such_gathering);
  Dialect const raised_only{.flat_counts = false};
  CHECK_FALSE(count_formula("A8", raised_only));
  CHECK(count_formula("A⁸", raised_only)->leaves == 8);
}
