// SPDX-License-Identifier: MIT
// One half of a program has exceptions, the other is compiled without: both break preconditions through the same inline
// functions, of which the linker keeps one. Whichever it keeps, the half with exceptions can catch.
#include <bifolium/leaf.hpp>
#include <bifolium/paper.hpp>

#include <cstring>

int leaf_of_eight(int number); // of the other half

int main() {
  int caught = 0;
  try {
    static_cast<void>(bifolium::Gathering<>{8}.leaf(9));
  } catch (bifolium::BrokenPrecondition const& broken) {
    caught += std::strcmp(broken.what(), "the gathering has no leaf with this number") == 0 ? 1 : 0;
  }
  try {
    static_cast<void>(bifolium::Sheet<bifolium::millimetres>{bifolium::millimetres{0}, bifolium::millimetres{1}});
  } catch (bifolium::BrokenPrecondition const&) {
    ++caught;
  }
  return caught == 2 && leaf_of_eight(8) == 1 ? 0 : 1;
}
