// SPDX-License-Identifier: MIT
#include <bifolium/collation/count.hpp>
#include <bifolium/collation/paper.hpp>
#include <bifolium/collation/read_formula.hpp>
#include <bifolium/collation/write_formula.hpp>
#include <bifolium/core/message.hpp>
#include <bifolium/edition/plan_formula.hpp>

#include "check.hpp"
#include "edition/make_up_of.hpp"

#include <string>

using namespace bifolium;

namespace {

std::string written(char const* id, Pages const& pages, Arranging how = {}) {
  auto const by = of(id);
  return *formula_of(*arrange(by, pages, how), by);
}

} // namespace

TEST_CASE("books whose formula and sheets a source states are arranged to that formula") {
  // Bowers, Studies in Bibliography 1 (1948), p. 199: 12°: π⁴ A-N¹² O⁸, fourteen sheets
  CHECK(written("12_common", {.text = 328, .preliminaries = 8}) == "12°: π⁴ A-N¹² O⁸");
  // Comedias sueltas USA, glossary: (4to) A-E⁴, five sheets
  CHECK(written("4_quarto", {.text = 40}) == "4°: A-E⁴");
  // Bernard, Geofroy Tory (1909): A to Z, 23 octavo sheets
  CHECK(written("8_octavo", {.text = 368}) == "8°: A-Z⁸");
  // R. Noble, DCRM-L, Aug. 2024 (Wittenberg 1574): quarto in eights, A-Z⁸ ... 2A-2X⁸ 2Y⁴, 23 + 21 gatherings of two sheets
  CHECK(written("4_quarto_in_8s", {.text = 2 * (44 * 8 + 4)}) == "4°: A-2X⁸ 2Y⁴");
  // twelves as 8+4, and preliminaries in two gatherings (constructed)
  CHECK(written("12_8_plus_4", {.text = 240, .preliminaries = 24}) == "12°: a-b⁸/⁴ A-V⁸/⁴");
  CHECK(written("8_octavo", {.text = 32, .end_matter = 8}) == "8°: A-B⁸ C⁴");
  CHECK(written("8_octavo", {.text = 40, .end_matter = 8}) == "8°: A-B⁸ C⁴ D⁴");
  CHECK(written("8_octavo", {.text = 40, .end_matter = 8}, {.end_matter_runs_on = true}) == "8°: A-C⁸");
}

TEST_CASE("a plan and its formula take the same paper, in every scheme") {
  int formulas = 0;
  for (int row = 0; row < Attested::count; ++row) {
    auto const by = make_up(*fold(Attested{static_cast<SchemeRow>(row)}.scheme()));
    CAPTURE(row);
    for (int text = 1; text < 1200; text += text < 70 ? 1 : 41)
      for (int preliminaries : {0, 3, 8, 70})
        for (int end : {0, 6}) {
          auto const all = plans(by, {.text = text, .preliminaries = preliminaries, .end_matter = end});
          for (auto const& plan : *all) {
            auto const set_down = formula_of(plan, by);
            CAPTURE(text);
            REQUIRE(set_down);
            auto const formula = read_formula(*set_down);
            REQUIRE(formula);
            REQUIRE(formula->leaves() == plan.leaves());
            REQUIRE(formula->gatherings() == plan.gatherings);
            REQUIRE(paper(*formula).sheets.stated == plan.sheets_a_copy());
            REQUIRE(write_formula(*formula) == *set_down);
            ++formulas;
          }
        }
  }
  CHECK(formulas > 61 * 500);
}

TEST_CASE("a book beyond all signing has no formula, and says so") {
  auto const by = of("8_octavo");
  auto const plan = *arrange(by, {.text = 16 * 23 * 20'000});
  auto const formula = formula_of(plan, by);
  REQUIRE_FALSE(formula);
  CHECK(message(formula.error()) == "'20000' multiplies a signature by more than 9999");
  auto const last = *arrange(by, {.text = 16 * 23 * 9999});
  CHECK(formula_of(last, by).value() == "8°: A-9999Z⁸");
}
