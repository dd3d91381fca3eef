// SPDX-License-Identifier: MIT
// What the parts of a book say of a formula does not depend on how its runs are written: A-D⁴ E-G⁸ is the book that
// A-D⁴ E-F⁸ G⁸ is. The formulas are those of tests/data; the divisions are constructed.
#include <bifolium/book/detail/slips/likelihood.hpp>
#include <bifolium/book/detail/slips/page_places.hpp>

#include "book_of.hpp"

#include <random>
#include <utility>

using namespace book;

namespace {

detail::FormulaShape shape_of(std::string_view formula) {
  auto const read = read_formula(formula);
  REQUIRE(read);
  return detail::shape_of(*read);
}
/// The same book with runs divided: at every gathering where `random` says so.
template <class Random> detail::FormulaShape divided(detail::FormulaShape const& shape, Random& random) {
  auto result = shape;
  result.runs.clear();
  for (auto run : shape.runs) {
    while (!run.foreign && run.gatherings() > 1 && random() % 3 != 0) {
      auto first = run;
      first.last = first.first + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(run.gatherings() - 1));
      run.leaves = run.leaves.turned(first.gatherings());
      run.first = first.last + 1;
      result.runs.push_back(first);
    }
    result.runs.push_back(run);
  }
  return result;
}
using Counts = std::array<std::int64_t, 4 * 4>;
/// What `each_stretch` tells, added up by place and by leaf count modulo 4.
std::pair<Counts, Counts> stretches(detail::FormulaShape const& shape) {
  std::pair<Counts, Counts> sum{};
  detail::each_stretch(shape, [&](detail::GatheringPlace place, int leaves, std::int64_t all, std::int64_t gatherings) {
    auto const at = static_cast<std::size_t>(place) * 4 + static_cast<std::size_t>(leaves / 2 % 4);
    sum.first[at] += all, sum.second[at] += gatherings;
  });
  return sum;
}

} // namespace

TEST_CASE("a formula is as likely in one division into runs as in another") {
  detail::Likelihood const early{audit_weights, true, 0}, late{audit_weights, false, 0};
  std::mt19937 random{20261};
  auto rows = sound_with_pages();
  for (auto const& row : sound_with_leaves()) rows.push_back(row);
  for (auto const* formula : {"A-D4 E-G8", "A-Z8/4", "A-2D4/8/8", "A4 B-Z8/4", "1-30^8", "A-C8 a-c4 D-F8",
                              "A-B4/8 C-Z8", "pi2 A-T6/4/4 V4 X6", "A8 B-C4/8"})
    rows.push_back({formula, {formula, "", ""}, Omitted::error});
  std::size_t compared = 0;
  for (auto const& row : rows) {
    auto const read = read_formula(row.texts.formula, {row.omitted, {}, true});
    if (!read) continue;
    auto const shape = detail::shape_of(*read);
    for (int round = 0; round < 3; ++round) {
      auto const other = divided(shape, random);
      CAPTURE(row.texts.formula);
      CHECK(detail::main_leaves(other) == detail::main_leaves(shape));
      CHECK(detail::has_preliminaries(other) == detail::has_preliminaries(shape));
      CHECK(stretches(other) == stretches(shape));
      CHECK(early.of(other) == doctest::Approx(early.of(shape)).epsilon(1e-12));
      CHECK(late.of(other) == doctest::Approx(late.of(shape)).epsilon(1e-12));
      for (std::int64_t before = 0; before < 60; ++before)
        CHECK(detail::numbers_begin(other, before) == detail::numbers_begin(shape, before));
      ++compared;
    }
  }
  CHECK(compared > 2700);
}

TEST_CASE("the last gathering goes on with the unusual size before it") { // constructed
  detail::Likelihood const late{audit_weights, false, 0};
  // of fours with eights at the end one more eight costs less than one six after them
  CHECK(late.of(shape_of("A-N4 O-Q8")) == doctest::Approx(late.of(shape_of("A-N4 O8 P8 Q8"))));
  CHECK(late.of(shape_of("A-N4 O-P8 Q6")) < late.of(shape_of("A-N4 O-Q8")));
}

TEST_CASE("gatherings of a cycle are counted to the last, and so are their stretches") { // constructed
  // A 8, B-Y 4 and 8 by turns, Z 8: 23 letters
  auto const [all, gatherings] = stretches(shape_of("A-Z8/4"));
  auto const middle = static_cast<std::size_t>(detail::GatheringPlace::middle) * 4;
  CHECK(all[middle + 0] == 10);
  CHECK(all[middle + 2] == 11);
  CHECK(gatherings == all);
  // A 4, then 8 8 4 by turns to 2B, the twenty-fifth: eights stand in pairs
  auto const [pairs, each] = stretches(shape_of("A-2B4/8/8"));
  CHECK(pairs[middle + 0] == 8);
  CHECK(each[middle + 0] == 16);
  CHECK(pairs[middle + 2] == 7);
}

TEST_CASE("the main sequence begins after a preliminary A") { // constructed
  auto const begin = [](char const* formula) { return detail::main_sequence(shape_of(formula)); };
  CHECK(begin("A4 B-K8") == GatheringAt{1, 0});
  CHECK(begin("A-B4/8 C-K8") == GatheringAt{0, 1}); // the same book
  CHECK(begin("A4 B8 C-K8") == GatheringAt{1, 0});
  CHECK(begin("A8 B-K4/8") == GatheringAt{0, 0}); // A has its part in the turns
  CHECK(begin("A-K8/4") == GatheringAt{0, 0});
  CHECK(begin("A-D4 a-c4 E-G4") == GatheringAt{0, 0});
  CHECK(begin("a-b8 A-E8 F-K8") == GatheringAt{1, 0});
  CHECK(detail::has_preliminaries(shape_of("A4 B-K8")));
  CHECK_FALSE(detail::has_preliminaries(shape_of("A-K8")));
}
