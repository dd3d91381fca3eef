// SPDX-License-Identifier: MIT
// Draws the two pictures of the README: the formes of an octavo, and a gathering in which much has happened.
#include <bifolium/collation.hpp>
#include <bifolium/drawing.hpp>

#include "support/arguments.hpp"

#include <fstream>
#include <iostream>

using namespace bifolium;

namespace {

constexpr auto usage =
    "usage: draw_pictures DIR\nWrites octavo.svg and gathering.svg into the directory DIR, which must exist.\n";

/// An invented book. In its gathering B the third leaf is a cancel, a leaf was put in behind the fifth, the last was cut
/// away in the house; and this copy has lost B4.
DrawnGathering invented_gathering() {
  auto const book = *read_formula("8°: A⁸ B⁸(±B3, B5+χ1, −B8) C⁴");
  auto const copy = check_copy(book, *read_leaves_present(book, "A1-B3 B5-C4"));
  return drawn_gathering(book, *find_gathering(book, *read_signature("B")), copy);
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
