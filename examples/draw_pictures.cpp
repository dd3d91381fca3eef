// SPDX-License-Identifier: MIT
// Draws the two pictures of the README: the formes of an octavo, and a gathering in which much has happened.
#include <bifolium/drawing.hpp>

#include "support/arguments.hpp"

#include <fstream>
#include <iostream>

using namespace bifolium;

namespace {

constexpr auto usage =
    "usage: draw_pictures DIR\nWrites octavo.svg and gathering.svg into the directory DIR, which must exist.\n";

/// An invented gathering of eight: the third leaf is a cancel, a leaf was put in after the fifth, the last was cut away
/// in the house, and this copy has lost its fourth.
DrawnGathering invented_gathering() {
  auto gathering = regular_gathering("B", 8);
  gathering.title = "B⁸ (±B3, B5+χ1, −B8), a copy without B4";
  gathering.leaves[2].state = LeafFate::cancel;
  gathering.leaves[3].state = LeafFate::missing;
  gathering.leaves[7].state = LeafFate::removed;
  insert_leaf(gathering, 5, {"χ1", LeafFate::inserted});
  return gathering;
}

} // namespace

int main(int argument_count, char** arguments) {
  support::Arguments const given{argument_count, arguments, {}, {}};
  if (auto const code = given.settled(usage, 1, 1)) return *code;
  auto const& directory = given.words()[0];
  std::ofstream octavo{directory + "/octavo.svg", std::ios::binary},
      gathering{directory + "/gathering.svg", std::ios::binary};
  octavo << *forme_svg(schemes::octavo.scheme());
  gathering << gathering_svg(invented_gathering());
  if (octavo.flush() && gathering.flush()) return support::all_done;
  std::cerr << "cannot write octavo.svg and gathering.svg to " << directory << '\n';
  return support::unreadable;
}
