// SPDX-License-Identifier: MIT
// Gatherings of formulas as drawings. The formulas are constructed; what their changes mean is the common notation:
// Bowers, Principles of Bibliographical Description (1949; from memory): ± cancel, - deletion, + insertion,
// a point between conjugate leaves, a comma between disjunct ones.
#include <bifolium/collation.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/drawing/formula_gathering.hpp>

#include "check.hpp"
#include "drawing/sound.hpp"

#include <string>

using namespace bifolium;

namespace {

Formula formula_of(char const* text) {
  auto const formula = read_formula(text, dialects::bmc);
  REQUIRE(formula);
  return *formula;
}
DrawnLeaf leaf_called(DrawnGathering const& gathering, std::string_view label) {
  for (auto const& leaf : gathering.leaves)
    if (leaf.label == label) return leaf;
  FAIL("no such leaf");
  return {};
}
std::string mate_called(DrawnGathering const& gathering, std::string_view label) {
  auto const mate = leaf_called(gathering, label).conjugate;
  return mate ? gathering.leaves[static_cast<std::size_t>(*mate)].label : "";
}

} // namespace

TEST_CASE("a gathering of a formula is drawn with its cancels, insertions and deletions") {
  auto const formula = formula_of("8°: A8(±A3, A4+χ1.2, -A8) B8(±B4.5) C4(-C1.4, C2+χ1[=A8]) D4(±D2,3) E8(+8*) F3");
  auto const a = *drawn_gathering(formula, {0, 0});
  CHECK(a.title == "Gathering A⁸");
  CHECK(a.leaves.size() == 10);
  CHECK(leaf_called(a, "A3").state == LeafFate::cancel);
  CHECK(mate_called(a, "A3") == "A6"); // the stub is the cancelled leaf's, conjugate as the leaf was
  CHECK(leaf_called(a, "χ2").state == LeafFate::inserted);
  CHECK(mate_called(a, "χ1") == "χ2");
  CHECK(leaf_called(a, "A8").state == LeafFate::removed);
  CHECK(mate_called(a, "A1") == "A8");
  CHECK(gathering_text(a).find("A1 joined to A8 (cut away to a stub)") != std::string::npos);

  auto const b = *drawn_gathering(formula, {1, 0});
  CHECK(leaf_called(b, "B4").state == LeafFate::replaced); // a bifolium for a bifolium
  CHECK(mate_called(b, "B4") == "B5");

  auto const c = *drawn_gathering(formula, {2, 0});
  CHECK(leaf_called(c, "χ1").note == "= A8");
  CHECK_FALSE(leaf_called(c, "χ1").conjugate);
  CHECK(gathering_svg(c).find("class=\"stub\"") == std::string::npos); // a bifolium taken out leaves no stub

  auto const d = *drawn_gathering(formula, {3, 0});
  CHECK(leaf_called(d, "D2").state == LeafFate::cancel); // two single leaves, each on its stub
  CHECK(leaf_called(d, "D3").state == LeafFate::cancel);
  CHECK((*drawn_gathering(formula, {4, 0})).leaves.back().label == "E8*");
  CHECK(leaf_called(*drawn_gathering(formula, {5, 0}), "F2").state == LeafFate::single);
}

TEST_CASE("a checked copy shows what it wants and what is loose in it") {
  auto const formula = formula_of("A⁸ B⁸(±B3, B5+χ1)");
  auto const present = read_leaves_present(formula, "A1 A3-B2 B4-5 B6-8");
  REQUIRE(present);
  auto const leaf = [](std::uint32_t run, int number) { return LeafOfBook{{run, 0}, number}; };
  auto const copy = check_copy(formula, present->spans,
                               {{leaf(0, 3), leaf(0, 6), Joint::disjunct},
                                {leaf(0, 4), leaf(0, 5), Joint::conjugate},
                                {leaf(1, 1), {}, Joint::stub}});
  auto const a = *drawn_gathering(formula, {0, 0}, copy), b = *drawn_gathering(formula, {1, 0}, copy);
  CHECK(a.title == "Gathering A⁸, in this copy");
  CHECK(leaf_called(a, "A2").state == LeafFate::missing);
  CHECK(mate_called(a, "A7") == "A2");
  CHECK(leaf_called(a, "A3").state == LeafFate::loose);
  CHECK(leaf_called(a, "A6").state == LeafFate::loose);
  CHECK(mate_called(a, "A4") == "A5");
  CHECK(leaf_called(b, "B3").state == LeafFate::cancel_missing);
  CHECK(leaf_called(b, "χ1").state == LeafFate::missing);
  CHECK(leaf_called(b, "B1").state == LeafFate::cancel); // seen on a stub, which the formula does not say
  CHECK(leaf_called(b, "B1").note == "not so in the formula");
}

TEST_CASE("a leaf that the formula doubts is drawn with a note") { // constructed
  auto const a = *drawn_gathering(formula_of("8°: A8(−A8?, A3+χ1?, A4+χ2)"), {0, 0});
  CHECK(leaf_called(a, "A8").note == "doubtful");
  CHECK(leaf_called(a, "χ1").note == "doubtful");
  CHECK(leaf_called(a, "χ2").note.empty());
}

TEST_CASE("every gathering of every formula makes a sound drawing, whatever was done to it") {
  for (char const* text : {"8°: A8(±A3, A4+χ1.2, -A8) B8(±B4.5) C4(-C1.4, C2+χ1[=A8]) D4(±D2,3) E8(+8*) F3",
                           "[1-4]⁸ 5⁶(−6)", "π² 2A-2C⁸ χ1", "A⁸(±A) B⁴(B4+χ²)", "2°: a² b-c⁶ d¹² e1"}) {
    CAPTURE(text);
    auto const formula = formula_of(text);
    IdealCopy const book{formula};
    for (auto const gathering : book.gatherings()) {
      auto drawn = *drawn_gathering(formula, gathering.at);
      std::int64_t there = 0;
      for (auto const& leaf : drawn.leaves) there += leaf.state == LeafFate::removed ? 0 : 1;
      CHECK(there == gathering.leaves); // what is drawn as there is what the formula counts
      is_sound(gathering_svg(drawn));
      drawn.right_to_left = true;
      is_sound(gathering_svg(drawn));
    }
  }
}
