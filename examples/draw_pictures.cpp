// SPDX-License-Identifier: MIT
// Draws the pictures of the README: the formes of an octavo, a gathering in which much has happened, a misread book.
#include <bifolium/collation.hpp>
#include <bifolium/drawing.hpp>
#include <bifolium/drawing/formula_gathering.hpp>

#include "support/arguments.hpp"

#include <string>

using namespace bifolium;

namespace {

constexpr auto usage = "usage: draw_pictures DIR\nWrites octavo.svg, gathering.svg and misread.svg into the directory "
                       "DIR, which must exist.\n";

/// An invented book. In its gathering B the third leaf is a cancel, a leaf was inserted after the fifth, the last was cut
/// away in the house; and this copy has lost B4.
DrawnGathering invented_gathering() {
  auto const book = *read_formula("8°: A⁸ B⁸(±B3, B5+χ1, −B8) C⁴");
  auto const copy = check_copy(book, (*read_leaves_present(book, "A1-B3 B5-C4")).spans);
  return *drawn_gathering(book, IdealCopy{book}.find(*read_signature("B"))->gathering, copy);
}

/// A half-sheet turned about the wrong line between its two impressions, and folded: the book that comes of it.
std::string misread_book() {
  auto const folded = *fold(schemes::octavo_half_sheet.scheme());
  return book_svg(pages_met(impose(folded), folded, 0, Slip::turned_about_other_line),
                  "Half-sheet of octavo, turned about the wrong line");
}

} // namespace

int main(int argument_count, char** arguments) {
  return support::run([&]() -> int {
    support::Arguments const given{argument_count, arguments, {}, {}};
    if (auto const code = given.settled(usage, 1, 1)) return *code;
    auto const& directory = given.words()[0];
    support::write_file(directory + "/octavo.svg", *forme_svg(schemes::octavo.scheme()));
    support::write_file(directory + "/gathering.svg", gathering_svg(invented_gathering()));
    support::write_file(directory + "/misread.svg", misread_book());
    return support::all_done;
  });
}
