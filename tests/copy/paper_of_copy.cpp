// SPDX-License-Identifier: MIT
// The paper of the leaves of a copy against the formula. The evidence is constructed from the folding of the schemes; that a
// cancel can be found by its paper is common practice.
#include <bifolium/collation.hpp>
#include <bifolium/copy/paper_of_copy.hpp>
#include <bifolium/fold.hpp>

#include "check.hpp"

#include <string>
#include <string_view>
#include <vector>

using namespace bifolium;

namespace {

std::vector<PaperJudged> judged(std::string_view formula_text, std::string_view paper) {
  auto const formula = *read_formula(formula_text);
  IdealCopy const book{formula};
  auto const seen = read_paper_seen(book, paper);
  REQUIRE(seen);
  std::vector<PaperJudged> all;
  for (auto const& one : *seen) all.push_back(*judge_paper(book, one, formula.format()));
  return all;
}
Error refused(std::string_view paper) {
  auto const formula = *read_formula("8°: A-C8(C3+χ1)");
  auto const seen = read_paper_seen(IdealCopy{formula}, paper);
  REQUIRE_FALSE(seen);
  return seen.error();
}
/// Chain lines, marks and conjugates of an octavo, as items about gathering B; one leaf left out.
std::string octavo_without(int leaf) {
  auto const folded = *fold(schemes::octavo.scheme());
  std::string text;
  for (int k = 1; k <= 8; ++k) {
    if (k == leaf) continue;
    auto const shown = shows(folded, {0, folded.gathering(0).leaf(k)});
    text.append("B").append(std::to_string(k)).append(" vertical ");
    text.append(shown.watermark_lying(Lie::as_given) ? "head-of-gutter; " : "absent; ");
    if (k < 9 - k && 9 - k != leaf)
      text.append("B").append(std::to_string(k)).append(".").append(std::to_string(9 - k)).append(" conjugate; ");
  }
  return text;
}

} // namespace

TEST_CASE("each leaf of other paper is found, and no other") {
  for (int leaf = 1; leaf <= 8; ++leaf) {
    CAPTURE(leaf);
    auto const text = octavo_without(leaf) + "B" + std::to_string(leaf) + " horizontal absent disjunct";
    auto const one = judged("8°: A-C8", text).front();
    REQUIRE(one.other_paper.size() == 1);
    CHECK(one.other_paper.front().leaf == leaf);
    CHECK_FALSE(one.agrees);
    CHECK(one.words ==
          "B" + std::to_string(leaf) + " is not of the paper of the rest of B: a cancel? The formula has none there");
    // a cancel of the formula
    auto const known = judged("8°: A-C8(±B" + std::to_string(leaf) + ")", text).front();
    CHECK(known.agrees);
    CHECK(known.other_paper == one.other_paper);
    // a mark where the folding has none, chain lines alike: the leaf stands out by its mark alone
    bool const marked = leaf == 1 || leaf == 4 || leaf == 5 || leaf == 8;
    auto const by_mark = judged("8°: A-C8", octavo_without(leaf) + "B" + std::to_string(leaf) +
                                                (marked ? " vertical centre" : " vertical head-of-gutter"))
                             .front();
    REQUIRE(by_mark.other_paper.size() == 1);
    CHECK(by_mark.other_paper.front().leaf == leaf);
  }
}

TEST_CASE("leaves that agree are compared with the format of the formula") {
  auto const octavo = octavo_without(0);
  CHECK(judged("8°: A-C8", octavo).front().words == "B: agrees with 8° as 8_octavo or 8_from_centre folds");
  CHECK(judged("8°: A-C8", octavo).front().agrees);
  CHECK(judged("A-C8", octavo).front().agrees); // no format stated
  auto const quarto = judged("4°: A-C8", octavo).front();
  CHECK_FALSE(quarto.agrees);
  CHECK(quarto.words == "B: contradicts 4°; the leaves agree with 8°");
  auto const eights = judged("8°: A-C8", "B1 gutter horizontal; B2 absent; B3 gutter; B4 absent; B5 absent; B6 gutter; "
                                         "B7 absent; B8 gutter")
                          .front();
  CHECK_FALSE(eights.agrees);
  CHECK(eights.words == "B: contradicts 8°; the leaves agree with 4°, 2 sheets to the gathering");
  CHECK(judged("8°: A-C8", "B1 horizontal").front().words == "B: agrees with 8° only as 8_oblong folds");
}

