// SPDX-License-Identifier: MIT
// The names of places on a leaf, from points of it. Only what touches an edge is named after it: within a fiftieth of
// the side. (constructed)
#include <bifolium/evidence.hpp>

#include "check.hpp"

using namespace bifolium;

// from the head, from the gutter
TEST_CASE("a mark is named after the edges that it touches") {
  STATIC_CHECK(place_of({0.5, 0.5}) == MarkPlace::centre);
  STATIC_CHECK(place_of({0.25, 0.97}) == MarkPlace::centre);
  STATIC_CHECK(place_of({0.97, 0.03}) == MarkPlace::centre);
  STATIC_CHECK(place_of({0.5, 0}) == MarkPlace::gutter);
  STATIC_CHECK(place_of({0.5, 0.01}) == MarkPlace::gutter);
  STATIC_CHECK(place_of({0.5, 0.99}) == MarkPlace::fore_edge);
  STATIC_CHECK(place_of({0.5, 1}) == MarkPlace::fore_edge);
  STATIC_CHECK(place_of({0, 0.5}) == MarkPlace::head_or_tail_edge);
  STATIC_CHECK(place_of({0.99, 0.5}) == MarkPlace::head_or_tail_edge);
  STATIC_CHECK(place_of({0.01, 0.01}) == MarkPlace::head_of_gutter);
  STATIC_CHECK(place_of({0.99, 0.01}) == MarkPlace::corner); // the tail of the gutter
  STATIC_CHECK(place_of({0.01, 0.99}) == MarkPlace::corner);
  STATIC_CHECK(place_of({0.99, 0.99}) == MarkPlace::corner);
}

TEST_CASE("a point-hole is named after the first edge that it touches") {
  STATIC_CHECK(hole_place_of({0.5, 0.5}) == HolePlace::inside);
  STATIC_CHECK(hole_place_of({0.03, 0.97}) == HolePlace::inside);
  STATIC_CHECK(hole_place_of({0.97, 0.03}) == HolePlace::inside);
  STATIC_CHECK(hole_place_of({0.5, 0.01}) == HolePlace::spine_fold);
  STATIC_CHECK(hole_place_of({0.01, 0.01}) == HolePlace::spine_fold);
  STATIC_CHECK(hole_place_of({0.01, 0.5}) == HolePlace::head);
  STATIC_CHECK(hole_place_of({0.01, 0.99}) == HolePlace::head);
  STATIC_CHECK(hole_place_of({0.99, 0.5}) == HolePlace::tail);
  STATIC_CHECK(hole_place_of({0.99, 0.99}) == HolePlace::tail);
  STATIC_CHECK(hole_place_of({0.5, 0.99}) == HolePlace::fore_edge);
}
