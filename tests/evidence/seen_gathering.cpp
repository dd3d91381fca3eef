// SPDX-License-Identifier: MIT
// The leaves of a record as facts about a gathering, and the foldings that show them.
#include <bifolium/evidence/read_seen.hpp>
#include <bifolium/evidence/seen_gathering.hpp>
#include <bifolium/fold/foldings_showing.hpp>

#include "check.hpp"

#include <vector>

using namespace bifolium;

static_assert(seen_mark(MarkPlace::absent) == SeenMark{});
static_assert(seen_mark(MarkPlace::head_of_gutter)->gutter_to < 0.5);

TEST_CASE("every place of a mark is a part of the leaf, and nothing where nobody looked") {
  STATIC_CHECK(!seen_mark(MarkPlace::unknown));
  STATIC_CHECK(seen_mark(MarkPlace::absent) == seen_marks::absent);
  STATIC_CHECK(seen_mark(MarkPlace::centre) == seen_marks::centre);
  STATIC_CHECK(seen_mark(MarkPlace::gutter) == seen_marks::gutter);
  STATIC_CHECK(seen_mark(MarkPlace::head_of_gutter) == seen_marks::head_of_gutter);
  STATIC_CHECK(seen_mark(MarkPlace::fore_edge) == seen_marks::fore_edge);
  STATIC_CHECK(seen_mark(MarkPlace::head_or_tail_edge) == seen_marks::head_or_tail_edge);
  STATIC_CHECK(seen_mark(MarkPlace::corner) == seen_marks::somewhere);
}

TEST_CASE("the leaves of a record are asked about as a gathering") {
  LeafEvidence seen;
  CHECK_FALSE(seen_gathering(seen));
  seen.leaves = *read_leaves_seen("1 gutter; 2 absent; 4 gutter horizontal");
  CHECK_FALSE(seen_gathering(seen)); // of how many leaves?
  seen.gathering_leaves = 4;
  auto const gathering = seen_gathering(seen);
  REQUIRE(gathering);
  REQUIRE(gathering->seen.size() == 3);
  CHECK(gathering->leaves == 4);
  CHECK(gathering->seen[0].watermark == seen_marks::gutter);
  CHECK_FALSE(gathering->seen[0].chain_lines);
  CHECK(gathering->seen[2].chain_lines == ChainLines::horizontal);
  seen.chain_lines = ChainLines::horizontal;
  CHECK(seen_gathering(seen)->seen[0].chain_lines == ChainLines::horizontal);
}

TEST_CASE("quarto by its marks, as handbooks have it") {
  // Aldis, The Printed Book (1916), 'Construction of a Book': chain lines horizontal, mark in the middle of the inner
  // margin
  LeafEvidence seen;
  seen.gathering_leaves = 4;
  seen.leaves = *read_leaves_seen("1 gutter horizontal; 2 absent; 3 absent; 4 gutter");
  auto const left = *foldings_showing(std::vector{*seen_gathering(seen)});
  REQUIRE(!left.groups.empty());
  CHECK(left.groups[0].format == Format::of(4));
  CHECK(left.blamed.empty());
}