TEST_CASE("gatherings are kept apart, and leaves of one of them together") {
  auto const two = judged("8°: A-C8", "B1 vertical; C1 vertical\nB2 absent ; C4 bolt head 1;;");
  REQUIRE(two.size() == 2);
  CHECK(two[0].gathering == GatheringAt{0, 1});
  CHECK(two[1].gathering == GatheringAt{0, 2});
  auto const formula = *read_formula("8°: A-C8");
  auto const seen = *read_paper_seen(IdealCopy{formula}, "B1 vertical; C1 vertical; B2 absent; C4 bolt head 1");
  CHECK(seen[0].seen.seen.size() == 2);
  CHECK(seen[1].seen.seen[1].head == SeenEdge{Edge::Kind::bolt, 1});
  CHECK(judged("8°: A-C8", "").empty());
}

TEST_CASE("what cannot be a leaf or its evidence is refused with its column") {
  struct Wrong {
    std::string_view text;
    Problem problem;
    std::uint32_t column;
  };
  for (auto const& one :
       {Wrong{"B1 vertical; B2 gatter", Problem::not_leaves_seen, 17},
        Wrong{"B1 vertical; B2.9 conjugate", Problem::leaf_outside_gathering, 14},
        Wrong{"B1 vertical; B9 absent", Problem::no_such_leaf, 14},
        Wrong{"B1 vertical; Q2 absent", Problem::gathering_not_in_book, 14},
        Wrong{"B1 vertical; B1 horizontal", Problem::leaf_seen_twice, 14},
        Wrong{"χ1 vertical", Problem::leaf_outside_gathering, 1}, Wrong{"B1", Problem::not_leaves_seen, 3},
        Wrong{"χ1 absent", Problem::leaf_outside_gathering, 1},
        Wrong{"A1 bolt head 9", Problem::leaf_outside_gathering, 14}}) {
    CAPTURE(one.text);
    auto const error = refused(one.text);
    CHECK(error.problem == one.problem);
    CHECK(error.place->line == 1);
    CHECK(error.place->column == one.column);
  }
  auto const formula = *read_formula("8°: A-C8");
  IdealCopy const book{formula};
  CHECK_THROWS_AS(static_cast<void>(judge_paper(book, {{0, 0}, {4, {}}}, std::nullopt)), BrokenPrecondition);
}

TEST_CASE("items of several gatherings in any order") { // constructed
  auto const formula = *read_formula("8°: A-C8 a4");
  auto const seen =
      *read_paper_seen(IdealCopy{formula}, "C1 vertical; A2 absent; a3 absent; C2 absent; A1 vertical; C1.8 conjugate");
  REQUIRE(seen.size() == 3); // in the order in which the text names the gatherings
  CHECK(seen[0].gathering == GatheringAt{0, 2});
  CHECK(seen[1].gathering == GatheringAt{0, 0});
  CHECK(seen[2].gathering == GatheringAt{1, 0});
  CHECK(seen[0].seen.leaves == 8);
  CHECK(seen[2].seen.leaves == 4);
  CHECK(seen[0].seen.seen.size() == 3); // C1, C2, C8
  CHECK(seen[0].seen.seen[0].conjugate == 8);
  CHECK(seen[0].seen.seen[0].leaf == 1);
  CHECK(seen[1].seen.seen.size() == 2);
  CHECK(seen[1].seen.seen[0].leaf == 2); // in the order of the text
  CHECK(seen[2].seen.seen.size() == 1);
  IdealCopy const book{formula};
  auto const many = read_paper_seen(book, "C1 vertical; A2 absent; C2 absent; a3 absent", {.runs = 2});
  REQUIRE_FALSE(many);
  CHECK(many.error().problem == Problem::too_many_runs);
  CHECK(many.error().place->column == 36); // a3
  CHECK(read_paper_seen(book, "C1 vertical; A2 absent; C2 absent; a3 absent", {.runs = 3}));
}

TEST_CASE("leaves that no folding gives, with whichever of them left out") {
  // constructed: 1.3 and 2.4 cross, and 5.7 and 6.8, so that two leaves would have to be of other paper
  auto const crossed = judged("8°: A-C8", "B1.3 conjugate; B2.4 conjugate; B5.7 conjugate; B6.8 conjugate");
  REQUIRE(crossed.size() == 1);
  CHECK(crossed[0].words == "B: no folding agrees with all of this, even without one leaf");
  CHECK_FALSE(crossed[0].agrees);
  CHECK(crossed[0].other_paper.empty());
}
