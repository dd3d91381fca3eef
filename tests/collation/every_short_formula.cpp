// SPDX-License-Identifier: MIT
// Every text of a few pieces of a small alphabet, right or wrong: nothing is left to chance or to what comes to mind.
#include "check.hpp"
#include "collation/formula_laws.hpp"

#include <cstdlib>
#include <string>
#include <vector>

using namespace bifolium;

namespace {

/// The environment variable BIFOLIUM_FORMULA_LENGTH asks for longer texts; each piece more takes over ten times as long.
std::size_t pieces_of_a_text() {
  char const* const asked = std::getenv("BIFOLIUM_FORMULA_LENGTH");
  return asked != nullptr ? std::strtoul(asked, nullptr, 10) : 5;
}

void check_every_text(std::vector<std::string> const& pieces, Dialect dialect) {
  long texts = 0, formulas = 0, faults = 0;
  std::size_t all = pieces.size();
  for (std::size_t length = 1; length <= pieces_of_a_text(); ++length, all *= pieces.size())
    for (std::size_t number = 0; number < all; ++number) {
      std::string text;
      for (std::size_t k = 0, rest = number; k < length; ++k, rest /= pieces.size())
        text += pieces[rest % pieces.size()];
      ++texts;
      formulas += count_formula(text, dialect) ? 1 : 0;
      if (auto const broken = broken_law(text, dialect); !broken.empty() && ++faults <= 10) FAIL_CHECK(broken);
    }
  MESSAGE(texts << " texts, of which " << formulas << " are formulas");
  CHECK(texts > 150'000);
  CHECK(formulas > 4'000);
  CHECK(faults == 0);
}

} // namespace

TEST_CASE("every short formula over a small alphabet is read, counted and written alike") {
  check_every_text({"A", "B", "2", "8", "⁴", "-", " ", "(", ")", "[", "]", "−", "+", "="}, dialects::bmc);
}
TEST_CASE("every short text of the characters of plain formulas is read, counted and written alike") {
  check_every_text({"A", "B", "2", "-", "^", "(", ",", ")", "+", "[", "]"}, dialects::stc);
}
TEST_CASE("every short text with omitted counts is read, counted and written alike") {
  check_every_text({"A", "B", "o", "8", "2", "²", " ", ".", ";", "-", "(-A1)", "[A]", "i"}, dialects::stc);
}
