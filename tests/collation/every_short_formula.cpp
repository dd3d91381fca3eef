// SPDX-License-Identifier: MIT
// Every text of up to five pieces of a small alphabet, right or wrong: nothing is left to chance or to what comes to mind.
#include <bifolium/collation/count.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/walk.hpp>
#include <bifolium/collation/write_formula.hpp>

#include "check.hpp"

#include <string>

using namespace bifolium;

namespace {

/// What does not hold of a text, or nothing.
char const* fault(std::string const& text, Dialect dialect) {
  auto const formula = read_formula(text, dialect);
  auto const count = count_formula(text, dialect);
  if (formula.has_value() != count.has_value()) return "one of reading and counting refuses it";
  if (!formula) {
    if (!(formula.error() == count.error())) return "reading and counting give two errors";
    auto const column = formula.error().column;
    return column >= 1 && column <= column_of(text, text.size()) ? nullptr : "the column lies outside the text";
  }
  if (leaf_count(*formula) != count->leaves) return "two counts of leaves";
  if (gathering_count(*formula) != count->gatherings) return "two counts of gatherings";
  std::int64_t expanded = 0;
  for (auto const& gathering : gatherings(*formula)) expanded += gathering.leaves;
  if (expanded != count->leaves) return "the gatherings do not add up to the count";
  auto const written = write_formula(*formula, Notation::unicode);
  auto const again = read_formula(written, dialect);
  if (!again) return "what was written cannot be read";
  if (!(*again == *formula)) return "what was written reads as another formula";
  return write_formula(*again, Notation::unicode) == written ? nullptr : "writing it again differs";
}

} // namespace

TEST_CASE("every short formula over a small alphabet is read, counted and written alike") {
  constexpr char const* pieces[]{"A", "B", "2", "8", "⁴", "-", " ", "(", ")", "[", "]", "−", "+", "="};
  constexpr auto n = std::size(pieces);
  int texts = 0, formulas = 0, faults = 0;
  for (std::size_t length = 1, all = n; length <= 5; ++length, all *= n)
    for (std::size_t number = 0; number < all; ++number) {
      std::string text;
      for (std::size_t k = 0, rest = number; k < length; ++k, rest /= n) text += pieces[rest % n];
      ++texts;
      formulas += read_formula(text, dialects::bmc) ? 1 : 0;
      if (auto const* const found = fault(text, dialects::bmc); found != nullptr && ++faults <= 10)
        FAIL_CHECK("'" << text << "': " << std::string{found});
    }
  MESSAGE(texts << " texts, of which " << formulas << " are formulas");
  CHECK(texts == 579'194);
  CHECK(faults == 0);
  CHECK(formulas > 10'000);
}
