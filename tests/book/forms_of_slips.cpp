// SPDX-License-Identifier: MIT
// Which form of a slip is likelier than which. Source: the folding of a sheet, whose leaves come in pairs, so that odd
// counts are of gatherings that were changed; and the distance between what is meant and what is written. The shares
// are estimates: here is their order alone.
#include <bifolium/book/detail/slips/formula_slips.hpp>

#include "book_of.hpp"

#include <algorithm>
#include <map>
#include <set>

using namespace book;

namespace {

/// The edits of one kind of a formula of one run, by what they put: number of leaves, or letters more.
std::map<int, double> weights_of(std::string const& formula, detail::FormulaEdit::What what) {
  auto const read = read_formula(formula);
  REQUIRE(read);
  auto const shape = detail::shape_of(*read);
  std::vector<detail::FormulaEdit> edits;
  detail::FormulaSlips{shape, audit_weights, edits}.find({});
  std::map<int, double> all;
  for (auto const& edit : edits)
    if (edit.what == what && edit.kind != SlipKind::multiple_lost) all[edit.a] = edit.weight;
  return all;
}

} // namespace

TEST_CASE("an even number of leaves was meant rather than an odd one, and a usual neighbour rather than any other") {
  std::set<double> even, odd, neighbouring;
  std::map<int, std::set<int>> const neighbours{{2, {4}},  {4, {2, 6, 8}}, {6, {4, 8, 12}}, {8, {4, 6, 10, 12}},
                                                {10, {8}}, {12, {6, 8}}};
  for (int seen : {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 20}) {
    CAPTURE(seen);
    auto const all = weights_of("A-K" + std::to_string(seen), detail::FormulaEdit::What::leaves);
    CHECK(!all.contains(seen));
    for (int leaves : {1, 2, 3, 4, 5, 6, 7, 8, 10, 12}) {
      if (leaves == seen) continue;
      CAPTURE(leaves);
      REQUIRE(all.contains(leaves));
      auto const of = neighbours.find(seen);
      bool const usual = of != neighbours.end() && of->second.contains(leaves);
      (usual ? neighbouring : leaves % 2 == 0 ? even : odd).insert(all.at(leaves));
    }
  }
  CHECK(*odd.rbegin() < *even.begin());
  CHECK(*even.rbegin() < *neighbouring.begin());
}

TEST_CASE("the farther a letter is from the one meant, the less likely it was written for it") {
  auto const ends = weights_of("A-K8", detail::FormulaEdit::What::last);
  for (int side : {-1, 1})
    for (int by : {1, 2}) CHECK(ends.at(side * by) > ends.at(side * (by + 1)));
  CHECK(ends.size() == 6);
  auto const begins = weights_of("B-K8", detail::FormulaEdit::What::first);
  CHECK(begins.contains(1));
  CHECK(begins.contains(-1));
  CHECK(!weights_of("A-K8", detail::FormulaEdit::What::first).contains(-1)); // no letter is before A
}

TEST_CASE("numbers may continue those before them: all, or the Roman ones next before them") { // constructed
  auto const offers = [](Texts const& texts, std::string const& pages) {
    auto const audit = examined(texts);
    return std::any_of(audit.repairs.begin(), audit.repairs.end(),
                       [&](auto const& repair) { return repair.pagination == pages; });
  };
  // 12 + 10 + 138 pages as they read; 10, 22 or 12 fewer if the last run counts pages before it again
  CHECK(offers({"A-I⁸ K²", "xii, 148 p.", "74"}, "xii, 13-148 p."));       // 148 pages
  CHECK(offers({"A-I⁸ K³", "xii, x, 138 p.", "75"}, "xii, x, 11-138 p.")); // 150
  CHECK(offers({"A-H⁸ I⁵", "xii, x, 138 p.", "69"}, "xii, x, 23-138 p.")); // 138
  CHECK_FALSE(offers({"A-I⁸ K²", "xii, x, 138 p.", "74"}, "xii, x, 13-138 p."));
}
